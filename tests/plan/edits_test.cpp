// Whole elements moved, turned, mirrored, copied: every point goes along, and back again.
#include "plan/edits.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include "small_jobs.h"

namespace {

using geometry::Point;
using small::at;
using units::Angle;
using units::Length;

plan::Element deck() {
  plan::Element element = small::paved("A1", small::rectangle(0, 0, 120, 60));
  auto& area = std::get<plan::PavedArea>(element.kind);
  area.outline.push_back({small::circle(40, 30, 10), {}});
  area.laying = plan::Laying{"herringbone", {}, at(6, 6), Angle::degrees(30), {}};
  area.finish = plan::Finish{};
  area.finish->way = plan::Finish::Way::two_falls;
  area.finish->line = plan::DrawnLine{{{at(0, 30), 0, {}}}, at(120, 30), {}};
  area.finish->fall = 0.02;
  area.finish->fall_right = 0.01;
  area.finish->direction = Angle::degrees(90);
  return element;
}

const plan::PavedArea& area_of(const plan::Element& element) { return std::get<plan::PavedArea>(element.kind); }

TEST(Edits, movingTakesPatternAndFinishAlong) {
  const plan::Element moved = plan::moved(deck(), at(12, -24) - at(0, 0));
  EXPECT_EQ(area_of(moved).outline[0].edges[2].from, at(132, 36));
  EXPECT_EQ(area_of(moved).outline[1].edges[0].from, at(42, 6));
  EXPECT_EQ(area_of(moved).laying->start, at(18, -18));
  EXPECT_EQ(area_of(moved).laying->direction, Angle::degrees(30));
  EXPECT_EQ(area_of(moved).finish->line->end, at(132, 6));
}

// A quarter turn about the origin: (x, y) -> (-y, x).
TEST(Edits, aQuarterTurn) {
  const plan::Element turned = plan::turned(deck(), at(0, 0), Angle::degrees(90));
  EXPECT_EQ(area_of(turned).outline[0].edges[1].from, at(0, 120));
  EXPECT_EQ(area_of(turned).laying->start, at(-6, 6));
  EXPECT_EQ(area_of(turned).laying->direction, Angle::degrees(120));
  EXPECT_EQ(area_of(turned).finish->direction, Angle::degrees(180));
}

// Across the line y = 0: (x, y) -> (x, -y); bulges change their sign, the left fall becomes the right one.
TEST(Edits, aMirror) {
  const plan::Element mirrored = plan::mirrored(deck(), at(0, 0), at(12, 0)).value();
  EXPECT_EQ(area_of(mirrored).outline[0].edges[2].from, at(120, -60));
  EXPECT_EQ(area_of(mirrored).outline[1].edges[0].bulge, -1);
  EXPECT_EQ(area_of(mirrored).laying->direction, Angle::degrees(330));
  EXPECT_EQ(area_of(mirrored).finish->fall, 0.01);
  EXPECT_EQ(area_of(mirrored).finish->fall_right, 0.02);
  plan::Wall wall;
  wall.line = {{{at(0, 0), 0, {}}}, at(60, 12), {}};
  const plan::Element other = plan::mirrored({"W1", "", wall}, at(0, 0), at(0, 12)).value();
  EXPECT_EQ(std::get<plan::Wall>(other.kind).behind, geometry::Side::right);
  EXPECT_EQ(std::get<plan::Wall>(other.kind).line.end, at(-60, 12));
}

TEST(Edits, aMirrorNeedsALine) {
  const auto refused = plan::mirrored(deck(), at(5, 5), at(5, 5));
  ASSERT_FALSE(refused.has_value());
  EXPECT_EQ(refused.error().code, "mirror-line");
  EXPECT_EQ(refused.error().place.element, "A1");
}

TEST(Edits, thereAndBackIsTheSame) {
  EXPECT_TRUE(rc::check("to the bit", [] {
    const auto random_point = [] { return at(*rc::gen::inRange(-500, 500), *rc::gen::inRange(-500, 500)); };
    const geometry::Vec by = random_point() - at(0, 0);
    RC_ASSERT(plan::moved(plan::moved(deck(), by), -by) == deck());
    const Point about = random_point();
    plan::Element turned = deck();
    for (int i = 0; i < 4; ++i) turned = plan::turned(std::move(turned), about, Angle::degrees(90));
    RC_ASSERT(turned == deck());
    // Across lines in the grid's own directions every point lies on the grid again.
    const Point along = *rc::gen::element(at(1, 0), at(0, 1), at(1, 1));
    const Point from = random_point();
    const Point to = geometry::moved(from, along - at(0, 0));
    const plan::Element twice = plan::mirrored(plan::mirrored(deck(), from, to).value(), from, to).value();
    RC_ASSERT(area_of(twice).outline == area_of(deck()).outline);
    RC_ASSERT(area_of(twice).laying->start == area_of(deck()).laying->start);
  }));
}

// A turn rounds each corner by at most half a step either way: over a perimeter p that is at most p x 0.71 steps.
TEST(Edits, turningKeepsTheArea) {
  EXPECT_TRUE(rc::check("within rounding", [] {
    const double degrees = *rc::gen::inRange(0, 36000) / 100.0;
    const plan::Element turned = plan::turned(deck(), at(17, -5), Angle::degrees(degrees));
    const double before = geometry::signed_area(area_of(deck()).outline[0].edges).si();
    const double after = geometry::signed_area(area_of(turned).outline[0].edges).si();
    const double perimeter = geometry::perimeter(area_of(deck()).outline[0].edges).si();
    RC_ASSERT(std::abs(after - before) <= perimeter * 0.71 / Length::steps_per_metre);
  }));
}

TEST(Edits, idsAreTheLeastThatIsFree) {
  plan::Job job = small::job(
      {small::paved("A1", small::rectangle(0, 0, 10, 10)), small::paved("A3", small::rectangle(0, 0, 10, 10))});
  EXPECT_EQ(plan::free_id(job, plan::PavedArea{}), "A2");
  EXPECT_EQ(plan::free_id(job, plan::Pool{}), "P1");
  const auto [after, made] = plan::with_copies(job, {"A1", "A3", "nobody"}, at(24, 0) - at(0, 0));
  EXPECT_EQ(made, (std::vector<plan::ElementId>{"A2", "A4"}));
  EXPECT_EQ(after.elements.size(), 4U);
  EXPECT_EQ(area_of(*after.find("A4")).outline[0].edges[0].from, at(24, 0));
}

}  // namespace
