// Hire of the machines that the work runs.
#include "estimate/machines.h"

#include <rapidcheck.h>

#include <cmath>

#include "estimate/estimate_kit.h"

namespace {

using namespace estimate_kit;
using takeoff::Stage;

takeoff::Task task(Stage stage, const std::string& rate, double value, units::Unit unit) {
  return {stage, rate, rate, {"A1"}, amount(value, unit), 1, {}};
}

estimate::Estimate of(std::vector<takeoff::Task> tasks, const plan::Job& job = starter_job()) {
  return estimate::estimate(job, takeoff_of({}, std::move(tasks)));
}

plan::Job job_where(const std::string& item, const std::function<void(catalogue::Item&)>& change) {
  catalogue::Catalogue book = starter();
  catalogue::Item changed = *book.item(item);
  change(changed);
  book.items[item] = std::make_shared<const catalogue::Item>(changed);
  return job_with(std::move(book));
}

// 100 m3 x 0.19619 = 19.619 person-hours by 1.5 people: the machine runs 13.079 h = 3.27 halves of an 8 h day, so 2
// days at 345.00.
TEST(Machines, RunWhileTheirCrewIsAtIt) {
  const auto made = of({task(Stage::dig, "dig-open", 100, units::cubic_metre)});
  const auto& line = line_of(made, "excavator-mini");
  EXPECT_NEAR(line.quantity, 19.619 / 1.5, 1e-9);
  EXPECT_EQ(line.unit, "h");
  EXPECT_EQ(line.order_quantity, 2);
  EXPECT_EQ(line.order_unit, "day");
  EXPECT_EQ(coins(line), 69000);
  EXPECT_EQ(line.kind, plan::CostKind::machine);
  EXPECT_FALSE(line.work);
  EXPECT_EQ(line.working.amount().value, line.order_quantity);
  EXPECT_NE(line.working.sentence().find("people at it 1.5"), std::string::npos) << line.working.sentence();
  EXPECT_EQ(made.problems.size(), 0U);
}

// Two rates of one stage share a machine, another stage hires it anew. (10 x 0.19619 / 1.5 + 10 x 0.36623 / 2) h = 3.14
// h are half a day; 1 m3 of trench, 0.26 h, is another half.
TEST(Machines, AStageIsAVisit) {
  const auto made =
      of({task(Stage::dig, "dig-open", 10, units::cubic_metre), task(Stage::dig, "dig-tight", 10, units::cubic_metre),
          task(Stage::under_ground, "trench-machine", 1, units::cubic_metre)});
  double days = 0;
  int lines = 0;
  for (const auto& line : made.lines) {
    if (line.item != "excavator-mini") continue;
    ++lines;
    days += line.order_quantity;
  }
  EXPECT_EQ(lines, 2);
  EXPECT_EQ(days, 1);
}

// Conditions lengthen the hours, and with them the hire: 13.079 h x 1.6 = 20.93 h = 5.2 halves, so 3 days.
TEST(Machines, ConditionsLengthenTheHire) {
  plan::Job job = starter_job();
  job.offer.factors = {{"wet clay", 1.6, "dig", ""}};
  EXPECT_EQ(line_of(of({task(Stage::dig, "dig-open", 100, units::cubic_metre)}, job), "excavator-mini").order_quantity,
            3);
}

TEST(Machines, TheLeastHireStands) {
  const auto job = job_where("excavator-mini", [](catalogue::Item& item) { item.details["least_hire_days"] = "1"; });
  const auto& line = line_of(of({task(Stage::dig, "dig-open", 1, units::cubic_metre)}, job), "excavator-mini");
  EXPECT_EQ(line.order_quantity, 1);
  EXPECT_NE(line.working.sentence().find("least hire"), std::string::npos);
}

// By the hour: 13.079 h are 14 at 50.00.
TEST(Machines, ByTheHour) {
  const auto job = job_where("excavator-mini", [](catalogue::Item& item) {
    item.unit = "hour";
    item.price = catalogue::Price{units::Money::of_coins(5000), "hour", "", false};
  });
  const auto& line = line_of(of({task(Stage::dig, "dig-open", 100, units::cubic_metre)}, job), "excavator-mini");
  EXPECT_EQ(line.order_quantity, 14);
  EXPECT_EQ(coins(line), 70000);
}

TEST(Machines, WhatIsMissingIsNamedAndTheRestStands) {
  catalogue::Catalogue book = starter();
  book.items.erase("excavator-mini");
  const auto unknown = of({task(Stage::dig, "dig-open", 100, units::cubic_metre)}, job_with(std::move(book)));
  ASSERT_NE(said(unknown, "item-unknown"), nullptr);
  EXPECT_FALSE(unknown.final);
  EXPECT_GT(coins(line_of(unknown, "dig-open")), 0);
  const auto by_load = of({task(Stage::dig, "dig-open", 100, units::cubic_metre)},
                          job_where("excavator-mini", [](catalogue::Item& item) { item.unit = "load"; }));
  ASSERT_NE(said(by_load, "no-price"), nullptr);
  EXPECT_FALSE(by_load.final);
  const auto own = of({task(Stage::dig, "dig-open", 100, units::cubic_metre)},
                      job_where("excavator-mini", [](catalogue::Item& item) {
                        item.price = catalogue::Price{units::Money(), "day", "", true};
                      }));
  EXPECT_TRUE(line_of(own, "excavator-mini").by_others);
  EXPECT_EQ(coins(line_of(own, "excavator-mini")), 0);
  EXPECT_TRUE(own.final);
}

// The slow way: halves of a day are tried from one up until they hold the hours.
TEST(Machines, HalvesOfADayAreTheFewestThatHoldTheHours) {
  EXPECT_TRUE(rc::check("hire", [] {
    plan::Job job = starter_job();
    job.choices.day_hours = *rc::gen::inRange(4, 13);
    const double volume = *rc::gen::inRange(1, 100000) / 16.0;
    const auto made = of({task(Stage::dig, "dig-tight", volume, units::cubic_metre)}, job);
    const double hours = volume * 0.36623 / 2;
    int halves = 1;
    while (halves * job.choices.day_hours / 2 < hours - 1e-9) ++halves;
    RC_ASSERT(line_of(made, "excavator-mini").order_quantity == halves / 2.0);
    RC_ASSERT(coins(line_of(made, "excavator-mini")) == halves * 34500 / 2);
  }));
}

}  // namespace
