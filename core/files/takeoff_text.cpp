#include <algorithm>
#include <cmath>
#include <map>

#include "files/files.h"
#include "files/level_book_text.h"
#include "files/said_together.h"
#include "files/sheet_text.h"
#include "files/takeoff_measures.h"
#include "files/walls_text.h"
#include "takeoff/working_lines.h"
#include "units/number.h"

namespace files {

namespace {

using estimate::OrderLine;
using problem::Severity;

std::string rule(char mark) { return std::string(sheet_width, mark) + "\n"; }

// What every part of the sheet reads from.
struct Sheet {
  const results::Results& results;
  const plan::Job& job;
  units::System system;

  std::string money(units::Money amount) const {
    std::string text = units::write_money(amount, job.heading.decimals);
    const std::size_t from = text.starts_with('-') ? 1 : 0;
    const std::size_t dot = text.find('.');
    for (std::size_t at = dot == std::string::npos ? text.size() : dot; at > from + 3; at -= 3)
      text.insert(at - 3, ",");
    return text;
  }
  // Of one: four decimals where it is no whole coin, so that price x quantity is the amount.
  std::string price(const OrderLine& line) const {
    if (!line.unit_price || !has_part_coins(line)) return money(line.unit_price, "-");
    return units::show_grouped(line.exact_coins / std::pow(10.0, job.heading.decimals), 4);
  }
  std::string money(const std::optional<units::Money>& amount, std::string_view otherwise) const {
    return amount ? money(*amount) : std::string(otherwise);
  }
};

std::string counted(std::size_t number, const std::string& word) {
  return std::to_string(number) + " " + word + (number == 1 ? "" : "s");
}

std::size_t count(const std::vector<problem::Problem>& all, Severity severity) {
  return static_cast<std::size_t>(std::ranges::count(all, severity, &problem::Problem::severity));
}

std::string counts_of(const std::vector<problem::Problem>& all) {
  return counted(count(all, Severity::problem), "problem") + ", " + counted(count(all, Severity::flag), "flag") + ", " +
         counted(count(all, Severity::notice), "notice");
}

std::string joined(const std::vector<plan::ElementId>& ids) {
  std::string text;
  for (const plan::ElementId& id : ids) text += (text.empty() ? "" : ", ") + id;
  return text;
}

std::string head(const Sheet& sheet) {
  const plan::Heading& heading = sheet.job.heading;
  std::string text = rule('=') + wrapped("Takeoff and order list: " + heading.name, "", 2);
  const auto row = [&](const char* name, const std::string& value) {
    if (!value.empty()) text += wrapped(value, at_left(name, 12), 12);
  };
  row("Customer", heading.customer);
  row("Place", heading.place);
  row("Notes", heading.notes);
  row("Units", sheet.system == units::System::us ? "feet and inches; tons of 2000 lb" : "metric");
  row("Money", heading.currency);
  if (heading.invented) row("Invented", "this job, its place and its people are made up");
  row("Prices", sheet.job.catalogue->note);
  return text + rule('=');
}

std::string standing(const Sheet& sheet) {
  const std::string total = sheet.money(sheet.results.estimate.total.amount()) + " " + sheet.job.heading.currency;
  return "\n" + wrapped(sheet.results.final() ? "In all " + total : "NOT FINAL: in all " + total + " so far", "", 2) +
         wrapped(counts_of(sheet.results.problems()) + "; they are listed at the end", "", 2);
}

// The sheet shows what an element is measured as; what is measured item by item (a name with a colon) or only to make a
// line stands in the lines, and in the other forms of the takeoff. What there is none of is left out too.
bool on_the_sheet(std::string_view name) {
  static constexpr std::string_view in_lines[] = {
      "bought_",         "waste_share",  "units_by_area", "joint_fill", "joint_share", "sealant",    "rod",
      "gap_fill",        "fabric_strip", "isolation",     "weep_",      "footing",     "collar_bar", "coping_length",
      "coping_units_by", "notched_",     "water_area",    "water_edge", "face_length"};
  return name.find(':') == std::string_view::npos &&
         std::ranges::none_of(in_lines, [name](std::string_view start) { return name.starts_with(start); });
}

std::string measures_of(const Sheet& sheet, const plan::ElementId& id) {
  std::string text;
  for (const takeoff::Measures& own : sheet.results.takeoff.measures) {
    if (own.element != id) continue;
    for (const auto& [name, value] : own.values)
      if (value != 0 && on_the_sheet(name))
        text += (text.empty() ? "" : "; ") + measure_in_words(name, value, sheet.system);
  }
  return text;
}

std::string elements(const Sheet& sheet) {
  std::string text = section("What is built, measured");
  std::map<std::string, std::size_t> only_kept;  // what has no measure: levels, features, notes
  for (const plan::ElementPtr& element : sheet.job.elements) {
    const std::string measures = measures_of(sheet, element->id);
    if (measures.empty()) {
      ++only_kept[plan::kind_name(element->kind)];
      continue;
    }
    std::string title = element->id + "  " + plan::kind_name(element->kind);
    if (!element->name.empty()) title += ", " + element->name;
    text += wrapped(title, "", 2) + wrapped(measures, "    ", 4);
    if (const std::string start = start_of(*element); !start.empty()) text += wrapped(start, "    ", 4);
  }
  std::string kept;
  for (const auto& [kind, number] : only_kept) kept += (kept.empty() ? "" : ", ") + counted(number, kind);
  if (!kept.empty()) text += wrapped("Kept without a measure: " + kept, "", 2);
  return text;
}

// Columns: quantity 10, unit 9, item 42, net 20, price 11, amount 13, and a space between: 110 with the first indent.
std::string table_row(std::string_view quantity, std::string_view unit, std::string_view item, std::string_view net,
                      std::string_view price, std::string_view amount) {
  return at_right(quantity, 10) + " " + at_left(unit, 9) + " " + at_left(cut(item, 42), 42) + " " + at_right(net, 20) +
         " " + at_right(price, 11) + " " + at_right(amount, 13) + "\n";
}

std::string short_number(double value) {
  std::string text = units::show_grouped(value, 2);
  while (text.ends_with('0')) text.pop_back();
  if (text.ends_with('.')) text.pop_back();
  return text;
}

// In one sentence while an eye can hold it, and longer ones part by part.
std::string working_in_words(const Sheet& sheet, const std::string& of, const takeoff::Working& working,
                             std::size_t indent) {
  constexpr std::size_t longest = 450;  // five lines of the sheet
  const std::string before(indent, ' ');
  const std::string sentence = of + working.sentence(sheet.system);
  if (columns_of(sentence) <= longest) return wrapped(sentence, before, indent);
  std::string text = of.empty() ? "" : wrapped(of, before, indent);
  for (const std::string& line : takeoff::WorkingLines(sheet.system).tell(working, "in all"))
    text += wrapped(line, before + (of.empty() ? "" : "  "), indent + 4);
  return text;
}

std::string order_line(const Sheet& sheet, const OrderLine& line) {
  const std::string net = line.work ? "" : quantity_in_words(line.quantity, line.unit, sheet.system);
  const std::string amount = line.by_others ? "by others" : sheet.money(line.amount, "no price");
  // Where tonnes are at home, a ton of 2000 lb says so.
  const std::string unit =
      line.order_unit == "ton" && sheet.system == units::System::metric ? "short ton" : line.order_unit;
  std::string text =
      table_row(short_number(line.order_quantity), unit, line.description, net, sheet.price(line), amount);
  constexpr std::size_t indent = 20;
  const std::string before(indent, ' ');
  if (columns_of(line.description) > 42) text += wrapped(line.description, before, indent);
  if (!line.sentence.empty()) text += wrapped(line.sentence, before, indent);
  const std::string of = line.of.empty() ? "" : "for " + joined(line.of) + ": ";
  return text + working_in_words(sheet, of, line.working, indent);
}

std::string stage_orders(const Sheet& sheet, takeoff::Stage stage, const estimate::StageTotal& total) {
  std::string text = section(takeoff::title(stage));
  text += table_row("quantity", "unit", "item", "net", "price", "amount");
  bool work = false;
  for (const OrderLine& line : sheet.results.estimate.lines) {
    if (line.stage != stage) continue;
    if (line.work && !work) text += "\n" + table_row("hours", "", "work", "", "an hour", "amount");
    work = line.work;
    text += order_line(sheet, line);
  }
  std::string sum = "material " + sheet.money(total.material);
  if (total.hours > 0) sum += ", work " + sheet.money(total.work) + " for " + short_number(total.hours) + " h";
  return text + "\n" + at_left("  " + takeoff::title(stage) + ": " + sum, sheet_width - 16) + " " +
         at_right(sheet.money(total.amount()), 15) + "\n";
}

std::string orders(const Sheet& sheet) {
  std::string text;
  for (const auto& [stage, total] : sheet.results.estimate.stages) text += stage_orders(sheet, stage, total);
  return text.empty() ? section("Order") + "Nothing is ordered yet.\n" : text;
}

std::string looked_at(const Sheet& sheet, const catalogue::HoldPoint& point) {
  for (const plan::LookedAt& seen : sheet.job.looked_at)
    if (seen.stage == point.stage && seen.look_at == point.look_at) return "seen by " + seen.who + ", " + seen.when;
  return "";
}

std::string hold_point(const Sheet& sheet, const catalogue::HoldPoint& point) {
  const std::string seen = looked_at(sheet, point);
  std::string said = point.look_at;
  if (!point.limit.empty()) said += ": " + point.limit;
  if (!point.before.empty()) said += "; before " + point.before;
  if (!point.who.empty()) said += "; by " + point.who;
  if (!point.source.empty()) said += " (" + point.source + ")";
  if (!seen.empty()) said += "; " + seen;
  return wrapped(said, seen.empty() ? "  [ ] " : "  [x] ", 6);
}

std::string watch(const Sheet& sheet) {
  std::string text = section("To be looked at before it is covered, and to beware of");
  text += wrapped(
      "Checks here are preliminary: local code decides, and where it asks for one a licensed engineer or "
      "electrician.",
      "", 2);
  for (const takeoff::StageNotes& notes : sheet.results.takeoff.stages) {
    if (notes.hold_points.empty() && notes.cautions.empty()) continue;
    text += "\n" + takeoff::title(notes.stage) + "\n";
    for (const catalogue::HoldPoint& point : notes.hold_points) text += hold_point(sheet, point);
    for (const catalogue::Caution& caution : notes.cautions) {
      std::string said = caution.text;
      if (!caution.who.empty()) said += " Who: " + caution.who + ".";
      if (!caution.source.empty()) said += " (" + caution.source + ")";
      text += wrapped(said, "   !  ", 6);
    }
  }
  return text;
}

std::string problems(const Sheet& sheet) {
  std::string text = section(counts_of(sheet.results.problems()));
  for (const problem::Problem& said : said_together(sheet.results.problems()))
    text += wrapped(problem::sentence(said), at_left(problem::word(said.severity), 9), 9);
  return text;
}

std::string totals(const Sheet& sheet) {
  const estimate::Estimate& made = sheet.results.estimate;
  const auto row = [](std::string_view name, std::string_view material, std::string_view work, std::string_view hours,
                      std::string_view amount) {
    return at_left(name, 40) + at_right(material, 18) + at_right(work, 18) + at_right(hours, 14) +
           at_right(amount, 20) + "\n";
  };
  const auto total_row = [&](std::string_view name, const estimate::StageTotal& total) {
    return row(name, sheet.money(total.material), sheet.money(total.work), short_number(total.hours),
               sheet.money(total.amount()));
  };
  std::string text = section("Totals, " + sheet.job.heading.currency);
  text += row("stage", "bought or hired", "work", "hours", "amount");
  for (const auto& [stage, total] : made.stages) text += total_row(takeoff::title(stage), total);
  text += total_row(sheet.results.final() ? "In all" : "In all, not final", made.total);
  if (!sheet.results.final()) {
    const auto unpriced = static_cast<std::size_t>(
        std::ranges::count_if(made.lines, [](const OrderLine& line) { return !line.amount.has_value(); }));
    text +=
        "\n" + wrapped("Not final: " + counted(unpriced, "line") + " without a price, " +
                           counted(count(sheet.results.problems(), Severity::problem), "problem") + " to be mended.",
                       "", 2);
  }
  text += "\nChecked by ______________________________    Date ____________________\n";
  return text;
}

}  // namespace

std::string takeoff_text(const results::Results& results) {
  const Sheet sheet{results, *results.job, results.job->heading.units};
  return head(sheet) + standing(sheet) + elements(sheet) + level_books_text(sheet.job) + orders(sheet) +
         cuts_text(results) + checks_text(results) + watch(sheet) + problems(sheet) + totals(sheet);
}

}  // namespace files
