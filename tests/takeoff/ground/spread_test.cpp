// A surface led on level past its edges, over little ground and over square kilometres.
#include "takeoff/ground/spread.h"

#include <gtest/gtest.h>

#include <memory>

#include "geometry/validity.h"

namespace {

using geometry::Point;
using geometry::Vec;
using units::Length;

geometry::Region square(double metres) {
  const auto at = [&](double x, double y) {
    return Point{Length::nearest(units::Metres(x)), Length::nearest(units::Metres(y))};
  };
  return geometry::region(
             {{at(0, 0), 0, {}}, {at(metres, 0), 0, {}}, {at(metres, metres), 0, {}}, {at(0, metres), 0, {}}})
      .value();
}

// 1 m wide west of x = 0, all along y, rising with y: 1 in 100.
takeoff::levels::SurfacePtr slope(double metres) {
  const geometry::Facet facet{{{-1, 0}, {0, 0}, {0, metres}, {-1, metres}}, {0, 0, 0.01}, false};
  return std::make_shared<const geometry::Surface>(Point(), std::vector{facet});
}

double height(const geometry::Surface& surface, Vec place) { return surface.height(place).value_or(-1); }

TEST(SpreadLevel, HasTheHeightOfTheNearestPlace) {
  const auto surfaces = std::vector{slope(6)};
  const auto spread = takeoff::ground::spread_level(square(6), surfaces, Point());
  ASSERT_TRUE(spread);
  // 6 m / 0.15 m = 40 cells a side, two triangles each.
  EXPECT_EQ(spread->facets().size(), 3200U);
  EXPECT_NEAR(height(*spread, {3, 2}), 0.02, 1e-9);
  EXPECT_NEAR(height(*spread, {5.9, 5.5}), 0.055, 1e-9);
}

TEST(SpreadLevel, OverSquareKilometresItsPiecesAreWiderAndStillExactAlongAPlane) {
  const auto surfaces = std::vector{slope(2000)};
  const auto spread = takeoff::ground::spread_level(square(2000), surfaces, Point());
  ASSERT_TRUE(spread);
  // 4 km2 in cells of 0.15 m would be 178 million; sqrt(4e6 / 2e5) = 4.47 m gives 448 a side, 200,704 cells.
  EXPECT_NEAR(static_cast<double>(spread->facets().size()), 2 * 200'704, 4'000);
  EXPECT_NEAR(height(*spread, {1500, 777}), 7.77, 1e-6);
}

}  // namespace
