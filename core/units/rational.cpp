#include "units/rational.h"

#include "problem/ensure.h"

namespace units {

// The one value without a positive twin is left out everywhere, so that a change of sign always fits.
static constexpr Int128 lowest = -((static_cast<Int128>(1) << 126) - 1) * 2 - 2;

static Int128 magnitude(Int128 value) { return value < 0 ? -value : value; }

static Int128 common_divisor(Int128 a, Int128 b) {
  a = magnitude(a);
  b = magnitude(b);
  while (b != 0) {
    const Int128 rest = a % b;
    a = b;
    b = rest;
  }
  return a == 0 ? 1 : a;
}

static std::optional<Int128> times(Int128 a, Int128 b) {
  Int128 result = 0;
  if (__builtin_mul_overflow(a, b, &result)) return std::nullopt;
  if (result == lowest) return std::nullopt;
  return result;
}

MaybeRational fraction(Int128 top, Int128 under) {
  problem::ensure(under != 0, "a fraction is not over 0");
  const Int128 divisor = common_divisor(top, under) * (under < 0 ? -1 : 1);
  return Rational{top / divisor, under / divisor};
}

MaybeRational sum(Rational a, Rational b) {
  const Int128 shared = common_divisor(a.under, b.under);
  const auto left = times(a.top, b.under / shared);
  const auto right = times(b.top, a.under / shared);
  const auto under = times(a.under, b.under / shared);
  Int128 top = 0;
  if (!left || !right || !under || __builtin_add_overflow(*left, *right, &top)) return std::nullopt;
  if (top == lowest) return std::nullopt;
  return fraction(top, *under);
}

MaybeRational product(Rational a, Rational b) {
  const Int128 first = common_divisor(a.top, b.under);
  const Int128 second = common_divisor(b.top, a.under);
  const auto top = times(a.top / first, b.top / second);
  const auto under = times(a.under / second, b.under / first);
  if (!top || !under) return std::nullopt;
  return Rational{*top, *under};
}

MaybeRational quotient(Rational a, Rational b) {
  problem::ensure(b.top != 0, "nothing is divided by 0");
  const int sign = b.top < 0 ? -1 : 1;
  return product(a, Rational{b.under * sign, b.top * sign});
}

Int128 nearest_whole(Rational a) {
  const Int128 positive = magnitude(a.top);
  const Int128 whole = positive / a.under;
  const Int128 rest = positive % a.under;
  const Int128 rounded = rest >= a.under - rest ? whole + 1 : whole;
  return a.top < 0 ? -rounded : rounded;
}

}  // namespace units
