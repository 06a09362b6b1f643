// Outlines grown, cut in two, joined, pierced, traced.
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cmath>
#include <numbers>

#include "geometry/validity.h"
#include "plan/edits.h"
#include "plan/footprint.h"
#include "small_jobs.h"

namespace {

using small::at;
using units::Length;

plan::Element deck() { return small::paved("A1", small::rectangle(0, 0, 120, 60)); }
const plan::DrawnShape& outline(const plan::Element& element) {
  return std::get<plan::PavedArea>(element.kind).outline;
}
double square_inches(const plan::Element& element) {
  const auto made = geometry::shape(plan::drawing(outline(element), 1));
  return made.value().region.area().si() / (0.0254 * 0.0254);
}

// (120 + 2 x 6) x (60 + 2 x 6) = 132 x 72; inwards 108 x 48.
TEST(ShapeEdits, anOutlineGrowsAndShrinks) {
  EXPECT_NEAR(square_inches(plan::offset(deck(), Length::inches(6)).value()), 132 * 72, 1e-6);
  EXPECT_NEAR(square_inches(plan::offset(deck(), Length::inches(-6)).value()), 108 * 48, 1e-6);
  EXPECT_EQ(plan::offset(deck(), Length::inches(-40)).error().code, "offset-parts");
}

// A thousand edges and one more, on a circle of 100 in: refused, not computed for minutes.
TEST(ShapeEdits, anOutlineOfTooManyEdgesIsRefused) {
  geometry::Ring ring;
  for (int i = 0; i < 1001; ++i) {
    const double turn = 2 * std::numbers::pi * i / 1001;
    ring.push_back({geometry::moved(at(0, 0), {std::cos(turn) * 812800, std::sin(turn) * 812800}), 0, {}});
  }
  EXPECT_EQ(plan::offset(small::paved("A1", ring), Length::inches(1)).error().code, "offset-edges");
}

TEST(ShapeEdits, aLineMovesToItsLeft) {
  const plan::Element run = small::run("K1", {{at(0, 0), 0, {}}, {at(100, 0), 0, {}}}, at(100, 50), "kerb");
  const auto left = plan::offset(run, Length::inches(10));
  ASSERT_TRUE(left.has_value());
  const auto& line = std::get<plan::EdgeRun>(left->kind).line;
  EXPECT_EQ(line.edges[0].from, at(0, 10));
  EXPECT_EQ(line.edges[1].from, at(90, 10));
  EXPECT_EQ(line.end, at(90, 50));
}

// Cut across at x = 50: 50 x 60 and 70 x 60; what was said of the lower edge is said of both its parts.
TEST(ShapeEdits, anOutlineIsCutInTwo) {
  plan::Element element = deck();
  std::get<plan::PavedArea>(element.kind).edges = {{0, "joint"}};
  const auto parts = plan::split(element, at(50, -10), at(50, 70), "A2");
  ASSERT_TRUE(parts.has_value()) << parts.error().text;
  EXPECT_NEAR(square_inches(parts->first), 50 * 60, 1e-6) << "left of the cut";
  EXPECT_NEAR(square_inches(parts->second), 70 * 60, 1e-6);
  EXPECT_EQ(parts->second.id, "A2");
  for (const plan::Element* part : {&parts->first, &parts->second}) {
    const auto& said = std::get<plan::PavedArea>(part->kind).edges;
    ASSERT_EQ(said.size(), 1U);
    const auto edges = plan::drawn_edges(*part);
    const geometry::Curve& curve = edges[static_cast<std::size_t>(said[0].edge)].curve;
    EXPECT_EQ(curve.start.y, Length{});
    EXPECT_EQ(curve.end.y, Length{});
  }
  EXPECT_EQ(plan::split(deck(), at(200, 0), at(200, 9), "A2").error().code, "split-misses");
  EXPECT_EQ(plan::split(deck(), at(5, 5), at(5, 5), "A2").error().code, "split-line");
}

TEST(ShapeEdits, theTwoPartsAreTheWholeAndJoinToIt) {
  EXPECT_TRUE(rc::check("cuts of any slope", [] {
    const auto a = at(*rc::gen::inRange(10, 110), -5);
    const auto b = at(*rc::gen::inRange(10, 110), 65);
    const auto parts = plan::split(deck(), a, b, "A2");
    RC_ASSERT(parts.has_value());
    // Both are cut by the same line of grid points: nothing is lost but the grid's rounding along the cut.
    const double step = 1 / (0.0254 * Length::steps_per_metre);  // in inches
    RC_ASSERT(std::abs(square_inches(parts->first) + square_inches(parts->second) - 7200) <= 120 * step);
    const auto whole = plan::joined(parts->first, parts->second);
    RC_ASSERT(whole.has_value());
    RC_ASSERT(std::abs(square_inches(*whole) - 7200) <= 240 * step);
    RC_ASSERT(outline(*whole).size() == 1U);
  }));
}

TEST(ShapeEdits, outlinesThatDoNotMeetAreNotJoined) {
  EXPECT_EQ(plan::joined(deck(), small::paved("A2", small::rectangle(130, 0, 140, 60))).error().code, "join-apart");
  EXPECT_EQ(plan::joined(deck(), small::run("K1", {{at(0, 0), 0, {}}}, at(9, 9), "kerb")).error().code,
            "shape-not-closed");
}

TEST(ShapeEdits, aHoleLiesInside) {
  const auto pierced = plan::with_hole(deck(), {small::rectangle(20, 20, 40, 40), {}});
  ASSERT_TRUE(pierced.has_value());
  EXPECT_NEAR(square_inches(*pierced), 7200 - 400, 1e-6);
  EXPECT_EQ(plan::with_hole(deck(), {small::rectangle(200, 20, 240, 40), {}}).error().code, "hole-outside");
}

// From the middle of the lower side to the middle of the right one: 60 + 30 in the short way, 270 the long way.
TEST(ShapeEdits, anEdgeIsTracedTheShorterWayOrTheLonger) {
  const auto length = [](const plan::DrawnLine& line) {
    return geometry::Path::make(line.edges, line.end).value().length().si() / 0.0254;
  };
  const auto shorter = plan::traced(deck(), at(60, 0), at(120, 30));
  ASSERT_TRUE(shorter.has_value());
  EXPECT_NEAR(length(*shorter), 90, 1e-9);
  EXPECT_EQ(shorter->edges.front().from, at(60, 0));
  EXPECT_EQ(shorter->end, at(120, 30));
  const auto longer = plan::traced(deck(), at(60, 0), at(120, 30), true);
  ASSERT_TRUE(longer.has_value());
  EXPECT_NEAR(length(*longer), 270, 1e-9);
  EXPECT_EQ(longer->edges.front().from, at(60, 0));
  EXPECT_EQ(plan::traced(deck(), at(60, 0), at(60, 0)).error().code, "trace-none");
}

// A quarter of a circle traced over half its sweep is an arc of the same radius.
TEST(ShapeEdits, anArcIsTracedAsAnArc) {
  const plan::Element round = small::paved("A1", small::circle(0, 0, 100));
  const auto line = plan::traced(round, at(0, -100), at(100, 0));
  ASSERT_TRUE(line.has_value());
  ASSERT_EQ(line->edges.size(), 1U);
  EXPECT_NEAR(line->edges[0].bulge, std::tan(std::numbers::pi / 8), 1e-6);
}

}  // namespace
