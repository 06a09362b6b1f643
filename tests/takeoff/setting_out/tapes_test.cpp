#include "takeoff/setting_out/tapes.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "geometry/edge.h"

using takeoff::setting_out::area_by_offsets;
using takeoff::setting_out::crossing_degrees;
using takeoff::setting_out::station;
using takeoff::setting_out::two_tapes;
using takeoff::setting_out::Xy;

// A worked example of two circles that a university course published: (-0.1, -0.2) of radius 2.0 and (2, 1) of radius
// 2.1 meet at (1.696964, -1.078021) and (0.055856, 1.793918); tolerance 1e-6.
TEST(TwoTapes, publishedCircles) {
  const auto found = two_tapes({-0.1, -0.2}, 2.0, {2, 1}, 2.1);
  ASSERT_TRUE(found);
  EXPECT_NEAR((*found)[0].x, 0.055856, 1e-6);  // left of the line from the first centre to the second
  EXPECT_NEAR((*found)[0].y, 1.793918, 1e-6);
  EXPECT_NEAR((*found)[1].x, 1.696964, 1e-6);
  EXPECT_NEAR((*found)[1].y, -1.078021, 1e-6);
}

// 15, 20, 25 is a right triangle: over half of 30. 12, 16, 20 is one too; its other tie is sqrt(28 x 28 + 16 x 16).
TEST(TwoTapes, rightTriangles) {
  const auto even = two_tapes({0, 0}, 25, {30, 0}, 25);
  ASSERT_TRUE(even);
  EXPECT_NEAR((*even)[0].x, 15, 1e-12);
  EXPECT_NEAR((*even)[0].y, 20, 1e-12);
  EXPECT_NEAR((*even)[1].y, -20, 1e-12);
  const auto uneven = two_tapes({0, 0}, 20, {40, 0}, std::sqrt(1040.0));
  ASSERT_TRUE(uneven);
  EXPECT_NEAR((*uneven)[0].x, 12, 1e-12);
  EXPECT_NEAR((*uneven)[0].y, 16, 1e-12);
  EXPECT_NEAR((*uneven)[1].y, -16, 1e-12);
}

TEST(TwoTapes, whatCannotMeetIsNothing) {
  EXPECT_FALSE(two_tapes({0, 0}, 10, {30, 0}, 19.99));
  EXPECT_FALSE(two_tapes({0, 0}, 40, {30, 0}, 9.99));
  EXPECT_FALSE(two_tapes({0, 0}, 9.99, {30, 0}, 40));
  EXPECT_FALSE(two_tapes({5, 5}, 1, {5, 5}, 1));
  EXPECT_FALSE(two_tapes({0, 0}, -25, {30, 0}, 25));
  EXPECT_FALSE(two_tapes({0, 0}, std::nan(""), {30, 0}, 25));
  const auto touching = two_tapes({0, 0}, 10, {30, 0}, 20);
  ASSERT_TRUE(touching);
  EXPECT_NEAR((*touching)[0].x, 10, 1e-9);
  EXPECT_NEAR((*touching)[0].y, (*touching)[1].y, 1e-5);
}

// Both tapes 45 degrees off the base line meet square; tan(10 degrees) out at the middle of 2 they cross at 20 degrees.
TEST(TwoTapes, crossingAngle) {
  EXPECT_NEAR(crossing_degrees({0, 0}, {2, 0}, {1, 1}), 90, 1e-9);
  EXPECT_NEAR(crossing_degrees({0, 0}, {2, 0}, {1, std::tan(std::acos(-1.0) / 18)}), 20, 1e-9);
  EXPECT_NEAR(crossing_degrees({0, 0}, {2, 0}, {5, 0}), 0, 1e-9);
}

// Offsets from Basak, Surveying and Levelling. Seven at 10 m: 10 x (2.5 + 3.5 + 5.0 + 4.6 + 3.2) = 188.0 m2;
// 10/3 x (4 x (2.5 + 5.0 + 3.2) + 2 x (3.5 + 4.6)) = 10/3 x 59.0 = 196.667 m2.
TEST(AreaByOffsets, sevenOffsets) {
  const double offsets[] = {0, 2.5, 3.5, 5.0, 4.6, 3.2, 0};
  EXPECT_NEAR(area_by_offsets(10, offsets).trapezoid, 188.0, 1e-9);
  EXPECT_NEAR(area_by_offsets(10, offsets).simpson, 590.0 / 3, 1e-9);
}

// Ten at 15 m: by trapezia 820.125 m2; Simpson over the first nine 756.0 m2, the strip left over 57.375 m2.
TEST(AreaByOffsets, tenOffsetsLeaveAStrip) {
  const double offsets[] = {3.5, 4.3, 6.75, 5.25, 7.5, 8.8, 7.9, 6.4, 4.4, 3.25};
  EXPECT_NEAR(area_by_offsets(15, offsets).trapezoid, 820.125, 1e-9);
  EXPECT_NEAR(area_by_offsets(15, offsets).simpson, 756.0 + 57.375, 1e-9);
}

