// Where the pattern of the selected area starts and which way it runs.
#pragma once

#include <memory>

#include "sketch/tool.h"

namespace sketch {

std::unique_ptr<Tool> start_point_tool();

}  // namespace sketch
