// What is selected is turned about a point, from one direction to another or by a typed angle.
#pragma once

#include <memory>

#include "sketch/tool.h"

namespace sketch {

std::unique_ptr<Tool> turn_tool();

}  // namespace sketch
