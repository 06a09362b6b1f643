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

TEST(Working, aNameThatEndsInAFigureIsKeptFromItsNumber) {
  EXPECT_EQ(Working(term("top of course 4", 1.5, units::metre)).sentence(), "top of course 4: 1.5 m");
  EXPECT_EQ(Working(term("strips of 5' 0\"", 12, units::piece)).sentence(), "strips of 5' 0\": 12");
  EXPECT_EQ(Working(term("2", 2, units::piece)).sentence(), "2");
  EXPECT_EQ(Working(term("courses", 4, units::piece)).sentence(), "courses 4");
}

// 0.4 cu ft of voids in a block is 0.4 x 1728 = 691.2 cu in; a tube of 28 fl oz is 28 x 231 / 128 = 50.53 cu in, under
// a twentieth of a cubic foot (86.4); a bead of 1/4 in has 0.0490874 sq in.
TEST(Working, whatIsSmallIsToldInSmallUsUnits) {
  const auto us = [](double value, units::Unit unit) {
    return Working(term("", value, unit)).sentence(units::System::us);
  };
  const double inch = 0.0254;
  EXPECT_EQ(us(691.2 * inch * inch * inch, units::cubic_metre), "0.4 cu ft");
  EXPECT_EQ(us(28 * 231 / 128.0 * inch * inch * inch, units::cubic_metre), "28 fl oz");
  EXPECT_EQ(us(46656 * inch * inch * inch, units::cubic_metre), "1 cu yd");
  EXPECT_EQ(us(0.0490874 * inch * inch, units::square_metre), "0.049087 sq in");
  EXPECT_EQ(us(144 * inch * inch, units::square_metre), "1 sq ft");
  EXPECT_EQ(us(11.5 * inch, units::metre), "11.5 in");
  EXPECT_EQ(us(12 * inch, units::metre), "1 ft");
}

TEST(WorkingDeathTest, unlikeUnitsAreNotAdded) {
  EXPECT_DEATH(Working::sum({term("a", 1, units::metre), term("b", 1, units::kilogram)}), "only like units");
}
