// A rough price for an enquiry, out of the office's own closed jobs. It is not a quote and says so.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "units/money.h"

namespace estimate {

// What one closed job came to for one measure: deck area, metres of coping, wall face ... in any one unit.
struct ClosedJob {
  double measure = 0;
  units::Money price;
};

struct Rough {
  std::size_t jobs = 0;  // that it is made from
  std::size_t left_out = 0;
  units::Money low;  // per unit of the measure: first quartile, median, third quartile, each rounded once to the coin
  units::Money middle;
  units::Money high;
  std::string note;  // "not a quote: from 5 closed jobs"
};

// Nothing from fewer than 3 jobs. One without a measure over 0 or a price over 0 is left out and counted. Quartiles by
// linear interpolation between the ordered values, at place 1 + (n - 1) p: definition 7 of Hyndman and Fan, "Sample
// quantiles in statistical packages", The American Statistician 50 (1996).
std::optional<Rough> rough(const std::vector<ClosedJob>& jobs);

}  // namespace estimate
