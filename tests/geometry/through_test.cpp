#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <random>

#include "geometry/draw.h"
#include "geometry/surface.h"

namespace geometry {
inline void showValue(const Spot& s, std::ostream& out) {
  out << "{" << s.at.x.steps() << ", " << s.at.y.steps() << ", " << s.height << "}";
}
}  // namespace geometry

namespace {

using geometry::Facet;
using geometry::Point;
using geometry::Spot;
using geometry::Surface;
using geometry::through;
using geometry::Vec;

// On a coarse grid (many in one line, many on one circle) or anywhere within 20 m; each place once.
std::vector<Spot> spots(int least) {
  const bool coarse = *rc::gen::arbitrary<bool>();
  const int count = *rc::gen::inRange(least, 40);
  std::vector<Spot> all;
  for (int i = 0; i < count; ++i) {
    const auto at = [&] { return coarse ? *rc::gen::inRange(0, 8) * 2.5 : *rc::gen::inRange(0, 20000) / 1000.0; };
    const double x = at(), y = at();
    const Spot spot{draw::at(x, y), *rc::gen::inRange(-2000, 2000) / 1000.0};
    if (std::ranges::none_of(all, [&](const Spot& s) { return s.at == spot.at; })) all.push_back(spot);
  }
  return all;
}

double measured(const Surface& surface) {
  double sum = 0;
  for (const Facet& facet : surface.facets())
    if (!facet.guess) sum += geometry::area(facet.ring);
  return sum;
}

TEST(Through, OfThreeSpotsIsTheirPlaneAndLevelBeyond) {
  const std::vector<Spot> three{{draw::at(0, 0), 1}, {draw::at(10, 0), 2}, {draw::at(0, 10), 3}};
  const auto ground = through(three, 5);
  ASSERT_TRUE(ground.has_value());
  EXPECT_NEAR(*ground->height(draw::at(2, 3)), 1.8, 1e-12);   // 1 + 2 x 0.1 + 3 x 0.2
  EXPECT_NEAR(*ground->height(draw::at(4, -3)), 1.4, 1e-12);  // as on the edge at (4, 0)
  EXPECT_NEAR(*ground->height(draw::at(-2, -2)), 1, 1e-12);   // the corner's
  EXPECT_FALSE(ground->height(draw::at(30, 30)).has_value());
  EXPECT_FALSE(ground->facet(ground->place(draw::at(2, 3)))->guess);
  EXPECT_TRUE(ground->facet(ground->place(draw::at(4, -3)))->guess);
}

TEST(Through, OneSpotAndSpotsInALineGiveAGuess) {
  const auto one = through(std::vector<Spot>{{draw::at(5, 5), 7}}, 10);
  ASSERT_TRUE(one.has_value());
  for (const auto& [x, y] : {std::pair(14.9, 5.0), {5.0, -4.9}, {-1.9, -1.9}, {5.0, 5.0}})
    EXPECT_EQ(one->height(draw::at(x, y)), 7);
  const auto line = through(std::vector<Spot>{{draw::at(0, 0), 1}, {draw::at(4, 4), 2}, {draw::at(10, 10), 2}}, 10);
  ASSERT_TRUE(line.has_value());
  EXPECT_NEAR(*line->height(draw::at(4, 0)), 1.5, 1e-9);  // its foot on the line is (2, 2)
  EXPECT_NEAR(*line->height(draw::at(0, 4)), 1.5, 1e-9);
  EXPECT_NEAR(*line->height(draw::at(-3, -4)), 1, 1e-9);
  EXPECT_DOUBLE_EQ(measured(*line), 0);
  EXPECT_TRUE(through(std::vector<Spot>{}, 10)->empty());
}

TEST(Through, TwoHeightsAtOnePlaceAreAProblemThere) {
  std::vector<Spot> all{{draw::at(0, 0), 1}, {draw::at(3, 4), 2}, {draw::at(6, 0), 1}, {draw::at(3, 4), 2}};
  EXPECT_TRUE(through(all, 5).has_value());
  all.back().height = 2.5;
  const auto fault = through(all, 5);
  ASSERT_FALSE(fault.has_value());
  EXPECT_EQ(fault.error().code, "level-twice");
  EXPECT_EQ(fault.error().place.at, (problem::Xy{3, 4}));
}

// A spot 1 cm inside of a hull edge of 100 m: the flat triangle between them is ground too, and measured.
TEST(Through, LeavesNoGapAlongAnAlmostStraightEdge) {
  const std::vector<Spot> all{
      {draw::at(0, 0), 1}, {draw::at(100, 0), 1}, {draw::at(50, 0.01), 1}, {draw::at(50, 9), 2}};
  const auto ground = through(all, 5);
  ASSERT_TRUE(ground.has_value());
  EXPECT_NEAR(measured(*ground), 100 * 9 / 2.0, 1e-3);
  EXPECT_TRUE(ground->height(draw::at(30, 0.003)).has_value());
}

RC_GTEST_PROP(Through, TheOrderOfSpotsChangesNothing, ()) {
  std::vector<Spot> all = spots(1);
  const auto before = through(all, 30);
  std::mt19937 mix(*rc::gen::arbitrary<std::uint32_t>());
  std::shuffle(all.begin(), all.end(), mix);
  const auto after = through(all, 30);
  RC_ASSERT(before.has_value() && after.has_value());
  RC_ASSERT(*before == *after);
}

RC_GTEST_PROP(Through, MovedByWholeStepsIsTheSameBits, ()) {
  std::vector<Spot> all = spots(1);
  const auto before = through(all, 30);
  const auto by = units::Length::of_steps(*rc::gen::inRange<std::int64_t>(-300'000'000, 300'000'000));
  for (Spot& spot : all) spot.at = {spot.at.x + by, spot.at.y - by};
  const auto after = through(all, 30);
  RC_ASSERT(before.has_value() && after.has_value());
  RC_ASSERT(before->facets() == after->facets());
}

// Every spot has its own height, and a place anywhere near has one: no gap between triangles, strips and wedges. No
// spot lies inside of the circle about a triangle.
RC_GTEST_PROP(Through, CoversAllAndIsDelaunay, ()) {
  const std::vector<Spot> all = spots(3);
  const auto ground = through(all, 30);
  RC_ASSERT(ground.has_value());
  for (const Spot& spot : all) RC_ASSERT(std::abs(ground->height(spot.at).value() - spot.height) < 1e-6);
  for (int i = 0; i < 50; ++i) {
    const Point at = draw::at(*rc::gen::inRange(0, 20000) / 1000.0, *rc::gen::inRange(0, 20000) / 1000.0);
    RC_ASSERT(ground->height(at).has_value());
  }
  for (const Facet& facet : ground->facets()) {
    if (facet.guess) continue;
    const Vec a = facet.ring[0], b = facet.ring[1] - a, c = facet.ring[2] - a;
    const double twice = 2 * cross(b, c);
    RC_ASSERT(twice > 0);
    const Vec middle{(c.y * dot(b, b) - b.y * dot(c, c)) / twice, (b.x * dot(c, c) - c.x * dot(b, b)) / twice};
    const double radius = length(middle);
    for (const Spot& spot : all) RC_ASSERT(length(ground->place(spot.at) - a - middle) > radius - 1e-6 * (1 + radius));
  }
}

}  // namespace
