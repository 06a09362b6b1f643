#include "sheets/figure.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "demo.h"
#include "geometry/validity.h"
#include "sheets/parts.h"
#include "sheets/plan_parts.h"

namespace {

using sheets::Vec;
using units::Length;

geometry::Point mm(std::int64_t x, std::int64_t y) { return {Length::millimetres(x), Length::millimetres(y)}; }

TEST(Figure, ContoursKeepTheArcsOfARegion) {
  // A square of 2 m with a half circle of 1 m on its right side: 4 + pi / 2.
  const auto region =
      geometry::region({{mm(0, 0), 0, {}}, {mm(2000, 0), 1, {}}, {mm(2000, 2000), 0, {}}, {mm(0, 2000), 0, {}}});
  ASSERT_TRUE(region);
  const std::vector<sheets::Contour> contours = sheets::contours(*region);
  ASSERT_EQ(contours.size(), 1u);
  EXPECT_TRUE(contours[0].closed);
  EXPECT_NEAR(sheets::area_of(contours[0]), 4 + std::numbers::pi / 2, 1e-9);
  EXPECT_NEAR(sheets::area_of(contours[0]), region->area().si(), 1e-9);
}

TEST(Figure, AnExtentTakesTheBelliesOfArcsAndNoMore) {
  sheets::Extent extent;
  // A half circle to the right of the line from (2, 0) to (2, 2) reaches x = 3; straight sides reach nothing more.
  extent.take(sheets::Contour{{{{2, 0}, 1}, {{2, 2}, 0}}, true});
  EXPECT_NEAR(extent.low().x, 2, 1e-12);
  EXPECT_NEAR(extent.low().y, 0, 1e-12);
  EXPECT_NEAR(extent.high().x, 3, 1e-12);
  EXPECT_NEAR(extent.high().y, 2, 1e-12);
  sheets::Extent open;  // the bulge of an open line's last point is no edge
  open.take(sheets::Contour{{{{0, 0}, 0}, {{1, 0}, 5}}, false});
  EXPECT_EQ(open.high(), (Vec{1, 0}));
}

TEST(Figure, HeightsHaveTwoDecimalsOfAFootAndThreeOfAMetre) {
  EXPECT_EQ(sheets::show_height(30.48, units::System::us), "100.00");  // 100 ft
  EXPECT_EQ(sheets::show_height(30.48, units::System::metric), "30.480");
  EXPECT_EQ(sheets::show_height(30.35808, units::System::us), "99.60");  // 99.6 ft
}

TEST(Figure, AFigureReachesAsFarAsItsParts) {
  sheets::Figure figure;
  figure.parts.emplace_back(std::in_place_type<sheets::Stroke>,
                            sheets::Stroke{sheets::line({-1, 2}, {3, 4}), sheets::Line::element, "a"});
  figure.parts.emplace_back(std::in_place_type<sheets::Mark>, sheets::Mark{sheets::Sign::tag, {0, -5}, 0, "A1", "a"});
  sheets::settle(figure);
  EXPECT_EQ(figure.low, (Vec{-1, -5}));
  EXPECT_EQ(figure.high, (Vec{3, 4}));
}

TEST(Figure, ATagStandsInsideItsGround) {
  for (const auto& ground : demo::results().site.grounds) {
    if (ground->net.empty()) continue;
    const auto at = sheets::middle(*ground);
    ASSERT_TRUE(at);
    const geometry::Point point{Length::nearest(units::Metres(at->x)), Length::nearest(units::Metres(at->y))};
    if (ground->path) continue;
    EXPECT_TRUE(ground->net.contains(point)) << ground->element->id;
  }
}

}  // namespace
