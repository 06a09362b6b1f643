// A flight of steps: a rectangle whose depth is climbed, with the rise from its foot to its landing typed before or
// after the sides.
//
// The outline is drawn like any other; then the way up is chosen: a click on the side where the landing lies (or a
// typed direction), with the rise in its field. Enter takes the way up square away from the first side. Escape drops
// the flight.
#pragma once

#include <memory>

#include "sketch/tool.h"

namespace sketch {

std::unique_ptr<Tool> steps_tool();

}  // namespace sketch
