// A laying pattern: two vectors that repeat it and the rectangles of one repeat. Data, not code:
// resources/patterns/*.json.
#pragma once

#include <string>
#include <vector>

#include "catalogue/item.h"
#include "problem/problem.h"
#include "units/angle.h"

namespace catalogue {

// One rectangle of the repeat, in whole cells: it covers x..x+w, y..y+h. `size` names which unit lies there.
struct PatternPiece {
  std::string size;
  int x = 0;
  int y = 0;
  int w = 1;
  int h = 1;
  bool operator==(const PatternPiece&) const = default;
};

// How long a cell is: a share of the module length L or width W of the first size's unit ("L", "W", "L/2", "L/3" ...),
// or a length.
struct CellSide {
  enum class Of { module_length, module_width, fixed } of = Of::module_length;
  int parts = 1;        // L / parts
  units::Length fixed;  // Of::fixed
  bool operator==(const CellSide&) const = default;
};

// The pieces, repeated by every whole a x along + b x across, cover the plane once (checked by `check`). `along` runs
// along the rows: along = (n, 0) with n > 0, and across = (s, t) with t > 0, so that a row is a run.
struct Pattern {
  Id id;
  Words name;
  CellSide cell_x;
  CellSide cell_y;
  units::Angle direction;  // turns the pattern against the area's direction
  int along = 1;
  int across_x = 0;
  int across_y = 1;
  std::vector<PatternPiece> pieces;
  bool herringbone = false;  // needs L = 2 W + joint (fit rule)
  std::string fits;
  std::string advice;
  bool operator==(const Pattern&) const = default;
};

// Each cell of a window covered exactly once, sizes consistent, along and across as said; else "pattern-overlap",
// "pattern-gap", "pattern-vectors" with the cell.
problem::Result<void> check(const Pattern& pattern);

// Reads resources/patterns/*.json or the `patterns` of a job file once parsed (files does the parsing).
std::vector<std::string> sizes(const Pattern& pattern);  // each once, in order of first use

// cell c = W + j, end gap g = (2 W + 3 j - L) / 2. Fits if some joint j in [least, greatest] has g in
// there too; then the least such j (in 1/64 in steps of the range for inches is not needed: the exact least is
// returned).
struct HerringboneFit {
  bool fits = false;
  units::Length joint;                                // to lay with
  units::Length end_gap;                              // g at that joint
  units::Length would_fit_least, would_fit_greatest;  // the joints that would do, when none does within the limits
};
HerringboneFit herringbone_fit(units::Length length, units::Length width, units::Length least, units::Length greatest);

}  // namespace catalogue
