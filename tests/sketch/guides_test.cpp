// Help lines: where each takes hold, that a crossing with an edge counts as a crossing, and that they never take hold
// of each other.
#include "sketch/guides.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cmath>
#include <numbers>

#include "bench_of_hands.h"

namespace {

using geometry::Curve;
using geometry::Point;
using geometry::Vec;
using hands::feet;
using sketch::Aimed;
using sketch::InHand;
using sketch::Takes;
using units::Length;

constexpr double foot = 12.0 * Length::steps_per_inch;

InHand in_hand(std::vector<Point> points, bool closes = true) {
  InHand made;
  made.closes = closes;
  for (std::size_t i = 0; i + 1 < points.size(); ++i) made.edges.push_back({points[i], points[i + 1], 0});
  made.points = std::move(points);
  return made;
}

Aimed aim(const InHand& drawn, Point pointer, const plan::Job& job = hands::empty_job(), sketch::Hold hold = {}) {
  const sketch::Snaps snaps(job);
  return sketch::aimed({job, snaps, foot, 0, {}}, drawn, {pointer, hold});
}

TEST(Guides, SquareAndStraightOnFromTheLastEdge) {
  const InHand one = in_hand({feet(0, 0), feet(12, 5)});  // a 5-12-13 edge
  // Square to (12,5) is (-5,12): the point twice as far out is (12-10, 5+24).
  const Aimed square = aim(one, feet(2.3, 29.1));
  EXPECT_EQ(square.taken.takes, Takes::square);
  EXPECT_NEAR(dot(square.at() - feet(12, 5), Vec{12, 5}), 0, 13);  // within a step of the square
  // Straight on, 26 ft further: (36,15). The pointer lies 0.65 ft square to it, (-0.25, 0.6).
  const Aimed on = aim(one, feet(36 - 0.25, 15 + 0.6));
  EXPECT_EQ(on.taken.takes, Takes::parallel);
  EXPECT_LE(length(on.at() - feet(36, 15)), 1.0);
}

TEST(Guides, TangentToTheLastArc) {
  InHand arc;
  arc.points = {feet(0, 0), feet(10, 10)};
  arc.edges = {Curve{feet(0, 0), feet(10, 10), std::tan(std::numbers::pi / 8)}};  // a quarter, east then north
  const Aimed aimed = aim(arc, feet(10.4, 30));
  EXPECT_EQ(aimed.taken.takes, Takes::tangent);
  EXPECT_LE(length(aimed.at() - feet(10, 30)), 1.0);
}

TEST(Guides, AsLongAsTheLastEdge) {
  const InHand one = in_hand({feet(0, 0), feet(10, 0)});
  // 6-8-10 from (10,0): as long as the edge of 10 ft, and off all other lines.
  const Aimed equal = aim(one, feet(16.1, 8.3));
  EXPECT_EQ(equal.taken.takes, Takes::equal);
  EXPECT_NEAR(length(equal.at() - feet(10, 0)), 10 * foot, 1);
}

TEST(Guides, TheLastCornerClosesSquareToTheFirstEdge) {
  // The first edge turned by a 3-4-5: (0,0) to (8,6), then square to (2,14), 10 ft each. The fourth corner of the
  // square lies at (-6,8).
  const InHand three = in_hand({feet(0, 0), feet(8, 6), feet(2, 14)});
  const Aimed closing = aim(three, feet(-5.6, 8.5));
  EXPECT_EQ(closing.taken.takes, Takes::closing);
  EXPECT_LE(length(closing.at() - feet(-6, 8)), 1.0);
}

TEST(Guides, InLineWithTheFirstPoint) {
  const InHand two = in_hand({feet(0, 0), feet(20, 0), feet(25, 14)});
  // Above the first point, square to the first edge; nothing else near.
  const Aimed line = aim(two, feet(0.4, 30));
  EXPECT_EQ(line.taken.takes, Takes::closing);
  EXPECT_EQ(line.at(), feet(0, 30));
}

TEST(Guides, ACrossingWithAnEdgeIsACrossing) {
  plan::Wall wall;
  wall.line = {{{feet(-40, 20), 0, {}}}, feet(40, 20), {}};
  const plan::Job job = plan::with(hands::empty_job(), {"W1", "", wall});
  const InHand one = in_hand({feet(0, 0), feet(10, 0)});
  const Aimed met = aim(one, feet(10.5, 20.5), job);
  EXPECT_TRUE(met.taken.takes == Takes::crossing || met.taken.takes == Takes::square);
  EXPECT_EQ(met.at(), feet(10, 20));
  EXPECT_EQ(met.taken.of, "W1");
  // Elsewhere the edge wins over every help line.
  EXPECT_EQ(aim(one, feet(17, 20.5), job).taken.takes, Takes::edge);
}

TEST(Guides, StepsOfFifteenDegreesFromTheLastEdge) {
  const InHand one = in_hand({feet(0, 0), feet(12, 5)});
  sketch::Hold steps;
  steps.steps = true;
  const Aimed at = aim(one, feet(21, 31), hands::empty_job(), steps);
  EXPECT_EQ(at.taken.takes, Takes::angle);
  const Vec out = at.at() - feet(12, 5);
  const double turn = (std::atan2(out.y, out.x) - std::atan2(5.0, 12.0)) * 180 / std::numbers::pi;
  EXPECT_NEAR(turn / 15, std::round(turn / 15), 1e-4);
}

TEST(Guides, HeldFreeNothingTakesHold) {
  sketch::Hold free;
  free.free = true;
  const InHand one = in_hand({feet(0, 0), feet(10, 0)});
  EXPECT_EQ(aim(one, feet(10.1, 20), hands::empty_job(), free).at(), feet(10.1, 20));
}

// Whatever help line is taken, the answer is the pointer's own foot on that line: never a meeting of two lines. Only
// the closing corners are points, and they are worked out beforehand.
TEST(Guides, NeverTakeHoldOfEachOther) {
  EXPECT_TRUE(rc::check("the foot of the pointer on one line, the nearest there is", [] {
    const auto any = [] {
      return Point{Length::of_steps(*rc::gen::inRange(-2000000, 2000000)),
                   Length::of_steps(*rc::gen::inRange(-2000000, 2000000))};
    };
    std::vector<Point> points{any()};
    const int more = *rc::gen::inRange(0, 5);
    for (int i = 0; i < more; ++i) {
      const Point next = any();
      if (next != points.back()) points.push_back(next);
    }
    const InHand drawn = in_hand(points);
    const plan::Job job = hands::empty_job();
    const sketch::Snaps snaps(job);
    const double reach = *rc::gen::inRange(1, 200000);
    for (int k = 0; k < 20; ++k) {
      const Point pointer = any();
      const Aimed aimed = sketch::aimed({job, snaps, reach, 0, {}}, drawn, {pointer, {}});
      if (aimed.taken.takes == Takes::nothing || aimed.taken.takes == Takes::corner) continue;
      double least = 1e18;
      for (const Point corner : sketch::closing_points(drawn)) least = std::min(least, length(corner - pointer));
      if (least <= reach) {
        RC_ASSERT(aimed.taken.takes == Takes::closing);
        RC_ASSERT(length(aimed.at() - pointer) == least);
        continue;
      }
      for (const sketch::Guide& line : sketch::guides(drawn)) {
        const Vec to = pointer - line.from;
        const double away = line.radius > 0 ? std::abs(length(to) - line.radius) : std::abs(cross(line.along, to));
        least = std::min(least, away);
      }
      RC_ASSERT(std::abs(length(aimed.at() - pointer) - least) <= 1.5);
    }
  }));
}

}  // namespace
