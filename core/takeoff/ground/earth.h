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
  std::optional<Working> bank;  // m3 dug
  std::optional<Working> fill;  // m3 of earth placed again: over a pipe, behind a wall, under an area
  double deepest = 0;           // metres below the existing ground
  bool trench = false;          // narrow: dug at the trench rate
  bool by_hand = false;         // among services or roots
  bool topsoil = false;         // stripped and kept apart
};
struct Excavation {
  std::vector<Dug> dug;
  Share share;  // lines, tasks and problems besides the haul
};

// Areas: from the existing ground (less topsoil and what is removed) to the formation, where both surfaces are known;
// else by one depth, and a notice says so. Then the pool's surround, wall bases with their banks and backfill, steps,
// pillars, and the trenches of drain runs.
Excavation dig(const plan::Job& job, const plan::Site& site, const Bodies& bodies, const levels::Terrain& terrain);
// Everything dug less what is placed again: spoil by bank, loose and weight, loads, fees, stone and fill to bring.
Share haul(const plan::Job& job, const std::vector<Dug>& dug);

}  // namespace takeoff::ground
