#include "files/csv.h"

#include <algorithm>
#include <set>

#include "files/files.h"

namespace files {

namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
constexpr std::string_view formula_starts = "=+-@\t\r\n";

// Length of the UTF-8 sequence at `at`, 0 if there is none: no overlong form, no surrogate, nothing past U+10FFFF.
std::size_t utf8_length(std::string_view text, std::size_t at) {
  const auto byte = [&](std::size_t i) { return at + i < text.size() ? static_cast<unsigned char>(text[at + i]) : 0u; };
  const auto follows = [&](std::size_t i) { return byte(i) >= 0x80 && byte(i) < 0xC0; };
  const unsigned first = byte(0);
  if (first < 0x80) return 1;
  if (first >= 0xC2 && first < 0xE0) return follows(1) ? 2 : 0;
  if (first >= 0xE0 && first < 0xF0) {
    if ((first == 0xE0 && byte(1) < 0xA0) || (first == 0xED && byte(1) >= 0xA0)) return 0;
    return follows(1) && follows(2) ? 3 : 0;
  }
  if (first >= 0xF0 && first < 0xF5) {
    if ((first == 0xF0 && byte(1) < 0x90) || (first == 0xF4 && byte(1) >= 0x90)) return 0;
    return follows(1) && follows(2) && follows(3) ? 4 : 0;
  }
  return 0;
}

// Cuts the text into rows of cells, one character after the other.
class Cutter {
 public:
  Cutter(std::string_view text, const std::string& file) : text_(text), file_(file) {
    while (text_.substr(at_).starts_with(byte_order_mark)) at_ += byte_order_mark.size();  // some tools put two
  }

  bool at_end() const { return at_ >= text_.size(); }

  problem::Result<CsvRow> row() {
    CsvRow row{line_, {}};
    while (true) {
      auto cell = next_cell();
      if (!cell) return std::unexpected(cell.error());
      row.cells.push_back(std::move(*cell));
      if (at_end()) return row;
      if (text_[at_] == ',') {
        step();
        continue;
      }
      if (text_[at_] == '\r') step();
      if (!at_end() && text_[at_] == '\n') step();
      return row;
    }
  }

 private:
  std::unexpected<problem::Problem> refuse(const std::string& what, const std::string& mend) const {
    return problem::fault("csv-syntax", what, mend, csv_place(file_, line_, column_));
  }

  bool row_ends() const {
    return at_end() || text_[at_] == '\n' ||
           (text_[at_] == '\r' && (at_ + 1 == text_.size() || text_[at_ + 1] == '\n'));
  }

  void step() {
    const std::size_t length = std::max<std::size_t>(utf8_length(text_, at_), 1);
    if (text_[at_] == '\n') {
      ++line_;
      column_ = 1;
    } else {
      ++column_;
    }
    at_ += length;
  }

  problem::Result<void> take(std::string& cell) {
    const std::size_t length = utf8_length(text_, at_);
    if (length == 0) return refuse("the text is not UTF-8", "save it as CSV with the encoding UTF-8");
    if (text_[at_] == '\0')
      return refuse("there is a zero byte in the text", "save it as CSV, not in a spreadsheet's own form");
    cell += text_.substr(at_, length);
    step();
    return {};
  }

  problem::Result<std::string> next_cell() {
    if (!at_end() && text_[at_] == '"') return quoted_cell();
    std::string cell;
    while (!row_ends() && text_[at_] != ',') {
      if (text_[at_] == '"')
        return refuse("a quote stands inside a cell that does not begin with one",
                      "put the whole cell in quotes and double the quotes inside");
      if (auto taken = take(cell); !taken) return std::unexpected(taken.error());
    }
    return cell;
  }

  problem::Result<std::string> quoted_cell() {
    const auto open = refuse("a quote is opened here and never closed", "close it, and double the quotes inside");
    std::string cell;
    step();
    while (!at_end()) {
      if (text_[at_] == '"') {
        step();
        if (at_end() || text_[at_] != '"') {
          if (row_ends() || text_[at_] == ',') return cell;
          return refuse("text follows a closed quote", "double the quotes inside a cell");
        }
      }
      if (auto taken = take(cell); !taken) return std::unexpected(taken.error());
    }
    return open;
  }

