// Which whole course a wall's base may start from, stretch by stretch.
#pragma once

#include <vector>

namespace takeoff::walls {

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
