// The scale at which something is drawn, for figures that have to know it before they are laid on a page: what stands
// a few millimetres beside a line on paper.
#pragma once

#include <algorithm>
#include <cmath>

#include "sheets/figure.h"
#include "units/read_length.h"

namespace sheets {

struct PaperScale {
  int one_to = 100;
  // Metres of the figure under so many millimetres of paper.
  double under(double millimetres) const { return millimetres * one_to / 1000; }
};

// The largest of the usual scales at which `wide` x `high` metres fit on so many millimetres. US: inches to the foot;
// metric: 1, 2, 5 times powers of ten and 25s, as rulers have them.
PaperScale fitting(double wide, double high, double wide_mm, double high_mm, units::System system);

}  // namespace sheets
