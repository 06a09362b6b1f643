// Where people walk beside a drop.
#pragma once

#include "takeoff/there/shapes.h"
#include "takeoff/there/there.h"

namespace takeoff::there {

// A walking surface within `guard-near` (36 in) of a drop over `guard-drop` (30 in) is flagged with its length (IRC
// R312.1; the 36 in from memory). Seen from the plan:
// - steps: the sides of the flight from where it stands higher than the drop over its foot (the ground beside it is
//   taken as level with the foot), less sides with a cheek wall or against a wall or building: "steps-guard";
// - paved areas: free edges over planting where the finished surface is higher than the drop over the existing ground
//   a foot outside: "edge-guard";
// - walls that stand already, by the heights given, where paving or steps come near their back: "wall-guard". Walls
//   built here say so where they are worked out.
void guards(const plan::Job& job, const plan::Site& site, const plan::Ground& ground, const levels::Terrain& terrain,
            Share& share);

}  // namespace takeoff::there
