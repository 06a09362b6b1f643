// The walls, steps and pillars of the pool terrace against answers that were worked apart from the program
// (demo-answers.csv, column `method`); where another rule holds, the arithmetic stands here.
#include <algorithm>

#include "results/demo_jobs.h"

namespace {

const results::Results& terrace() {
  static const results::Results made = demo::compute(demo::job("pool-terrace-a"));
  return made;
}

void same(const std::string& element, const std::string& measure, const std::string& answer, double tolerance) {
  EXPECT_NEAR(demo::measure(terrace(), element, measure), demo::answer("A", element, answer), tolerance)
      << element << " " << measure;
}

double quantity(const std::string& element, const std::string& item) {
  double sum = 0;
  for (const takeoff::Line& line : terrace().takeoff.lines)
    if (line.item == item && std::ranges::find(line.of, element) != line.of.end()) sum += line.working.amount().value;
  return sum;
}

}  // namespace

TEST(DemoWall, coursesAndUnitsAreThoseOfTheAnswers) {
  for (const char* measure :
       {"face_length_m", "courses", "face_area_m2", "units_whole", "corner_units", "units_cut", "units_for_cut_pieces"})
    same("RW", measure, measure, 1e-6);
  for (int course = 1; course <= 7; ++course)
    same("RW", "course_length_m:" + std::to_string(course), "course " + std::to_string(course) + " length_m", 1e-6);
  // A cross-check only: face area over the face of a unit, 8 x 18 in.
  same("RW", "units_by_area", "units_by_area", 1e-5);
}

TEST(DemoWall, theCutPiecesAreThoseOfTheAnswers) {
  // demo-answers.csv, units_cut: 6.5, 6.75, 7.5, 8, 8.25, 11.25, 13.5, 15, 16.25, 16.5, 17.25, 17.75 in.
  const std::vector<double> wanted{6.5, 6.75, 7.5, 8, 8.25, 11.25, 13.5, 15, 16.25, 16.5, 17.25, 17.75};
  std::vector<double> found;
  for (const takeoff::Cut& cut : terrace().takeoff.cuts)
    if (cut.of == "RW" && cut.item == "wb-8x18")
      for (int i = 0; i < cut.count; ++i) found.push_back(cut.kept / 0.0254);
  std::ranges::sort(found);
  ASSERT_EQ(found.size(), wanted.size());
  for (std::size_t i = 0; i < found.size(); ++i) EXPECT_NEAR(found[i], wanted[i], 1e-6) << i;
}

TEST(DemoWall, stoneIsThatOfTheAnswers) {
  same("RW", "leveling_base_m3", "leveling_base_m3", 1e-6);
  same("RW", "drainage_stone_m3", "drainage_stone_m3", 1e-6);
  // The answer fills 40 % of the whole face, corner units taken as others. By the voids of the units as laid: 118 whole
  // and 144.5 in of cut pieces of 18 x 12 x 8 in at 0.40, 6 corner units of 18 x 9 x 8 in at 0.10.
  const double cubic_inch = 0.0254 * 0.0254 * 0.0254;
  const double voids = (118 + 144.5 / 18) * 0.40 * 18 * 12 * 8 + 6 * 0.10 * 18 * 9 * 8;
  EXPECT_NEAR(demo::measure(terrace(), "RW", "core_fill_m3"), voids * cubic_inch, 1e-6);
  EXPECT_GT(demo::answer("A", "RW", "core_fill_m3"), voids * cubic_inch * 1.02);  // so the two rules do differ
}

TEST(DemoWall, reinforcementIsThatOfTheAnswers) {
  same("RW", "grid_strips", "grid_strips", 0);
  same("RW", "grid_roll_length_m", "grid_roll_length_m", 1e-6);
  same("RW", "grid_design_area_m2", "grid_design_area_m2", 1e-6);
}

TEST(DemoWall, capsAreThoseOfTheAnswers) {
  same("RW", "cap_length_m", "cap_length_m", 1e-6);
  same("RW", "caps", "caps", 0);
  same("RW", "adhesive_tubes", "adhesive_28oz_tubes", 0);
}

TEST(DemoWall, theHeightFlagIsUp) {
  same("RW", "height_from_base_m", "height_from_base_m", 1e-4);  // 4.5 ft, over 4 ft
  EXPECT_TRUE(demo::raised(terrace(), "wall-height-limit", "RW"));
}

TEST(DemoSeatWall, unitsAndCapsAreThoseOfTheAnswers) {
  for (const char* measure : {"face_length_m", "units", "curve_caps", "straight_caps"})
    same("SW", measure, measure, 1e-6);
  EXPECT_EQ(quantity("SW", "sw-6x12"), 12);        // demo-order.csv: straight part less one end block a course
  EXPECT_EQ(quantity("SW", "sw-6x12-taper"), 40);  // curve less one end block a course
  EXPECT_EQ(quantity("SW", "sw-6x12-end"), 8);
}

TEST(DemoPillars, blocksAreThoseOfTheAnswers) {
  EXPECT_EQ(demo::measure(terrace(), "P1", "pillar_blocks") + demo::measure(terrace(), "P2", "pillar_blocks"),
            demo::answer("A", "P1+P2", "pillar_blocks"));
}

TEST(DemoSteps, risersUnitsAndBaseAreThoseOfTheAnswers) {
  same("S", "risers", "risers", 0);
  same("S", "step_units", "step_units", 0);
  same("S", "step_base_m3", "base_dense_m3", 1e-6);
}

// At deck level the face stands in course 3, so twice 3/4 in behind the line as drawn (the demo's own description): the
// gap is 1 1/2 in wide, as deep as the joints, 2 3/8 less 1/8 in, along 7.7978 m of A1 and 0.3048 m of A2.
TEST(DemoWall, theGapInFrontOfItsFaceGrowsWithTheSetback) {
  const double wide = 1.5 * 0.0254, deep = 2.25 * 0.0254;
  EXPECT_NEAR(demo::measure(terrace(), "A1", "gap_fill_m3"), 7.7978 * wide * deep, 1e-9);
  EXPECT_NEAR(demo::measure(terrace(), "A2", "gap_fill_m3"), 0.3048 * wide * deep, 1e-9);
  EXPECT_FALSE(demo::raised(terrace(), "wall-gap"));
}
