#include "files/actual_text.h"

#include "estimate/kinds.h"
#include "files/csv.h"
#include "files/sheet_text.h"
#include "units/number.h"

namespace files {

namespace {

using estimate::Actual;
using estimate::LineActual;
using estimate::StageActual;
using units::Money;

std::string grouped(Money money, int decimals) {
  std::string text = units::write_money(money, decimals);
  const std::size_t from = text.starts_with('-') ? 1 : 0;
  const std::size_t dot = text.find('.');
  for (std::size_t at = dot == std::string::npos ? text.size() : dot; at > from + 3; at -= 3) text.insert(at - 3, ",");
  return text;
}

// What is more has its sign too, so that a difference is never taken for a sum.
std::string signed_money(Money money, int decimals) { return (money > Money() ? "+" : "") + grouped(money, decimals); }

std::string number(double value) {
  std::string text = units::show_grouped(value, 2);
  while (text.ends_with('0')) text.pop_back();
  if (text.ends_with('.')) text.pop_back();
  return text;
}

std::string stage_title(const std::string& stage) {
  const auto known = takeoff::stage_of(stage);
  return known ? takeoff::title(*known) : stage;
}

// Name 30, five columns of 13, difference 15.
std::string row(std::string_view name, const std::vector<std::string>& cells) {
  std::string text = at_left(cut(name, 28), 30);
  for (std::size_t i = 0; i < cells.size(); ++i) text += at_right(cells[i], i + 1 < cells.size() ? 13 : 15);
  return text + "\n";
}

std::string line_rows(const LineActual& line, int decimals) {
  const std::string state = "  (" + estimate::word(line.state) + ")";
  return row(line.description,
             {number(line.estimated), number(line.delivered), number(line.used), number(line.left()), line.unit, ""}) +
         row(state, {grouped(line.estimate, decimals), grouped(line.delivered_money, decimals),
                     grouped(line.used_money, decimals), grouped(line.left_money(), decimals), "",
                     signed_money(line.difference(), decimals)});
}

std::string work_row(const StageActual& stage, int decimals) {
  return row("Work by the hour", {number(stage.estimate_hours), "", number(stage.hours), "", "h", ""}) +
         row("", {grouped(stage.estimate_work, decimals), "", grouped(stage.spent_work, decimals), "", "",
                  signed_money(stage.spent_work - stage.estimate_work, decimals)});
}

std::string lines(const Actual& actual) {
  std::string text;
  for (const StageActual& stage : actual.stages) {
    text += section(stage_title(stage.stage)) + row("", {"estimate", "delivered", "used", "left", "", "difference"});
    for (const LineActual& line : actual.lines)
      if (line.key.stage == stage.stage) text += line_rows(line, actual.decimals);
    if (stage.estimate_hours > 0 || stage.hours > 0) text += work_row(stage, actual.decimals);
  }
  return text;
}

std::string measures(const StageActual& stage) {
  std::string text;
  for (const estimate::MeasureActual& one : stage.measures) {
    std::string words = (one.item.empty() ? stage_title(stage.stage) : one.description) + ": " + number(one.done) +
                        " of " + number(one.whole) + " " + one.unit + " on " + one.date;
    if (one.estimate_hours > 0)
      words += "; estimate " + units::show_number(one.estimate_rate(), 4) + " h per " + one.unit;
    if (const auto own = one.own_rate()) words += ", own so far " + units::show_number(*own, 4);
    text += wrapped(words, "  ", 4);
  }
  return text;
}

std::string finish(const Actual& actual) {
  const auto money = [&](const std::optional<Money>& amount) {
    return amount ? grouped(*amount, actual.decimals) : std::string("not measured");
  };
  const auto line = [&](const std::string& name, const StageActual& stage, const std::string& done) {
    return row(name, {done, grouped(stage.estimate(), actual.decimals), grouped(stage.spent(), actual.decimals),
                      signed_money(stage.difference(), actual.decimals), money(stage.finish_at_estimate),
                      money(stage.finish_at_own)});
  };
  std::string text = section("Stage by stage, and what it will cost to finish") +
                     row("", {"done", "estimate", "spent", "difference", "to finish,", "to finish,"}) +
                     row("", {"", "", "", "", "est. rate", "own rate"});
  for (const StageActual& stage : actual.stages)
    text +=
        line(stage_title(stage.stage), stage, stage.done ? number(*stage.done * 100) + " %" : "-") + measures(stage);
  text += line("In all", actual.total, "");
  for (const std::string& stage : actual.unmeasured)
    text += wrapped("The cost to finish is without " + stage_title(stage) + ": not measured.", "  ", 4);
  return text;
}

}  // namespace

std::string actual_text(const ActualOf& of, const Actual& actual) {
  std::string text = wrapped("What was really used: " + of.job, "", 2) +
                     wrapped(of.version, at_left("Version", 12), 12) +
                     wrapped(actual.currency, at_left("Money", 12), 12);
  if (of.invented) text += wrapped("this job, its place and its people are made up", at_left("Invented", 12), 12);
  text += lines(actual) + finish(actual);
  if (!actual.problems.empty()) text += section("To be mended");
  for (const problem::Problem& one : actual.problems) text += wrapped(problem::sentence(one), "- ", 2);
  return text;
}

std::string actual_csv(const Actual& actual) {
  const auto money = [&](Money amount) { return units::write_money(amount, actual.decimals); };
  std::string text =
      csv_row({"stage", "item", "kind", "description", "state", "unit", "estimated", "ordered", "delivered", "used",
               "returned", "left", "estimate", "delivered_money", "used_money", "left_money", "spent", "difference"});
  for (const LineActual& line : actual.lines)
    text += csv_row({csv_text(line.key.stage), csv_text(line.key.item), estimate::word(line.key.kind),
                     csv_text(line.description), estimate::word(line.state), csv_text(line.unit),
                     units::write_number(line.estimated), units::write_number(line.ordered),
                     units::write_number(line.delivered), units::write_number(line.used),
                     units::write_number(line.returned), units::write_number(line.left()), money(line.estimate),
                     money(line.delivered_money), money(line.used_money), money(line.left_money()), money(line.spent),
                     money(line.difference())});
  for (const StageActual& stage : actual.stages) {
    if (!(stage.estimate_hours > 0) && !(stage.hours > 0)) continue;
    text += csv_row({csv_text(stage.stage), "", estimate::word(plan::CostKind::labour), "work by the hour", "", "h",
                     units::write_number(stage.estimate_hours), "", "", units::write_number(stage.hours), "", "",
                     money(stage.estimate_work), "", "", "", money(stage.spent_work),
                     money(stage.spent_work - stage.estimate_work)});
  }
  return text;
}

std::string ledger_csv(const std::vector<estimate::Entry>& entries, int decimals) {
  std::string text = csv_row({"number", "corrects", "what", "stage", "item", "kind", "date", "quantity", "whole",
                              "unit", "price", "who", "ticket", "note", "entered"});
  for (const estimate::Entry& one : entries)
    text += csv_row({std::to_string(one.number), one.corrects == 0 ? "" : std::to_string(one.corrects),
                     estimate::word(one.act), csv_text(one.line.stage), csv_text(one.line.item),
                     estimate::word(one.line.kind), csv_text(one.date), units::write_number(one.quantity),
                     units::write_number(one.whole), csv_text(one.unit),
                     one.price ? units::write_money(*one.price, decimals) : "", csv_text(one.who), csv_text(one.ticket),
                     csv_text(one.note), csv_text(one.entered)});
  return text;
}

}  // namespace files
