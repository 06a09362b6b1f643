// The plan with what changed between two versions marked: outlines as plain values, each with how it differs. Gone ones
// are shown where they were.
#pragma once

#include <optional>
#include <vector>

#include "plan/differences.h"
#include "sheets/figure.h"

namespace sheets {

struct ChangedShape {
  std::vector<Contour> contours;     // closed ones fill even-odd; of lines without ground one open contour
  std::optional<plan::Differs> how;  // nothing: as it was
  plan::ElementId of;
  Vec tag;  // where its tag stands
};

struct ChangedPlan {
  std::vector<ChangedShape> shapes;  // what stayed first, then what changed, so that it lies on top
  Vec low;
  Vec high;
};

// Notes, dimensions, site plans and books of measures have no ground and are left out; a point (level, feature, mark)
// is a small square of 0.3 m. Nothing drawn: low and high are 0.
ChangedPlan changed_plan(const plan::Job& before, const plan::Job& after);

}  // namespace sheets
