// Measures and makes no element: lengths from point to point, the running total, the angle at each point, and the area
// that the points enclose. Enter or a double click ends a measurement, Escape drops it.
#pragma once

#include <memory>

#include "sketch/tool.h"

namespace sketch {

std::unique_ptr<Tool> measure_tool();

}  // namespace sketch
