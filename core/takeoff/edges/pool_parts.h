// What lies round a pool's shell beside its coping: stone, the collar of concrete, the bonding conductor.
#pragma once

#include "plan/site.h"
#include "takeoff/line.h"

namespace takeoff::edges {

// Stone between the shell's outside and `clearance` beyond it, by its placed density. Measures surround_ring_m2,
// surround_stone_m3.
Share surround(const plan::Job& job, const plan::Ground& pool, const plan::Pool& what);

// Concrete from the water's edge `width` outwards, and bars in rings: a ring of length L takes L / (stock less lap)
// bars, rounded up ring by ring, because a bar begun in one ring is seldom worth carrying to the next. Lap 20 in unless
// the limit bar-lap says otherwise (common practice; the engineer decides). Measures collar_concrete_m3, collar_bar_m
// (before laps), collar_bars.
Share collar(const plan::Job& job, const plan::Ground& pool, const plan::Pool& what);

// The conductor all round, `out` outside the water's inside wall with round corners, and the ties, each as long as it
// lies out and deep (NEC 680.26(B)(2)). An allowance and a flag: a licensed electrician decides. Measures
// bonding_ring_m, bonding_length_m.
Share bonding(const plan::Job& job, const plan::Ground& pool, const plan::Pool& what);

}  // namespace takeoff::edges
