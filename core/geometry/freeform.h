// Freeform curves: kept by their control points, used as tangent arcs.
#pragma once

#include <span>
#include <vector>

#include "geometry/edge.h"

namespace geometry {

// A curve through the points in order, smooth everywhere (closed: also at the first point), made of circular arcs that
// meet tangentially: between two points two arcs (a biarc) whose tangents are those of the parabola through a point and
// its two neighbours, split until no arc is further than `within` from the cubic (Hermite) curve with these tangents.
// Three points at least when closed, two when open (then a straight line). Every edge gets the origin
// {element, number of the control point before it}.
Ring freeform(std::span<const Point> through, bool closed, std::uint64_t element = 0,
              units::Length within = units::Length::of_steps(160));

}  // namespace geometry
