// A working as rows of a spreadsheet that computes again: each result is a formula over the rows it was made from.
#pragma once

#include <string>
#include <vector>

#include "files/workbook.h"
#include "takeoff/working.h"

namespace files {

// The columns of these rows, from `first_column` on: depth in the tree (0 is the result), how the row joins those above
// it ("x", "/", "+", "-", "up", "greatest", "least"), term, value, unit, what it is of.
inline constexpr std::size_t working_columns = 6;
inline constexpr std::size_t working_value = 3;  // of them

// The rows of one working, the result first; they will stand from row `row` on. A result without a name of its own is
// called `name`. A value is a formula where it gives that value again (to 1e-9 of it) and is no longer than a cell may
// hold; otherwise it is a plain number.
std::vector<std::vector<Cell>> working_cells(const takeoff::Working& working, const std::string& name, std::size_t row,
                                             std::size_t first_column);

}  // namespace files
