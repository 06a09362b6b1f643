// Edging held by spikes: how many, and in what lengths it comes.
#pragma once

#include "takeoff/edges/along.h"
#include "takeoff/line.h"

namespace takeoff::edges {

// Spikes at both ends of every part and no further apart than the spacing of that part: ceil(E / s) for each part, and
// one more where the line is open. Neighbouring parts with one spacing count as one part. 60 ft at 2 ft is 31 open and
// 30 closed, 61 ft is 32 (a floor in place of the ceil would leave the far end loose). Spacings must be above 0.
Working spikes(const geometry::Path& path, units::Length straight, units::Length on_curves, const plan::ElementId& of);

// One length of edging along a path.
struct Edging {
  catalogue::Id item;  // sold in stock lengths
  std::optional<plan::Spikes> spikes;
  std::string text;  // what for
};
// Lines for the edging and its spikes, the task "restraint", measures restraint_m and spikes. Pieces are cut to length
// and the rest goes on with the next run, so the quotient is not rounded here.
Share edging(const plan::Job& job, const std::vector<geometry::Path>& paths, const Edging& edging,
             const plan::ElementId& of);

}  // namespace takeoff::edges
