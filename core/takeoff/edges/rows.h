// The line beside a path that a row of pieces runs along, and the signed turns at its corners.
#pragma once

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

}  // namespace takeoff::edges
