#include "takeoff/loads.h"

#include "estimate/estimate_kit.h"

namespace {

using namespace estimate_kit;

constexpr double yard = 0.764554857984;  // m3, exact
constexpr double pound = 0.45359237;     // kg, exact

catalogue::Item truck(const std::string& yards, const std::string& tons) {
  catalogue::Item item;
  item.id = "truck";
  if (!yards.empty()) item.details["volume_limit_cu_yd"] = yards;
  if (!tons.empty()) item.details["weight_limit_ton"] = tons;
  return item;
}

double count(double loose_yards, double pounds, const catalogue::Item& by) {
  const auto made =
      takeoff::loads(amount(loose_yards * yard, units::cubic_metre), amount(pounds * pound, units::kilogram), by);
  EXPECT_TRUE(made.has_value());
  return made ? made->amount().value : -1;
}

// A surveying text: 1000 bank cu yd at 30 % swell are 1300 loose; trucks of 7: 185.7, so 186. The pit of 407 bank cu
// yd: 529.1 loose, 76 loads. 500 compacted at 0.95 are 526 bank; x 1.15 = 605 loose, 87 loads (derived).
TEST(Loads, ByVolumeAsPublished) {
  EXPECT_EQ(count(1300, 1, truck("7", "")), 186);
  EXPECT_EQ(count(407 * 1.3, 1, truck("7", "")), 76);
  EXPECT_EQ(count(500 / 0.95 * 1.15, 1, truck("7", "")), 87);
}

// The US Army truck manual: a body of 7.78 cu yd heaped, a load of 5 tons. 7.78 cu yd of gravel at 2970 lb are 23,107
// lb: one body, but three loads.
TEST(Loads, WeightGovernsForStone) {
  EXPECT_EQ(count(7.78, 7.78 * 2970, truck("7.78", "5")), 3);
  EXPECT_EQ(count(7.78, 7.78 * 1000, truck("7.78", "5")), 1);
  EXPECT_EQ(count(7.79, 7.79 * 1000, truck("7.78", "5")), 2);
}

TEST(Loads, ATruckWithoutLimitsIsAProblem) {
  const auto made = takeoff::loads(amount(1, units::cubic_metre), amount(1, units::kilogram), truck("", ""));
  ASSERT_FALSE(made);
  EXPECT_EQ(made.error().code, "truck-limits");
}

}  // namespace
