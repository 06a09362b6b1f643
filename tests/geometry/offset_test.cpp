#include "geometry/offset.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include "geometry/drawing.h"
#include "geometry/freeform.h"
#include "geometry/index.h"

namespace {

using drawing::at_inches;
using drawing::at_metres;
using drawing::expect_valid;
using drawing::foot;
using drawing::inch;
using drawing::pi;
using drawing::rectangle;
using drawing::region;
using drawing::ring;
using drawing::square_foot;
using geometry::Corner;
using geometry::offset;
using geometry::Origin;
using geometry::Point;
using geometry::Polygon;
using geometry::Region;
using geometry::Ring;
using geometry::Vec;
using units::Length;

Length inches(double count) { return Length::nearest(units::Metres(count * inch)); }

Region moved_out(const Region& from, Length out, Corner corner, double limit = geometry::mitre_limit) {
  const auto made = offset(from, out, corner, limit);
  EXPECT_TRUE(made.has_value()) << (made ? "" : problem::sentence(made.error()));
  if (!made) return {};
  expect_valid(*made);
  return *made;
}

// Guide for concrete pavers on a base: 10 x 20 ft, base 6 in past the edge: 11 x 21 = 231 sq ft with mitred corners,
// rounded 10 x 20 + 60 x 0.5 + pi/4 = 230.7854 sq ft (Steiner: A + P d + pi d^2).
TEST(Offset, BasePastTheEdge) {
  const Region patio = region({rectangle(120, 240)});
  const Region mitred = moved_out(patio, Length::inches(6), Corner::mitred);
  EXPECT_DOUBLE_EQ(mitred.area().si(), 231 * square_foot);
  EXPECT_DOUBLE_EQ(mitred.perimeter().si(), 64 * foot);
  const Region round = moved_out(patio, Length::inches(6), Corner::round);
  EXPECT_NEAR(round.area().si(), (230 + pi / 4) * square_foot, 1e-12);
  EXPECT_NEAR(round.area().si() / square_foot, 230.7854, 0.00005);
  EXPECT_EQ(round.polygons()[0].outer.edges().size(), 8U);
}

// Bonding ring of a 16 x 32 ft pool, 21 in off the water: 2 (16 + 32) + 8 x 1.75 = 110.0 ft mitred,
// 96 + 2 pi 1.75 = 106.996 ft with round corners.
TEST(Offset, RingRoundAPool) {
  const Region pool = region({rectangle(192, 384)});
  EXPECT_NEAR(moved_out(pool, Length::inches(21), Corner::mitred).perimeter().si(), 110 * foot, 1e-12);
  const double round = moved_out(pool, Length::inches(21), Corner::round).perimeter().si();
  EXPECT_NEAR(round, (96 + 2 * pi * 1.75) * foot, 1e-12);
  EXPECT_NEAR(round / foot, 106.996, 0.0005);
}

// Steiner over tangent arcs: area A + P d + pi d^2, perimeter P + 2 pi d, either corner, in and out. The figures of the
// made-up demo pool: A 23.5382993 m2, P 20.2718614 m; coping nose 1 1/2 in in 20.0324721 m, its back 10 1/2 in out
// 21.9475869 m, top between them 6.39776099 m2; the ring of the surround from 1/2 to 12 1/2 in 6.49504883 m2; two bars
// 3 and 9 in out 42.4588377 m; bonding conductor 20 in out 23.4637196 m, less four ties (it is 8 in longer by table).
TEST(Offset, TangentArcsFollowSteiner) {
  const Region pool = region({drawing::waisted_pool()});
  const double area = pool.area().si();
  const double length = pool.perimeter().si();
  EXPECT_NEAR(area, 23.5382993, 1e-6);
  EXPECT_NEAR(length, 20.2718614, 1e-6);
  for (const Corner corner : {Corner::mitred, Corner::round}) {
    for (const double d : {-36.0, -12.0, -8.0, -1.5, 0.5, 3.0, 9.0, 10.5, 12.0, 12.5, 20.0, 60.0, 90.0}) {
      const Region made = moved_out(pool, inches(d), corner);
      ASSERT_EQ(made.polygons().size(), 1U) << d;
      EXPECT_EQ(made.polygons()[0].outer.edges().size(), 4U) << d;
      EXPECT_NEAR(made.perimeter().si(), length + 2 * pi * d * inch, 1e-6 * length) << d;
      EXPECT_NEAR(made.area().si(), area + length * d * inch + pi * d * inch * d * inch, 1e-6 * area) << d;
    }
  }
}

TEST(Offset, FiguresOfTheDemoPool) {
  const Region pool = region({drawing::waisted_pool()});
  const auto out = [&](double d) { return moved_out(pool, inches(d), Corner::mitred); };
  EXPECT_NEAR(out(-1.5).perimeter().si(), 20.0324721, 1e-6 * 20);
  EXPECT_NEAR(out(10.5).perimeter().si(), 21.9475869, 1e-6 * 20);
  EXPECT_NEAR(out(10.5).area().si() - out(-1.5).area().si(), 6.39776099, 1e-6 * 6);
  EXPECT_NEAR(out(12.5).area().si() - out(0.5).area().si(), 6.49504883, 1e-6 * 6);
  EXPECT_NEAR((out(12).area().si() - pool.area().si()) * 6 * inch, 0.986138775, 1e-6);
  EXPECT_NEAR(out(3).perimeter().si() + out(9).perimeter().si(), 42.4588377, 1e-6 * 42);
  EXPECT_NEAR(out(20).perimeter().si(), 23.4637196, 1e-6 * 23);
}

// Radii after the move: the waist of 95 in shrinks when moved out, the others grow; origins stay in order.
TEST(Offset, ArcsStayConcentricAndKeepTheirOrigin) {
  const Region pool = region({drawing::waisted_pool()});
  const Region made = moved_out(pool, Length::inches(10), Corner::mitred);
  const Ring& edges = made.polygons()[0].outer.edges();
  const std::vector<double> radii{90, 85, 55, 370};
  ASSERT_EQ(edges.size(), 4U);
  for (std::size_t i = 0; i < 4; ++i) {
    EXPECT_EQ(edges[i].origin, (Origin{1, static_cast<std::int32_t>(i)}));
    EXPECT_NEAR(geometry::curve(edges, i).radius() / Length::steps_per_inch, radii[i], 0.001);
  }
}

// An L: its inside corner keeps sharp when moved out and is what gets rounded when moved in.
// 10 x 10 ft less 6 x 6 ft = 64 sq ft, perimeter 40 ft. Out 1 ft mitred: 12 x 12 - 6 x 6 = 108; in 1 ft: 8 x 8 - 6 x 6
// = 28 mitred; round out: less (4 - pi) / 4 at five corners; round in: less (1 - pi/4) more at the inside corner.
TEST(Offset, AnInsideCorner) {
  const Region ell = region({ring({{at_inches(0, 0)},
                                   {at_inches(120, 0)},
                                   {at_inches(120, 48)},
                                   {at_inches(48, 48)},
                                   {at_inches(48, 120)},
                                   {at_inches(0, 120)}})});
  const double one = square_foot;
  EXPECT_NEAR(moved_out(ell, Length::feet(1), Corner::mitred).area().si(), 108 * one, 1e-9);
  EXPECT_NEAR(moved_out(ell, Length::feet(-1), Corner::mitred).area().si(), 28 * one, 1e-9);
  EXPECT_NEAR(moved_out(ell, Length::feet(1), Corner::round).area().si(), (108 - 5 * (1 - pi / 4)) * one, 1e-9);
  const Region in = moved_out(ell, Length::feet(-1), Corner::round);
  EXPECT_NEAR(in.area().si(), (28 + (1 - pi / 4)) * one, 1e-9);
  ASSERT_EQ(in.polygons()[0].outer.edges().size(), 7U);
  EXPECT_EQ(in.polygons()[0].outer.edges()[3].origin, (Origin{1, 2}));  // the arc: of the edge before the corner
  EXPECT_LT(in.polygons()[0].outer.edges()[3].bulge, 0);
}

// Ground of 20 x 20 ft with a 6 x 6 ft hole, 1 ft: out 22^2 - 4^2, in 18^2 - 8^2. The hole is gone at 3 ft: 26^2.
TEST(Offset, HolesShrinkWhenTheGroundGrows) {
  const Region ground =
      region({rectangle(240, 240),
              ring({{at_inches(84, 84)}, {at_inches(84, 156)}, {at_inches(156, 156)}, {at_inches(156, 84)}}, 2)});
  const Region out = moved_out(ground, Length::feet(1), Corner::mitred);
  EXPECT_NEAR(out.area().si(), (22 * 22 - 4 * 4) * square_foot, 1e-9);
  EXPECT_EQ(out.polygons()[0].holes[0].edges()[0].origin, (Origin{2, 0}));
  EXPECT_NEAR(moved_out(ground, Length::feet(-1), Corner::mitred).area().si(), (18 * 18 - 8 * 8) * square_foot, 1e-9);
  EXPECT_NEAR(moved_out(ground, Length::feet(3), Corner::mitred).area().si(), 26 * 26 * square_foot, 1e-9);
}

// A whole circle of two arcs, radius 5 ft, and its ring 1 ft wide: pi (36 - 25).
TEST(Offset, Circles) {
  const Region disc =
      region({ring({{at_inches(-60, 0), 'l', at_inches(0, 0)}, {at_inches(60, 0), 'l', at_inches(0, 0)}})});
  EXPECT_NEAR(moved_out(disc, Length::feet(1), Corner::round).area().si(), 36 * pi * square_foot, 1e-9);
  EXPECT_NEAR(moved_out(disc, Length::feet(-4), Corner::round).area().si(), pi * square_foot, 1e-9);
  EXPECT_NEAR(moved_out(disc, Length::inches(-59), Corner::mitred).area().si(), pi * inch * inch, 1e-9);
  EXPECT_TRUE(moved_out(disc, Length::feet(-5), Corner::round).empty());
  EXPECT_TRUE(moved_out(disc, Length::feet(-6), Corner::mitred).empty());
}

// A dumbbell: two 10 ft squares and a neck 2 ft wide, 6 ft long; moved in 1.5 ft the neck is gone: 2 x 7 x 7.
TEST(Offset, ANarrowNeckParts) {
  const Region bell = region({ring({{at_inches(0, 0)},
                                    {at_inches(120, 0)},
                                    {at_inches(120, 48)},
                                    {at_inches(192, 48)},
                                    {at_inches(192, 0)},
                                    {at_inches(312, 0)},
                                    {at_inches(312, 120)},
                                    {at_inches(192, 120)},
                                    {at_inches(192, 72)},
                                    {at_inches(120, 72)},
                                    {at_inches(120, 120)},
                                    {at_inches(0, 120)}})});
  const Region in = moved_out(bell, Length::inches(-18), Corner::mitred);
  ASSERT_EQ(in.polygons().size(), 2U);
  EXPECT_NEAR(in.area().si(), 98 * square_foot, 1e-9);
  EXPECT_EQ(in.polygons()[0].outer.edges()[0].origin.edge, 0);
}

TEST(Offset, ZeroAndNothing) {
  const Region patio = region({rectangle(120, 240)});
  EXPECT_EQ(*offset(patio, Length(), Corner::mitred), patio);
  EXPECT_TRUE(offset(Region(), Length::feet(1), Corner::mitred)->empty());
  EXPECT_TRUE(moved_out(patio, Length::inches(-60), Corner::mitred).empty());
  EXPECT_EQ(offset(patio, Length::millimetres(6'000'000), Corner::mitred).error().code, "offset-too-far");
}

// Edges that go on straight keep their own names: a side drawn as three edges stays three.
TEST(Offset, CollinearEdgesKeepTheirNames) {
  const Region patio = region({ring({{at_inches(0, 0)},
                                     {at_inches(30, 0)},
                                     {at_inches(90, 0)},
                                     {at_inches(120, 0)},
                                     {at_inches(120, 100)},
                                     {at_inches(0, 100)}})});
  for (const int d : {10, -10}) {
    const Region made = moved_out(patio, Length::inches(d), Corner::mitred);
    const Ring& edges = made.polygons()[0].outer.edges();
    ASSERT_EQ(edges.size(), 6U);
    for (std::size_t i = 0; i < 6; ++i) EXPECT_EQ(edges[i].origin.edge, static_cast<std::int32_t>(i));
    EXPECT_EQ(edges[1].from, at_inches(30, -d));
    EXPECT_EQ(edges[2].from, at_inches(90, -d));
  }
}

// A needle: right triangle 10 in by 100 in, angle atan(0.1) = 5.71 degrees at the tip, tip distance 1/sin(2.855) = 20.1
// widths: past the limit of 5, so cut off square to the bisector at 5 widths from the corner.
TEST(Offset, PastTheLimitACornerIsCutOff) {
  const Region needle = region({ring({{at_inches(0, 0)}, {at_inches(100, 0)}, {at_inches(0, 10)}})});
  const Region made = moved_out(needle, Length::inches(2), Corner::mitred);
  const Ring& edges = made.polygons()[0].outer.edges();
  ASSERT_EQ(edges.size(), 4U);
  const double half = std::atan(0.1) / 2;
  const Vec bisector{std::cos(half), -std::sin(half)};
  for (std::size_t i = 1; i <= 2; ++i) {
    EXPECT_NEAR(dot(edges[i].from - at_inches(100, 0), bisector) / Length::steps_per_inch, 10, 1e-3);
  }
  EXPECT_EQ(edges[1].origin, (Origin{1, 0}));  // the bevel's: the edge before the corner
  EXPECT_EQ(moved_out(needle, Length::inches(2), Corner::mitred, 21).polygons()[0].outer.edges().size(), 3U);
}

// A D: half circle of radius 5 ft on a straight side of 10 ft. The corners are 90 degrees between line and arc; moved
// out by 1 ft, line y = -1 and circle of 6 ft meet at x = sqrt(36 - 1). Area: half disc 18 pi, and below it the part of
// the disc between y = -1 and 0: sqrt(35) + 36 asin(1/6).
TEST(Offset, ALineMeetsAnArc) {
  const Region shape = region({ring({{at_inches(-60, 0)}, {at_inches(60, 0), 'l', at_inches(0, 0)}})});
  const Region out = moved_out(shape, Length::feet(1), Corner::mitred);
  ASSERT_EQ(out.polygons()[0].outer.edges().size(), 2U);
  EXPECT_NEAR(out.area().si(), (18 * pi + std::sqrt(35) + 36 * std::asin(1 / 6.0)) * square_foot, 1e-6);
  // Inwards the line y = 1 cuts the circle of 4 ft: 8 pi less sqrt(15) + 16 asin(1/4).
  const Region in = moved_out(shape, Length::feet(-1), Corner::mitred);
  EXPECT_NEAR(in.area().si(), (8 * pi - std::sqrt(15) - 16 * std::asin(0.25)) * square_foot, 1e-6);
}

TEST(Offset, AFreeformPoolFollowsSteiner) {
  const std::vector<Point> points{at_metres(0, 0), at_metres(4, -1),  at_metres(7, 1),
                                  at_metres(6, 4), at_metres(3, 3.4), at_metres(0.5, 4)};
  const Region pool = region({geometry::freeform(points, true, 9)});
  const double area = pool.area().si();
  const double length = pool.perimeter().si();
  for (const double d : {-0.3, 0.05, 0.3, 0.6}) {
    const Region made = moved_out(pool, Length::nearest(units::Metres(d)), Corner::mitred);
    EXPECT_NEAR(made.perimeter().si(), length + 2 * pi * d, 2e-5 * length) << d;
    EXPECT_NEAR(made.area().si(), area + length * d + pi * d * d, 2e-5 * area) << d;
    EXPECT_LE(made.polygons()[0].outer.edges().size(), pool.polygons()[0].outer.edges().size());
  }
}

// GEOS's own buffer of the chords, without any tracing: what areas are held against.
double plain_area(const Region& from, Length out, Corner corner) {
  namespace geos = geometry::geos;
  const auto patches = geos::flattened(from);
  const auto whole = geos::multipolygon(patches, from.bounds().low);
  GEOSBufferParams* params = GEOSBufferParams_create_r(geos::context());
  GEOSBufferParams_setQuadrantSegments_r(geos::context(), params, 90);
  GEOSBufferParams_setJoinStyle_r(geos::context(), params,
                                  corner == Corner::mitred ? GEOSBUF_JOIN_MITRE : GEOSBUF_JOIN_ROUND);
  GEOSBufferParams_setMitreLimit_r(geos::context(), params, 5);
  const geos::Geometry made(GEOSBufferWithParams_r(geos::context(), whole.get(), params, double(out.steps())));
  GEOSBufferParams_destroy_r(geos::context(), params);
  return geos::area(*made) / Length::steps_per_metre / Length::steps_per_metre;
}

// A star-shaped ring: points round the origin at growing angles, each at its own distance; some edges are arcs.
Region any_star(bool arcs) {
  const int count = *rc::gen::inRange(3, 14);
  std::vector<drawing::Stop> stops;
  Ring edges;
  for (int i = 0; i < count; ++i) {
    const double angle = 2 * pi * (i + *rc::gen::inRange(-30, 30) / 100.0) / count;
    const double far = *rc::gen::inRange(800, 6000) / 1000.0;
    const double bulge = arcs && *rc::gen::inRange(0, 2) == 0 ? *rc::gen::inRange(-300, 300) / 1000.0 : 0;
    edges.push_back({at_metres(far * std::cos(angle), far * std::sin(angle)), bulge, {3, i}});
  }
  return region({edges});
}
bool sound(const Region& drawn) {
  return drawn.polygons()[0].outer.signed_area().si() > 0 && geometry::geos::valid(geometry::geos::flattened(drawn));
}
Length any_width() {
  const int millimetres = *rc::gen::inRange(-700, 700);
  return Length::millimetres(millimetres == 0 ? 1 : millimetres);
}

// Straight outlines: the same area as GEOS's own, but for the grid's rounding (1 step along the perimeter), the chords
// of its round corners (90 to a quarter: under 1e-4 of the corners' sectors) and its simplifying of an hundredth of the
// width.
TEST(Offset, AgreesWithThePlainBufferOnStraightOutlines) {
  EXPECT_TRUE(rc::check("areas of straight outlines", [] {
    const Region drawn = any_star(false);
    RC_PRE(sound(drawn));
    const Length out = any_width();
    const Corner corner = *rc::gen::element(Corner::mitred, Corner::round);
    const Region made = moved_out(drawn, out, corner);
    RC_ASSERT(!testing::Test::HasFailure());
    const double width = std::abs(out.metres().si());
    const double allowed = 1e-5 * made.perimeter().si() + 1e-4 * pi * width * width;
    RC_ASSERT(std::abs(made.area().si() - plain_area(drawn, out, corner)) <= allowed);
  }));
}

TEST(Offset, ArcsGiveValidRegionsNearThePlainBuffer) {
  EXPECT_TRUE(rc::check("regions with arcs, round corners", [] {
    const Region drawn = any_star(true);
    RC_PRE(sound(drawn));
    const Length out = any_width();
    const Region made = moved_out(drawn, out, Corner::round);
    RC_ASSERT(!testing::Test::HasFailure());
    // The plain buffer has chords 0.5 mm off.
    const double allowed = 0.0006 * (made.perimeter().si() + drawn.perimeter().si()) + 1e-3;
    RC_ASSERT(std::abs(made.area().si() - plain_area(drawn, out, Corner::round)) <= allowed);
  }));
}

TEST(Offset, MovedByWholeStepsIsTheSame) {
  EXPECT_TRUE(rc::check("to the bit", [] {
    const Region drawn = any_star(true);
    RC_PRE(sound(drawn));
    const Vec by{double(*rc::gen::inRange(-500'000'000, 500'000'000)),
                 double(*rc::gen::inRange(-500'000'000, 500'000'000))};
    const Length out = any_width();
    const Corner corner = *rc::gen::element(Corner::mitred, Corner::round);
    const Region here = moved_out(drawn, out, corner);
    const Region there = moved_out(region({moved(drawn.polygons()[0].outer.edges(), by)}), out, corner);
    const auto a = here.outlines();
    const auto b = there.outlines();
    RC_ASSERT(a.size() == b.size());
    for (std::size_t i = 0; i < a.size(); ++i) RC_ASSERT(moved(a[i]->edges(), by) == b[i]->edges());
  }));
}

// Every edge lies the width away from the edge that it names, and every source edge is one of the outline's.
TEST(Offset, EdgesLieTheWidthAwayFromTheirOrigin) {
  EXPECT_TRUE(rc::check("places along result edges", [] {
    const Region drawn = any_star(true);
    RC_PRE(sound(drawn));
    const Length out = any_width();
    const Region made = moved_out(drawn, out, Corner::round);
    const double width = std::abs(out.metres().si());
    for (const geometry::Outline* outline : made.outlines()) {
      for (std::size_t i = 0; i < outline->edges().size(); ++i) {
        const Origin origin = outline->edges()[i].origin;
        const geometry::Curve source =
            geometry::curve(drawn.polygons()[0].outer.edges(), static_cast<std::size_t>(origin.edge));
        const geometry::Curve edge = geometry::curve(outline->edges(), i);
        for (const double share : {0.0, 0.3, 0.5, 1.0}) {
          const double off = geometry::nearest(source, moved(edge.start, edge.at(share))).distance;
          RC_ASSERT(std::abs(off - width) < 2e-5);
        }
      }
    }
  }));
}

}  // namespace
