// How a saw gets through a piece, and how much of it there is.
#pragma once

#include "takeoff/line.h"

namespace takeoff::walls {

enum class Passes { one, two, both_sides, too_thick };
// One pass where the depth of cut is not less than the thickness; two passes, deeper on the second, up to the item's
// own two_pass_depth_mm where it gives one; from both sides up to twice the depth; else it can't. From details
// cut_depth_mm and blade_diameter_mm: a blade never cuts deeper than its radius. Without a depth of cut: too_thick.
Passes passes(const catalogue::Item& saw, double thickness);
std::string word(Passes passes);

// Metres of cut by thickness and by passes for the chosen saw (Choices::saw): one notice each, that stands with the
// job, and measures saw_cut_m:<mm> and saw_cuts:<mm> of the thickness to a tenth of a millimetre, and saw_blade_m, the
// metres that the blade goes. "saw-depth" is a flag where the saw does not get through. Without a saw chosen the metres
// stand alone. The caution against dust stands with it. Nothing where nothing is cut.
Share saw_list(const plan::Job& job, const std::vector<Cut>& cuts);

}  // namespace takeoff::walls
