#include "files/csv_cells.h"

#include <algorithm>
#include <cmath>

#include "units/decimal.h"
#include "units/number.h"

namespace files {

namespace {

std::string in_quotes(std::string_view cell) {
  constexpr std::size_t most = 40;
  std::string shown(cell.substr(0, most));
  for (char& c : shown)
    if (static_cast<unsigned char>(c) < 0x20) c = ' ';
  while (cell.size() > most && !shown.empty() && (static_cast<unsigned char>(shown.back()) & 0x80u) != 0)
    shown.pop_back();
  return "'" + shown + (cell.size() > most ? "..." : "") + "'";
}

}  // namespace

problem::Result<void> check_columns(const CsvTable& table, std::initializer_list<std::string_view> needed,
                                    std::initializer_list<std::string_view> known) {
  for (const std::string_view name : needed)
    if (!table.column(name))
      return problem::fault("csv-columns", "the column '" + std::string(name) + "' is missing",
                            "add it to the head line", csv_place(table.file, 1));
  for (const std::string& name : table.columns)
    if (std::find(needed.begin(), needed.end(), name) == needed.end() &&
        std::find(known.begin(), known.end(), name) == known.end())
      return problem::fault("csv-columns", "the column " + in_quotes(name) + " is not known",
                            "take it out, or name it as an exported catalogue does", csv_place(table.file, 1));
  return {};
}

std::string_view CsvCells::cell(std::string_view column) const {
  const auto at = table_.column(column);
  return at && !fault_ ? std::string_view(row_.cells[*at]) : std::string_view();
}

void CsvCells::refuse(std::string_view column, const std::string& what, const std::string& mend) {
  if (!fault_) fault_ = cell_fault(table_, row_, column, what, mend).error();
}

std::string CsvCells::text(std::string_view column) { return text_of_csv(cell(column)); }

std::string CsvCells::needed_text(std::string_view column) {
  std::string value = text(column);
  if (value.empty()) refuse(column, "the cell is empty", "fill it in");
  return value;
}

std::optional<double> CsvCells::number(std::string_view column) {
  const std::string_view value = cell(column);
  if (value.empty()) return std::nullopt;
  const auto number = units::read_number(value);
  if (!number)
    refuse(column, in_quotes(value) + " is not a number", "write digits with a dot before the decimals and no unit");
  return number;
}

double CsvCells::needed_number(std::string_view column) {
  const auto value = number(column);
  if (!value) refuse(column, "the cell is empty", "enter a number");
  return value.value_or(0);
}

std::optional<units::Length> CsvCells::millimetres(std::string_view column) {
  const auto value = number(column);
  if (!value) return std::nullopt;
  if (std::abs(*value) > 5e6) {
    refuse(column, "it is longer than 5 km", "enter millimetres");
    return std::nullopt;
  }
  return units::Length::nearest(units::Metres(*value / 1000));
}

int CsvCells::count(std::string_view column) {
  const auto value = number(column);
  if (!value) return 0;
  if (*value != std::floor(*value) || *value < 1 || *value > 1e9) {
    refuse(column, in_quotes(cell(column)) + " is not a whole number of 1 or more",
           "enter how many there are, or leave it empty");
    return 0;
  }
  return static_cast<int>(*value);
}

int CsvCells::whole(std::string_view column) {
  const auto value = number(column);
  if (!value) return 0;
  if (*value != std::floor(*value) || *value < 0 || *value > 1e9) {
    refuse(column, in_quotes(cell(column)) + " is not a whole number", "enter one of 0 or more");
    return 0;
  }
  return static_cast<int>(*value);
}

std::optional<units::Money> CsvCells::money(std::string_view column) {
  const std::string_view value = cell(column);
  if (value.empty()) return std::nullopt;
  const auto money = units::read_money(value, 2);
  if (!money) {
    refuse(column, in_quotes(value) + " is not an amount of money",
           "write digits with a dot and at most two decimals, no sign of a currency");
    return std::nullopt;
  }
  return *money;
}

bool CsvCells::yes(std::string_view column) {
  const std::string_view value = cell(column);
  if (!value.empty() && value != "yes" && value != "no")
    refuse(column, in_quotes(value) + " is neither yes nor no", "write yes, or leave it empty");
  return value == "yes";
}

double CsvCells::percent(std::string_view column) {
  const auto value = number(column);
  if (!value) return 0;
  const std::string_view text = cell(column);
  if (text.find_first_of("eE") != std::string_view::npos) return *value / 100;
  return units::read_number(std::string(text) + "e-2").value_or(*value / 100);
}

std::string percent_of(double share) {
  const units::Decimal decimal = units::shortest_decimal(share);
  std::string digits = std::to_string(decimal.digits);
  const int exponent = decimal.exponent + 2;
  if (decimal.digits == 0) return "0";
  if (exponent >= 0) {
    digits.append(static_cast<std::size_t>(exponent), '0');
  } else {
    const auto decimals = static_cast<std::size_t>(-exponent);
    if (digits.size() <= decimals) digits.insert(0, decimals + 1 - digits.size(), '0');
    digits.insert(digits.size() - decimals, ".");
  }
  return (decimal.negative ? "-" : "") + digits;
}

std::string millimetres_of(units::Length length) { return units::write_number(length.millimetres()); }

}  // namespace files
