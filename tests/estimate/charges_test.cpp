#include "estimate/charges.h"

#include "estimate/deliveries.h"
#include "estimate/estimate_kit.h"

namespace {

using namespace estimate_kit;
using takeoff::Stage;

plan::Job trucked_job() {
  plan::Job job = starter_job();
  job.choices.truck = "truck-tandem";  // 12 cu yd, 15 short tons
  return job;
}

// 20 t of No. 57 are 22.05, so 23 short tons: 23 / 15 = 1.53, by volume 23 x 907.185 / 1570 = 13.29 m3 = 17.38 cu yd /
// 12 = 1.45: 2 loads. 5 t of No. 8 are 6 short tons: 1 load of its own, though 29 tons would fit in 2 bodies.
TEST(Charges, EachLoadIsCharged) {
  const auto made =
      estimate::estimate(trucked_job(), takeoff_of({line(Stage::base, "agg-no57", amount(20000, units::kilogram)),
                                                    line(Stage::paving, "agg-no8", amount(5000, units::kilogram)),
                                                    line(Stage::joints, "joint-polymer", amount(100, units::kilogram)),
                                                    line(Stage::dig, "truck-tandem", amount(3, units::piece))}));
  const auto& stone = line_of(made, "delivery:stone-yard");
  EXPECT_EQ(stone.stage, Stage::base);
  EXPECT_EQ(stone.order_quantity, 3);
  EXPECT_EQ(stone.order_unit, "load");
  EXPECT_EQ(coins(stone), 3 * 12000);  // suppliers.csv: 120.00 a load
  EXPECT_NE(stone.working.sentence().find("loads of Stone No. 57"), std::string::npos) << stone.working.sentence();
  EXPECT_EQ(line_of(made, "delivery:builders-counter").stage, Stage::joints);
  EXPECT_EQ(coins(line_of(made, "delivery:builders-counter")), 6500);
  EXPECT_FALSE(has_line(made, "delivery:haulier"));  // its delivery is 0
  EXPECT_FALSE(has_line(made, "delivery:unit-yard"));
}

// One material in two stages is two visits, and what two elements ask in one stage comes together: 8 + 8 t are 17.64,
// so 18 tons, 2 loads; 1 t for the pool's stone is 2 tons, 1 load.
TEST(Charges, LoadsAreCountedByStageVisit) {
  const auto made = estimate::estimate(
      trucked_job(), takeoff_of({line(Stage::coping, "agg-no57", amount(1000, units::kilogram), {"P"}),
                                 line(Stage::base, "agg-no57", amount(8000, units::kilogram), {"A1"}),
                                 line(Stage::base, "agg-no57", amount(8000, units::kilogram), {"A2"})}));
  EXPECT_EQ(line_of(made, "delivery:stone-yard").order_quantity, 3);
}

// Light stuff fills the body first: 10 short tons of topsoil at 1200 kg/m3 are 7.56 m3 = 9.89 cu yd; in the truck of
// 7.78 cu yd and 5 tons both say 2, in one of 12 cu yd and 15 tons both say 1. Without a truck it is one load.
TEST(Charges, TheTruckOfTheJobDecides) {
  const auto wanted = takeoff_of({line(Stage::finish, "agg-topsoil", amount(9000, units::kilogram))});
  plan::Job job = trucked_job();
  EXPECT_EQ(line_of(estimate::estimate(job, wanted), "delivery:stone-yard").order_quantity, 1);
  job.choices.truck = "truck-5";
  EXPECT_EQ(line_of(estimate::estimate(job, wanted), "delivery:stone-yard").order_quantity, 2);
  job.choices.truck = "";
  const auto unknown = line_of(estimate::estimate(job, wanted), "delivery:stone-yard");
  EXPECT_EQ(unknown.order_quantity, 1);
  EXPECT_NE(unknown.working.sentence().find("limits not known"), std::string::npos);
}

// 4500 units and 3 % are 4635, 103 layers of 45: 11 pallets of 450, and 4635 x 2.73 kg = 12.65 t = 13.95 short tons:
// 11 / 10 and 13.95 / 12 both say 2 flatbeds. 40 copings in another stage are one more; the pipe comes in one drop.
TEST(Charges, PalletsComeByFlatbedStageByStage) {
  const auto made =
      estimate::estimate(trucked_job(), takeoff_of({line(Stage::paving, "unit-4x8-60", amount(4500, units::piece)),
                                                    line(Stage::coping, "cop-bull-6", amount(40, units::piece)),
                                                    line(Stage::under_ground, "fit-cap-4", amount(1, units::piece)),
                                                    line(Stage::joints, "fit-wye-4", amount(1, units::piece))}));
  EXPECT_EQ(line_of(made, "delivery:unit-yard").order_quantity, 3);
  EXPECT_EQ(line_of(made, "delivery:unit-yard").stage, Stage::coping);
  EXPECT_EQ(line_of(made, "delivery:unit-yard").sentence,
            "3 loads by Unit yard at 95.00: 1 of 1 pallet (Kerbs, coping and steps); 2 of 11 pallets (Bedding and "
            "paving)");
  EXPECT_EQ(line_of(made, "delivery:pipe-counter").order_quantity, 1);
  // Weight alone: 30 step blocks of 217.1 kg stand on 6 pallets, but weigh 31 x 217.1 = 6.73 t = 7.42 tons: 1 flatbed;
  // 60 are 62 (2 % broken) on 13 pallets, 13.46 t = 14.84 tons: 2.
  const auto steps = [](double count) {
    return line_of(estimate::estimate(trucked_job(),
                                      takeoff_of({line(Stage::coping, "step-6x16x60", amount(count, units::piece))})),
                   "delivery:unit-yard")
        .order_quantity;
  };
  EXPECT_EQ(steps(30), 1);
  EXPECT_EQ(steps(60), 2);
}

// What comes together, with its weight: 20 t of No. 57 are 23 short tons of 907.18474 kg = 20,865.2 kg;
// 4635 units (103 layers of 45) of 2.73 kg = 12,653.55 kg on 11 pallets, 2 flatbeds. The wye of the pipe counter comes
// in a drop of its own; the deposit, the truck and the hired plate are no goods.
TEST(Charges, VisitsSayWhatComesTogether) {
  const plan::Job job = trucked_job();
  const auto made = estimate::estimate(job, takeoff_of({line(Stage::base, "agg-no57", amount(20000, units::kilogram)),
                                                        line(Stage::paving, "unit-4x8-60", amount(4500, units::piece)),
                                                        line(Stage::joints, "fit-wye-4", amount(1, units::piece)),
                                                        line(Stage::dig, "truck-tandem", amount(3, units::piece))}));
  const auto visits = estimate::visits(job, made.lines);
  ASSERT_EQ(visits.size(), 3U);
  EXPECT_EQ(visits[0].supplier, "stone-yard");
  EXPECT_EQ(visits[0].stage, Stage::base);
  EXPECT_EQ(visits[0].truck, "truck-tandem");
  EXPECT_EQ(visits[0].loads.amount().value, 2);
  EXPECT_NEAR(visits[0].weight->amount().value, 23 * 907.18474, 1e-6);
  EXPECT_EQ(visits[1].kind, estimate::Visit::Kind::pallets);
  EXPECT_EQ(visits[1].pallets, 11);
  EXPECT_EQ(visits[1].loads.amount().value, 2);
  EXPECT_NEAR(visits[1].weight->amount().value, 4635 * 2.73, 1e-6);
  ASSERT_EQ(visits[1].lines.size(), 1U);
  EXPECT_EQ(made.lines[visits[1].lines[0]].item, "unit-4x8-60");
  EXPECT_EQ(visits[2].kind, estimate::Visit::Kind::small);
  EXPECT_FALSE(visits[2].rides);
  EXPECT_EQ(visits[2].loads.amount().value, 1);
}

// Small goods of a supplier that also sends pallets ride with them: listed, but no load of their own.
TEST(Charges, SmallGoodsRideWithPallets) {
  const plan::Job job = trucked_job();
  const auto made =
      estimate::estimate(job, takeoff_of({line(Stage::joints, "joint-polymer", amount(2000, units::kilogram)),
                                          line(Stage::joints, "spike-10", amount(10, units::piece))}));
  const auto visits = estimate::visits(job, made.lines);
  double loads = 0;
  bool rode = false;
  for (const estimate::Visit& visit : visits) {
    loads += visit.loads.amount().value;
    rode = rode || visit.rides;
  }
  EXPECT_TRUE(rode);
  EXPECT_EQ(loads, line_of(made, "delivery:builders-counter").order_quantity);
}

// Ready-mix of 2.5 cu yd is 2.5 short of 5, at 45.00: 112.50. From 5 on there is no fee.
TEST(Charges, ReadyMixPaysForWhatTheLoadIsShortOf) {
  constexpr double yard = 0.764554857984;  // m3, exact
  const auto of = [](double yards) {
    auto wanted = line(Stage::coping, "conc-ready", amount(yards * yard, units::cubic_metre));
    wanted.allowance = 0;
    return estimate::estimate(starter_job(), takeoff_of({wanted}));
  };
  const auto little = of(2.3);
  EXPECT_EQ(line_of(little, "conc-ready").order_quantity, 2.5);
  EXPECT_EQ(line_of(little, "short-load:conc-ready").order_quantity, 2.5);
  EXPECT_EQ(coins(line_of(little, "short-load:conc-ready")), 11250);
  EXPECT_EQ(line_of(little, "short-load:conc-ready").stage, Stage::coping);
  EXPECT_FALSE(has_line(of(5), "short-load:conc-ready"));
  // 2.3 cu yd are 62.1 cu ft: 104 bags of 0.60 at 6.90 = 717.60, dearer than 430.00 + 112.50.
  EXPECT_EQ(line_of(little, "conc-ready").sentence.find("bags"), std::string::npos);
  // 0.9 cu yd is ordered as 1: 172.00 and 4 x 45.00 short = 352.00; 24.3 cu ft are 40.5, so 41 bags = 282.90.
  const auto least = of(0.9);
  EXPECT_NE(line_of(least, "conc-ready").sentence.find("41 of Bagged concrete 80 lb for 282.90 USD, against 352.00"),
            std::string::npos)
      << line_of(least, "conc-ready").sentence;
}

// The starter's rates of a job: set-out 5 h, protect 4 h, clean-up 8 h; two pallets at 0.15 h and 0.35 h.
TEST(Charges, WhatIsBuiltIsSetOutProtectedCarriedAndCleaned) {
  plan::Job job = plan::with(starter_job(), area_laid_with("A1", {{"unit", "unit-4x8-60"}}));
  const auto wanted = takeoff_of({line(Stage::paving, "unit-4x8-60", amount(641, units::piece))});
  const auto made = estimate::estimate(job, wanted);
  EXPECT_EQ(line_of(made, "set-out").order_quantity, 5);
  EXPECT_EQ(line_of(made, "set-out").stage, Stage::protect);
  EXPECT_EQ(line_of(made, "protect").order_quantity, 4);
  EXPECT_EQ(line_of(made, "clean-up").order_quantity, 8);
  EXPECT_EQ(line_of(made, "clean-up").stage, Stage::finish);
  EXPECT_NEAR(line_of(made, "pallet-unload").order_quantity, 2 * 0.15, 1e-12);
  EXPECT_NEAR(line_of(made, "pallet-carry").order_quantity, 2 * 0.35, 1e-12);
  // Where nothing is built there is nothing to set out, and without the rate nothing is asked.
  EXPECT_FALSE(has_line(estimate::estimate(job, takeoff_of({})), "set-out"));
  catalogue::Catalogue book = starter();
  book.rates.erase("set-out");
  job.catalogue = std::make_shared<const catalogue::Catalogue>(std::move(book));
  const auto without = estimate::estimate(job, wanted);
  EXPECT_FALSE(has_line(without, "set-out"));
  EXPECT_TRUE(has_line(without, "protect"));
  EXPECT_TRUE(without.final);
}

TEST(Charges, PalletsAreChargedAndCredited) {
  // 675 units on pallets of 450: 2. 153 copings on pallets of 192: 1. At 28.00 each, in and out.
  const auto made = estimate::estimate(
      starter_job(), takeoff_of({line(Stage::coping, "cop-bull-6", amount(147, units::piece)),
                                 line(Stage::paving, "unit-4x8-60", amount(641, units::piece)),
                                 line(Stage::joints, "joint-polymer", amount(100, units::kilogram))}));
  const auto& in = line_of(made, "pallet-deposit");
  const auto& out = line_of(made, "pallet-credit");
  EXPECT_EQ(in.order_quantity, 3);
  EXPECT_EQ(coins(in), 8400);
  EXPECT_EQ(out.amount->coins(), -8400);
  EXPECT_EQ(in.stage, Stage::coping);
  EXPECT_EQ(out.stage, Stage::coping);
}

TEST(Charges, WithoutACreditItemTheDepositItselfComesBack) {
  catalogue::Catalogue book = starter();
  book.items.erase("pallet-credit");
  const auto made = estimate::estimate(job_with(std::move(book)),
                                       takeoff_of({line(Stage::paving, "unit-4x8-60", amount(10, units::piece))}));
  std::int64_t sum = 0;
  int lines = 0;
  for (const auto& one : made.lines) {
    if (one.item != "pallet-deposit") continue;
    sum += one.amount->coins();
    ++lines;
  }
  EXPECT_EQ(lines, 2);
  EXPECT_EQ(sum, 0);
}

TEST(Charges, GoodsByOthersBringNone) {
  catalogue::Catalogue book = starter();
  auto unit = std::make_shared<catalogue::Item>(*book.item("unit-4x8-60"));
  unit->price = catalogue::Price{units::Money(), "piece", "", true};
  book.items[unit->id] = unit;
  const auto made = estimate::estimate(job_with(std::move(book)),
                                       takeoff_of({line(Stage::paving, "unit-4x8-60", amount(641, units::piece))}));
  ASSERT_EQ(made.lines.size(), 1U);
  EXPECT_TRUE(made.lines[0].by_others);
  EXPECT_EQ(coins(made.lines[0]), 0);
  EXPECT_NE(made.lines[0].sentence.find("supplied by others"), std::string::npos);
  EXPECT_TRUE(made.final);
}

TEST(Charges, MixedPalletsStandOnOneEach) {
  EXPECT_EQ(estimate::pallets(*starter().item("pack-three-60"), 10), 10);
  EXPECT_EQ(estimate::pallets(*starter().item("unit-4x8-60"), 450), 1);
  EXPECT_EQ(estimate::pallets(*starter().item("unit-4x8-60"), 495), 2);
  EXPECT_EQ(estimate::pallets(*starter().item("agg-no57"), 20), 0);
  EXPECT_EQ(estimate::pallets(*starter().item("joint-polymer"), 55), 0);  // 56 bags are a pallet
  EXPECT_EQ(estimate::pallets(*starter().item("joint-polymer"), 57), 2);
}

}  // namespace
