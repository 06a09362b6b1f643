// Strips of fabric side by side.
#pragma once

#include "units/length.h"

namespace takeoff::ground {

// How many strips of width `roll`, each lapping its neighbour by `lap`, cover `across`: ceil((B - o) / (w - o)), 1
// where one is enough. lap < roll.
int strips(units::Length across, units::Length roll, units::Length lap);

}  // namespace takeoff::ground
