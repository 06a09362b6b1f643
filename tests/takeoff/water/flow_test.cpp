// Published examples, each with its source; "derived" ones carry their arithmetic.
#include "takeoff/water/flow.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <numbers>

using namespace takeoff::water;

namespace {

constexpr double inch = 0.0254, foot = 0.3048;
constexpr double cfs = foot * foot * foot;
constexpr double gpm = 3.785411784e-3 / 60;

void near_share(double value, double expected, double share) { EXPECT_NEAR(value, expected, share * expected); }

struct PipeRow {
  double diameter, n, slope, gallons, feet_per_second;
};

// Manning full pipe by hand: Q = 1.486/n A (D/4)^(2/3) S^(1/2), 448.83 gpm in 1 cfs. The speeds are printed to 0.01.
const PipeRow full_pipes[] = {{3, .011, .005, 33.1, 1.50},  {3, .011, .01, 46.9, 2.13},  {3, .011, .02, 66.3, 3.01},
                              {4, .009, .005, 87.2, 2.23},  {4, .009, .01, 123.4, 3.15}, {4, .009, .02, 174.5, 4.45},
                              {4, .011, .005, 71.4, 1.82},  {4, .011, .01, 100.9, 2.58}, {4, .011, .02, 142.8, 3.64},
                              {4, .015, .005, 52.3, 1.34},  {4, .015, .01, 74.0, 1.89},  {4, .015, .02, 104.7, 2.67},
                              {6, .009, .005, 257.2, 2.92}, {6, .009, .01, 363.8, 4.13}, {6, .009, .02, 514.4, 5.84},
                              {6, .011, .005, 210.5, 2.39}, {6, .011, .01, 297.6, 3.38}, {6, .011, .02, 420.9, 4.78},
                              {6, .015, .005, 154.3, 1.75}, {6, .015, .01, 218.3, 2.48}, {6, .015, .02, 308.7, 3.50},
                              {8, .011, .005, 453.2, 2.89}, {8, .011, .01, 641.0, 4.09}, {8, .011, .02, 906.5, 5.79}};

struct SlopeRow {
  double diameter, n, feet_per_second, percent;
};

}  // namespace

TEST(Flow, fullPipes) {
  for (const PipeRow& row : full_pipes) {
    const flow::Flow made = flow::full_pipe(row.diameter * inch, row.n, row.slope);
    near_share(made.m3_s / gpm, row.gallons, 0.005);
    EXPECT_NEAR(made.m_s / foot, row.feet_per_second, 0.011);
  }
}

// Storm drains of the plumbing code, IPC 1106.2 (from memory): its roughness is not printed; .0098 and .0097 are what
// its first column implies, and the other columns must follow from them.
TEST(Flow, stormDrainsOfThePlumbingCode) {
  const double four[] = {115, 163, 231}, six[] = {344, 487, 689};
  for (int k = 0; k < 3; ++k) {
    const double slope = 0.125 / 12 * std::pow(2.0, k);
    near_share(flow::full_pipe(4 * inch, .0098, slope).m3_s / gpm, four[k], 0.01);
    near_share(flow::full_pipe(6 * inch, .0097, slope).m3_s / gpm, six[k], 0.01);
  }
}

// Least speeds of field drains 0.5 and 1.4 ft/s (The Basics of Agricultural Tile Drainage), of storm mains 2 ft/s.
// Derived: S = (v n / (1.486 (D/4)^(2/3)))^2; printed to three figures.
TEST(Flow, slopesForSpeeds) {
  const SlopeRow rows[] = {{4, .011, .5, .038},  {4, .011, 1.4, .295}, {4, .011, 2, .602},   {4, .015, .5, .070},
                           {4, .015, 1.4, .549}, {4, .015, 2, 1.12},   {6, .011, .5, .022},  {6, .011, 1.4, .172},
                           {6, .011, 2, .351},   {6, .015, .5, .041},  {6, .015, 1.4, .320}, {6, .015, 2, .652}};
  for (const SlopeRow& row : rows)
    EXPECT_NEAR(flow::slope_for(row.diameter * inch, row.n, row.feet_per_second * foot) * 100, row.percent,
                row.percent < 1 ? 0.0006 : 0.0055);
}

// A published half-full sewer: 1.10 m3/s, n .018, S .0004 takes 2.000 m.
TEST(Flow, halfFullSewer) { near_share(flow::diameter_half_full(1.10, .018, .0004), 2.000, 0.001); }

// A published part-full sewer: D 2.4 m, depth 1.5 m, n .02, S 1/1500: 2.96839 m3/s.
TEST(Flow, partFullSewer) { near_share(flow::part_full(2.4, 1.5, .02, 1.0 / 1500).m3_s, 2.96839, 0.001); }

// A published channel: b 3 m, sides 1:1, 1.5 m deep, S .0009, n .012: 16.1 m3/s, printed to three figures.
TEST(Flow, trapezoidChannel) { EXPECT_NEAR(flow::trapezoid(3, 1, 1.5, .012, .0009).m3_s, 16.1, 0.05); }

// Derived: 8 in, n .013, 0.5 %; 24 in, n .012, 0.3 %.
TEST(Flow, largerPipes) {
  const flow::Flow eight = flow::full_pipe(8 * inch, .013, .005), two_feet = flow::full_pipe(24 * inch, .012, .003);
  near_share(eight.m3_s / cfs, .8545, 0.002);
  near_share(eight.m_s / foot, 2.448, 0.002);
  near_share(two_feet.m3_s / cfs, 13.42, 0.002);
  near_share(two_feet.m_s / foot, 4.27, 0.002);
}

