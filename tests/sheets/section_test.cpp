#include "sheets/section_figure.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "demo.h"
#include "sheets/parts.h"

namespace {

using sheets::Material;
using takeoff::Stage;

constexpr double inch = 0.0254;

sheets::Section section(const std::string& of, std::optional<Stage> stage = {}, const char* job = "pool-terrace-a") {
  return sheets::section_figure(demo::results(job), of, stage).value();
}

std::vector<const sheets::Area*> areas(const sheets::Section& section, Material material) {
  std::vector<const sheets::Area*> found;
  for (const sheets::Part& part : section.figure.parts)
    if (const auto* area = std::get_if<sheets::Area>(&part); area && area->material == material && !area->later)
      found.push_back(area);
  return found;
}

double high(const sheets::Area& area) {
  sheets::Extent extent;
  for (const sheets::Contour& contour : area.contours) extent.take(contour);
  return extent.high().y - extent.low().y;
}

const sheets::Leader* leader(const sheets::Section& section, const std::string& field) {
  const auto found = std::ranges::find(section.leaders, field, &sheets::Leader::field);
  return found == section.leaders.end() ? nullptr : &*found;
}

TEST(Section, LayersAreAsThickAsTheBuildUpSays) {
  const sheets::Section deck = section("A1");
  // Units 2 3/8 in, chips 1 1/2 in, stone 6 in; chips and stone are both open stone.
  for (const sheets::Area* unit : areas(deck, Material::paving)) EXPECT_NEAR(high(*unit), 2.375 * inch, 1e-9);
  const auto stone = areas(deck, Material::open_stone);
  ASSERT_EQ(stone.size(), 2u);
  EXPECT_NEAR(high(*stone[0]), 1.5 * inch, 1e-9);
  EXPECT_NEAR(high(*stone[1]), 6 * inch, 1e-9);
  ASSERT_TRUE(leader(deck, "layer/2/thickness"));
  EXPECT_EQ(leader(deck, "layer/2/thickness")->value, "6\"");
  EXPECT_EQ(leader(deck, "layer/1/thickness")->value, "1 1/2\"");
  EXPECT_EQ(leader(deck, "past_edge")->value, "6\"");
}

TEST(Section, AWallHasTheCoursesOfTheTakeoff) {
  const sheets::Section wall = section("RW");
  // Courses 2 to 7 at its tallest, 8 in each.
  const auto blocks = areas(wall, Material::block);
  EXPECT_EQ(blocks.size(), 6u);
  for (const sheets::Area* block : blocks) EXPECT_NEAR(high(*block), 8 * inch, 1e-9);
  double units = 0;
  for (const takeoff::Measures& measures : demo::results().takeoff.measures)
    if (measures.element == "RW") units = measures.get("height_of_units_m").value_or(0);
  double all = 0;
  for (const sheets::Area* block : blocks) all += high(*block);
  EXPECT_NEAR(all, units, 1e-9);
}

TEST(Section, EachCourseStandsItsSetbackBehindTheOneBelow) {
  const sheets::Section wall = section("RW");
  const auto blocks = areas(wall, Material::block);
  for (std::size_t i = 0; i + 1 < blocks.size(); ++i) {
    const double step = blocks[i + 1]->contours[0].turns[0].at.x - blocks[i]->contours[0].turns[0].at.x;
    EXPECT_NEAR(step, 0.75 * inch, 1e-9);
  }
}

TEST(Section, StepsHaveAsManyUnitsAsRisers) {
  const sheets::Section steps = section("S");
  EXPECT_EQ(areas(steps, Material::block).size(), 3u);
  ASSERT_TRUE(leader(steps, "steps/risers"));
  EXPECT_EQ(leader(steps, "steps/risers")->value, "3");
  EXPECT_EQ(leader(steps, "steps/rise")->value, "1' 6\"");  // 18 in
}

TEST(Section, EveryKindOfTheDemoJobThatIsBuiltHasOne) {
  for (const auto& element : demo::results().job->elements) {
    const std::string kind = plan::kind_name(element->kind);
    const bool cut =
        std::set<std::string>{"paved-area", "pool", "wall", "steps", "edge-run", "drain-run"}.contains(kind);
    EXPECT_EQ(sheets::section_figure(demo::results(), element->id, {}).has_value(), cut) << element->id;
  }
}

TEST(Section, LeadersComeFromTheTopDownAndNeverShareAPoint) {
  for (const char* job : {"pool-terrace-a", "pool-terrace-b", "bakery-court"}) {
    for (const auto& element : demo::results(job).job->elements) {
      const auto made = sheets::section_figure(demo::results(job), element->id, {});
      if (!made) continue;
      EXPECT_FALSE(made->leaders.empty()) << element->id;
      std::set<std::string> fields;
      for (std::size_t i = 0; i < made->leaders.size(); ++i) {
        const sheets::Leader& one = made->leaders[i];
        EXPECT_TRUE(one.field.empty() || fields.insert(one.field).second) << element->id << " " << one.field;
        EXPECT_GE(one.at.x, made->figure.low.x - 1e-9) << element->id << " " << one.label;
        EXPECT_LE(one.at.x, made->figure.high.x + 1e-9) << element->id << " " << one.label;
        EXPECT_GE(one.at.y, made->figure.low.y - 1e-9) << element->id << " " << one.label;
        EXPECT_LE(one.at.y, made->figure.high.y + 1e-9) << element->id << " " << one.label;
        if (i == 0) continue;
        EXPECT_GE(made->leaders[i - 1].at.y, one.at.y) << element->id << " " << one.label;
        for (std::size_t k = 0; k < i; ++k)
          EXPECT_GT(geometry::length(one.at - made->leaders[k].at), 0.003) << element->id << " " << one.label;
      }
    }
  }
}

TEST(Section, TheScaleBarIsARoundLengthThatFits) {
  const auto whole = [](double value, double unit) { return std::abs(value / unit - std::round(value / unit)) < 1e-9; };
  for (const char* job : {"pool-terrace-a", "bakery-court"}) {
    const bool us = demo::results(job).job->heading.units == units::System::us;
    for (const auto& element : demo::results(job).job->elements) {
      const auto made = sheets::section_figure(demo::results(job), element->id, {});
      if (!made) continue;
      EXPECT_TRUE(whole(made->scale_bar, us ? inch : 0.01)) << element->id << " " << made->scale_bar;
      EXPECT_GT(made->scale_bar, 0);
      EXPECT_LT(made->scale_bar, made->figure.high.x - made->figure.low.x);
    }
  }
}

TEST(Section, WhatComesLaterIsDashedAndSaidSo) {
  const sheets::Section deck = section("A1", Stage::base);
  EXPECT_TRUE(areas(deck, Material::paving).empty());
  EXPECT_TRUE(areas(deck, Material::coping).empty());
  EXPECT_EQ(areas(deck, Material::open_stone).size(), 1u);  // the base, not the bedding
  EXPECT_TRUE(leader(deck, "layer/0/thickness")->later);
  EXPECT_TRUE(leader(deck, "layer/1/thickness")->later);
  EXPECT_FALSE(leader(deck, "layer/2/thickness")->later);
  const sheets::Section before = section("RW", Stage::dig), after = section("RW", Stage::wall);
  EXPECT_FALSE(before.leaders.empty());
  for (const sheets::Leader& one : before.leaders) EXPECT_TRUE(one.later) << one.label;
  for (const sheets::Leader& one : after.leaders) EXPECT_FALSE(one.later) << one.label;
}

}  // namespace
