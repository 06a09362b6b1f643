// The parts of setting out that need no base line.
#pragma once

#include "takeoff/setting_out/drawings.h"
#include "takeoff/setting_out/setting_out.h"

namespace takeoff::setting_out {

// Both diagonals of a closed drawing of four straight edges; nothing of any other.
std::vector<Diagonal> diagonals(const plan::ElementId& of, const Drawn& drawn, double out_of_square);

// Every `step` metres along the chord of each curve, and at its middle, where the offset is greatest (a place
// nearer to the middle than a tenth of the step is left out).
std::vector<Offset> offsets(const plan::ElementId& of, const Drawn& drawn, double step);

}  // namespace takeoff::setting_out
