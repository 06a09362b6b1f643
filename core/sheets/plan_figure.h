// The plan as it stands: the finished job, or the job at the end of a stage.
#pragma once

#include <optional>

#include "results/results.h"
#include "sheets/figure.h"
#include "takeoff/stage.h"

namespace sheets {

struct PlanWants {
  std::optional<takeoff::Stage> stage;  // none: the finished job
  bool junctions = false;               // a letter on each stretch: E expansion, I isolation, R restraint, K kerb, F flush
  bool levels = true;
  bool falls = false;  // coloured patches with arrows
};

// From the bottom up: ground, buildings, pools with water, open digs or layers or laid units by the stage, borders and
// copings as rows of units, walls, steps, runs, features, marks, levels, tags, problems at their places. Before a stage
// is built its elements are dashed outlines.
Figure plan_figure(const results::Results& results, const PlanWants& wants);

}  // namespace sheets
