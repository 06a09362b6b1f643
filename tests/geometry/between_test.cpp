#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <numeric>

#include "geometry/draw.h"
#include "geometry/surface.h"

namespace {

using geometry::Between;
using geometry::between;
using geometry::Facet;
using geometry::Plane;
using geometry::Surface;
using geometry::Vec;

Surface of(std::vector<Facet> facets) { return {draw::at(0, 0), std::move(facets)}; }
Facet box(double x0, double y0, double x1, double y1, Plane plane) {
  return {{{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}}, plane};
}
Facet triangle(Vec a, double za, Vec b, double zb, Vec c, double zc) {
  return {{a, b, c}, geometry::plane_through(a, za, b, zb, c, zc)};
}

TEST(Between, ATrianglePrism) {  // area 6 m2, mean of 1.2, 1.8 and 3.0 is 2.0: 12 m3
  const Between found = between(of({triangle({0, 0}, 1.2, {4, 0}, 1.8, {0, 3}, 3.0)}), of({box(-1, -1, 9, 9, {})}));
  EXPECT_NEAR(found.above, 12, 1e-12);
  EXPECT_EQ(found.below, 0);
  EXPECT_NEAR(found.area_above, 6, 1e-12);
  EXPECT_NEAR(found.greatest, 3, 1e-12);
  EXPECT_NEAR(found.least, 1.2, 1e-12);
  EXPECT_NEAR(found.at_greatest.y, 3, 1e-12);
}

TEST(Between, SplitsWhereThePlanesCross) {  // x - 3 over 10 m x 2 m: 7 x 7 / 2 x 2 = 49 over, 3 x 3 / 2 x 2 = 9 under
  const Between found = between(of({box(0, 0, 10, 2, {-3, 1, 0})}), of({box(0, 0, 10, 2, {})}));
  EXPECT_NEAR(found.above, 49, 1e-12);
  EXPECT_NEAR(found.below, 9, 1e-12);
  EXPECT_NEAR(found.area_above, 14, 1e-12);
  EXPECT_NEAR(found.area_below, 6, 1e-12);
}

// Squares of 10 m with depths at their corners. The grid method takes the mean of four corners, which is the mean of
// the two ways to lay a diagonal: 100/4 x (10.0 + 2 x 11.1 + 4 x 3.1) = 1115.0 m3. Basak, Surveying and Levelling.
TEST(Between, TheGridMethodIsTheMeanOfBothDiagonals) {
  const double depth[3][3] = {{2.8, 3.2, 2.6}, {2.6, 3.1, 2.4}, {2.4, 2.9, 2.2}};
  std::vector<Facet> rising, falling;
  for (std::size_t r = 0; r < 2; ++r)
    for (std::size_t c = 0; c < 2; ++c) {
      const double x = 10.0 * static_cast<double>(c), y = 10.0 * static_cast<double>(r);
      const Vec p{x, y}, q{x + 10, y}, s{x + 10, y + 10}, t{x, y + 10};
      const double zp = depth[r][c], zq = depth[r][c + 1], zs = depth[r + 1][c + 1], zt = depth[r + 1][c];
      rising.push_back(triangle(p, zp, q, zq, s, zs));
      rising.push_back(triangle(p, zp, s, zs, t, zt));
      falling.push_back(triangle(p, zp, q, zq, t, zt));
      falling.push_back(triangle(q, zq, s, zs, t, zt));
    }
  const Surface formation = of({box(0, 0, 20, 20, {})});
  const double both = between(of(rising), formation).above + between(of(falling), formation).above;
  EXPECT_NEAR(both / 2, 1115.0, 1e-9);
}

// A cutting of bays between cross-sections: a bed `width` wide at height `bed`, sides running up `side` : 1 from its
// edges; along the bay everything runs straight.
void bay(std::vector<Facet>& into, double x, double length, double bed, double bed_next, double width, double side) {
  const double along = (bed_next - bed) / length, z = bed - along * x, half = width / 2, far = 60;
  into.push_back(box(x, -half, x + length, half, {z, along, 0}));
  into.push_back(box(x, half, x + length, far, {z - half / side, along, 1 / side}));
  into.push_back(box(x, -far, x + length, -half, {z - half / side, along, -1 / side}));
}

// Level sections, bed 10 m, sides 1.5 : 1, stations of 40 m. Average end areas give 5096.775 m3 (Basak, Surveying and
// Levelling); they are more than the body by side x L x dh2 / 6 a bay: 1.5 x 40 / 6 x (0.35^2 + 0.9^2 + 0.35^2 +
// 0.65^2 + 0.5^2 + 0.5^2 = 1.9775) = 19.775 m3.
TEST(Between, ACuttingWithLevelSections) {
  const double depth[] = {0.90, 1.25, 2.15, 2.50, 1.85, 1.35, 0.85};
  std::vector<Facet> dig;
  for (std::size_t i = 0; i < 6; ++i) bay(dig, 40.0 * static_cast<double>(i), 40, -depth[i], -depth[i + 1], 10, 1.5);
  EXPECT_NEAR(between(of({box(0, -50, 240, 50, {})}), of(dig)).above, 5096.775 - 19.775, 1e-8);
}

// Ground sloping across 1 in 6, centre depths 2.50, 3.55, 4.90 at 30 m, bed 9 m, sides 2 : 1. Section areas are
// 2.25 (h + 2.25)^2 - 10.125; average end areas 4150.07 m3 (Basak), more than the body by 2.25 x 30 / 6 x (1.05^2 +
// 1.35^2) = 32.906 m3.
TEST(Between, ACuttingAcrossASlope) {
  std::vector<Facet> dig, ground;
  const double level[] = {181.5, 181.8, 182.4}, bed[] = {179.00, 178.25, 177.50};
  for (std::size_t i = 0; i < 2; ++i) {
    const double x = 30.0 * static_cast<double>(i), rise = (level[i + 1] - level[i]) / 30;
    bay(dig, x, 30, bed[i], bed[i + 1], 9, 2);
    ground.push_back(box(x, -55, x + 30, 55, {level[i] - rise * x, rise, 1.0 / 6}));
  }
  EXPECT_NEAR(between(of(ground), of(dig)).above, 4150.07 - 32.906, 0.01);  // published to 0.01
}

// Two sections of 21.1375 and 25.9875 m2, 50 m apart, area growing evenly: 1178.125 m3 by average end areas (Basak).
TEST(Between, AverageEndAreasOfABodyWithUprightSides) {
  const double h1 = 21.1375 / 5, h2 = 25.9875 / 5;
  const Between found = between(of({box(0, 0, 50, 5, {h1, (h2 - h1) / 50, 0})}), of({box(0, 0, 50, 5, {})}));
  EXPECT_NEAR(found.above, 1178.125, 1e-9);
}

TEST(Between, NothingWhereNothingMeets) {
  const Surface one = of({box(0, 0, 1, 1, {1, 0, 0})}), beside = of({box(1, 0, 2, 1, {})});
  for (const Between& found : {between(one, beside), between(one, Surface()), between(Surface(), one)}) {
    EXPECT_EQ(found.above, 0);
    EXPECT_EQ(found.below, 0);
    EXPECT_EQ(found.area_above + found.area_below, 0);
    EXPECT_EQ(found.greatest, 0);
  }
}

Surface random_ground() {
  std::vector<geometry::Spot> spots;
  const int count = *rc::gen::inRange(1, 30);
  for (int i = 0; i < count; ++i)
    spots.push_back({draw::at(*rc::gen::inRange(-8000, 8000) / 1000.0, *rc::gen::inRange(-8000, 8000) / 1000.0),
                     *rc::gen::inRange(-1000, 1000) / 1000.0});
  auto made = geometry::through(spots, 30);
  RC_PRE(made.has_value());
  return *made;
}

Surface random_area(geometry::Point origin) {
  const auto region = geometry::region(*draw::star_ring(false, 1));
  RC_PRE(region.has_value());
  auto made = geometry::pieces(*region, origin);
  RC_PRE(made.has_value());
  return *made;
}

// Sum over facets of the height at the middle x the area.
double volume(const Surface& surface) {
  double sum = 0;
  for (const Facet& facet : surface.facets())
    for (std::size_t i = 1; i + 1 < facet.ring.size(); ++i) {
      const Vec a = facet.ring[0], b = facet.ring[i], c = facet.ring[i + 1];
      sum += cross(b - a, c - a) / 2 * facet.plane.at((1.0 / 3) * (a + b + c));
    }
  return sum;
}

RC_GTEST_PROP(Between, AboveLessBelowIsTheDifferenceOfVolumes, ()) {
  const Surface area = random_area(draw::at(2, 1));
  const Surface upper = over(random_ground(), area), lower = over(random_ground(), area);
  RC_ASSERT(std::abs(upper.area() - area.area()) < 1e-6);
  const Between found = between(upper, lower), back = between(lower, upper);
  RC_ASSERT(std::abs(found.above - found.below - (volume(upper) - volume(lower))) < 1e-6);
  RC_ASSERT(std::abs(found.above - back.below) < 1e-9 && std::abs(found.below - back.above) < 1e-9);
  RC_ASSERT(std::abs(found.area_above - back.area_below) < 1e-6);
  RC_ASSERT(std::abs(found.greatest + back.least) < 1e-9 && std::abs(found.least + back.greatest) < 1e-9);
}

RC_GTEST_PROP(Between, IdenticalSurfacesHoldNothing, ()) {
  const Surface ground = random_ground();
  const Between found = between(ground, ground);
  RC_ASSERT(found.above < 1e-9 && found.below < 1e-9);
}

// The buckets and the choice of side against a plain loop over all pairs: one facet under one facet at a time.
RC_GTEST_PROP(Between, AgreesWithALoopOverAllPairs, ()) {
  const Surface ground = random_ground(), area = random_area(ground.origin());
  double above = 0, below = 0, plan = 0;
  for (const Facet& up : ground.facets())
    for (const Facet& low : area.facets()) {
      const Between pair = between(Surface(ground.origin(), {up}), Surface(ground.origin(), {low}));
      above += pair.above, below += pair.below, plan += pair.area_above + pair.area_below;
    }
  for (const bool swapped : {false, true}) {
    const Between found = swapped ? between(area, ground) : between(ground, area);
    RC_ASSERT(std::abs((swapped ? found.below : found.above) - above) < 1e-9);
    RC_ASSERT(std::abs((swapped ? found.above : found.below) - below) < 1e-9);
    RC_ASSERT(std::abs(found.area_above + found.area_below - plan) < 1e-6);
  }
}

RC_GTEST_PROP(Between, AreasSplitInTwoHoldTheSame, ()) {
  const Surface ground = random_ground();
  const double split = *rc::gen::inRange(-3900, 3900) / 1000.0;
  const Plane level{*rc::gen::inRange(-500, 500) / 1000.0, 0.02, -0.01};
  const Between whole = between(ground, of({box(-4, -4, 4, 4, level)}));
  const Between halves = between(ground, of({box(-4, -4, split, 4, level), box(split, -4, 4, 4, level)}));
  RC_ASSERT(std::abs(whole.above - halves.above) < 1e-8 && std::abs(whole.below - halves.below) < 1e-8);
}

// Clipping pair by pair against a fine grid of columns under the surfaces' own heights.
RC_GTEST_PROP(Between, AgreesWithAFineGrid, ()) {
  const Surface ground = random_ground(), other = random_ground();
  const Surface patch = of({box(-5, -5, 5, 5, {})});
  const Between found = between(over(ground, patch), other);
  const int n = 200;
  double above = 0, below = 0, steepest = 0;
  for (const Surface* s : {&ground, &other}) {
    double most = 0;
    for (const Facet& f : s->facets()) most = std::max(most, f.plane.fall());
    steepest += most;
  }
  RC_PRE(steepest < 10);
  for (int i = 0; i < n; ++i)
    for (int j = 0; j < n; ++j) {
      const geometry::Point at = draw::at(-5 + (i + 0.5) * 10 / n, -5 + (j + 0.5) * 10 / n);
      const double h = ground.height(at).value() - other.height(at).value();
      (h > 0 ? above : below) += std::abs(h) * 100 / n / n;
    }
  // No column is off by more than its half diagonal x the fall; 1e-8 is the rounding of 40,000 doubles added up.
  const double error = 100 * steepest * 10 / n * 0.71 + 1e-8;
  RC_ASSERT(std::abs(found.above - above) < error && std::abs(found.below - below) < error);
}

}  // namespace
