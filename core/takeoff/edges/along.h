// Lengths along lines.
#pragma once

#include <vector>

#include "geometry/offset.h"

namespace takeoff::edges {

// One stretch of a line that is straight or curved throughout, in metres.
struct Part {
  double length = 0;
  bool curved = false;
};
// The parts of the line in order, neighbours of a kind taken together.
std::vector<Part> parts(const geometry::Path& path);

struct Lengths {
  double straight = 0;
  double curved = 0;
  double both() const { return straight + curved; }
};
Lengths lengths(const geometry::Path& path);  // metres

// The closed line of an outline, its ground to the left.
problem::Result<geometry::Path> closed_path(const geometry::Outline& outline);

}  // namespace takeoff::edges
