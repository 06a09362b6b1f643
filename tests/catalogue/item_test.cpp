// What one item covers and costs.
#include "catalogue/item.h"

#include <gtest/gtest.h>

#include "catalogue/build_up.h"

namespace catalogue {
namespace {

using units::Length;

Item unit(Length length, Length width, Length joint) {
  Item item;
  item.id = "unit";
  item.kind = "paving-unit";
  item.unit = "piece";
  item.length = length;
  item.width = width;
  item.joint = joint;
  return item;
}

double per_square_foot(const Item& item) { return units::square_metres_per_square_foot / module_area(item).si(); }

TEST(ModuleArea, UnitsPerSquareFootAsPublished) {
  // Brick Industry Association, Seven Easy Steps part 2: 4.5 units of 4 x 8 in to a square foot; 10 x 20 ft: 900 units.
  const Item full = unit(Length::inches(8), Length::inches(4), Length());
  EXPECT_DOUBLE_EQ(per_square_foot(full), 4.5);
  EXPECT_DOUBLE_EQ(200 * per_square_foot(full), 900);
  // The same: 3-5/8 x 7-5/8 in is 4.5 with 3/8 in joints, printed 5.2 laid tight (144 / (7.625 x 3.625) = 5.2097).
  const Length long_side = Length::inch_64ths(7 * 64 + 40), short_side = Length::inch_64ths(3 * 64 + 40);
  EXPECT_DOUBLE_EQ(per_square_foot(unit(long_side, short_side, Length::inch_64ths(24))), 4.5);
  EXPECT_NEAR(per_square_foot(unit(long_side, short_side, Length())), 5.2097, 5e-5);
  // The same: 3-3/4 x 7-1/2 in, printed 5.1 (144 / 28.125 = 5.12).
  EXPECT_DOUBLE_EQ(per_square_foot(unit(Length::inch_64ths(480), Length::inch_64ths(240), Length())), 5.12);
}

TEST(ModuleArea, JointsCountHalfOnEverySide) {
  // 144 / ((8 + j)(4 + j)) for j = 1/16, 1/8, 3/16 in.
  const Length eight = Length::inches(8), four = Length::inches(4);
  EXPECT_NEAR(per_square_foot(unit(eight, four, Length::inch_64ths(4))), 4.3964, 5e-5);
  EXPECT_NEAR(per_square_foot(unit(eight, four, Length::inch_64ths(8))), 4.2965, 5e-5);
  EXPECT_NEAR(per_square_foot(unit(eight, four, Length::inch_64ths(12))), 4.2001, 5e-5);
  // 100 x 200 mm with 0, 2, 3, 5 mm: 1 / ((0.2 + j)(0.1 + j)); the trade's habit of 50 to a square metre is the first.
  const double expected[] = {50, 48.53, 47.83, 46.46};
  const std::int64_t joints[] = {0, 2, 3, 5};
  for (int i = 0; i < 4; ++i) {
    const Item metric = unit(Length::millimetres(200), Length::millimetres(100), Length::millimetres(joints[i]));
    EXPECT_NEAR(1 / module_area(metric).si(), expected[i], 5e-3) << joints[i];
  }
}

TEST(PriceOfOne, ByThePieceByTheAreaAndByThePack) {
  Item item = unit(Length::inch_64ths(504), Length::inch_64ths(248), Length::inch_64ths(8));  // 7-7/8 x 3-7/8, 1/8
  EXPECT_FALSE(price_of_one(item));
  // 4.95 a square foot: module 8 x 4 in = 32/144 sq ft, so 495 x 32 / 144 = 110 coins, exactly.
  item.price = Price{units::Money::of_coins(495), "sq ft", "2025-03-01", false};
  EXPECT_EQ(price_of_one(item)->coins, 110.0);
  item.price->unit = "piece";
  EXPECT_EQ(price_of_one(item)->coins, 495.0);
  // 450 pieces of 45 to a layer: 99.00 a pack is 22 coins, 9.90 a layer is 22 coins.
  item.pack = {"pallet", 45, 10, 450};
  item.price = Price{units::Money::of_coins(9900), "pack", "", false};
  EXPECT_EQ(price_of_one(item)->coins, 22.0);
  item.price = Price{units::Money::of_coins(990), "layer", "", false};
  EXPECT_EQ(price_of_one(item)->coins, 22.0);
  item.price = Price{units::Money::of_coins(9900), "pallet", "", false};
  EXPECT_EQ(price_of_one(item)->coins, 22.0);
  // By the metre and the foot, joint included: 8 in of 3.00 a foot is 200 coins.
  item.price = Price{units::Money::of_coins(300), "ft", "", false};
  EXPECT_EQ(price_of_one(item)->coins, 200.0);
  item.price = Price{units::Money::of_coins(300), "barrel", "", false};
  EXPECT_FALSE(price_of_one(item));
}

TEST(PriceOfOne, AMixedPackByItsArea) {
  // 66 of 6x6, 88 of 6x9 and 88 of 9x9 in modules: 66 x 36 + 88 x 54 + 88 x 81 = 14,256 sq in = 99 sq ft.
  Item pack;
  pack.kind = "mixed-pack";
  pack.unit = "pack";
  pack.details["pack_area_m2"] = "9.19740096";
  pack.price = Price{units::Money::of_coins(510), "sq ft", "", false};
  EXPECT_NEAR(price_of_one(pack)->coins, 510 * 99, 1e-6);
}

TEST(Details, NumbersAndLengthsOrNothing) {
  Item item;
  item.details = {{"setback_mm", "19.05"}, {"porosity", "0.38"}, {"strong_direction", "along the roll"}, {"empty", ""}};
  EXPECT_EQ(item.number("porosity"), 0.38);
  EXPECT_EQ(item.length_of("setback_mm"), Length::inch_64ths(48));  // 3/4 in
  EXPECT_FALSE(item.number("strong_direction"));
  EXPECT_FALSE(item.length_of("strong_direction"));
  EXPECT_FALSE(item.number("empty"));
  EXPECT_FALSE(item.number("not there"));
}

TEST(OpenGraded, IsAnAggregateWithPorosity) {
  Item stone;
  stone.kind = "aggregate";
  EXPECT_FALSE(open_graded(stone));
  stone.details["porosity"] = "0.40";
  EXPECT_TRUE(open_graded(stone));
  stone.kind = "joint-chips";
  EXPECT_FALSE(open_graded(stone));
}

}  // namespace
}  // namespace catalogue
