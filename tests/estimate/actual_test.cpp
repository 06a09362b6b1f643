// Estimate against what was really used: worked numbers, and sums that add up to the coin whatever was entered.
#include "estimate/actual.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <algorithm>

#include "ledger_kit.h"

namespace {

using namespace ledger_kit;
using estimate::Actual;

Actual of(std::vector<Entry> entries) { return estimate::actual(job(), kept(), numbered(std::move(entries))); }

const estimate::LineActual& stone_of(const Actual& made) { return made.lines.at(0); }
const estimate::StageActual& base_of(const Actual& made) { return made.stages.at(0); }

bool said(const Actual& made, const char* code) {
  return std::ranges::any_of(made.problems, [&](const problem::Problem& one) { return one.code == code; });
}

TEST(Actual, NothingEnteredIsTheEstimateStillToCome) {
  const Actual made = of({});
  ASSERT_EQ(made.lines.size(), 2U) << "work by the hour stands in the stages";
  ASSERT_EQ(made.stages.size(), 2U);
  EXPECT_EQ(made.total.estimate().coins(), 542'000);
  EXPECT_EQ(made.total.spent().coins(), 0);
  EXPECT_EQ(made.total.finish_at_estimate->coins(), 542'000);
  EXPECT_EQ(made.total.finish_at_own->coins(), 542'000);
  EXPECT_TRUE(made.problems.empty());
  EXPECT_EQ(stone_of(made).state, Act::planned);
  EXPECT_NEAR(stone_of(made).needed.value(), 10, 1e-12) << "9071.8474 kg / 907.18474 kg a short ton";
}

TEST(Actual, ALineByItsDeliveriesAndItsUse) {
  const Actual made = of({entry(Act::ordered, stone, 12, "ton"), entry(Act::confirmed, stone, 12, "ton", 3100),
                          entry(Act::delivered, stone, 6, "ton"), entry(Act::delivered, stone, 5, "ton", 3050),
                          entry(Act::used, stone, 10, "ton")});
  const auto& line = stone_of(made);
  EXPECT_EQ(line.state, Act::used);
  EXPECT_EQ(line.ordered, 12);
  EXPECT_EQ(line.delivered, 11);
  EXPECT_EQ(line.coming(), 1);
  EXPECT_EQ(line.left(), 1);
  // 6 x 31.00 as confirmed + 5 x 30.50 as billed = 186.00 + 152.50
  EXPECT_EQ(line.delivered_money.coins(), 33'850);
  // 338.50 x 10/11 = 307.727...
  EXPECT_EQ(line.used_money.coins(), 30'773);
  EXPECT_EQ(line.left_money().coins(), 33'850 - 30'773);
  EXPECT_EQ(line.difference().coins(), 33'850 - 30'000);
}

TEST(Actual, WithoutAPriceADeliveryCountsInProportionToTheEstimate) {
  // 300.00 x 10/10 and 300.00 x 3/10
  EXPECT_EQ(stone_of(of({entry(Act::delivered, stone, 10, "ton")})).delivered_money.coins(), 30'000);
  EXPECT_EQ(stone_of(of({entry(Act::delivered, stone, 3, "ton")})).delivered_money.coins(), 9'000);
  // Use out of the yard's own stock costs as a delivery does, and nothing of it is left.
  const auto own = stone_of(of({entry(Act::used, stone, 3, "ton")}));
  EXPECT_EQ(own.spent.coins(), 9'000);
  EXPECT_EQ(own.left(), 0);
  EXPECT_EQ(own.left_money().coins(), 0);
}

TEST(Actual, WhatGoesBackIsCredited) {
  // 8 delivered at 30.00 = 240.00; 2 back in proportion = 60.00; 1 back at a credit of 25.00.
  const auto back = stone_of(of({entry(Act::ordered, stone, 10, "ton"), entry(Act::delivered, stone, 8, "ton", 3000),
                                 entry(Act::returned, stone, 2, "ton"), entry(Act::returned, stone, 1, "ton", 2500)}));
  EXPECT_EQ(back.returned_money.coins(), 6'000 + 2'500);
  EXPECT_EQ(back.spent.coins(), 24'000 - 8'500);
  EXPECT_EQ(back.left(), 5);
  EXPECT_EQ(back.coming(), 2);
  // Returned before it came: taken off the order, and nothing is credited.
  const auto off = stone_of(of({entry(Act::ordered, stone, 10, "ton"), entry(Act::returned, stone, 4, "ton")}));
  EXPECT_EQ(off.ordered, 10) << "the order stands";
  EXPECT_EQ(off.cancelled, 4);
  EXPECT_EQ(off.coming(), 6);
  EXPECT_EQ(off.spent.coins(), 0);
}

TEST(Actual, CostToFinishByMeasureAtBothRates) {
  const Actual made = of({entry(Act::delivered, stone, 6, "ton", 3100), entry(Act::delivered, stone, 5, "ton", 3050),
                          entry(Act::used, stone, 10, "ton"), hours("base", 10),
                          measured("base", 40, 200, "", "2026-11-20"), measured("base", 100, 200)});
  const auto& base = base_of(made);
  EXPECT_EQ(base.hours, 10);
  EXPECT_EQ(base.spent_work.coins(), 40'000);  // 320.00 x 10/8
  ASSERT_TRUE(base.done);
  EXPECT_EQ(*base.done, 0.5) << "the newest measure, 100 of 200 sq ft";
  ASSERT_EQ(base.measures.size(), 1U);
  EXPECT_EQ(base.measures[0].estimate_rate(), 8.0 / 200);
  EXPECT_EQ(base.measures[0].own_rate().value(), 10.0 / 100);
  // Estimate's rate: work 320.00 / 2 = 160.00; stone 300.00 / 2 less 338.50 - 307.73 = 30.77 on the site: 119.23.
  EXPECT_EQ(base.finish_at_estimate->coins(), 16'000 + 11'923);
  // Own rate: work 400.00 x 0.5/0.5; stone 307.73 x 0.5/0.5 less 30.77 on the site = 276.96.
  EXPECT_EQ(base.finish_at_own->coins(), 40'000 + 27'696);
  // The paving has not begun: 2,700.00 + 1,600.00 + 500.00.
  EXPECT_EQ(made.stages[1].finish_at_own->coins(), 480'000);
  EXPECT_EQ(made.total.finish_at_estimate->coins(), 27'923 + 480'000);
}

TEST(Actual, AMeasureEnteredLateForAnEarlierDayDoesNotTakeTheNewestOnesPlace) {
  const Actual made = of({measured("base", 100, 200, "", "2026-11-28"), measured("base", 40, 200, "", "2026-11-20")});
  EXPECT_EQ(base_of(made).done, 0.5);
}

TEST(Actual, WorkOfAStageIsWeighedByItsHours) {
  // Laying 40 h, half done; cutting 10 h, a tenth done: (20 + 1) / 50 = 0.42. Paving units: no use entered.
  const Actual made = of({measured("paving", 50, 100, "lay"), measured("paving", 6, 60, "cut"),
                          hours("paving", 24, "lay"), hours("paving", 3)});
  const auto& paving = made.stages.at(1);
  EXPECT_NEAR(paving.done.value(), 0.42, 1e-12);
  ASSERT_EQ(paving.measures.size(), 2U);
  EXPECT_EQ(paving.measures[0].own_rate().value(), 24.0 / 50) << "its own hours";
  EXPECT_FALSE(paving.measures[1].own_rate()) << "3 h were entered for the stage, nobody knows for what";
  // 27 h of 50 h for 2,100.00: 1,134.00. Left at the estimate's rate 0.58 x 2,100.00, at the own 1,134.00 x 0.58/0.42.
  EXPECT_EQ(paving.spent_work.coins(), 113'400);
  EXPECT_EQ(paving.finish_at_estimate->coins(), 121'800 + 156'600);  // units: 0.58 x 2,700.00
  EXPECT_EQ(paving.finish_at_own->coins(), 156'600 + 156'600);
}

TEST(Actual, WhatNobodyMeasuredHasNoCostToFinishAndSaysSo) {
  const Actual made = of({hours("base", 3)});
  EXPECT_FALSE(base_of(made).done);
  EXPECT_FALSE(base_of(made).finish_at_own);
  EXPECT_EQ(made.unmeasured, std::vector<std::string>{"base"});
  EXPECT_TRUE(said(made, "actual-not-measured"));
  EXPECT_EQ(made.total.finish_at_estimate->coins(), 480'000) << "of the paving alone";
}

TEST(Actual, TellsWhatIsOdd) {
  EXPECT_TRUE(
      said(of({entry(Act::delivered, stone, 2, "ton"), entry(Act::used, stone, 3, "ton")}), "actual-more-used"));
  EXPECT_TRUE(said(of({measured("base", 201, 200)}), "actual-more-done"));
  EXPECT_EQ(base_of(of({measured("base", 201, 200)})).finish_at_estimate->coins(), 0);
  EXPECT_TRUE(said(of({hours("finish", 2)}), "actual-no-price"));
  auto no_price = kept();
  no_price.lines[0].amount.reset();
  const auto made = estimate::actual(job(), no_price, numbered({entry(Act::delivered, stone, 2, "ton")}));
  EXPECT_TRUE(said(made, "actual-no-price"));
  EXPECT_EQ(made.lines[0].spent.coins(), 0);
}

TEST(Actual, WhatCannotStandDoesNotCountAndIsNamed) {
  const Actual made = of({entry(Act::delivered, stone, 2, "ton"), entry(Act::delivered, stone, 2, "barrow"),
                          entry(Act::delivered, {"base", "gold", CostKind::material}, 2, "ton")});
  EXPECT_EQ(stone_of(made).delivered, 2);
  ASSERT_EQ(made.problems.size(), 3U);  // with the stage that nobody measured
  EXPECT_EQ(made.problems[0].code, "ledger-unit");
  EXPECT_NE(made.problems[0].text.find("entry 2"), std::string::npos);
  EXPECT_EQ(made.problems[1].code, "ledger-line");
  // Confirmed at 5e13 coins, 1,000 delivered: 5e16 coins can't be counted.
  const Actual large =
      of({entry(Act::confirmed, stone, 1, "ton", 50'000'000'000'000), entry(Act::delivered, stone, 1000, "ton")});
  EXPECT_TRUE(said(large, "actual-large"));
  EXPECT_EQ(stone_of(large).delivered_money.coins(), 0);
}

TEST(Actual, AnEditAfterTheOrderMakesAnAddOrAReturn) {
  const auto so_far = of({entry(Act::ordered, stone, 10, "ton"), entry(Act::ordered, unit, 1080, "piece"),
                          entry(Act::returned, unit, 45, "piece")});
  auto now = kept();
  now.lines[0].order_quantity = 13;   // 13 - 10 = 3 more
  now.lines[2].order_quantity = 990;  // 990 - (1080 - 45) = 45 fewer
  const auto entries = estimate::after_edit(job(), now, so_far, "2026-11-29");
  ASSERT_EQ(entries.size(), 2U);
  EXPECT_EQ(entries[0].act, Act::ordered);
  EXPECT_EQ(entries[0].quantity, 3);
  EXPECT_EQ(entries[0].note, "lead time 2 days, least order: 1 ton");
  EXPECT_EQ(entries[1].act, Act::returned);
  EXPECT_EQ(entries[1].quantity, 45);
  for (const Entry& one : entries) EXPECT_TRUE(estimate::check(kept(), {}, one));
  now.lines.erase(now.lines.begin());  // no stone at all: 10 go back
  EXPECT_EQ(estimate::after_edit(job(), now, so_far, "2026-11-29")[0].quantity, 10);
  EXPECT_TRUE(estimate::after_edit(job(), kept(), of({}), "2026-11-29").empty()) << "nothing was ordered";
}

// Coins of `eighths` / 8 at a price, by whole numbers alone, half away from zero.
std::int64_t coins_of(std::int64_t price, std::int64_t eighths) { return (2 * price * eighths + 8) / 16; }

TEST(Actual, LinesAddUpToStagesAndStagesToTheWholeToTheCoin) {
  EXPECT_TRUE(rc::check("sums are exact", [] {
    std::vector<Entry> entries;
    std::int64_t delivered = 0;
    const int count = *rc::gen::inRange(0, 60);
    for (int i = 0; i < count; ++i) {
      const auto eighths = *rc::gen::inRange<std::int64_t>(0, 1'000'000);
      const auto price = *rc::gen::inRange<std::int64_t>(0, 1'000'000);
      const double quantity = static_cast<double>(eighths) / 8;
      const bool of_stone = *rc::gen::arbitrary<bool>();
      const LineKey& key = of_stone ? stone : unit;
      const char* word = of_stone ? "ton" : "piece";
      switch (*rc::gen::inRange(0, 6)) {
        case 0:
        case 1:
          entries.push_back(entry(Act::delivered, key, quantity, word, price));
          delivered += coins_of(price, eighths);
          break;
        case 2: entries.push_back(entry(Act::used, key, quantity, word)); break;
        case 3: entries.push_back(entry(Act::returned, key, quantity / 16, word)); break;
        case 4: entries.push_back(hours(of_stone ? "base" : "paving", quantity)); break;
        default: entries.push_back(measured(of_stone ? "base" : "paving", quantity, 125'000)); break;
      }
    }
    const Actual made = of(entries);
    Money spent, estimate, delivered_sum, at_estimate, at_own;
    for (const auto& stage : made.stages) {
      Money stuff, planned;
      for (const auto& line : made.lines) {
        if (line.key.stage != stage.stage) continue;
        stuff += line.spent;
        planned += line.estimate;
        delivered_sum += line.delivered_money;
        RC_ASSERT(line.used_money + line.left_money() == line.spent);
        if (line.delivered > 0) RC_ASSERT(line.delivered_money - line.returned_money == line.spent);
      }
      RC_ASSERT(stuff == stage.spent_stuff);
      RC_ASSERT(planned == stage.estimate_stuff);
      spent += stuff + stage.spent_work;
      estimate += planned + stage.estimate_work;
      at_estimate += stage.finish_at_estimate.value_or(Money());
      at_own += stage.finish_at_own.value_or(Money());
    }
    RC_ASSERT(delivered_sum.coins() == delivered);
    RC_ASSERT(made.total.spent() == spent);
    RC_ASSERT(made.total.estimate() == estimate);
    RC_ASSERT(estimate == kept().direct);
    RC_ASSERT(made.total.difference() == spent - estimate);
    RC_ASSERT(*made.total.finish_at_estimate == at_estimate);
    RC_ASSERT(*made.total.finish_at_own == at_own);
  }));
}

}  // namespace
