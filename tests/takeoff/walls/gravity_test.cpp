#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "takeoff/walls/pressure.h"
#include "takeoff/walls/stability.h"

using namespace takeoff::walls;

namespace {

constexpr double degree = std::numbers::pi / 180;

void expect_share(double found, double wanted, double share) {
  EXPECT_NEAR(found, wanted, std::abs(wanted) * share) << wanted;
}

// A trapezoid on friction alone, Rankine 30 degrees behind it, ground level with its top.
Stability trapezoid(const Trapezoid& wall, double soil, double mu) {
  const double push = thrust(rankine(30 * degree), soil, wall.height);
  return stability(weights(wall), {{push, wall.height / 3, 0, 0}}, {wall.base, mu, 0, 0});
}

struct Trapezium {  // as published: x is where the weight lies from the back
  double w, p, x, e, most, least, overturning, sliding;
};
void expect(const Stability& found, double base, const Trapezium& wanted) {
  constexpr double tolerance = 0.002;
  expect_share(found.vertical, wanted.w, tolerance);
  expect_share(found.horizontal, wanted.p, tolerance);
  expect_share(base - found.righting / found.vertical, wanted.x, tolerance);
  expect_share(found.eccentricity, wanted.e, tolerance);
  expect_share(found.toe, wanted.most, tolerance);
  expect_share(found.heel, wanted.least, tolerance);
  expect_share(found.overturning, wanted.overturning, tolerance);
  expect_share(found.sliding, wanted.sliding, tolerance);
}

}  // namespace

// GW1: Das, Principles of Foundation Engineering, ex. 8.1, cantilever wall (ft, kip): backfill 0.117 kcf, Ka 0.294,
// slope 10 degrees; H = 6 tan 10 + 18 + 2.75; base 12.5; foundation 18 degrees and 0.9 ksf, both by 2/3. Overturning
// 3.47 printed; sliding derived. Tolerance 0.5 %.
TEST(Gravity, Das81) {
  const double height = 6 * std::tan(10 * degree) + 18 + 2.75;
  expect_share(height, 21.808, 0.005);
  const double push = thrust(0.294, 0.117, height);
  expect_share(push, 8.180, 0.005);
  const double across = push * std::cos(10 * degree);
  const double down = push * std::sin(10 * degree);
  expect_share(across, 8.055, 0.005);
  expect_share(down, 1.420, 0.005);
  const Stability found =
      stability({{4.05, 5.75}, {1.35, 4.67}, {5.156, 6.25}, {13.01, 9.5}}, {{across, height / 3, down, 12.5}},
                {12.5, std::tan(18 * degree * 2 / 3), 0.9 * 2 / 3, 0});
  expect_share(found.turning, 58.56, 0.005);
  expect_share(found.righting, 203.16, 0.005);
  expect_share(found.vertical, 24.986, 0.005);
  expect_share(found.overturning, 3.469, 0.005);
  expect_share(found.sliding, 1.590, 0.005);
  expect_share(found.eccentricity, 0.4626, 0.005);
  expect_share(found.toe, 2.443, 0.005);
  expect_share(found.heel, 1.555, 0.005);
}

// GW3: Das, Principles of Foundation Engineering, ex. 8.4, concrete wall (m, kN): 6.5 m, 18.5 kN/m3, 32 degrees, delta
// 21.333, back leaning 15 degrees out of the fill; base 3.5; foundation 24 degrees and 30 kPa, both by 2/3; passive
// 186.59. Weights and arms as printed; 2.67, 2.84, 188.43, 17.73 in the book from memory. Tolerance 0.3 %.
TEST(Gravity, Das84) {
  const auto behind = thrusts({32 * degree, 64.0 / 3 * degree, 18.5, 0, -15 * degree, 0}, 6.5);
  ASSERT_TRUE(behind.has_value());
  expect_share(thrust(behind->ka, 18.5, 6.5), 157.22, 0.003);
  expect_share(behind->earth, 126.66, 0.003);
  const std::vector<Weight> weights{{102.81, 2.18}, {80.64, 1.37}, {18.16, 0.98}, {66.02, 1.75}};
  const Push push{behind->earth, 6.5 / 3, 93.14, 2.83};
  const Base base{3.5, std::tan(16 * degree), 20, 186.59};
  const Stability found = stability(weights, {push}, base);
  expect_share(found.turning, 274.42, 0.003);
  expect_share(found.righting, 731.52, 0.003);
  expect_share(found.vertical, 360.77, 0.003);
  expect_share(found.overturning, 2.666, 0.003);
  expect_share(found.sliding, 2.843, 0.003);
  expect_share(stability(weights, {push}, {3.5, base.friction, 20, 0}).sliding, 1.369, 0.003);
  expect_share(found.eccentricity, 0.483, 0.003);
  expect_share(found.toe, 188.42, 0.003);
  expect_share(found.heel, 17.73, 0.003);
}

