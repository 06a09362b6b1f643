// Lines that no drawing makes.
#pragma once

#include <vector>

#include "estimate/estimate.h"

namespace estimate {

inline constexpr std::string_view added_prefix = "added:";

// The added lines of the offer as order lines, item "added:" and the line's id, in their order. One that is nothing on
// purpose has the amount 0. Work in hours counts in the hours of its stage. Problems: offer-stage (a stage that there
// is not: the line stands in the last), offer-line (a quantity that is none), no-price (0 without saying so), all with
// the line kept; a flag offer-line where a line is nothing on purpose and has a price.
std::vector<OrderLine> added_lines(const plan::Job& job, const std::vector<plan::AddedLine>& lines,
                                   std::vector<problem::Problem>& problems);

}  // namespace estimate
