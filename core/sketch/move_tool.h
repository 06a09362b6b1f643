// What is selected is moved, or copied, from one point to another, or by a typed distance.
#pragma once

#include <memory>

#include "sketch/tool.h"

namespace sketch {

std::unique_ptr<Tool> move_tool();
std::unique_ptr<Tool> copy_tool();

}  // namespace sketch
