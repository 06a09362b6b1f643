// What the lines come to.
#pragma once

#include "estimate/estimate.h"

namespace estimate {

// Fills `stages` (those that have lines) and `total` from `lines`: amounts add up exactly, a line without one adds
// nothing.
void add_up(Estimate& estimate);

}  // namespace estimate
