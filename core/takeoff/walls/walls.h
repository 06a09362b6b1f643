// Walls, steps and pillars: each is asked for one element.
#pragma once

#include "plan/site.h"
#include "takeoff/line.h"

namespace takeoff::walls {

// Profile -> courses -> stone, pipe, reinforcement, caps -> preliminary checks and flags. Existing walls have none.
// Measures: face_length_m (as drawn), courses, course_length_m:N, face_area_m2 (course lengths x height, the buried
// part too), units_whole, units_half, corner_units, end_units, units_cut, units_for_cut_pieces, units, units_by_area (a
// cross-check only), height_from_base_m (bottom of the leveling base to top of the blocks), height_of_units_m,
// height_with_cap_m, buried_m.
Share wall(const plan::Job& job, const plan::Site& site, const plan::Ground& ground);

// n R + (n - 1) T f = Z: the treads' own fall counts. Risers shared out within the limits, or units of a fixed height
// where the rest is at most 3/8 in; 2R + T shown; problem "risers-differ" otherwise. Measures risers, riser_m, tread_m,
// stride_m, step_units, step_base_m3, steps_cut.
Share steps(const plan::Job& job, const plan::Site& site, const plan::Ground& ground);

// Blocks turned each course round a core, cap on top. Measures pillar_blocks, pillar_courses.
Share pillar(const plan::Job& job, const plan::Ground& ground);

}  // namespace takeoff::walls
