#include "estimate/charges.h"

#include "estimate/estimate_kit.h"

namespace {

using namespace estimate_kit;
using takeoff::Stage;

TEST(Charges, OneDropForEachSupplierWhereItIsFirstNeeded) {
  const auto made =
      estimate::estimate(starter_job(), takeoff_of({line(Stage::base, "agg-no57", amount(20000, units::kilogram)),
                                                    line(Stage::paving, "agg-no8", amount(5000, units::kilogram)),
                                                    line(Stage::joints, "joint-polymer", amount(100, units::kilogram)),
                                                    line(Stage::dig, "truck-tandem", amount(3, units::piece))}));
  const auto& stone = line_of(made, "delivery:stone-yard");
  EXPECT_EQ(stone.stage, Stage::base);
  EXPECT_EQ(coins(stone), 12000);  // suppliers.csv: 120.00 a drop
  EXPECT_EQ(line_of(made, "delivery:builders-counter").stage, Stage::joints);
  EXPECT_FALSE(has_line(made, "delivery:haulier"));  // its delivery is 0
  EXPECT_FALSE(has_line(made, "delivery:unit-yard"));
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
}

}  // namespace
