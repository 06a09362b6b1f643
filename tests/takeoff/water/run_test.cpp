// Levels of drain runs: joints, outlets, cover, capacity, and what is bought. Levels in decimal feet, as surveyors
// write them.
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cmath>
#include <numbers>

#include "takeoff/water/network.h"
#include "takeoff/water/water.h"

namespace {

using units::Length;
constexpr double ft = units::metres_per_foot;

geometry::Point at(double x_ft, double y_ft) {
  return {Length::nearest(units::Metres(x_ft * ft)), Length::nearest(units::Metres(y_ft * ft))};
}
Length high(double feet) { return Length::nearest(units::Metres(feet * ft)); }

plan::DrainRun pipe(std::vector<geometry::Point> points, std::optional<double> start, double fall = 0.01) {
  plan::DrainRun made;
  made.what = "pipe";
  made.item = "pipe-4";
  made.line.end = points.back();
  points.pop_back();
  for (const geometry::Point point : points) made.line.edges.push_back({point, 0, {}});
  if (start) made.start = high(*start);
  made.fall = fall;
  return made;
}

struct Yard {
  catalogue::Catalogue catalogue;
  plan::Job job;

  Yard() {
    catalogue::Item item;
    item.id = "pipe-4";
    item.kind = "pipe";
    item.unit = "stick";
    item.length = Length::feet(10);
    item.details = {{"nominal_diameter_in", "4"}, {"manning_n", "0.011"}};
    put(item);
    catalogue::Item channel;
    channel.id = "channel-48";
    channel.kind = "channel";
    channel.length = Length::inches(48);
    put(channel);
    for (const char* id : {"bend", "wye", "screen"}) {
      catalogue::Item piece;
      piece.id = id;
      piece.kind = "fitting";
      put(piece);
    }
  }
  void put(const catalogue::Item& item) { catalogue.items[item.id] = std::make_shared<const catalogue::Item>(item); }
  void add(const std::string& id, plan::Kind kind) {
    job.catalogue = std::make_shared<const catalogue::Catalogue>(catalogue);
    job = plan::with(job, {id, "", std::move(kind)});
  }
  // Level ground at `feet`, 400 ft wide.
  void ground(double feet) {
    int n = 0;
    for (const auto& [x, y] : {std::pair{-200, -200}, {200, -200}, {200, 200}, {-200, 200}})
      add("g" + std::to_string(++n), plan::Level{at(x, y), high(feet), "existing", {}});
  }
  std::map<plan::ElementId, takeoff::Share> runs() const {
    const plan::Site site = plan::site(job);
    return takeoff::water::runs(job, site, takeoff::levels::terrain(job, site));
  }
};

bool said(const takeoff::Share& share, const std::string& code) {
  for (const problem::Problem& one : share.problems)
    if (one.code == code) return true;
  return false;
}

double measured(const takeoff::Share& share, const std::string& name) {
  const auto value = share.measures.get(name);
  EXPECT_TRUE(value) << name;
  return value.value_or(NAN);
}

double bought(const takeoff::Share& share, const std::string& item) {
  double sum = 0;
  for (const takeoff::Line& line : share.lines)
    if (line.item == item) sum += line.working.amount().value;
  return sum;
}

}  // namespace

// D2 comes down 1 % of 30.5 ft from 98.80 ft, D3 goes on from there to the wye 4 ft aside and 4 ft down: 98.80 - 0.01 x
// (30.5 + sqrt 32) = 98.43843 ft, above D1, which is 98.75 - 0.01 x 35.2917 = 98.39708 ft there.
TEST(DrainRuns, ABranchStartsWhereTheRunBeforeItEndsAndComesInAboveTheMain) {
  Yard yard;
  yard.ground(99.5);
  yard.add("D1", pipe({at(38, 25.791666667), at(38, -9.5), at(38, -30)}, 98.75));
  plan::DrainRun second = pipe({at(42, 25), at(42, -5.5)}, 98.80);
  second.into = "D3";
  yard.add("D2", second);
  plan::DrainRun third = pipe({at(42, -5.5), at(38, -9.5)}, {});
  third.into = "D1";
  third.joiner = "wye";
  yard.add("D3", third);
  auto runs = yard.runs();
  EXPECT_NEAR(measured(runs["D3"], "joint_level_m") / ft, 98.43843, 1e-5);
  EXPECT_NEAR(takeoff::water::invert(yard.job, std::get<plan::DrainRun>(yard.job.find("D1")->kind), 35.291666667 * ft)
                      .value_or(0) /
                  ft,
              98.39708, 1e-5);
  EXPECT_FALSE(said(runs["D3"], "pipe-uphill"));
  EXPECT_EQ(bought(runs["D3"], "wye"), 1);
  // Started 0.10 ft lower it comes to 98.338 ft, below the main.
  second.start = high(98.70);
  yard.add("D2", second);
  EXPECT_TRUE(said(yard.runs()["D3"], "pipe-uphill"));
}

