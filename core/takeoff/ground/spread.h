// A surface led on level past its edges.
#pragma once

#include <span>

#include "takeoff/levels/terrain.h"

namespace takeoff::ground {

// `ground` with the height of the nearest place of `surfaces`, in pieces that are plane between their corners: exact
// along straight edges of one plane, within the bend of the edge's heights over a piece's width elsewhere. They are at
// most 0.15 m wide, over more than 4,500 m2 so wide that there are some 200,000.
problem::Result<geometry::Surface> spread_level(const geometry::Region& ground,
                                                std::span<const levels::SurfacePtr> surfaces, geometry::Point origin);

}  // namespace takeoff::ground
