// A quantity as the yard or the foreman writes it, for a line bought in `unit`.
#pragma once

#include <string>
#include <string_view>

#include "problem/problem.h"

namespace estimate {

// "12", "12 tons", "5 t". A bare number is in `unit`; another unit of the same sort is turned into it
// (5 t is 5.5116 short tons), a length in feet and inches too (12' 6" on a line in ft is 12.5). Dot decimals.
// Refused: what is no number, one below 0, a comma (quantity-number), a unit of another sort or that there is not
// (quantity-unit).
problem::Result<double> read_quantity(std::string_view text, const std::string& unit);

}  // namespace estimate
