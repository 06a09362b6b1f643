// A spreadsheet file (XLSX): sheets of cells as plain values, and the bytes of the file made from them.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "problem/problem.h"

namespace files {

// How a cell is shown. Money has the decimals of the workbook's currency; other numbers as many as their size asks for
// (1,234 of a whole one, 1,234.57, 12.346, 0.00123,
// 1.20E-05). A unit stands a little off the number before it; the head of a
// column of numbers stands over them. From `head` on empty cells are drawn too, so that lines run through.
enum class Look {
  plain,
  wrapped,
  title,
  unit,
  number,
  money,
  price,  // money with four decimals: of one, where that is no whole coin
  head,
  unit_head,
  number_head,
  total,
  total_unit,
  total_number,
  total_money
};

// One cell. A text is always a text, whatever it begins with: only `formula` makes something that a spreadsheet
// computes. A formula is kept with the value that it has, so that a reader that does not compute shows it too.
struct Cell {
  enum class What { empty, text, number, formula } what = What::empty;
  std::string text;  // UTF-8; of a formula without its leading "="
  double value = 0;  // finite
  Look look = Look::plain;
};

Cell text_cell(std::string text, Look look = Look::plain);
Cell number_cell(double value, Look look = Look::number);
Cell formula_cell(std::string formula, double value, Look look = Look::number);

struct Sheet {
  std::string name;
  std::vector<double> widths;  // of the columns, in letters
  std::size_t frozen = 1;      // so many rows at the top stay when one scrolls, and stand on each printed page
  bool filter = false;         // the last frozen row carries filters over all rows below it that `filtered` counts
  std::size_t filtered = 0;
  std::vector<std::vector<Cell>> rows;
};

struct Workbook {
  std::string title;
  std::string date;  // 2026-11-28: when the file says it was made; anything else is 2000-01-01
  int decimals = 2;
  bool letter = false;  // paper: US letter, otherwise A4
  std::vector<Sheet> sheets;
};

// "B7", or "$B$7" fixed; columns and rows count from 0.
std::string cell_name(std::size_t row, std::size_t column, bool fixed = false);

// The file's bytes: the same workbook gives the same bytes on every run, in every locale and time zone. A text longer
// than a cell can hold (32,767 bytes) ends in "...". Refused (code xlsx-written): no room for the temporary file that
// the library needs, a sheet of more than 1,048,576 rows.
problem::Result<std::string> write_workbook(const Workbook& workbook);

}  // namespace files
