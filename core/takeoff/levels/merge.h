// Fewer, larger pieces: what was cut apart and lies in one plane goes together again.
#pragma once

#include "takeoff/levels/envelope.h"

namespace takeoff::levels {

// Neighbours of the same plane and source that share whole edges become one cell where it stays convex. No place
// changes its height; outlines move by less than a ten-thousandth of a millimetre, where a corner on a straight edge
// goes.
std::vector<Cell> merged(std::vector<Cell> cells);
std::vector<geometry::Facet> merged(std::vector<geometry::Facet> facets);

}  // namespace takeoff::levels
