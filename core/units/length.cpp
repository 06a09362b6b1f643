#include "units/length.h"

#include <cmath>

#include "problem/ensure.h"
#include "units/rational.h"

namespace units {

Length Length::nearest(Metres metres) {
  const double value = metres.si();
  problem::ensure(std::isfinite(value) && std::fabs(value) <= 1e12, "a length is finite and within 1e12 m");
  // In whole numbers, since value x 320000 rounded to a double can move a value over the half between two steps.
  int exponent = 0;
  const double mantissa = std::frexp(std::fabs(value), &exponent);
  const auto digits = static_cast<Int128>(std::ldexp(mantissa, 53));
  const int shift = 53 - exponent;  // at least 13, because 1e12 is under 2^40
  if (shift > 80) return Length();  // 53 + 19 bits: far under half a step
  const Int128 product = digits * (steps_per_millimetre * 1000);
  const Int128 half = static_cast<Int128>(1) << (shift - 1);
  const auto steps = static_cast<std::int64_t>((product + half) >> shift);
  return Length(value < 0 ? -steps : steps);
}

}  // namespace units
