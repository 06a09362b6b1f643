// Where to start laying: thousands of start points are tried while a person watches.
#pragma once

#include <vector>

#include "plan/job.h"
#include "takeoff/paving/area.h"

namespace takeoff::paving {

enum class For { cuts, slivers, site };

// One tried start: where, what it gives. `worst_width` is the least cut width when all edges may be wrong by up to the job's
// start tolerance (trade.md E2), steps; only for `site`.
struct Start {
  geometry::Point start;
  Counts counts;
  double worst_width = 0;
};

// Tries `tries` starts spread evenly over one repeat of the pattern (a low-discrepancy grid about the present start, which is
// one of them), best first: cuts by fewest cut units, then slivers; slivers by fewest, then cuts; site by the greatest
// worst_width, then cuts. Ties go to the earlier try, so that the same job gives the same list everywhere.
std::vector<Start> best_starts(const geometry::Region& field, const Lattice& lattice, const Slivers& slivers, For what,
                               int tries = 2000, double tolerance = 0);

}  // namespace takeoff::paving
