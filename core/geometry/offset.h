// A region moved out or in by a width, and the strip along one side of a path.
//
// What meets what comes from GEOS (the flattened region overlaid with the strips along its edges, on the grid about a
// local origin); each result edge is then led back to the edge that it runs along and made exact: a line moved by the
// width, an arc with its radius changed by it, a corner at the true meeting point of its two neighbours. So an offset
// of tangent arcs has exactly P + turn x d. Edges keep their origin; the arc or the cut at a corner has that of the
// edge before it.
#pragma once

#include "geometry/outline.h"

namespace geometry {

enum class Corner { mitred, round };
inline constexpr double mitre_limit = 5.0;  // tip distance over width; past it the corner is bevelled, as GEOS does

// Positive goes out, negative in; 0 gives the region back. What is too narrow for an inset is gone; empty is a result.
problem::Result<Region> offset(const Region& region, units::Length out, Corner corner, double limit = mitre_limit);

enum class Side { left, right };

// The ground within `width` of `path` on one side of it, ends cut square, outside corners mitred up to the limit.
// Edges along the path keep its origin; so do those along the far side. Width must be positive.
problem::Result<Region> band(const Path& path, units::Length width, Side side, double limit = mitre_limit);

// The line that lies `to_the_left` of the path (negative: to the right), edge by edge: a line moved, an arc's radius
// changed, corners at their meeting point (both sides; no limit). Edges that vanish (an arc whose radius is used up)
// are left out. For rows of units, kerbs, rods. A closed path gives a closed one.
problem::Result<Path> parallel(const Path& path, units::Length to_the_left);

}  // namespace geometry
