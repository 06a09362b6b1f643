#include "geometry/freeform.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <numbers>

#include "geometry/index.h"

namespace {

using geometry::curve;
using geometry::Curve;
using geometry::freeform;
using geometry::Point;
using geometry::Ring;
using geometry::Vec;
using units::Length;

constexpr double pi = std::numbers::pi;
constexpr double metre = Length::steps_per_metre;

Point at(double x, double y) { return {Length::nearest(units::Metres(x)), Length::nearest(units::Metres(y))}; }

std::vector<Curve> curves_of(const Ring& ring, bool closed, Point last) {
  std::vector<Curve> made;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const bool final = i + 1 == ring.size();
    made.push_back({ring[i].from, final ? (closed ? ring[0].from : last) : ring[i + 1].from, ring[i].bulge});
  }
  return made;
}

std::vector<Point> round_the_circle(int count, double radius) {
  std::vector<Point> points;
  for (int i = 0; i < count; ++i) {
    points.push_back(at(radius * std::cos(2 * pi * i / count), radius * std::sin(2 * pi * i / count)));
  }
  return points;
}

// Two directions at a joint differ only by what rounding the joint to the grid does: less than a step over each chord.
void expect_smooth(const std::vector<Curve>& curves, bool closed) {
  for (std::size_t i = closed ? 0 : 1; i < curves.size(); ++i) {
    const Curve& before = curves[(i + curves.size() - 1) % curves.size()];
    const Curve& after = curves[i];
    const Vec a = before.direction(1);
    const Vec b = after.direction(0);
    const double kink = std::abs(std::atan2(cross(a, b), dot(a, b)));
    EXPECT_LE(kink, 2 / length(before.chord()) + 2 / length(after.chord())) << "joint " << i;
  }
}

double off_circle(Point point, double radius) {
  return std::hypot(point.x.metres().si(), point.y.metres().si()) - radius;
}

// By symmetry the parabola through a point of a regular polygon and its neighbours has the circle's tangent there, and
// a biarc between two points of a circle with its tangents is the circle. With a tolerance wide enough to take the
// first biarc, eight points of a circle therefore give the circle, to the rounding of 16 joints.
TEST(Freeform, ABiarcOnACircleIsTheCircle) {
  const Ring ring = freeform(round_the_circle(8, 3), true, 0, Length::millimetres(100));
  EXPECT_EQ(ring.size(), 16U);
  EXPECT_NEAR(geometry::signed_area(ring).si(), pi * 9, 5e-5);
  EXPECT_NEAR(geometry::perimeter(ring).si(), 2 * pi * 3, 5e-5);
  for (const geometry::Edge& edge : ring) EXPECT_NEAR(off_circle(edge.from, 3), 0, 5e-6);
  expect_smooth(curves_of(ring, true, {}), true);
}

// The cubic itself bellies a little less than the circle. For n points its middle is h/4 sin a cos a over the chord
// where the circle's is h/2 tan (a/2), h = 2 r sin a, a = pi/n: for n = 24, r = 3 m they differ by 0.33 mm.
TEST(Freeform, PointsOnACircleGiveNearlyTheCircle) {
  const Ring ring = freeform(round_the_circle(24, 3), true);
  for (const geometry::Edge& edge : ring) EXPECT_NEAR(off_circle(edge.from, 3), 0, 0.00033 + 0.0005);
  EXPECT_NEAR(geometry::signed_area(ring).si(), pi * 9, 2 * pi * 3 * (0.00033 + 0.0005));
  expect_smooth(curves_of(ring, true, {}), true);
}

TEST(Freeform, NamesTheControlPointBefore) {
  const Ring ring = freeform(round_the_circle(5, 2), true, 77);
  std::int32_t last = 0;
  for (const geometry::Edge& edge : ring) {
    EXPECT_EQ(edge.origin.element, 77U);
    EXPECT_GE(edge.origin.edge, last);
    last = edge.origin.edge;
  }
  EXPECT_EQ(last, 4);
  EXPECT_EQ(ring.front().from, round_the_circle(5, 2).front());
}

TEST(Freeform, TwoPointsAreALine) {
  const std::vector<Point> two{at(0, 0), at(3, 4)};
  EXPECT_EQ(freeform(two, false, 5), (Ring{{at(0, 0), 0, {5, 0}}}));
}

TEST(Freeform, PointsOnALineStayOnIt) {
  const std::vector<Point> line{at(0, 0), at(1, 0), at(4, 0), at(5, 0)};
  const Ring ring = freeform(line, false);
  for (const geometry::Edge& edge : ring) {
    EXPECT_EQ(edge.bulge, 0);
    EXPECT_EQ(edge.from.y, Length());
  }
}

TEST(Freeform, RepeatedPointsDoNoHarm) {
  const std::vector<Point> points{at(0, 0), at(0, 0), at(2, 0), at(2, 0), at(1, 2), at(0, 0)};
  const std::vector<Point> clean{at(0, 0), at(2, 0), at(1, 2)};
  const Ring a = freeform(points, true);
  const Ring b = freeform(clean, true);
  ASSERT_EQ(a.size(), b.size());
  for (std::size_t i = 0; i < a.size(); ++i) EXPECT_EQ(a[i].from, b[i].from);
}

