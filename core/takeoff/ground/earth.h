// Earth that is moved, gathered from all that digs and hauled once.
#pragma once

#include "takeoff/ground/ground.h"
#include "takeoff/levels/terrain.h"

namespace takeoff::ground {

// One hole, cut or fill. Volumes in bank measure for what is dug, placed and compacted for what is filled.
struct Dug {
  Stage stage = Stage::dig;
  std::string text;  // "deck", "trench of D1", "base of RW", "bank behind RW"
  std::vector<plan::ElementId> of;
  std::optional<Working> bank = std::nullopt;  // m3 dug
  std::optional<Working> fill = std::nullopt;  // m3 of earth placed again: over a pipe, behind a wall, under an area
  double deepest = 0;                          // metres below the existing ground
  double way_out = 0;    // metres of its length that are as deep as the limit dig-egress; 0 of an area
  double protect = 0;    // the same of the limit dig-protect
  bool trench = false;   // narrow: dug at the trench rate
  bool by_hand = false;  // among services or roots
  bool topsoil = false;  // stripped and kept apart
};
struct Excavation {
  std::vector<Dug> dug;
  Share share;                     // lines, tasks, facts and problems besides the haul
  std::vector<Measures> measures;  // element by element: dig_m3, fill_m3, dig_deepest_m, dig_mean_m, dig_past_edges_m3
};

// Areas: from the existing ground (less topsoil and what is removed) to the formation, where both surfaces are known;
// else by one depth, and a notice says so. Then the pool's surround, wall bases with their banks and backfill, steps,
// pillars, and the trenches of drain runs, each from what the ones before it left: earth is dug once, and what lies
// inside an area's footprint is dug from the area's formation down.
//
// Past the edges of its finished surface a formation goes on level: it has the height of the nearest place on it.
// Topsoil (its thickness in the job's soil) comes off all areas first and is kept apart. What a removal takes is no
// earth: digging starts at its underside; where a slab stays under an overlay nothing is dug.
//
// Facts "dig", "deep-dig" (from the limit dig-egress, 4 ft), "protected-dig" (dig-protect, 5 ft), "trench". Flags
// "dig-way-out", "dig-protection" and "dig-engineer" (dig-engineer, 20 ft) name the depth, the length and who decides;
// 29 CFR 1926.651 and .652 (from the study guide of the construction standard; 20 ft from 1926.652(b)).
Excavation dig(const plan::Job& job, const plan::Site& site, const Bodies& bodies, const levels::Terrain& terrain);
// Everything dug less what is placed again, with topsoil apart: what may be reused (soil/reusable) is placed first, the
// rest is hauled: bank, loose and weight, loads, fee; what is short is brought as fill (item agg-soil-fill). Notice
// "earth-balance" says what is dug, placed again, hauled and brought. Problem "fill-to-bring" where
// the catalogue has no fill.
Share haul(const plan::Job& job, const std::vector<Dug>& dug);

}  // namespace takeoff::ground
