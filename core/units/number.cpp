#include "units/number.h"

#include <charconv>
#include <cmath>
#include <cstdint>

#include "problem/ensure.h"
#include "units/decimal.h"

namespace units {

std::optional<double> read_number(std::string_view text) {
  double value = 0;
  const char* end = text.data() + text.size();
  const auto [stop, fault] = std::from_chars(text.data(), end, value);
  if (fault != std::errc() || stop != end || !std::isfinite(value)) return std::nullopt;
  return value;
}

std::string write_number(double value) {
  problem::ensure(std::isfinite(value), "only finite numbers are written");
  if (value == 0) return "0";
  char text[32];
  const bool whole = std::fabs(value) < 1e15 && std::trunc(value) == value;
  const auto end = whole ? std::to_chars(text, text + sizeof text, value, std::chars_format::fixed).ptr
                         : std::to_chars(text, text + sizeof text, value).ptr;
  return std::string(text, end);
}

// Digits of the magnitude times 10^decimals, rounded; empty for zero.
static std::string rounded_digits(Decimal decimal, int decimals) {
  const int surplus = -decimal.exponent - decimals;
  if (surplus > 17) return {};  // at most 17 digits: under half of the last place
  if (surplus > 0) {
    std::uint64_t scale = 1;
    for (int i = 0; i < surplus; ++i) scale *= 10;
    decimal.digits = (decimal.digits + scale / 2) / scale;
  }
  if (decimal.digits == 0) return {};
  std::string digits = std::to_string(decimal.digits);
  if (surplus < 0) digits.append(static_cast<std::size_t>(-surplus), '0');
  return digits;
}

static std::string show(double value, int decimals, bool grouped) {
  problem::ensure(decimals >= 0 && decimals <= 100, "decimals shown are 0 to 100");
  const Decimal decimal = shortest_decimal(value);
  std::string digits = rounded_digits(decimal, decimals);
  const bool negative = decimal.negative && !digits.empty();
  const auto after = static_cast<std::size_t>(decimals);
  if (digits.size() <= after) digits.insert(0, after + 1 - digits.size(), '0');
  const std::size_t whole = digits.size() - after;
  if (after > 0) digits.insert(whole, ".");
  if (grouped) {
    for (std::size_t place = whole; place > 3; place -= 3) digits.insert(place - 3, ",");
  }
  return (negative ? "-" : "") + digits;
}

std::string show_number(double value, int decimals) { return show(value, decimals, false); }

std::string show_grouped(double value, int decimals) { return show(value, decimals, true); }

}  // namespace units
