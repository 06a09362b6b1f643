// The price of the demo job: options beside the base, what could bite, ways onto the site.
#include <algorithm>
#include <map>

#include "estimate/waste.h"
#include "results/could_bite.h"
#include "results/demo_jobs.h"
#include "results/kept_of.h"
#include "results/options.h"

namespace {

using plan::CostKind;

units::Money money(std::int64_t coins) { return units::Money::of_coins(coins); }

plan::Job offered() {
  plan::Job job = demo::job("pool-terrace-a");
  job.offer.overhead = 0.1;
  job.offer.profit = 0.2;
  job.offer.profit_as = plan::ProfitAs::margin;
  job.offer.tax = 0.06;
  job.offer.taxed = {CostKind::material};
  return job;
}

const results::Results& base() {
  static const results::Results computed = demo::compute(offered());
  return computed;
}

TEST(Money, LinesStepsAndWasteOfTheDemoJobAddUp) {
  units::Money lines, steps;
  std::map<CostKind, units::Money> kinds;
  for (const auto& line : base().estimate.lines) {
    lines += line.amount.value_or(units::Money());
    kinds[line.kind] += line.amount.value_or(units::Money());
  }
  for (const auto& step : base().priced.steps) steps += step.amount;
  EXPECT_EQ(lines, base().priced.direct);
  EXPECT_EQ(lines, base().estimate.total.amount());
  EXPECT_EQ(steps, base().priced.total);
  EXPECT_EQ(kinds, base().priced.by_kind);
  EXPECT_NEAR(base().priced.margin, 0.2, 1e-6);
  for (const CostKind kind : {CostKind::material, CostKind::labour, CostKind::machine, CostKind::trucking})
    EXPECT_GT(kinds[kind].coins(), 0) << static_cast<int>(kind);
  const auto waste = estimate::waste(*base().job, base().takeoff, base().estimate);
  const auto totals = estimate::totals(waste);
  EXPECT_GT(totals.cuts.coins(), 0);
  EXPECT_GT(totals.broken.coins(), 0);
  EXPECT_GT(totals.rounded.coins(), 0);
  for (const auto& one : waste) {
    const auto& line = base().estimate.lines[one.line];
    EXPECT_EQ(one.laid.money + one.cuts.money + one.broken.money + one.spare.money + one.rounded.money, *line.amount)
        << line.item;
  }
}

// Hire is on top of the list of material and hours that was worked out apart from the program: none of its lines has
// the item of a machine.
TEST(Money, HireStandsApart) {
  units::Money hired;
  for (const auto& line : base().estimate.lines) {
    if (line.kind != CostKind::machine) continue;
    EXPECT_FALSE(line.work);
    ASSERT_TRUE(line.amount) << line.item;
    EXPECT_EQ(line.order_quantity * 2, std::round(line.order_quantity * 2)) << line.item;  // half days
    hired += *line.amount;
  }
  EXPECT_EQ(hired, base().priced.by_kind.at(CostKind::machine));
  EXPECT_FALSE(demo::raised(base(), "item-unknown"));
}

TEST(Options, OfNothingCostsNothing) {
  plan::Job job = offered();
  plan::Option same;
  same.id = "o1";
  same.elements = {job.elements.front()};
  job.offer.options = {plan::Option{}, same};
  const auto prices = results::option_prices(demo::compute(std::move(job)));
  ASSERT_EQ(prices.size(), 2U);
  for (const auto& one : prices) {
    EXPECT_EQ(one.direct, units::Money());
    EXPECT_EQ(one.total, units::Money());
    EXPECT_EQ(one.hours, 0);
    EXPECT_TRUE(one.problems.empty());
  }
}

// 1,000.00 of a fee, 10 % overhead, 20 % margin: 1,100 / 0.8 = 1,375.00; the price is worked out from sums to the coin,
// so each of the two is off by less than two coins.
TEST(Options, ALineCostsItsPrice) {
  plan::Job job = offered();
  job.offer.taxed = {CostKind::material,    CostKind::labour,    CostKind::machine, CostKind::trucking,
                     CostKind::subcontract, CostKind::allowance, CostKind::fee};
  job.offer.tax = 0;
  plan::Option option;
  option.id = "o1";
  option.lines = {{"fire", "finish", CostKind::fee, "Fire bowl", 1, "job", money(100000), false, ""}};
  job.offer.options = {option};
  const auto prices = results::option_prices(demo::compute(std::move(job)));
  ASSERT_EQ(prices.size(), 1U);
  EXPECT_EQ(prices[0].direct.coins(), 100000);
  EXPECT_NEAR(static_cast<double>(prices[0].price.coins()), 137500, 2);
  EXPECT_EQ(prices[0].total, prices[0].price);
}

// Version B as an alternate of A: its walk, steps and areas in place of A's. What it costs is what a whole new job of
// these elements costs, less the base.
TEST(Options, AnAlternateCostsWhatItsOwnJobWould) {
  plan::Job job = offered();
  const plan::Job b = demo::job("pool-terrace-b");
  plan::Option option;
  option.id = "wider";
  option.alternate = true;
  for (const char* id : {"W", "S", "K1", "K2"}) option.elements.push_back(std::make_shared<plan::Element>(*b.find(id)));
  option.without = {"D2"};
  job.offer.options = {option};
  plan::Job other = job;
  for (auto& element : other.elements)
    for (const auto& own : option.elements)
      if (element->id == own->id) element = own;
  std::erase_if(other.elements, [](const plan::ElementPtr& element) { return element->id == "D2"; });
  const auto before = demo::compute(job);
  const auto prices = results::option_prices(before);
  const auto after = demo::compute(std::move(other));
  ASSERT_EQ(prices.size(), 1U);
  EXPECT_EQ(prices[0].total, after.priced.total - before.priced.total);
  EXPECT_NE(prices[0].total, units::Money());
  EXPECT_NEAR(prices[0].hours, after.estimate.total.hours - before.estimate.total.hours, 1e-9);
}

TEST(Options, WhatIsNotThereIsNamed) {
  plan::Job job = offered();
  plan::Option option;
  option.id = "o1";
  option.without = {"no-such"};
  job.offer.options = {option};
  const auto prices = results::option_prices(demo::compute(std::move(job)));
  ASSERT_EQ(prices[0].problems.size(), 1U);
  EXPECT_EQ(prices[0].problems[0].code, "option-element");
  EXPECT_FALSE(prices[0].final);
}

TEST(CouldBite, BarsAreSortedAndMakeTheWidth) {
  const auto made = results::could_bite(base());
  EXPECT_EQ(made.total, base().priced.total);
  ASSERT_GE(made.bars.size(), 4U);
  units::Money least = made.total, most = made.total;
  for (std::size_t i = 0; i < made.bars.size(); ++i) {
    const auto& bar = made.bars[i];
    EXPECT_GE(made.bars[i == 0 ? 0 : i - 1].width(), bar.width());
    least += std::min({bar.low, bar.high, units::Money()});
    most += std::max({bar.low, bar.high, units::Money()});
    EXPECT_FALSE(bar.at_low.empty());
    EXPECT_NE(bar.at_low, bar.at_high);
  }
  EXPECT_EQ(least, made.least);
  EXPECT_EQ(most, made.most);
  EXPECT_LT(made.least, made.total);
  EXPECT_GT(made.most, made.total);
}

// One of them by hand: hours x 1.2 is the job with that condition on all stages.
TEST(CouldBite, IsTheJobWithThatEdit) {
  const auto made = results::could_bite(base());
  const auto bar = std::ranges::find(made.bars, "bite-hours", &results::Bite::code);
  ASSERT_NE(bar, made.bars.end());
  plan::Job slow = offered();
  slow.offer.factors = {{"slow", 1.2, "", ""}};
  EXPECT_EQ(bar->high, demo::compute(std::move(slow)).priced.total - base().priced.total);
  EXPECT_EQ(bar->at_high, "at 120 %");
  EXPECT_LT(bar->low, units::Money());
}

// As the job has access for machines, the narrower gate is a tight one.
TEST(CouldBite, ANarrowGateIsTheJobWithTightAccess) {
  const auto made = results::could_bite(base());
  const auto bar = std::ranges::find(made.bars, "bite-gate", &results::Bite::code);
  ASSERT_NE(bar, made.bars.end());
  plan::Job tight = offered();
  tight.choices.access = "tight";
  EXPECT_EQ(bar->high, demo::compute(std::move(tight)).priced.total - base().priced.total);
  EXPECT_EQ(bar->at_high, "access: tight");
  EXPECT_EQ(bar->low, units::Money());
}

TEST(Kept, TheWholeJobSaysAllItsProblems) {
  const auto kept = results::kept_of(base(), "1.2");
  EXPECT_EQ(kept.lines.size(), base().estimate.lines.size());
  EXPECT_EQ(kept.total, base().priced.total);
  EXPECT_EQ(kept.problems.size(), std::min<std::size_t>(1000, base().problems().size()));
  EXPECT_GT(kept.problems.size(), base().estimate.problems.size() + base().priced.problems.size());
  EXPECT_EQ(kept.final, base().final());
}

TEST(Access, HandsTakeLongerThanMachines) {
  const auto all = results::by_access(base());
  ASSERT_EQ(all.size(), 3U);
  EXPECT_EQ(all[0].access, "machine");
  EXPECT_TRUE(all[0].chosen);
  EXPECT_EQ(all[0].total, base().priced.total);
  EXPECT_EQ(all[0].hours, base().estimate.total.hours);
  EXPECT_LT(all[0].hours, all[1].hours);
  EXPECT_LT(all[1].hours, all[2].hours);
  EXPECT_FALSE(all[1].chosen);
}

}  // namespace