TEST(AreaByOffsets, fewerThanTwoHaveNone) {
  EXPECT_EQ(area_by_offsets(10, {}).trapezoid, 0);
  const double one[] = {4};
  EXPECT_EQ(area_by_offsets(10, one).simpson, 0);
  const double two[] = {4, 6};
  EXPECT_EQ(area_by_offsets(10, two).simpson, 50);
}

// The field of the same book in six pieces off its chain line: 420 + 2250 + 1305 + 600 + 2000 + 400 = 6975 m2. Pieces
// of those areas, triangles at the ends and trapezia between; offsets of one piece are its two ends.
TEST(AreaByOffsets, sixPiecesOffAChainLine) {
  struct Piece {
    double along, first, second, area;
  };
  const Piece pieces[] = {{28, 0, 30, 420}, {50, 30, 60, 2250}, {43.5, 60, 0, 1305},
                          {30, 0, 40, 600}, {50, 40, 40, 2000}, {20, 40, 0, 400}};
  double sum = 0;
  for (const Piece& piece : pieces) {
    const double ends[] = {piece.first, piece.second};
    EXPECT_NEAR(area_by_offsets(piece.along, ends).trapezoid, piece.area, 1e-9);
    sum += area_by_offsets(piece.along, ends).trapezoid;
  }
  EXPECT_NEAR(sum, 6975, 1e-9);
}

// Area by coordinates of an open text on traverses (north, east in feet): A 500, 2000; B 323.614, 1561.426; C 526.996,
// 1488.321; D 719.336, 1686.956: cross sums 3,590,045.6 and 3,384,174.1, half of their difference 102,935.7 sq ft.
TEST(AreaByCoordinates, publishedTraverse) {
  const std::pair<double, double> corners[] = {
      {500, 2000}, {323.614, 1561.426}, {526.996, 1488.321}, {719.336, 1686.956}};
  geometry::Ring ring;
  const auto feet = [](double value) { return units::Length::nearest(units::Metres(value * units::metres_per_foot)); };
  for (const auto& [north, east] : corners) ring.push_back({{feet(east), feet(north)}, 0, {}});
  const double square_feet = std::abs(geometry::signed_area(ring).si()) / units::square_metres_per_square_foot;
  EXPECT_NEAR(square_feet, 102935.7, 0.1);
  EXPECT_NEAR(square_feet / 43560, 2.3631, 0.00005);  // acres
}

namespace {

double drawn(int reach) { return *rc::gen::inRange(-reach * 1000, reach * 1000 + 1) / 1000.0; }

}  // namespace

RC_GTEST_PROP(TapesProperties, aPlaceIsFoundAgainFromItsTies, ()) {
  const Xy a{drawn(50), drawn(50)}, b{drawn(50), drawn(50)}, at{drawn(50), drawn(50)};
  RC_PRE(std::hypot(b.x - a.x, b.y - a.y) > 1);
  const double out = station(a, b, at).out;
  RC_PRE(std::abs(out) > 0.0005);
  const auto found = two_tapes(a, std::hypot(at.x - a.x, at.y - a.y), b, std::hypot(at.x - b.x, at.y - b.y));
  RC_ASSERT(found.has_value());
  const Xy same = (*found)[out > 0 ? 0 : 1], other = (*found)[out > 0 ? 1 : 0];
  RC_ASSERT(std::hypot(same.x - at.x, same.y - at.y) < 1e-6);
  RC_ASSERT(std::abs(std::hypot(other.x - at.x, other.y - at.y) - 2 * std::abs(out)) < 1e-6);  // the mirrored place
}

RC_GTEST_PROP(TapesProperties, stationsLeadBackToThePlace, ()) {
  const Xy a{drawn(500), drawn(500)}, b{drawn(500), drawn(500)}, at{drawn(500), drawn(500)};
  const double apart = std::hypot(b.x - a.x, b.y - a.y);
  RC_PRE(apart > 1);
  const auto found = station(a, b, at);
  const double ux = (b.x - a.x) / apart, uy = (b.y - a.y) / apart;
  RC_ASSERT(std::abs(a.x + found.along * ux - found.out * uy - at.x) < 1e-9);
  RC_ASSERT(std::abs(a.y + found.along * uy + found.out * ux - at.y) < 1e-9);
}

// A parabola through any heights: Simpson is exact, the trapezia off by second difference x d3 / 12 a strip.
RC_GTEST_PROP(TapesProperties, simpsonIsExactOfAParabola, ()) {
  const double p = drawn(5), q = drawn(5), r = drawn(5), d = 0.5;
  const int strips = 2 * *rc::gen::inRange(1, 8);
  std::vector<double> offsets;
  for (int i = 0; i <= strips; ++i) offsets.push_back(p + q * i * d + r * i * d * i * d);
  const double end = strips * d;
  const double exact = p * end + q * end * end / 2 + r * end * end * end / 3;
  RC_ASSERT(std::abs(area_by_offsets(d, offsets).simpson - exact) < 1e-9);
  RC_ASSERT(std::abs(area_by_offsets(d, offsets).trapezoid - exact - strips * r * d * d * d / 6) < 1e-9);
}