// The parabola through (0,0), (1,1), (3,0) with chord lengths a = sqrt 2, b = sqrt 5 as parameters: slope at the middle
// (b/a x (1,1) + a/b x (2,-1)) / (a + b).
TEST(Freeform, TangentsAreThoseOfTheParabola) {
  const std::vector<Point> points{at(0, 0), at(1, 1), at(3, 0)};
  const Ring ring = freeform(points, false);
  const double a = std::sqrt(2);
  const double b = std::sqrt(5);
  const Vec middle{(b / a * 1 + a / b * 2) / (a + b), (b / a * 1 - a / b * 1) / (a + b)};
  const Vec first = (2 / a) * Vec{1, 1} - middle;
  const std::vector<Curve> all = curves_of(ring, false, points.back());
  EXPECT_NEAR(cross(all.front().direction(0), (1 / length(first)) * first), 0, 1e-5);
  for (const Curve& part : all) {
    if (part.start != points[1]) continue;
    EXPECT_NEAR(cross(part.direction(0), (1 / length(middle)) * middle), 0, 1e-5);
  }
}

std::vector<Point> wandering(int count) {
  std::vector<Point> points;
  double x = 0;
  double y = 0;
  for (int i = 0; i < count; ++i) {
    x += *rc::gen::inRange(300, 3000) / 1000.0;
    y += *rc::gen::inRange(-2000, 2000) / 1000.0;
    points.push_back(at(x, y));
  }
  return points;
}

// The Hermite cubic of span i by de Casteljau, apart from the program's own form.
Vec cubic_at(Vec p0, Vec p3, Vec slope0, Vec slope3, double u) {
  const Vec p1 = p0 + (1.0 / 3) * slope0;
  const Vec p2 = p3 - (1.0 / 3) * slope3;
  const auto mix = [u](Vec a, Vec b) { return (1 - u) * a + u * b; };
  const Vec a = mix(p0, p1), b = mix(p1, p2), c = mix(p2, p3);
  return mix(mix(a, b), mix(b, c));
}

// The slope at point i by differentiating the Lagrange parabola through three points.
Vec lagrange_slope(Vec p0, Vec p1, Vec p2, double t) {
  const double h0 = length(p1 - p0);
  const double h1 = length(p2 - p1);
  const double t1 = h0, t2 = h0 + h1;
  return ((2 * t - t1 - t2) / (t1 * t2)) * p0 + ((2 * t - t2) / (t1 * (t1 - t2))) * p1 +
         ((2 * t - t1) / (t2 * (t2 - t1))) * p2;
}

TEST(Freeform, StaysWithinHalfAMillimetreOfTheCubicAndIsSmooth) {
  EXPECT_TRUE(rc::check("dense places of the cubic lie on the arcs", [] {
    const auto points = wandering(*rc::gen::inRange(3, 9));
    const Ring ring = freeform(points, false);
    const auto arcs = curves_of(ring, false, points.back());
    expect_smooth(arcs, false);
    RC_ASSERT(!testing::Test::HasFailure());
    const std::size_t n = points.size();
    const auto p = [&](std::size_t i) { return points[i] - points[0]; };
    const auto slope = [&](std::size_t i) {
      if (i == 0) return lagrange_slope(p(0), p(1), p(2), 0);
      if (i == n - 1)
        return lagrange_slope(p(n - 3), p(n - 2), p(n - 1), length(p(n - 2) - p(n - 3)) + length(p(n - 1) - p(n - 2)));
      return lagrange_slope(p(i - 1), p(i), p(i + 1), length(p(i) - p(i - 1)));
    };
    for (std::size_t i = 0; i + 1 < n; ++i) {
      const double h = length(p(i + 1) - p(i));
      for (int k = 0; k <= 100; ++k) {
        const Vec place = cubic_at(p(i), p(i + 1), h * slope(i), h * slope(i + 1), k / 100.0);
        double least = 1e300;
        for (const Curve& arc : arcs) least = std::min(least, geometry::nearest(arc, moved(points[0], place)).distance);
        RC_ASSERT(least <= 0.0005 + 1 / metre);
      }
    }
  }));
}

TEST(Freeform, MovedByWholeStepsIsTheSame) {
  EXPECT_TRUE(rc::check("moved by whole steps", [] {
    const auto points = wandering(*rc::gen::inRange(3, 9));
    const bool closed = *rc::gen::arbitrary<bool>();
    const Vec by{double(*rc::gen::inRange(-100000000, 100000000)), double(*rc::gen::inRange(-100000000, 100000000))};
    std::vector<Point> there;
    for (const Point& point : points) there.push_back(moved(point, by));
    RC_ASSERT(moved(freeform(points, closed), by) == freeform(there, closed));
  }));
}

TEST(Freeform, ATighterToleranceGivesMoreArcs) {
  const std::vector<Point> points{at(0, 0), at(2, 1), at(3, -1), at(6, 2)};
  EXPECT_GT(freeform(points, false, 0, Length::of_steps(32)).size(), freeform(points, false).size());
  EXPECT_LT(freeform(points, false).size(), 60U);
}

}  // namespace
