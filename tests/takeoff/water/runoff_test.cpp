#include <gtest/gtest.h>

#include "takeoff/ground/yard.h"
#include "takeoff/water/water.h"

using namespace yard;

namespace {

// 20 x 10 ft of paving on open stone, 4 in of rain an hour.
plan::Job wet(const std::string& water_to) {
  plan::Element area = paved("A1", rectangle(0, 0, 240, 120), "open");
  std::get<plan::PavedArea>(area.kind).water_to = water_to;
  plan::DrainRun pipe;
  pipe.what = "pipe";
  pipe.line = {{{at(300, 0), 0, {}}}, at(300, 120), {}};
  plan::SiteMark spout;
  spout.what = "downspout";
  spout.points = {at(400, 0)};
  spout.roof_area_m2 = 50;
  spout.into = "D1";
  plan::Job made = job({std::move(area), {"D1", "", pipe}, {"M1", "", spout}});
  made.choices.rain_mm_h = 101.6;
  return made;
}

std::map<plan::ElementId, takeoff::Share> told(const plan::Job& job) {
  const plan::Site site = plan::site(job);
  return takeoff::water::runoff(job, site, takeoff::ground::bodies(job, site), takeoff::levels::terrain(job, site));
}

std::map<plan::ElementId, double> arrives(const plan::Job& job) {
  const plan::Site site = plan::site(job);
  return takeoff::water::arriving(job, site, takeoff::levels::terrain(job, site));
}

}  // namespace

// 200 sq ft = 18.580608 m2 x 0.85 x 0.1016 m / 3600 s = 0.44572 l/s.
TEST(Runoff, ofPaving) {
  EXPECT_NEAR(told(wet("D1")).at("A1").measures.get("runoff_l_s").value_or(-1), 18.580608 * .85 * .1016 / 3600 * 1000,
              1e-6);
}

// Paving as above, and 50 m2 of roof x 0.9 x 0.1016 / 3600.
TEST(Runoff, arrivesWhereItIsLed) {
  const double roof = 50 * .9 * .1016 / 3600, paving = 18.580608 * .85 * .1016 / 3600;
  EXPECT_NEAR(arrives(wet("D1")).at("D1"), roof + paving, 1e-9);
  EXPECT_NEAR(arrives(wet("")).at("D1"), roof, 1e-9);
}

TEST(Runoff, ledToNothingIsSaid) {
  EXPECT_TRUE(said(told(wet("A1")).at("A1"), "run-into"));
  EXPECT_FALSE(said(told(wet("D1")).at("A1"), "run-into"));
}

TEST(Runoff, withoutRainIsSaidOnlyWhereADrainWaits) {
  plan::Job dry = wet("D1");
  dry.choices.rain_mm_h = 0;
  EXPECT_TRUE(said(told(dry).at("A1"), "no-rain"));
  plan::Job open = wet("");
  open.choices.rain_mm_h = 0;
  EXPECT_FALSE(said(told(open)["A1"], "no-rain"));
  EXPECT_TRUE(arrives(dry).empty());
}

// A spout of 3 ft under 1 in: 3.33 x 3 x (1/12)^1.5 cfs = 107.9 gpm = 6.8052 l/s (weir formula of a city stormwater
// manual).
TEST(Feature, spout) {
  plan::Feature spout;
  spout.spout = plan::Spout{Length::feet(3), Length::inches(1), 0};
  const plan::Job made = job({{"F1", "", spout}});
  const plan::Site site = plan::site(made);
  const takeoff::Share share = takeoff::water::feature(made, *site.find("F1"));
  EXPECT_NEAR(share.measures.get("flow_l_s").value_or(-1), 6.8052, 0.00005);
  EXPECT_TRUE(said(share, "spout-flow"));
  EXPECT_TRUE(said(share, "item-missing"));
  EXPECT_TRUE(share.lines.empty());
}
