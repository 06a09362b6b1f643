#include "units/number.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <bit>
#include <cmath>
#include <cstring>
#include <limits>

#include "draw.h"
#include "units/decimal.h"

namespace {

using units::read_number;
using units::show_grouped;
using units::show_number;
using units::write_number;

// Any finite double, by its bits.
double any_finite() {
  const double value = std::bit_cast<double>(*rc::gen::resize(rc::kNominalSize, rc::gen::arbitrary<std::uint64_t>()));
  RC_PRE(std::isfinite(value));
  return value;
}

TEST(ReadNumber, ReadsDecimals) {
  EXPECT_EQ(read_number("0"), 0.0);
  EXPECT_EQ(read_number("-1.5e3"), -1500.0);
  EXPECT_EQ(read_number("1E3"), 1000.0);
  EXPECT_EQ(read_number("0.1"), 0.1);
  EXPECT_EQ(read_number("12345678901234567890"), 12345678901234567890.0);
}

TEST(ReadNumber, GivesNothingForAllElse) {
  for (const char* text :
       {"",   " ",     " 1",  "1 ", "1,5", "1.000,5", "0x10",  "nan",    "inf",      "-inf", "infinity", "NaN", "1e",
        "e3", "1.2.3", "--1", "+1", "-",   ".",       "1e999", "-1e999", "5 apples", "1'",   "1e3.5",    "\n1"}) {
    EXPECT_EQ(read_number(text), std::nullopt) << text;
  }
  EXPECT_EQ(read_number(std::string_view("1\0", 2)), std::nullopt);
}

TEST(WriteNumber, IsShortest) {
  EXPECT_EQ(write_number(0), "0");
  EXPECT_EQ(write_number(-0.0), "0");
  EXPECT_EQ(write_number(0.1), "0.1");
  EXPECT_EQ(write_number(0.1 + 0.2), "0.30000000000000004");
  EXPECT_EQ(write_number(100000), "100000");
  EXPECT_EQ(write_number(-1000000), "-1000000");
  EXPECT_EQ(write_number(999999999999999), "999999999999999");
  EXPECT_EQ(write_number(1e15), "1e+15");
  EXPECT_EQ(write_number(1e300), "1e+300");
  EXPECT_EQ(write_number(12.5), "12.5");
}

TEST(WriteNumber, ReadsBackAsTheSameDouble) {
  EXPECT_TRUE(rc::check("every finite double", [] {
    const double value = any_finite();
    RC_ASSERT(read_number(write_number(value)) == value);
  }));
  EXPECT_TRUE(rc::check("whole numbers have neither dot nor exponent", [] {
    const auto whole = even<std::int64_t>(-999999999999999, 1000000000000000);
    RC_ASSERT(write_number(static_cast<double>(whole)) == std::to_string(whole));
  }));
}

TEST(ShowNumber, RoundsHalvesAwayFromZeroAsPrinted) {
  EXPECT_EQ(show_number(0.145, 2), "0.15");
  EXPECT_EQ(show_number(-0.145, 2), "-0.15");
  EXPECT_EQ(show_number(2.5, 0), "3");
  EXPECT_EQ(show_number(-2.5, 0), "-3");
  EXPECT_EQ(show_number(1.005, 2), "1.01");
  EXPECT_EQ(show_number(0.5, 0), "1");
  EXPECT_EQ(show_number(0.05, 1), "0.1");
  EXPECT_EQ(show_number(0.049, 1), "0.0");
  EXPECT_EQ(show_number(9.995, 2), "10.00");
  EXPECT_EQ(show_number(1818.5, 2), "1818.50");
  EXPECT_EQ(show_number(3, 0), "3");
  EXPECT_EQ(show_number(0, 2), "0.00");
  EXPECT_EQ(show_number(1e22, 1), "10000000000000000000000.0");
  EXPECT_EQ(show_number(1e-300, 3), "0.000");
}

TEST(ShowNumber, NeverShowsMinusZero) {
  EXPECT_EQ(show_number(-0.0, 2), "0.00");
  EXPECT_EQ(show_number(-0.004, 2), "0.00");
  EXPECT_EQ(show_number(-0.005, 2), "-0.01");
  EXPECT_EQ(show_number(-0.4, 0), "0");
}

TEST(ShowGrouped, HasThousandsMarks) {
  EXPECT_EQ(show_grouped(1818.5, 2), "1,818.50");
  EXPECT_EQ(show_grouped(-1818.5, 2), "-1,818.50");
  EXPECT_EQ(show_grouped(818.5, 2), "818.50");
  EXPECT_EQ(show_grouped(-818.5, 0), "-819");
  EXPECT_EQ(show_grouped(999999.999, 2), "1,000,000.00");
  EXPECT_EQ(show_grouped(1234567, 0), "1,234,567");
  EXPECT_EQ(show_grouped(100000, 3), "100,000.000");
}

TEST(ShowNumber, IsWithinHalfOfTheLastPlace) {
  EXPECT_TRUE(rc::check("|shown - value| <= half of the last place", [] {
    const double value = static_cast<double>(even<std::int64_t>(-1000000000, 1000000000)) / 8192.0;
    const int decimals = even<int>(0, 6);
    const std::string text = show_number(value, decimals);
    const long double off = std::fabs(std::strtold(text.c_str(), nullptr) - static_cast<long double>(value));
    RC_ASSERT(off <= 0.5L * std::pow(10.0L, -decimals) * (1 + 1e-9L));  // 1e-9: the two powers are rounded themselves
    RC_ASSERT(text.size() - (text.find('.') == std::string::npos ? text.size() : text.find('.') + 1) ==
              static_cast<std::size_t>(decimals));
  }));
}

TEST(ShowGrouped, IsShowNumberWithMarks) {
  EXPECT_TRUE(rc::check("without commas both are one", [] {
    const double value = static_cast<double>(even<std::int64_t>(-1000000000000, 1000000000000)) / 1000.0;
    const int decimals = even<int>(0, 5);
    std::string text = show_grouped(value, decimals);
    std::erase(text, ',');
    RC_ASSERT(text == show_number(value, decimals));
  }));
}

TEST(ShortestDecimal, TakesTheDigitsApart) {
  EXPECT_EQ(units::shortest_decimal(0.145), (units::Decimal{false, 145, -3}));
  EXPECT_EQ(units::shortest_decimal(-1500), (units::Decimal{true, 15, 2}));
  EXPECT_EQ(units::shortest_decimal(1e300), (units::Decimal{false, 1, 300}));
  EXPECT_EQ(units::shortest_decimal(5e-324), (units::Decimal{false, 5, -324}));
  EXPECT_EQ(units::shortest_decimal(0), units::Decimal{});
}

TEST(NumberDeathTest, OnlyFiniteNumbersAreWritten) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  EXPECT_DEATH(write_number(nan), "finite");
  EXPECT_DEATH(show_number(nan, 2), "finite");
  EXPECT_DEATH(show_number(1, -1), "decimals");
}

}  // namespace
