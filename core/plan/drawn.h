// What was drawn, kept point by point as it was drawn, valid or not.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "catalogue/item.h"
#include "geometry/offset.h"
#include "geometry/validity.h"
#include "units/angle.h"

namespace plan {

using ElementId = std::string;
using catalogue::Id;
using units::Length;

// A closed shape as drawn: outside ring, then islands. A freeform ring is kept by its control points.
struct DrawnRing {
  geometry::Ring edges;                  // straight and arc edges; origins not set
  std::vector<geometry::Point> through;  // control points instead of edges, where it is freeform
  bool operator==(const DrawnRing&) const = default;
};
using DrawnShape = std::vector<DrawnRing>;

// An open (or closed) line as drawn: edges and the last point.
struct DrawnLine {
  geometry::Ring edges;
  geometry::Point end;
  std::vector<geometry::Point> through;
  bool operator==(const DrawnLine&) const = default;
};

}  // namespace plan
