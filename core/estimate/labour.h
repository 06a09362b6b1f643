// Hours of work, who does it and what that costs.
#pragma once

#include <string_view>
#include <vector>

#include "estimate/estimate.h"

namespace estimate {

// Part of a crew: how many heads of which labour item.
struct Hands {
  double heads = 1;
  plan::Id item;
};

// "1 lab-layer + 1/2 lab-labourer"; "crew-unknown" where it can't be read.
problem::Result<std::vector<Hands>> read_crew(std::string_view text);

// Hours over what a crew of so many people works in a day; 0 where either is not over 0.
double crew_days(double hours, double people, double day_hours);

// One line for each stage and rate, in the order of the tasks: hours = quantity x hours per unit x named factor, then
// x each condition of the offer that holds on the stage (factors.h); hours are shared by heads, each at its own hourly
// price; money from unrounded hours. The sentence counts days of the heads that the rate names. Problems: rate-unknown,
// rate-unit (the quantity is not in the rate's si_unit), crew-unknown, item-unknown, no-price.
std::vector<OrderLine> labour(const plan::Job& job, const std::vector<takeoff::Task>& tasks,
                              std::vector<problem::Problem>& problems);

}  // namespace estimate
