// A restraint along part of another element's edge.
#pragma once

#include <memory>

#include "sketch/tool.h"

namespace sketch {

std::unique_ptr<Tool> trace_tool();

}  // namespace sketch
