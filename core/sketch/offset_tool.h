// What is selected grows or shrinks by a distance; a line moves to its side.
#pragma once

#include <memory>

#include "sketch/tool.h"

namespace sketch {

std::unique_ptr<Tool> offset_tool();

}  // namespace sketch
