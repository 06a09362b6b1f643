// What is on the site already: what goes or stays under new paving, marks with their rules, protection, and what can
// hurt people and is seen from the plan. What is said here defers to the person that it names.
#pragma once

#include <vector>

#include "takeoff/ground/ground.h"
#include "takeoff/levels/terrain.h"
#include "takeoff/line.h"

namespace takeoff::there {

// One removal: how much there is, the saw cut, the hours. A fault (kind or fate unknown, no thickness, a line without a
// width) is one problem of it. Measures: removal_area_m2, removal_length_m (of a line), removal_m3 (in place),
// removal_kg, saw_cut_m, saw_cut_m2, reuse_m2 (what comes back). Of a slab that stays and is paved over: overlay_m2,
// drain_holes, drain_hole_stone_m3, drain_hole_fabric_m2 (overlay.h).
//
// Saw cut: along every part of the outline of concrete or asphalt that meets, or lies inside, a slab drawn as a removal
// that stays. Beside buildings, pools and other removals that go there is a joint or nothing, so nothing is sawn; where
// no slab that stays is drawn, nothing is known of one, and a notice says so.
Share removal(const plan::Job& job, const plan::Site& site, const plan::Ground& ground, const levels::Terrain& terrain);

// All that is hauled away, once for the site: broken concrete with walls, units and coping in one heap, everything else
// kind by kind, because a dump takes them apart. Loose volume by bulking, loads by the tighter of volume and weight,
// the fee of the heap (the item disposal-<heap> of the catalogue, else the job's) by weight, or by load where it is
// sold so.
Share haul_removed(const plan::Job& job, const plan::Site& site);

// Mats, boards, fences: an area or a length of the item; of one that comes in pieces the pieces. Measures
// protection_area_m2, protection_length_m.
Share protection(const plan::Job& job, const plan::Ground& ground);

// The rules of the catalogue, held by every mark (and tree, building, pool) against all that is built or dug near it.
// One Share for each mark with something to say, its measures named after it (hand_dig_area_m2, hand_dig_m3); what
// concerns the whole job comes in a Share without an element, first.
std::vector<Share> marks(const plan::Job& job, const plan::Site& site, const ground::Bodies& bodies,
                         const levels::Terrain& terrain);

// Guards along the sides of steps, raised edges of paving and walls that stand already (walls built here say so
// themselves); digging below a line of 45 degrees from a footing or a pool's shell; paving over a pool's backfill.
Share dangers(const plan::Job& job, const plan::Site& site, const ground::Bodies& bodies,
              const levels::Terrain& terrain);

}  // namespace takeoff::there
