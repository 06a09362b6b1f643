#include "geometry/index.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <numbers>

namespace {

using geometry::bounds;
using geometry::Box;
using geometry::Curve;
using geometry::Index;
using geometry::nearest;
using geometry::Point;
using geometry::Vec;
using units::Length;

constexpr double pi = std::numbers::pi;
constexpr double metre = Length::steps_per_metre;

Point at(std::int64_t x, std::int64_t y) { return {Length::of_steps(x), Length::of_steps(y)}; }

Point any_point(std::int64_t reach) { return at(*rc::gen::inRange(-reach, reach), *rc::gen::inRange(-reach, reach)); }
Box any_box(std::int64_t reach) {
  const Point low = any_point(reach);
  return {low,
          {low.x + Length::of_steps(*rc::gen::inRange(0, 400)), low.y + Length::of_steps(*rc::gen::inRange(0, 400))}};
}
bool touch(const Box& a, const Box& b) {
  return a.low.x <= b.high.x && b.low.x <= a.high.x && a.low.y <= b.high.y && b.low.y <= a.high.y;
}
double any_bulge() { return *rc::gen::inRange(-3000, 3001) / 1000.0; }

TEST(Index, FindsWhatEachBoxTouches) {
  EXPECT_TRUE(rc::check("the same numbers as by looking at every box", [] {
    const auto count = *rc::gen::inRange<std::size_t>(0, 60);
    std::vector<Box> boxes;
    for (std::size_t i = 0; i < count; ++i) boxes.push_back(any_box(1000));
    const Box asked = any_box(1000);
    std::vector<std::uint32_t> expected;
    for (std::size_t i = 0; i < count; ++i) {
      if (touch(boxes[i], asked)) expected.push_back(static_cast<std::uint32_t>(i));
    }
    RC_ASSERT(Index(boxes).touching(asked) == expected);
  }));
}

TEST(Index, TouchingCountsAndMovedFromIsUsable) {
  const std::vector<Box> boxes{{at(0, 0), at(10, 10)}, {at(20, 0), at(30, 10)}};
  Index first(boxes);
  Index index(std::move(first));
  EXPECT_EQ(index.touching({at(10, 10), at(12, 12)}), std::vector<std::uint32_t>{0});
  EXPECT_EQ(index.touching({at(11, 0), at(19, 10)}), std::vector<std::uint32_t>{});
  EXPECT_EQ(index.touching({at(10, 0), at(20, 0)}), (std::vector<std::uint32_t>{0, 1}));
}

// A half circle of radius 1000 from west to east through the south.
TEST(Bounds, IncludeTheBelly) {
  EXPECT_EQ(bounds(Curve{at(100, 200), at(2100, 200), 1}), (Box{at(100, -800), at(2100, 200)}));
  EXPECT_EQ(bounds(Curve{at(100, 200), at(2100, 200), -1}), (Box{at(100, 200), at(2100, 1200)}));
  EXPECT_EQ(bounds(Curve{at(5, 9), at(3, 20), 0}), (Box{at(3, 9), at(5, 20)}));
}

TEST(Bounds, HoldTheCurveAndTouchIt) {
  EXPECT_TRUE(rc::check("every place of the curve is inside, and each side is reached", [] {
    const Curve curve{any_point(100000), any_point(100000), any_bulge()};
    RC_PRE(curve.start != curve.end);
    const Box box = bounds(curve);
    const Vec low = box.low - curve.start;
    const Vec high = box.high - curve.start;
    Vec least{1e300, 1e300};
    Vec most{-1e300, -1e300};
    constexpr int places = 4000;
    for (int i = 0; i <= places; ++i) {
      const Vec place = curve.at(double(i) / places);
      least = {std::min(least.x, place.x), std::min(least.y, place.y)};
      most = {std::max(most.x, place.x), std::max(most.y, place.y)};
    }
    // A place is missed by at most the sagitta of a chord: length^2 / (8 r), and a step of rounding.
    const double piece = curve.length() / places;
    const double missed = 1 + (curve.straight() ? 0 : piece * piece / (8 * curve.radius()));
    RC_ASSERT(least.x >= low.x - 0.001 && least.y >= low.y - 0.001);
    RC_ASSERT(most.x <= high.x + 0.001 && most.y <= high.y + 0.001);
    RC_ASSERT(least.x <= low.x + missed && least.y <= low.y + missed);
    RC_ASSERT(most.x >= high.x - missed && most.y >= high.y - missed);
  }));
}

// Quarter circle of radius 3 m about (0, 0) from east to north; 3-4-5 triangle: (3, 4) m is 2 m off, at atan(4/3).
TEST(Nearest, OnAQuarterCircle) {
  const Curve quarter{at(960000, 0), at(0, 960000), std::tan(pi / 8)};
  const auto out = nearest(quarter, at(960000, 1280000));
  EXPECT_NEAR(out.distance, 2, 1e-9);
  EXPECT_NEAR(out.share, std::atan2(4, 3) / (pi / 2), 1e-9);
  const auto behind = nearest(quarter, at(960000, -320000));  // 1 m before its start
  EXPECT_NEAR(behind.distance, 1, 1e-12);
  EXPECT_EQ(behind.share, 0);
  const auto centre = nearest(quarter, at(0, 0));
  EXPECT_NEAR(centre.distance, 3, 1e-9);
}

TEST(Nearest, OnALine) {
  const Curve line{at(0, 0), at(640000, 0), 0};
  EXPECT_NEAR(nearest(line, at(160000, 320000)).distance, 1, 1e-12);
  EXPECT_NEAR(nearest(line, at(160000, 320000)).share, 0.25, 1e-12);
  EXPECT_NEAR(nearest(line, at(640000 + 3 * 320000, 4 * 320000)).distance, 5, 1e-12);
  EXPECT_EQ(nearest(line, at(640000 + 3 * 320000, 4 * 320000)).share, 1);
}

// Sagitta of a 2 m chord with bulge b is b x 1 m (bulge = sagitta over half chord).
TEST(Nearest, AlmostStraightArcsLoseNothing) {
  for (const double b : {1e-3, 1e-6, 1e-9, 1e-11}) {
    const Curve arc{at(0, 0), at(640000, 0), b};
    const auto top = nearest(arc, at(320000, 320000));  // the arc bulges to the right, away from the point
    EXPECT_NEAR(top.distance, 1 + b, 1e-12) << b;
    EXPECT_NEAR(top.share, 0.5, 1e-9) << b;
  }
}

TEST(Nearest, AgreesWithManyPlaces) {
  EXPECT_TRUE(rc::check("no place of the curve is nearer, and the named one is that near", [] {
    const Curve curve{any_point(100000), any_point(100000), any_bulge()};
    RC_PRE(curve.start != curve.end);
    const Point to = any_point(300000);
    const Vec far = to - curve.start;
    const auto found = nearest(curve, to);
    RC_ASSERT(std::abs(geometry::length(far - curve.at(found.share)) - found.distance * metre) < 0.01);
    for (int i = 0; i <= 500; ++i) {
      RC_ASSERT(geometry::length(far - curve.at(i / 500.0)) >= found.distance * metre - 0.01);
    }
  }));
}

}  // namespace
