// The pool terrace's earth: what is dug by levels against answers worked out apart, and the balance of all of it.
#include <cmath>

#include "results/demo_jobs.h"

namespace {

constexpr double square_foot = 0.3048 * 0.3048, inch = 0.0254;

class Earth : public testing::TestWithParam<const char*> {
 protected:
  plan::Job job = demo::job(std::string("pool-terrace-") + GetParam());
  double answer(const std::string& element, const std::string& name) const {
    return demo::answer(std::string(1, static_cast<char>(std::toupper(*GetParam()))), element, name);
  }
};

double sum(const results::Results& results, const std::vector<std::string>& names) {
  double all = 0;
  for (const takeoff::Measures& measures : results.takeoff.measures)
    for (const std::string& name : names) all += measures.get(name).value_or(0);
  return all;
}

double lines(const results::Results& results, const std::string& item, takeoff::Stage stage) {
  double all = 0;
  for (const takeoff::Line& line : results.takeoff.lines)
    if (line.item == item && line.stage == stage) all += line.working.amount().value;
  return all;
}

// The answers take neither the pillars nor the old slabs out.
TEST_P(Earth, dugByLevels) {
  for (const char* id : {"P1", "P2", "R1"}) job = plan::without(job, id);
  const results::Results results = demo::compute(job);
  for (const auto& [id, near] : {std::pair("A1", 1e-4), std::pair("A2", 1e-5)}) {
    const double wanted = answer(id, "dig_by_levels_m3");
    EXPECT_NEAR(demo::measure(results, id, "dig_m3"), wanted, near * wanted) << id;
    EXPECT_NEAR(demo::measure(results, id, "fill_m3"), 0, 1e-3) << id;
  }
}

// The old slabs, 4 x 8 ft, 2 in thick and all under the strip, are taken up apart: no earth.
TEST_P(Earth, whatIsTakenUpIsNotDug) {
  const results::Results results = demo::compute(job);
  const double wanted = answer("A2", "dig_by_levels_m3") - 32 * square_foot * 2 * inch;
  EXPECT_NEAR(demo::measure(results, "A2", "dig_m3"), wanted, 1e-5 * wanted);
}

TEST_P(Earth, theRingIsWhatItsStoneFills) {
  const double wanted = answer("P", "surround_stone_m3");
  EXPECT_NEAR(demo::measure(demo::compute(job), "P", "dig_ring_m3"), wanted, 1e-6 * wanted);
}

// Behind the retaining wall, cells of 0.05 ft summed apart from the program: 16.006 cu yd dug behind its face, 11.728
// of earth in the reinforced zone and over the stone, 6.1996 of other fill. In front, 1 ft wide, by hand: before the
// deck 1.35 sq ft x 4.5 ft less 0.6 that the kerb's base took, 5.5 cu ft; along the deck from its formation, on the
// mean 98.93 ft, to 98.4167 ft 0.51 x 25.58 = 13.1; the channel's strip and the end of A2 1.2; the return 1.79 x 3
// + 1.87 x 3
// + 1.98 x 3.17 less 0.75 of base = 16.5; 36.3 in all. 0.57 x 9.17 = 5.2 more is dug there, where the ground lies over
// what it shall be. Filled in front is 36.3 less 1/4 sq ft of base all along. A tenth of the front, the most that the
// means can be wrong, is under 1 % of the whole.
TEST_P(Earth, aroundTheRetainingWall) {
  const results::Results results = demo::compute(job);
  constexpr double cubic_yard = 0.764554857984;
  const double dug = (demo::measure(results, "RW", "dig_base_m3") + demo::measure(results, "RW", "dig_bank_m3"));
  EXPECT_NEAR(dug / cubic_yard, 16.006 + (36.3 + 5.2) / 27, 0.01 * 17.6);
  const double filled = demo::measure(results, "RW", "backfill_m3") / cubic_yard;
  EXPECT_NEAR(filled, 11.728 + 6.1996 + (36.3 - 40.667 / 4) / 27, 0.01 * 18.9);
  // The wall's own trade says the same of its zone and cap: 302 less 68.7, and 99.4 less 16 cu ft at the corner.
  EXPECT_NEAR(demo::measure(results, "RW", "reinforced_fill_m3") / cubic_yard, (302 - 35 - 33.6667) / 27, 0.005);
  EXPECT_NEAR(demo::measure(results, "RW", "soil_cap_m3") / cubic_yard, (401.44 - 302 - 16) / 27, 0.005);
}

// Dug = placed again (fill / 0.9, less than the half that may be) + hauled; the fee goes by the weight of what is
// hauled, the loads by its loose volume of 12 cu yd or by 30,000 lb, whichever are more.
TEST_P(Earth, balances) {
  const results::Results results = demo::compute(job);
  const plan::Soil& soil = job.choices.soil;
  const double dug =
      sum(results, {"dig_m3", "dig_past_edges_m3", "dig_ring_m3", "dig_base_m3", "dig_bank_m3", "trench_m3"});
  const double placed = sum(results, {"fill_m3", "backfill_m3", "trench_fill_m3"}) / soil.compacted;
  ASSERT_LT(placed, dug * soil.reusable);
  const double hauled = dug - placed, weight = hauled * soil.bank_density_kg_m3;
  EXPECT_NEAR(lines(results, "disposal-soil", takeoff::Stage::dig), weight, 1e-6 * weight);
  const double by_volume = std::ceil(hauled * (1 + soil.swell) / 0.764554857984 / 12);
  const double by_weight = std::ceil(weight / 0.45359237 / 30000);
  EXPECT_EQ(lines(results, "truck-tandem", takeoff::Stage::dig), std::max(by_volume, by_weight));
}

INSTANTIATE_TEST_SUITE_P(Versions, Earth, testing::Values("a", "b"));

}  // namespace
