// Fractions of 128-bit whole numbers, so that what people type is added up exactly and rounded once.
// An operation whose result does not fit gives nothing: the caller refuses the text, it is never rounded on the way.
#pragma once

#include <cstdint>
#include <optional>

namespace units {

__extension__ typedef __int128 Int128;

// top / under in lowest terms, under > 0.
struct Rational {
  Int128 top = 0;
  Int128 under = 1;
};

using MaybeRational = std::optional<Rational>;

// `under` must not be 0; quotient's `b` must not be 0.
MaybeRational fraction(Int128 top, Int128 under);
MaybeRational sum(Rational a, Rational b);
MaybeRational product(Rational a, Rational b);
MaybeRational quotient(Rational a, Rational b);

// The nearest whole number, halves away from zero.
Int128 nearest_whole(Rational a);

}  // namespace units
