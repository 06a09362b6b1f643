// The runs of a row of pieces with their places, for whoever draws them.
#pragma once

#include "takeoff/paving/border.h"

namespace takeoff::paving {

// A run of row_runs and the curves of the drawn line that it follows, in order; `before` and `after` are the signed
// turns of the line at its ends, radians, positive to the left as walked, small bends too.
struct PlacedRun {
  RowRun run;
  std::vector<geometry::Curve> curves;
  double before = 0;
  double after = 0;
};
std::vector<PlacedRun> placed_runs(const geometry::Path& line, double from, double deep, geometry::Side towards);

}  // namespace takeoff::paving
