// Pick: selects, moves, bends, adds and takes away corners; the tool at rest.
#pragma once

#include <memory>

#include "sketch/tool.h"

namespace sketch {

std::unique_ptr<Tool> pick_tool();

}  // namespace sketch
