// Places, turns, scales and checks the site plan under the drawing: the selected one, or the only one there is.
//
//   place  drag it, or type how far east and north, or nudge it
//   turn   click a point that stays, a point to turn, and where that lies then; or type the turn
//   scale  click the two ends of a length that is known, then type it; the plan is locked after that
//   check  the same with a second length: nothing moves, the error is shown in per cent
// Opacity and lock are set at any time; a locked plan takes only them and a check.
#pragma once

#include <memory>

#include "sketch/tool.h"

namespace sketch {

std::unique_ptr<Tool> site_plan_tool();

}  // namespace sketch
