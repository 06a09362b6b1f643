// What a new element starts with: what the last one of its kind in the job has, fitted to the new shape, and nothing
// else. A first element of a kind has nothing chosen that costs money. Heights, loads, drains, readings and what a
// person corrected belong to one element and are never handed on.
#pragma once

#include <optional>
#include <vector>

#include "plan/job.h"
#include "sketch/shaper.h"
#include "sketch/tool.h"

namespace sketch {

// What was drawn: an outline or a line, or else a point.
struct Made {
  std::optional<Finished> shape;
  geometry::Point at;
};

// The kind that `hand` draws. `what` is its word ("kerb", "pipe", "planter" ...), empty where the kind has none.
plan::Kind fresh(Hand hand, const plan::Job& job, const Made& made, const std::string& what);
// The word of the last element of that kind in the job, to go on with; empty where there is none.
std::string last_what(Hand hand, const plan::Job& job);

}  // namespace sketch
