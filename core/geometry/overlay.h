// Difference, union and intersection of regions, on the grid.
//
// Arcs are flattened within 0.5 mm, the overlay is made by GEOS with a precision of one step about a local origin (so
// moving everything by whole steps gives the same bits), and every result edge is led back to its source: chords become
// the arc again, and a corner where two sources meet is put on their true meeting point. Results are valid, lie on the
// grid and can be cut again. After each overlay the areas must add up to within perimeter x 1 step + the flattening of
// the arcs that were cut; else a Problem "overlay-areas-disagree" with its place, never 0 and never another try.
#pragma once

#include <span>

#include "geometry/outline.h"

namespace geometry {

problem::Result<Region> unite(std::span<const Region> regions);
problem::Result<Region> subtract(const Region& from, std::span<const Region> cutters);  // cutters united first
problem::Result<Region> meet(const Region& a, const Region& b);

}  // namespace geometry
