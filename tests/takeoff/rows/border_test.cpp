#include "takeoff/paving/border.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace {

using namespace takeoff::paving;
using geometry::Edge;
using geometry::Path;
using geometry::Point;
using units::Length;

constexpr double inch = 0.0254;
constexpr double pi = std::numbers::pi;

Point at(std::int64_t x, std::int64_t y) { return {Length::inches(x), Length::inches(y)}; }

Path closed(geometry::Ring ring) {
  const Point end = ring.front().from;
  return Path::make(std::move(ring), end).value();
}

Path rectangle(std::int64_t w, std::int64_t h) {
  return closed({{at(0, 0), 0, {}}, {at(w, 0), 0, {}}, {at(w, h), 0, {}}, {at(0, h), 0, {}}});
}

RowRun quarter(double near_radius, double deep) {
  return {near_radius * pi / 2, (near_radius + deep) * pi / 2, near_radius, pi / 2, 0, 0};
}

RowRules coping_rules() {
  RowRules rules;
  rules.piece = 12 * inch;
  rules.deep = 12 * inch;
  rules.joint = inch / 4;
  rules.joint_least = inch / 8;
  rules.joint_greatest = 3 * inch / 8;
  rules.flat_limit = 1;
  return rules;
}

const RowMake* made(const std::vector<RowMake>& ways, RowMake::How how) {
  for (const RowMake& way : ways)
    if (way.how == how) return &way;
  return nullptr;
}

// Derived: water's edge R 60, overhang 1.5, piece 12 x 12, joint 1/4 in, a quarter circle. Near line 58.5 in,
// b1 = 2 p tan a - j / cos a, b2 the same with p + w, flat = p (1 / cos a - 1).
TEST(Coping, TaperedQuarterRoundWater) {
  const auto all = ways(quarter(58.5 * inch, 12 * inch), coping_rules());
  const RowMake* tapered = made(all, RowMake::How::tapered);
  ASSERT_NE(tapered, nullptr);
  EXPECT_EQ(tapered->pieces, 10);
  EXPECT_EQ(tapered->cut, 10);
  EXPECT_NEAR(tapered->near_face / inch, 8.957, 0.0006);
  EXPECT_NEAR(tapered->far_face / inch, 10.846, 0.0005);
  EXPECT_NEAR(tapered->cut_angle * 180 / pi, 4.5, 1e-9);
  EXPECT_NEAR(tapered->flat / inch, 0.181, 0.0005);
  EXPECT_NEAR(tapered->cut_length / inch, 2 * 10 * 12 / std::cos(pi / 40), 1e-9);
}

TEST(Coping, FlatLimitAsksForMorePieces) {
  RowRules rules = coping_rules();
  rules.flat_limit = inch / 8;
  const auto all = ways(quarter(58.5 * inch, 12 * inch), rules);
  const RowMake* tapered = made(all, RowMake::How::tapered);
  ASSERT_NE(tapered, nullptr);
  EXPECT_EQ(tapered->pieces, 13);
  EXPECT_NEAR(tapered->near_face / inch, 6.827, 0.0005);
  EXPECT_NEAR(tapered->far_face / inch, 8.278, 0.0005);
}

TEST(Coping, TaperedWithTheCentreOnLand) {
  // The back line is the near one: 60 - 10.5 = 49.5 in.
  const auto all = ways(quarter(49.5 * inch, 12 * inch), coping_rules());
  const RowMake* tapered = made(all, RowMake::How::tapered);
  ASSERT_NE(tapered, nullptr);
  EXPECT_EQ(tapered->pieces, 8);
  EXPECT_NEAR(tapered->near_face / inch, 9.499, 0.0005);
  EXPECT_NEAR(tapered->far_face / inch, 11.863, 0.0005);
}

// Corners of a piece of width l whose near side's middle touches the circle of radius p, turned by `turn` about its
// centre.
geometry::Vec corner(double p, double l, double along, double turn) {
  return {p * std::cos(turn) - along * l / 2 * std::sin(turn), p * std::sin(turn) + along * l / 2 * std::cos(turn)};
}

TEST(Coping, UncutJointsAreTheDistancesOfCorners) {
  RowRules rules = coping_rules();
  rules.piece = 6 * inch;
  const double p = 30 * 12 * inch;
  const auto all = ways(quarter(p, 12 * inch), rules);
  ASSERT_FALSE(all.empty());
  const RowMake& uncut = all.front();
  ASSERT_EQ(uncut.how, RowMake::How::uncut);
  EXPECT_EQ(uncut.cut, 0);
  const double turn = pi / 2 / uncut.pieces;
  const auto gap = [&](double radius) {
    return geometry::length(corner(radius, rules.piece, -1, turn) - corner(radius, rules.piece, 1, 0));
  };
  EXPECT_NEAR(uncut.near_joint, gap(p), 1e-12);
  EXPECT_NEAR(uncut.far_joint, gap(p + 12 * inch), 1e-12);
  EXPECT_GE(uncut.near_joint, rules.joint_least);
  EXPECT_LE(uncut.far_joint, rules.joint_greatest);
}

