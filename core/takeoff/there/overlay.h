// A slab that stays as the formation of new paving.
#pragma once

#include "takeoff/there/kinds.h"
#include "takeoff/there/there.h"

namespace takeoff::there {

// A slab holds the water that comes through the joints. So a hole of 2 in, filled with stone under a 12 in patch of
// fabric, at most the limit overlay-hole-spacing (10 ft; a foot at least) apart along its low edge: n = max(1, ceil(L /
// s)) at (i + 1/2) L / n, and one at each low point of the slab that is further than s / 2 from the others (common
// practice). The low edge is that outer edge, a foot long or more, whose middle lies lowest on the existing ground;
// without levels there the longest edge is taken and a notice says so. Concrete and asphalt only.
void overlay(const plan::Job& job, const plan::Ground& ground, const Removed& slab, const levels::Terrain& terrain,
             Share& share);

}  // namespace takeoff::there
