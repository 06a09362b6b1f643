#include "units/decimal.h"

#include <charconv>
#include <cmath>

#include "problem/ensure.h"

namespace units {

Decimal shortest_decimal(double value) {
  problem::ensure(std::isfinite(value), "only a finite number has decimals");
  if (value == 0) return {};
  char text[32];
  const char* end = std::to_chars(text, text + sizeof text, std::fabs(value), std::chars_format::scientific).ptr;
  Decimal decimal{value < 0, 0, 0};
  const char* at = text;
  bool after_dot = false;
  for (; *at != 'e'; ++at) {
    if (*at == '.') {
      after_dot = true;
      continue;
    }
    decimal.digits = decimal.digits * 10 + static_cast<std::uint64_t>(*at - '0');
    if (after_dot) --decimal.exponent;
  }
  ++at;
  if (*at == '+') ++at;  // from_chars knows no plus sign
  int power = 0;
  std::from_chars(at, end, power);
  decimal.exponent += power;
  while (decimal.digits % 10 == 0) {
    decimal.digits /= 10;
    ++decimal.exponent;
  }
  return decimal;
}

}  // namespace units
