// The border courses of an area as they come to lie, for whoever draws them.
#pragma once

#include "plan/site.h"
#include "takeoff/paving/border.h"

namespace takeoff::paving {

// One course along one line, the ground on its left. `makes` belong to the runs of at_corners of
// placed_runs(line, from, rules.deep, left); one without pieces leaves its run empty.
struct LaidCourse {
  std::size_t border = 0;  // number in PavedArea::borders
  geometry::Path line;
  double from = 0;  // metres from the line to the course
  RowRules rules;
  RowCorner corner = RowCorner::mitre;
  int course = 0;  // as at_corners counts them
  std::vector<RowMake> makes;
};

// The courses and the field that they and the joints leave, as lay_area has them; nothing is laid in the field.
struct Bordered {
  geometry::Region field;
  std::vector<LaidCourse> courses;
};
Bordered bordered(const plan::Job& job, const plan::Ground& ground);

}  // namespace takeoff::paving
