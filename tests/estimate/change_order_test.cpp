// A change of the contract: what comes, what goes, what of a credit is kept back, what comes on top.
#include "estimate/change_order.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

namespace {

using estimate::ChangeInput;
using estimate::ChangeOrder;
using estimate::Kept;
using estimate::KeptLine;
using estimate::PricedBy;
using plan::CostKind;
using units::Money;

Money coins(std::int64_t number) { return Money::of_coins(number); }

KeptLine line(const std::string& stage, const std::string& item, double quantity, const std::string& unit,
              std::int64_t price, CostKind kind = CostKind::material) {
  KeptLine made;
  made.stage = stage;
  made.item = made.description = item;
  made.kind = kind;
  made.quantity = made.order_quantity = quantity;
  made.unit = made.order_unit = unit;
  made.unit_price = coins(price);
  made.amount = units::times(coins(price), quantity);
  return made;
}

Kept kept(std::vector<KeptLine> lines) {
  Kept made;
  made.currency = "USD";
  for (const KeptLine& line : lines)
    if (line.amount) made.direct += *line.amount;
  made.lines = std::move(lines);
  made.steps = {{"direct", "Direct cost", made.direct, ""}};
  made.price = made.total = made.direct;
  return made;
}

plan::Job quote() {
  plan::Job job;
  job.heading.currency = "USD";
  job.heading.decimals = 2;
  job.offer.overhead = 0.15;
  job.offer.contingency = 0.05;  // for what was in the scope, not for changes of it
  job.offer.profit = 0.10;       // markup, chained
  job.offer.tax = 0.06;
  job.offer.taxed = {CostKind::material};
  job.offer.round_to = coins(1000);  // not of a change order
  job.offer.payments = {{"all", 1, ""}};
  job.offer.unit_prices = {{"rock", "Rock, broken and taken away", "cu yd", 2, coins(9500)},
                           {"stone", "Base stone", "ton", 0, coins(5500)}};
  return job;
}

ChangeInput asked() {
  ChangeInput input;
  input.number = "2";
  input.cause = "the walk gets wider";
  input.asked_by = "the owner";
  input.date = "2026-11-28";
  return input;
}

const estimate::OrderedChange& of(const ChangeOrder& order, const std::string& item) {
  static const estimate::OrderedChange none;
  const auto found = std::ranges::find(order.lines, item, &estimate::OrderedChange::item);
  EXPECT_NE(found, order.lines.end()) << item;
  return found == order.lines.end() ? none : *found;
}

bool said(const ChangeOrder& order, const std::string& code) {
  return std::ranges::find(order.problems, code, &problem::Problem::code) != order.problems.end();
}

Money sum_of(const ChangeOrder& order) {
  Money sum;
  for (const auto& one : order.lines) sum += one.amount;
  for (const auto& step : order.on_top) sum += step.amount;
  return sum;
}

ChangeOrder worked_example() {
  const Kept before = kept({line("dig", "digger", 10, "h", 6000, CostKind::labour),
                            line("base", "stone", 12, "ton", 4000), line("coping", "block", 40, "piece", 3000),
                            line("paving", "unit", 1000, "piece", 250), line("joints", "sand", 5, "bag", 800)});
  const Kept after = kept({line("dig", "digger", 8, "h", 6000, CostKind::labour),
                           line("base", "stone", 15, "ton", 4000), line("paving", "unit", 1200, "piece", 250),
                           line("joints", "sand", 5, "bag", 900), line("joints", "filler", 4, "bag", 2200)});
  ChangeInput input = asked();
  input.days = 2;
  input.days_cause = "more is laid";
  input.done = {"dig"};
  input.committed = {{"coping", "block", CostKind::material, 0.25, coins(10000), "ten cut, not taken back"}};
  input.met = {{"rock", 5.5, 1, "measured in the truck"}};
  input.tickets = {
      {"T1", "2026-11-27", "the owner", "base", {{CostKind::labour, "Roots cut out", 3, "h", coins(6000)}}}};
  input.contract = coins(4200000);
  input.earlier = {{"1", coins(120000), 1}, {"1a", coins(-30000), 0}};
  return estimate::change_order(quote(), estimate::compare(before, after), input);
}

TEST(ChangeOrder, linesOfTheWorkedExample) {
  const ChangeOrder order = worked_example();
  ASSERT_EQ(order.lines.size(), 8u);
  EXPECT_EQ(of(order, "unit").amount.coins(), 50000);  // 1,200 x 2.50 - 2,500.00
  EXPECT_EQ(of(order, "unit").working,
            "1,200 pieces at the quoted 2.50 USD is 3,000.00 USD, less the quoted 2,500.00 USD for 1,000 pieces");
  EXPECT_EQ(of(order, "block").amount.coins(), -80000);  // 40 x 30.00 = 1,200.00, less 25 % (300.00) and 100.00
  EXPECT_EQ(of(order, "block").kept.coins(), 40000);
  EXPECT_EQ(of(order, "block").working,
            "taken out: 40 pieces, quoted at 1,200.00 USD; kept back as ordered or cut: 25 % of 1,200.00 USD (300.00 "
            "USD) and 100.00 USD, ten cut, not taken back; credited 800.00 USD");
  EXPECT_EQ(of(order, "digger").amount.coins(), 0);  // 2 h x 60.00 less, but the dig is done
  EXPECT_EQ(of(order, "digger").kept.coins(), 12000);
  EXPECT_TRUE(said(order, "change-done"));
  EXPECT_EQ(of(order, "stone").by, PricedBy::unit_price);
  EXPECT_EQ(of(order, "stone").amount.coins(), 16500);  // 3 more tons x 55.00, not x 40.00
  EXPECT_EQ(of(order, "stone").working, "3 tons more at the quote's unit price of 55.00 USD (stone): 165.00 USD");
  EXPECT_EQ(of(order, "filler").amount.coins(), 8800);  // 4 x 22.00
  EXPECT_EQ(of(order, "sand").by, PricedBy::not_charged);
  EXPECT_EQ(of(order, "sand").amount.coins(), 0);           // 8.00 to 9.00 a bag: the quote stands
  EXPECT_EQ(of(order, "rock").amount.coins(), 23750);       // 5.5 met - 2 in the quote - 1 charged = 2.5 x 95.00
  EXPECT_EQ(of(order, "ticket:T1").amount.coins(), 18000);  // 3 h x 60.00
}

TEST(ChangeOrder, sumsOfTheWorkedExample) {
  const ChangeOrder order = worked_example();
  std::vector<std::pair<std::string, std::int64_t>> steps;
  for (const auto& step : order.on_top) steps.emplace_back(step.code, step.amount.coins());
  // Added: 500.00 + 88.00 of material + 180.00 of labour = 768.00. 15 %: 115.20. 10 % of 883.20: 88.32. Price 971.52.
  // Taxed are 588 / 768 of it, 743.82; 6 %: 44.6292. Credited: 800.00 of material; 120.00; 10 % of 920.00; 6 % of
  // 1,012.00.
  const decltype(steps) wanted{{"overhead", 11520},  {"profit", 8832},  {"tax", 4463},
                               {"overhead", -12000}, {"profit", -9200}, {"tax", -6072}};
  EXPECT_EQ(steps, wanted);
  // Lines 500.00 - 800.00 + 165.00 + 88.00 + 237.50 + 180.00 = 370.50; on top 248.15 - 272.72.
  EXPECT_EQ(order.amount.coins(), 34593);
  EXPECT_EQ(order.before.coins(), 4290000);  // 42,000.00 + 1,200.00 - 300.00
  EXPECT_EQ(order.after.coins(), 4324593);
  EXPECT_EQ(order.days, 3);
  EXPECT_TRUE(order.final);
  EXPECT_EQ(order.running,
            "42,000.00 USD as signed, 900.00 USD by 2 earlier orders, 345.93 USD by this one: 43,245.93 USD");
}

TEST(ChangeOrder, whatCancelsOutOfTaxedAndUntaxedWorkIsTaxed) {
  // 1,000.00 of material more, 1,000.00 of labour less: 0 before tax, but 1,265.00 of the price becomes taxed: 75.90.
  const auto order =
      estimate::change_order(quote(),
                             estimate::compare(kept({line("paving", "work", 20, "h", 5000, CostKind::labour)}),
                                               kept({line("paving", "unit", 400, "piece", 250)})),
                             asked());
  EXPECT_EQ(order.amount.coins(), 7590);
}

TEST(ChangeOrder, anErrorOfOursIsNotChargedAndItsCreditIsGiven) {
  const Kept less = kept({line("paving", "unit", 100, "piece", 250)}),
             more = kept({line("paving", "unit", 140, "piece", 250)});
  ChangeInput input = asked();
  input.reason = estimate::Reason::our_error;
  const auto dearer = estimate::change_order(quote(), estimate::compare(less, more), input);
  EXPECT_EQ(dearer.amount.coins(), 0);
  ASSERT_EQ(dearer.on_top.size(), 4u);
  // 40 x 2.50 = 100.00; 15.00; 11.50; 6 % of 126.50 = 7.59.
  EXPECT_EQ(dearer.on_top.back().amount.coins(), -13409);
  const auto cheaper = estimate::change_order(quote(), estimate::compare(more, less), input);
  EXPECT_EQ(cheaper.amount.coins(), -13409);
}

TEST(ChangeOrder, aPriceThatIsNoWholeCoinIsTakenInProportion) {
  // 3 packs for 10.00; 4 packs are 13.33 (10.00 x 4 / 3), 3.33 more.
  KeptLine then = line("base", "fabric", 3, "pack", 333), now = line("base", "fabric", 4, "pack", 333);
  then.amount = coins(1000);
  now.amount = coins(1333);
  const auto order = estimate::change_order(quote(), estimate::compare(kept({then}), kept({now})), asked());
  ASSERT_EQ(order.lines.size(), 1u);
  EXPECT_EQ(order.lines[0].amount.coins(), 333);
  EXPECT_EQ(order.lines[0].working,
            "4 packs in proportion to the quoted 3 packs is 13.33 USD, less the quoted 10.00 USD");
}

TEST(ChangeOrder, whatWasAssumedAndNotMetIsCredited) {
  ChangeInput input = asked();
  input.met = {{"rock", 0.5, 0, ""}};
  auto order = estimate::change_order(quote(), estimate::Comparison(), input);
  EXPECT_EQ(order.amount.coins(), -14250);  // 1.5 cu yd less x 95.00, nothing on top
  // The next order takes what the first one credited for charged: nothing is left.
  input.met[0].charged = -1.5;
  order = estimate::change_order(quote(), estimate::Comparison(), input);
  EXPECT_EQ(order.amount.coins(), 0);
}

TEST(ChangeOrder, theAmountKeptBackIsTakenOnceFromLinesAlike) {
  // Two lines of 100.00 and 50.00; 120.00 is kept back: all of the first, 20.00 of the second.
  const Kept before = kept({line("base", "pipe", 10, "ft", 1000), line("base", "pipe", 5, "ft", 1000)});
  ChangeInput input = asked();
  input.committed = {{"base", "pipe", CostKind::material, 0, coins(12000), ""}};
  auto order = estimate::change_order(quote(), estimate::compare(before, kept({})), input);
  ASSERT_EQ(order.lines.size(), 2u);
  EXPECT_EQ(order.lines[0].amount.coins(), 0);
  EXPECT_EQ(order.lines[1].amount.coins(), -3000);
  EXPECT_FALSE(said(order, "change-stock"));
  input.committed[0].amount = coins(15001);
  order = estimate::change_order(quote(), estimate::compare(before, kept({})), input);
  EXPECT_EQ(order.amount.coins(), 0);  // never a charge
  EXPECT_TRUE(said(order, "change-stock"));
}

TEST(ChangeOrder, whatIsAmissIsSaidAndTheRestStands) {
  Kept before = kept({line("base", "pipe", 10, "ft", 1000)}), after = kept({});
  after.lines = {line("base", "stone", 2, "cu yd", 4000), line("paving", "unit", 1, "piece", 250)};
  after.lines[1].amount.reset();
  ChangeInput input;
  input.date = "2026-02-30";
  input.days = 1;
  input.done = {"roof"};
  input.committed = {{"base", "pipe", CostKind::material, 1.5, {}, ""}};
  input.met = {{"water", 1, 0, ""}, {"rock", -1, 0, ""}, {"rock", 3, 0, ""}};
  input.tickets = {{"T1", "", "", "nowhere", {{CostKind::machine, "Saw", -1, "h", coins(100)}}}};
  const auto order = estimate::change_order(quote(), estimate::compare(before, after), input);
  for (const char* code : {"change-date", "change-asked", "change-cause", "change-stage", "change-share", "change-unit",
                           "change-no-price", "change-unit-price", "change-quantity", "change-ticket"})
    EXPECT_TRUE(said(order, code)) << code;
  EXPECT_FALSE(order.final);
  EXPECT_EQ(of(order, "pipe").amount.coins(), -10000);  // credited in full
  EXPECT_EQ(of(order, "stone").amount.coins(), 8000);   // its unit price is by the ton: priced by the line
  EXPECT_EQ(order.amount, sum_of(order));
}

TEST(ChangeOrder, twoCurrenciesGiveNoLines) {
  Kept other = kept({line("base", "pipe", 10, "ft", 1000)});
  other.currency = "EUR";
  const auto order = estimate::change_order(quote(), estimate::compare(kept({}), other), asked());
  EXPECT_TRUE(said(order, "change-currency"));
  EXPECT_TRUE(order.lines.empty());
  EXPECT_FALSE(order.final);
}

// Few stages, items and kinds, so that lines meet, double and differ in all ways. The price of an item is always the
// same here.
Kept random_kept(bool same_prices) {
  std::vector<KeptLine> lines;
  for (int count = *rc::gen::inRange(0, 12); count > 0; --count) {
    static const std::vector<std::string> stages{"dig", "paving", "nowhere"}, items{"stone", "pipe", "unit"};
    const std::string item = *rc::gen::elementOf(items);
    const std::int64_t price =
        same_prices ? 333 + static_cast<std::int64_t>(item.size()) : *rc::gen::inRange(-50, 5000);
    KeptLine made = line(*rc::gen::elementOf(stages), item, *rc::gen::inRange(0, 4000) / 8.0, "ton", price);
    if (*rc::gen::inRange(0, 3) == 0) made.kind = CostKind::labour;
    if (!same_prices && *rc::gen::inRange(0, 5) == 0) made.amount.reset();
    if (!same_prices && *rc::gen::inRange(0, 5) == 0) made.by_others = true;
    if (!same_prices && *rc::gen::inRange(0, 4) == 0) made.order_unit = "bag";
    lines.push_back(std::move(made));
  }
  return kept(std::move(lines));
}

RC_GTEST_PROP(ChangeOrderRandom, noCoinIsLostAtTheSamePrices, ()) {
  plan::Job job = quote();
  job.offer.unit_prices.clear();
  const Kept a = random_kept(true), b = random_kept(true);
  const auto order = estimate::change_order(job, estimate::compare(a, b), asked());
  Money lines;
  for (const auto& one : order.lines) lines += one.amount;
  RC_ASSERT(lines == b.direct - a.direct);
  const auto back = estimate::change_order(job, estimate::compare(b, a), asked());
  RC_ASSERT(back.amount == -order.amount);
}

RC_GTEST_PROP(ChangeOrderRandom, sumsAddUpAndNothingIsKeptPastACredit, ()) {
  const Kept a = random_kept(false), b = random_kept(false);
  ChangeInput input = asked();
  input.reason = *rc::gen::element(estimate::Reason::owner, estimate::Reason::our_error);
  if (*rc::gen::inRange(0, 2) == 0) input.done = {"dig"};
  input.committed = {{"paving", "pipe", CostKind::material, *rc::gen::inRange(0, 101) / 100.0,
                      coins(*rc::gen::inRange(0, 100000)), ""}};
  input.contract = coins(*rc::gen::inRange(0, 10000000));
  input.earlier = {{"1", coins(*rc::gen::inRange(-100000, 100000)), 0}};
  const auto comparison = estimate::compare(a, b);
  const auto order = estimate::change_order(quote(), comparison, input);
  RC_ASSERT(order.amount == sum_of(order));
  RC_ASSERT(order.after == input.contract + input.earlier[0].amount + order.amount);
  std::size_t told = 0;
  for (const auto& change : comparison.changes) told += change.what != estimate::Difference::words;
  RC_ASSERT(order.lines.size() == told);
  for (const auto& one : order.lines) {
    RC_ASSERT(one.kept >= Money());
    if (one.kept > Money()) RC_ASSERT(one.amount <= Money());
    if (one.stage == "dig" && !input.done.empty()) RC_ASSERT(one.amount >= Money());
    RC_ASSERT(!one.working.empty());
  }
  if (input.reason == estimate::Reason::our_error) RC_ASSERT(order.amount <= Money());
}

// The next order starts where this one ended.
RC_GTEST_PROP(ChangeOrderRandom, ordersInARowAddUpToTheRunningSum, ()) {
  Kept before = random_kept(true);
  ChangeInput input = asked();
  input.contract = coins(*rc::gen::inRange(0, 10000000));
  Money running = input.contract;
  for (int i = 0; i < 4; ++i) {
    const Kept after = random_kept(true);
    const auto order = estimate::change_order(quote(), estimate::compare(before, after), input);
    RC_ASSERT(order.before == running);
    running = order.after;
    input.earlier.push_back({std::to_string(i), order.amount, 0});
    before = after;
  }
}

RC_GTEST_PROP(ChangeOrderRandom, ofEqualVersionsIsEmptyAndNothing, ()) {
  const Kept a = random_kept(false);
  const auto order = estimate::change_order(quote(), estimate::compare(a, a), asked());
  RC_ASSERT(order.lines.empty() && order.on_top.empty() && order.problems.empty());
  RC_ASSERT(order.amount == Money() && order.after == order.before);
}

}  // namespace
