// Preliminary checks and the flags that a wall raises. They decide nothing: local code and a licensed engineer do.
#pragma once

#include "takeoff/walls/courses.h"

namespace takeoff::walls {

// Gravity, where no layers lie: sliding, overturning, eccentricity, bearing. With layers: the same of the reinforced
// mass (as long as its shortest layer), and of each layer its length behind the slip plane, tension, pullout,
// connection, internal sliding, as far as the catalogue holds its strengths (details tensile_strength_kn_m, rf_creep,
// rf_damage, rf_durability, interaction, direct_sliding, connection_kn_m, connection_deg, connection_max_kn_m; notice
// "strength-missing" otherwise). Of each name the worst stretch governs. Limits are the catalogue's (fs-sliding,
// fs-overturn, ecc-gravity ...). A failed check is a flag "check-failed" that says by how much.
//
// On the safe side: the thrust's vertical part, what stands in front, cohesion and any load behind hold nothing; loads
// press on the ground where that is worse; of fill and earth behind a gravity wall the one that pushes more counts; a
// base in ground that falls away in front has no depth. Water is not in it (flag "wall-water").
//
// Without loads: notice "checks-not-made". Entries that can't be: problem "wall-loads" with the field, the rest
// checked. Free-standing and existing walls have none.
Share checks(const plan::Job& job, const plan::Ground& ground, const Profile& profile, const Blocks& blocks);

// Plainly raised, each with its place and measure: "wall-height-limit" (bottom of base to top, cap and tiers added,
// over the limit set for this place: wall-permit, wall-engineer), "wall-loaded" (pool, drive, building, free-standing
// wall, equipment, pallets within twice the height of the back; a bank; an entered load), "wall-tiers" (a second wall
// within tier-distance times the lower height), "wall-pool-line" (a pool within twice the height on either side, whose
// shell's depth nobody knows), "wall-water", "wall-toe", "wall-guard" (a walking surface within 36 in of a drop over
// 30 in), "wall-barrier" (within 36 in of a pool's barrier), "wall-free-height".
Share flags(const plan::Job& job, const plan::Site& site, const plan::Ground& ground, const Profile& profile,
            const Blocks& blocks);

}  // namespace takeoff::walls
