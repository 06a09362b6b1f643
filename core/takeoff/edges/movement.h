// Movement joints of units bound on concrete (TCNA EJ171, as a tile association's magazine gives it).
#pragma once

#include "takeoff/line.h"
#include "takeoff/paving/area.h"

namespace takeoff::edges {

// A grid each way over the field: no part longer than the limit movement-spacing (8 to 12 ft outdoors), lines moved to
// the nearest repeat of the pattern so that they lie on unit joints; width 3/8 in at 8 ft to 1/2 in at 12 ft, between
// them in proportion. Counted as rod and sealant along the length that lies in the field. Nothing where the area is not
// bound. Joints over those of the slab below and changes of plane are for whoever draws the slab: a flag says so.
Share movement(const plan::Job& job, const paving::LaidArea& area);

}  // namespace takeoff::edges
