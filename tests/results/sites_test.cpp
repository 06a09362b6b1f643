// Four small jobs, each with one fault that has to be found and named at its place; and the same four mended, which
// must be silent about it. The files are tests/data/sites.
#include "results/demo_jobs.h"

namespace {

using units::Length;

plan::Job site(const std::string& name) {
  const std::string path = std::string(HOUSE_ROOT) + "/tests/data/sites/" + name + ".json";
  auto read = files::read_job(demo::text_of(path), path);
  EXPECT_TRUE(read) << name;
  return read ? std::move(*read) : plan::Job{};
}

template <class Kind, class Change>
plan::Job changed(const plan::Job& job, const std::string& element, Change change) {
  plan::Element copy = *job.find(element);
  change(std::get<Kind>(copy.kind));
  return plan::with(job, std::move(copy));
}

const problem::Problem* said(const results::Results& results, const std::string& code) {
  static std::vector<problem::Problem> all;
  all = results.problems();
  for (const problem::Problem& one : all)
    if (one.code == code) return &one;
  return nullptr;
}

}  // namespace

// 30 x 20 ft, 100.4 ft at its south edge, rising 2 % to the house at its north edge.
TEST(Sites, ADeckThatFallsTowardsTheHouse) {
  const plan::Job job = site("deck_falls_to_house");
  const auto results = demo::compute(job);
  const problem::Problem* fault = said(results, "falls-to-house");
  ASSERT_TRUE(fault);
  EXPECT_EQ(fault->severity, problem::Severity::problem);
  EXPECT_EQ(fault->place.element, "A");
  EXPECT_TRUE(fault->place.at);
  const auto mended = changed<plan::PavedArea>(
      job, "A", [](plan::PavedArea& area) { area.finish->direction = units::Angle::degrees(-90); });
  EXPECT_FALSE(said(demo::compute(mended), "falls-to-house"));
}

// Its four corners at 100 ft, its middle 0.3 ft lower: all the water of the deck stands there.
TEST(Sites, ALowPointWithoutAnInlet) {
  const plan::Job job = site("low_point_without_inlet");
  const auto results = demo::compute(job);
  const problem::Problem* fault = said(results, "low-point");
  ASSERT_TRUE(fault);
  EXPECT_EQ(fault->severity, problem::Severity::problem);
  ASSERT_TRUE(fault->place.at);
  EXPECT_NEAR(fault->place.at->x, 15 * 0.3048, 0.01);
  EXPECT_NEAR(fault->place.at->y, 10 * 0.3048, 0.01);
  plan::KeepOut basin;
  basin.what = "inlet";
  const auto corner = [](int x, int y) { return geometry::Edge{{Length::inches(x), Length::inches(y)}, 0, {}}; };
  basin.outline = {{{corner(175, 115), corner(185, 115), corner(185, 125), corner(175, 125)}, {}}};
  EXPECT_FALSE(said(demo::compute(plan::with(job, {"B", "basin", basin})), "low-point"));
}

// A tenth of an inch under its corners is what a hose test lets stand (1/8 in); a quarter is not.
TEST(Sites, APuddleIsToldApartFromALowPoint) {
  const auto middle = [](double thousandths_of_an_inch) {
    return changed<plan::Level>(site("low_point_without_inlet"), "f5", [&](plan::Level& level) {
      level.height = Length::feet(100) - Length::nearest(units::Metres(thousandths_of_an_inch * 25.4e-6));
    });
  };
  EXPECT_TRUE(said(demo::compute(middle(100)), "puddle"));
  EXPECT_FALSE(said(demo::compute(middle(100)), "low-point"));
  EXPECT_TRUE(said(demo::compute(middle(250)), "low-point"));
}

// D2 starts at 98.3 ft and comes down 1 % of 20 ft to 98.10 at its joint with D1, which is 98.5 less 1 % of 20 ft =
// 98.30 there.
TEST(Sites, APipeThatWouldHaveToRunUphill) {
  const plan::Job job = site("pipe_uphill");
  const auto results = demo::compute(job);
  const problem::Problem* fault = said(results, "pipe-uphill");
  ASSERT_TRUE(fault);
  EXPECT_EQ(fault->severity, problem::Severity::problem);
  EXPECT_EQ(fault->place.element, "D2");
  const auto mended = changed<plan::DrainRun>(
      job, "D2", [](plan::DrainRun& run) { run.start = *run.start + Length::inches(3); });  // 98.35 at the joint
  EXPECT_FALSE(said(demo::compute(mended), "pipe-uphill"));
}

// D1 ends at 98.5 less 1 % of 50 ft = 98.00 ft; the ground there is 98 + 10 / 100 x 3 = 98.30 ft.
TEST(Sites, AnOutletAboveItsPipe) {
  const plan::Job job = site("outlet_above_pipe");
  const auto results = demo::compute(job);
  const problem::Problem* fault = said(results, "outlet-above-pipe");
  ASSERT_TRUE(fault);
  EXPECT_EQ(fault->severity, problem::Severity::problem);
  EXPECT_EQ(fault->place.element, "D1");
  const auto mended =
      changed<plan::DrainRun>(job, "D1", [](plan::DrainRun& run) { run.start = Length::feet(99); });  // 98.50
  EXPECT_FALSE(said(demo::compute(mended), "outlet-above-pipe"));
}

// What a run is measured as stands with its element: D1 starts at 98.5 ft and ends 50 ft on, 1 % lower.
TEST(Sites, ARunTellsItsLevels) {
  const auto results = demo::compute(site("outlet_above_pipe"));
  EXPECT_NEAR(demo::measure(results, "D1", "start_level_m"), 98.5 * 0.3048, 1e-5);
  EXPECT_NEAR(demo::measure(results, "D1", "end_level_m"), 98.0 * 0.3048, 1e-5);
}
