// What no tool may do, whatever was typed: put an element where the job does not reach. Each tool checks the points
// that it takes; this is the one gate behind all of them, for what comes of moving, turning, bending and repeating.
#pragma once

#include <memory>

#include "sketch/tool.h"

namespace sketch {

// The same tool; an edit of its that leaves a new or changed element past the plan's reach is refused
// ("place-too-far"), and the job stays as it was.
std::unique_ptr<Tool> within_reach(std::unique_ptr<Tool> tool);

}  // namespace sketch
