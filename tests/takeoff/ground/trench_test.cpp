#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cmath>
#include <numbers>

#include "takeoff/ground/slopes.h"
#include "takeoff/ground/trench.h"

using namespace takeoff::ground;
using geometry::Point;
using geometry::Vec;
using units::Length;

namespace {

Point metres(double x, double y) { return {Length::nearest(units::Metres(x)), Length::nearest(units::Metres(y))}; }

geometry::Path straight(double x, double y) { return *geometry::Path::make({{metres(0, 0), 0, {}}}, metres(x, y)); }

// height = z + gx x + gy y
struct Ground {
  double z = 0, gx = 0, gy = 0;
  double at(Point p) const { return z + gx * p.x.metres().si() + gy * p.y.metres().si(); }
};
LiesAt plane(Ground ground) {
  return [ground](Point p, double) {
    Lies made;
    made.level = made.existing = ground.at(p);
    made.virgin = true;
    return std::optional(made);
  };
}

// A trench along one leg: bottom `width` wide, its level by the station, faces `slope`.
Along dug(const LegOfPath& leg, double width, double slope, const std::function<double(double)>& bottom,
          const LiesAt& lies, Hole& hole) {
  const auto slice = [&](double station) {
    const Frame at = frame(leg, station);
    Slice made;
    made.station = station;
    made.at = at.at;
    made.across = at.left;
    made.turn = at.turn;
    made.bottom = {{-width / 2, bottom(station)}, {width / 2, bottom(station)}};
    made.slope_before = made.slope_after = slope;
    return made;
  };
  const auto area = [](const Slice& at, const Section& cut) { return std::vector<double>{cut.area(at.turn)}; };
  return along(leg.from, leg.from + leg.length, slice, lies, area, hole);
}

double volume(const geometry::Path& path, double width, double slope, const std::function<double(double)>& bottom,
              const LiesAt& lies) {
  double sum = 0;
  for (const LegOfPath& leg : legs_of(path)) {
    Hole hole;
    sum += dug(leg, width, slope, bottom, lies, hole).volumes.at(0);
  }
  return sum;
}

}  // namespace

// Upright sides, level ground: 20 m x 0.4 m x mean of 0.6 and 0.8 m = 5.6 m3.
TEST(Trench, anUprightTrenchThatFalls) {
  const auto bottom = [](double station) { return -0.6 - 0.01 * station; };
  EXPECT_NEAR(volume(straight(20, 0), 0.4, 0, bottom, plane({})), 5.6, 1e-9);
}

// Faces 1 1/2 to 1, 2 m deep, 0.5 m at the bottom: (0.5 + 1.5 x 2) x 2 = 7 m2 x 10 m = 70 m3; 2 m deep all along.
TEST(Trench, slopedFaces) {
  Hole hole;
  const auto legs = legs_of(straight(0, 10));
  const Along made = dug(legs.at(0), 0.5, 1.5, [](double) { return -2.0; }, plane({}), hole);
  EXPECT_NEAR(made.volumes.at(0), 70, 1e-6);
  EXPECT_NEAR(made.deepest, 2, 1e-9);
  EXPECT_NEAR(made.as_deep_as(1.9), 10, 1e-9);
  EXPECT_EQ(made.as_deep_as(2.1), 0);
}

// Ground that falls 1 in n across, faces s to 1: the two-level section of the textbooks,
// n2 s / (n2 - s2) (h + b / 2s)2 - b2 / 4s, along a line that climbs with the ground, so that every section is alike.
TEST(Trench, groundThatFallsAcrossIsTheTwoLevelSection) {
  EXPECT_TRUE(rc::check([](unsigned b, unsigned h, unsigned s, unsigned n) {
    const double width = 0.3 + b % 100 / 50.0, depth = 0.5 + h % 100 / 40.0, slope = 0.25 + s % 100 / 80.0,
                 cross = 4 + n % 100 / 10.0;
    const double k = depth + width / (2 * slope);
    const double area = cross * cross * slope / (cross * cross - slope * slope) * k * k - width * width / (4 * slope);
    const double found = volume(straight(5, 0), width, slope, [&](double) { return -depth; }, plane({0, 0, 1 / cross}));
    RC_ASSERT(std::abs(found - 5 * area) < 1e-5 * area);
  }));
}

