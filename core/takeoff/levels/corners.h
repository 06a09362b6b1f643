// The corners of a surface's facets as places that neighbours share.
#pragma once

#include "takeoff/levels/rims.h"

namespace takeoff::levels {

// Corners within 0.1 mm are one. A facet also has the corners of its neighbours that lie on its edges. Where facets
// differ in height at one place (a step) the place has the lower height.
struct Corners {
  std::vector<geometry::Vec> at;
  std::vector<double> height;
  std::vector<std::vector<std::uint32_t>> of_facet;             // ascending
  std::vector<std::vector<std::uint32_t>> facets;               // that have the corner
  std::vector<std::pair<std::uint32_t, std::uint32_t>> of_rim;  // its two ends
  std::uint32_t nearest(geometry::Vec place) const;
};
Corners corners_of(const Area& area);

}  // namespace takeoff::levels
