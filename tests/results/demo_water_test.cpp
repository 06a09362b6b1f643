// The demo job's levels, falls, drains and runoff against answers that were worked out apart (demo-answers.csv), and
// what has to be raised when one level or one outlet of it is moved.
#include "results/demo_jobs.h"

namespace {

using units::Length;

class DemoWater : public testing::TestWithParam<const char*> {
 protected:
  std::string version() const { return std::string(GetParam()) == "pool-terrace-a" ? "A" : "B"; }
};

template <class Kind, class Change>
plan::Job changed(const plan::Job& job, const std::string& element, Change change) {
  plan::Element copy = *job.find(element);
  change(std::get<Kind>(copy.kind));
  return plan::with(job, std::move(copy));
}

double ordered(const results::Results& results, const std::string& item) {
  for (const estimate::OrderLine& line : results.estimate.lines)
    if (line.item == item) return line.order_quantity;
  return -1;
}

Length feet(double value) { return Length::nearest(units::Metres(value * units::metres_per_foot)); }

}  // namespace

TEST_P(DemoWater, fallsOfTheFinishedSurfaces) {
  const auto results = demo::compute(demo::job(GetParam()));
  EXPECT_NEAR(demo::measure(results, "A1", "fall_least_pct"), demo::answer(version(), "A1", "fall_least_elsewhere"),
              1e-3);
  EXPECT_NEAR(demo::measure(results, "A1", "fall_greatest_pct"), demo::answer(version(), "A1", "fall_greatest"), 1e-3);
  EXPECT_NEAR(demo::measure(results, "A1", "fall_flat_area_m2"), demo::answer(version(), "A1", "fall_flat_area_m2"),
              0.02 * demo::answer(version(), "A1", "fall_flat_area_m2"));
  EXPECT_NEAR(demo::measure(results, "A2", "fall_least_pct"), demo::answer(version(), "A2", "fall"), 1e-6);
  EXPECT_NEAR(demo::measure(results, "A2", "fall_greatest_pct"), demo::answer(version(), "A2", "fall"), 1e-6);
}

// Levels typed to 0.01 ft stand on the grid within 1/640 mm, hence 1e-5 m.
TEST_P(DemoWater, levelsOfTheDrains) {
  const auto results = demo::compute(demo::job(GetParam()));
  EXPECT_NEAR(demo::measure(results, "D1", "end_level_m"), demo::answer(version(), "D1", "level at the outlet"), 1e-5);
  EXPECT_NEAR(demo::measure(results, "D3", "joint_level_m"), demo::answer(version(), "D3", "level at the wye"), 1e-5);
  EXPECT_FALSE(demo::raised(results, "pipe-uphill"));
  EXPECT_FALSE(demo::raised(results, "outlet-above-pipe"));
  EXPECT_FALSE(demo::raised(results, "falls-to-pool"));
  EXPECT_FALSE(demo::raised(results, "falls-to-house"));
}

TEST_P(DemoWater, whatIsBoughtForThem) {
  const auto results = demo::compute(demo::job(GetParam()));
  EXPECT_EQ(ordered(results, "pipe-smooth-4"), demo::answer(version(), "D1+D3", "solid pipe sticks"));
  EXPECT_EQ(ordered(results, "pipe-smooth-perf-4"), demo::answer(version(), "D2", "perforated pipe sticks"));
  EXPECT_EQ(ordered(results, "channel-48"), demo::answer(version(), "CH", "channel sections"));
}

// 4 in/h x 0.85 x both areas' net ground; the 4 in pipe carries 100.9 gpm at 1 %.
TEST_P(DemoWater, runoffArrivesAtTheChannelAndItsPipe) {
  const auto results = demo::compute(demo::job(GetParam()));
  const double wanted = demo::answer(version(), "A1+A2", "runoff");
  EXPECT_NEAR(demo::measure(results, "A1", "runoff_l_s") + demo::measure(results, "A2", "runoff_l_s"), wanted, 1e-5);
  EXPECT_NEAR(demo::measure(results, "D1", "flow_l_s"), wanted, 1e-5);
  EXPECT_NEAR(demo::measure(results, "D1", "capacity_l_s") * 60 / 3.785411784, 100.9, 0.05);
  EXPECT_FALSE(demo::raised(results, "pipe-small"));
}

INSTANTIATE_TEST_SUITE_P(Jobs, DemoWater, testing::Values("pool-terrace-a", "pool-terrace-b"),
                         [](const auto& job) { return std::string(job.param).ends_with("a") ? "A" : "B"; });

// At y = -60 in the pipe is 98.75 - 1 % of 30.79 ft = 98.44 ft, the ground 99.25 - 5/24 = 99.04 ft.
TEST(DemoWaterMoved, anOutletWhereTheGroundStandsHigher) {
  const auto job = changed<plan::DrainRun>(demo::job("pool-terrace-a"), "D1", [](plan::DrainRun& run) {
    run.line.edges.resize(1);
    run.line.end = {Length::inches(456), Length::inches(-60)};
  });
  EXPECT_TRUE(demo::raised(demo::compute(job), "outlet-above-pipe", "D1"));
}

TEST(DemoWaterMoved, aBranchThatStartsTooLow) {
  const auto job =
      changed<plan::DrainRun>(demo::job("pool-terrace-a"), "D2", [](plan::DrainRun& run) { run.start = feet(98.70); });
  EXPECT_TRUE(demo::raised(demo::compute(job), "pipe-uphill", "D3"));
}

TEST(DemoWaterMoved, aCornerThatLeadsBackToThePool) {
  const auto job = changed<plan::Level>(demo::job("pool-terrace-a"), "L-e6",
                                        [](plan::Level& level) { level.height = feet(100.05); });
  EXPECT_TRUE(demo::raised(demo::compute(job), "falls-to-pool", "A1"));
}
