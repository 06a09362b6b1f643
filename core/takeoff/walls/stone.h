// What lies under, in and behind a wall: base, core, wedges, drainage stone, fill, fabric, pipe.
//
// Pad, column, reinforced fill and earth never overlap; each is a sum over the columns, so that every term has a place.
// Base and column are measured along the line as drawn: what they lap or miss at corners, on curves and at the steps of
// the base is neither added nor taken off. The reinforced zone, which is deeper, is measured by its own middle line: a
// curve takes mean radius, and what two legs would share at a corner is counted once.
#pragma once

#include "takeoff/walls/courses.h"

namespace takeoff::walls {

// - Base: length as drawn x (depth of the block + past front and back) x thickness, layer by layer of the build-up.
// - Core: voids of the units as laid, each kind its own, cut ones by their share. Wedges between units, course by
//   course, plan area x course height: straight n (F - Bk)/2 D; convex T(R^2 - (R-D)^2)/2 - n(F+Bk)/2 D; concave
//   T((R+D)^2 - R^2)/2 - n(F+Bk)/2 D; never under 0. R is the course's own.
// - Column of drainage stone: its depth behind the units, from the bottom of the lowest course to the soil cap under
//   the top of the blocks. Where a reinforced zone is filled with clean stone it swallows the column.
// - Reinforced fill: from the back of the column to the end of the longest layer there, as high as the column; of
//   stone bought, or of earth from the site (a notice says how much).
// - Soil cap: earth from the site over both. Less than its own height of wall is all earth.
// - Fabric: back and top of the stone with a return (limit fabric-return, 12 in): girth x length + laps by the limit
//   fabric-overlap-firm or -soft. Ordered as pieces of one girth each, cut off the roll and hung side by side.
//
// Notices: "wall-no-base", "wall-no-stone" (retaining walls), "wall-no-core" (blocks with voids and nothing to fill
// them), "soil-cap", "fill-earth". Problems: "item-missing", "density-missing", "build-up-unknown", "fabric-roll".
// Measures leveling_base_m3, core_fill_m3, wedges_m3, drainage_stone_m3, reinforced_fill_m3, soil_cap_m3,
// wall_fabric_m2; each only where it is asked for.
Share stone(const plan::Job& job, const plan::Ground& ground, const Profile& profile, const Blocks& blocks,
            const Courses& courses);

// The pipe low behind the wall. Its invert is z_out + fall x run from each outlet, going up, the lower of two outlets
// ruling; where the base steps up it steps up with the bottom of its stone. It has to lie between the bottom of its
// stone and the top of the pad. A dense pad sheds: the pipe lies behind it on stone of its own (as thick as the pad).
// An open pad holds water as deep as the lowest outlet lies above its bottom.
//
// Problems: "pipe-outlets" (none given, or not along this wall), "pipe-fall" (0 or less, or over 1; under the limit
// pipe-fall a flag), "pipe-low" (an outlet below the bottom of the stone), "pipe-dead-depth" (water kept in an open pad
// over the limit dead-depth, or longer than draw-down where the person counts on the ground), "pipe-solid",
// "outlet-perforated", "drained-by" (the drain run named for it is not there, or is no pipe). Flags: "pipe-high" (above
// the pad somewhere: low-permeability fill below it), "outlet-spacing" (limit, 50 ft, between outlets and from an end),
// "outlet-low" (a low point of the base without one), "outlet-idle" (an outlet above the pipe's own invert there),
// "no-outlet" (a retaining wall has neither pipe nor drain run). Free-standing walls need none of this. Measures
// pipe_m, pipe_invert_high_m, outlets, outlet_pipe_m, pipe_stone_m3.
Share pipe(const plan::Job& job, const plan::Ground& ground, const Profile& profile, const Blocks& blocks);

}  // namespace takeoff::walls
