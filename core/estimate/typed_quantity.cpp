#include "estimate/typed_quantity.h"

#include <cmath>

#include "estimate/own_unit.h"
#include "units/number.h"
#include "units/read_length.h"

namespace estimate {

using problem::Result;

namespace {

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && (text.front() == ' ' || text.front() == '\t')) text.remove_prefix(1);
  while (!text.empty() && (text.back() == ' ' || text.back() == '\t')) text.remove_suffix(1);
  return text;
}

// "tons" is "ton".
std::string singular(std::string_view word, const std::string& unit) {
  if (word == unit + "s") return unit;
  if (word.ends_with('s') && fixed_unit(word.substr(0, word.size() - 1)))
    return std::string(word.substr(0, word.size() - 1));
  return std::string(word);
}

Result<double> wrong_unit(std::string_view word, const std::string& unit) {
  return problem::fault("quantity-unit", "'" + std::string(word) + "' can't be turned into '" + unit + "'",
                        "enter the quantity in " + unit);
}

Result<double> read_run(std::string_view text, const FixedUnit& into) {
  const auto length = units::read_length(text, into.word == "ft" ? units::Bare::feet : units::Bare::metres);
  if (!length) return std::unexpected(length.error());
  if (*length < units::Length())
    return problem::fault("quantity-number", "'" + std::string(text) + "' is below 0", "enter 0 or more");
  const double value = length->metres().si() / into.si;
  return std::round(value * 1e6) / 1e6;  // a step is 3 micrometres
}

}  // namespace

Result<double> read_quantity(std::string_view text, const std::string& unit) {
  text = trimmed(text);
  const std::size_t end = std::min(text.find_first_not_of("0123456789."), text.size());
  const auto number = units::read_number(text.substr(0, end));
  const std::string_view word = trimmed(text.substr(end));
  const auto into = fixed_unit(unit);
  if (number && word.empty()) return *number;
  if (into && into->unit == units::metre && !text.empty()) return read_run(text, *into);
  if (!number || word.starts_with(','))
    return problem::fault("quantity-number", "'" + std::string(text.substr(0, 40)) + "' is no quantity",
                          "enter a number from 0 up with a dot before its decimals, as 12.5 " + unit);
  const std::string given = singular(word, unit);
  if (given == unit) return *number;
  const auto from = fixed_unit(given);
  if (!from || !into || from->unit != into->unit) return wrong_unit(word, unit);
  return *number * from->si / into->si;
}

}  // namespace estimate
