// The cells of one CSV row as values. The first cell that can't be understood is kept as the fault of the row; after it
// every answer is empty, so that a reader names all its columns in one go and looks at `fault` once.
#pragma once

#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>

#include "files/csv.h"
#include "units/length.h"
#include "units/money.h"

namespace files {

// Every needed column is there and none that nobody knows; else a sentence that names it.
problem::Result<void> check_columns(const CsvTable& table, std::initializer_list<std::string_view> needed,
                                    std::initializer_list<std::string_view> known);

class CsvCells {
 public:
  CsvCells(const CsvTable& table, const CsvRow& row) : table_(table), row_(row) {}

  // A column that the file does not have reads as an empty cell.
  std::string text(std::string_view column);
  std::string needed_text(std::string_view column);       // refuses an empty cell
  std::optional<double> number(std::string_view column);  // dot decimals, finite
  double needed_number(std::string_view column);
  std::optional<units::Length> millimetres(std::string_view column);  // within 5 km
  int count(std::string_view column);                          // 0 if empty; refuses what is not whole, 0 and less
  int whole(std::string_view column);                          // 0 if empty; refuses what is not whole or below 0
  std::optional<units::Money> money(std::string_view column);  // two decimals
  bool yes(std::string_view column);                           // "yes", or empty and "no"
  double percent(std::string_view column);                     // as a share: 3 is 0.03 to the last digit

  void refuse(std::string_view column, const std::string& what, const std::string& mend);
  const std::optional<problem::Problem>& fault() const { return fault_; }

 private:
  std::string_view cell(std::string_view column) const;

  const CsvTable& table_;
  const CsvRow& row_;
  std::optional<problem::Problem> fault_;
};

// A share as percent, digit by digit, so that `percent` reads back the very same double: 0.07 is "7".
std::string percent_of(double share);

// Shortest decimal of a length in millimetres; reading it gives the same step.
std::string millimetres_of(units::Length length);

}  // namespace files
