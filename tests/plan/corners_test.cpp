// Corners and edges of what is drawn, one by one.
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "plan/edits.h"
#include "small_jobs.h"

namespace {

using plan::Corner;
using small::at;
using units::Length;

plan::Element deck() { return small::paved("A1", small::rectangle(0, 0, 120, 60)); }
const geometry::Ring& ring(const plan::Element& element) {
  return std::get<plan::PavedArea>(element.kind).outline[0].edges;
}
double area(const plan::Element& element) { return geometry::signed_area(ring(element)).si(); }
double square_inches(double count) { return count * 0.0254 * 0.0254; }

TEST(Corners, areListedWithTheirEdges) {
  plan::Element walk = small::run("K1", {{at(0, 0), 0, {}}, {at(10, 0), 1, {}}}, at(10, 20), "kerb");
  const auto grips = plan::corners(walk);
  ASSERT_EQ(grips.size(), 3U);
  EXPECT_EQ(grips[2].corner, (Corner{-1, 2}));
  EXPECT_EQ(grips[2].at, at(10, 20));
  const auto edges = plan::drawn_edges(walk);
  ASSERT_EQ(edges.size(), 2U);
  EXPECT_EQ(edges[1].curve.end, at(10, 20));
  EXPECT_EQ(plan::drawn_edges(deck()).size(), 4U);
}

TEST(Corners, aCornerIsSetElsewhereButNotOnItsNeighbour) {
  const auto moved = plan::with_corner_at(deck(), {0, 2}, at(130, 80));
  ASSERT_TRUE(moved.has_value());
  EXPECT_EQ(ring(*moved)[2].from, at(130, 80));
  EXPECT_EQ(plan::with_corner_at(deck(), {0, 2}, at(120, 0)).error().code, "edge-zero-length");
  EXPECT_EQ(plan::with_corner_at(deck(), {0, 7}, at(1, 1)).error().code, "corner-none");
  EXPECT_EQ(plan::with_corner_at(deck(), {3, 0}, at(1, 1)).error().code, "corner-none");
}

TEST(Corners, aNewCornerTakesWhatWasSaidOfItsEdgeAlong) {
  plan::Element element = deck();
  std::get<plan::PavedArea>(element.kind).edges = {{1, "joint"}, {2, "none"}};
  const auto more = plan::with_new_corner(element, {0, 1}, at(120, 30));
  ASSERT_TRUE(more.has_value());
  EXPECT_EQ(ring(*more).size(), 5U);
  EXPECT_EQ(std::get<plan::PavedArea>(more->kind).edges,
            (std::vector<plan::EdgeChoice>{{1, "joint"}, {2, "joint"}, {3, "none"}}));
  EXPECT_EQ(area(*more), area(element));
  // Taken out again: what was said of the edge that went is forgotten.
  const auto fewer = plan::without_corner(*more, {0, 2});
  ASSERT_TRUE(fewer.has_value());
  EXPECT_EQ(ring(*fewer), ring(element));
  EXPECT_EQ(std::get<plan::PavedArea>(fewer->kind).edges, (std::vector<plan::EdgeChoice>{{1, "joint"}, {2, "none"}}));
}

// A corner on an arc shares its sweep: the circle stays (within the grid), so does the area.
TEST(Corners, aCornerOnAnArcKeepsTheCircle) {
  const plan::Element round = small::paved("A1", small::circle(0, 0, 100));
  const auto more = plan::with_new_corner(round, {0, 0}, at(0, -100));
  ASSERT_TRUE(more.has_value());
  ASSERT_EQ(ring(*more).size(), 3U);
  EXPECT_NEAR(ring(*more)[0].bulge, std::tan(std::numbers::pi / 8), 1e-9);
  EXPECT_NEAR(area(*more), area(round), 1e-9);
}

TEST(Corners, aShapeKeepsTheCornersThatItNeeds) {
  const auto triangle = plan::without_corner(deck(), {0, 3});
  ASSERT_TRUE(triangle.has_value());
  EXPECT_NEAR(area(*triangle), square_inches(120 * 60 / 2.0), 1e-12);
  EXPECT_EQ(plan::without_corner(*triangle, {0, 0}).error().code, "corners-too-few");
  plan::Element line = small::run("K1", {{at(0, 0), 0, {}}, {at(10, 0), 0, {}}}, at(10, 20), "kerb");
  const auto shorter = plan::without_corner(line, {-1, 2});
  ASSERT_TRUE(shorter.has_value());
  EXPECT_EQ(std::get<plan::EdgeRun>(shorter->kind).line.end, at(10, 0));
  EXPECT_EQ(plan::without_corner(*shorter, {-1, 0}).error().code, "corners-too-few");
}

// The lower edge bent to a half circle of 60 in radius outwards adds pi 60^2 / 2.
TEST(Corners, anEdgeBecomesAnArcAndStraightAgain) {
  const auto bent = plan::with_bulge(deck(), {0, 0}, 1);
  ASSERT_TRUE(bent.has_value());
  EXPECT_NEAR(area(*bent), square_inches(7200 + std::numbers::pi * 3600 / 2), 1e-9);
  EXPECT_EQ(plan::with_bulge(*bent, {0, 0}, 0).value(), deck());
  EXPECT_EQ(plan::with_bulge(deck(), {0, 0}, NAN).error().code, "edge-bulge");
}

// The right side moved out by 12 in: 12 x 60 more; the left one of a trapezoid slides along its neighbours.
TEST(Corners, anEdgeMovesSquareToItself) {
  const auto out = plan::with_edge_moved(deck(), {0, 1}, Length::inches(12));
  ASSERT_TRUE(out.has_value());
  EXPECT_EQ(ring(*out)[1].from, at(132, 0));
  EXPECT_EQ(ring(*out)[2].from, at(132, 60));
  const plan::Element wedge =
      small::paved("A1", {{at(0, 0), 0, {}}, {at(120, 0), 0, {}}, {at(120, 120), 0, {}}});  // a right triangle
  const auto cut = plan::with_edge_moved(wedge, {0, 1}, Length::inches(-20));
  ASSERT_TRUE(cut.has_value());
  EXPECT_EQ(ring(*cut)[1].from, at(100, 0));
  EXPECT_EQ(ring(*cut)[2].from, at(100, 100));
  EXPECT_EQ(plan::with_edge_moved(wedge, {0, 1}, Length::inches(-120)).error().code, "edge-used-up");
  // A ring drawn clockwise: out is out all the same.
  const plan::Element other = small::paved("A1", geometry::reversed(small::rectangle(0, 0, 120, 60)));
  for (int edge = 0; edge < 4; ++edge) {
    const auto grown = plan::with_edge_moved(other, {0, edge}, Length::inches(1));
    ASSERT_TRUE(grown.has_value());
    EXPECT_LT(area(*grown), area(other)) << "clockwise areas are negative: more of it";
  }
}

TEST(Corners, anEdgeGetsATypedLength) {
  const auto longer = plan::with_edge_length(deck(), {0, 0}, Length::inches(150));
  ASSERT_TRUE(longer.has_value());
  EXPECT_EQ(ring(*longer)[1].from, at(150, 0));
  EXPECT_EQ(plan::with_edge_length(deck(), {0, 0}, Length{}).error().code, "edge-zero-length");
}

// Moving an edge out and back by the same is the identity where the corners lie on the grid.
TEST(Corners, outAndBack) {
  EXPECT_TRUE(rc::check("rectangles", [] {
    const int edge = *rc::gen::inRange(0, 4);
    const auto by = Length::of_steps(*rc::gen::inRange(1, 300000));
    const auto out = plan::with_edge_moved(deck(), {0, edge}, by);
    RC_ASSERT(out.has_value());
    const auto back = plan::with_edge_moved(*out, {0, edge}, Length::of_steps(-by.steps()));
    RC_ASSERT(back.has_value());
    RC_ASSERT(*back == deck());
  }));
}

// Every corner of a freeform ring lies on its curve.
TEST(Corners, aFreeformRingGoesThroughItsCorners) {
  plan::Element element = small::pool("P1", {});
  auto& outline = std::get<plan::Pool>(element.kind).outline;
  outline[0].through = {at(0, 0), at(60, -10), at(110, 30), at(70, 70), at(10, 60)};
  for (const plan::Grip& grip : plan::corners(element)) {
    EXPECT_TRUE(grip.control);
    const auto edges = plan::drawn_edges(element);
    EXPECT_TRUE(std::ranges::any_of(edges, [&](const plan::DrawnEdge& edge) { return edge.curve.start == grip.at; }));
  }
  const auto moved = plan::with_corner_at(element, {0, 2}, at(120, 40));
  ASSERT_TRUE(moved.has_value());
  EXPECT_EQ(std::get<plan::Pool>(moved->kind).outline[0].through[2], at(120, 40));
}

}  // namespace