  std::string_view text_;
  const std::string& file_;
  std::size_t at_ = 0;
  int line_ = 1;
  int column_ = 1;
};

problem::Result<void> check_head(const CsvTable& table, int line) {
  std::set<std::string> seen;
  for (const std::string& name : table.columns) {
    if (name.empty())
      return problem::fault("csv-columns", "a column has no name", "name it or take it out",
                            csv_place(table.file, line));
    if (!seen.insert(name).second)
      return problem::fault("csv-columns", "two columns are called '" + name + "'", "take one of them out",
                            csv_place(table.file, line));
  }
  return {};
}

// Calls `take` with each row that holds anything, in order, until it refuses one.
template <class Take>
problem::Result<void> each_row(std::string_view text, const std::string& file, const Take& take) {
  if (text.size() > most_bytes)
    return problem::fault("csv-large", "the file is larger than 64 MiB", "cut it into smaller ones", csv_place(file));
  Cutter cutter(text, file);
  while (!cutter.at_end()) {
    auto row = cutter.row();
    if (!row) return std::unexpected(row.error());
    if (std::all_of(row->cells.begin(), row->cells.end(), [](const std::string& cell) { return cell.empty(); }))
      continue;
    if (problem::Result<void> good = take(std::move(*row)); !good) return good;
  }
  return {};
}

// How many apostrophes the text begins with, if a formula sign follows them; else nothing.
std::optional<std::size_t> apostrophes_before_sign(std::string_view text) {
  const std::size_t sign = text.find_first_not_of('\'');
  if (sign == std::string_view::npos || formula_starts.find(text[sign]) == std::string_view::npos) return std::nullopt;
  return sign;
}

}  // namespace

problem::Place csv_place(const std::string& file, int line, int column) { return {{}, file, line, column, {}}; }

std::optional<std::size_t> CsvTable::column(std::string_view name) const {
  const auto found = std::find(columns.begin(), columns.end(), name);
  if (found == columns.end()) return std::nullopt;
  return static_cast<std::size_t>(found - columns.begin());
}

problem::Result<std::vector<CsvRow>> read_csv_rows(std::string_view text, const std::string& file) {
  std::vector<CsvRow> rows;
  auto good = each_row(text, file, [&rows](CsvRow row) -> problem::Result<void> {
    rows.push_back(std::move(row));
    return {};
  });
  if (!good) return std::unexpected(good.error());
  return rows;
}

problem::Result<CsvTable> read_csv(std::string_view text, const std::string& file) {
  CsvTable table{file, {}, {}};
  const auto take = [&table](CsvRow row) -> problem::Result<void> {
    if (table.columns.empty()) {
      table.columns = std::move(row.cells);
      return check_head(table, row.line);
    }
    if (row.cells.size() != table.columns.size())
      return problem::fault("csv-row",
                            "the row has " + std::to_string(row.cells.size()) + " cells, the head line " +
                                std::to_string(table.columns.size()),
                            "put cells with commas in quotes", csv_place(table.file, row.line));
    table.rows.push_back(std::move(row));
    return {};
  };
  if (auto good = each_row(text, file, take); !good) return std::unexpected(good.error());
  if (table.columns.empty())
    return problem::fault("csv-columns", "there is no head line", "name the columns in the first row",
                          csv_place(file, 1));
  return table;
}

std::string csv_begin(const CsvForm& form) { return std::string(form.byte_order_mark ? byte_order_mark : ""); }

std::string csv_row(const std::vector<std::string>& cells, char separator) {
  const std::string quoted = std::string("\"\r\n") + separator;
  std::string row;
  for (const std::string& cell : cells) {
    if (&cell != cells.data()) row += separator;
    if (cell.find_first_of(quoted) == std::string::npos) {
      row += cell;
      continue;
    }
    row += '"';
    for (const char c : cell) {
      if (c == '"') row += '"';
      row += c;
    }
    row += '"';
  }
  return row + "\r\n";
}

std::string csv_text(std::string_view text) { return (apostrophes_before_sign(text) ? "'" : "") + std::string(text); }

std::string text_of_csv(std::string_view cell) {
  const bool guarded = apostrophes_before_sign(cell).value_or(0) > 0;
  return std::string(cell.substr(guarded ? 1 : 0));
}

std::unexpected<problem::Problem> cell_fault(const CsvTable& table, const CsvRow& row, std::string_view column,
                                             const std::string& what, const std::string& mend) {
  return problem::fault("csv-cell", "column " + std::string(column) + ": " + what, mend,
                        csv_place(table.file, row.line));
}

}  // namespace files