// Round a bend the volume is area x the way of its middle (Pappus): a quarter of radius 5 m with a rectangle
// 0.6 x 1 m on the line itself: 0.6 x pi/2 x 5; arcs are cut at the section's own place, so it is exact.
TEST(Trench, aBendByPappus) {
  const double bulge = std::tan(std::numbers::pi / 8);
  const auto path = *geometry::Path::make({{metres(0, 0), bulge, {}}}, metres(5, 5));
  EXPECT_NEAR(volume(path, 0.6, 0, [](double) { return -1.0; }, plane({})), 0.6 * std::numbers::pi / 2 * 5, 1e-4);
}

// Two trenches that cross take the crossing once: 2 x 10 x 0.5 x 1 less 0.5 x 0.5 x 1 = 9.75 m3, and where the second
// is deeper the rest below the first too: 10 + ... the first 1 m deep takes 5, the second 1.5 m deep 7.5 less 0.25.
TEST(Trench, whatWasDugBeforeIsNotDugAgain) {
  const auto first = legs_of(*geometry::Path::make({{metres(-5, 0), 0, {}}}, metres(5, 0)));
  const auto second = legs_of(*geometry::Path::make({{metres(0, -5), 0, {}}}, metres(0, 5)));
  const auto both = [&](double one_deep, double other_deep) {
    Hole hole, other;
    double sum = dug(first.at(0), 0.5, 0, [&](double) { return -one_deep; }, plane({}), hole).volumes.at(0);
    const LiesAt rest = [&](Point p, double) {
      Lies made;
      made.existing = made.level = 0;
      if (const auto found = hole.bottom(p)) {
        made.level = found->level;
        made.source.push_back(found->source);
      }
      return std::optional(made);
    };
    sum += dug(second.at(0), 0.5, 0, [&](double) { return -other_deep; }, rest, other).volumes.at(0);
    return sum;
  };
  // Planes that change are found within 2 cm along the line: 0.02 x 0.5 x 1 m3 at each of the two sides, at most.
  EXPECT_NEAR(both(1, 1), 9.75, 0.02);
  EXPECT_NEAR(both(1, 1.5), 5 + 7.5 - 0.25, 0.02);
  EXPECT_NEAR(both(1.5, 1), 7.5 + 5 - 0.25, 0.02);
}

// The slow way: the same cut by columns of 2 cm over a plane ground, upright sides, any direction and fall. A column
// stands or falls at the sides and ends, so that the sum is off by its size x the depth x the outline at most.
TEST(Trench, isTheSumOfManySmallColumns) {
  EXPECT_TRUE(rc::check([](unsigned turn, unsigned w, unsigned fall, int gx, int gy) {
    const double angle = turn % 360 * std::numbers::pi / 180, width = 0.3 + w % 50 / 50.0, length = 4;
    const Ground ground{0, gx % 100 / 800.0, gy % 100 / 800.0};
    const double down = fall % 100 / 1000.0;
    const auto path = straight(length * std::cos(angle), length * std::sin(angle));
    const auto bottom = [&](double station) { return -1.5 - down * station; };
    const double fast = volume(path, width, 0, bottom, plane(ground));
    double slow = 0;
    constexpr double cell = 0.02;
    for (double s = cell / 2; s < length; s += cell)
      for (double t = -width / 2 + cell / 2; t < width / 2; t += cell) {
        const double x = s * std::cos(angle) - t * std::sin(angle), y = s * std::sin(angle) + t * std::cos(angle);
        slow += std::max(0.0, ground.z + ground.gx * x + ground.gy * y - bottom(s)) * cell * cell;
      }
    RC_ASSERT(std::abs(fast - slow) <= cell * (length + width) * 3);
  }));
}

// A bend of 4 degrees stays one leg, a corner of 90 parts two.
TEST(Trench, legsPartAtCorners) {
  const double small = 4 * std::numbers::pi / 180;
  const auto bent = *geometry::Path::make({{metres(0, 0), 0, {}}, {metres(5, 0), 0, {}}},
                                          metres(5 + 5 * std::cos(small), 5 * std::sin(small)));
  EXPECT_EQ(legs_of(bent).size(), 1u);
  const auto corner = *geometry::Path::make({{metres(0, 0), 0, {}}, {metres(5, 0), 0, {}}}, metres(5, 5));
  ASSERT_EQ(legs_of(corner).size(), 2u);
  EXPECT_NEAR(legs_of(corner)[1].from, 5, 1e-9);
}
