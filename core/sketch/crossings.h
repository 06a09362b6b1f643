// Where two curves meet: lines with lines, lines with arcs, arcs with arcs.
#pragma once

#include <vector>

#include "geometry/edge.h"

namespace sketch {

// Every place that lies on both curves, ends included, on the nearest grid point. Curves that run along each other
// (parallel lines, arcs of one circle) have no crossings.
std::vector<geometry::Point> crossings(const geometry::Curve& a, const geometry::Curve& b);

}  // namespace sketch
