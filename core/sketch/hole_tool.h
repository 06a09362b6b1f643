// A hole in the selected outline, drawn like any outline.
#pragma once

#include <memory>

#include "sketch/tool.h"

namespace sketch {

std::unique_ptr<Tool> hole_tool();

}  // namespace sketch
