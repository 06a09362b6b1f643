// From what somebody drew to a Region, or to the place of its fault.
#pragma once

#include <vector>

#include "geometry/outline.h"

namespace geometry {

// What was drawn: the first ring is the outside, the others are islands in it. Either way round.
using Drawn = std::vector<Ring>;

struct Shape {
  Region region;
  // "outline-touches-itself" (a notice) and "outline-spike" (a problem, though the ground counts), each with its place.
  std::vector<problem::Problem> notices;
};

// Rings are turned so that ground lies left. What has no area to speak of is a Problem with place.at set and one of the
// codes: outline-empty (fewer than two edges, or two straight ones), edge-zero-length, outline-spike (an arc turns back
// on the edge before it, or nothing but spikes was drawn), outline-crosses-itself, hole-outside, holes-overlap,
// outline-no-area, outline-too-far (past reach_of_plan), edge-bulge (not finite, or past the limit).
// A ring that only touches itself is split there, counts, and gives a notice; islands that touch likewise. How the two
// are told apart: split at the touching points, a ring that only touches keeps its signed area; one that crosses does
// not. A line that turns straight back on a line is a spike of no width: the ground is certain, so it counts without
// the spike, and the spike is a problem among the notices. All of this is judged over chords within `flattening` of the
// arcs: arcs that run into each other by less than that are not told from arcs that don't.
problem::Result<Shape> shape(const Drawn& drawn);

// One ring known to be simple, for tests and for shapes made by formula; refuses like `shape`, spikes too.
problem::Result<Region> region(Ring ring);

}  // namespace geometry
