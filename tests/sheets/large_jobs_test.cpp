// What is drawn by the kilometre, as a slip of the hand does: it is computed and drawn in bounded room and time, or
// said to be too large.
#include <gtest/gtest.h>

#include <algorithm>

#include "demo.h"
#include "sheets/plan_figure.h"

namespace {

using geometry::Point;
using units::Length;

constexpr std::int64_t metre = 320'000;  // steps
constexpr std::int64_t far = 4'500 * metre;

plan::Element element(const plan::Job& job, const std::string& id) {
  return **std::ranges::find_if(job.elements, [&](const auto& one) { return one->id == id; });
}

Point at(std::int64_t x, std::int64_t y) { return {Length::of_steps(x), Length::of_steps(y)}; }

// A square of 9 km a side, and three of its sides as a line.
plan::DrawnShape square() {
  return {{{{at(-far, -far), 0, {}}, {at(far, -far), 0, {}}, {at(far, far), 0, {}}, {at(-far, far), 0, {}}}, {}}};
}
plan::DrawnLine three_sides() {
  return {{{at(-far, -far), 0, {}}, {at(far, -far), 0, {}}, {at(far, far), 0, {}}}, at(-far, far), {}};
}

results::Results alone(plan::Job job, plan::Element element) {
  job.elements = {std::make_shared<const plan::Element>(std::move(element))};
  return results::compute(std::make_shared<const plan::Job>(std::move(job)));
}

bool said(const results::Results& results, const std::string& code) {
  const auto problems = results.problems();
  return std::ranges::any_of(problems, [&](const auto& one) { return one.code == code && !one.mend.empty(); });
}

double measure(const results::Results& results, const std::string& name) {
  for (const takeoff::Measures& all : results.takeoff.measures)
    if (const auto value = all.get(name)) return *value;
  return -1;
}

std::size_t parts(const results::Results& results) { return sheets::plan_figure(results, {}).parts.size(); }

TEST(LargeJobs, ABorderOf36KilometresIsCountedPieceByPieceAndDrawnInFewParts) {
  plan::Job job = demo::job("bakery-court");
  plan::Element area = element(job, "A1");
  std::get<plan::PavedArea>(area.kind).outline = square();
  const results::Results results = alone(std::move(job), std::move(area));
  // Sailors of 61976 + 3048 steps, 0.2032 m: 36 km / 0.2032 m = 177,165; corners and evened joints move it a little.
  EXPECT_NEAR(measure(results, "border_units"), 177'165, 600);
  EXPECT_LT(parts(results), 20'000U);  // four sides of at most 4,000
}

TEST(LargeJobs, UnitsTooSmallForTheirAreaAreSaidAndNotLaid) {
  plan::Job job = demo::job("bakery-court");
  auto catalogue = std::make_shared<catalogue::Catalogue>(*job.catalogue);
  catalogue::Item small = *catalogue->item("perm-4x8-80");
  small.id = "small";
  small.length = small.width = Length::millimetres(10);
  small.joint = Length();
  catalogue->items["small"] = std::make_shared<const catalogue::Item>(small);
  job.catalogue = catalogue;
  plan::Element area = element(job, "A1");
  auto& paved = std::get<plan::PavedArea>(area.kind);
  paved.outline = square();
  paved.borders.clear();
  paved.laying->pattern = "stack";
  paved.laying->units = {{"unit", "small"}};
  const results::Results results = alone(std::move(job), std::move(area));
  EXPECT_TRUE(said(results, "laying-too-large"));
  EXPECT_NEAR(measure(results, "field_area_m2"), -1, 0) << "nothing is laid";
}

TEST(LargeJobs, AWallOfMillionsOfBlocksIsSaidAndNotLaid) {
  plan::Job job = demo::job("pool-terrace-a");
  plan::Element wall = element(job, "RW");
  auto& drawn = std::get<plan::Wall>(wall.kind);
  drawn.line = three_sides();
  drawn.ground = {{Length(), Length()}};
  drawn.top.clear();
  drawn.base.clear();
  drawn.height = Length::millimetres(11'500);  // 57 courses of 8 in; 27 km / 18 in x 57 = 3.4 million
  EXPECT_TRUE(said(alone(job, wall), "wall-too-large"));
  drawn.height = Length::millimetres(1'000);  // 6 courses with the buried one: 0.35 million
  const results::Results low = alone(std::move(job), std::move(wall));
  EXPECT_FALSE(said(low, "wall-too-large"));
  EXPECT_GT(measure(low, "units"), 300'000);
  EXPECT_LT(parts(low), 20'000U);
}

TEST(LargeJobs, WeepsAndKerbsWithoutNumberAreSaid) {
  plan::Job job = demo::job("bakery-court");
  plan::Element kerb = element(job, "K1");
  auto& run = std::get<plan::EdgeRun>(kerb.kind);
  run.line = three_sides();
  EXPECT_LT(parts(alone(job, kerb)), 80'000U);  // 27 km / 1.2 m = 22,500 weeps, and three runs of kerb
  run.weeps->spacing = Length::millimetres(1);
  const results::Results results = alone(job, kerb);
  EXPECT_TRUE(said(results, "weep-spacing"));
  EXPECT_LT(parts(results), 20'000U);
  auto catalogue = std::make_shared<catalogue::Catalogue>(*job.catalogue);
  catalogue::Item tiny = *catalogue->item("edging-36");
  tiny.length = Length::of_steps(1);
  catalogue->items["edging-36"] = std::make_shared<const catalogue::Item>(tiny);
  job.catalogue = catalogue;
  EXPECT_TRUE(said(alone(std::move(job), std::move(kerb)), "kerb-size"));
}

}  // namespace
