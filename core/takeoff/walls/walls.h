// Walls, steps and pillars: each is asked for one element.
#pragma once

#include "plan/site.h"
#include "takeoff/line.h"
#include "takeoff/walls/courses.h"

namespace takeoff::walls {

// Profile -> courses -> stone, pipe, reinforcement, caps -> preliminary checks and flags. Existing walls have none.
// Measures: face_length_m (as drawn), courses, course_length_m:N, face_area_m2 (course lengths x height, the buried
// part too), units_whole, units_half, corner_units, end_units, units_cut, units_for_cut_pieces, units, units_by_area (a
// cross-check only), height_from_base_m (bottom of the leveling base to top of the blocks), height_of_units_m,
// height_with_cap_m, buried_m.
Share wall(const plan::Job& job, const plan::Site& site, const plan::Ground& ground);
// `laid` are the courses as they were laid before, if they were, and after it as they are now: an edit lays only the
// bays that it touches, and the result is that of laying all.
Share wall(const plan::Job& job, const plan::Site& site, const plan::Ground& ground,
           std::shared_ptr<const Courses>& laid);

// n R + (n - 1) T f = Z: the treads' own fall counts. Risers shared out within the limits (riser-dwelling or
// riser-public), the number whose riser is nearest to the usual one; or units of a fixed height, where the lowest riser
// takes a rest of at most the limit riser-spread (3/8 in); problem "risers-differ" otherwise, with what each comes to.
// Slab treads set beside the next riser may stand at any height, those that the next riser stands on may not. 2R + T
// shown. Riser and tread outside the limits of code are problems, landing, handrail, guard, frost and a missing base
// are flags for those who decide. Measures risers, riser_m, riser_lowest_m, tread_m, stride_m, steps_run_m, step_units
// (set), riser_blocks, step_base_m3, steps_cut, adhesive_tubes; cheek_blocks, cheek_cut, cheek_caps.
Share steps(const plan::Job& job, const plan::Site& site, const plan::Ground& ground);

// Blocks like a pinwheel round a core, turned each course, cap on top: a side is some lengths of a block and the depth
// of one; problem "pillar-size" otherwise, with the nearest that fits. Buried by the courses asked for, one at least,
// and the limit wall-embed. Measures pillar_blocks, pillar_courses, pillar_height_m, caps, cap_overhang_m,
// pillar_base_m3, adhesive_tubes.
Share pillar(const plan::Job& job, const plan::Ground& ground);

}  // namespace takeoff::walls
