#include "units/angle.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cmath>
#include <limits>

#include "draw.h"

namespace {

using units::Angle;
using units::Turn;

void expect_turn(double degrees, double cosine, double sine) {
  const Turn turn = units::turn(Angle::degrees(degrees));
  EXPECT_EQ(turn.cosine, cosine) << degrees;
  EXPECT_EQ(turn.sine, sine) << degrees;
  EXPECT_EQ(std::signbit(turn.cosine), cosine < 0) << degrees;  // no minus zero
  EXPECT_EQ(std::signbit(turn.sine), sine < 0) << degrees;
}

TEST(Turn, IsExactAtQuarterTurns) {
  for (int turns = -3; turns <= 3; ++turns) {
    expect_turn(360.0 * turns, 1, 0);
    expect_turn(360.0 * turns + 90, 0, 1);
    expect_turn(360.0 * turns + 180, -1, 0);
    expect_turn(360.0 * turns + 270, 0, -1);
  }
  expect_turn(-0.0, 1, 0);
  expect_turn(360e9 + 90, 0, 1);
}

TEST(Turn, IsEqualSidedAtFortyFiveDegreesAndHalfAtThirty) {
  const double root = std::sqrt(0.5);
  expect_turn(45, root, root);
  expect_turn(135, -root, root);
  expect_turn(225, -root, -root);
  expect_turn(315, root, -root);
  EXPECT_EQ(units::turn(Angle::degrees(30)).sine, 0.5);
  EXPECT_EQ(units::turn(Angle::degrees(60)).cosine, 0.5);
  EXPECT_EQ(units::turn(Angle::degrees(150)).sine, 0.5);
}

TEST(Turn, AQuarterMoreSwapsTheSameBits) {
  EXPECT_TRUE(rc::check("turn(a + 90) is turn(a) turned", [] {
    const double degrees = even<int>(-360 * 64, 360 * 64) / 64.0;  // so that + 90 is exact
    const Turn first = units::turn(Angle::degrees(degrees));
    const Turn second = units::turn(Angle::degrees(degrees + 90));
    RC_ASSERT(second.cosine == -first.sine);
    RC_ASSERT(second.sine == first.cosine);
  }));
}

TEST(Turn, AgreesWithCosineAndSine) {
  EXPECT_TRUE(rc::check("within 4e-16 of a 64-bit cosine and sine", [] {
    const double degrees = even<int>(-360000, 360000) / 1000.0;
    const long double radians = static_cast<long double>(degrees) * std::numbers::pi_v<long double> / 180;
    const Turn turn = units::turn(Angle::degrees(degrees));
    // Radians and cosine are each rounded once: 2 x 2^-53 at most near 1, and 45 degrees x 2^-53 from the angle.
    RC_ASSERT(std::fabs(static_cast<long double>(turn.cosine) - std::cos(radians)) < 4e-16L);
    RC_ASSERT(std::fabs(static_cast<long double>(turn.sine) - std::sin(radians)) < 4e-16L);
  }));
}

TEST(Angle, KeepsDegrees) {
  EXPECT_EQ(Angle::degrees(45).degrees(), 45.0);
  EXPECT_EQ((Angle::degrees(45) + Angle::degrees(90)).degrees(), 135.0);
  EXPECT_DOUBLE_EQ(Angle::degrees(180).radians(), std::numbers::pi);
}

TEST(TurnDeathTest, NeedsAFiniteAngle) {
  EXPECT_DEATH(units::turn(Angle::degrees(std::numeric_limits<double>::infinity())), "an angle is finite");
}

}  // namespace
