#include "estimate/proportion.h"

#include <cmath>

#include "units/decimal.h"
#include "units/rational.h"

namespace estimate {

using units::Int128;
using units::Money;

namespace {

constexpr std::int64_t most_coins = 9'000'000'000'000'000;

units::MaybeRational exact(double number) {
  const units::Decimal decimal = units::shortest_decimal(number);
  if (decimal.exponent < -20 || decimal.exponent > 15) return std::nullopt;
  Int128 top = static_cast<Int128>(decimal.digits), under = 1;
  for (int i = decimal.exponent; i < 0; ++i) under *= 10;
  for (int i = 0; i < decimal.exponent; ++i) top *= 10;
  return units::fraction(decimal.negative ? -top : top, under);
}

std::optional<Int128> exactly(Money amount, double now, double then) {
  const auto top = exact(now), under = exact(then);
  const auto share = top && under && under->top != 0 ? units::quotient(*top, *under) : std::nullopt;
  const auto made = share ? units::product(*share, {amount.coins(), 1}) : std::nullopt;
  return made ? std::optional(units::nearest_whole(*made)) : std::nullopt;
}

}  // namespace

std::optional<Money> in_proportion(Money amount, double now, double then) {
  if (!std::isfinite(now) || !std::isfinite(then) || then == 0) return std::nullopt;
  const long double about =
      static_cast<long double>(amount.coins()) * static_cast<long double>(now) / static_cast<long double>(then);
  if (!(std::abs(about) <= static_cast<long double>(most_coins))) return std::nullopt;
  const auto coins = exactly(amount, now, then);
  return Money::of_coins(coins ? static_cast<std::int64_t>(*coins) : std::llround(about));
}

}  // namespace estimate
