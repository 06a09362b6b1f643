// Faults of drawn rings, each with its code and its place, and shapes that only touch themselves.
#include <gtest/gtest.h>

#include <rapidcheck.h>
#include <limits>

#include "geometry/draw.h"
#include "geometry/private/geos.h"

namespace {

using draw::at;
using draw::Corner;
using geometry::Drawn;
using geometry::Ring;
using geometry::Shape;
using problem::Xy;

Drawn drawn(std::initializer_list<std::vector<Corner>> rings) {
  Drawn all;
  std::int32_t first = 0;
  for (const auto& corners : rings) {
    all.push_back(draw::ring(corners, 1, first));
    first += static_cast<std::int32_t>(corners.size());
  }
  return all;
}

void expect_fault(const Drawn& rings, const std::string& code, Xy place) {
  const auto shape = geometry::shape(rings);
  ASSERT_FALSE(shape.has_value()) << code;
  EXPECT_EQ(shape.error().code, code) << problem::sentence(shape.error());
  EXPECT_EQ(shape.error().severity, problem::Severity::problem);
  EXPECT_FALSE(shape.error().mend.empty());
  ASSERT_TRUE(shape.error().place.at.has_value());
  EXPECT_NEAR(shape.error().place.at->x, place.x, 1e-5) << code;
  EXPECT_NEAR(shape.error().place.at->y, place.y, 1e-5) << code;
}

const std::vector<Corner> square{{0, 0}, {10, 0}, {10, 10}, {0, 10}};

TEST(Faults, OfOneRing) {
  expect_fault(drawn({{{2, 3}}}), "outline-empty", {2, 3});
  expect_fault(drawn({{{2, 3}, {4, 5}}}), "outline-empty", {2, 3});
  expect_fault(drawn({{{0, 0}, {5, 0}, {5, 0}, {5, 5}}}), "edge-zero-length", {5, 0});
  expect_fault(drawn({{{0, 0}, {5, 0}, {5, 5}, {0, 0}}}), "edge-zero-length", {0, 0});
  expect_fault(drawn({{{0, 0}, {5, 0, 0.5}, {5, 0}, {5, 5}}}), "edge-zero-length", {5, 0});
  expect_fault(drawn({{{0, 0}, {5000.001, 0}, {5, 5}}}), "outline-too-far", {5000.001, 0});
  expect_fault(drawn({{{4000, 0, 1}, {4900, 2000}, {4000, 2000}}}), "outline-too-far", {4000, 0});
  const double nan = std::numeric_limits<double>::quiet_NaN();
  expect_fault(drawn({{{0, 0}, {5, 0, nan}, {5, 5}}}), "edge-bulge", {5, 0});
  expect_fault(drawn({{{0, 0}, {5, 0, 1001}, {5, 5}}}), "edge-bulge", {5, 0});
  expect_fault(drawn({{{0, 0}, {5, 0, -1e300}, {5, 5}}}), "edge-bulge", {5, 0});
  EXPECT_EQ(geometry::shape({}).error().code, "outline-empty");
  EXPECT_EQ(geometry::shape({Ring{}}).error().code, "outline-empty");
}

TEST(Faults, NoArea) {
  // Out along a line and straight back: nothing but spikes.
  expect_fault(drawn({{{0, 0}, {5, 0}, {2, 0}}}), "outline-spike", {5, 0});
  // An arc and the same arc back.
  expect_fault(drawn({{{0, 0, 0.5}, {5, 0, -0.5}}}), "outline-spike", {5, 0});
  // 6 m long and a step wide: 3 m x 3.1 um is less than its 12 m of edge times a step.
  Ring sliver = draw::ring({{0, 0}, {3, 0}, {6, 0}});
  sliver[1].from.y = units::Length::of_steps(1);
  expect_fault({sliver}, "outline-no-area", {0, 0});
}

TEST(Faults, Spikes) {
  // A line that runs back on a line: the ground is certain, 100 m2, and the spike is still a problem.
  const auto shape = geometry::shape(drawn({{{0, 0}, {10, 0}, {10, 10}, {5, 10}, {5, 13}, {5, 10}, {0, 10}}}));
  ASSERT_TRUE(shape.has_value());
  EXPECT_DOUBLE_EQ(shape->region.area().si(), 100);
  ASSERT_EQ(shape->notices.size(), 1u);
  EXPECT_EQ(shape->notices[0].code, "outline-spike");
  EXPECT_EQ(shape->notices[0].severity, problem::Severity::problem);
  EXPECT_EQ(shape->notices[0].place.at, (Xy{5, 13}));
  EXPECT_FALSE(geometry::region(draw::ring({{0, 0}, {10, 0}, {10, 10}, {5, 10}, {5, 13}, {5, 10}, {0, 10}})));
  // Half way back only.
  const auto partly = geometry::shape(drawn({{{0, 0}, {12, 0}, {10, 0}, {10, 10}, {0, 10}}}));
  ASSERT_TRUE(partly.has_value());
  EXPECT_DOUBLE_EQ(partly->region.area().si(), 100);
  EXPECT_EQ(partly->notices.at(0).place.at, (Xy{12, 0}));
  // Inwards: it cuts nothing off.
  const auto inwards = geometry::shape(drawn({{{0, 0}, {5, 0}, {5, 3}, {5, 0}, {10, 0}, {10, 10}, {0, 10}}}));
  ASSERT_TRUE(inwards.has_value());
  EXPECT_DOUBLE_EQ(inwards->region.area().si(), 100);
  EXPECT_EQ(inwards->notices.at(0).place.at, (Xy{5, 3}));
  // An arc that runs back on an arc of the same circle (radius 5 about (5, 0): out to 90 degrees, back to 120).
  const double q = draw::tan_quarter(90);
  const double back = draw::tan_quarter(30);
  expect_fault(
      drawn({{{0, 0, q}, {5, -5, -back}, {5 - 5 * std::sin(draw::pi / 6), -5 * std::cos(draw::pi / 6)}, {-3, 4}}}),
      "outline-spike", {5, -5});
  // A cusp is no spike: two half circles of different size that meet with opposite tangents.
  EXPECT_TRUE(geometry::region(draw::ring({{0, 0, 1}, {10, 0, -1}, {4, 0, 1}})));
}

TEST(Faults, Crossings) {
  expect_fault(drawn({{{0, 0}, {10, 10}, {10, 0}, {0, 10}}}), "outline-crosses-itself", {5, 5});
  // Two lobes of unlike size.
  expect_fault(drawn({{{0, 0}, {10, 0}, {10, 4}, {4, -2}, {0, 4}}}), "outline-crosses-itself", {6, 0});
  // A lobe of 2 mm on a plan of 100 m is a crossing as well.
  expect_fault(
      drawn(
          {{{0, 0}, {100, 0}, {100, 50}, {50.002, 50}, {50.002, 50.002}, {50.004, 50.002}, {50.004, 49.998}, {0, 49}}}),
      "outline-crosses-itself", {50.004, 50});
  // Twice round the same ground.
  expect_fault(drawn({{{0, 0}, {10, 0}, {10, 10}, {2, 10}, {2, 2}, {8, 2}, {8, 8}, {-1, 8}}}), "outline-crosses-itself",
               {2, 8});
  // A lobe that touches in a point but runs round its ground a second time.
  expect_fault(drawn({{{0, 0}, {2, 0}, {3, 1}, {3, 2}, {1, 2}, {1, 1}, {2, 0}, {5, 0}, {5, 5}, {0, 5}}}),
               "outline-crosses-itself", {2, 0});
  // An arc over a line: the arc of radius 5 about (5, 4) dips to y = -1 and meets y = 0 at 5 +- 3.
  const double h = draw::tan_quarter(180);
  const auto shape = geometry::shape(
      drawn({{{0, 4, h}, {10, 4}, {10, -3}, {12, -3}, {12, 6}, {-2, 6}, {-2, 0}, {9, 0}, {9, 1}, {-1, 1}}}));
  ASSERT_FALSE(shape.has_value());
  EXPECT_EQ(shape.error().code, "outline-crosses-itself");
}

TEST(Faults, Islands) {
  expect_fault(drawn({square, {{12, 2}, {14, 2}, {14, 4}}}), "hole-outside", {12, 2});
  expect_fault(drawn({square, {{8, 2}, {14, 2}, {14, 4}}}), "hole-outside", {8, 2});
  const auto overlap =
      geometry::shape(drawn({square, {{1, 1}, {5, 1}, {5, 5}, {1, 5}}, {{4, 4}, {8, 4}, {8, 8}, {4, 8}}}));
  ASSERT_FALSE(overlap.has_value());
  EXPECT_EQ(overlap.error().code, "holes-overlap");
  const Xy place = overlap.error().place.at.value();
  EXPECT_TRUE(place.x >= 4 && place.x <= 5 && place.y >= 4 && place.y <= 5);
  // One inside the other, and the same one twice.
  EXPECT_EQ(geometry::shape(drawn({square, {{1, 1}, {5, 1}, {5, 5}, {1, 5}}, {{2, 2}, {3, 2}, {3, 3}}})).error().code,
            "holes-overlap");
  EXPECT_EQ(geometry::shape(drawn({square, {{2, 2}, {3, 2}, {3, 3}}, {{2, 2}, {3, 2}, {3, 3}}})).error().code,
            "holes-overlap");
  // The island is as large as the ground.
  EXPECT_EQ(geometry::shape(drawn({square, square})).error().code, "outline-no-area");
  // A fault of an island's own ring.
  expect_fault(drawn({square, {{1, 1}, {3, 3}, {3, 1}, {1, 3}}}), "outline-crosses-itself", {2, 2});
}

void expect_touching(const Drawn& rings, double area, std::size_t polygons, std::size_t holes, std::vector<Xy> places) {
  const auto shape = geometry::shape(rings);
  ASSERT_TRUE(shape.has_value()) << problem::sentence(shape.error());
  EXPECT_NEAR(shape->region.area().si(), area, 1e-9 * area);
  EXPECT_EQ(shape->region.polygons().size(), polygons);
  EXPECT_EQ(shape->region.outlines().size(), polygons + holes);
  ASSERT_EQ(shape->notices.size(), places.size());
  for (std::size_t i = 0; i < places.size(); ++i) {
    EXPECT_EQ(shape->notices[i].code, "outline-touches-itself");
    EXPECT_EQ(shape->notices[i].severity, problem::Severity::notice);
    EXPECT_NEAR(shape->notices[i].place.at.value().x, places[i].x, 1e-5);
    EXPECT_NEAR(shape->notices[i].place.at.value().y, places[i].y, 1e-5);
  }
  EXPECT_TRUE(geometry::geos::valid(geometry::geos::flattened(shape->region)));
}

TEST(Touching, IsSplitAndCounts) {
  // Two squares of 4 and 9 m2 that meet at a corner, drawn in one go.
  expect_touching(drawn({{{0, 0}, {2, 0}, {2, 2}, {5, 2}, {5, 5}, {2, 5}, {2, 2}, {0, 2}}}), 13, 2, 0, {{2, 2}});
  // The same with a corner on the middle of an edge: a triangle of 1 m2 whose tip (2, 1) is a corner of the edge's too.
  expect_touching(drawn({{{0, 0}, {2, 0}, {2, 1}, {3, 0}, {3, 2}, {2, 1}, {2, 2}, {0, 2}}}), 5, 2, 0, {{2, 1}});
  // From inside: a house of 2 + 1 m2 cut out of a square, its tip on the edge.
  expect_touching(drawn({{{0, 0}, {2, 0}, {1, 1}, {1, 2}, {3, 2}, {3, 1}, {2, 0}, {5, 0}, {5, 5}, {0, 5}}}), 25 - 3, 1,
                  1, {{2, 0}});
  // An island drawn in one go with its outline, joined by a seam walked twice.
  expect_touching(
      drawn({{{0, 0}, {5, 0}, {5, 5}, {0, 5}, {0, 2}, {1, 2}, {1, 4}, {4, 4}, {4, 1}, {1, 1}, {1, 2}, {0, 2}}}), 25 - 9,
      1, 1, {{0, 2}});
}

TEST(Touching, IslandsToo) {
  // In one point of the outline: nothing to split, but said.
  expect_touching(drawn({square, {{0, 5}, {2, 4}, {2, 6}}}), 98, 1, 1, {{0, 5}});
  // Along an edge: the ground is an outline with a notch; the place is an end of what they share.
  expect_touching(drawn({square, {{0, 4}, {2, 4}, {2, 6}, {0, 6}}}), 96, 1, 0, {{0, 6}});
  // Two islands that meet in a point.
  expect_touching(drawn({square, {{2, 2}, {4, 2}, {4, 4}, {2, 4}}, {{4, 4}, {6, 4}, {6, 6}, {4, 6}}}), 92, 1, 2,
                  {{4, 4}});
}

// Two disks of radius 1 whose common tangent point (1, 0) is a corner of both: they stay whole circles.
TEST(Touching, KeepsArcs) {
  const auto shape = geometry::shape(drawn({{{1, 0, 1}, {3, 0, 1}, {1, 0, 1}, {-1, 0, 1}}}));
  ASSERT_TRUE(shape.has_value()) << problem::sentence(shape.error());
  ASSERT_EQ(shape->region.polygons().size(), 2u);
  EXPECT_NEAR(shape->region.area().si(), 2 * draw::pi, 1e-12);
  for (const geometry::Outline* outline : shape->region.outlines()) {
    ASSERT_EQ(outline->edges().size(), 2u);
    EXPECT_EQ(outline->edges()[0].bulge, 1);
    EXPECT_EQ(outline->edges()[1].bulge, 1);
  }
  EXPECT_EQ(shape->region.polygons()[0].outer.edges()[0].origin, (geometry::Origin{1, 0}));
  EXPECT_EQ(shape->region.polygons()[1].outer.edges()[0].origin, (geometry::Origin{1, 2}));
}

TEST(Valid, AsDrawnTurnedSoThatGroundLiesLeft) {
  const std::vector<Corner> island{{2, 2}, {4, 2}, {4, 4, 0.3}, {2, 4}};
  const Drawn rings = drawn({square, island});
  for (const bool outer_back : {false, true}) {
    for (const bool island_back : {false, true}) {
      const auto shape = geometry::shape({outer_back ? geometry::reversed(rings[0]) : rings[0],
                                          island_back ? geometry::reversed(rings[1]) : rings[1]});
      ASSERT_TRUE(shape.has_value());
      EXPECT_TRUE(shape->notices.empty());
      ASSERT_EQ(shape->region.outlines().size(), 2u);
      EXPECT_EQ(shape->region.outlines()[0]->edges(), rings[0]);
      EXPECT_EQ(shape->region.outlines()[1]->edges(), geometry::reversed(rings[1]));
      EXPECT_GT(shape->region.outlines()[0]->signed_area().si(), 0);
      EXPECT_LT(shape->region.outlines()[1]->signed_area().si(), 0);
    }
  }
}

// Rings at random, mostly faulty: the same answer wherever they are drawn, and what counts is valid.
TEST(Valid, AnyRing) {
  EXPECT_TRUE(rc::check("moved, and valid", [] {
    const int corners = *rc::gen::inRange(3, 10);
    Ring ring;
    for (int i = 0; i < corners; ++i) {
      const double bulge = *rc::gen::inRange(0, 3) == 0 ? *rc::gen::inRange(-1500, 1500) / 1000.0 : 0.0;
      ring.push_back({at(*rc::gen::inRange(0, 7), *rc::gen::inRange(0, 7)), bulge, {1, i}});
    }
    const geometry::Vec by{static_cast<double>(*rc::gen::inRange(-300'000'000, 300'000'000)), -98765432};
    const auto here = geometry::shape({ring});
    const auto there = geometry::shape({geometry::moved(ring, by)});
    RC_ASSERT(here.has_value() == there.has_value());
    RC_TAG(here ? (here->notices.empty() ? "valid" : here->notices[0].code) : here.error().code);
    if (!here) {
      RC_ASSERT(here.error().code == there.error().code);
      RC_ASSERT(here.error().place.at.has_value());
      return;
    }
    RC_ASSERT(here->region.area() == there->region.area());
    RC_ASSERT(here->region.polygons().size() == there->region.polygons().size());
    const auto outlines = here->region.outlines();
    for (std::size_t i = 0; i < outlines.size(); ++i) {
      RC_ASSERT(geometry::moved(outlines[i]->edges(), by) == there->region.outlines()[i]->edges());
    }
    RC_ASSERT(geometry::geos::valid(geometry::geos::flattened(here->region)));
    // What counts has the area that the ring encloses, to within perimeter x 1 step and the flattening of its arcs.
    double allowed = 1e-9;
    for (const geometry::Curve& c : geometry::curves(ring)) {
      allowed += c.length() * (c.straight() || here->notices.empty() ? 1.0 : 161.0) / draw::steps_per_metre /
                 draw::steps_per_metre;
    }
    RC_ASSERT(std::abs(here->region.area().si() - std::abs(geometry::signed_area(ring).si())) <= allowed);
  }));
}

}  // namespace