TEST(DrainRuns, AnOutletNeedsGroundThatLiesLower) {
  Yard yard;
  yard.ground(98.3);
  yard.add("D", pipe({at(0, 0), at(50, 0)}, 98.75));  // ends at 98.25
  EXPECT_TRUE(said(yard.runs()["D"], "outlet-above-pipe"));
  yard.add("D", pipe({at(0, 0), at(50, 0)}, 98.85));  // at 98.35
  EXPECT_FALSE(said(yard.runs()["D"], "outlet-above-pipe"));
  plan::DrainRun typed = pipe({at(0, 0), at(50, 0)}, 98.85);
  typed.outlet_ground = high(98.35);
  yard.add("D", typed);
  EXPECT_TRUE(said(yard.runs()["D"], "outlet-above-pipe"));
}

TEST(DrainRuns, APipeNeedsALevelAndFall) {
  Yard yard;
  yard.ground(100);
  yard.add("none", pipe({at(0, 0), at(20, 0)}, {}));
  yard.add("flat", pipe({at(0, 5), at(20, 5)}, 98, 0));
  yard.add("little", pipe({at(0, 10), at(20, 10)}, 98, 0.004));
  plan::DrainRun rises = pipe({at(0, 15), at(20, 15)}, {});
  rises.inverts = {{Length(), high(98)}, {Length::feet(10), high(97.5)}, {Length::feet(20), high(97.6)}};
  yard.add("rises", rises);
  plan::DrainRun mixed = pipe({at(0, 20), at(20, 20)}, {});
  mixed.inverts = {{Length::feet(10), high(97.5)}, {Length(), high(98)}};
  yard.add("mixed", mixed);
  auto runs = yard.runs();
  EXPECT_TRUE(said(runs["none"], "drain-level"));
  EXPECT_TRUE(said(runs["flat"], "pipe-uphill"));
  EXPECT_TRUE(said(runs["little"], "pipe-fall"));
  EXPECT_FALSE(said(runs["little"], "pipe-uphill"));
  EXPECT_TRUE(said(runs["rises"], "pipe-uphill"));
  EXPECT_TRUE(said(runs["mixed"], "drain-inverts"));
}

TEST(DrainRuns, ARingOfRunsIsSaidAndOpened) {
  Yard yard;
  yard.ground(100);
  plan::DrainRun one = pipe({at(0, 0), at(20, 0)}, 98), two = pipe({at(20, 0), at(0, 0)}, 97);
  one.into = "two";
  two.into = "one";
  yard.add("one", one);
  yard.add("two", two);
  auto runs = yard.runs();
  EXPECT_TRUE(said(runs["one"], "run-cycle") || said(runs["two"], "run-cycle"));
  plan::DrainRun lost = pipe({at(0, 9), at(20, 9)}, 98);
  lost.into = "nobody";
  yard.add("lost", lost);
  EXPECT_TRUE(said(yard.runs()["lost"], "run-into"));
  plan::DrainRun short_of_it = pipe({at(0, 12), at(20, 12)}, 99);
  short_of_it.into = "lost";
  yard.add("short", short_of_it);  // ends 3 ft beside it
  EXPECT_TRUE(said(yard.runs()["short"], "run-not-joined"));
}

