// Preliminary checks and the flags that a wall raises. They decide nothing: local code and a licensed engineer do.
#pragma once

#include "takeoff/walls/courses.h"

namespace takeoff::walls {

// Gravity: sliding, overturning, eccentricity, bearing of every column; with layers: external stability of the
// reinforced mass, and of each layer tension, pullout, connection, internal sliding, as far as the catalogue holds its
// strengths (details tensile_strength_kn_m, rf_creep, rf_damage, rf_durability, interaction, direct_sliding,
// connection_kn_m, connection_deg). Limits are the catalogue's (fs-sliding, fs-overturn, ...). Without loads: a notice
// that nothing was checked. A failed check is a flag "check-failed" that says by how much.
Share checks(const plan::Job& job, const plan::Ground& ground, const Profile& profile, const Blocks& blocks);

// Plainly raised: "wall-height-limit" (bottom of base to top over the limit set for this place, tiers added),
// "wall-loaded" (pool, drive, slope, building, stacked pallets, second wall within twice the height of the back),
// "wall-water", "wall-toe", "wall-guard" (a walking surface within 36 in of a drop over 30 in), "wall-free-height".
Share flags(const plan::Job& job, const plan::Site& site, const plan::Ground& ground, const Profile& profile,
            const Blocks& blocks);

}  // namespace takeoff::walls
