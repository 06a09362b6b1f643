// The plan as it stands: the finished job, or the job at the end of a stage.
#pragma once

#include <optional>

#include "results/results.h"
#include "sheets/figure.h"
#include "takeoff/stage.h"

namespace sheets {

struct PlanWants {
  std::optional<takeoff::Stage> stage = std::nullopt;  // none: the finished job
  bool junctions = false;                              // a letter on each stretch, see below
  bool levels = true;
  // Patches (areas with a `word`), arrows on the larger ones; otherwise one arrow an area, on its largest plane.
  bool falls = false;
};

// A letter on a stretch says what the junction table builds there: K a kerb, R a restraint or edging, I kept apart from
// what stands (building, wall, pillar), E a sealed joint that moves (coping, channel, drive), F flush with a joint of
// the area's own. No letter where nothing is built.
//
// An area is drawn as a walk where its name has "walk" or "path" in it, or where it is narrower than 6 ft on average
// (twice its area over its perimeter is under 3 ft); every other one as paving. Of a building the ground inside is
// tone 1 (plain) and the band of its walls tone 0 (hatched); borders of soldiers have tone 0, of sailors 1; treads
// take turns.
//
// What stands at the end of which stage, by where the takeoff books it: removals go and protection stands with the
// first; the open dig (net ground grown by what the layers reach past its edges) is soil with Line::open_dig until the
// base; drains under the ground; walls and pillars; the base with its laps of fabric until the paving; copings, kerbs
// and steps; units and borders; restraint with the joints; water in the pool, features and ground made good at the end.
//
// Each problem and each flag of the results has a Mark at its place or at its element: three or four words made from
// its code, one for all of an element with the same code. Notices have none.
//
// From the bottom up: ground, buildings, pools with water, open digs or layers or laid units by the stage, borders and
// copings as rows of units, walls, steps, runs, features, marks, levels, tags, problems at their places. Before a stage
// is built its elements are dashed outlines.
Figure plan_figure(const results::Results& results, const PlanWants& wants);

}  // namespace sheets