// GW4 to GW6: Sarkar, Strength of Materials, ch. 14, trapezoidal walls (m, kN); GW6 printed with e rounded (118.91,
// 73.95); overturning everywhere and the friction of GW6 derived. Tolerance 0.2 %.
TEST(Gravity, SarkarTrapezoids) {
  expect(trapezoid({6, 1, 3, 22}, 16, 0.5), 3, {264, 96, 1.0833, 0.3106, 142.67, 33.33, 2.635, 1.375});
  expect(trapezoid({8, 1, 4.5, 24}, 20, 0.5), 4.5, {528, 213.33, 1.5606, 0.3880, 178.04, 56.63, 2.728, 1.2375});
  expect(trapezoid({6, 1.5, 3.5, 22.5}, 16, 0.5), 3.5, {337.5, 96, 1.3167, 0.1356, 118.84, 74.02, 3.838, 1.758});
}

// GW7: sizes of a small wall from an engineering forum's question (m, kN), everything else derived: a rigid base that
// can't pull stands on 0.682 m of its 0.8. Tolerance 0.2 %.
TEST(Gravity, BaseThatLifts) {
  const double push = thrust(rankine(20 * degree), 18, 1.6);
  expect_share(rankine(20 * degree), 0.4903, 0.002);
  expect_share(push, 11.296, 0.002);
  const Stability found = stability(weights({1.6, 0.4, 0.8, 24}), {{push, 1.6 / 3, 0, 0}}, {0.8, 0.7, 0, 0});
  expect_share(found.vertical, 23.04, 0.002);
  expect_share(found.sliding, 1.428, 0.002);
  expect_share(found.overturning, 1.870, 0.002);
  expect_share(found.eccentricity, 0.1726, 0.002);
  expect_share(found.contact, 0.682, 0.002);
  expect_share(found.toe, 67.55, 0.002);
  EXPECT_EQ(found.heel, 0);
  expect_share(found.pressure, 50.66, 0.002);
}

namespace {

// GW8, a regression (constructed, not published): dry-stacked units 1 ft deep, 8 in high, 1 in back a course, 130 pcf
// with their fill, soil 120 pcf at 30 degrees, delta 20, base friction tan 30 (ft, lb).
Stability dry_stack(int courses) {
  const Stack stack{courses, 8.0 / 12, 1, 1.0 / 12, 130 * 8.0 / 12};
  const auto behind = thrusts({30 * degree, 20 * degree, 120, 0, stack.omega(), 0}, stack.total());
  EXPECT_TRUE(behind.has_value());
  EXPECT_NEAR(behind->ka, 0.24951, 1e-5);
  return stability({weight(stack)}, behind->pushes(stack.total()), {1, std::tan(30 * degree), 0, 0});
}

}  // namespace

TEST(Gravity, DryStackOfFivePasses) {
  const Stability found = dry_stack(5);
  expect_share(found.horizontal, 162.16, 0.001);
  expect_share(found.vertical, 433.3, 0.001);
  expect_share(found.sliding, 1.543, 0.001);
  expect_share(found.righting / found.vertical, 0.6667, 0.001);
  expect_share(found.overturning, 1.603, 0.001);
  expect_share(found.eccentricity, 0.2491, 0.001);
  expect_share(found.effective, 0.5018, 0.001);
  expect_share(found.pressure, 863.6, 0.001);
}

TEST(Gravity, DryStackOfSixFails) {
  const Stability found = dry_stack(6);
  expect_share(found.horizontal, 233.50, 0.001);
  expect_share(found.vertical, 520, 0.001);
  expect_share(found.sliding, 1.286, 0.001);
  expect_share(found.overturning, 1.183, 0.001);
  expect_share(found.eccentricity, 0.3904, 0.001);
  expect_share(found.effective, 0.2192, 0.001);
  expect_share(found.pressure, 2372, 0.001);
}

// A body whose weight lies outside its base stands on nothing.
TEST(Gravity, NothingBears) {
  const Stability found = stability({{100, 0.2}}, {{100, 1, 0, 0}}, {1, 0.5, 0, 0});
  EXPECT_EQ(found.effective, 0);
  EXPECT_EQ(found.contact, 0);
  EXPECT_TRUE(std::isinf(found.pressure));
  EXPECT_TRUE(std::isinf(found.toe));
}
