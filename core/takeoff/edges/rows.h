// The line beside a path that a row of pieces runs along, and the signed turns at its corners.
#pragma once

#include "plan/job.h"
#include "takeoff/edges/along.h"
#include "takeoff/paving/border.h"

namespace takeoff::edges {

inline constexpr double corner_from = 5;  // degrees of turn: less is a bend, not a corner (trade practice)

// One run with the turns at its ends, radians, positive to the left of the path as walked.
struct TurnedRun {
  paving::RowRun run;
  double before = 0;
  double after = 0;
};

// The runs of row_runs, each knowing to which side its corners turn.
std::vector<TurnedRun> turned_runs(const geometry::Path& path, double from, double deep, geometry::Side towards);

// How units of a kerb or an edging may lie: joints between the catalogue's limits, tapered on curves while the chord
// stays within the limit kerb-flat (1/4 in, common practice), as they come where they are radius units. The item must
// have a length and a width.
paving::RowRules kerb_rules(const plan::Job& job, const catalogue::Item& unit);

}  // namespace takeoff::edges
