// A dimension: the length between two places, kept on the plan. Two clicks; the element is named "Draw dimension I1".
#pragma once

#include <memory>

#include "sketch/tool.h"

namespace sketch {

std::unique_ptr<Tool> dimension_tool();

}  // namespace sketch
