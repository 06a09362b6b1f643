// What a person should know of a laid area before it is cut: slivers and their mends, notches, vehicles, weight.
#pragma once

#include "takeoff/paving/area.h"

namespace takeoff::paving {

// How far a round blade of radius r must run past an inner corner to be through a unit of thickness t: sqrt(2 r t -
// t^2). 0 where the blade is too small. Any unit of length.
double saw_overrun(double blade_radius, double thickness);

// One way out of slivers, and what it leaves when the area is laid that way.
struct Mend {
  std::string what;
  Counts counts;
};
// Relays the field with the start shifted by half a repeat, the pattern turned by 90 degrees, and the joints at their
// least and greatest; fewest slivers first. Nothing where the area is not laid.
std::vector<Mend> mends(const plan::Job& job, const LaidArea& area);

// Problems and facts of a laid area, for paving(): notices "slivers" and "notches"; flags "cut-under-vehicles",
// "cut-too-narrow" (outside vehicles, under 3/8 in), "heavy-unit"; notices "unit-aspect", "unit-thin",
// "pattern-under-vehicles". Limits come from the catalogue; each has the published value where it names none.
void add_advice(const plan::Job& job, const LaidArea& area, Share& share);

}  // namespace takeoff::paving
