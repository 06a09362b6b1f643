// From the cost to the price. Published figures are named beside their numbers.
#include "estimate/priced.h"

#include <rapidcheck.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "estimate/estimate_kit.h"
#include "estimate/kept.h"
#include "estimate/money_words.h"
#include "estimate/price.h"

namespace {

using namespace estimate_kit;
using plan::CostKind;
using plan::ProfitAs;
using takeoff::Stage;

units::Money money(std::int64_t coins) { return units::Money::of_coins(coins); }

estimate::Estimate costing(const std::vector<std::pair<CostKind, std::int64_t>>& amounts) {
  estimate::Estimate made;
  for (const auto& [kind, amount_in_coins] : amounts) {
    estimate::OrderLine one{
        Stage::paving,           "i", "", {}, 1, "piece", 1, "piece", {}, money(amount_in_coins), false, false, false,
        amount(1, units::piece), {}};
    one.kind = kind;
    made.lines.push_back(std::move(one));
  }
  return made;
}

estimate::Priced price_of(const plan::Offer& offer, const estimate::Estimate& made) {
  plan::Job job = starter_job();
  job.offer = offer;
  return estimate::priced(job, made);
}

plan::Offer profit(double share, ProfitAs as) {
  plan::Offer offer;
  offer.profit = share;
  offer.profit_as = as;
  return offer;
}

std::int64_t step(const estimate::Priced& made, const std::string& code) {
  const auto found = std::ranges::find(made.steps, code, &estimate::PriceStep::code);
  return found == made.steps.end() ? -1 : found->amount.coins();
}

// A published table of markups and their margins on a cost of 1000 ("Markup vs margin explained", a contractors'
// accountant's article; g = m / (1 + m)).
TEST(Priced, MarkupsAndTheirMargins) {
  constexpr std::array<std::pair<double, double>, 9> table{
      {{10, 9.1}, {15, 13.0}, {20, 16.7}, {25, 20.0}, {30, 23.1}, {35, 25.9}, {40, 28.6}, {50, 33.3}, {100, 50.0}}};
  for (const auto& [markup, margin] : table) {
    const auto made = price_of(profit(markup / 100, ProfitAs::markup), costing({{CostKind::material, 100000}}));
    EXPECT_NEAR(made.margin * 100, margin, 0.05) << markup;  // printed to one decimal
    EXPECT_DOUBLE_EQ(made.markup, markup / 100);
    EXPECT_EQ(made.price.coins(), std::llround(100000 + 1000 * markup));
  }
}

// Derived: m = g / (1 - g). 5 5.26; 10 11.11; 15 17.65; 20 25; 25 33.33; 30 42.86; 35 53.85; 40 66.67; 45 81.82; 50
// 100.
TEST(Priced, MarginsAndTheirMarkups) {
  constexpr std::array<std::pair<double, double>, 10> table{{{5, 5.26},
                                                             {10, 11.11},
                                                             {15, 17.65},
                                                             {20, 25},
                                                             {25, 33.33},
                                                             {30, 42.86},
                                                             {35, 53.85},
                                                             {40, 66.67},
                                                             {45, 81.82},
                                                             {50, 100}}};
  for (const auto& [margin, markup] : table) {
    const auto made = price_of(profit(margin / 100, ProfitAs::margin), costing({{CostKind::material, 100000000}}));
    EXPECT_NEAR(made.markup * 100, markup, 0.005) << margin;  // printed to two decimals
    EXPECT_NEAR(made.margin * 100, margin, 1e-5) << margin;   // a price of 1.4 million to the cent
  }
}

// The same article: cost 80,000, 20 % markup 96,000, 20 % margin 100,000.
TEST(Priced, MarkupIsNotMargin) {
  const auto cost = costing({{CostKind::labour, 8000000}});
  EXPECT_EQ(price_of(profit(0.2, ProfitAs::markup), cost).price.coins(), 9600000);
  EXPECT_EQ(price_of(profit(0.2, ProfitAs::margin), cost).price.coins(), 10000000);
}

// Sharma, Production Engineering, ch. 4, ex. 4.1 and 4.4: material 5500, wages 3000, shop overhead as much as the
// wages: 11,500; other overhead 15 %: 13,225; profit 12 % of that: 14,812 (a margin of 10.71 %).
TEST(Priced, WorkshopBid) {
  plan::Offer offer = profit(0.12, ProfitAs::markup);
  offer.overhead = 0.15;
  const auto made =
      price_of(offer, costing({{CostKind::material, 550000}, {CostKind::labour, 300000}, {CostKind::fee, 300000}}));
  EXPECT_EQ(made.direct.coins(), 1150000);
  EXPECT_EQ(step(made, "overhead"), 172500);
  EXPECT_EQ(step(made, "profit"), 158700);
  EXPECT_EQ(made.price.coins(), 1481200);
  EXPECT_NEAR(made.margin, 0.1071, 0.00005);
  EXPECT_EQ(made.by_kind.at(CostKind::labour).coins(), 300000);
}

// The cost estimate of a civil engineering course, 2019: a contingency of 15 % of the direct cost was 7.42 % of the
// bid, so the direct cost was 7.42 / 15 = 49.5 % of it. Of a bid of 100,000.00 the direct cost is 49,466.67; the rest
// is overhead here.
TEST(Priced, ContingencyOfTheDirectCostAndOfTheBid) {
  plan::Offer offer;
  offer.chained = false;
  offer.contingency = 0.15;
  offer.overhead = (10000000.0 - 4946667 - 742000) / 4946667;
  const auto made = price_of(offer, costing({{CostKind::material, 4946667}}));
  EXPECT_EQ(step(made, "contingency"), 742000);  // 49,466.67 x 0.15 = 7,420.0005
  EXPECT_EQ(made.price.coins(), 10000000);
  EXPECT_NEAR(static_cast<double>(made.direct.coins()) / static_cast<double>(made.price.coins()), 0.495, 0.0005);
}

// Constructed. 10,000: 10 % overhead 1,000; 5 % of 11,000 = 550; 8 % of 11,550 = 924; 12,474. All on the direct cost:
// 10,000 x 1.23.
TEST(Priced, ChainedAndNot) {
  plan::Offer offer = profit(0.08, ProfitAs::markup);
  offer.overhead = 0.10;
  offer.contingency = 0.05;
  const auto cost = costing({{CostKind::material, 1000000}});
  EXPECT_EQ(price_of(offer, cost).price.coins(), 1247400);
  offer.chained = false;
  EXPECT_EQ(price_of(offer, cost).price.coins(), 1230000);
  // A margin is one of the price, chained or not: (10,000 + 1,000 + 500) / 0.92 = 12,500.
  offer.profit_as = ProfitAs::margin;
  EXPECT_EQ(price_of(offer, cost).price.coins(), 1250000);
}

// 12,473.21 up to tens: 12,480.00. What is whole already stays.
TEST(Priced, RoundsUpBeforeTax) {
  plan::Offer offer;
  offer.round_to = money(1000);
  const auto made = price_of(offer, costing({{CostKind::material, 1247321}}));
  EXPECT_EQ(made.price.coins(), 1248000);
  EXPECT_EQ(step(made, "rounding"), 679);
  EXPECT_EQ(step(price_of(offer, costing({{CostKind::material, 1248000}})), "rounding"), 0);
}

// Material 6,000 of a cost of 10,000 at a price of 12,000: 7,200 of the price is taxed, 6 % is 432.
TEST(Priced, TaxOnWhatIsTaxed) {
  plan::Offer offer = profit(0.2, ProfitAs::markup);
  offer.tax = 0.06;
  offer.taxed = {CostKind::material};
  const auto cost = costing({{CostKind::material, 600000}, {CostKind::labour, 400000}});
  auto made = price_of(offer, cost);
  EXPECT_EQ(step(made, "tax"), 43200);
  EXPECT_EQ(made.total.coins(), 1243200);
  EXPECT_EQ(
      made.steps.back().working,
      "6 % of 7,200.00 USD, the part of the price for material (6,000.00 USD of the direct cost of 10,000.00 USD)");
  offer.taxed = {CostKind::material, CostKind::labour};
  EXPECT_EQ(step(price_of(offer, cost), "tax"), 72000);
  offer.taxed = {};
  made = price_of(offer, cost);
  EXPECT_EQ(step(made, "tax"), 0);
  EXPECT_TRUE(made.final);  // a flag: someone has to decide
  ASSERT_EQ(made.problems.size(), 1U);
  EXPECT_EQ(made.problems[0].code, "offer-taxed");
}

TEST(Priced, WorkingsReadWell) {
  plan::Offer offer = profit(0.2, ProfitAs::margin);
  offer.overhead = 0.125;
  const auto made = price_of(offer, costing({{CostKind::material, 8421000}}));
  EXPECT_EQ(made.steps[1].name, "Overhead, 12.5 % of the direct cost");
  EXPECT_EQ(made.steps[1].working, "12.5 % of 84,210.00 USD");
  EXPECT_EQ(made.steps[2].name, "Profit, 20 % margin of the price");
  EXPECT_EQ(made.steps[2].working, "94,736.25 USD / (1 - 20 %) less 94,736.25 USD");
}

TEST(Priced, WhatIsNotValidCountsAsNotThere) {
  const auto cost = costing({{CostKind::material, 1000000}});
  const auto refused = [&cost](const plan::Offer& offer, const std::string& code) {
    const auto made = price_of(offer, cost);
    EXPECT_EQ(made.total.coins(), 1000000);
    EXPECT_TRUE(made.payments.empty());
    ASSERT_EQ(made.problems.size(), 1U) << code;
    EXPECT_EQ(made.problems[0].code, code);
    EXPECT_FALSE(made.final);
  };
  for (const double wrong : {-0.1, std::nan(""), HUGE_VAL, 1e9}) {
    plan::Offer offer;
    offer.overhead = wrong;
    refused(offer, "offer-share");
    refused(profit(wrong, ProfitAs::markup), "offer-share");
  }
  refused(profit(1, ProfitAs::margin), "offer-margin");
  refused(profit(1.5, ProfitAs::margin), "offer-margin");
  plan::Offer offer;
  offer.round_to = money(-100);
  refused(offer, "offer-rounding");
  offer = {};
  offer.payments = {{"signing", 0.3, ""}, {"rest", 0.6, "finish"}};
  refused(offer, "offer-payments");
  offer.payments = {{"signing", -0.3, ""}, {"rest", 1.3, "finish"}};
  refused(offer, "offer-payments");
}

TEST(Priced, SumsPastAllReasonAreNamed) {
  plan::Offer offer = profit(50, ProfitAs::markup);
  const auto made = price_of(offer, costing({{CostKind::material, 5'000'000'000'000'000}}));
  EXPECT_EQ(made.price.coins(), 5'000'000'000'000'000);
  EXPECT_FALSE(made.final);
}

plan::Offer any_offer() {
  const auto share = [](int most) { return *rc::gen::inRange(0, most) / 10000.0; };
  plan::Offer offer = profit(share(9000), *rc::gen::element(ProfitAs::markup, ProfitAs::margin));
  offer.overhead = share(9000);
  offer.contingency = share(3000);
  offer.chained = *rc::gen::arbitrary<bool>();
  offer.tax = share(2500);
  offer.taxed = {CostKind::material, CostKind::machine};
  offer.round_to = money(*rc::gen::element(0, 1, 100, 1000, 5000));
  return offer;
}

estimate::Estimate any_cost() {
  std::vector<std::pair<CostKind, std::int64_t>> all;
  const int count = *rc::gen::inRange(1, 30);
  for (int i = 0; i < count; ++i)
    all.emplace_back(*rc::gen::element(CostKind::material, CostKind::labour, CostKind::machine, CostKind::fee),
                     *rc::gen::inRange(0, 10000000));
  return costing(all);
}

TEST(Priced, StepsAndPaymentsAddUp) {
  EXPECT_TRUE(rc::check("to the coin", [] {
    plan::Offer offer = any_offer();
    int left = 10000;
    while (left > 0) {
      const int part = std::min(left, *rc::gen::inRange(1, 6000));
      offer.payments.push_back({"step", part / 10000.0, ""});
      left -= part;
    }
    const auto cost = any_cost();
    const auto made = price_of(offer, cost);
    RC_ASSERT(made.final);
    units::Money steps, price, lines, kinds, payments;
    for (const auto& one : made.steps) {
      steps += one.amount;
      if (one.code != "tax") price += one.amount;
    }
    for (const auto& one : cost.lines) lines += *one.amount;
    for (const auto& [kind, of] : made.by_kind) kinds += of;
    for (const auto& one : made.payments) payments += one.amount;
    RC_ASSERT(steps == made.total);
    RC_ASSERT(price == made.price);
    RC_ASSERT(lines == made.direct);
    RC_ASSERT(kinds == made.direct);
    RC_ASSERT(payments == made.total);
    if (offer.round_to.coins() > 0) RC_ASSERT(made.price.coins() % offer.round_to.coins() == 0);
  }));
}

TEST(Priced, MarkupAndMarginLeadToEachOther) {
  EXPECT_TRUE(rc::check("g = m / (1 + m), m = g / (1 - g)", [] {
    const auto made = price_of(any_offer(), any_cost());
    RC_PRE(made.direct.coins() > 0);
    RC_ASSERT(std::abs(made.margin - made.markup / (1 + made.markup)) < 1e-12);
    RC_ASSERT(std::abs(made.markup - made.margin / (1 - made.margin)) < 1e-9);
  }));
}

// Whatever is typed: never a crash, and what is said adds up.
TEST(Priced, NothingTypedBreaksIt) {
  EXPECT_TRUE(rc::check("an offer of anything", [] {
    const auto number = [] {
      return *rc::gen::element(0.0, -0.0, 0.1, 0.3333333333333333, 1.0, 0.9999999999999999, 99.9, 1e-300, 1e300, -1.0,
                               1e17, std::nan(""), HUGE_VAL, -HUGE_VAL);
    };
    const auto coins_of_anything = [] {
      return money(*rc::gen::element<std::int64_t>(0, 1, -1, 999, 123456789, INT64_MAX, INT64_MIN + 1));
    };
    const auto stage = [] { return *rc::gen::element<std::string>("", "dig", "finish", "swimming"); };
    plan::Job job = starter_job();
    plan::Offer& offer = job.offer;
    offer.overhead = number();
    offer.contingency = number();
    offer.profit = number();
    offer.profit_as = *rc::gen::element(ProfitAs::markup, ProfitAs::margin);
    offer.chained = *rc::gen::arbitrary<bool>();
    offer.tax = number();
    offer.taxed = {CostKind::fee, CostKind::fee, CostKind::material};
    offer.round_to = coins_of_anything();
    for (int i = *rc::gen::inRange(0, 4); i > 0; --i) offer.factors.push_back({"f", number(), stage(), ""});
    for (int i = *rc::gen::inRange(0, 4); i > 0; --i) offer.payments.push_back({"p", number(), stage()});
    for (int i = *rc::gen::inRange(0, 6); i > 0; --i)
      offer.lines.push_back({"l" + std::to_string(i), stage(), CostKind::fee, "", number(), "h", coins_of_anything(),
                             *rc::gen::arbitrary<bool>(), ""});
    const auto made = estimate::estimate(
        job, takeoff_of({}, {{Stage::dig, "dig-open", "dig", {"A1"}, amount(10, units::cubic_metre), 1, {}}}));
    const auto price = estimate::priced(job, made);
    units::Money steps, payments;
    for (const auto& one : price.steps) steps += one.amount;
    for (const auto& one : price.payments) payments += one.amount;
    RC_ASSERT(steps == price.total);
    RC_ASSERT(price.payments.empty() || payments == price.total);
    RC_ASSERT(made.lines.size() == offer.lines.size() + 2);  // dig, its machine
    RC_ASSERT(estimate::kept(job, made, price, "").total == price.total);
  }));
}

// ---- against exact decimals: base x share with whole numbers, halves away from zero.
__extension__ typedef __int128 Wide;
std::int64_t rounded(Wide top, Wide under) {
  const bool below = top < 0;
  if (below) top = -top;
  Wide whole = top / under;
  if ((top % under) * 2 >= under) ++whole;
  return static_cast<std::int64_t>(below ? -whole : whole);
}

TEST(Priced, SharesAreThoseOfAPencil) {
  EXPECT_TRUE(rc::check("each step by whole numbers", [] {
    const int overhead = *rc::gen::inRange(0, 100000), contingency = *rc::gen::inRange(0, 100000),
              gain = *rc::gen::inRange(0, 99999);
    plan::Offer offer = profit(gain / 100000.0, ProfitAs::margin);
    offer.overhead = overhead / 100000.0;
    offer.contingency = contingency / 100000.0;
    const std::int64_t direct = *rc::gen::inRange(0, 2000000000);
    std::int64_t sum = direct + rounded(static_cast<Wide>(direct) * overhead, 100000);
    sum += rounded(static_cast<Wide>(sum) * contingency, 100000);
    sum += rounded(static_cast<Wide>(sum) * gain, 100000 - gain);
    RC_ASSERT(price_of(offer, costing({{CostKind::material, direct}})).price.coins() == sum);
  }));
}

// 100,000 lines of a price with two decimals and a quantity of up to four, against whole numbers; and their sum.
TEST(Priced, AHundredThousandLinesToTheCent) {
  std::uint64_t state = 20251128;
  const auto next = [&state](std::uint64_t below) {
    state = state * 6364136223846793005ULL + 1442695040888963407ULL;
    return static_cast<std::int64_t>((state >> 33) % below);
  };
  estimate::Estimate all;
  std::int64_t sum = 0;
  for (int i = 0; i < 100000; ++i) {
    const std::int64_t price = next(2) == 0 ? next(1000) : next(500000);
    constexpr std::array<std::int64_t, 5> places{1, 10, 100, 1000, 10000};
    const std::int64_t under = places[static_cast<std::size_t>(next(5))];
    const std::int64_t top = next(2000000);
    // The quantity is read from its digits, as a file or a person gives it.
    const double quantity = static_cast<double>(top) / static_cast<double>(under);
    catalogue::Item item;
    item.unit = "ton";
    item.price = catalogue::Price{money(price), "ton", "", false};
    const auto amount_made = estimate::cost(item, quantity).amount;
    const std::int64_t exact = rounded(static_cast<Wide>(price) * top, under);
    ASSERT_TRUE(amount_made);
    ASSERT_EQ(amount_made->coins(), exact) << price << " x " << top << " / " << under;
    sum += exact;
    estimate::OrderLine one{
        Stage::base, "i",          "",          {},    quantity, "piece", quantity,
        "ton",       money(price), amount_made, false, false,    false,   amount(quantity, units::piece),
        {}};
    all.lines.push_back(std::move(one));
  }
  EXPECT_EQ(price_of({}, all).total.coins(), sum);
}

TEST(Kept, HoldsWhatWasShown) {
  plan::Job job = starter_job();
  job.offer.overhead = 0.1;
  job.offer.lines = {{"permit", "protect", CostKind::fee, "Permit", 1, "job", money(42000), false, ""},
                     {"bad", "swimming", CostKind::fee, "Bad", 1, "job", money(100), false, ""}};
  const auto made =
      estimate::estimate(job, takeoff_of({line(Stage::paving, "unit-4x8-60", amount(900, units::piece))}));
  const auto price = estimate::priced(job, made);
  const auto kept = estimate::kept(job, made, price, "1.2");
  EXPECT_EQ(kept.currency, "USD");
  EXPECT_EQ(kept.program, "1.2");
  ASSERT_EQ(kept.lines.size(), made.lines.size());
  units::Money sum, steps;
  for (std::size_t i = 0; i < kept.lines.size(); ++i) {
    EXPECT_EQ(kept.lines[i].item, made.lines[i].item);
    EXPECT_EQ(kept.lines[i].kind, made.lines[i].kind);
    EXPECT_EQ(kept.lines[i].working, made.lines[i].working.sentence(job.heading.units));
    sum += kept.lines[i].amount.value_or(units::Money());
  }
  for (const auto& one : kept.steps) steps += one.amount;
  EXPECT_EQ(sum, kept.direct);
  EXPECT_EQ(steps, kept.total);
  EXPECT_EQ(kept.problems.size(), made.problems.size());
  EXPECT_FALSE(kept.final);
  EXPECT_EQ(kept, estimate::kept(job, made, price, "1.2"));
}

TEST(MoneyWords, ReadAsPeopleWriteThem) {
  plan::Heading heading;
  EXPECT_EQ(estimate::shown_money(money(0), heading), "0.00 USD");
  EXPECT_EQ(estimate::shown_money(money(99999), heading), "999.99 USD");
  EXPECT_EQ(estimate::shown_money(money(100000), heading), "1,000.00 USD");
  EXPECT_EQ(estimate::shown_money(money(-123456789), heading), "-1,234,567.89 USD");
  heading.decimals = 0;
  heading.currency = "JPY";
  EXPECT_EQ(estimate::shown_money(money(1234567), heading), "1,234,567 JPY");
  EXPECT_EQ(estimate::exact_percent(0.29), "29 %");
  EXPECT_EQ(estimate::exact_percent(0.12345), "12.345 %");
  EXPECT_EQ(estimate::exact_percent(0), "0 %");
}

}  // namespace
