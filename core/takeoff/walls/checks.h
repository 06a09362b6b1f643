// Preliminary checks and the flags that a wall raises. They decide nothing: local code and a licensed engineer do.
#pragma once

#include "takeoff/walls/courses.h"

namespace takeoff::walls {

// Gravity, where no layers lie: sliding, overturning, eccentricity, bearing. With layers: the same of the reinforced
// mass (as long as its shortest layer), and of each layer its length behind the slip plane, tension, pullout,
// connection, internal sliding, as far as the catalogue holds its strengths (details tensile_strength_kn_m, rf_creep,
// rf_damage, rf_durability, interaction, direct_sliding, connection_kn_m, connection_deg, connection_max_kn_m; notice
// "strength-missing" otherwise); and the blocks over the top layer, which stand by themselves. Of each name the worst
// stretch governs. Limits are the catalogue's (fs-sliding, fs-overturn, ecc-gravity ...). A failed check is a flag
// "check-failed" that says by how much.
//
// On the safe side: the thrust's vertical part, what stands in front, the earth's cohesion behind and any load there
// hold nothing; loads press on the ground where that is worse; of fill and earth behind a gravity wall the one that
// pushes more counts; the blocks hold by the weaker of the ground and the base's stone; a base in ground that falls
// away in front has no depth, and that ground bears less (Vesic's ground factors). Water, where it was entered, stands
// to the top: it pushes beside the whole of the earth's thrust, lifts the base, and earth under it presses less. Layers
// that the takeoff refuses hold nothing.
//
// Without loads: notice "checks-not-made"; the same as a problem where the angles give no earth pressure. Entries that
// can't be: problem "wall-loads" with the field, the rest checked. Free-standing and existing walls have none.
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
