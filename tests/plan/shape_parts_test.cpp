// Outlines grown, cut in two, joined, pierced and traced.
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "plan/edits.h"
#include "plan/footprint.h"
#include "small_jobs.h"

namespace {

using geometry::Point;
using small::at;
using units::Length;

plan::Element rectangle(long x0 = 0, long y0 = 0, long x1 = 120, long y1 = 60) {
  plan::Element element = small::paved("A1", small::rectangle(x0, y0, x1, y1));
  for (int i = 0; i < 4; ++i) std::get<plan::PavedArea>(element.kind).edges.push_back({i, "e" + std::to_string(i)});
  return element;
}
const plan::PavedArea& area_of(const plan::Element& element) { return std::get<plan::PavedArea>(element.kind); }
problem::Result<geometry::Shape> shape_of(const plan::Element& element) {
  return geometry::shape(plan::drawing(area_of(element).outline, 1));
}
double area_m2(const plan::Element& element) { return shape_of(element)->region.area().si(); }
double area_ft2(const plan::Element& element) { return small::square_feet(shape_of(element)->region.area()); }

// What is said of the edge of the drawing whose middle is there; empty: nothing, or no such edge.
std::string said_at(const plan::Element& element, Point middle) {
  int number = 0;
  for (const plan::DrawnEdge& edge : plan::drawn_edges(element)) {
    if (geometry::moved(edge.curve.start, edge.curve.at(0.5)) == middle) {
      for (const plan::EdgeChoice& choice : area_of(element).edges)
        if (choice.edge == number) return choice.junction;
    }
    ++number;
  }
  return "";
}

TEST(OffsetParts, GrowsAndShrinksAnOutline) {
  const auto out = plan::offset(rectangle(), Length::inches(12));
  ASSERT_TRUE(out);
  EXPECT_NEAR(area_ft2(*out), 12.0 * 7, 1e-6);  // 10 + 2 by 5 + 2 ft, corners mitred
  EXPECT_EQ(said_at(*out, at(60, -12)), "e0");
  EXPECT_EQ(said_at(*out, at(132, 30)), "e1");
  const auto in = plan::offset(rectangle(), Length::inches(-12));
  ASSERT_TRUE(in);
  EXPECT_NEAR(area_ft2(*in), 8.0 * 3, 1e-6);  // 10 - 2 by 5 - 2 ft
  EXPECT_EQ(said_at(*in, at(60, 48)), "e2");
  EXPECT_EQ(plan::offset(rectangle(), Length::inches(-30)).error().code, "offset-parts");
}

TEST(OffsetParts, MovesALineToItsLeft) {
  const auto made =
      plan::offset(small::run("K1", {{at(0, 0), 0, {}}, {at(100, 0), 0, {}}}, at(100, 50), "kerb"), Length::inches(10));
  ASSERT_TRUE(made);
  const auto& line = std::get<plan::EdgeRun>(made->kind).line;
  EXPECT_EQ(line.edges[0].from, at(0, 10));
  EXPECT_EQ(line.edges[1].from, at(90, 10));
  EXPECT_EQ(line.end, at(90, 50));
}

TEST(OffsetParts, WhatIsNoShapeSaysSo) {
  EXPECT_EQ(plan::offset({"n", "", plan::Note{}}, Length::inches(1)).error().code, "shape-not-closed");
  // A bow tie.
  const auto crossed =
      small::paved("A9", {{at(0, 0), 0, {}}, {at(10, 10), 0, {}}, {at(10, 0), 0, {}}, {at(0, 10), 0, {}}});
  const auto made = plan::offset(crossed, Length::inches(1));
  ASSERT_FALSE(made);
  EXPECT_EQ(made.error().code, "outline-crosses-itself");
  EXPECT_EQ(made.error().place.element, "A9");
}

TEST(OffsetParts, OfAFreeformOutlineGivesArcsAndIsAsWideAllRound) {
  plan::PavedArea area;
  area.outline = {{{}, {at(0, 0), at(200, 0), at(200, 150), at(0, 150)}}};
  const plan::Element element{"A1", "", area};
  const auto made = plan::offset(element, Length::inches(6));
  ASSERT_TRUE(made);
  EXPECT_TRUE(area_of(*made).outline[0].through.empty());
  // Arcs that run on into each other: P x d + pi d squared more (Steiner); here the curve bends one way only.
  const double d = Length::inches(6).metres().si();
  const double around = shape_of(element)->region.perimeter().si();
  EXPECT_NEAR(area_m2(*made), area_m2(element) + around * d + std::numbers::pi * d * d, around * 0.0001);
}

TEST(SplitParts, GivesTwoPartsWithTheirEdges) {
  plan::Element element = rectangle();
  std::get<plan::PavedArea>(element.kind).taped_area_m2 = 4.6;
  const auto parts = plan::split(element, at(48, -10), at(48, 70), "A2");
  ASSERT_TRUE(parts);
  const auto& [first, second] = *parts;
  EXPECT_EQ(first.id, "A1");
  EXPECT_EQ(second.id, "A2");
  EXPECT_NEAR(area_ft2(first), 4.0 * 5, 1e-9);   // left of a line upwards: 48 in of 120
  EXPECT_NEAR(area_ft2(second), 6.0 * 5, 1e-9);  // 72 in
  EXPECT_EQ(said_at(first, at(24, 0)), "e0");
  EXPECT_EQ(said_at(first, at(0, 30)), "e3");
  EXPECT_EQ(said_at(first, at(48, 30)), "");  // the cut is new
  EXPECT_EQ(said_at(second, at(84, 0)), "e0");
  EXPECT_EQ(said_at(second, at(120, 30)), "e1");
  // What was measured of the whole is no longer the area of either.
  EXPECT_FALSE(area_of(first).taped_area_m2);
  EXPECT_FALSE(area_of(second).taped_area_m2);
}

TEST(SplitParts, SharesAHeightThatChangesAlongTheCutEdge) {
  plan::Element element = rectangle();
  plan::FallFrom fall;
  fall.edge = 0;
  fall.height = Length::inches(10);
  fall.height_end = Length::inches(20);
  plan::FallFrom house;
  house.element = "B1";
  house.edge = 1;
  plan::Finish finish;
  finish.from = {house, fall};
  std::get<plan::PavedArea>(element.kind).finish = finish;
  const auto parts = plan::split(element, at(48, -10), at(48, 70), "A2");
  ASSERT_TRUE(parts);
  const auto& left = area_of(parts->first).finish->from;
  const auto& right = area_of(parts->second).finish->from;
  ASSERT_EQ(left.size(), 2U);
  ASSERT_EQ(right.size(), 2U);
  EXPECT_EQ(left[0], house);                          // of another element: its numbers stay
  EXPECT_EQ(left[1].height, Length::inches(10));      // from 0
  EXPECT_EQ(left[1].height_end, Length::inches(14));  // to 48 of 120 in: 10 + 0.4 x 10
  EXPECT_EQ(right[1].height, Length::inches(14));
  EXPECT_EQ(right[1].height_end, Length::inches(20));
}

TEST(SplitParts, WhatIsNoCutSaysSo) {
  EXPECT_EQ(plan::split(rectangle(), at(0, 0), at(0, 0), "A2").error().code, "split-line");
  EXPECT_EQ(plan::split(rectangle(), at(200, 0), at(200, 9), "A2").error().code, "split-misses");
  EXPECT_EQ(plan::split(small::run("K1", {{at(0, 0), 0, {}}}, at(9, 0), "kerb"), at(0, 0), at(1, 1), "A2").error().code,
            "shape-not-closed");
  // Across both legs of a U.
  const auto u = small::paved("A1", {{at(0, 0), 0, {}},
                                     {at(90, 0), 0, {}},
                                     {at(90, 60), 0, {}},
                                     {at(60, 60), 0, {}},
                                     {at(60, 20), 0, {}},
                                     {at(30, 20), 0, {}},
                                     {at(30, 60), 0, {}},
                                     {at(0, 60), 0, {}}});
  EXPECT_EQ(plan::split(u, at(-5, 40), at(95, 40), "A2").error().code, "split-parts");
}

TEST(JoinParts, KeepsWhatIsSaidOfBothOnesEdges) {
  plan::Element second = rectangle(120, 0, 180, 60);
  second.id = "A2";
  auto& area = std::get<plan::PavedArea>(second.kind);
  area.edges = {{1, "far"}, {3, "between"}};
  const auto made = plan::joined(rectangle(), second);
  ASSERT_TRUE(made);
  EXPECT_EQ(made->id, "A1");
  EXPECT_NEAR(area_ft2(*made), 15.0 * 5, 1e-9);  // 10 + 5 ft by 5 ft
  EXPECT_EQ(said_at(*made, at(180, 30)), "far");
  EXPECT_EQ(said_at(*made, at(0, 30)), "e3");
  for (const plan::EdgeChoice& choice : area_of(*made).edges) {
    EXPECT_NE(choice.junction, "between");  // both inner edges are gone
    EXPECT_NE(choice.junction, "e1");
  }
}

TEST(JoinParts, ApartIsRefused) {
  EXPECT_EQ(plan::joined(rectangle(), rectangle(200, 0, 220, 60)).error().code, "join-apart");
  EXPECT_EQ(plan::joined(rectangle(), {"n", "", plan::Note{}}).error().code, "shape-not-closed");
}

TEST(HoleParts, IsCutAndEdgesKeepTheirNumbers) {
  plan::Element element = rectangle();
  std::get<plan::PavedArea>(element.kind).taped_area_m2 = 4.6;
  const auto made = plan::with_hole(element, {small::rectangle(12, 12, 36, 36), {}});
  ASSERT_TRUE(made);
  EXPECT_NEAR(area_ft2(*made), 10.0 * 5 - 2.0 * 2, 1e-9);
  EXPECT_EQ(area_of(*made).edges, area_of(element).edges);
  EXPECT_FALSE(area_of(*made).taped_area_m2);
  EXPECT_EQ(plan::with_hole(rectangle(), {small::rectangle(100, 12, 140, 36), {}}).error().code, "hole-outside");
  EXPECT_EQ(plan::with_hole(*made, {small::rectangle(20, 20, 50, 50), {}}).error().code, "holes-overlap");
}

TEST(TraceParts, WalksTheShorterWayOrTheLonger) {
  const auto short_way = plan::traced(rectangle(), at(20, 0), at(120, 30));
  ASSERT_TRUE(short_way);
  EXPECT_EQ(short_way->edges.size(), 2U);
  EXPECT_EQ(short_way->edges[0].from, at(20, 0));
  EXPECT_EQ(short_way->edges[1].from, at(120, 0));
  EXPECT_EQ(short_way->end, at(120, 30));
  const auto long_way = plan::traced(rectangle(), at(20, 0), at(120, 30), true);
  ASSERT_TRUE(long_way);
  EXPECT_EQ(long_way->edges[0].from, at(20, 0));
  EXPECT_EQ(long_way->end, at(120, 30));
  EXPECT_EQ(long_way->edges.size(), 4U);  // by (0, 0), (0, 60), (120, 60)
  EXPECT_EQ(plan::traced({"n", "", plan::Note{}}, at(0, 0), at(1, 1)).error().code, "trace-none");
  EXPECT_EQ(plan::traced(rectangle(), at(20, 0), at(20, 0)).error().code, "trace-none");
}

TEST(TraceParts, AnArcIsSharedAtThePlace) {
  // A circle of 100 in radius; a quarter of it from east to north.
  const auto made = plan::traced(small::paved("A1", small::circle(0, 0, 100)), at(100, 0), at(0, 100));
  ASSERT_TRUE(made);
  double steps = 0;
  for (std::size_t i = 0; i < made->edges.size(); ++i) {
    const Point end = i + 1 < made->edges.size() ? made->edges[i + 1].from : made->end;
    steps += geometry::Curve{made->edges[i].from, end, made->edges[i].bulge}.length();
  }
  EXPECT_NEAR(steps / Length::steps_per_inch, std::numbers::pi / 2 * 100, 0.001);
}

plan::Element any_area() {
  const int count = *rc::gen::inRange(3, 9);
  geometry::Ring ring;
  for (int i = 0; i < count; ++i) {
    const double turn = 2 * std::numbers::pi * i / count;
    const double out = *rc::gen::inRange(800'000, 3'000'000);
    ring.push_back({geometry::moved(at(0, 0), {out * std::cos(turn), out * std::sin(turn)}), 0, {}});
  }
  return small::paved("A1", ring);
}

TEST(SplitParts, PartsAddUpAndJoinAgain) {
  EXPECT_TRUE(rc::check("two parts are the whole", [] {
    const plan::Element whole = any_area();
    const Point a = at(*rc::gen::inRange(-60, 60), *rc::gen::inRange(-60, 60));
    const Point b = at(*rc::gen::inRange(-60, 60), *rc::gen::inRange(-60, 60));
    RC_PRE(a != b);
    const auto parts = plan::split(whole, a, b, "A2");
    if (!parts) {
      RC_ASSERT(parts.error().code == "split-parts" || parts.error().code == "split-misses");
      return;
    }
    RC_TAG("cut");
    // Each end of the cut lies on the grid, within 0.71 steps of the edge that it was put on: the edge is bent by that.
    double around = shape_of(whole)->region.perimeter().si();
    const double bound = around / Length::steps_per_metre;
    RC_ASSERT(std::abs(area_m2(parts->first) + area_m2(parts->second) - area_m2(whole)) <= bound);
    const auto together = plan::joined(parts->first, parts->second);
    RC_ASSERT(together.has_value());
    RC_ASSERT(std::abs(area_m2(*together) - area_m2(whole)) <= bound);
  }));
}

// Any closed shape, valid or not: what is valid before is valid after, or a problem is given.
TEST(ShapeParts, GiveAValidOutlineOrAProblem) {
  EXPECT_TRUE(rc::check("offset, split, hole", [] {
    const int count = *rc::gen::inRange(3, 8);
    geometry::Ring ring;
    for (int i = 0; i < count; ++i)
      ring.push_back({at(30 * *rc::gen::inRange(0, 6), 30 * *rc::gen::inRange(0, 6)),
                      *rc::gen::inRange(0, 4) == 0 ? *rc::gen::inRange(-9, 10) / 10.0 : 0,
                      {}});
    const plan::Element element = small::paved("A1", ring);
    std::vector<plan::Element> made;
    if (auto grown = plan::offset(element, Length::inches(*rc::gen::inRange(-30, 30)))) made.push_back(*grown);
    if (auto parts = plan::split(element, at(70, 0), at(*rc::gen::inRange(0, 140), 151), "A2")) {
      made.push_back(parts->first);
      made.push_back(parts->second);
    }
    if (auto pierced = plan::with_hole(element, {small::circle(75, 75, 8), {}})) made.push_back(*pierced);
    for (const plan::Element& one : made) {
      const auto shape = shape_of(one);
      RC_ASSERT(shape.has_value());
      RC_ASSERT(!shape->region.empty());
    }
    if (!shape_of(element)) RC_ASSERT(made.empty());
  }));
}

}  // namespace
