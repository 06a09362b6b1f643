// The worked example of the demo job: there every unit of its fields was clipped one by one, slowly; the arcs of the
// fields are exact here.
#include <set>
#include <tuple>

#include "laying.h"

using namespace laying;

namespace {

constexpr takeoff::paving::Slivers thirds{1.0 / 3, 0};

// An arc about (cx, cy), inches, from one point to the next.
Edge arc(Point from, Point to, double cx, double cy, bool left) {
  const Vec centre = inches(cx, cy) - from;
  return {from, geometry::bulge_about(centre, to - from, left), {2, 0}};
}
Edge line(Point from) { return {from, 0, {1, 0}}; }

// The pool of four arcs moved out by d: the arcs meet in the directions (0, -1), (-3/5, 4/5), (3/5, 4/5), (-3/5, -4/5),
// so each corner moves by d along its own.
Ring pool(double d) {
  const Point a = inches(318, 72 - d);
  const Point b = inches(270 - 0.6 * d, 216 + 0.8 * d);
  const Point c = inches(156 + 0.6 * d, 216 + 0.8 * d);
  const Point e = inches(102 - 0.6 * d, 144 - 0.8 * d);
  return {arc(a, b, 318, 152, true), arc(b, c, 213, 292, false), arc(c, e, 129, 180, true), arc(e, a, 318, 432, true)};
}

// 8 in inside the outline of A1, whose south-west corner is round by 60 in.
Region field_a1() {
  const Ring outer{arc(inches(8, 60), inches(60, 8), 60, 60, true), line(inches(60, 8)), line(inches(472, 8)),
                   line(inches(472, 299)), line(inches(8, 299))};
  return region({outer, pool(11), box(420, 98, 444, 122), box(420, 182, 444, 206)});
}

// The round end of A2 has radius 72; moved in by 8 it meets the line y = 320 at 72 - sqrt(64^2 - 8^2).
Region field_a2() {
  const Point corner = inches(72 - std::sqrt(64.0 * 64 - 8 * 8), 320);
  return region(
      {{line(corner), line(inches(472, 320)), line(inches(472, 376)), arc(inches(72, 376), corner, 72, 312, true)}});
}

// The walk: `half` of its width either side of a centre line from (0, 204) west, round (-120, 108), south to y = -24.
Region walk(double half) {
  const double out = 96 + half, in = 96 - half;
  return region(
      {{line(inches(0, 204 - half)), line(inches(0, 204 + half)),
        arc(inches(-120, 204 + half), inches(-120 - out, 108), -120, 108, true), line(inches(-120 - out, 108)),
        line(inches(-120 - out, -24)), line(inches(-120 - in, -24)),
        arc(inches(-120 - in, 108), inches(-120, 204 - half), -120, 108, false), line(inches(-120, 204 - half))}});
}

// Chords within 0.05 mm of 23.3 m of arcs (pool ring and round corner): 2/3 of that times the length, m2.
constexpr double chords_off = 8e-4;

void expect_counts(const Layout& layout, const std::string& item, int whole, int cut, int slivers) {
  EXPECT_EQ(count_of(layout, item, false), whole) << item;
  EXPECT_EQ(count_of(layout, item, true), cut) << item;
  EXPECT_EQ(count_of(layout, item, true, true), slivers) << item;
}

double square_metres(double steps) { return steps / metre / metre; }

}  // namespace

TEST(DemoFields, PoolDeckInThreeSizes) {
  const Layout a1 = lay(field_a1(), lattice_of("mixed-three", inches(34, 8)), thirds);
  expect_counts(a1, "unit-6x6-60", 378, 58, 14);
  expect_counts(a1, "unit-6x9-60", 489, 101, 44);
  expect_counts(a1, "unit-9x9-60", 481, 126, 52);
  // Inset by Steiner's formula, less pool ring and two pillars. The ring's corners are put on the grid: half a step
  // (1.6e-6 m) along 22 m is 3.5e-5 m2.
  EXPECT_NEAR(field_a1().area().si(), 56.5469801, 3.5e-5);
  EXPECT_NEAR(square_metres(a1.region_area), 56.5469801, chords_off);
  EXPECT_NEAR(square_metres(a1.unit_area), 54.7264776, chords_off);
  EXPECT_NEAR(100 * a1.lattice.joint_share, 3.21421682, 1e-8);  // endless field: 1 - sum L W / sum (L+j)(W+j)
}

TEST(DemoFields, StripAlongTheHouseInThreeSizes) {
  const Layout a2 = lay(field_a2(), lattice_of("mixed-three", inches(10, 320)), thirds);
  expect_counts(a2, "unit-6x6-60", 108, 19, 1);
  expect_counts(a2, "unit-6x9-60", 140, 34, 25);
  expect_counts(a2, "unit-9x9-60", 130, 48, 18);
  EXPECT_NEAR(square_metres(a2.unit_area), 15.6763282, chords_off);
}

TEST(DemoFields, HerringboneVersion) {
  const Layout a1 = lay(field_a1(), lattice_of("herringbone-45", inches(245.25, 8)), thirds);
  // 565 units are cut, two of them into two pieces each, all four under a third.
  expect_counts(a1, "unit-4x8-60", 2435, 565 + 2, 227 + 2);
  std::set<std::tuple<int, int, int>> cut_units;
  for (const auto& piece : a1.pieces) cut_units.insert({piece.kind, piece.a, piece.b});
  EXPECT_EQ(cut_units.size(), 565u);
  EXPECT_NEAR(square_metres(a1.unit_area), 53.9240995, chords_off);
  EXPECT_NEAR(100 * a1.lattice.joint_share, 4.63867187, 1e-8);
  const Layout a2 = lay(field_a2(), lattice_of("herringbone-45", inches(245, 320)), thirds);
  expect_counts(a2, "unit-4x8-60", 668, 218, 85);
  EXPECT_NEAR(square_metres(a2.unit_area), 15.4453513, chords_off);
}

TEST(DemoFields, WalkOfFourAndOfFiveFeet) {
  expect_counts(lay(walk(24), lattice_of("running-half", inches(7.5, 180)), thirds), "unit-6x9-60", 312, 88, 31);
  expect_counts(lay(walk(30), lattice_of("running-half", inches(7.75, 174)), thirds), "unit-6x9-60", 392, 104, 31);
}
