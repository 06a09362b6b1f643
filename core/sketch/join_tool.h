// The selected outline and another that meets it become one.
#pragma once

#include <memory>

#include "sketch/tool.h"

namespace sketch {

std::unique_ptr<Tool> join_tool();

}  // namespace sketch
