// The scales that drawings are made at, and the bar beside them.
#pragma once

#include <QString>

#include "units/read_length.h"

namespace ui {

// 1 : n. The least n of the usual ones at which one metre takes no more than `metres_on_paper` metres of paper. US: so
// many feet to the inch or fractions of an inch to the foot; metric: 1, 2, 5 times powers of ten and 25s.
int fitting_scale(double metres_on_paper, units::System units);

QString scale_words(int scale, units::System units);  // "1 : 50"; "1 : 48 (1/4″ = 1′)"

struct ScaleBar {
  double metres = 1;
  int parts = 4;
  QString words;  // "5 m", "10 ft"
};
ScaleBar scale_bar(int scale, units::System units);  // 30 to 70 mm long

}  // namespace ui
