// The parts of the plan sheet.
#pragma once

#include "sheets/places.h"
#include "sheets/printed.h"

namespace sheets {

// Metres about what is to be built; `deep`: with the drains.
struct PlanRoom {
  Vec low;
  Vec high;
  bool empty = true;
};
PlanRoom plan_room(const Printed& printed, bool deep);

// Where words have room round a plan that takes so many mm.
Places places_in(const PlanRoom& room, PaperScale scale, double wide_mm, double high_mm);

// Lengths of straight edges, radii of curves, distances of pools from the nearest building. An edge that two elements
// share is measured once; one that lies between areas has its length written along it, others a line outside.
// `wide_mm`, `high_mm`: what the plan may take; short edges are left out where their words would not fit.
void measure_plan(const Printed& printed, const PlanRoom& room, double wide_mm, double high_mm, Drawing& drawing);

// Lengths and falls of drain runs along them, inverts at their ends.
void measure_drains(const Printed& printed, const PlanRoom& room, double wide_mm, double high_mm, Drawing& drawing);

// Of the signs that the figure has, so many side by side in a row.
Table plan_legend(const Printed& printed, const Figure& figure, std::size_t across);
Table plan_elements(const Printed& printed);  // tag, what it is, size, pattern

}  // namespace sheets
