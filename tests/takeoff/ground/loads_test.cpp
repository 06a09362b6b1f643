#include "takeoff/loads.h"

#include <gtest/gtest.h>

using takeoff::loads;
using takeoff::term;

namespace {

catalogue::Item truck(const char* yards, const char* tons) {
  catalogue::Item item;
  item.id = "truck";
  if (yards) item.details["volume_limit_cu_yd"] = yards;
  if (tons) item.details["weight_limit_ton"] = tons;
  return item;
}

double count(double loose_yards, double kilograms, const catalogue::Item& item) {
  const auto found = loads(term("loose", loose_yards * units::cubic_metres_per_cubic_yard, units::cubic_metre),
                           term("weight", kilograms, units::kilogram), item);
  return found ? found->amount().value : -1;
}

}  // namespace

// A construction estimating text, chapter 9: 1000 bank cu yd swell 30 % to 1300 loose; trucks of 7 cu yd: 185.7, so 186.
// The same: 500 compacted at 95 % is 526 bank, x 1.15 = 605 loose: 87 loads. A pit of 407 bank cu yd: 529 loose, 76 loads.
TEST(Loads, byVolume) {
  EXPECT_EQ(count(1000 * 1.30, 0, truck("7", nullptr)), 186);
  EXPECT_EQ(count(500 / 0.95 * 1.15, 0, truck("7", nullptr)), 87);
  EXPECT_EQ(count(407 * 1.30, 0, truck("7", nullptr)), 76);
}

// US Army TM 9-2320-366-10-1, table 2-15: a 7.78 cu yd heap of gravel (2970 lb/cu yd) weighs 23,107 lb, so a 5 ton truck
// needs 3 loads for it where its body would hold it in one.
TEST(Loads, theTighterOfVolumeAndWeight) {
  const double kilograms = 7.78 * 2970 * units::kilograms_per_pound;
  EXPECT_NEAR(kilograms / units::kilograms_per_pound, 23107, 1);
  EXPECT_EQ(count(7.78, kilograms, truck("7.78", "5")), 3);
  EXPECT_EQ(count(7.78, kilograms, truck("7.78", nullptr)), 1);
}

TEST(Loads, aTruckWithoutLimitsIsRefused) { EXPECT_EQ(count(1, 1, truck(nullptr, nullptr)), -1); }