// Ground at 100 ft, pipe of 4 in starting at 99.5: 99.5 + 0.3333 leaves 0.1667 ft = 2 in of cover at the start, and 1 %
// of 50 ft more at the end of a run that joins another.
TEST(DrainRuns, CoverIsLookedAtAlongTheWholeRun) {
  Yard yard;
  yard.ground(100);
  plan::DrainRun run = pipe({at(0, 0), at(50, 0)}, 99.5);
  run.into = "main";
  yard.add("D", run);
  yard.add("main", pipe({at(50, 0), at(90, 0)}, 98));
  auto runs = yard.runs();
  EXPECT_NEAR(measured(runs["D"], "cover_least_m"), 2 * units::metres_per_inch, 1e-6);
  EXPECT_TRUE(said(runs["D"], "pipe-cover"));
  run.start = high(99.8);  // its top stands 1.6 in out of the ground
  yard.add("D", run);
  EXPECT_TRUE(said(yard.runs()["D"], "pipe-in-the-air"));
}

// A full 4 in pipe of n 0.011 at 1 % carries 100.9 gpm (Manning, derived); 50 m2 of roof at 400 mm/h and C 0.9 bring
// 5 l/s = 79.3 gpm, twice that more than it carries.
TEST(DrainRuns, WhatArrivesIsHeldAgainstWhatItCarries) {
  Yard yard;
  yard.ground(100);
  yard.job.choices.rain_mm_h = 400;
  yard.add("D", pipe({at(0, 0), at(50, 0)}, 98));
  plan::SiteMark spout;
  spout.what = "downspout";
  spout.points = {at(0, 0)};
  spout.roof_area_m2 = 50;
  spout.into = "D";
  yard.add("R", spout);
  auto runs = yard.runs();
  EXPECT_NEAR(measured(runs["D"], "capacity_l_s") * 60 / 3.785411784, 100.9, 0.05);
  EXPECT_NEAR(measured(runs["D"], "flow_l_s"), 0.9 * 400 / 3600 * 50, 1e-9);
  EXPECT_FALSE(said(runs["D"], "pipe-small"));
  yard.add("R2", spout);
  EXPECT_TRUE(said(yard.runs()["D"], "pipe-small"));
}

TEST(DrainRuns, WhatIsBought) {
  Yard yard;
  yard.ground(100);
  plan::DrainRun run = pipe({at(0, 0), at(30, 0), at(30, 20)}, 98);
  run.bend = "bend";
  run.outlet_item = "screen";
  yard.add("D", run);
  plan::DrainRun channel = pipe({at(0, 10), at(21, 10)}, {});
  channel.what = "channel";
  channel.item = "channel-48";
  yard.add("C", channel);
  auto runs = yard.runs();
  EXPECT_NEAR(bought(runs["D"], "pipe-4"), 50 * ft, 1e-9);
  EXPECT_EQ(bought(runs["D"], "bend"), 1);
  EXPECT_EQ(bought(runs["D"], "screen"), 1);
  EXPECT_EQ(bought(runs["C"], "channel-48"), 6);  // 21 / 4 = 5.25
  EXPECT_FALSE(said(runs["C"], "drain-level"));
}

// The invert falls from wherever it starts, and the nearest station to a place on the line is that place's.
TEST(DrainRuns, StationsAndLevelsBelongTogether) {
  EXPECT_TRUE(rc::check([] {
    const int n = *rc::gen::inRange(2, 6);
    std::vector<geometry::Point> points{at(0, 0)};
    double x = 0;
    for (int i = 1; i < n; ++i) {
      x += *rc::gen::inRange(1, 40);
      points.push_back(at(x, *rc::gen::inRange(-20, 20)));
    }
    Yard yard;
    yard.add("D", pipe(points, 100, *rc::gen::inRange(1, 50) / 1000.0));
    const auto network = takeoff::water::network(yard.job);
    const auto& run = network.runs.at("D");
    for (int i = 0; i <= 20; ++i) {
      const double station = run.length * i / 20;
      const auto back = takeoff::water::nearest_on(run.path, takeoff::water::place_at(run.path, station));
      RC_ASSERT(std::abs(back.station - station) < 1e-5);
      RC_ASSERT(back.distance < 1e-5);
      RC_ASSERT(std::abs(run.level->before(station) - (100 * ft - run.run->fall * station)) < 1e-5);
    }
  }));
}
