// What stands at the head and the foot of every page.
#pragma once

#include <memory>

#include "results/results.h"
#include "ui/paint/figure_painter.h"

namespace ui {

// The plan in outlines with its tags: small enough for a corner.
std::shared_ptr<const FigurePainter> key_plan(const results::Results& results);

}  // namespace ui
