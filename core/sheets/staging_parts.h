// The tables of the staging sheet: loads, trucks, room, pallets.
#pragma once

#include "sheets/pallet_plan.h"

namespace sheets {

// What the rules of the site forbid about drop spots and is so on the plan: each rule once, with who decides.
std::vector<Caution> stored_wrongly(const Printed& printed);

// By stage: what comes, from whom, how heavy, in how many loads of what weight, against what the truck carries.
Passage loads_passage(const Printed& printed, const std::vector<estimate::Visit>& visits);
// Body, payload and places of each truck that brings something.
Passage trucks_passage(const Printed& printed, const std::vector<estimate::Visit>& visits);

// Ground that the goods of a stage stand on when all of it comes at once. A pallet of 48 x 40 in with 2 ft of aisle
// along its long side (common practice); a pile the circle under a cone of 35 degrees.
inline constexpr double pallet_length = 1.2192;  // m
inline constexpr double pallet_width = 1.016;
inline constexpr double aisle = 0.6096;
double pallet_room(double pallets);     // m2
double pile_room(double cubic_metres);  // m2
Passage room_passage(const Printed& printed, const std::vector<estimate::Visit>& visits);

Passage pallets_passage(const Printed& printed);

}  // namespace sheets
