#include "files/working_cells.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace files {

namespace {

using Rows = std::vector<takeoff::Working::Row>;

constexpr std::size_t longest_formula = 8000;  // a spreadsheet takes 8,192 letters
constexpr std::size_t most_arguments = 255;    // of a function

// The rows right below one, by their places.
std::vector<std::size_t> parts_of(const Rows& rows, std::size_t parent) {
  std::vector<std::size_t> parts;
  for (std::size_t i = parent + 1; i < rows.size() && rows[i].depth > rows[parent].depth; ++i)
    if (rows[i].depth == rows[parent].depth + 1) parts.push_back(i);
  return parts;
}

// What its parts come to, by the sign that joins them.
double computed(const Rows& rows, const std::vector<std::size_t>& parts, const std::string& sign) {
  double made = rows[parts.front()].term.amount.value;
  if (sign == "up") return std::ceil(made - 1e-9);
  for (std::size_t i = 1; i < parts.size(); ++i) {
    const double value = rows[parts[i]].term.amount.value;
    if (sign == "x") made *= value;
    if (sign == "/") made /= value;
    if (sign == "+") made += value;
    if (sign == "-") made -= value;
    if (sign == "max") made = std::max(made, value);
    if (sign == "min") made = std::min(made, value);
  }
  return made;
}

std::string formula_of(const std::vector<std::string>& cells, const std::string& sign) {
  const bool function = sign == "max" || sign == "min";
  const std::string between = function ? "," : sign == "x" ? "*" : sign;
  std::string all;
  for (const std::string& cell : cells) all += (all.empty() ? "" : between) + cell;
  if (sign == "max") return "MAX(" + all + ")";
  if (sign == "min") return "MIN(" + all + ")";
  // What lies within 1e-9 above a whole number is that number.
  if (sign == "up") return "ROUNDUP(" + all + "-0.000000001,0)";
  return all;
}

std::optional<std::string> formula_at(const Rows& rows, std::size_t at, std::size_t first_row, std::size_t column) {
  const auto parts = parts_of(rows, at);
  if (parts.empty()) return std::nullopt;
  const std::string& sign = rows[parts.back()].sign;
  const double value = rows[at].term.amount.value;
  // Rounding up goes away from 0 in a spreadsheet: of what is under a billionth it would go the other way.
  if (sign == "up" && rows[parts.front()].term.amount.value < 1e-9) return std::nullopt;
  if ((sign == "max" || sign == "min") && parts.size() > most_arguments) return std::nullopt;
  if (std::abs(computed(rows, parts, sign) - value) > 1e-9 * std::abs(value)) return std::nullopt;
  std::vector<std::string> cells;
  for (const std::size_t part : parts) cells.push_back(cell_name(first_row + part, column));
  std::string formula = formula_of(cells, sign);
  if (formula.size() > longest_formula) return std::nullopt;
  return formula;
}

std::string sign_word(const std::string& sign) { return sign == "max" ? "greatest" : sign == "min" ? "least" : sign; }

}  // namespace

std::vector<std::vector<Cell>> working_cells(const takeoff::Working& working, const std::string& name, std::size_t row,
                                             std::size_t first_column) {
  // Under a sum of its own every part has a row, whether it has a name or not.
  Rows rows = takeoff::Working::sum({working}).named("all").rows();
  rows.erase(rows.begin());
  if (rows.front().term.name.empty()) rows.front().term.name = name;
  std::vector<std::vector<Cell>> made;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const takeoff::Term& term = rows[i].term;
    const auto formula = formula_at(rows, i, row, first_column + working_value);
    made.push_back({number_cell(rows[i].depth - 1), text_cell(sign_word(rows[i].sign), Look::unit),
                    text_cell(term.name, Look::wrapped),
                    formula ? formula_cell(*formula, term.amount.value) : number_cell(term.amount.value),
                    text_cell(units::name(term.amount.unit), Look::unit), text_cell(term.of)});
  }
  return made;
}

}  // namespace files
