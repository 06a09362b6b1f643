// What the office adds to the lines of the drawing: kinds of cost, conditions on hours, lines of its own.
#include "estimate/added.h"

#include <algorithm>
#include <cmath>

#include "estimate/estimate_kit.h"
#include "estimate/factors.h"
#include "estimate/kinds.h"

namespace {

using namespace estimate_kit;
using plan::CostKind;
using takeoff::Stage;

units::Money money(std::int64_t coins) { return units::Money::of_coins(coins); }

TEST(Kinds, EveryItemOfTheStarterHasOne) {
  const auto kind = [](const char* id) { return estimate::kind_of(*starter().item(id)); };
  EXPECT_EQ(kind("unit-4x8-60"), CostKind::material);
  EXPECT_EQ(kind("blade-14"), CostKind::material);
  EXPECT_EQ(kind("saw-table-14"), CostKind::machine);
  EXPECT_EQ(kind("plate-rev"), CostKind::machine);
  EXPECT_EQ(kind("truck-tandem"), CostKind::trucking);
  EXPECT_EQ(kind("pallet-deposit"), CostKind::trucking);
  EXPECT_EQ(kind("pallet-credit"), CostKind::trucking);
  EXPECT_EQ(kind("disposal-soil"), CostKind::fee);
  EXPECT_EQ(kind("lab-layer"), CostKind::labour);
  EXPECT_EQ(kind("lab-electrician"), CostKind::subcontract);
  EXPECT_EQ(kind("bond-allow"), CostKind::subcontract);
  catalogue::Item sum = *starter().item("bond-allow");
  sum.supplier = "own-crew";
  EXPECT_EQ(estimate::kind_of(sum), CostKind::allowance);
  sum.details["cost_kind"] = "fee";
  EXPECT_EQ(estimate::kind_of(sum), CostKind::fee);
}

TEST(Kinds, WordsLeadBack) {
  for (const char* word : {"material", "labour", "machine", "trucking", "subcontract", "allowance", "fee"})
    EXPECT_EQ(estimate::word(*estimate::cost_kind(word)), word);
  EXPECT_FALSE(estimate::cost_kind("bribe"));
}

TEST(Kinds, OfLines) {
  const auto made = estimate::estimate(
      starter_job(), takeoff_of({line(Stage::paving, "unit-4x8-60", amount(900, units::piece)),
                                 line(Stage::dig, "truck-tandem", amount(3, units::piece)),
                                 line(Stage::dig, "disposal-soil", amount(9000, units::kilogram))},
                                {{Stage::dig, "dig-open", "dig", {"A1"}, amount(10, units::cubic_metre), 1, {}}}));
  EXPECT_EQ(line_of(made, "unit-4x8-60").kind, CostKind::material);
  EXPECT_EQ(line_of(made, "delivery:unit-yard").kind, CostKind::trucking);
  EXPECT_EQ(line_of(made, "truck-tandem").kind, CostKind::trucking);
  EXPECT_EQ(line_of(made, "disposal-soil").kind, CostKind::fee);
  EXPECT_EQ(line_of(made, "dig-open").kind, CostKind::labour);
  EXPECT_EQ(line_of(made, "excavator-mini").kind, CostKind::machine);
}

takeoff::Task dig(double volume) {
  return {Stage::dig, "dig-hand", "dig", {"A1"}, amount(volume, units::cubic_metre), 1, {}};
}

// 10 m3 by hand: 26.159 h; x 1.2 for a slope and x 1.1 for heat on all stages = 34.52988 h at 36.00: 1243.08.
TEST(Factors, AreTermsOfTheWorking) {
  plan::Job job = starter_job();
  job.offer.factors = {{"slope", 1.2, "dig", ""}, {"heat", 1.1, "", ""}, {"small area", 2, "paving", ""}};
  const auto made = estimate::estimate(job, takeoff_of({}, {dig(10)}));
  const auto& hours = line_of(made, "dig-hand");
  EXPECT_NEAR(hours.order_quantity, 26.159 * 1.2 * 1.1, 1e-9);
  EXPECT_EQ(coins(hours), 124308);
  for (const char* said : {"factor for slope 1.2", "factor for heat 1.1"})
    EXPECT_NE(hours.working.sentence().find(said), std::string::npos) << hours.working.sentence();
  EXPECT_EQ(hours.working.sentence().find("small area"), std::string::npos);
  EXPECT_NE(hours.sentence.find("; x 1.2 for slope; x 1.1 for heat"), std::string::npos) << hours.sentence;
}

TEST(Factors, WhatIsNoneIsNamedAndLeftOut) {
  plan::Job job = starter_job();
  job.offer.factors = {
      {"slope", 0, "dig", ""}, {"heat", -1, "", ""}, {"mud", 1.5, "swimming", ""}, {"dark", std::nan(""), "", ""}};
  const auto made = estimate::estimate(job, takeoff_of({}, {dig(10)}));
  EXPECT_NEAR(line_of(made, "dig-hand").order_quantity, 26.159, 1e-9);
  EXPECT_EQ(std::ranges::count(made.problems, "offer-factor", &problem::Problem::code), 3);
  EXPECT_EQ(std::ranges::count(made.problems, "offer-stage", &problem::Problem::code), 1);
  EXPECT_FALSE(made.final);
}

// 26.159 h / (3 people x 8 h) = 1.09 days, on the calendar 1.5.
TEST(Factors, StagesHaveHoursPeopleAndDays) {
  const auto job = starter_job();
  const auto work = estimate::stage_work(job, estimate::estimate(job, takeoff_of({}, {dig(10)})));
  ASSERT_EQ(work.size(), 1U);
  EXPECT_EQ(work[0].stage, Stage::dig);
  EXPECT_EQ(work[0].people, 3);
  EXPECT_NEAR(work[0].days, 26.159 / 24, 1e-12);
  EXPECT_EQ(work[0].calendar_days, 1.5);
}

TEST(AddedLines, StandInTheirStageWithTheirMoney) {
  plan::Job job = starter_job();
  job.offer.lines = {{"permit", "protect", CostKind::fee, "Permit", 1, "job", money(42000), false, "paid at the desk"},
                     {"cleaning", "finish", CostKind::labour, "Wash down", 2.5, "h", money(3600), false, ""},
                     {"toilet", "protect", CostKind::fee, "Toilet", 1, "job", money(0), true, ""}};
  const auto made = estimate::estimate(job, takeoff_of({}));
  EXPECT_EQ(coins(line_of(made, "added:permit")), 42000);
  EXPECT_EQ(line_of(made, "added:permit").kind, CostKind::fee);
  EXPECT_EQ(line_of(made, "added:permit").sentence, "1 job at 420.00 USD, added by hand; paid at the desk");
  EXPECT_EQ(coins(line_of(made, "added:toilet")), 0);
  EXPECT_EQ(line_of(made, "added:toilet").sentence, "nothing, on purpose");
  EXPECT_EQ(coins(line_of(made, "added:cleaning")), 9000);
  EXPECT_EQ(made.total.hours, 2.5);
  EXPECT_EQ(made.total.amount().coins(), 51000);
  EXPECT_TRUE(made.final);
  for (const auto& one : made.lines) EXPECT_EQ(one.working.amount().value, one.order_quantity);
}

TEST(AddedLines, FaultsAreNamedAndNothingIsLost) {
  plan::Job job = starter_job();
  job.offer.lines = {{"a", "swimming", CostKind::fee, "A", 1, "job", money(100), false, ""},
                     {"b", "dig", CostKind::fee, "B", -1, "job", money(100), false, ""},
                     {"c", "dig", CostKind::fee, "C", std::nan(""), "job", money(100), false, ""},
                     {"d", "dig", CostKind::fee, "D", 1, "job", money(0), false, ""},
                     {"e", "dig", CostKind::fee, "E", 1e300, "job", money(100), false, ""},
                     {"f", "dig", CostKind::fee, "F", 1, "job", money(100), true, ""}};
  const auto made = estimate::estimate(job, takeoff_of({}));
  EXPECT_EQ(made.lines.size(), 6U);
  EXPECT_EQ(line_of(made, "added:a").stage, Stage::finish);
  EXPECT_EQ(coins(line_of(made, "added:a")), 100);
  for (const char* id : {"added:b", "added:c", "added:d", "added:e"}) EXPECT_EQ(coins(line_of(made, id)), -1) << id;
  EXPECT_EQ(coins(line_of(made, "added:f")), 0);
  EXPECT_EQ(std::ranges::count(made.problems, problem::Severity::problem, &problem::Problem::severity), 5);
  EXPECT_EQ(std::ranges::count(made.problems, problem::Severity::flag, &problem::Problem::severity), 1);
  EXPECT_FALSE(made.final);
}

}  // namespace
