// How a saw gets through a piece, and how much of it there is.
#pragma once

#include "takeoff/line.h"

namespace takeoff::walls {

enum class Passes { one, two, both_sides, too_thick };
// One pass where the blade's depth of cut is not less than the thickness; two passes (deeper on the second) up to twice
// that only where the item says so; from both sides up to twice the depth; else it can't. Derived from details
// cut_depth_mm, blade_diameter_mm.
Passes passes(const catalogue::Item& saw, double thickness);
std::string word(Passes passes);

// Metres of cut by thickness and by passes for the chosen saw (Choices::saw), as measures of the job and a notice each;
// without a saw chosen: a notice. The caution against dust stands with it.
Share saw_list(const plan::Job& job, const std::vector<Cut>& cuts);

}  // namespace takeoff::walls
