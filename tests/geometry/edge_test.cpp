#include <gtest/gtest.h>

#include <numbers>

#include "geometry/edge.h"

namespace {

using geometry::Curve;
using geometry::Point;
using geometry::Ring;
using units::Length;

constexpr double pi = std::numbers::pi;

Point at(std::int64_t x, std::int64_t y) { return {Length::of_steps(x), Length::of_steps(y)}; }
double tan_quarter(double degrees) { return std::tan(degrees * pi / 180 / 4); }

// A half circle over a chord of 2000 steps: radius 1000, length 1000 pi, area 1000^2 pi / 2.
TEST(Curve, HalfCircle) {
  const Curve c{at(100, 200), at(2100, 200), 1};
  EXPECT_DOUBLE_EQ(c.radius(), 1000);
  EXPECT_DOUBLE_EQ(c.length(), 1000 * pi);
  EXPECT_DOUBLE_EQ(c.segment_area(), 1e6 * pi / 2);
  EXPECT_NEAR(c.centre().x, 1000, 1e-9);
  EXPECT_NEAR(c.centre().y, 0, 1e-9);
  // Turning left from west to east runs through the south.
  EXPECT_NEAR(c.at(0.5).x, 1000, 1e-9);
  EXPECT_NEAR(c.at(0.5).y, -1000, 1e-9);
  EXPECT_NEAR(c.direction(0).y, -1, 1e-12);
  EXPECT_NEAR(c.direction(0.5).x, 1, 1e-12);
  EXPECT_NEAR(c.direction(1).y, 1, 1e-12);
}

// Radius 10, 60 degrees: chord 10, arc 10.47198, sagitta 1.33975, segment 9.05861 (textbook circle geometry:
// r^2/2 (theta - sin theta), r (1 - cos 30)).
TEST(Curve, SegmentOfSixtyDegrees) {
  const Curve c{at(0, 0), at(3'200'000, 0), tan_quarter(60)};  // 10 m
  const double m = 320000;
  EXPECT_NEAR(c.radius() / m, 10, 1e-9);
  EXPECT_NEAR(c.length() / m, 10.471975511966, 1e-9);
  EXPECT_NEAR(c.segment_area() / m / m, 50 * (pi / 3 - std::sqrt(3) / 2), 1e-9);
  EXPECT_NEAR(-c.at(0.5).y / m, 10 * (1 - std::sqrt(3) / 2), 1e-9);
}

// The two forms of the area meet at a bulge of 0.05: chord^2 x (b/3 + b^3/15 - ...) against ((1+b2)^2 atan b -
// b(1-b2))/8b2.
TEST(Curve, FlatArcsLoseNothing) {
  for (const double b : {1e-9, 1e-6, 1e-3, 0.0499999, 0.05, 0.0500001, 0.2}) {
    const Curve c{at(0, 0), at(1000000, 0), b};
    const long double lb = b, b2 = lb * lb;
    // In long doubles, by the direct form where it still holds its figures, else the first two terms.
    const long double unit =
        b < 1e-4 ? lb / 3 + lb * b2 / 15 : ((1 + b2) * (1 + b2) * std::atan(lb) - lb * (1 - b2)) / (8 * b2);
    EXPECT_NEAR(c.segment_area() / static_cast<double>(unit * 1e12L), 1, 1e-11) << b;
  }
}

TEST(Curve, LimitsOfBulge) {
  const Curve nearly_whole{at(0, 0), at(10, 0), 1000};  // radius 10 (1 + 1e6) / 4000
  EXPECT_NEAR(nearly_whole.radius(), 2500.0025, 1e-9);
  EXPECT_NEAR(nearly_whole.length(), 2500.0025 * 4 * std::atan(1000.0), 1e-6);
  EXPECT_NEAR(nearly_whole.at(0.5).y, -10.0 * 1000 / 2, 1e-6);  // sagitta = bulge x chord / 2
  EXPECT_EQ(nearly_whole.at(1), nearly_whole.chord());
  EXPECT_EQ(nearly_whole.at(0), geometry::Vec{});
}

TEST(Curve, BulgeAboutACentre) {
  const Curve c{at(5, 7), at(300005, 40007), 0.37};
  EXPECT_NEAR(geometry::bulge_about(c.centre(), c.chord(), true), 0.37, 1e-12);
  const Curve back = c.reversed();
  EXPECT_NEAR(geometry::bulge_about(back.centre(), back.chord(), false), -0.37, 1e-12);
  const Curve large{at(0, 0), at(300, 400), -4.5};
  EXPECT_NEAR(geometry::bulge_about(large.centre(), large.chord(), false), -4.5, 1e-9);
  EXPECT_EQ(geometry::bulge_about({100, 0}, {0, 0}, true), 0);
}

TEST(Ring, WalkedBackwards) {
  const Ring ring{{at(0, 0), 0.5, {7, 0}}, {at(4000, 0), 0, {7, 1}}, {at(4000, 3000), -0.2, {7, 2}}};
  const Ring back = geometry::reversed(ring);
  ASSERT_EQ(back.size(), 3u);
  EXPECT_EQ(back[0], (geometry::Edge{at(0, 0), 0.2, {7, 2}}));
  EXPECT_EQ(back[1], (geometry::Edge{at(4000, 3000), 0, {7, 1}}));
  EXPECT_EQ(back[2], (geometry::Edge{at(4000, 0), -0.5, {7, 0}}));
  EXPECT_EQ(geometry::reversed(back), ring);
  EXPECT_NEAR(geometry::signed_area(back).si(), -geometry::signed_area(ring).si(), 1e-18);
  EXPECT_NEAR(geometry::perimeter(back).si(), geometry::perimeter(ring).si(), 1e-15);
}

TEST(Ring, QuarterTurnIsExact) {
  const Ring ring{{at(10, 20), 0.5, {}}, {at(4000, 1), 0, {}}, {at(4007, 3000), -0.2, {}}};
  const Ring once = geometry::turned(ring, at(3, 4), units::Angle::degrees(90));
  EXPECT_EQ(once[0].from, at(3 - 16, 4 + 7));
  Ring round = once;
  for (int i = 0; i < 3; ++i) round = geometry::turned(round, at(3, 4), units::Angle::degrees(90));
  EXPECT_EQ(round, ring);
}

}  // namespace
