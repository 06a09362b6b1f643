// Where the facets of a surface touch each other and where it ends.
#pragma once

#include <vector>

#include "geometry/surface.h"

namespace takeoff::levels {

// The part of an edge that two facets share, `a` on its left.
struct Join {
  std::uint32_t a = 0;
  std::uint32_t b = 0;
  geometry::Vec from;
  geometry::Vec to;
};
// The part of a facet's edge beyond which the surface does not go on; the facet lies on its left.
struct Rim {
  std::uint32_t facet = 0;
  geometry::Vec from;
  geometry::Vec to;
};
struct Joints {
  std::vector<Join> joins;
  std::vector<Rim> rims;
};

// Edges within `same_line` (0.02 mm) of each other are one; neighbours need not share whole edges.
Joints joints(const geometry::Surface& surface);

}  // namespace takeoff::levels
