// Where to start laying: thousands of start points are tried while a person watches.
#pragma once

#include <functional>
#include <vector>

#include "plan/job.h"
#include "takeoff/paving/area.h"

namespace takeoff::paving {

enum class For { cuts, slivers, site };

// One tried start: where, what it gives. `worst_width` is the least cut width when all edges may be wrong by up to the
// job's start tolerance, steps; only for `site`.
struct Start {
  geometry::Point start;
  Counts counts;
  double worst_width = 0;
  std::int64_t at_risk = 0;  // units that such an error adds or takes away; only for `site`
};

// Tries `tries` starts: the present one, those that put a corner of a module on edges in line with the pattern, and a
// low-discrepancy spread over one repeat of it. Best first: cuts by fewest cut units, then slivers; slivers by fewest,
// then cuts; site by the greatest worst_width, then fewest at risk, then cuts. Ties go to the earlier try, so that the
// same job gives the same list everywhere. `tolerance` is in steps. `goes_on` is asked before each try with the share
// that is done; where it says no, the list is of those tried so far, the present start always among them.
std::vector<Start> best_starts(const geometry::Region& field, const Lattice& lattice, const Slivers& slivers, For what,
                               int tries = 2000, double tolerance = 0, const std::function<bool(double)>& goes_on = {});

}  // namespace takeoff::paving
