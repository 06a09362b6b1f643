#include "takeoff/working.h"

#include <gtest/gtest.h>

using takeoff::term;
using takeoff::Working;

// 46.21 m2 x 0.150 m x 2080 kg/m3 = 14417.52 kg.
TEST(Working, aProductMultipliesNumbersAndUnits) {
  const Working weight =
      Working::product({term("net area", 46.21, units::square_metre, "A1"), term("depth", 0.150, units::metre),
                        term("placed density", 2080, units::kilogram_per_cubic_metre)});
  EXPECT_NEAR(weight.amount().value, 14417.52, 1e-9);
  EXPECT_EQ(weight.amount().unit, units::kilogram);
  EXPECT_EQ(weight.sentence(), "net area 46.21 m2 x depth 0.15 m x placed density 2080 kg/m3 = 14417.5 kg");
  ASSERT_EQ(weight.terms().size(), 3u);
  EXPECT_EQ(weight.terms()[0].of, "A1");
}

TEST(Working, upIsTheNextWholeNumberAndDustIsNoUnit) {
  EXPECT_EQ(Working::up(term("x", 185.7, units::piece)).amount().value, 186);
  EXPECT_EQ(Working::up(term("x", 3, units::piece)).amount().value, 3);
  EXPECT_EQ(Working::up(term("x", 0.1 * 3 * 10, units::piece)).amount().value, 3);  // 3.0000000000000004
  EXPECT_EQ(Working::up(term("x", 3.000001, units::piece)).amount().value, 4);
}

TEST(Working, namedPartsReadAsASentence) {
  const Working area =
      Working::sum({term("net area", 10, units::square_metre), term("past the edge", 2, units::square_metre)});
  const Working volume = Working::product({area.named("base area"), term("thickness", 0.1, units::metre)});
  EXPECT_EQ(volume.sentence(), "(base area: net area 10 m2 + past the edge 2 m2) x thickness 0.1 m = 1.2 m3");
}

TEST(Working, greatestAndQuotient) {
  const Working loads = Working::greatest(
      {Working::up(Working::quotient(term("loose", 20, units::cubic_metre), term("body", 6, units::cubic_metre))),
       Working::up(
           Working::quotient(term("weight", 30000, units::kilogram), term("payload", 10000, units::kilogram)))});
  EXPECT_EQ(loads.amount().value, 4);
  EXPECT_EQ(loads.amount().unit, units::piece);
}

TEST(WorkingDeathTest, unlikeUnitsAreNotAdded) {
  EXPECT_DEATH(Working::sum({term("a", 1, units::metre), term("b", 1, units::kilogram)}), "only like units");
}
