#include "geometry/surface.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "geometry/draw.h"
#include "geometry/private/shapes.h"

namespace {

using geometry::Facet;
using geometry::Plane;
using geometry::Point;
using geometry::Region;
using geometry::Surface;
using geometry::Vec;

TEST(Plane, GoesThroughItsThreePlaces) {
  const Plane plane = geometry::plane_through({1, 2}, 5, {4, 2}, 5.6, {1, 7}, 4);
  EXPECT_NEAR(plane.gx, 0.2, 1e-12);   // 0.6 over 3
  EXPECT_NEAR(plane.gy, -0.2, 1e-12);  // -1 over 5
  EXPECT_NEAR(plane.at({4, 7}), 4.6, 1e-12);
  EXPECT_NEAR(plane.fall(), 0.2 * std::sqrt(2.0), 1e-12);
}

TEST(Plane, OfThreePlacesInALineIsLevelAtTheirMean) {
  EXPECT_EQ(geometry::plane_through({0, 0}, 1, {1, 1}, 2, {2, 2}, 6), (Plane{3, 0, 0}));
}

TEST(Cut, KeepsWhatLiesOnTheRightSide) {
  const std::vector<Vec> square{{0, 0}, {2, 0}, {2, 2}, {0, 2}};
  EXPECT_DOUBLE_EQ(geometry::area(geometry::cut(square, 1, 0, -0.5)), 3);  // x from 0.5
  EXPECT_DOUBLE_EQ(geometry::area(geometry::cut(square, -1, -1, 2)), 2);   // below the diagonal
  EXPECT_TRUE(geometry::cut(square, 1, 0, -3).empty());
}

TEST(Pieces, KeepAHoleAndArcs) {
  Region ring = draw::box(0, 0, 10, 6);
  geometry::Polygon polygon = ring.polygons().front();
  geometry::Ring hole = draw::ring({{4, 3, -1}, {6, 3, -1}});  // a circle of 1 m radius, clockwise
  polygon.holes.push_back(geometry::Shapes::outline(hole));
  ring = geometry::Shapes::region({polygon});
  const auto pieces = geometry::pieces(ring, draw::at(0, 0));
  ASSERT_TRUE(pieces.has_value());
  EXPECT_NEAR(pieces->area(), 60 - draw::pi, 2 * draw::pi * 0.0005);
  EXPECT_EQ(pieces->facet({5, 3}), nullptr);
  EXPECT_NE(pieces->facet({1, 1}), nullptr);
}

TEST(Pieces, OfNothingAreNone) {
  const auto pieces = geometry::pieces(Region(), draw::at(0, 0));
  ASSERT_TRUE(pieces.has_value());
  EXPECT_TRUE(pieces->empty());
}

RC_GTEST_PROP(Pieces, AddUpAndAreConvexCounterClockwise, ()) {
  const auto region = geometry::region(*draw::star_ring(false, 1));
  RC_PRE(region.has_value());
  const auto pieces = geometry::pieces(*region, draw::at(3, -2));
  RC_ASSERT(pieces.has_value());
  RC_ASSERT(std::abs(pieces->area() - region->area().si()) <= region->perimeter().si() * 0.0005);
  for (const Facet& facet : pieces->facets()) {
    const auto& r = facet.ring;
    RC_ASSERT(r.size() >= 3U);
    for (std::size_t i = 0; i < r.size(); ++i) {
      const Vec a = r[(i + 1) % r.size()] - r[i], b = r[(i + 2) % r.size()] - r[(i + 1) % r.size()];
      RC_ASSERT(cross(a, b) >= -1e-9);
    }
  }
}

// The buckets against a plain loop.
RC_GTEST_PROP(Surface, FindsByBucketsWhatALoopFinds, ()) {
  const auto region = geometry::region(*draw::star_ring(false, 1));
  RC_PRE(region.has_value());
  const auto pieces = geometry::pieces(*region, draw::at(0, 0));
  RC_ASSERT(pieces.has_value());
  const Vec low{*rc::gen::inRange(-9000, 9000) / 1000.0, *rc::gen::inRange(-9000, 9000) / 1000.0};
  const Vec high = low + Vec{*rc::gen::inRange(0, 4000) / 1000.0, *rc::gen::inRange(0, 4000) / 1000.0};
  std::vector<std::uint32_t> slow;
  for (std::uint32_t n = 0; n < pieces->facets().size(); ++n) {
    Vec least{1e9, 1e9}, most{-1e9, -1e9};
    for (const Vec v : pieces->facets()[n].ring) {
      least = {std::min(least.x, v.x), std::min(least.y, v.y)};
      most = {std::max(most.x, v.x), std::max(most.y, v.y)};
    }
    if (least.x <= high.x && most.x >= low.x && least.y <= high.y && most.y >= low.y) slow.push_back(n);
  }
  RC_ASSERT(pieces->touching(low, high) == slow);
}

RC_GTEST_PROP(Pieces, MovedByWholeStepsAreTheSameBits, ()) {
  geometry::Ring ring = *draw::star_ring(false, 1);
  const auto here = geometry::region(ring);
  RC_PRE(here.has_value());
  const auto by = units::Length::of_steps(*rc::gen::inRange<std::int64_t>(-300'000'000, 300'000'000));
  for (geometry::Edge& edge : ring) edge.from = {edge.from.x + by, edge.from.y - by};
  const auto there = geometry::region(ring);
  RC_ASSERT(there.has_value());
  const Point origin = draw::at(1, 1);
  const auto a = geometry::pieces(*here, origin);
  const auto b = geometry::pieces(*there, {origin.x + by, origin.y - by});
  RC_ASSERT(a.has_value() && b.has_value());
  RC_ASSERT(a->facets() == b->facets());
}

}  // namespace
