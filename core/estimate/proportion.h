// A sum of money in proportion to a quantity.
#pragma once

#include <optional>

#include "units/money.h"

namespace estimate {

// amount x now / then, rounded once, half away from zero: numbers stand for their shortest decimals, and exactly so as
// long as the digits fit in 128 bits; past that a long double is near enough, because such a number was measured or
// reckoned. Nothing where `then` is 0, where one is no number, or past 9e15 coins.
std::optional<units::Money> in_proportion(units::Money amount, double now, double then);

}  // namespace estimate
