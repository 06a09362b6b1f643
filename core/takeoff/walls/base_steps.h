// How deep a wall's base lies, and which whole course it may start from, stretch by stretch.
#pragma once

#include <vector>

namespace takeoff::walls {

// Exposed height over buried depth where the ground in front falls 1 in `toe` (0: level), from memory of the design
// manual: level 20, 3H:1V 10, 2H:1V 7, 1.5H:1V and steeper 5; straight between in the slope.
double bury_divisor(double toe);

// A stretch along the wall and the highest course that may be its lowest one.
struct Allowed {
  double from = 0;
  double to = 0;
  int course = 0;
};

// The step function under `allowed` that leaves the least wall under it to bury, of those whose runs are at least
// `least_run` long (metres) and whose lower side runs `into_bank` on past every step. One run where the whole is
// shorter. The stretches are in order and without gaps; one course for each comes back.
std::vector<int> base_steps(const std::vector<Allowed>& allowed, double least_run, double into_bank);

}  // namespace takeoff::walls
