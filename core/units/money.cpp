#include "units/money.h"

#include <limits>

#include "problem/ensure.h"
#include "units/decimal.h"
#include "units/rational.h"

namespace units {

static constexpr auto most_coins = std::numeric_limits<std::int64_t>::max();
static constexpr auto least_coins = std::numeric_limits<std::int64_t>::min();

static Int128 power_of_ten(int exponent) {
  Int128 power = 1;
  for (int i = 0; i < exponent; ++i) power *= 10;
  return power;
}

Money times(Money price, double amount) {
  const Decimal decimal = shortest_decimal(amount);
  // 19 and 17 digits at most: the product has 36 and fits.
  Int128 product = static_cast<Int128>(price.coins()) * static_cast<Int128>(decimal.digits);
  if (decimal.negative) product = -product;
  if (product == 0 || decimal.exponent < -37) return Money();  // 36 digits over 10^38 is under half a coin
  if (decimal.exponent >= 0) {
    problem::ensure(decimal.exponent <= 19, "an amount of money fits 64 bits");
    Int128 coins = 0;
    problem::ensure(!__builtin_mul_overflow(product, power_of_ten(decimal.exponent), &coins) && coins >= least_coins &&
                        coins <= most_coins,
                    "an amount of money fits 64 bits");
    return Money::of_coins(static_cast<std::int64_t>(coins));
  }
  const Int128 coins = nearest_whole({product, power_of_ten(-decimal.exponent)});
  problem::ensure(coins >= least_coins && coins <= most_coins, "an amount of money fits 64 bits");
  return Money::of_coins(static_cast<std::int64_t>(coins));
}

std::string write_money(Money money, int decimals) {
  problem::ensure(decimals >= 0 && decimals <= 9, "a currency has 0 to 9 decimals");
  const bool negative = money.coins() < 0;
  const auto coins = static_cast<std::uint64_t>(money.coins());
  std::string digits = std::to_string(negative ? 0 - coins : coins);
  const auto after = static_cast<std::size_t>(decimals);
  if (digits.size() <= after) digits.insert(0, after + 1 - digits.size(), '0');
  if (after > 0) digits.insert(digits.size() - after, ".");
  return (negative ? "-" : "") + digits;
}

static bool is_digit(char letter) { return letter >= '0' && letter <= '9'; }

static std::unexpected<problem::Problem> not_money(std::string_view text, std::size_t index, const char* reason,
                                                   int decimals) {
  problem::Place place;
  place.column = static_cast<int>(index) + 1;
  const std::string example = write_money(Money::of_coins(123450), decimals);
  return problem::fault("money-not-understood",
                        "The price " + std::string(text.substr(0, 40)) + " can't be read: " + reason,
                        "write it as " + example, place);
}

problem::Result<Money> read_money(std::string_view text, int decimals) {
  problem::ensure(decimals >= 0 && decimals <= 9, "a currency has 0 to 9 decimals");
  const bool negative = text.starts_with('-');
  const std::size_t start = negative ? 1 : 0;
  std::size_t at = start;
  int places = -1;  // digits after the dot, -1 before it
  Int128 coins = 0;
  for (; at < text.size(); ++at) {
    if (text[at] == '.' && places < 0 && at > start && decimals > 0) {
      places = 0;
      continue;
    }
    if (!is_digit(text[at])) return not_money(text, at, "this is no digit of a price", decimals);
    if (at == start + 1 && text[start] == '0') return not_money(text, start, "there is a 0 too many", decimals);
    if (places == decimals) return not_money(text, at, "the smallest coin is coarser", decimals);
    coins = coins * 10 + (text[at] - '0');
    if (places >= 0) ++places;
    if (-coins < least_coins) return not_money(text, start, "it is too large", decimals);
  }
  if (at == start || places == 0) return not_money(text, at, "a digit is missing", decimals);
  for (int i = places < 0 ? 0 : places; i < decimals; ++i) coins *= 10;
  if (negative) coins = -coins;
  if (coins == 0 && negative) return not_money(text, 0, "zero has no sign", decimals);
  if (coins < least_coins || coins > most_coins) return not_money(text, start, "it is too large", decimals);
  return Money::of_coins(static_cast<std::int64_t>(coins));
}

}  // namespace units
