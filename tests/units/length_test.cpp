#include "units/length.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cmath>
#include <limits>

#include "draw.h"

namespace {

using units::Length;
using units::Metres;

constexpr std::int64_t grid_limit = 320000LL * 1000000000;  // 1e9 m

TEST(Length, NearestTakesTheNearestStep) {
  EXPECT_EQ(Length::nearest(Metres(0)).steps(), 0);
  EXPECT_EQ(Length::nearest(Metres(3.81)), Length::millimetres(3810));
  EXPECT_EQ(Length::nearest(Metres(-3.81)), Length::millimetres(-3810));
  EXPECT_EQ(Length::nearest(Metres(0.3048)), Length::feet(1));
  EXPECT_EQ(Length::nearest(Metres(0.0254 / 64)), Length::inch_64ths(1));
  EXPECT_EQ(Length::nearest(Metres(1e-30)).steps(), 0);
  EXPECT_EQ(Length::nearest(Metres(5e-324)).steps(), 0);
  EXPECT_EQ(Length::nearest(Metres(1e12)).steps(), 320000000000000000);
  EXPECT_EQ(Length::nearest(Metres(-1e12)).steps(), -320000000000000000);
}

TEST(Length, NearestTakesHalvesAwayFromZero) {
  // A half step as an exact double: 320000 = 2^9 x 625, so 1/1024 m = 312.5 steps and 3/1024 m = 937.5 steps.
  EXPECT_EQ(Length::nearest(Metres(1.0 / 1024)).steps(), 313);
  EXPECT_EQ(Length::nearest(Metres(-1.0 / 1024)).steps(), -313);
  EXPECT_EQ(Length::nearest(Metres(3.0 / 1024)).steps(), 938);
  // The doubles on either side of the half.
  EXPECT_EQ(Length::nearest(Metres(std::nextafter(1.0 / 1024, 0))).steps(), 312);
  EXPECT_EQ(Length::nearest(Metres(std::nextafter(3.0 / 1024, 0))).steps(), 937);
  EXPECT_EQ(Length::nearest(Metres(std::nextafter(1.0 / 1024, 1))).steps(), 313);
}

TEST(Length, NearestUndoesMetresOnTheWholeGrid) {
  EXPECT_TRUE(rc::check("nearest(metres()) is the identity", [] {
    const auto length = Length::of_steps(even<std::int64_t>(-grid_limit, grid_limit));
    RC_ASSERT(Length::nearest(length.metres()) == length);
  }));
}

TEST(Length, NearestIsNeverMoreThanHalfAStepOff) {
  EXPECT_TRUE(rc::check("|value x 320000 - steps| <= 1/2", [] {
    const double value =
        std::ldexp(static_cast<double>(even<std::int64_t>(-(1LL << 53), 1LL << 53)), even<int>(-70, -14));
    const auto steps = Length::nearest(Metres(value)).steps();
    // 53 bits x 320000 = 2^9 x 625: 63 bits, which a long double of 64 bits holds exactly.
    static_assert(std::numeric_limits<long double>::digits >= 64);
    const long double off = static_cast<long double>(value) * 320000.0L - static_cast<long double>(steps);
    RC_ASSERT(std::fabs(off) <= 0.5L);
    if (std::fabs(off) == 0.5L) RC_ASSERT((off < 0) == (value > 0));
  }));
}

TEST(LengthDeathTest, NearestTakesFiniteLengthsWithinItsRange) {
  EXPECT_DEATH(Length::nearest(Metres(std::numeric_limits<double>::quiet_NaN())), "a length is finite");
  EXPECT_DEATH(Length::nearest(Metres(std::numeric_limits<double>::infinity())), "a length is finite");
  EXPECT_DEATH(Length::nearest(Metres(1.0001e12)), "a length is finite");
}

TEST(Length, Arithmetic) {
  const Length a = Length::feet(12) + Length::inches(6) + Length::inch_64ths(32);
  EXPECT_EQ(a.inches(), 150.5);
  EXPECT_EQ((a - Length::inches(150)).inches(), 0.5);
  EXPECT_EQ((a * 2).inches(), 301.0);
  EXPECT_EQ((3 * a).inches(), 451.5);
  EXPECT_EQ((-a).steps(), -a.steps());
  EXPECT_EQ(Length::feet(1) / Length::inches(3), 4.0);
  EXPECT_EQ(Length::millimetres(38).millimetres(), 38.0);
  EXPECT_LT(Length::millimetres(25), Length::inches(1));
}

}  // namespace