TEST(Coping, TighterThanTheLeastRadiusNothingLiesUncut) {
  RowRules rules = coping_rules();
  rules.piece = 6 * inch;
  const double least = least_radius_uncut(rules.piece, rules.deep, rules.joint_least, rules.joint_greatest);
  // At the least radius both joints stand at their limits with one turn a piece, sin a = (jmax - jmin) / 2w: 80 such
  // pieces fit.
  const double turn = 160 * std::asin((rules.joint_greatest - rules.joint_least) / (2 * rules.deep));
  const auto run = [&](double p) { return RowRun{p * turn, (p + rules.deep) * turn, p, turn, 0, 0}; };
  const auto all = ways(run(least), rules);
  const RowMake* uncut = made(all, RowMake::How::uncut);
  ASSERT_NE(uncut, nullptr);
  EXPECT_EQ(uncut->pieces, 80);
  EXPECT_NEAR(uncut->near_joint, rules.joint_least, 1e-9);
  EXPECT_NEAR(uncut->far_joint, rules.joint_greatest, 1e-9);
  EXPECT_EQ(made(ways(run(least * 0.999), rules), RowMake::How::uncut), nullptr);
}

TEST(Coping, RadiusPiecesWithinASixteenth) {
  // Nose 60 in, length 14 1/8 in at the back, 72 in: l^2/8 (1/R - 1/R_s) is 0 at the stock's own radius, n = ceil(72
  // pi/2 / 14.25) = 8.
  RowRules rules = coping_rules();
  rules.piece = 14.125 * inch;
  rules.joint = inch / 8;
  rules.stock_radii = {{72 * inch, 14.125 * inch}};
  const auto all = ways(quarter(60 * inch, 12 * inch), rules);
  const RowMake* stock = made(all, RowMake::How::radius);
  ASSERT_NE(stock, nullptr);
  EXPECT_EQ(stock->pieces, 8);
  EXPECT_EQ(stock->cut, 0);
  // 72 against 100 in: 14.125^2 / 8 x (1/72 - 1/100) = 0.097 in is over 1/16.
  EXPECT_EQ(made(ways(quarter(88 * inch, 12 * inch), rules), RowMake::How::radius), nullptr);
}

TEST(Border, LeastRadiiWithoutCuts) {
  // Derived: sin a = (jmax - jmin) / 2w, p = (jmin + l cos a) / (2 sin a), in feet as tabled for the trade.
  const auto feet = [](double l, double w, double least, double greatest) {
    return least_radius_uncut(l * inch, w * inch, least * inch, greatest * inch) / 0.3048;
  };
  EXPECT_NEAR(feet(4, 8, 1. / 16, 3. / 16), 21.67, 0.005);
  EXPECT_NEAR(feet(4, 8, 1. / 8, 3. / 8), 11.00, 0.005);
  EXPECT_NEAR(feet(8, 4, 1. / 16, 3. / 16), 21.50, 0.005);
  EXPECT_NEAR(feet(8, 4, 1. / 8, 3. / 8), 10.83, 0.005);
  EXPECT_NEAR(feet(9, 6, 1. / 16, 3. / 16), 36.25, 0.005);
  EXPECT_NEAR(feet(9, 6, 1. / 8, 3. / 8), 18.25, 0.005);
  EXPECT_NEAR(feet(12, 12, 1. / 16, 3. / 16), 96.50, 0.005);
  EXPECT_NEAR(feet(12, 12, 1. / 8, 3. / 8), 48.50, 0.005);
  EXPECT_TRUE(std::isinf(least_radius_uncut(0.1, 0.2, 0.003, 0.003)));
}

