// An edge becomes an arc through a point or of a typed radius, or straight again.
#pragma once

#include <memory>

#include "sketch/tool.h"

namespace sketch {

std::unique_ptr<Tool> edge_to_arc_tool();

}  // namespace sketch
