// Everything along an edge: coping round a pool, joints, restraint, kerb. Each is asked for one element.
#pragma once

#include "plan/site.h"
#include "takeoff/line.h"
#include "takeoff/paving/area.h"

namespace takeoff::edges {

// Coping, bed mortar (a problem "coping-mortar" where the catalogue has none and setting on mortar is paid), collar,
// stone round the shell, bonding allowance. Pool only.
//
// The nose lies the overhang inside the water's edge, the back the rest of the piece's width outside it. Runs are split
// at corners (turn > 5 degrees) and changes of curvature; each has a count of its own, never total length over a
// module. `any` makes a curve of the chosen piece with the least cutting; radius pieces are taken when the person says
// so, and all ways that work stand in the notice "coping-ways". Corners: a piece of the catalogue (detail corner,
// inside or outside) where it fits a square corner, else a mitre inside and a problem outside. Bearing less than the
// shell is a problem. Measures: coping_nose_m, coping_back_m, coping_length_m (the longer of both), coping_units,
// coping_cut, coping_units_by_length (longer lines added and rounded once: a cross-check), coping_area_m2,
// coping_mortar_m3, surround_ring_m2, surround_stone_m3, collar_concrete_m3, collar_bar_m, collar_bars, bonding_ring_m,
// bonding_length_m.
Share coping(const plan::Job& job, const plan::Site& site, const plan::Ground& pool);

// Joints of one paved area from its stretches and the junction table: sealed joints with rod, sealant, broadcast sand;
// isolation strips; fabric between bases; gaps with a filler of their own; the restraint or edging that the table puts
// at planting where nothing is drawn, with the flag "edging-curve" where its units can't follow a curve; and the joint
// fill of the whole area by the exact plan share of its joints. A stretch between two pavings is built once, by the
// area listed first. An area with neither build-up nor laying chosen has measures only. Measures: meets_m:WORD,
// sealed_joint_m, sealant_m3 (and of each row), rod_m:ITEM, isolation_m, fabric_strip_m, gap_fill_m3, restraint_m,
// spikes, joint_fill_field_m3, joint_fill_border_m3, joint_fill_m3, joint_fill_m3:ITEM.
Share joints(const plan::Job& job, const plan::Site& site, const paving::LaidArea& area);

// Restraint and edging along a run: stock lengths, spikes ceil(E/s) + 1 (closed: ceil(E/s)) by straight and curved
// parts. Edging of units is laid as a kerb. Measures restraint_m, spikes.
Share restraint(const plan::Job& job, const plan::Site& site, const plan::Ground& run);

// Kerb of units on its footing, with weeps of a kind at a spacing. Units stand on the side of the line that is not
// paving; each straight run is rounded up by itself, curves are uncut with wedge joints, tapered or of radius units.
// The footing is its section times its own centre line (Pappus). Measures kerb_centre_length_m, kerb_units:ITEM,
// kerb_cut, footing_m3, weeps, weep_spacing_m, weep_opening_m2.
Share kerb(const plan::Job& job, const plan::Site& site, const plan::Ground& run);

}  // namespace takeoff::edges
