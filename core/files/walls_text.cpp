#include "files/walls_text.h"

#include <cmath>
#include <numbers>

#include "files/sheet_text.h"
#include "files/takeoff_measures.h"
#include "units/number.h"

namespace files {

namespace {

// A factor to two decimals, anything else in the units that the job is read in.
std::string value_in_words(double value, units::Unit unit, units::System system) {
  if (unit == units::piece) return units::show_grouped(value, 2);
  if (unit == units::metre) return units::show_length(units::Length::nearest(units::Metres(value)), system);
  return takeoff::Working(takeoff::term("", value, unit)).sentence(system);
}

std::string check_in_words(const takeoff::Check& check, units::System system) {
  const units::Amount amount = check.working.amount();
  std::string text = check.of + ": " + check.name + " " + value_in_words(amount.value, amount.unit, system) +
                     (check.at_most ? ", at most " : ", at least ") + value_in_words(check.limit, amount.unit, system) +
                     " wanted: " + (check.passes() ? "passes" : "FAILS");
  if (!check.where.empty()) text += "; " + check.where;
  return text;
}

// Columns: element 6, pieces 6, keeps 12, degrees 8, saw 10, goes on: 110 with the spaces.
std::string cut_row(std::string_view of, std::string_view count, std::string_view kept, std::string_view degrees,
                    std::string_view saw, std::string_view what) {
  return at_left(of, 8) + at_right(count, 7) + at_right(kept, 12) + at_right(degrees, 9) + at_right(saw, 12) + "  " +
         std::string(what);
}

std::string degrees_of(double radians) {
  if (std::abs(radians) < 1e-9) return "square";
  return units::show_grouped(radians * 180 / std::numbers::pi, 2);
}

std::string cut_in_words(const takeoff::Cut& cut, units::System system) {
  const auto length = [system](double metres) {
    return units::show_length(units::Length::nearest(units::Metres(metres)), system);
  };
  std::string what = cut.what + " of " + cut.item;
  if (!cut.keep.empty()) what += ", " + cut.keep + " part kept";
  if (cut.from_offcut) what += ", out of an offcut";
  if (!cut.where.empty()) what += "; " + cut.where;
  const std::string row = cut_row(cut.of, std::to_string(cut.count), cut.kept > 0 ? length(cut.kept) : "-",
                                  degrees_of(cut.angle), length(cut.length), "");
  return wrapped(what, row, columns_of(row));
}

}  // namespace

std::string checks_text(const results::Results& results) {
  if (results.takeoff.checks.empty()) return {};
  const units::System system = results.job->heading.units;
  std::string text = section("Preliminary checks");
  text += wrapped(
      "These go by the soils, strengths and factors that were entered, and decide nothing: local code does, and a "
      "licensed engineer.",
      "", 2);
  for (const takeoff::Check& check : results.takeoff.checks) {
    text += wrapped(check_in_words(check, system), "", 4) + wrapped(check.working.sentence(system), "    ", 4);
    if (!check.source.empty()) text += wrapped(check.source, "    ", 4);
  }
  return text;
}

std::string cuts_text(const results::Results& results) {
  if (results.takeoff.cuts.empty()) return {};
  std::string text = section("Cuts of blocks, caps and steps");
  text += cut_row("of", "pieces", "keeps", "degrees", "saw goes", "which") + "\n";
  for (const takeoff::Cut& cut : results.takeoff.cuts) text += cut_in_words(cut, results.job->heading.units);
  return text;
}

}  // namespace files
