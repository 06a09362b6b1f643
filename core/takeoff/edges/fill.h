// What the joints between the units are filled with.
#pragma once

#include "takeoff/line.h"
#include "takeoff/paving/area.h"

namespace takeoff::edges {

// How deep a joint is filled: the unit's height less the limit joint-fill-low (1/8 in) less what of the bedding has
// risen into the joint (limit bed-rise-sand, 3/8 in, over sand; bed-rise, 0, over open chips; neither where units are
// bound in mortar).
Working fill_depth(const plan::Job& job, const plan::PavedArea& area, const catalogue::Item& unit);

// Joint fill of a laid area by the exact plan share of its joints: the field less the units laid in it, the borders'
// own joints, and `gaps` m2 of joints against other things that take the area's filler. Fillers are a list from the
// top: each takes its depth, the last one the rest. A filler is weighed by its loose density; one that names only a
// volume (bag yield) is kept in m3. Fillers that the joints are too narrow, too wide or too shallow for raise a flag
// (details least_joint_mm, greatest_joint_mm, least_depth_mm); the widest wedge joint on a curve counts. Measures
// joint_fill_field_m3, joint_fill_border_m3, joint_fill_m3 and joint_fill_m3:ITEM.
Share joint_fill(const plan::Job& job, const paving::LaidArea& area, double gaps);

}  // namespace takeoff::edges
