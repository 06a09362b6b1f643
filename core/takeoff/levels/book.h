// A level book reduced by the height of instrument.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "plan/element.h"

namespace takeoff::levels {

// One row reduced, metres. `instrument` is the height of instrument that the row's sights were read at (of a turning
// point: the new one). `correction` is what sharing out the misclosure added to `height`; 0 where none was asked for.
struct BookRow {
  std::string point;
  std::optional<double> instrument;
  double height = 0;
  double correction = 0;
};
// The arithmetic check: sum of backsights less sum of foresights = last height less first; it holds of a right sum
// whatever was read, so a book that fails it is this program's fault (problem::ensure). The misclosure (last height
// less the known one) tells how well it was read.
struct Reduced {
  std::vector<BookRow> rows;
  double sum_back = 0;
  double sum_fore = 0;
  std::optional<double> misclosure;
  int set_ups = 0;
};

// Faults, each with its row: no backsight on the first row, a row with no sight, an intermediate beside a foresight, a
// foresight that is not the last and has no backsight, a sight before any instrument. Codes "level-book-...".
problem::Result<Reduced> reduce(const plan::LevelBook& book, const plan::ElementId& id);

}  // namespace takeoff::levels
