// The words of a typed length: numbers, fractions, units and signs, each with its place.
#pragma once

#include <cstdint>
#include <expected>
#include <string>
#include <string_view>
#include <vector>

#include "units/rational.h"

namespace units {

enum class Kind { number, fraction, unit, plus, minus, times, divide, open, close, end };

// `column` counts letters (not bytes) from 1.
struct Token {
  Kind kind = Kind::end;
  int column = 0;
  bool space_before = false;
  Rational value;               // of a number or a fraction
  bool whole = false;           // a number without a dot
  bool one_letter = false;      // a fraction written as one letter, so that it may touch its whole number
  std::int64_t unit_steps = 0;  // of a unit: its size in steps of Length
};

// What can't be understood, where, and what to write instead.
struct LengthFault {
  std::string code;
  std::string reason;
  std::string mend;
  int column = 0;
};

// The tokens of the text, always with an `end` token last. A fraction is two whole numbers with a slash and no space
// between them; with spaces, or next to a dot, the slash divides. Letters and marks outside the grammar, a denominator
// of 0, a dot without digits after it, digits past 128 bits and broken UTF-8 are faults.
std::expected<std::vector<Token>, LengthFault> length_tokens(std::string_view text);

}  // namespace units
