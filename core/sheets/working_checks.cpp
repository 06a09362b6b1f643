#include <algorithm>
#include <array>
#include <cmath>

#include "sheets/source.h"
#include "sheets/working_parts.h"
#include "takeoff/working_lines.h"

namespace sheets {

namespace {

using problem::Problem;
using problem::Severity;

// In the unit of the check and the system of the job, as the working says it.
std::string in_unit(const Printed& printed, double value, units::Unit unit) {
  return takeoff::Working(takeoff::term("", value, unit)).sentence(printed.job().heading.units);
}

// `told`: of the checks before it on the same stretch, whose parts are not told again.
void add_check(const Printed& printed, const takeoff::Check& check, std::size_t number, takeoff::WorkingLines& told,
               Table& table) {
  const std::string from = of_check(number);
  const units::Amount value = check.working.amount();
  const std::string limit = in_unit(printed, check.limit, value.unit);
  table.rows.push_back(
      {{Said(check.of + "  " + printed.say(check.name) + (check.where.empty() ? "" : ", " + check.where)),
        Said(in_unit(printed, value.value, value.unit), from),
        Said(filled(printed, check.at_most ? "at most %1" : "at least %1", {limit}), from),
        Said(printed.say(check.passes() ? "holds" : "does not hold"))}});
  for (std::string& line : told.tell(check.working, check.name))
    table.rows.push_back({{Said(std::move(line))}, Row::Kind::note});
  table.rows.push_back({{Said(filled(printed, "From: %1", {check.source}))}, Row::Kind::note});
}

// The same sentence at several places stands once, with all of them.
struct Together {
  const Problem* first;
  std::vector<std::string> places;
};
std::vector<Together> together(const std::vector<Problem>& all, Severity severity) {
  std::vector<Together> found;
  for (const Problem& one : all) {
    if (one.severity != severity) continue;
    auto known = std::ranges::find_if(
        found, [&](const Together& had) { return had.first->text == one.text && had.first->mend == one.mend; });
    if (known == found.end()) known = found.insert(found.end(), {&one, {}});
    if (!one.place.element.empty() && std::ranges::find(known->places, one.place.element) == known->places.end())
      known->places.push_back(one.place.element);
  }
  return found;
}

std::string places_words(const Together& one) {
  std::string text;
  for (const std::string& place : one.places) text += (text.empty() ? "" : ", ") + place;
  return text;
}

}  // namespace

void add_checks(const Printed& printed, Sheet& sheet) {
  const std::vector<takeoff::Check>& checks = printed.results->takeoff.checks;
  if (checks.empty()) return;
  Table table{{{printed.say("Check"), Align::left, 0.46},
               {printed.say("Value"), Align::right, 0.18},
               {printed.say("Limit"), Align::right, 0.22},
               {printed.say("Result"), Align::left, 0.14}},
              {},
              true};
  takeoff::WorkingLines told(printed.job().heading.units);
  for (std::size_t number = 0; number < checks.size(); ++number) {
    const bool same =
        number > 0 && checks[number].of == checks[number - 1].of && checks[number].where == checks[number - 1].where;
    if (!same) told = takeoff::WorkingLines(printed.job().heading.units);
    add_check(printed, checks[number], number, told, table);
  }
  Passage passage;
  passage.blocks.emplace_back(Heading{printed.say("Preliminary checks"), {}});
  passage.blocks.emplace_back(Framed{
      printed.say("Preliminary"),
      {Said(
          printed.say("These go by the soils, strengths and factors that were entered, and decide nothing: local code "
                      "does, and a licensed engineer."))},
      true});
  passage.blocks.emplace_back(std::move(table));
  sheet.passages.push_back(std::move(passage));
}

void add_problems(const Printed& printed, Sheet& sheet) {
  struct Listed {
    Severity severity;
    const char* title;
  };
  constexpr std::array parts{Listed{Severity::problem, "Problems: no total is final before they are mended"},
                             Listed{Severity::flag, "Flags: somebody has to decide"},
                             Listed{Severity::notice, "Notices"}};
  const std::vector<Problem> all = printed.results->problems();
  for (const Listed& part : parts) {
    const std::vector<Together> found = together(all, part.severity);
    if (found.empty()) continue;
    Table table{{{printed.say("What"), Align::left, 0.5},
                 {printed.say("What to do"), Align::left, 0.34},
                 {printed.say("Where"), Align::left, 0.16}},
                {},
                true};
    for (const Together& one : found)
      table.rows.push_back(
          {{Said(printed.say(one.first->text)), Said(printed.say(one.first->mend)), Said(places_words(one))}});
    Passage passage;
    passage.blocks.emplace_back(
        Heading{printed.say(part.title), {std::to_string(found.size()), counted_here("the rows below")}});
    passage.blocks.emplace_back(std::move(table));
    sheet.passages.push_back(std::move(passage));
  }
}

}  // namespace sheets
