// What each stretch of an area's edge meets and what is built there, with a choice for each edge of the drawing.
#pragma once

#include "results/results.h"
#include "ui/panels/fields.h"

namespace ui {

// Edge by edge of the drawing, each with its stretches in words and a choice of junction instead of the table's; then
// what cuts the area (a pool, a wall), one line for each with its length. None where the shape has a fault.
std::vector<Field> edge_fields(const results::Results& results, const plan::Job& job, const plan::ElementId& id);

}  // namespace ui
