// Everything along an edge: coping round a pool, joints, restraint, kerb. Each is asked for one element.
#pragma once

#include "plan/site.h"
#include "takeoff/line.h"
#include "takeoff/paving/area.h"

namespace takeoff::edges {

// Coping, bed mortar where the coping is bound, collar, surround stone, bonding allowance (trade.md C1, A7a). Pool only.
// Measures: water_area_m2, water_edge_m, coping_nose_m, coping_back_m, coping_length_m (the line it is ordered by: the longer, mostly the back),
// coping_units, coping_cut, coping_area_m2, surround_stone_m3, collar_concrete_m3, bonding_length_m.
Share coping(const plan::Job& job, const plan::Site& site, const plan::Ground& pool);

// Joints of one paved area from its stretches: sealed joints with rod, sealant, broadcast sand; isolation strips; fabric between
// bases; and the joint fill of the whole area by the exact plan share of its joints (trade.md C11, A11d, F). A stretch between
// two pavings is built once, by the area listed first.
Share joints(const plan::Job& job, const plan::Site& site, const paving::LaidArea& area);

// Restraint and edging along a run: stock lengths, spikes ceil(E/s) + 1 (closed: ceil(E/s)) by straight and curved parts.
Share restraint(const plan::Job& job, const plan::Site& site, const plan::Ground& run);

// Kerb of units on its footing, with weeps of a kind at a spacing (trade.md A3, C16, C4 on curves).
Share kerb(const plan::Job& job, const plan::Site& site, const plan::Ground& run);

}  // namespace takeoff::edges
