// Comma separated values as RFC 4180 has them, both ways, in the form that a spreadsheet opens without running
// anything.
//
// Reading takes commas, double quotes (doubled inside quotes), CR LF or LF between rows, and a byte order mark before
// the first one. The first row names the columns. Rows of empty cells are passed over: spreadsheets leave them at the
// end.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "problem/problem.h"

namespace files {

struct CsvRow {
  int line = 0;  // of the file, counted from 1, where the row begins
  std::vector<std::string> cells;
};

struct CsvTable {
  std::string file;
  std::vector<std::string> columns;
  std::vector<CsvRow> rows;  // each with as many cells as there are columns

  std::optional<std::size_t> column(std::string_view name) const;
};

// Refused with line and column: text that is not UTF-8, a zero byte, a quote where none may stand or one that is never
// closed, a row with more or fewer cells than the head line, a column without a name or with the name of another, more
// than most_bytes. Codes: csv-syntax, csv-large, csv-columns, csv-row.
problem::Result<CsvTable> read_csv(std::string_view text, const std::string& file);

// The same without a head line: every row as it stands, rows of empty cells left out. For files whose columns go by
// their order.
problem::Result<std::vector<CsvRow>> read_csv_rows(std::string_view text, const std::string& file);

// How a file is written. Spreadsheets of countries with a decimal comma open semicolons; numbers keep their dot in
// every form. A byte order mark tells a spreadsheet that the text is UTF-8.
struct CsvForm {
  char separator = ',';  // , ; or a tab
  bool byte_order_mark = false;
};

// One row, quoted where it must be (RFC 4180; a cell with the separator too), with CR LF behind it. The cells are
// written as they are: text that came from people goes through `csv_text` first, numbers do not.
std::string csv_row(const std::vector<std::string>& cells, char separator = ',');
std::string csv_begin(const CsvForm& form);  // what stands before the first row

// A text that a spreadsheet could run as a formula (it begins with = + - @, a tab or a line end) gets an apostrophe
// before it; so does one of apostrophes before such a sign, so that `text_of_csv` undoes exactly what this did.
std::string csv_text(std::string_view text);
std::string text_of_csv(std::string_view cell);

// A place in a file of rows; 0 is unknown.
problem::Place csv_place(const std::string& file, int line = 0, int column = 0);

// The fault of one cell: line and column name in the sentence, as "items.csv:12: column price: it is 0; ...".
std::unexpected<problem::Problem> cell_fault(const CsvTable& table, const CsvRow& row, std::string_view column,
                                             const std::string& what, const std::string& mend);

}  // namespace files
