#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <vector>

#include "takeoff/ground/slopes.h"

using namespace takeoff::ground;

namespace {

std::vector<Station> level_sections(double bottom, double slope, double apart, const std::vector<double>& depths) {
  std::vector<Station> made;
  for (std::size_t i = 0; i < depths.size(); ++i)
    made.push_back({apart * static_cast<double>(i), trapezoid(bottom, depths[i], slope)});
  return made;
}

// A two-level section: the ground falls 1 in n across, the sides 1 in s: n2 s / (n2 - s2) (h + b / 2s)2 - b2 / 4s.
double two_level(double bottom, double slope, double cross, double depth) {
  const double n2 = cross * cross;
  const double h = depth + bottom / (2 * slope);
  return n2 * slope / (n2 - slope * slope) * h * h - bottom * bottom / (4 * slope);
}

}  // namespace

// Basak, Surveying and Levelling: level sections, formation 10 m wide, sides 1.5 to 1, 40 m apart; areas 10.215 ...
// 9.58375 m2; 5096.775 m3 by end areas, 5143.25 m3 by the prismoid.
TEST(Slopes, levelSectionsOfARoad) {
  const auto road = level_sections(10, 1.5, 40, {0.90, 1.25, 2.15, 2.50, 1.85, 1.35, 0.85});
  EXPECT_NEAR(road[0].area, 10.215, 1e-9);
  EXPECT_NEAR(road[3].area, 34.375, 1e-9);
  EXPECT_NEAR(end_areas(road), 5096.775, 1e-6);
  EXPECT_NEAR(prismoids(road), 5143.25, 5e-3);
}

// Basak: three-level sections of 14.25 and 18.975 m2, 50 m apart: 830.625 m3; less L/12 (h1 - h2)(w1 - w2) =
// 50/12 x (1.0 - 1.5) x (12.75 - 12.85) = 0.2083: 830.417 m3. Half widths 7.5 + 5.25 and 8.1 + 4.75. The middle section
// has the means of both: h 1.25, half formation 4.5, sides 2.675 and 1.15 high, 7.8 and 5.0 out.
TEST(Slopes, threeLevelSections) {
  const auto section = [](double h, double left, double right, double left_out, double right_out) {
    return h / 2 * (left_out + right_out) + 4.5 / 2 * (left + right);
  };
  const double first = section(1.0, 2.55, 0.95, 7.5, 5.25), last = section(1.5, 2.8, 1.35, 8.1, 4.75);
  EXPECT_NEAR(first, 14.25, 1e-9);
  EXPECT_NEAR(last, 18.975, 1e-9);
  const std::vector<Station> both{{0, first}, {50, last}};
  EXPECT_NEAR(end_areas(both), 830.625, 1e-9);
  EXPECT_NEAR(prismoid(first, section(1.25, 2.675, 1.15, 7.8, 5.0), last, 50), 830.417, 5e-4);
}

// Basak: two sections of 21.1375 and 25.9875 m2, 50 m apart: 1178.125 m3.
TEST(Slopes, twoSections) {
  const std::vector<Station> both{{0, 21.1375}, {50, 25.9875}};
  EXPECT_NEAR(end_areas(both), 1178.125, 1e-9);
  EXPECT_NEAR(prismoids(both), 1178.125, 1e-9);  // two alone have no middle
}

// Two-level sections of a surveying textbook (its companion, chapter 10): formation 9 m, sides 2 to 1, ground 6 to 1
// across, depths 2.50, 3.55, 4.90 each 30 m: areas 40.6406, 65.565, 104.9006; 4150.07 and 4078.01 m3.
TEST(Slopes, twoLevelSections) {
  const std::vector<Station> cut{
      {0, two_level(9, 2, 6, 2.50)}, {30, two_level(9, 2, 6, 3.55)}, {60, two_level(9, 2, 6, 4.90)}};
  EXPECT_NEAR(cut[0].area, 40.6406, 5e-5);
  EXPECT_NEAR(cut[2].area, 104.9006, 5e-5);
  EXPECT_NEAR(end_areas(cut), 4150.07, 5e-3);
  EXPECT_NEAR(prismoids(cut), 4078.01, 5e-3);
}

// 29 CFR 1926 subpart P, appendix B: A 3/4 to 1, B 1 to 1, C 1 1/2 to 1; what is none of them stands like the flattest.
TEST(Slopes, howSteepSoilStands) {
  EXPECT_EQ(side_slope("A"), 0.75);
  EXPECT_EQ(side_slope("B"), 1);
  EXPECT_EQ(side_slope("C"), 1.5);
  EXPECT_EQ(side_slope(""), 1.5);
}

// Between plane faces the section grows with the square of the length at most, so the prismoid is the integral, here
// summed the slow way by a thousand thin slices (midpoint rule: off by s (h1 - h0)^2 L / (12 x 1000^2)).
TEST(Slopes, prismoidIsTheIntegralOfATrapezoid) {
  EXPECT_TRUE(rc::check([](int b, int h0, int h1, int s, int l) {
    const auto part = [](int value, double most) { return most * ((value % 1000 + 1000) % 1000) / 1000; };
    const double bottom = part(b, 3), first = part(h0, 4), last = part(h1, 4), slope = part(s, 2), length = part(l, 40);
    const auto at = [&](double share) { return trapezoid(bottom, first + (last - first) * share, slope); };
    double slow = 0;
    for (int i = 0; i < 1000; ++i) slow += at((i + 0.5) / 1000) * length / 1000;
    const double off = slope * (last - first) * (last - first) * length / 12e6;
    RC_ASSERT(std::abs(prismoid(at(0), at(0.5), at(1), length) - slow) <= off + 1e-9);
  }));
}
