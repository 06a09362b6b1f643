// Numbers in files: dot decimals whatever the locale, shortest form that reads back as the same double.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace units {

// The whole text must be one finite decimal number ("-1.5e3"); spaces, commas, hex, nan and inf give nothing.
std::optional<double> read_number(std::string_view text);

// Shortest text that reads back as the same double; whole numbers under 1e15 without exponent or dot. Minus zero is
// written 0. The value must be finite.
std::string write_number(double value);

// Rounded for people to so many decimals, halves away from zero as printed; trailing zeros kept; never "-0.00".
std::string show_number(double value, int decimals);

// The same with thousands marks: 1,818.50.
std::string show_grouped(double value, int decimals);

}  // namespace units
