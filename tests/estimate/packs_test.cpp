#include "estimate/packs.h"

#include <rapidcheck.h>

#include <cmath>

#include "estimate/estimate_kit.h"
#include "estimate/price.h"

namespace {

using namespace estimate_kit;
using estimate::buy;

estimate::Bought bought(const std::string& item, takeoff::Working net, std::optional<double> allowance = {},
                        double attic = 0) {
  const auto made = buy({{std::move(net), allowance}}, *starter().item(item), 8, attic);
  EXPECT_TRUE(made.has_value()) << (made ? "" : problem::sentence(made.error()));
  return made ? *made : estimate::Bought{amount(0, units::piece), ""};
}

// Seven Easy Steps, part 2 (Brick Industry Association): a patio of 10 x 20 ft takes 900 units, 945 with 5 % for
// breakage.
TEST(Packs, BreakageAsPublished) {
  catalogue::Item unit = *starter().item("clay-full-2.25");
  unit.sold_by = "piece";
  const auto made = buy({{amount(900, units::piece), {}}}, unit, 8);
  ASSERT_TRUE(made);
  EXPECT_EQ(made->quantity(), 945);
}

TEST(Packs, LayersAndTheirSentence) {
  // 641 x 1.03 = 660.23, so 661 pieces; 661 / 45 = 14.69, so 15 layers = 675.
  const auto made = bought("unit-4x8-60", amount(641, units::piece));
  EXPECT_EQ(made.quantity(), 675);
  EXPECT_EQ(made.sentence, "675 pieces: 641 needed, 661 with 3 % on top, bought as 15 layers of 45");
  EXPECT_NE(made.working.sentence().find("with 3 % breakage 1.03"), std::string::npos) << made.working.sentence();
  bool leads_back = false;
  for (const auto& term : made.working.terms()) leads_back = leads_back || term.of == "unit-4x8-60/pieces_per_layer";
  EXPECT_TRUE(leads_back);
}

TEST(Packs, AWholeLotIsNotRaised) {
  // 45 and no allowance is one layer; one more piece is two.
  EXPECT_EQ(bought("unit-4x8-60", amount(45, units::piece), 0).quantity(), 45);
  EXPECT_EQ(bought("unit-4x8-60", amount(46, units::piece), 0).quantity(), 90);
  EXPECT_EQ(bought("unit-4x8-60", amount(0, units::piece)).quantity(), 0);
}

TEST(Packs, SpareUnitsComeOnTopOfTheOrder) {
  // 641 x 1.03 up = 661; 641 x 0.02 = 12.82 up = 13; 674 / 45 = 14.98 -> 675.
  EXPECT_EQ(bought("unit-4x8-60", amount(641, units::piece), {}, 0.02).quantity(), 675);
  // 641 x 0.03 = 19.23 up = 20; 681 / 45 = 15.13 -> 16 layers = 720.
  EXPECT_EQ(bought("unit-4x8-60", amount(641, units::piece), {}, 0.03).quantity(), 720);
}

TEST(Packs, ReadyMixByHalfACubicYard) {
  // 1.8258 x 1.1 = 2.00838, the next half is 2.5; 1.8175 x 1.1 = 1.99925 is 2.
  constexpr double yard = 0.764554857984;
  EXPECT_EQ(bought("conc-ready", amount(1.8258 * yard, units::cubic_metre)).quantity(), 2.5);
  EXPECT_EQ(bought("conc-ready", amount(1.8175 * yard, units::cubic_metre)).quantity(), 2.0);
}

TEST(Packs, NoLessThanTheLeastOrder) {
  catalogue::Item stone = *starter().item("agg-no57");
  stone.details["least_order_ton"] = "3";
  const auto made = buy({{amount(1000, units::kilogram), {}}}, stone, 8);  // 1.1023 short tons
  ASSERT_TRUE(made);
  EXPECT_EQ(made->quantity(), 3);
  EXPECT_NE(made->sentence.find("because no less is sold"), std::string::npos) << made->sentence;
  EXPECT_EQ(bought("agg-no57", amount(500, units::kilogram)).quantity(), 1);  // 0.55 of a ton
  // 0.1 m3 with 10 % are 0.14 cu yd: half a yard by the step, one by the least order of the starter's ready-mix.
  EXPECT_EQ(bought("conc-ready", amount(0.1, units::cubic_metre)).quantity(), 1);
}

TEST(Packs, PartsWithAllowancesOfTheirOwnAreRoundedOnce) {
  // 10 x 1.03 + 10 x 1.0 = 20.3, so 21.
  catalogue::Item unit = *starter().item("spike-10");
  const auto made = buy({{amount(10, units::piece), {}}, {amount(10, units::piece), 0.0}}, unit, 8);
  ASSERT_TRUE(made);
  EXPECT_EQ(made->quantity(), 21);
  // 0.4 + 0.4 of a piece is one piece, not two.
  const auto small = buy({{amount(0.4, units::piece), 0.0}, {amount(0.4, units::piece), 0.1}}, unit, 8);
  ASSERT_TRUE(small);
  EXPECT_EQ(small->quantity(), 1);  // 0.4 + 0.44 = 0.84
}

TEST(Packs, OffcutsTakenOffNeverOrderLessThanNothing) {
  catalogue::Item unit = *starter().item("spike-10");
  const auto made = buy({{amount(-4, units::piece), {}}}, unit, 8);
  ASSERT_TRUE(made);
  EXPECT_EQ(made->quantity(), 0);
}

TEST(Packs, WhatIsBoughtCoversTheNeedAndNoLotLessWould) {
  EXPECT_TRUE(rc::check("any need, any layer", [] {
    catalogue::Item unit = *starter().item("unit-4x8-60");
    unit.pack.pieces_per_layer = *rc::gen::inRange(1, 200);
    unit.breakage = *rc::gen::inRange(0, 20) / 100.0;
    const int net = *rc::gen::inRange(1, 100000);
    const auto made = buy({{amount(net, units::piece), {}}}, unit, 8);
    RC_ASSERT(made.has_value());
    // In whole hundredths, so that the check itself has no dust: need x 100 = net x (100 + percent).
    const long long need_100 = static_cast<long long>(net) * (100 + std::llround(unit.breakage * 100));
    const long long order_100 = std::llround(made->quantity()) * 100;
    RC_ASSERT(std::llround(made->quantity()) % unit.pack.pieces_per_layer == 0);
    RC_ASSERT(order_100 >= need_100);
    RC_ASSERT(order_100 - 100LL * unit.pack.pieces_per_layer < need_100);
  }));
}

TEST(Price, HalfACoinGoesUpOnce) {
  // 5.10 a sq ft x 0.25 sq ft = 127.5 coins a piece: one piece is 1.28, three are 3.83 (382.5), not 3 x 1.28 = 3.84.
  const catalogue::Item& small = *starter().item("unit-6x6-60");
  EXPECT_EQ(estimate::cost(small, 1).amount->coins(), 128);
  EXPECT_EQ(estimate::cost(small, 3).amount->coins(), 383);
  EXPECT_EQ(estimate::cost(small, 400).amount->coins(), 51000);
  EXPECT_EQ(estimate::money_of(-0.5)->coins(), -1);
  EXPECT_EQ(estimate::money_of(12.499999999999998)->coins(), 13);
  EXPECT_FALSE(estimate::money_of(1e18).has_value());
}

TEST(Price, EstimatingText) {
  // A manual's machine and operator for 9.4 hours: 157.45 + 185.65 = 343.10 (a surveying text, p. 97, printed in whole
  // dollars 157, 186, 343).
  EXPECT_EQ(estimate::money_of(9.4 * 1675)->coins(), 15745);
  EXPECT_EQ(estimate::money_of(9.4 * 1975)->coins(), 18565);
}

TEST(Price, NothingPastAllReason) {
  catalogue::Item item = *starter().item("spike-10");
  item.price->amount = units::Money::of_coins(9'000'000'000'000'000'000);
  EXPECT_FALSE(estimate::cost(item, 3).amount.has_value());
}

}  // namespace
