// A double as the decimal that people see: the shortest digits that read back as it.
// Rounding halves on these digits is what a person with a pencil does: 0.145 is 145/1000 and goes to 0.15, although the
// double nearest to 0.145 lies a little below.
#pragma once

#include <cstdint>

namespace units {

// (-1 if negative) x digits x 10^exponent, with at most 17 digits and no trailing zero (0 is 0 x 10^0).
struct Decimal {
  bool negative = false;
  std::uint64_t digits = 0;
  int exponent = 0;
  bool operator==(const Decimal&) const = default;
};

// The value must be finite. Minus zero is plain zero.
Decimal shortest_decimal(double value);

}  // namespace units
