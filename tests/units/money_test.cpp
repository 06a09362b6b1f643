#include "units/money.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cstdio>
#include <cstdlib>
#include <limits>
#include <random>
#include <string>

#include "draw.h"

namespace {

using units::Money;
using units::times;

Money coins(std::int64_t count) { return Money::of_coins(count); }

TEST(MoneyTimes, TakesTheAmountAsItsShortestDecimal) {
  EXPECT_EQ(times(coins(100), 0.145), coins(15));  // 1.00 x 0.145 = 0.145 -> 0.15; the double is 0.14499999999999999
  EXPECT_EQ(times(coins(100), -0.145), coins(-15));
  EXPECT_EQ(times(coins(-100), 0.145), coins(-15));
  EXPECT_EQ(times(coins(-100), -0.145), coins(15));
  EXPECT_EQ(times(coins(100), 1.005), coins(101));  // 1.005 -> 1.01; the double is 1.00499999999999989
  EXPECT_EQ(times(coins(100), 0.144), coins(14));
  EXPECT_EQ(times(coins(1), 0.5), coins(1));  // half a coin goes up
  EXPECT_EQ(times(coins(1), 0.4999999999999999), coins(0));
  EXPECT_EQ(times(coins(1999), 3), coins(5997));
  EXPECT_EQ(times(coins(1999), 1.15), coins(2299));  // 19.99 x 1.15 = 22.9885
  EXPECT_EQ(times(coins(250), 1e3), coins(250000));
  EXPECT_EQ(times(coins(12345), 0), coins(0));
  EXPECT_EQ(times(coins(0), 1e300), coins(0));
  EXPECT_EQ(times(coins(std::numeric_limits<std::int64_t>::max()), 1e-300), coins(0));
  EXPECT_EQ(times(coins(std::numeric_limits<std::int64_t>::max()), 1), coins(std::numeric_limits<std::int64_t>::max()));
  EXPECT_EQ(times(coins(std::numeric_limits<std::int64_t>::min()), 1), coins(std::numeric_limits<std::int64_t>::min()));
  EXPECT_EQ(times(coins(std::numeric_limits<std::int64_t>::max()), 1e-19), coins(1));  // 0.92 coins
  EXPECT_EQ(times(coins(4999999999999999999), 1e-19), coins(0));                       // just under half
  EXPECT_EQ(times(coins(5000000000000000000), 1e-19), coins(1));
}

// Long multiplication on decimal digits, as on paper: text x text, then cut at the dot and look at the first digit cut.
std::string product_on_paper(const std::string& a, const std::string& b) {
  std::string result(a.size() + b.size(), '\0');
  for (std::size_t i = a.size(); i-- > 0;) {
    int carry = 0;
    for (std::size_t j = b.size(); j-- > 0;) {
      const int sum = result[i + j + 1] + (a[i] - '0') * (b[j] - '0') + carry;
      result[i + j + 1] = static_cast<char>(sum % 10);
      carry = sum / 10;
    }
    result[i] = static_cast<char>(result[i] + carry);
  }
  for (char& digit : result) digit = static_cast<char>(digit + '0');
  return result;
}

// price x (digits / 10^places), rounded on paper.
std::int64_t coins_on_paper(std::int64_t price, std::int64_t digits, int places) {
  const bool negative = (price < 0) != (digits < 0);
  std::string product = product_on_paper(std::to_string(std::llabs(price)), std::to_string(std::llabs(digits)));
  product.insert(0, static_cast<std::size_t>(places), '0');
  const std::size_t cut = product.size() - static_cast<std::size_t>(places);
  const std::int64_t whole = std::stoll(product.substr(0, cut));
  const bool up = places > 0 && product[cut] >= '5';
  return (whole + (up ? 1 : 0)) * (negative ? -1 : 1);
}

TEST(MoneyTimes, AgreesWithLongMultiplicationOnAHundredThousandProducts) {
  std::mt19937_64 random(20240501);  // a fixed seed: the same products in every run
  int halves = 0;
  for (int i = 0; i < 100000; ++i) {
    const int places = static_cast<int>(random() % 9);
    const int amount_digits = 1 + static_cast<int>(random() % 10);
    std::int64_t most = 1;
    for (int d = 0; d < amount_digits; ++d) most *= 10;
    std::int64_t digits = static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(most));
    if (random() % 4 == 0) digits = digits / 10 * 10 + 5;  // more halves than chance gives
    std::int64_t price = static_cast<std::int64_t>(random() % 100000000);
    if (random() % 3 == 0) price = price / 100 * 100;
    if (random() % 2 == 0) digits = -digits;
    if (random() % 5 == 0) price = -price;
    const std::string text = std::to_string(digits) + "e-" + std::to_string(places);
    const double amount = std::strtod(text.c_str(), nullptr);
    const std::int64_t expected = coins_on_paper(price, digits, places);
    ASSERT_EQ(times(coins(price), amount).coins(), expected) << price << " x " << text;
    // |price| < 10^8 and |digits| < 10^10: the product fits 64 bits.
    std::int64_t scale = 1;
    for (int d = 0; d < places; ++d) scale *= 10;
    if (std::llabs(price * digits % scale) * 2 == scale) ++halves;
  }
  // The test is only worth its name if true halves are among the products.
  EXPECT_GT(halves, 1000);
}

