#include "estimate/mixed_packs.h"

#include <rapidcheck.h>

#include "estimate/estimate_kit.h"

namespace {

using namespace estimate_kit;
using estimate::cheapest_mix;
using estimate::packs_alone;
using estimate::SizeNeed;
using takeoff::Stage;

// A pack of 20, 30 and 40; needed are 118, 150 and 300. The large size: 300 / 40 = 7.5, so 8 packs bring 160, 240, 320.
const std::vector<SizeNeed> example{{118, 20, {}, 1}, {150, 30, {}, 1}, {300, 40, {}, 1}};

TEST(MixedPacks, PacksAlone) {
  const auto mix = packs_alone(example, {});
  EXPECT_EQ(mix.packs, 8);
  EXPECT_EQ(mix.left, (std::vector<double>{42, 90, 20}));
}

TEST(MixedPacks, TheRestOfOneSizeByItself) {
  // Only the last size is sold alone: the first asks for 6 packs (118 / 20 = 5.9), which bring 240 of the last, so 60
  // more. A piece in the pack costs 1.00, alone 1.00: 6 x 90 + 60 = 600, 7 x 90 + 20 = 650, 8 x 90 = 720.
  std::vector<SizeNeed> sizes = example;
  sizes[2].single_coins = 100;
  const auto mix = cheapest_mix(sizes, 9000);
  ASSERT_TRUE(mix);
  EXPECT_EQ(mix->packs, 6);
  EXPECT_EQ(mix->singles, (std::vector<double>{0, 0, 60}));
  EXPECT_EQ(mix->left, (std::vector<double>{2, 30, 0}));
  EXPECT_EQ(mix->coins, 60000);
}

TEST(MixedPacks, SinglesAtTwiceThePrice) {
  // All sizes alone at 2.00: 6 packs 540 + 120 = 660; 5 packs 450 + 2 x (18 + 100) = 686; 7 packs 630 + 40 = 670.
  std::vector<SizeNeed> sizes = example;
  for (SizeNeed& size : sizes) size.single_coins = 200;
  const auto mix = cheapest_mix(sizes, 9000);
  ASSERT_TRUE(mix);
  EXPECT_EQ(mix->packs, 6);
  EXPECT_EQ(mix->coins, 66000);
}

TEST(MixedPacks, OfEqualPriceTheOneThatLeavesLess) {
  // 10 needed, 4 a pack at 4.00, singles 1.00 in lots of 2: 3 packs cost 12.00 and leave 2; 2 packs and 2 singles, or
  // 10 singles, cost 10.00 and leave nothing.
  const auto mix = cheapest_mix({{10, 4, 100, 2}}, 400);
  ASSERT_TRUE(mix);
  EXPECT_EQ(mix->coins, 1000);
  EXPECT_EQ(mix->left, std::vector<double>{0});
  // 9 needed, a pack at 3.00, singles 1.00 in lots of 3: 3 packs cost 9.00 and leave 3, 9 singles cost 9.00 and leave
  // none.
  const auto even = cheapest_mix({{9, 4, 100, 3}}, 300);
  ASSERT_TRUE(even);
  EXPECT_EQ(even->packs, 0);
  EXPECT_EQ(even->left, std::vector<double>{0});
}

TEST(MixedPacks, WithoutAPriceNothingIsCheapest) { EXPECT_FALSE(cheapest_mix(example, {}).has_value()); }

TEST(MixedPacks, EveryMixCoversAndNoneIsCheaper) {
  EXPECT_TRUE(rc::check("random needs", [] {
    std::vector<SizeNeed> sizes;
    const int count = *rc::gen::inRange(1, 4);
    for (int i = 0; i < count; ++i)
      sizes.push_back(
          {static_cast<double>(*rc::gen::inRange(0, 60)), *rc::gen::inRange(1, 12),
           *rc::gen::element(std::optional<double>(), std::optional<double>(100), std::optional<double>(175)),
           static_cast<double>(*rc::gen::inRange(1, 6))});
    const auto alone = packs_alone(sizes, 700);
    const auto best = cheapest_mix(sizes, 700);
    RC_ASSERT(best.has_value());
    RC_ASSERT(best->coins <= alone.coins);
    // Beside it every mix, tried without any shortcut.
    for (int packs = 0; packs <= 61; ++packs) {
      double price = 700.0 * packs;
      bool can = true;
      for (const SizeNeed& size : sizes) {
        double short_of = size.needed - packs * size.in_pack;
        if (short_of > 0 && !size.single_coins) can = false;
        for (; short_of > 0 && can; short_of -= size.single_lot) price += size.single_lot * *size.single_coins;
      }
      RC_ASSERT(!can || best->coins <= price);
      RC_ASSERT(can || packs < alone.packs);
    }
    for (std::size_t i = 0; i < sizes.size(); ++i)
      RC_ASSERT(best->packs * sizes[i].in_pack + best->singles[i] - sizes[i].needed == best->left[i] &&
                best->left[i] >= 0);
  }));
}

// The demo's two decks in three sizes (563, 764 and 785 units), its border and its walk of one of those sizes.
struct Demo {
  plan::Job job = starter_job();
  takeoff::Takeoff takeoff;
  Demo() {
    const std::map<std::string, std::string> three{
        {"small", "unit-6x6-60"}, {"middle", "unit-6x9-60"}, {"large", "unit-9x9-60"}};
    job = plan::with(job, area_laid_with("A1", three));
    job = plan::with(job, area_laid_with("A2", three));
    job = plan::with(job, area_laid_with("W", {{"unit", "unit-6x9-60"}}));
    takeoff.lines = {
        line(Stage::paving, "unit-4x8-60", amount(641, units::piece), {"A1"}),
        line(Stage::paving, "unit-6x6-60", amount(400, units::piece), {"A1"}),
        line(Stage::paving, "unit-6x9-60", amount(500, units::piece), {"A1"}),
        line(Stage::paving, "unit-9x9-60", amount(600, units::piece), {"A1"}),
        line(Stage::paving, "unit-6x6-60", amount(163, units::piece), {"A2"}),
        line(Stage::paving, "unit-6x9-60", amount(264, units::piece), {"A2"}),
        line(Stage::paving, "unit-9x9-60", amount(185, units::piece), {"A2"}),
        line(Stage::paving, "unit-6x9-60", amount(400, units::piece), {"W"}),
    };
  }
};

TEST(MixedPacks, TheDemosDecks) {
  const Demo demo;
  const auto made = estimate::estimate(demo.job, demo.takeoff);
  // With 3 %: 580, 787 and 809; a pack brings 66, 88 and 88; 809 / 88 = 9.19, so 10 packs of 504.90 alone.
  // 6 packs bring 396, 528 and 528; short are 184, 259 and 281, in layers of 40, 24 and 16: 200 at 1.275, 264 at 1.9125
  // and 288 at 2.86875 = 255.00 + 504.90 + 826.20; with 6 x 504.90 that is 4615.50, 433.50 less than 5049.00. (9 packs
  // and 32 of the large size are 4635.90, no packs at all 4620.60.)
  const auto& packs = line_of(made, "pack-three-60");
  EXPECT_EQ(packs.order_quantity, 6);
  EXPECT_EQ(packs.order_unit, "pack");
  EXPECT_EQ(coins(packs), 6 * 50490);
  EXPECT_EQ(packs.quantity, 396 + 528 + 528);
  EXPECT_EQ(packs.of, (std::vector<std::string>{"A1", "A2"}));
  EXPECT_EQ(packs.working.amount().value, 6);
  EXPECT_EQ(packs.sentence,
            "6 packs and single pieces cost least, 4615.50 USD; whole packs alone would be 10 for 5049.00 USD, because "
            "Interlocking unit 9x9, 60 mm runs out first; bought singly are 184 of Interlocking unit 6x6, 60 mm (580 "
            "needed), 259 of Interlocking unit 6x9, 60 mm (787 needed), 281 of Interlocking unit 9x9, 60 mm (809 "
            "needed); at 5.10 USD per sq ft");
  EXPECT_EQ(line_of(made, "unit-6x6-60").order_quantity, 200);
  EXPECT_EQ(line_of(made, "unit-9x9-60").order_quantity, 288);
  // The walk's 400 with 3 % are 412; with the 259 beside the packs 671, 27.96 layers of 24: 28 = 672 at 1.9125.
  EXPECT_EQ(line_of(made, "unit-6x9-60").order_quantity, 672);
  EXPECT_EQ(coins(line_of(made, "unit-6x9-60")), 128520);
  EXPECT_EQ(line_of(made, "unit-4x8-60").order_quantity, 675);
  EXPECT_TRUE(made.final);
}

// Without prices of the single pieces only packs can cover: as the demo's order has them.
TEST(MixedPacks, PacksAloneWhereSinglesHaveNoPrice) {
  Demo demo;
  catalogue::Catalogue book = starter();
  for (const char* id : {"unit-6x6-60", "unit-9x9-60", "unit-6x9-60"}) {
    auto unit = std::make_shared<catalogue::Item>(*book.item(id));
    unit->price.reset();
    book.items[id] = unit;
  }
  demo.job.catalogue = std::make_shared<const catalogue::Catalogue>(book);
  const auto made = estimate::estimate(demo.job, demo.takeoff);
  const auto& packs = line_of(made, "pack-three-60");
  EXPECT_EQ(packs.order_quantity, 10);
  EXPECT_EQ(packs.quantity, 563 + 764 + 785);
  EXPECT_EQ(
      packs.sentence,
      "10 packs, because Interlocking unit 9x9, 60 mm runs out first; left over are 80 of Interlocking unit 6x6, 60 mm "
      "(580 needed); 93 of Interlocking unit 6x9, 60 mm (787 needed); 71 of Interlocking unit 9x9, 60 mm (809 needed); "
      "at 5.10 USD per sq ft");
}

// A pack at ten times its price: single pieces alone, each size once.
TEST(MixedPacks, SinglesAloneWherePacksAreDear) {
  Demo demo;
  catalogue::Catalogue book = starter();
  auto pack = std::make_shared<catalogue::Item>(*book.item("pack-three-60"));
  pack->price->amount = units::Money::of_coins(5100);
  book.items["pack-three-60"] = pack;
  demo.job.catalogue = std::make_shared<const catalogue::Catalogue>(book);
  const auto made = estimate::estimate(demo.job, demo.takeoff);
  EXPECT_FALSE(has_line(made, "pack-three-60"));
  EXPECT_EQ(line_of(made, "unit-6x6-60").order_quantity, 600);  // 580 / 40 = 14.5, so 15 layers
  EXPECT_NE(line_of(made, "unit-6x6-60").sentence.find("whole packs alone would be 10 for 50490.00 USD"),
            std::string::npos)
      << line_of(made, "unit-6x6-60").sentence;
  EXPECT_TRUE(made.final);
}

TEST(MixedPacks, AnAreaWithOneSizeMoreIsNotDrawnIn) {
  Demo demo;
  demo.job = plan::with(
      demo.job,
      area_laid_with("A1", {{"s", "unit-6x6-60"}, {"m", "unit-6x9-60"}, {"l", "unit-9x9-60"}, {"x", "unit-4x8-60"}}));
  demo.job = plan::with(demo.job, area_laid_with("A2", {{"s", "unit-6x6-60"}, {"m", "unit-6x9-60"}}));
  const auto made = estimate::estimate(demo.job, demo.takeoff);
  EXPECT_FALSE(has_line(made, "pack-three-60"));
  EXPECT_TRUE(has_line(made, "unit-9x9-60"));
}

TEST(MixedPacks, APackWithoutAPriceIsOrderedAndNamed) {
  Demo demo;
  catalogue::Catalogue book = starter();
  auto pack = std::make_shared<catalogue::Item>(*book.item("pack-three-60"));
  pack->price.reset();
  book.items["pack-three-60"] = pack;
  demo.job.catalogue = std::make_shared<const catalogue::Catalogue>(book);
  const auto made = estimate::estimate(demo.job, demo.takeoff);
  EXPECT_EQ(line_of(made, "pack-three-60").order_quantity, 10);
  EXPECT_FALSE(line_of(made, "pack-three-60").amount.has_value());
  ASSERT_NE(said(made, "no-price"), nullptr);
  EXPECT_FALSE(made.final);
}

}  // namespace
