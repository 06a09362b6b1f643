// Corners and edges of what is drawn.
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cmath>

#include "plan/edits.h"
#include "small_jobs.h"

namespace {

using geometry::Point;
using plan::Corner;
using small::at;
using units::Length;

plan::Element rectangle() {
  plan::Element element = small::paved("A1", small::rectangle(0, 0, 120, 60));
  std::get<plan::PavedArea>(element.kind).edges = {{0, "wall"}, {2, "none"}};
  return element;
}
plan::Element line(std::vector<Point> points) {
  geometry::Ring edges;
  for (std::size_t i = 0; i + 1 < points.size(); ++i) edges.push_back({points[i], 0, {}});
  return small::run("K1", edges, points.back(), "kerb");
}
const plan::PavedArea& area_of(const plan::Element& element) { return std::get<plan::PavedArea>(element.kind); }
const geometry::Ring& ring_of(const plan::Element& element) { return area_of(element).outline[0].edges; }
const plan::DrawnLine& line_of(const plan::Element& element) { return std::get<plan::EdgeRun>(element.kind).line; }

using Choices = std::vector<plan::EdgeChoice>;

TEST(CornerNumbers, AreNumberedAsDrawn) {
  plan::Element element = rectangle();
  std::get<plan::PavedArea>(element.kind).outline.push_back({{}, {at(20, 20), at(30, 20), at(25, 30)}});
  const auto grips = plan::corners(element);
  ASSERT_EQ(grips.size(), 7U);  // 4 + 3 control points
  EXPECT_EQ(grips[2].corner, (Corner{0, 2}));
  EXPECT_EQ(grips[2].at, at(120, 60));
  EXPECT_FALSE(grips[2].control);
  EXPECT_EQ(grips[5].corner, (Corner{1, 1}));
  EXPECT_TRUE(grips[5].control);
  const auto run = plan::corners(line({at(0, 0), at(10, 0), at(10, 10)}));
  ASSERT_EQ(run.size(), 3U);
  EXPECT_EQ(run[2].corner, (Corner{-1, 2}));
  EXPECT_EQ(plan::corners({"n", "", plan::Note{}})[0].corner, (Corner{-2, 0}));
}

TEST(CornerNumbers, EdgesOfAFreeformRingCloseAndTellTheirControlPoint) {
  plan::PavedArea area;
  area.outline = {{{}, {at(0, 0), at(100, 0), at(100, 100), at(0, 80)}}};
  const auto edges = plan::drawn_edges({"A1", "", area});
  ASSERT_FALSE(edges.empty());
  std::vector<int> seen;
  for (std::size_t i = 0; i < edges.size(); ++i) {
    EXPECT_EQ(edges[i].curve.end, edges[(i + 1) % edges.size()].curve.start);
    if (seen.empty() || seen.back() != edges[i].start.number) seen.push_back(edges[i].start.number);
  }
  EXPECT_EQ(seen, (std::vector<int>{0, 1, 2, 3}));
}

TEST(CornerNumbers, OneMoves) {
  const auto made = plan::with_corner_at(rectangle(), {0, 2}, at(130, 70));
  ASSERT_TRUE(made);
  EXPECT_EQ(ring_of(*made)[2].from, at(130, 70));
  EXPECT_EQ(ring_of(*made)[1].from, at(120, 0));
  EXPECT_EQ(area_of(*made).edges, area_of(rectangle()).edges);
  const auto end = plan::with_corner_at(line({at(0, 0), at(10, 0)}), {-1, 1}, at(20, 5));
  ASSERT_TRUE(end);
  EXPECT_EQ(line_of(*end).end, at(20, 5));
  const auto note = plan::with_corner_at({"n", "", plan::Note{}}, {-2, 0}, at(3, 3));
  ASSERT_TRUE(note);
  EXPECT_EQ(std::get<plan::Note>(note->kind).at, at(3, 3));
}

TEST(CornerNumbers, OneOnItsNeighbourIsRefused) {
  const auto made = plan::with_corner_at(rectangle(), {0, 3}, at(0, 0));  // over the seam of the ring
  ASSERT_FALSE(made);
  EXPECT_EQ(made.error().code, "edge-zero-length");
  EXPECT_EQ(made.error().place.element, "A1");
  EXPECT_TRUE(plan::with_corner_at(line({at(0, 0), at(10, 0), at(10, 10)}), {-1, 2}, at(0, 0)));  // a line may close
  EXPECT_EQ(plan::with_corner_at(rectangle(), {0, 9}, at(0, 0)).error().code, "corner-none");
  EXPECT_EQ(plan::with_corner_at(rectangle(), {4, 0}, at(0, 0)).error().code, "corner-none");
}

TEST(CornerNumbers, ANewOneLeavesWhatIsSaidOfEdgesWithThem) {
  const auto made = plan::with_new_corner(rectangle(), {0, 0}, at(48, 0));
  ASSERT_TRUE(made);
  EXPECT_EQ(ring_of(*made).size(), 5U);
  EXPECT_EQ(ring_of(*made)[1].from, at(48, 0));
  EXPECT_EQ(area_of(*made).edges, (Choices{{0, "wall"}, {1, "wall"}, {3, "none"}}));  // both halves; 2 -> 3
  const auto back = plan::without_corner(*made, {0, 1});
  ASSERT_TRUE(back);
  EXPECT_EQ(ring_of(*back), ring_of(rectangle()));
  EXPECT_EQ(area_of(*back).edges, area_of(rectangle()).edges);
  EXPECT_EQ(plan::with_new_corner(rectangle(), {0, 0}, at(120, 0)).error().code, "edge-zero-length");
}

TEST(CornerNumbers, ANewOneInAHoleCountsOn) {
  plan::Element element = rectangle();
  auto& area = std::get<plan::PavedArea>(element.kind);
  area.outline.push_back({small::rectangle(20, 20, 40, 40), {}});
  area.edges = {{5, "hole"}, {6, "next"}};  // edges 1 and 2 of the hole: 4 edges lie before it
  const auto made = plan::with_new_corner(element, {1, 1}, at(40, 30));
  ASSERT_TRUE(made);
  EXPECT_EQ(area_of(*made).edges, (Choices{{5, "hole"}, {6, "hole"}, {7, "next"}}));
}

TEST(CornerNumbers, AFallThatChangesAlongASplitEdgeIsSharedAtTheCorner) {
  plan::Element element = rectangle();
  plan::Finish finish;
  plan::FallFrom fall;
  fall.edge = 0;
  fall.height = Length::inches(10);
  fall.height_end = Length::inches(20);
  finish.from = {fall};
  std::get<plan::PavedArea>(element.kind).finish = finish;
  const auto made = plan::with_new_corner(element, {0, 0}, at(48, 0));  // 48 of 120 in: 0.4
  ASSERT_TRUE(made);
  const auto& from = area_of(*made).finish->from;
  ASSERT_EQ(from.size(), 2U);
  EXPECT_EQ(from[0].edge, 0);
  EXPECT_EQ(from[0].height_end, Length::inches(14));  // 10 + 0.4 x (20 - 10)
  EXPECT_EQ(from[1].edge, 1);
  EXPECT_EQ(from[1].height, Length::inches(14));
  EXPECT_EQ(from[1].height_end, Length::inches(20));
}

TEST(CornerNumbers, ANewOneOnAnArcKeepsItsCircle) {
  // A half circle over 120 in, radius 60: its middle lies 60 in beyond the chord, each half is a quarter circle.
  plan::Element element = rectangle();
  std::get<plan::PavedArea>(element.kind).outline[0].edges[0].bulge = 1;
  const auto made = plan::with_new_corner(element, {0, 0}, at(60, -60));
  ASSERT_TRUE(made);
  const double quarter = std::tan(std::atan(1.0) / 2);  // tan(90 degrees / 4)
  EXPECT_NEAR(ring_of(*made)[0].bulge, quarter, 1e-9);
  EXPECT_NEAR(ring_of(*made)[1].bulge, quarter, 1e-9);
}

TEST(CornerNumbers, TheLastThreeStay) {
  const plan::Element triangle = small::paved("A1", {{at(0, 0), 0, {}}, {at(9, 0), 0, {}}, {at(9, 9), 0, {}}});
  EXPECT_EQ(plan::without_corner(triangle, {0, 1}).error().code, "corners-too-few");
  EXPECT_EQ(plan::without_corner(line({at(0, 0), at(9, 0)}), {-1, 0}).error().code, "corners-too-few");
  EXPECT_EQ(plan::without_corner(small::paved("A1", small::circle(0, 0, 9)), {0, 0}).error().code, "corners-too-few");
  const auto shorter = plan::without_corner(line({at(0, 0), at(9, 0), at(9, 9)}), {-1, 2});
  ASSERT_TRUE(shorter);
  EXPECT_EQ(line_of(*shorter).end, at(9, 0));
  EXPECT_EQ(line_of(*shorter).edges.size(), 1U);
}

TEST(CornerNumbers, WhatIsSaidOfAnEdgeThatGoesIsForgotten) {
  const auto made = plan::without_corner(rectangle(), {0, 2});
  ASSERT_TRUE(made);
  EXPECT_EQ(area_of(*made).edges, (Choices{{0, "wall"}}));
}

TEST(EdgeChanges, ToArcAndBack) {
  const auto arc = plan::with_bulge(rectangle(), {0, 1}, 0.3);
  ASSERT_TRUE(arc);
  EXPECT_EQ(ring_of(*arc)[1].bulge, 0.3);
  EXPECT_EQ(*plan::with_bulge(*arc, {0, 1}, 0), rectangle());
  EXPECT_EQ(plan::with_bulge(rectangle(), {0, 1}, std::nan("")).error().code, "edge-bulge");
  EXPECT_EQ(plan::with_bulge(line({at(0, 0), at(9, 0)}), {-1, 1}, 1).error().code, "corner-none");
}

TEST(EdgeChanges, MovedSquareToThemselves) {
  const auto out = plan::with_edge_moved(rectangle(), {0, 1}, Length::inches(12));  // the edge x = 120, outwards
  ASSERT_TRUE(out);
  EXPECT_EQ(ring_of(*out), small::rectangle(0, 0, 132, 60));
  const auto in = plan::with_edge_moved(rectangle(), {0, 1}, Length::inches(-20));
  ASSERT_TRUE(in);
  EXPECT_EQ(ring_of(*in), small::rectangle(0, 0, 100, 60));
  // Of a clockwise ring outwards is outwards too.
  const plan::Element clockwise = small::paved("A1", geometry::reversed(small::rectangle(0, 0, 120, 60)));
  const auto grown = plan::with_edge_moved(clockwise, {0, 0}, Length::inches(10));
  ASSERT_TRUE(grown);
  EXPECT_GT(std::abs(geometry::signed_area(ring_of(*grown)).si()),
            std::abs(geometry::signed_area(ring_of(clockwise)).si()));
}

TEST(EdgeChanges, MovedAlongSlantedNeighbours) {
  // A trapezium 120 below, 60 above, 60 high: its sides lean 30 in over 60. The top 20 in down is 60 + 2 x 10 = 80.
  const plan::Element element =
      small::paved("A1", {{at(0, 0), 0, {}}, {at(120, 0), 0, {}}, {at(90, 60), 0, {}}, {at(30, 60), 0, {}}});
  const auto made = plan::with_edge_moved(element, {0, 2}, Length::inches(-20));
  ASSERT_TRUE(made);
  EXPECT_EQ(ring_of(*made)[2].from, at(100, 40));
  EXPECT_EQ(ring_of(*made)[3].from, at(20, 40));
  // Its sides meet 60 in above the top: further out nothing is left of it.
  EXPECT_EQ(plan::with_edge_moved(element, {0, 2}, Length::inches(61)).error().code, "edge-used-up");
}

TEST(EdgeChanges, GetALength) {
  const auto made = plan::with_edge_length(rectangle(), {0, 0}, Length::inches(150));
  ASSERT_TRUE(made);
  EXPECT_EQ(ring_of(*made)[1].from, at(150, 0));
  EXPECT_EQ(ring_of(*made)[2].from, at(120, 60));
  EXPECT_EQ(plan::with_edge_length(rectangle(), {0, 0}, Length()).error().code, "edge-zero-length");
  // A half circle of twice the length has twice the chord.
  const auto bent = plan::with_bulge(line({at(0, 0), at(100, 0)}), {-1, 0}, 1);
  const double now = plan::drawn_edges(*bent)[0].curve.length();
  const auto longer = plan::with_edge_length(*bent, {-1, 0}, Length::of_steps(std::llround(2 * now)));
  ASSERT_TRUE(longer);
  EXPECT_LE(geometry::length(line_of(*longer).end - at(200, 0)), 1.0);
}

TEST(CornerNumbers, AddedAndTakenAgainIsWhatItWas) {
  EXPECT_TRUE(rc::check("on any straight edge", [] {
    const long wide = *rc::gen::inRange<long>(4, 400), deep = *rc::gen::inRange<long>(4, 400);
    plan::Element element = small::paved("A1", small::rectangle(0, 0, wide, deep));
    const int edge = *rc::gen::inRange(0, 4);
    for (int i = 0; i < 4; ++i) std::get<plan::PavedArea>(element.kind).edges.push_back({i, std::to_string(i)});
    const geometry::Curve curve = plan::drawn_edges(element)[static_cast<std::size_t>(edge)].curve;
    const Point middle = geometry::moved(curve.start, curve.at(*rc::gen::inRange(1, 100) / 100.0));
    RC_PRE(middle != curve.start && middle != curve.end);
    const auto more = plan::with_new_corner(element, {0, edge}, middle);
    RC_ASSERT(more.has_value());
    RC_ASSERT(area_of(*more).edges.size() == 5U);
    const auto back = plan::without_corner(*more, {0, edge + 1});
    RC_ASSERT(back.has_value());
    RC_ASSERT(*back == element);
  }));
}

}  // namespace