TEST(MoneyTimes, FifteenDigitsAreExact) {
  EXPECT_TRUE(rc::check("15 digits, all places", [] {
    const auto digits = even<std::int64_t>(-999999999999999, 1000000000000000);
    const int places = even<int>(0, 16);
    const auto price = even<std::int64_t>(-9000, 9001);
    const double amount = std::strtod((std::to_string(digits) + "e-" + std::to_string(places)).c_str(), nullptr);
    RC_ASSERT(times(coins(price), amount).coins() == coins_on_paper(price, digits, places));
  }));
}

TEST(MoneyTimesDeathTest, PastTheRangeIsABrokenPromise) {
  EXPECT_DEATH(times(coins(std::numeric_limits<std::int64_t>::max()), 1.1), "fits 64 bits");
  EXPECT_DEATH(times(coins(1), 1e19), "fits 64 bits");
  EXPECT_DEATH(times(coins(1), 1e300), "fits 64 bits");
  EXPECT_DEATH(times(coins(1), std::numeric_limits<double>::quiet_NaN()), "finite");
}

TEST(WriteMoney, DotDecimalsWithoutThousandsMark) {
  EXPECT_EQ(write_money(coins(123450), 2), "1234.50");
  EXPECT_EQ(write_money(coins(-123450), 2), "-1234.50");
  EXPECT_EQ(write_money(coins(5), 2), "0.05");
  EXPECT_EQ(write_money(coins(-5), 2), "-0.05");
  EXPECT_EQ(write_money(coins(0), 2), "0.00");
  EXPECT_EQ(write_money(coins(1234), 0), "1234");
  EXPECT_EQ(write_money(coins(1), 3), "0.001");
  EXPECT_EQ(write_money(coins(std::numeric_limits<std::int64_t>::min()), 2), "-92233720368547758.08");
}

TEST(ReadMoney, ReadsWhatIsWritten) {
  EXPECT_EQ(units::read_money("12.5", 2).value(), coins(1250));
  EXPECT_EQ(units::read_money("12.50", 2).value(), coins(1250));
  EXPECT_EQ(units::read_money("12", 2).value(), coins(1200));
  EXPECT_EQ(units::read_money("-0.05", 2).value(), coins(-5));
  EXPECT_EQ(units::read_money("0", 0).value(), coins(0));
  EXPECT_EQ(units::read_money("0.00", 2).value(), coins(0));
  EXPECT_EQ(units::read_money("1500", 0).value(), coins(1500));
}

TEST(ReadMoney, RefusesAllElseWithItsPlace) {
  const struct {
    const char* text;
    int decimals;
    int column;
  } cases[] = {{"", 2, 1},
               {"-", 2, 2},
               {"12.505", 2, 6},
               {"12.", 2, 4},
               {".5", 2, 1},
               {"12,50", 2, 3},
               {"1,234.50", 2, 2},
               {"$5", 2, 1},
               {"5 ", 2, 2},
               {" 5", 2, 1},
               {"+5", 2, 1},
               {"--5", 2, 2},
               {"1e3", 2, 2},
               {"1.2.3", 2, 4},
               {"12.5", 0, 3},
               {"007", 2, 1},
               {"-0.00", 2, 1},
               {"nan", 2, 1},
               {"0x10", 2, 2},
               {"92233720368547758.08", 2, 1},
               {"-92233720368547758.09", 2, 2},
               {"99999999999999999999999999999999999999999", 2, 1}};
  for (const auto& each : cases) {
    const auto money = units::read_money(each.text, each.decimals);
    ASSERT_FALSE(money.has_value()) << each.text;
    EXPECT_EQ(money.error().place.column, each.column) << each.text;
    EXPECT_EQ(money.error().code, "money-not-understood");
    EXPECT_FALSE(money.error().mend.empty());
  }
}

TEST(ReadMoney, UndoesWriteMoney) {
  EXPECT_TRUE(rc::check("read_money(write_money(m)) is m", [] {
    const Money money = coins(*rc::gen::resize(rc::kNominalSize, rc::gen::arbitrary<std::int64_t>()));
    const int decimals = even<int>(0, 10);
    RC_ASSERT(units::read_money(units::write_money(money, decimals), decimals).value() == money);
  }));
  for (const auto edge : {std::numeric_limits<std::int64_t>::min(), std::numeric_limits<std::int64_t>::max()}) {
    EXPECT_EQ(units::read_money(units::write_money(coins(edge), 2), 2).value(), coins(edge));
  }
}

}  // namespace
