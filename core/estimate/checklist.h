// Lines that every estimate forgets. None is put in by itself: each is looked at, and is a line or nothing on purpose.
#pragma once

#include <string>
#include <vector>

#include "estimate/estimate.h"

namespace estimate {

// One point. As an added line it has the point's code for its id, and its stage and kind unless the person says
// otherwise.
struct ChecklistPoint {
  std::string code;  // permit, engineer, locate ...
  std::string name;
  takeoff::Stage stage = takeoff::Stage::protect;
  plan::CostKind kind = plan::CostKind::fee;
  enum class Answer { open, line, nothing };
  Answer answer = Answer::open;
  plan::Id by;          // the item of the line that answers it
  units::Money amount;  // of the lines that answer it
};

// In a fixed order. A point is answered by the added line with its code, or by lines of the estimate that are the thing
// itself (disposal of spoil, delivery, the deposit on pallets).
std::vector<ChecklistPoint> checklist(const plan::Job& job, const Estimate& estimate);

}  // namespace estimate
