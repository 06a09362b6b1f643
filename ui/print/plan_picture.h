// The plan as a picture of its own: SVG for whoever draws on, PNG for a letter. In the colours of the materials, on
// white, with its tags, levels and marks.
#pragma once

#include <QByteArray>

#include "results/results.h"

namespace ui {

// `longest`: the longer side, px (64 to 8000); a job without anything drawn gives an empty white picture.
QByteArray plan_svg(const results::Results& results, int longest = 1600);
QByteArray plan_png(const results::Results& results, int longest = 2400);

}  // namespace ui
