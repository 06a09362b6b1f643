// What every element is measured as, whatever is built of it.
#pragma once

#include "plan/site.h"
#include "takeoff/line.h"

namespace takeoff {

// Closed shapes: outline_area_m2 (as drawn), perimeter_m (as drawn, holes too), net_area_m2 (less all that cuts it);
// pools water_area_m2 and water_edge_m besides; lines length_m. A shape with a fault has none of its own.
Share measures(const plan::Ground& ground);

}  // namespace takeoff