TEST(Border, ClosedRingUncut) {
  // Derived: inner radius 120 in, units 4 x 8 in (8 deep), least joint 1/8 in: floor(240 pi / 4.125) = 182; joints
  // 0.1428 in inside and 0.4189 outside by arc lengths (240 pi / 182 - 4, 256 pi / 182 - 4); between corners, as
  // here, 2 r sin a - l cos a: 0.0004 more.
  RowRules rules;
  rules.piece = 4 * inch;
  rules.deep = 8 * inch;
  rules.joint = rules.joint_least = inch / 8;
  rules.joint_greatest = inch / 2;
  const RowRun ring{240 * pi * inch, 256 * pi * inch, 120 * inch, 2 * pi, 0, 0};
  const auto all = ways(ring, rules);
  ASSERT_FALSE(all.empty());
  EXPECT_EQ(all.front().how, RowMake::How::uncut);
  EXPECT_EQ(all.front().pieces, 182);
  EXPECT_NEAR(all.front().near_joint / inch, 0.1428, 0.0008);
  EXPECT_NEAR(all.front().far_joint / inch, 0.4189, 0.0008);
}

TEST(Border, PoolFrontWaterAndBack) {
  // 16 x 32 ft, overhang 1.5, coping 12 in: front 95.0, water 96.0, back 103.0 ft (4 corners, each 1.5 in shorter or
  // 10.5 longer on both legs).
  const Path water = rectangle(32 * 12, 16 * 12);
  EXPECT_DOUBLE_EQ(water.length().si() / 0.3048, 96);
  const auto runs = row_runs(water, -1.5 * inch, 12 * inch, geometry::Side::right);
  ASSERT_EQ(runs.size(), 4U);
  double front = 0, back = 0;
  for (const RowRun& run : runs) {
    front += run.near_length;
    back += run.far_length;
    EXPECT_EQ(run.radius, 0);
    EXPECT_NEAR(run.corner_before, pi / 2, 1e-12);
    EXPECT_NEAR(run.corner_after, pi / 2, 1e-12);
  }
  EXPECT_NEAR(front / 0.3048, 95.0, 1e-9);
  EXPECT_NEAR(back / 0.3048, 103.0, 1e-9);
}

TEST(Border, TurnedCornersOfTwoCourses) {
  // Derived: units on end, 4 x 8 in, tight, round 20 x 12 ft with turned corners: 2 (240 + 144 - 16) / 4 = 184, the
  // second course 168.
  RowRules rules;
  rules.piece = 4 * inch;
  rules.deep = 8 * inch;
  const Path edge = rectangle(240, 144);
  int expected = 184;
  for (int course = 0; course < 2; ++course, expected -= 16) {
    const auto corners = at_corners(row_runs(edge, course * 8 * inch, 8 * inch, geometry::Side::left), RowCorner::mitre,
                                    rules, course, true);
    EXPECT_EQ(corners.butts, 4);  // a soldier of 4 in is too short for a mitre 8 in deep
    int pieces = 0;
    for (const RowRun& run : corners.runs) {
      const auto all = ways(run, rules);
      ASSERT_FALSE(all.empty());
      EXPECT_EQ(all.front().cut, 0);
      pieces += all.front().pieces;
    }
    EXPECT_EQ(pieces, expected);
  }
}

TEST(Border, SailorsAreMitredAndBlocksStandInCorners) {
  RowRules rules;
  rules.piece = 8 * inch;
  rules.deep = 4 * inch;
  const auto runs = row_runs(rectangle(240, 144), 0, 4 * inch, geometry::Side::left);
  // w tan 45 + l / 2 = 4 + 4 = 8: just long enough.
  EXPECT_EQ(at_corners(runs, RowCorner::mitre, rules, 0, true).mitres, 4);
  const RowCorners blocks = at_corners(runs, RowCorner::block, rules, 0, true);
  EXPECT_EQ(blocks.blocks, 4);
  // Each leg stops 4 in short at either end: 240 - 8 and 144 - 8.
  EXPECT_NEAR(blocks.runs[0].far_length / inch, 232, 1e-9);
  EXPECT_NEAR(blocks.runs[1].far_length / inch, 136, 1e-9);
  EXPECT_EQ(blocks.runs[0].corner_after, 0);
}

TEST(Border, SharpCornersAreButted) {
  // A corner of 30 degrees of ground turns by 150.
  RowRules rules;
  rules.piece = 40 * inch;
  rules.deep = 1 * inch;
  RowRun a{2, 2, 0, 0, 0, 150 * pi / 180};
  RowRun b{2, 2, 0, 0, 150 * pi / 180, 0};
  EXPECT_EQ(at_corners({a, b}, RowCorner::mitre, rules, 0, false).butts, 1);
  a.corner_after = b.corner_before = 130 * pi / 180;
  EXPECT_EQ(at_corners({a, b}, RowCorner::mitre, rules, 0, false).mitres, 1);
}

