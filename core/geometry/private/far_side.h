// The line beside a path: what `parallel` gives, and the far side of a band.
#pragma once

#include "geometry/outline.h"

namespace geometry {

// Open or closed as the path is; empty when nothing is left. Outside corners whose tip lies further than limit x width
// from their corner are cut off square to their bisector at that distance.
struct FarSide {
  Ring edges;
  Point end;
  bool bridged = false;  // somewhere two neighbours do not meet and a straight piece joins them
};
FarSide far_side(const Path& path, double to_the_left, double limit);

// What lies at an outside corner between the end of one moved edge and the start of the next, corner at (0, 0): the tip,
// or the two points where it is cut off past the limit. Directions are unit vectors.
std::vector<Vec> mitre(Vec before, Vec after, double to_the_left, double limit);

}  // namespace geometry
