// The selected outline is cut in two by a line.
#pragma once

#include <memory>

#include "sketch/tool.h"

namespace sketch {

std::unique_ptr<Tool> split_tool();

}  // namespace sketch
