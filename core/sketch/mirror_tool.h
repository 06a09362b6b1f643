// What is selected is mirrored in a line; the first one may be kept.
#pragma once

#include <memory>

#include "sketch/tool.h"

namespace sketch {

std::unique_ptr<Tool> mirror_tool();

}  // namespace sketch
