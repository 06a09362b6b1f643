#include <gtest/gtest.h>
#include <rapidcheck.h>

#include "geometry/drawing.h"
#include "geometry/flatten.h"
#include "geometry/index.h"
#include "geometry/offset.h"
#include "geometry/overlay.h"

namespace {

using drawing::at_inches;
using drawing::at_metres;
using drawing::expect_valid;
using drawing::foot;
using drawing::inch;
using drawing::pi;
using drawing::square_foot;
using geometry::band;
using geometry::Origin;
using geometry::parallel;
using geometry::Path;
using geometry::Point;
using geometry::Region;
using geometry::Ring;
using geometry::Side;
using geometry::Vec;
using units::Length;

// The stops of an open path; the last one is its end.
Path open(std::vector<drawing::Stop> stops) {
  const Point end = stops.back().at;
  Ring edges = drawing::ring(stops);
  edges.pop_back();
  return *Path::make(edges, end);
}
Path closed(const Ring& ring) { return *Path::make(ring, ring.front().from); }

Region made(const Path& path, Length width, Side side, double limit = geometry::mitre_limit) {
  const auto strip = band(path, width, side, limit);
  EXPECT_TRUE(strip.has_value()) << (strip ? "" : problem::sentence(strip.error()));
  if (!strip) return {};
  expect_valid(*strip);
  return *strip;
}
Path beside(const Path& path, Length left) {
  const auto line = parallel(path, left);
  EXPECT_TRUE(line.has_value()) << (line ? "" : problem::sentence(line.error()));
  return line ? *line : path;
}

TEST(Band, OfALine) {
  const Path line = open({{at_inches(0, 0)}, {at_inches(120, 0)}});
  const Region left = made(line, Length::inches(10), Side::left);
  EXPECT_DOUBLE_EQ(left.area().si(), 1200 * inch * inch);
  EXPECT_EQ(left.bounds().high, at_inches(120, 10));
  const Region right = made(line, Length::inches(10), Side::right);
  EXPECT_DOUBLE_EQ(right.area().si(), 1200 * inch * inch);
  EXPECT_EQ(right.bounds().low, at_inches(0, -10));
  int named = 0;
  for (const geometry::Edge& edge : right.polygons()[0].outer.edges()) named += edge.origin == Origin{1, 0} ? 1 : 0;
  EXPECT_EQ(named, 2);  // along the path and along the far side; the ends are nobody's
}

// A kerb along a quarter of 60 in radius, 10 in wide, outside: pi/4 (70^2 - 60^2); inside pi/4 (60^2 - 50^2); wider
// than the radius inside: the quarter disc, pi/4 60^2.
TEST(Band, OfAQuarterCircle) {
  const Path quarter = open({{at_inches(60, 0), 'l', at_inches(0, 0)}, {at_inches(0, 60)}});
  const double square = inch * inch;
  EXPECT_NEAR(made(quarter, Length::inches(10), Side::right).area().si(), pi / 4 * (4900 - 3600) * square, 1e-7);
  EXPECT_NEAR(made(quarter, Length::inches(10), Side::left).area().si(), pi / 4 * (3600 - 2500) * square, 1e-7);
  EXPECT_NEAR(made(quarter, Length::inches(70), Side::left).area().si(), pi / 4 * 3600 * square, 1e-5);
}

// Two legs of 10 ft and 8 ft at a right angle, 1 ft wide. Outside: 10 + 8 + 1 (the kite); inside: 10 + 8 - 1.
TEST(Band, OfACorner) {
  const Path corner = open({{at_inches(0, 0)}, {at_inches(120, 0)}, {at_inches(120, 96)}});
  EXPECT_NEAR(made(corner, Length::feet(1), Side::right).area().si(), 19 * square_foot, 1e-12);
  EXPECT_NEAR(made(corner, Length::feet(1), Side::left).area().si(), 17 * square_foot, 1e-12);
}

// A kerb of the made-up demo job: 35 ft of line, a quarter of 60 in radius turning in, 10 ft of line, 10 in outside:
// 420 x 10 + pi/4 (70^2 - 60^2) + 120 x 10 square inches.
TEST(Band, OfATangentKerb) {
  const Path kerb =
      open({{at_inches(480, 0)}, {at_inches(60, 0), 'r', at_inches(60, 60)}, {at_inches(0, 60)}, {at_inches(0, 180)}});
  const double expected = (4200 + pi / 4 * 1300 + 1200) * inch * inch;
  EXPECT_NEAR(made(kerb, Length::inches(10), Side::left).area().si(), expected, 1e-7);
}

// Round a closed outline: 10 x 8 ft walked counter-clockwise, 1 ft: outside 12 x 10 - 80, inside 80 - 8 x 6; no ends.
TEST(Band, OfAClosedPath) {
  const Path round = closed(drawing::rectangle(120, 96));
  const Region outside = made(round, Length::feet(1), Side::right);
  EXPECT_NEAR(outside.area().si(), 40 * square_foot, 1e-12);
  ASSERT_EQ(outside.polygons().size(), 1U);
  EXPECT_EQ(outside.polygons()[0].holes.size(), 1U);
  EXPECT_NEAR(made(round, Length::feet(1), Side::left).area().si(), 32 * square_foot, 1e-12);
  EXPECT_NEAR(made(round, Length::feet(6), Side::left).area().si(), 80 * square_foot, 1e-9);  // all of it
}

// The coping's strip along the made-up demo pool: Steiner, P d + pi d^2.
TEST(Band, AlongAPoolOfTangentArcs) {
  const Path pool = closed(drawing::waisted_pool());
  const double d = 10 * inch;
  EXPECT_NEAR(made(pool, Length::inches(10), Side::right).area().si(), pool.length().si() * d + pi * d * d, 1e-5);
}

// A U: legs 10 ft, bottom 2 ft, 3 ft wide on the inside: all of the inside, 20 sq ft, and not a bit twice.
TEST(Band, AHairpinCountsOnce) {
  const Path u = open({{at_inches(0, 120)}, {at_inches(0, 0)}, {at_inches(24, 0)}, {at_inches(24, 120)}});
  // Each leg's strip is 3 ft wide and reaches 1 ft past the other leg: 4 ft by 10 ft in all.
  EXPECT_NEAR(made(u, Length::feet(3), Side::left).area().si(), 40 * square_foot, 1e-6);
  // Half a foot: 10 + 10 + 2 less a quarter foot at each inside corner, x 0.5.
  EXPECT_NEAR(made(u, Length::inches(6), Side::left).area().si(), (22 * 0.5 - 2 * 0.25) * square_foot, 1e-9);
}

// A sharp inside corner of 45 degrees, legs 10 ft, 1 ft wide: the strips meet on the bisector; each leg loses half of
// 1 x 1/tan(22.5 deg): 20 - 1/tan(22.5 deg) = 17.586 sq ft.
TEST(Band, ASharpInsideCorner) {
  const Path vee =
      open({{at_inches(120, 0)}, {at_inches(0, 0)}, {at_inches(120 * std::sqrt(0.5), 120 * std::sqrt(0.5))}});
  EXPECT_NEAR(made(vee, Length::feet(1), Side::right).area().si(), (20 - 1 / std::tan(pi / 8)) * square_foot, 1e-5);
}

// Past the limit an outside corner is cut off at 5 widths: a needle of angle 2 a adds w^2 tan(90 - a) less the tip cut
// off, (1/sin a - 5)^2 tan a, w = 1.
TEST(Band, CutOffPastTheLimit) {
  const double a = 5 * pi / 180;
  const Path needle = open({{at_metres(-9 * std::cos(a), -9 * std::sin(a))},
                            {at_metres(0, 0)},
                            {at_metres(-9 * std::cos(a), 9 * std::sin(a))}});
  const double tip = 1 / std::sin(a) - 5;
  const double expected = 18 + 1 / std::tan(a) - tip * tip * std::tan(a);
  EXPECT_NEAR(made(needle, Length::nearest(units::Metres(1)), Side::right).area().si(), expected, 1e-4);
}

TEST(Band, RefusesNoWidth) {
  EXPECT_EQ(band(open({{at_inches(0, 0)}, {at_inches(9, 0)}}), Length(), Side::left).error().code, "band-width");
  EXPECT_EQ(band(open({{at_inches(0, 0)}, {at_inches(9, 0)}}), Length::inches(-1), Side::left).error().code,
            "band-width");
}

Path any_path(bool arcs) {
  const int count = *rc::gen::inRange(1, 7);
  double x = 0;
  double y = 0;
  double heading = 0;
  Ring edges;
  for (int i = 0; i < count; ++i) {
    const Point from = at_metres(x, y);
    heading += *rc::gen::inRange(-140, 140) * pi / 180;
    const double step = *rc::gen::inRange(300, 4000) / 1000.0;
    x += step * std::cos(heading);
    y += step * std::sin(heading);
    edges.push_back({from, arcs && *rc::gen::inRange(0, 2) == 0 ? *rc::gen::inRange(-400, 400) / 1000.0 : 0.0, {4, i}});
  }
  return *Path::make(edges, at_metres(x, y));
}

// Whether two edges that follow each other cross once more after their corner (seen on their chords): an edge that
// leaves a sharp corner on one side of the edge before and then bends over it. Which side of the path a place lies on
// is not told there.
bool folds_over(const Path& path, std::size_t i, std::size_t j) {
  const auto first = geometry::flatten(path.curve(i));
  const auto second = geometry::flatten(path.curve(j));
  for (std::size_t a = 0; a + 1 < first.size(); ++a) {
    for (std::size_t b = 0; b + 1 < second.size(); ++b) {
      if (first[a + 1] == second[b] || first[a] == second[b + 1]) continue;  // their corner
      const auto sides = [](Point from, Point to, Point p, Point q) {
        return geometry::cross(to - from, p - from) * geometry::cross(to - from, q - from);
      };
      if (sides(first[a], first[a + 1], second[b], second[b + 1]) <= 0 &&
          sides(second[b], second[b + 1], first[a], first[a + 1]) <= 0)
        return true;
    }
  }
  return false;
}

// Places within the width of an edge's inside on that side are in the band, unless another edge is nearer. No corner of
// the band is further from the path than the ends of a cut: half of it is at most a width, at the mitre limit.
TEST(Band, HoldsWhatIsBesideItsEdges) {
  EXPECT_TRUE(rc::check("places beside edges", [] {
    const Path path = any_path(true);
    const Length width = Length::millimetres(*rc::gen::inRange(50, 900));
    const Side side = *rc::gen::element(Side::left, Side::right);
    const auto strip = band(path, width, side);
    RC_ASSERT(strip.has_value());
    expect_valid(*strip);
    RC_ASSERT(!testing::Test::HasFailure());
    const double metres = width.metres().si();
    const double towards = side == Side::left ? 1 : -1;
    for (int k = 0; k < 60; ++k) {
      const auto i = *rc::gen::inRange<std::size_t>(0, path.size());
      const geometry::Curve curve = path.curve(i);
      const double share = *rc::gen::inRange(1, 100) / 100.0;
      const double out = *rc::gen::inRange(2, 99) / 100.0 * metres * Length::steps_per_metre * towards;
      const Point place = moved(curve.start, curve.at(share) + out * left_of(curve.direction(share)));
      // Its nearest place must be that of this edge's own inside, else another edge decides which side it is on.
      double least = 1e9;
      for (std::size_t j = 0; j < path.size(); ++j) {
        if (j != i) least = std::min(least, geometry::nearest(path.curve(j), place).distance);
      }
      const auto own = geometry::nearest(curve, place);
      const bool is_foot = std::abs(own.distance - std::abs(out) / Length::steps_per_metre) < 1e-5;
      const std::size_t count = path.size();
      const bool folded = folds_over(path, i, (i + 1) % count) || folds_over(path, (i + count - 1) % count, i);
      if (is_foot && !folded && own.distance < least - 0.002) RC_ASSERT(strip->contains(place));
    }
    for (const geometry::Outline* outline : strip->outlines()) {
      for (const geometry::Edge& edge : outline->edges()) {
        double least = 1e9;
        for (std::size_t j = 0; j < path.size(); ++j) {
          least = std::min(least, geometry::nearest(path.curve(j), edge.from).distance);
        }
        RC_ASSERT(least <= std::hypot(geometry::mitre_limit, 1) * metres + 1e-5);
      }
    }
  }));
}

TEST(Band, MovedByWholeStepsIsTheSame) {
  EXPECT_TRUE(rc::check("to the bit", [] {
    const Path path = any_path(true);
    const Vec by{double(*rc::gen::inRange(-500'000'000, 500'000'000)),
                 double(*rc::gen::inRange(-500'000'000, 500'000'000))};
    const Path there = *Path::make(moved(path.edges(), by), moved(path.end(), by));
    const Length width = Length::millimetres(*rc::gen::inRange(50, 900));
    const auto a = band(path, width, Side::left);
    const auto b = band(there, width, Side::left);
    RC_ASSERT(a.has_value() && b.has_value());
    const auto here = a->outlines();
    const auto gone = b->outlines();
    RC_ASSERT(here.size() == gone.size());
    for (std::size_t i = 0; i < here.size(); ++i) RC_ASSERT(moved(here[i]->edges(), by) == gone[i]->edges());
  }));
}

// 2 x 3 ft corner moved: outside both legs grow by the width, inside they shrink.
TEST(Parallel, Corners) {
  const Path corner = open({{at_inches(0, 0)}, {at_inches(120, 0)}, {at_inches(120, 96)}});
  const Path in = beside(corner, Length::inches(6));
  EXPECT_EQ(in.edges()[0].from, at_inches(0, 6));
  EXPECT_EQ(in.edges()[1].from, at_inches(114, 6));
  EXPECT_EQ(in.end(), at_inches(114, 96));
  const Path out = beside(corner, Length::inches(-6));
  EXPECT_EQ(out.edges()[1].from, at_inches(126, -6));
  EXPECT_EQ(out.edges()[1].origin, (Origin{1, 1}));
}

// Length of a line beside a smooth one: L - d x turn. The kerb turns right by a quarter: 540 + 60 pi/2 in; 4 in to its
// left + 4 pi/2, to its right - 4 pi/2.
TEST(Parallel, LengthChangesByTheTurn) {
  const Path kerb =
      open({{at_inches(480, 0)}, {at_inches(60, 0), 'r', at_inches(60, 60)}, {at_inches(0, 60)}, {at_inches(0, 180)}});
  const double length = (540 + 30 * pi) * inch;
  EXPECT_NEAR(kerb.length().si(), length, 1e-6);
  EXPECT_NEAR(beside(kerb, Length::inches(4)).length().si(), length + 2 * pi * inch, 1e-6);
  EXPECT_NEAR(beside(kerb, Length::inches(-4)).length().si(), length - 2 * pi * inch, 1e-6);
  EXPECT_EQ(beside(kerb, Length::inches(-4)).size(), 3U);
  // At 60 in the arc is used up, and at 70 in it is gone too: the lines meet at the corner (70, 70).
  const Path far = beside(kerb, Length::inches(-70));
  ASSERT_EQ(far.size(), 2U);
  EXPECT_EQ(far.edges()[1].from, at_inches(70, 70));
}

// A closed path stays closed: the pool's perimeter P + 2 pi d.
TEST(Parallel, ClosedPathsStayClosed) {
  const Path pool = closed(drawing::waisted_pool());
  for (const int d : {-20, -5, 4, 12}) {  // to the right is out
    const Path line = beside(pool, Length::inches(d));
    EXPECT_TRUE(line.closed());
    EXPECT_NEAR(line.length().si(), pool.length().si() - 2 * pi * d * inch, 2e-5) << d;
  }
}

// A short edge between two left turns vanishes when moved in: 10 ft square with one corner cut by 1 ft, moved in 3 ft:
// edges 4 ft apart in pairs again; the cut is gone where (its length) < 2 d tan(22.5 deg).
TEST(Parallel, EdgesThatVanishAreLeftOut) {
  const Path cut = closed(drawing::ring(
      {{at_inches(0, 0)}, {at_inches(120, 0)}, {at_inches(120, 108)}, {at_inches(108, 120)}, {at_inches(0, 120)}}));
  const Path line = beside(cut, Length::inches(36));
  ASSERT_EQ(line.size(), 4U);
  EXPECT_NEAR(line.length().si(), 16 * foot, 1e-9);
  const auto nothing = parallel(cut, Length::inches(61));
  ASSERT_FALSE(nothing.has_value());
  EXPECT_EQ(nothing.error().code, "parallel-nothing-left");
}

TEST(Parallel, ZeroIsThePathItself) {
  const Path corner = open({{at_inches(0, 0)}, {at_inches(120, 0)}, {at_inches(120, 96)}});
  EXPECT_EQ(beside(corner, Length()), corner);
}

}  // namespace
