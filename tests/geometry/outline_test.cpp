// Shapes whose area and perimeter a formula knows.
#include <gtest/gtest.h>

#include <rapidcheck.h>

#include "geometry/draw.h"
#include "geometry/flatten.h"

namespace {

using draw::at;
using draw::Corner;
using draw::pi;
using draw::tan_quarter;
using geometry::Region;
using geometry::Vec;

const double quarter = tan_quarter(90);

// Ends are on the grid, so the arcs are those of points within 0.71 steps (2.2 micrometres) of the formula's: the area
// is off by less than perimeter x 2.2e-6 m.
void expect_shape(const Region& region, double area, double perimeter) {
  EXPECT_NEAR(region.area().si(), area, perimeter * 2.3e-6);
  EXPECT_NEAR(region.perimeter().si(), perimeter, 2e-5);
}

// 40 x 20 with corners of radius 3: L W - (4 - pi) r^2 = 792.27433; 2 (L + W) - (8 - 2 pi) r = 114.84956.
TEST(Formulas, RoundedRectangle) {
  const Region region = draw::region(
      {{3, 0}, {37, 0, quarter}, {40, 3}, {40, 17, quarter}, {37, 20}, {3, 20, quarter}, {0, 17}, {0, 3, quarter}});
  expect_shape(region, 792.27433, 114.84956);
  EXPECT_NEAR(region.area().si(), 800 - (4 - pi) * 9, 1e-9);
  EXPECT_NEAR(region.centroid().x, 20, 1e-9);
  EXPECT_NEAR(region.centroid().y, 10, 1e-9);
}

// 30 x 12: 18 x 12 + pi 36 = 329.09734; 36 + 12 pi = 73.69911.
TEST(Formulas, Stadium) {
  const Region region = draw::region({{6, 0}, {24, 0, 1}, {24, 12}, {6, 12, 1}});
  expect_shape(region, 329.09734, 73.69911);
  EXPECT_EQ(region.bounds(), (geometry::Box{at(0, 0), at(30, 12)}));
}

// Radius 10, 60 degrees: sector 52.35988, segment 9.05861, arc 10.47198.
TEST(Formulas, SectorAndSegment) {
  const double h = 10 * std::sqrt(3) / 2;
  expect_shape(draw::region({{0, 0}, {10, 0, tan_quarter(60)}, {5, h}}), 52.35988, 20 + 10.47198);
  expect_shape(draw::region({{10, 0, tan_quarter(60)}, {5, h}}), 9.05861, 10 + 10.47198);
}

// Between radii 10 and 14 over 90 degrees: width x middle arc = 4 x 6 pi = 75.39822 (Pappus).
TEST(Formulas, QuarterRing) {
  expect_shape(draw::region({{10, 0}, {14, 0, quarter}, {0, 14}, {0, 10, -quarter}}), 75.39822, 8 + 12 * pi);
}

// End circles r 5 about (+-6, 0); outer arc about (0, -8), R = 15; inner arc about (0, -8), q = 5;
// u = v = atan(6/8): A = R^2 u - c h + c k - q^2 v + r^2 (pi + v - u) = 207.240038; P = 2 u R + 2 v q + 2 r (pi + v -
// u).
TEST(Formulas, Kidney) {
  const double u = std::atan(6.0 / 8);
  // Ends of the outer arc: the centre (0, -8) plus 15 along (+-0.6, 0.8); of the inner: plus 5 along the same.
  const double bulge = std::tan(2 * u / 4);
  const Region region = draw::region({{9, 4, bulge}, {-9, 4, 1}, {-3, -4, -bulge}, {3, -4, 1}});
  expect_shape(region, 207.240038, 57.155971);
  EXPECT_NEAR(region.centroid().x, 0, 1e-9);
}

// Two unit circles a unit apart: 2 pi/3 - sqrt(3)/2 = 1.22837; each arc turns 120 degrees.
TEST(Formulas, Lens) {
  const double h = std::sqrt(3) / 2;
  expect_shape(draw::region({{0.5, -h, tan_quarter(120)}, {0.5, h, tan_quarter(120)}}), 1.22837, 4 * pi / 3);
}

// Pick: A = I + B/2 - 1. L shape: 21 (B 22, I 11); pentagon: 59.5 (B 5, I 58), counted by `contains`.
TEST(Formulas, Pick) {
  const auto count = [](const Region& region) {
    int found = 0;
    for (int x = -2; x <= 10; ++x) {
      for (int y = -2; y <= 10; ++y) found += region.contains(at(x, y)) ? 1 : 0;
    }
    return found;
  };
  const Region l = draw::region({{0, 0}, {6, 0}, {6, 2}, {3, 2}, {3, 5}, {0, 5}});
  EXPECT_DOUBLE_EQ(l.area().si(), 21);
  EXPECT_EQ(count(l), 22 + 11);
  const Region five = draw::region({{0, 0}, {7, 1}, {9, 6}, {4, 9}, {-1, 5}});
  EXPECT_DOUBLE_EQ(five.area().si(), 59.5);
  EXPECT_EQ(count(five), 5 + 58);
}

// Half a disk: its centre of gravity lies 4 r / (3 pi) from the diameter. A flat segment's lies at 2/5 of its rise.
TEST(Centroid, OfArcs) {
  const Region half = draw::region({{-3, 0}, {3, 0, 1}});
  EXPECT_NEAR(half.centroid().x, 0, 1e-9);
  EXPECT_NEAR(half.centroid().y, 4 / pi, 1e-9);
  const double bulge = 0.00011;
  const Region flat = draw::region({{-5, 0}, {5, 0, bulge}});
  EXPECT_NEAR(flat.centroid().y, 0.4 * bulge * 10 / 2, 1e-10);
}

TEST(Contains, TrueArcsNotChords) {
  const Region disk = draw::disk(0, 0, 3);
  // 0.2 mm inside and outside of the circle, disk way between two points of its flattening (an angle of 3 pi / 512).
  for (const double angle : {3 * pi / 512, 1.0, 2.0, 4.0, 5.5}) {
    EXPECT_TRUE(disk.contains(at(2.9998 * std::cos(angle), 2.9998 * std::sin(angle)))) << angle;
    EXPECT_FALSE(disk.contains(at(3.0002 * std::cos(angle), 3.0002 * std::sin(angle)))) << angle;
    EXPECT_TRUE(disk.contains(at(3 * std::cos(angle), 3 * std::sin(angle)))) << angle;
  }
  // Rays through the ends, the middle and the top.
  EXPECT_TRUE(disk.contains(at(0, 0)));
  EXPECT_TRUE(disk.contains(at(-3, 0)));
  EXPECT_FALSE(disk.contains(at(-4, 0)));
  EXPECT_FALSE(disk.contains(at(-4, 3)));
  EXPECT_FALSE(disk.contains(at(-4, -3)));
  EXPECT_TRUE(disk.contains(at(0, 3)));
}

// Against a count of windings over a flattening to a step, for points that are not within two steps of the edge.
TEST(Contains, AgreesWithManyChords) {
  EXPECT_TRUE(rc::check("contains", [] {
    const Region region = *draw::star(true);
    const geometry::Point p = at(*rc::gen::inRange(-12000, 12000) / 1000.0, *rc::gen::inRange(-12000, 12000) / 1000.0);
    bool inside = false;
    double nearest = 1e18;
    for (const geometry::Outline* outline : region.outlines()) {
      const auto points = geometry::flatten(outline->edges(), units::Length::of_steps(2));
      for (std::size_t i = 0; i < points.size(); ++i) {
        const Vec a = points[i] - p;
        const Vec b = points[(i + 1) % points.size()] - p;
        nearest = std::min(nearest, std::abs(cross(a, b)) / std::max(1.0, length(b - a)));
        if ((a.y > 0) != (b.y > 0) && (b.y > a.y) == (cross(a, b) > 0)) inside = !inside;
      }
    }
    RC_PRE(nearest > 4);
    RC_ASSERT(region.contains(p) == inside);
  }));
}

TEST(Region, EmptyIsARegion) {
  const Region none;
  EXPECT_EQ(none.area().si(), 0);
  EXPECT_EQ(none.perimeter().si(), 0);
  EXPECT_EQ(none.centroid(), problem::Xy{});
  EXPECT_EQ(none.bounds(), geometry::Box{});
  EXPECT_FALSE(none.contains(at(0, 0)));
}

// Isoperimetric: 4 pi A <= P^2, equal for the circle. And moving by whole steps changes no bit.
TEST(Region, AnyShape) {
  EXPECT_TRUE(rc::check("isoperimetric, moved", [] {
    const Region region = *draw::star(true);
    const double p = region.perimeter().si();
    RC_ASSERT(4 * pi * region.area().si() <= p * p);
    const Vec by{static_cast<double>(*rc::gen::inRange(-300'000'000, 300'000'000)), 12345678};
    const auto moved = geometry::region(geometry::moved(region.polygons().front().outer.edges(), by));
    RC_ASSERT(moved.has_value());
    RC_ASSERT(moved->area() == region.area());
    RC_ASSERT(moved->perimeter() == region.perimeter());
    RC_ASSERT(moved->bounds().low == geometry::moved(region.bounds().low, by));
    RC_ASSERT(moved->bounds().high == geometry::moved(region.bounds().high, by));
  }));
  EXPECT_NEAR(4 * pi * draw::disk(1, 1, 5).area().si() / std::pow(draw::disk(1, 1, 5).perimeter().si(), 2), 1, 1e-12);
}

TEST(Path, LengthAndFaults) {
  const auto path = geometry::Path::make(draw::ring({{0, 0}, {3, 4, 1}}), at(3, 6));
  ASSERT_TRUE(path.has_value());
  EXPECT_NEAR(path->length().si(), 5 + pi, 1e-9);
  EXPECT_FALSE(path->closed());
  EXPECT_EQ(path->bounds(), (geometry::Box{at(0, 0), at(4, 6)}));
  EXPECT_EQ(geometry::Path::make({}, at(1, 1)).error().code, "path-empty");
  const auto twice = geometry::Path::make(draw::ring({{0, 0}, {3, 4}, {3, 4}}), at(5, 5));
  EXPECT_EQ(twice.error().code, "edge-zero-length");
  EXPECT_EQ(twice.error().place.at, (problem::Xy{3, 4}));
  EXPECT_EQ(geometry::Path::make(draw::ring({{0, 0}, {3, 4}}), at(3, 4)).error().code, "edge-zero-length");
  EXPECT_TRUE(geometry::Path::make(draw::ring({{0, 0}}), at(5000, 0)).has_value());
  EXPECT_EQ(geometry::Path::make(draw::ring({{0, 0}}), at(5001, 0)).error().code, "path-too-far");
  // A half circle of 10 m between ends at 4,998 m bulges 5 m out to the east, to 5,003 m.
  EXPECT_EQ(geometry::Path::make(draw::ring({{4998, 0, 1}}), at(4998, 10)).error().code, "path-too-far");
}

}  // namespace
