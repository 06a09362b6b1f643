// What is bought and laid for one drain run.
#pragma once

#include "takeoff/line.h"
#include "takeoff/water/network.h"

namespace takeoff::water {

// Pipe and sleeve by length (sticks and coils of one item are pooled over the job and coupled end to end); channels by
// whole sections; a bend for every corner of the line over 5 degrees, the joiner, the screen of an outlet, inlets and
// fittings piece by piece; stone less the pipe itself, and fabric round it with its lap (limit fabric-lap), by the
// build-up of the trench.
Share pieces(const plan::Job& job, const plan::ElementId& id, const Run& run);

}  // namespace takeoff::water
