// Outlines and lines by events: clicks, typed lengths, arcs in three ways, rectangle, circles, freeform.
#include "sketch/shaper.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <numbers>

#include "bench_of_hands.h"
#include "geometry/validity.h"
#include "sketch/draw_tool.h"
#include "sketch/shapes.h"
#include "units/number.h"

namespace {

using geometry::Point;
using geometry::Ring;
using hands::Bench;
using hands::feet;
using sketch::Hand;
using sketch::Key;
using units::Length;

constexpr double pi = std::numbers::pi;

Bench drawing(Hand hand = Hand::area) {
  Bench bench;
  bench.tool = sketch::draw_tool(hand);
  return bench;
}
std::vector<Point> corners(const Ring& ring) {
  std::vector<Point> made;
  for (const geometry::Edge& edge : ring) made.push_back(edge.from);
  return made;
}
const Ring& ring(const Bench& bench) { return bench.newest_of<plan::PavedArea>().outline.front().edges; }
double square_feet(const Ring& edges) {
  return geometry::signed_area(edges).si() / units::square_metres_per_square_foot;
}

TEST(Outline, FourClicksAndEnter) {
  Bench bench = drawing();
  bench.click(0, 0);
  bench.click(20, 0);
  bench.click(20, 12);
  bench.click(0, 12);
  EXPECT_TRUE(bench.job.elements.empty());
  EXPECT_TRUE(bench.view().busy);
  bench.key(Key::enter);
  ASSERT_EQ(bench.job.elements.size(), 1U);
  EXPECT_EQ(bench.newest().id, "A1");
  EXPECT_EQ(bench.names, std::vector<std::string>{"Draw area A1"});
  EXPECT_EQ(bench.selected, std::vector<plan::ElementId>{"A1"});
  EXPECT_EQ(corners(ring(bench)), (std::vector{feet(0, 0), feet(20, 0), feet(20, 12), feet(0, 12)}));
  EXPECT_FALSE(bench.view().busy);
}

TEST(Outline, DrawnClockwiseItIsKeptCounterClockwiseFromTheSameCorner) {
  Bench bench = drawing();
  bench.click(0, 0);
  bench.click(0, 12);
  bench.click(20, 12);
  bench.click(20, 0);
  bench.key(Key::enter);
  EXPECT_EQ(corners(ring(bench)), (std::vector{feet(0, 0), feet(20, 0), feet(20, 12), feet(0, 12)}));
}

TEST(Outline, AClickOnTheFirstPointCloses) {
  Bench bench = drawing();
  for (const auto& [x, y] : {std::pair{0.0, 0.0}, {20.0, 0.0}, {20.0, 12.0}, {0.2, 0.1}}) bench.click(x, y);
  ASSERT_EQ(bench.job.elements.size(), 1U);
  EXPECT_EQ(corners(ring(bench)), (std::vector{feet(0, 0), feet(20, 0), feet(20, 12)}));
}

TEST(Outline, ADoubleClickClosesWithTheCornerItSet) {
  Bench bench = drawing();
  bench.click(0, 0);
  bench.click(20, 0);
  bench.click_twice(20, 12);
  ASSERT_EQ(bench.job.elements.size(), 1U);
  EXPECT_EQ(ring(bench).size(), 3U);
}

// 12' 6" towards the pointer, which stands 2 ft off to the east: 12.5 ft due east.
TEST(TypedLength, SetsTheCornerInTheDirectionOfThePointer) {
  Bench bench = drawing();
  bench.click(0, 0);
  bench.point(5, 0);
  bench.enter("length", "12' 6\"");
  bench.point(12.5, 5);
  bench.enter("length", "20");
  bench.point(3, 20);
  bench.enter("length", "12 6");  // 12 ft 6 in in a US job
  bench.key(Key::enter);
  EXPECT_EQ(corners(ring(bench)), (std::vector{feet(0, 0), feet(12.5, 0), feet(12.5, 20), feet(0, 20)}));
  EXPECT_NEAR(square_feet(ring(bench)), 12.5 * 20, 1e-9);
}

TEST(TypedLength, LockedLengthAndDirectionHoldWhereverThePointerIs) {
  Bench bench = drawing();
  bench.click(0, 0);
  bench.type("length", "10'");
  bench.type("angle", "90");
  bench.click(-7, -31);
  bench.type("length", "10'");
  bench.type("angle", "0");
  bench.click(50, 50);
  bench.key(Key::enter);
  // Kept counter-clockwise, so the corners come the other way round.
  EXPECT_EQ(corners(ring(bench)), (std::vector{feet(0, 0), feet(10, 10), feet(0, 10)}));
}

TEST(TypedLength, EastAndNorthOfTheLastCorner) {
  Bench bench = drawing();
  bench.click(1, 1);
  bench.type("x", "3'");
  bench.enter("y", "4'");
  bench.type("x", "-3'");
  bench.enter("y", "0");
  bench.key(Key::enter);
  EXPECT_EQ(corners(ring(bench)), (std::vector{feet(1, 1), feet(4, 5), feet(1, 5)}));
}

TEST(TypedLength, IsInMetresInAMetricJob) {
  Bench bench = drawing();
  bench.job = hands::empty_job(units::System::metric);
  bench.click(0, 0);
  bench.point(5, 0);
  bench.enter("length", "3.81");
  bench.point(12.5, 5);
  bench.enter("length", "400 mm");
  bench.key(Key::enter);
  const Ring& edges = ring(bench);
  EXPECT_EQ(edges[1].from, (Point{Length::millimetres(3810), Length()}));
  EXPECT_EQ(edges[2].from, (Point{Length::millimetres(3810), Length::millimetres(400)}));
}

TEST(TypedLength, WhatIsNotUnderstoodIsNeverSet) {
  Bench bench = drawing();
  bench.click(0, 0);
  bench.point(5, 0);
  for (const char* text : {"12,5", "1'2'", "5 apples", "3/4"}) {
    bench.type("length", text);
    ASSERT_TRUE(bench.field("length")->wrong) << text;
    EXPECT_NE(bench.field("length")->understood, "") << text;
    bench.key(Key::enter);
    ASSERT_TRUE(bench.last.refused) << text;
    bench.click(5, 0);
    ASSERT_TRUE(bench.last.refused) << text;
  }
  bench.type("length", "");
  bench.click(5, 0);
  EXPECT_FALSE(bench.last.refused);
}

TEST(Refused, AnEdgeOfNoLengthAndAnOutlineOfTwoCorners) {
  Bench bench = drawing();
  bench.click(0, 0);
  bench.click(0, 0);
  ASSERT_TRUE(bench.last.refused);
  EXPECT_EQ(bench.last.refused->code, "edge-no-length");
  bench.enter("length", "0");
  ASSERT_TRUE(bench.last.refused);
  bench.type("length", "");
  bench.click(10, 0);
  bench.key(Key::enter);
  ASSERT_TRUE(bench.last.refused);
  EXPECT_EQ(bench.last.refused->code, "shape-too-few");
  bench.click(10, 10);
  bench.key(Key::enter);
  EXPECT_EQ(bench.job.elements.size(), 1U);
}

TEST(Refused, WhatLiesTooFarOut) {
  Bench bench = drawing();
  bench.click(0, 0);
  bench.point(5, 0);
  bench.enter("length", "6000 m");  // the plan reaches 5 km
  ASSERT_TRUE(bench.last.refused);
  EXPECT_EQ(bench.last.refused->code, "place-too-far");
}

TEST(Undo, TakesOnePointBackAndEscapeDropsOnlyWhatIsInHand) {
  Bench bench = drawing();
  bench.click(0, 0);
  bench.click(10, 0);
  bench.click(10, 10);
  bench.key(Key::enter);
  bench.click(20, 0);
  bench.click(30, 0);
  bench.click(30, 7);
  bench.key(Key::undo);
  bench.click(30, 10);
  bench.key(Key::back);
  EXPECT_EQ(bench.view().strokes.front().line.end, feet(30, 0));
  bench.key(Key::escape);
  EXPECT_FALSE(bench.last.leave);
  EXPECT_FALSE(bench.view().busy);
  EXPECT_EQ(bench.job.elements.size(), 1U);
  bench.key(Key::escape);
  EXPECT_TRUE(bench.last.leave);
  bench.key(Key::undo);
  EXPECT_FALSE(bench.last.leave);
}

// One click, then 12' 6" and 20': 12.5 x 20 = 250 square feet.
TEST(Rectangle, OneClickAndTypedSides) {
  Bench bench = drawing();
  bench.choose("rectangle");
  bench.click(3, 4);
  bench.type("width", "12' 6\"");
  bench.enter("depth", "20'");
  ASSERT_EQ(bench.job.elements.size(), 1U);
  EXPECT_EQ(corners(ring(bench)), (std::vector{feet(3, 4), feet(15.5, 4), feet(15.5, 24), feet(3, 24)}));
  EXPECT_NEAR(square_feet(ring(bench)), 250, 1e-9);
}

TEST(Rectangle, EnterAfterTheFirstSideWaitsForTheSecond) {
  Bench bench = drawing();
  bench.choose("rectangle");
  bench.click(0, 0);
  bench.enter("width", "12' 6\"");
  EXPECT_TRUE(bench.job.elements.empty());
  bench.enter("depth", "20'");
  EXPECT_EQ(bench.job.elements.size(), 1U);
}

TEST(Rectangle, TwoCornersInAnyOrderAndTheSideThatPointsAway) {
  Bench bench = drawing();
  bench.choose("rectangle");
  bench.click(10, 10);
  bench.click(4, 2);
  EXPECT_NEAR(square_feet(ring(bench)), 6 * 8, 1e-9);
  bench.click(30, 0);
  bench.point(20, -30);
  bench.type("width", "5'");  // grows west and south, towards the pointer
  bench.enter("depth", "4'");
  const auto made = corners(ring(bench));
  EXPECT_NE(std::ranges::find(made, feet(25, -4)), made.end());
  EXPECT_GT(square_feet(ring(bench)), 0);
}

TEST(Rectangle, TurnedByATypedDirection) {
  Bench bench = drawing();
  bench.choose("rectangle");
  bench.click(0, 0);
  bench.type("angle", "90");
  bench.type("width", "10'");
  bench.enter("depth", "4'");
  const auto made = corners(ring(bench));
  EXPECT_EQ(made, (std::vector{feet(0, 0), feet(0, 10), feet(-4, 10), feet(-4, 0)}));
}

// A circle of radius 7 ft: pi x 49 = 153.938 square feet.
TEST(Circle, ByCentreAndRadiusAcrossAndThroughThreePoints) {
  Bench bench = drawing();
  bench.choose("circle");
  bench.click(0, 0);
  bench.enter("radius", "7'");
  ASSERT_EQ(bench.job.elements.size(), 1U);
  EXPECT_NEAR(square_feet(ring(bench)), pi * 49, 1e-6);
  bench.choose("circle-across");
  bench.click(30, 0);
  bench.click(44, 0);
  EXPECT_NEAR(square_feet(ring(bench)), pi * 49, 1e-6);
  bench.choose("circle-three");
  bench.click(60, 7);  // 3-4-5 times 1.4 and on the axes about (60, 0)
  bench.click(67, 0);
  bench.click(55.8, -5.6);
  ASSERT_EQ(bench.job.elements.size(), 3U);
  EXPECT_EQ(ring(bench).size(), 3U);
  // The corners lie on the grid, within half a step of the circle.
  EXPECT_NEAR(square_feet(ring(bench)), pi * 49, 1e-4);
}

TEST(Circle, ThreePointsInOneLineAreRefused) {
  Bench bench = drawing();
  bench.choose("circle-three");
  bench.click(0, 0);
  bench.click(10, 0);
  bench.click(20, 0);
  ASSERT_TRUE(bench.last.refused);
  EXPECT_EQ(bench.last.refused->code, "circle-in-line");
  EXPECT_TRUE(bench.view().busy);
}

// From (0,0) to (10,0), then an arc on from there: tangent to east, turning left by 180 degrees with radius 5 it ends
// at (10,10).
TEST(Arc, TangentByRadiusAndSweep) {
  Bench bench = drawing();
  bench.click(0, 0);
  bench.click(10, 0);
  bench.key(Key::line_or_arc);
  bench.type("radius", "5'");
  bench.enter("angle", "180");
  bench.key(Key::line_or_arc);
  bench.click(0, 10);
  bench.key(Key::enter);
  ASSERT_EQ(bench.job.elements.size(), 1U);
  const Ring& edges = ring(bench);
  ASSERT_EQ(edges.size(), 4U);
  EXPECT_EQ(edges[2].from, feet(10, 10));
  EXPECT_NEAR(edges[1].bulge, 1, 1e-12);
  EXPECT_NEAR(square_feet(edges), 10 * 10 + pi * 25 / 2, 1e-6);
}

// The half circle from (10,0) to (10,10) again, given by its end and by a point on it.
TEST(Arc, TangentToThePointerAndThroughAThirdPointAgree) {
  Bench tangent = drawing();
  tangent.click(0, 0);
  tangent.click(10, 0);
  tangent.choose("tangent");
  tangent.click(10, 10);
  tangent.key(Key::enter);
  Bench through = drawing();
  through.click(0, 0);
  through.click(10, 0);
  through.choose("through-third");
  through.click(10, 10);
  through.click(15, 5);
  through.key(Key::enter);
  EXPECT_NEAR(square_feet(ring(tangent)), 10 * 10 / 2.0 + pi * 25 / 2, 1e-6);
  EXPECT_NEAR(square_feet(ring(through)), 10 * 10 / 2.0 + pi * 25 / 2, 1e-6);
}

// A chord of 8 with radius 5: half chord 4, so the centre lies 3 off the chord; sweep = 2 asin(4/5).
TEST(Arc, ThroughTwoEndsWithATypedRadius) {
  Bench bench = drawing();
  bench.click(0, 0);
  bench.choose("through-third");
  bench.click(8, 0);
  bench.point(4, -2);
  bench.enter("radius", "5'");
  bench.choose("line");
  bench.click(4, 10);
  bench.key(Key::enter);
  const double sweep = 2 * std::asin(4.0 / 5);
  EXPECT_NEAR(ring(bench)[0].bulge, std::tan(sweep / 4), 1e-9);
}

TEST(Arc, ARadiusThatIsTooSmallIsRefused) {
  Bench bench = drawing();
  bench.click(0, 0);
  bench.choose("through-third");
  bench.click(8, 0);
  bench.enter("radius", "3'");
  ASSERT_TRUE(bench.last.refused);
  EXPECT_EQ(bench.last.refused->code, "arc-too-small");
}

// About (0,0) from (5,0): a quarter turn left ends at (0,5), three quarters at (0,-5).
TEST(Arc, AboutACentreAsFarAsThePointerSwings) {
  for (const bool far : {false, true}) {
    Bench bench = drawing();
    bench.click(5, 0);
    bench.choose("centre-start-end");
    bench.click(0, 0);
    bench.point(4, 4);
    bench.point(0, 6);
    if (far) {
      bench.point(-6, 1);
      bench.point(-4, -4);
      bench.click(0, -6);
    } else {
      bench.click(0, 6);
    }
    bench.key(Key::enter);
    ASSERT_EQ(bench.job.elements.size(), 1U);
    EXPECT_EQ(ring(bench)[1].from, feet(0, far ? -5 : 5));
    EXPECT_NEAR(ring(bench)[0].bulge, std::tan((far ? 1.5 : 0.5) * pi / 4), 1e-9);
  }
}

TEST(Arc, AboutACentreWithATypedSweep) {
  Bench bench = drawing();
  bench.click(5, 0);
  bench.choose("centre-start-end");
  bench.click(0, 0);
  bench.enter("angle", "-90");
  bench.key(Key::enter);
  ASSERT_EQ(bench.job.elements.size(), 1U);
  // A quarter to the right, from (5,0) to (0,-5); the outline is kept counter-clockwise.
  EXPECT_EQ(ring(bench)[1].from, feet(0, -5));
  EXPECT_GT(square_feet(ring(bench)), 0);
}

TEST(Arc, UndoTakesItsEndBeforeTheCornerBefore) {
  Bench bench = drawing();
  bench.click(0, 0);
  bench.click(10, 0);
  bench.choose("through-third");
  bench.click(10, 10);
  bench.key(Key::undo);
  bench.click(10, 6);
  bench.click(13, 3);
  bench.key(Key::enter);
  EXPECT_EQ(ring(bench)[2].from, feet(10, 6));
  EXPECT_NEAR(ring(bench)[1].bulge, 1, 1e-12);
}

TEST(Line, EnterEndsItAndItsFirstPointClosesIt) {
  Bench bench = drawing(Hand::wall);
  bench.click(0, 0);
  bench.click(10, 0);
  bench.click(10, 8);
  bench.key(Key::enter);
  ASSERT_EQ(bench.job.elements.size(), 1U);
  const plan::DrawnLine& open = bench.newest_of<plan::Wall>().line;
  EXPECT_EQ(corners(open.edges), (std::vector{feet(0, 0), feet(10, 0)}));
  EXPECT_EQ(open.end, feet(10, 8));
  bench.click(30, 0);
  bench.click(40, 0);
  bench.click(40, 8);
  bench.click(30, 0);
  ASSERT_EQ(bench.job.elements.size(), 2U);
  const plan::DrawnLine& closed = bench.newest_of<plan::Wall>().line;
  EXPECT_EQ(closed.edges.size(), 3U);
  EXPECT_EQ(closed.end, feet(30, 0));
}

TEST(Freeform, KeepsItsControlPoints) {
  Bench bench = drawing(Hand::pool);
  bench.choose("freeform");
  const std::vector<Point> through{feet(0, 0), feet(10, -3), feet(20, 0), feet(18, 9), feet(4, 8)};
  for (const auto& [x, y] : {std::pair{0.0, 0.0}, {10.0, -3.0}, {20.0, 0.0}, {18.0, 9.0}, {4.0, 8.0}})
    bench.click(x, y);
  bench.key(Key::enter);
  ASSERT_EQ(bench.job.elements.size(), 1U);
  EXPECT_EQ(bench.newest_of<plan::Pool>().outline.front().through, through);
  EXPECT_TRUE(bench.newest_of<plan::Pool>().outline.front().edges.empty());
}

TEST(View, ShowsLengthCornerAndAreaOfWhatIsInHand) {
  Bench bench = drawing();
  bench.click(0, 0);
  bench.click(10, 0);
  bench.point(10, 5);
  std::vector<std::string> texts;
  for (const sketch::Chip& chip : bench.view().chips) texts.push_back(chip.text);
  // 10 x 5 / 2 = 25 square feet.
  EXPECT_EQ(texts, (std::vector<std::string>{"5' 0\"", "90°", "25.0 ft²"}));
  EXPECT_EQ(bench.field("length")->text, "5' 0\"");
  EXPECT_EQ(bench.field("angle")->text, "90°");
}

TEST(Ways, AreNotChangedWithAShapeHalfDrawn) {
  Bench bench = drawing();
  bench.click(0, 0);
  bench.choose("rectangle");  // one point goes along
  EXPECT_FALSE(bench.last.refused);
  bench.click(10, 10);
  ASSERT_EQ(bench.job.elements.size(), 1U);
  bench.choose("corners");
  bench.click(20, 0);
  bench.click(30, 0);
  bench.choose("circle");
  ASSERT_TRUE(bench.last.refused);
  EXPECT_EQ(bench.last.refused->code, "shape-unfinished");
}

// Against the definition: the arc of the answer passes through the third point.
TEST(Bulge, ThroughAThirdPoint) {
  EXPECT_TRUE(rc::check("the third point lies on the arc", [] {
    const auto any = [] {
      return Point{Length::of_steps(*rc::gen::inRange(-1000000, 1000000)),
                   Length::of_steps(*rc::gen::inRange(-1000000, 1000000))};
    };
    const Point a = any();
    const Point b = any();
    const Point c = any();
    const double bulge = sketch::bulge_through(a, b, c);
    RC_PRE(a != b && bulge != 0 && std::abs(bulge) < 100 && std::abs(bulge) > 0.01);
    const geometry::Curve arc{a, b, bulge};
    RC_ASSERT(std::abs(length(c - a - arc.centre()) - arc.radius()) < 1e-6 * arc.radius() + 1e-3);
    // On the same side of the chord as the belly.
    RC_ASSERT((cross(b - a, c - a) < 0) == (bulge > 0));
  }));
}

TEST(Bulge, RectanglesOfAnyDirectionHaveTheirSides) {
  EXPECT_TRUE(rc::check("area is width x depth within a step along its edges", [] {
    const double degrees = *rc::gen::inRange(0, 3600) / 10.0;
    const units::Turn turn = units::turn(units::Angle::degrees(degrees));
    const double width = *rc::gen::inRange(10000, 9000000);
    const double depth = *rc::gen::inRange(10000, 9000000);
    const Ring made = sketch::rectangle(feet(3, 5), {turn.cosine, turn.sine}, width, depth);
    constexpr double steps = Length::steps_per_metre;
    const double area = geometry::signed_area(made).si() * steps * steps;
    RC_ASSERT(std::abs(area - width * depth) <= 2 * (width + depth));
  }));
}

}  // namespace
