// Faults of a drawn ring that show before anything is flattened.
#pragma once

#include <optional>
#include <vector>

#include "geometry/outline.h"

namespace geometry {

// Points past the plan's reach, bulges that are none, too few edges, an edge of zero length: the first of them, with
// its place. What passes can be computed with.
std::optional<problem::Problem> fault_of_numbers(const Ring& ring);

// Where an edge runs back over the one before it. Of two lines the width is exactly nothing, so the ground is certain.
struct Spike {
  Point at;
  bool lines = true;
};
std::vector<Spike> spikes(const Ring& ring);

}  // namespace geometry
