// What it would bring to move one free edge of a paved area a little: fewer cuts, fewer slivers, another area.
#pragma once

#include <optional>

#include "plan/edits.h"
#include "plan/site.h"
#include "ui/desk/find_start.h"
#include "units/money.h"

namespace ui {

// A straight edge of the drawing that meets nothing but planting along all its length.
struct FreeEdge {
  plan::Corner start;
  int number = 0;  // in the drawing, rings counted on
  units::Length length;
};
std::vector<FreeEdge> free_edges(const plan::Site& site, const plan::Job& job, const plan::ElementId& area);

struct EdgeTry {
  units::Length out;  // how far it was moved out; negative is in
  LaidNumbers laid;
};

struct EdgeCost {
  EdgeTry was;
  EdgeTry best;  // `out` 0: it lies best where it is
  int tried = 0;
  plan::Job after;                    // the job with the edge moved
  std::optional<units::Money> money;  // what the whole job costs more (below 0: less); nothing without all prices
};

// Tries places up to `reach` either way, `step` apart, and those at which the edge runs along the sides and corners of
// units that it cuts now, since there a whole row of cuts is saved and no even step ever hits it. Only this area is
// laid anew for each. Best is the least of cut units and slivers together (a sliver is a cut that is trouble besides),
// then of units bought for cuts, then of moving. The money is that of the whole job, computed before and after. reach
// 0: half the longest unit.
problem::Result<EdgeCost> edge_cost(const plan::Job& job, const plan::ElementId& area, const FreeEdge& edge,
                                    units::Length reach, units::Length step, const GoesOn& goes_on = {});

}  // namespace ui