// Published with the factor left out: .11 x 1.25 in/h x 30 acres = 4.125 cfs; .4 x 2.87 x 128 = 146.94. Exact: 1.00833.
TEST(Flow, rational) {
  const double acre = 43560 * foot * foot, hourly = inch / 3600;
  const double exact = 43560.0 / (12 * 3600);
  near_share(flow::rational(.11, 1.25 * hourly, 30 * acre) / cfs, 4.125 * exact, 1e-9);
  near_share(flow::rational(.4, 2.87 * hourly, 128 * acre) / cfs, 146.944 * exact, 1e-9);
}

// Roof 1200 sq ft C .90, lawn 3000 C .30, patio 800 C .85 at 5 in/h: .3053 cfs without the factor, 137.0 gpm: more than
// 4 in n .011 at 1 %, less than 6 in at 0.5 %.
TEST(Flow, aYardNeedsSixInches) {
  const double share = (1200 * .90 + 3000 * .30 + 800 * .85) / 5000;
  EXPECT_NEAR(share, .532, 1e-9);
  const double amount = flow::rational(share, 5 * inch / 3600, 5000 * foot * foot) / (43560.0 / 43200);
  near_share(amount / gpm, 137.0, 0.001);
  EXPECT_LT(flow::full_pipe(4 * inch, .011, .01).m3_s, amount);
  EXPECT_GT(flow::full_pipe(6 * inch, .011, .005).m3_s, amount);
}

// TR-55's worked example (from memory): .30 h, .24 h and .99 h as printed, together 1.53 h.
TEST(Flow, timesOfConcentration) {
  const double sheet = flow::sheet_time(.24, 100 * foot, 3.6 * inch, .01) / 3600;
  const double shallow = flow::shallow_time(1400 * foot, .01, false) / 3600;
  const double channel = flow::channel_time(7300 * foot, 27 * foot * foot, 28.2 * foot, .005, .05) / 3600;
  EXPECT_NEAR(sheet, .296, .0015);
  EXPECT_NEAR(shallow, .241, .003);
  EXPECT_NEAR(channel, .991, .005);
  EXPECT_NEAR(sheet + shallow + channel, 1.53, .01);
}

// A published weir without contractions: 3 cfs on each foot stands (3/3.33)^(2/3) = .9328 ft high.
TEST(Flow, headOverAWeir) {
  near_share(flow::weir_head(foot, 3 * cfs) / foot, .9328, 0.0002);
  near_share(flow::weir(foot, .9328 * foot, 0) / cfs, 3, 0.0002);
}

// A 3 ft spillway, derived: 3.33 x 3 x H^1.5 x 448.83 gpm, printed to 0.1. That tells the sum; the water itself keeps
// to it within 15 % only, because the sheet is thin. With two contractions L is 3 - 0.2 H.
TEST(Flow, spillway) {
  const double rows[][2] = {{.5, 38.1}, {.75, 70.1}, {1, 107.9}, {1.5, 198.2}};
  for (const auto& row : rows) {
    EXPECT_NEAR(flow::weir(3 * foot, row[0] * inch, 0) / gpm, row[1], 0.06);
    near_share(flow::weir(3 * foot, row[0] * inch, 2) / gpm, row[1] * (3 - .2 * row[0] / 12) / 3, 0.002);
  }
}

// A published test: 1 in hole, 29 in head, 16 imperial gallons (10 lb each, 62.4 lb/cu ft) a minute has Cd .628.
// Derived: Cd .61, 1 in: .0267 cfs at 1 ft, .0378 at 2 ft.
TEST(Flow, orifice) {
  const double area = std::numbers::pi / 4 * inch * inch;
  near_share(flow::orifice(.628, area, 29 * inch) / cfs, 160 / 62.4 / 60, 0.003);
  near_share(flow::orifice(.61, area, foot) / cfs, .0267, 0.002);
  near_share(flow::orifice(.61, area, 2 * foot) / cfs, .0378, 0.002);
}

RC_GTEST_PROP(Flow, partFullEndsAtFullAndHalfIsHalf, ()) {
  const double diameter = *rc::gen::inRange(50, 1000) / 1000.0, slope = *rc::gen::inRange(1, 100) / 1000.0;
  const double full = flow::full_pipe(diameter, .011, slope).m3_s;
  RC_ASSERT(std::abs(flow::part_full(diameter, diameter, .011, slope).m3_s - full) < 1e-9 * full);
  RC_ASSERT(std::abs(flow::part_full(diameter, diameter / 2, .011, slope).m3_s - full / 2) < 1e-9 * full);
}

// The section of water in a round pipe against thin strips added up.
RC_GTEST_PROP(Flow, partFullAgainstStrips, ()) {
  const double diameter = *rc::gen::inRange(50, 1000) / 1000.0, part = *rc::gen::inRange(5, 96) / 100.0;
  const double r = diameter / 2, depth = part * diameter;
  const int strips = 20000;
  double area = 0;
  for (int k = 0; k < strips; ++k) {
    const double z = (k + 0.5) * depth / strips - r;
    area += 2 * std::sqrt(r * r - z * z) * depth / strips;
  }
  const double wetted = 2 * r * std::acos((r - depth) / r);
  const double by_strips = area * std::pow(area / wetted, 2.0 / 3) * std::sqrt(.01) / .011;
  RC_ASSERT(std::abs(flow::part_full(diameter, depth, .011, .01).m3_s - by_strips) < 1e-4 * by_strips);
}
