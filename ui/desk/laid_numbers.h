// One paved area laid anew, and nothing else of the job: quick enough to try many drawings of it.
#pragma once

#include "plan/job.h"
#include "units/quantity.h"

namespace ui {

struct LaidNumbers {
  std::int64_t whole = 0;
  std::int64_t cut = 0;
  std::int64_t slivers = 0;
  std::int64_t bought = 0;  // units for cuts, under the job's choice of reuse within the area
  double net_area_m2 = 0;
  double least_width = 0;  // metres, of all cut pieces; 0: none is cut
  bool operator==(const LaidNumbers&) const = default;
};

// The first problem of the laying where there is one; "nothing-chosen" where no pattern is.
problem::Result<LaidNumbers> laid_numbers(const plan::Job& job, const plan::ElementId& area);

// The job without what takes no ground: levels, notes, marks. It is laid the same.
plan::Job only_ground(const plan::Job& job);

}  // namespace ui