TEST(Border, StraightRuns) {
  RowRules rules;
  rules.piece = 12 * inch;
  rules.deep = 12 * inch;
  rules.joint = inch / 4;
  const auto run = [](double length) { return RowRun{length * inch, length * inch, 0, 0, 0, 0}; };
  // 10 modules of 12 1/4 in come out whole.
  auto all = ways(run(122.5), rules);
  EXPECT_EQ(all.front().pieces, 10);
  EXPECT_EQ(all.front().cut, 0);
  // 100 in: ceil(100 / 12.25) = 9 even pieces of 100 / 9 - 1/4 = 10.861 in, or 7 whole and two closers of (100 -
  // 85.75) / 2 - 1/4 = 6.875 in.
  all = ways(run(100), rules);
  ASSERT_EQ(all.size(), 2U);
  EXPECT_EQ(all[0].how, RowMake::How::straight_closers);
  EXPECT_EQ(all[0].pieces, 9);
  EXPECT_EQ(all[0].cut, 2);
  EXPECT_NEAR(all[0].near_face / inch, 6.875, 1e-9);
  EXPECT_EQ(all[1].how, RowMake::How::straight_even);
  EXPECT_EQ(all[1].cut, 9);
  EXPECT_NEAR(all[1].near_face / inch, 10.861, 0.0005);
  // With joints from 1/8 to 3/8 in, 98.5 in takes 8 whole pieces at 98.5 / 8 - 12 = 5/16 in.
  rules.joint_least = inch / 8;
  rules.joint_greatest = 3 * inch / 8;
  all = ways(run(98.5), rules);
  EXPECT_EQ(all.front().pieces, 8);
  EXPECT_EQ(all.front().cut, 0);
  EXPECT_NEAR(all.front().near_joint / inch, 0.3125, 1e-9);
}

// The terrace pool: tangent arcs of R 80, 95 (a waist), 45 and 360 in; every point a whole inch.
Path terrace_pool() {
  const auto bulge = [](double degrees) { return std::tan(degrees * pi / 180 / 4); };
  const double narrow = std::atan2(3, 4) * 180 / pi;  // 36.870 degrees
  return closed({{at(318, 72), bulge(180 + narrow), {}},
                 {at(270, 216), -bulge(2 * narrow), {}},
                 {at(156, 216), bulge(180), {}},
                 {at(102, 144), bulge(narrow), {}}});
}

TEST(Border, TerracePoolByLongerLines) {
  const auto runs = row_runs(terrace_pool(), -1.5 * inch, 12 * inch, geometry::Side::right);
  ASSERT_EQ(runs.size(), 4U);
  double near = 0, far = 0, longer = 0, nose = 0;
  for (const RowRun& run : runs) {
    EXPECT_EQ(run.corner_before, 0);
    near += run.near_length;
    far += run.far_length;
    longer += std::max(run.near_length, run.far_length);
    nose += std::abs(run.radius - 84.5 * inch) < 1e-6 ? run.far_length : run.near_length;
  }
  // Longer of nose and back line of each arc, added, / 6 in, up once: 147; with the shorter ones 129.
  EXPECT_EQ(std::ceil(longer / (6 * inch)), 147);
  EXPECT_EQ(std::ceil(near / (6 * inch)), 129);
  // At the waist the centre lies on land: there the nose is the far line. P + 2 pi d: 20.0324721 m nose, 21.9475869 m
  // back.
  EXPECT_NEAR(nose, 20.0324721, 2e-6);
  EXPECT_NEAR(near + far - nose, 21.9475869, 2e-6);
}

TEST(Border, ArcsThatOneArcFollowsAreOneRun) {
  // A quarter of R 100 in drawn as three tangent arcs is one run; a half of R 100 joined to one of R 50 is two.
  const auto point = [](double degrees) {
    const double r = 100 * 8128.0;
    return Point{Length::of_steps(std::llround(r * std::cos(degrees * pi / 180))),
                 Length::of_steps(std::llround(r * std::sin(degrees * pi / 180)))};
  };
  const double bulge = std::tan(30 * pi / 180 / 4);
  const Path quarter_line =
      Path::make({{point(0), bulge, {}}, {point(30), bulge, {}}, {point(60), bulge, {}}}, point(90)).value();
  const auto runs = row_runs(quarter_line, 0, 8 * inch, geometry::Side::left);
  ASSERT_EQ(runs.size(), 1U);
  EXPECT_NEAR(runs[0].radius / inch, 92, 1e-3);
  EXPECT_NEAR(runs[0].turn, pi / 2, 1e-6);
  const Path two = Path::make({{at(100, 0), 1, {}}, {at(-100, 0), 1, {}}}, at(0, 0)).value();
  EXPECT_EQ(row_runs(two, 0, 8 * inch, geometry::Side::left).size(), 2U);
}

}  // namespace
