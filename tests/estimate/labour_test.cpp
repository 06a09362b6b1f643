#include "estimate/labour.h"

#include "estimate/estimate_kit.h"

namespace {

using namespace estimate_kit;
using takeoff::Stage;

constexpr double square_foot = 0.09290304;  // m2, exact

takeoff::Task task(const std::string& rate, double value, units::Unit unit, double factor = 1,
                   const std::string& condition = {}) {
  return {Stage::paving, rate, rate, {"A1"}, amount(value, unit), factor, condition};
}

plan::Job job_with_rate(const catalogue::Rate& rate) {
  catalogue::Catalogue book = starter();
  book.rates[rate.id] = rate;
  return job_with(std::move(book));
}

catalogue::Rate rate(const std::string& id, const std::string& unit, double hours, const std::string& crew) {
  catalogue::Rate made;
  made.id = id;
  made.name.en = id;
  made.si_unit = unit;
  made.hours_per_si_unit = hours;
  made.crew = crew;
  return made;
}

// US Navy course 14045, with the table of P-405: 160 man-hours per 1000 sq ft of 8x8x16 block; 448 sq ft take 71.68. A
// crew of four at 8 hours: 2.24 days (derived). Priced at 36.00 an hour: 2580.48.
TEST(Labour, NavyBlockWall) {
  plan::Job job = job_with_rate(rate("blocks", "m2", 0.160 / square_foot, "4 lab-labourer"));
  job.choices.day_hours = 8;
  const auto made = estimate::estimate(job, takeoff_of({}, {task("blocks", 448 * square_foot, units::square_metre)}));
  const auto& line = line_of(made, "blocks");
  EXPECT_NEAR(line.order_quantity, 71.68, 1e-9);
  EXPECT_EQ(line.order_unit, "h");
  EXPECT_TRUE(line.work);
  EXPECT_EQ(coins(line), 258048);
  EXPECT_NE(line.sentence.find("2.24 days for a crew of 4 at 8 hours a day"), std::string::npos) << line.sentence;
  EXPECT_NE(line.sentence.find("by 4 Labourer:"), std::string::npos) << line.sentence;
  EXPECT_NEAR(made.total.hours, 71.68, 1e-9);
  EXPECT_EQ(made.total.work.coins(), 258048);
  EXPECT_TRUE(made.final);
}

// An engineer manual: 16,000 sq ft at 33 h per 1000 = 528 h = 66 man-days of 8 h. Three people for 10 h are 3.75
// man-days.
TEST(Labour, CrewDays) {
  EXPECT_DOUBLE_EQ(estimate::crew_days(16 * 33, 1, 8), 66);
  EXPECT_DOUBLE_EQ(estimate::crew_days(3 * 10, 1, 8), 3.75);
  EXPECT_DOUBLE_EQ(estimate::crew_days(448 * 0.16, 1, 8), 8.96);  // one mason: 9 days
  EXPECT_EQ(estimate::crew_days(10, 0, 8), 0);
}

// A labour handbook: trench in soft soil 0.50 labourer and 0.05 foreman days of 8 h for a m3, so 4.4 h; 10 m3 are 40 h
// of the one and 4 h of the other. At 36.00 and 58.00: 1440.00 + 232.00.
TEST(Labour, HoursAreSharedByHeads) {
  const plan::Job job = job_with_rate(rate("trench", "m3", 4.4, "1 lab-labourer + 1/10 lab-foreman"));
  const auto made = estimate::estimate(job, takeoff_of({}, {task("trench", 10, units::cubic_metre)}));
  EXPECT_NEAR(line_of(made, "trench").order_quantity, 44, 1e-12);
  EXPECT_EQ(coins(line_of(made, "trench")), 167200);
}

TEST(Labour, FactorsAreNamedAndTasksOfOneRateStandTogether) {
  const auto made = estimate::estimate(
      starter_job(), takeoff_of({}, {task("border-soldier", 10, units::metre), task("border-soldier", 5, units::metre),
                                     task("border-soldier", 4, units::metre, 1.5, "curves")}));
  const auto& line = line_of(made, "border-soldier");
  // (10 + 5) x 0.32808 + 4 x 0.32808 x 1.5 = 21 x 0.32808 = 6.88968 h.
  EXPECT_NEAR(line.order_quantity, 21 * 0.32808, 1e-12);
  // 1 layer at 47.00 and half a labourer at 36.00: 65.00 / 1.5 an hour; x 6.88968 = 298.5528.
  EXPECT_EQ(coins(line), 29855);
  EXPECT_NE(line.working.sentence().find("factor for curves 1.5"), std::string::npos) << line.working.sentence();
}

// 10 h of one layer and half a labourer: 1.5 heads at 8 h are 12 h a day, 0.83 of a day, whoever else is on the job.
TEST(Labour, DaysAreThoseOfTheRatesOwnCrew) {
  plan::Job job = job_with_rate(rate("border", "m", 1, "1 lab-layer + 1/2 lab-labourer"));
  job.choices.crew = 6;
  const auto made = estimate::estimate(job, takeoff_of({}, {task("border", 10, units::metre)}));
  EXPECT_EQ(line_of(made, "border").sentence,
            "10 hours by 1 Unit layer + 1/2 Labourer: 0.83 days for a crew of 1.5 at 8 hours a day");
  // 47.00 + 18.00 over 1.5 heads: 43.3333 an hour, 433.33 in all.
  EXPECT_NEAR(line_of(made, "border").exact_coins, 6500 / 1.5, 1e-9);
  EXPECT_EQ(coins(line_of(made, "border")), 43333);
}

TEST(Labour, TonnesAreCountedInKilograms) {
  const auto made = estimate::estimate(starter_job(), takeoff_of({}, {task("base-machine", 2500, units::kilogram)}));
  EXPECT_NEAR(line_of(made, "base-machine").order_quantity, 2.5 * 0.44092, 1e-12);
}

TEST(Labour, CrewsAsTheyAreWritten) {
  const auto two = estimate::read_crew("1 lab-layer + 1/2 lab-labourer");
  ASSERT_TRUE(two);
  ASSERT_EQ(two->size(), 2U);
  EXPECT_EQ((*two)[1].heads, 0.5);
  EXPECT_EQ((*two)[1].item, "lab-labourer");
  EXPECT_EQ(estimate::read_crew("2 lab-wall")->front().heads, 2);
  for (const char* wrong : {"", "lab-layer", "1", "0 lab-layer", "-1 lab-layer", "1/0 lab-layer", "1 skilled + helpers",
                            "1 lab-layer +", "1 lab layer", "nan lab-layer"}) {
    const auto made = estimate::read_crew(wrong);
    ASSERT_FALSE(made) << wrong;
    EXPECT_EQ(made.error().code, "crew-unknown");
  }
}

TEST(Labour, EveryStarterRateIsPriced) {
  for (const auto& [id, known] : starter().rates) {
    if (id == "cmu-mortared") continue;  // a cross-check with a crew in words, asked by no trade
    const units::Unit unit = known.si_unit == "m"    ? units::metre
                             : known.si_unit == "m2" ? units::square_metre
                             : known.si_unit == "m3" ? units::cubic_metre
                             : known.si_unit == "t"  ? units::kilogram
                                                     : units::piece;
    const auto made = estimate::estimate(starter_job(), takeoff_of({}, {task(id, 100, unit)}));
    EXPECT_GT(coins(line_of(made, id)), 0) << id;
    EXPECT_TRUE(made.final) << id;
  }
}

TEST(Labour, WhatIsMissingIsNamed) {
  const auto unknown = estimate::estimate(starter_job(), takeoff_of({}, {task("no-such-rate", 1, units::metre)}));
  ASSERT_NE(said(unknown, "rate-unknown"), nullptr);
  EXPECT_FALSE(unknown.final);
  const auto unlike = estimate::estimate(starter_job(), takeoff_of({}, {task("screed", 1, units::metre)}));
  ASSERT_NE(said(unlike, "rate-unit"), nullptr);
  EXPECT_FALSE(unlike.final);
  const auto nobody = estimate::estimate(job_with_rate(rate("odd", "m", 1, "1 lab-nobody")),
                                         takeoff_of({}, {task("odd", 1, units::metre)}));
  ASSERT_NE(said(nobody, "item-unknown"), nullptr);
  EXPECT_FALSE(line_of(nobody, "odd").amount.has_value());
  EXPECT_FALSE(nobody.final);
}

}  // namespace
