// Elements that are one point with something typed to it: level (its height), feature, note (its text).
//
// A click sets the point, or the fields east and north. A level and a note then wait for their text: Enter puts the
// element into the job (a level may stay without a height: the level book may have one), a click elsewhere puts this
// one in and begins the next. Escape drops the one in hand.
#pragma once

#include <memory>

#include "sketch/tool.h"

namespace sketch {

std::unique_ptr<Tool> point_tool(Hand hand);  // level, feature or note; null otherwise

}  // namespace sketch
