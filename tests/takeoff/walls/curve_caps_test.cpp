// Caps on one curve or one straight run, and glue by the bead: plain functions.
#include <rapidcheck.h>

#include "takeoff/walls/caps.h"
#include "takeoff/walls/glue.h"
#include "takeoff/walls/kit.h"

namespace {

using namespace kit;  // NOLINT: the words of these tests
using takeoff::walls::cap_row;
using takeoff::walls::CapRow;
using takeoff::walls::curve_caps;

constexpr double degree = pi / 180;

// Constructed: 12 in at 6 ft turns 9.56 degrees, 4.78 a side; 18 in at 10 ft 8.60, 4.30. A turn of
// just n times that takes n caps, and so does one longer by 1/50 in at the edge, which joints take up; 1/20 in takes
// one more.
TEST(CapPieces, StraightCapsOnCurves) {
  const struct {
    double cap, radius, turn, side;
  } rows[] = {{12, 72, 9.56, 4.78}, {18, 120, 8.60, 4.30}};
  for (const auto& row : rows) {
    const double each = 2 * std::asin(row.cap / (2 * row.radius));
    EXPECT_NEAR(each / degree, row.turn, 0.005);
    const auto ten = curve_caps(10 * each, row.radius * in, row.cap * in, row.cap * in, 13 * in, 0, false);
    ASSERT_TRUE(ten);
    EXPECT_EQ(ten->caps, 10);
    EXPECT_EQ(ten->cut, 10);
    EXPECT_NEAR(ten->angle / degree, row.side, 0.005);
    const auto longer = [&](double edge) {
      const double turn = 10 * each + edge / row.radius;
      return curve_caps(turn, row.radius * in, row.cap * in, row.cap * in, 13 * in, 0, false)->caps;
    };
    EXPECT_EQ(longer(0.02), 10);
    EXPECT_EQ(longer(0.05), 11);
  }
  // Half a cap at the shorter edge: 13 in deep turns 26 in at the longer edge and no less.
  EXPECT_TRUE(curve_caps(1, 26.1 * in, 12 * in, 12 * in, 13 * in, 0, false));
  EXPECT_FALSE(curve_caps(1, 25.9 * in, 12 * in, 12 * in, 13 * in, 0, false));
  EXPECT_FALSE(curve_caps(1, 10 * in, 12 * in, 12 * in, 13 * in, 0, false));
}

// 12 / 8 in, 12 in deep: 2 atan(4 / 24) = 18.92 degrees each; all one way they turn 36 in at the wide edge.
TEST(CapPieces, TaperedCapsOnCurves) {
  const double q = 2 * std::atan(4.0 / 24);
  EXPECT_NEAR(q / degree, 18.92, 0.005);
  // A quarter at 72 in: middle arc 66 pi / 2 / 10 = 10.37 caps, difference 90 / 18.92 = 4.76; ten as 7 + 3 turn
  // 4 x 18.92 = 75.7 degrees, the other 14.3 and 0.4 of a cap by cuts.
  const auto quarter = curve_caps(pi / 2, 72 * in, 12 * in, 8 * in, 12 * in, 0, true);
  ASSERT_TRUE(quarter);
  EXPECT_NEAR(66 * pi / 2 / 10, 10.4, 0.05);
  EXPECT_NEAR(pi / 2 / q, 4.76, 0.005);
  EXPECT_EQ(quarter->wide_out, 7);
  EXPECT_EQ(quarter->narrow_out, 3);
  EXPECT_NEAR((pi / 2 - quarter->rest_turn) / degree, 75.7, 0.05);
  EXPECT_NEAR(quarter->rest_turn / degree, 14.3, 0.05);
  EXPECT_NEAR(quarter->rest_caps, 0.37, 0.005);
  EXPECT_EQ(quarter->caps, 11);
  EXPECT_EQ(quarter->cut, 2);
  // All one way at their own radius (by the chord of the wide edge, 6 / sin(q / 2) = 36.5 in): no cut.
  const double own = 36 * in;
  const double arc_caps = 3;
  const auto uncut = curve_caps(arc_caps * q, own + 0.5 * in, 12 * in, 8 * in, 12 * in, 0.125 * in, true);
  ASSERT_TRUE(uncut);
  EXPECT_EQ(uncut->caps, 3);
  EXPECT_EQ(uncut->wide_out, 3);
  EXPECT_EQ(uncut->cut, 0);
  // Tighter than that every cap is cut.
  const auto tight = curve_caps(pi / 2, 30 * in, 12 * in, 8 * in, 12 * in, 0, true);
  ASSERT_TRUE(tight);
  EXPECT_EQ(tight->cut, tight->caps);
  EXPECT_GT(tight->angle, 0);
}

TEST(CapPieces, TaperedMixTurnsAsWanted) {
  EXPECT_TRUE(rc::check("mix and rest make up turn and length; no other mix of as many is nearer", [] {
    const double radius = *rc::gen::inRange(40, 400);
    const double turn = *rc::gen::inRange(20, 180) * degree;
    const auto made = curve_caps(turn, radius, 12, 8, 12, 0, true);
    RC_PRE(made.has_value() && made->wide_out > 0 && made->cut == 2);
    const double q = 2 * std::atan(4.0 / 24);
    const int whole = made->wide_out + made->narrow_out;
    const int difference = made->wide_out - made->narrow_out;
    RC_ASSERT(std::abs(difference * q + made->rest_turn - turn) < 1e-9);
    RC_ASSERT(std::abs((whole + made->rest_caps) * 10 - turn * (radius - 6)) < 1e-9);
    for (int wide = 0; wide <= whole; ++wide)
      RC_ASSERT(std::abs(turn - (2 * wide - whole) * q) >= std::abs(made->rest_turn) - 1e-9);
    RC_ASSERT(made->caps >= turn * (radius - 6) / 10 - 1e-9);
  }));
}

// 12 to 10 in, 14 in deep, round the demo's seat wall (85 in behind, 71 in front): 2 atan(2 / 28) = 8.171 degrees each,
// eleven turn 89.9; middle arc 78 pi / 2 = 122.5 in is eleven of 11 in and 1.5 in over, 0.138 in a joint.
TEST(CapPieces, TaperedCapsThatNearlyFit) {
  const auto tight = curve_caps(pi / 2, 85 * in, 12 * in, 10 * in, 14 * in, 0.125 * in, true);
  ASSERT_TRUE(tight);
  EXPECT_EQ(tight->wide_out, 11);
  EXPECT_EQ(tight->caps, 12);
  EXPECT_EQ(tight->cut, 2);
  const auto open = curve_caps(pi / 2, 85 * in, 12 * in, 10 * in, 14 * in, 0.15 * in, true);
  ASSERT_TRUE(open);
  EXPECT_EQ(open->caps, 11);
  EXPECT_EQ(open->cut, 0);
}

// Every place of the closers tried one by one, as the product does not.
int fewest_near(double length, double cap, const std::vector<double>& below, double apart) {
  const int caps = static_cast<int>(std::ceil(length / cap - 1e-9));
  const double both = length - (caps - 2) * cap;
  int best = caps;
  for (int before = 1; before <= caps - 3; ++before) {
    for (int twelfths = -3; twelfths <= 3; ++twelfths) {
      const double first = both / 2 + twelfths * cap / 12;
      if (std::min(first, both - first) < cap / 2 - 1e-9 || std::max(first, both - first) > cap + 1e-9) continue;
      int near = 0;
      double at = 0;
      for (int i = 0; i < caps - 1; ++i) {
        at += i == before ? first : i == before + 1 ? both - first : cap;
        near += std::ranges::any_of(below, [&](double joint) { return std::abs(joint - at) < apart - 1e-7; }) ? 1 : 0;
      }
      best = std::min(best, near);
    }
  }
  return best;
}

TEST(CapPieces, ClosersLieWhereTheFewestJointsAreNear) {
  EXPECT_TRUE(rc::check("no place of the closers has fewer joints near those below", [] {
    const double length = *rc::gen::inRange(75, 500) + 0.3;
    const double start = *rc::gen::inRange(1, 18) + 0.1;
    std::vector<double> below;
    for (double joint = start; joint < length; joint += 18) below.push_back(joint);
    RC_PRE(std::ceil(length / 18) * 18 - length > 0.01);
    RC_ASSERT(cap_row(length, 18, below, 4.5).near == fewest_near(length, 18, below, 4.5));
  }));
}

TEST(CapPieces, WholeCapsAtBothEndsAndTwoClosers) {
  EXPECT_EQ(cap_row(54, 18, {}, 4.5).caps, 3);
  EXPECT_EQ(cap_row(54, 18, {}, 4.5).cut(), 0);
  const CapRow row = cap_row(114, 18, {}, 4.5);  // 6.33 caps
  EXPECT_EQ(row.caps, 7);
  EXPECT_EQ(row.before, 2);
  EXPECT_NEAR(row.first_closer, 12, 1e-9);  // 114 - 5 x 18 = 24 in two
  EXPECT_NEAR(row.second_closer, 12, 1e-9);
  EXPECT_EQ(cap_row(10, 18, {}, 4.5).cut(), 1);
  EXPECT_TRUE(rc::check("closers are half a cap or more and fill the run; fewest caps", [] {
    const double length = *rc::gen::inRange(19, 2000);
    const CapRow made = cap_row(length, 18, {}, 4.5);
    RC_ASSERT(made.caps == static_cast<int>(std::ceil(length / 18)));
    if (made.cut() == 0) return;
    RC_ASSERT(made.first_closer >= 9 - 1e-9);
    RC_ASSERT(made.second_closer >= 9 - 1e-9);
    RC_ASSERT(std::abs((made.caps - 2) * 18 + made.first_closer + made.second_closer - length) < 1e-9);
  }));
}

// Joints of 18 in units that begin with a half lie 9 in off the caps': nothing is near. In step with them all but the
// shifted ones are.
TEST(CapPieces, JointsKeepOffThoseBelow) {
  std::vector<double> off, step;
  for (double joint = 9; joint < 180; joint += 18) off.push_back(joint);
  for (double joint = 18; joint < 180; joint += 18) step.push_back(joint);
  EXPECT_EQ(cap_row(180, 18, off, 4.5).near, 0);
  EXPECT_EQ(cap_row(180, 18, step, 4.5).near, 9);
  // 171 in: whole caps from both ends with 27 in of closers; the joints after them stand half a cap off.
  const CapRow row = cap_row(171, 18, step, 4.5);
  EXPECT_EQ(row.caps, 10);
  EXPECT_EQ(row.before, 1);  // as few in step as can be, a whole cap at the end
  EXPECT_EQ(row.near, 1);
}

// Derived from the volume of a bead: 10.1 oz at 1/4 in 30.9 ft, at 3/8 in 13.75; 28 oz 85.8 and 38.1.
TEST(CapPieces, BeadsOfATube) {
  using takeoff::walls::bead_length;
  const double ounce = units::cubic_metres_per_fluid_ounce;
  EXPECT_NEAR(bead_length(10.1 * ounce, 0.25 * in) / ft, 30.9, 0.05);
  EXPECT_NEAR(bead_length(10.1 * ounce, 0.375 * in) / ft, 13.75, 0.005);
  EXPECT_NEAR(bead_length(28 * ounce, 0.25 * in) / ft, 85.8, 0.05);
  EXPECT_NEAR(bead_length(28 * ounce, 0.375 * in) / ft, 38.1, 0.05);
}

}  // namespace
