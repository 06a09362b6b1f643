// Machines that the work runs, and what their hire costs.
#pragma once

#include <vector>

#include "estimate/estimate.h"

namespace estimate {

// One line for each stage and machine that the rates of the work there name. A machine runs while the crew of the rate
// is at it: person-hours / heads. Hire is by the half day of the job's hours a day (8 where those are not over 0), and
// at least the machine's detail least_hire_days (half a day if not given); a machine whose unit is the hour is hired by
// whole hours, at least its detail least_hire_hours. A stage is a visit of its own: what stays on site over two stages
// is hired in both. Problems: item-unknown, no-price (also where it is hired by neither day nor hour).
std::vector<OrderLine> machines(const plan::Job& job, const std::vector<OrderLine>& work,
                                std::vector<problem::Problem>& problems);

}  // namespace estimate
