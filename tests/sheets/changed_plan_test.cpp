// The plan with what changed marked: every element that takes ground is there once, with how it differs.
#include "sheets/changed_plan.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "files/files.h"
#include "plan/edits.h"

namespace {

plan::Job demo() {
  const std::string path = std::string(HOUSE_ROOT) + "/demo-jobs/pool-terrace-a.json";
  return files::read_job(files::read_file(path).value(), path).value();
}

const sheets::ChangedShape* shape_of(const sheets::ChangedPlan& plan, const std::string& id) {
  const auto found = std::ranges::find(plan.shapes, id, &sheets::ChangedShape::of);
  return found == plan.shapes.end() ? nullptr : &*found;
}

TEST(ChangedPlan, NothingChanged) {
  const plan::Job job = demo();
  const sheets::ChangedPlan plan = sheets::changed_plan(job, job);
  ASSERT_FALSE(plan.shapes.empty());
  for (const auto& shape : plan.shapes) EXPECT_FALSE(shape.how.has_value()) << shape.of;
  EXPECT_LT(plan.low.x, plan.high.x);
}

TEST(ChangedPlan, AddedGoneAndChanged) {
  const plan::Job before = demo();
  plan::Job after = plan::without(before, "W");
  const plan::Element moved = plan::moved(*before.find("A1"), {320.0 * 500, 0});  // half a metre east
  after = plan::with(after, moved);
  plan::Element copy = *before.find("A2");
  copy.id = "A9";
  after = plan::with(after, copy);
  const sheets::ChangedPlan plan = sheets::changed_plan(before, after);
  ASSERT_NE(shape_of(plan, "W"), nullptr);
  EXPECT_EQ(shape_of(plan, "W")->how, plan::Differs::gone);
  EXPECT_EQ(shape_of(plan, "A1")->how, plan::Differs::changed);
  EXPECT_EQ(shape_of(plan, "A9")->how, plan::Differs::added);
  EXPECT_FALSE(shape_of(plan, "P")->how.has_value());
  // Marked ones lie on top.
  EXPECT_FALSE(plan.shapes.front().how.has_value());
  EXPECT_TRUE(plan.shapes.back().how.has_value());
}

TEST(ChangedPlan, OfNothing) {
  plan::Job empty;
  empty.catalogue = std::make_shared<const catalogue::Catalogue>();
  EXPECT_TRUE(sheets::changed_plan(empty, empty).shapes.empty());
}

}  // namespace
