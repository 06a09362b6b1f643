#include "sheets/actual_sheet.h"

#include <algorithm>
#include <cmath>

#include "units/number.h"

namespace sheets {

namespace {

using estimate::Actual;
using estimate::LineActual;
using estimate::StageActual;
using units::Money;

struct Telling {
  const Actual& actual;
  const Printed& printed;
  std::string say(const std::string& english) const { return printed.say(english); }
  std::string number(double value) const { return number_words(printed, value); }
  std::string money(Money amount) const { return money_words(printed, amount); }
  // What is more has its sign too, so that a difference is never taken for a sum.
  std::string by(Money amount) const { return (amount > Money() ? "+" : "") + money(amount); }
};

std::string stage_title(const Telling& in, const std::string& stage) {
  const auto known = takeoff::stage_of(stage);
  return known ? in.say(takeoff::title(*known)) : stage;
}

std::string stage_number(const std::string& stage) {
  const auto known = takeoff::stage_of(stage);
  return known ? std::to_string(static_cast<int>(*known) + 1) : "";
}

std::string line_name(const Telling& in, const LineActual& line) {
  const std::string name = name_of(in.printed, line.key.item);
  return name == line.key.item ? in.say(line.description) : name;
}

Row line_row(const Telling& in, std::size_t number) {
  const LineActual& line = in.actual.lines[number];
  const std::string from = "actual/" + std::to_string(number);
  const auto said = [&](double value) { return value == 0 ? Said() : Said(in.number(value), from); };
  return {{Said(line_name(in, line)), Said(in.say(estimate::word(line.state))), Said(in.number(line.estimated), from),
           said(line.delivered), line.use_entered ? Said(in.number(line.used), from) : Said(), said(line.left()),
           Said(unit_words(in.printed, line.estimated, line.unit)),
           line.priced ? Said(in.money(line.estimate), from) : Said(in.say("no price")),
           Said(in.money(line.spent), from), Said(in.by(line.difference()), from)}};
}

Row work_row(const Telling& in, const StageActual& stage) {
  const std::string from = "actual-stage/" + stage.stage;
  return {{Said(in.say("Work by the hour")),
           {},
           Said(in.number(stage.estimate_hours), from),
           {},
           Said(in.number(stage.hours), from),
           {},
           Said("h"),
           Said(in.money(stage.estimate_work), from),
           Said(in.money(stage.spent_work), from),
           Said(in.by(stage.spent_work - stage.estimate_work), from)}};
}

std::vector<Column> line_columns(const Telling& in) {
  return {{in.say("Line"), Align::left, 0.2},       {in.say("State"), Align::left, 0.09},
          {in.say("Estimate"), Align::right, 0.08}, {in.say("Delivered"), Align::right, 0.08},
          {in.say("Used"), Align::right, 0.08},     {in.say("On the site"), Align::right, 0.08},
          {in.say("Unit"), Align::left, 0.07},      {in.say("Estimate"), Align::right, 0.11},
          {in.say("Spent"), Align::right, 0.1},     {in.say("Difference"), Align::right, 0.11}};
}

void add_stage(const Telling& in, const StageActual& stage, Sheet& sheet) {
  Table table{line_columns(in), {}, true};
  for (std::size_t i = 0; i < in.actual.lines.size(); ++i)
    if (in.actual.lines[i].key.stage == stage.stage) table.rows.push_back(line_row(in, i));
  if (stage.estimate_hours > 0 || stage.hours > 0) table.rows.push_back(work_row(in, stage));
  const std::string from = "actual-stage/" + stage.stage;
  table.rows.push_back({{Said(stage_title(in, stage.stage)),
                         {},
                         {},
                         {},
                         {},
                         {},
                         {},
                         Said(in.money(stage.estimate()), from),
                         Said(in.money(stage.spent()), from),
                         Said(in.by(stage.difference()), from)},
                        Row::Kind::sum});
  Passage passage;
  passage.stage = takeoff::stage_of(stage.stage);
  passage.blocks.emplace_back(
      Heading{stage_title(in, stage.stage), {in.by(stage.difference()), from}, stage_number(stage.stage)});
  passage.blocks.emplace_back(std::move(table));
  sheet.passages.push_back(std::move(passage));
}

Row finish_row(const Telling& in, const StageActual& stage, const std::string& name, const std::string& from,
               Row::Kind kind) {
  const auto finish = [&](const std::optional<Money>& amount) {
    return amount ? Said(in.money(*amount), from) : Said(in.say("not measured"));
  };
  const Said done = stage.done ? Said(in.number(std::round(*stage.done * 1000) / 10) + " %", from) : Said();
  return {{Said(name), done, Said(in.money(stage.estimate()), from), Said(in.money(stage.spent()), from),
           Said(in.by(stage.difference()), from), finish(stage.finish_at_estimate), finish(stage.finish_at_own)},
          kind};
}

std::string measure_words(const Telling& in, const StageActual& stage, const estimate::MeasureActual& one) {
  const std::string name = one.item.empty() ? stage_title(in, stage.stage) : name_of(in.printed, one.item);
  std::string text =
      filled(in.printed, "%1: %2 of %3 %4 done on %5",
             {name, in.number(one.done), in.number(one.whole), one.unit, date_words(in.printed, one.date)});
  if (one.estimate_hours > 0)
    text +=
        "; " + filled(in.printed, "estimated %1 h for one %2", {units::show_number(one.estimate_rate(), 3), one.unit});
  if (const auto own = one.own_rate())
    text += "; " + filled(in.printed, "own so far %1 h", {units::show_number(*own, 3)});
  return text;
}

void add_finish(const Telling& in, Sheet& sheet) {
  Table table{{{in.say("Stage"), Align::left, 0.24},
               {in.say("Done"), Align::right, 0.08},
               {in.say("Estimate"), Align::right, 0.14},
               {in.say("Spent"), Align::right, 0.14},
               {in.say("Difference"), Align::right, 0.14},
               {in.say("To finish, estimate's rate"), Align::right, 0.13},
               {in.say("To finish, own rate"), Align::right, 0.13}},
              {}};
  for (const StageActual& stage : in.actual.stages) {
    table.rows.push_back(
        finish_row(in, stage, stage_title(in, stage.stage), "actual-stage/" + stage.stage, Row::Kind::plain));
    for (const estimate::MeasureActual& one : stage.measures)
      table.rows.push_back({{Said(measure_words(in, stage, one))}, Row::Kind::note});
  }
  table.rows.push_back(finish_row(in, in.actual.total, in.say("In all"), "actual-stage/all", Row::Kind::total));
  Passage passage;
  passage.blocks.emplace_back(Heading{in.say("Stage by stage, and what it will cost to finish"),
                                      {in.by(in.actual.total.difference()), "actual-stage/all"}});
  passage.blocks.emplace_back(std::move(table));
  for (const std::string& stage : in.actual.unmeasured)
    passage.blocks.emplace_back(
        Paragraph{Said(filled(in.printed, "The cost to finish is without this stage, which nobody measured: %1.",
                              {stage_title(in, stage)})),
                  Paragraph::Kind::note});
  sheet.passages.push_back(std::move(passage));
}

void add_problems(const Telling& in, Sheet& sheet) {
  if (in.actual.problems.empty()) return;
  Passage passage;
  passage.blocks.emplace_back(Heading{in.say("To be mended or decided"), {}, "", 2});
  for (const problem::Problem& one : in.actual.problems)
    passage.blocks.emplace_back(Paragraph{Said("–  " + problem::sentence(one)), Paragraph::Kind::note});
  sheet.passages.push_back(std::move(passage));
}

}  // namespace

Sheet actual_sheet(const Actual& actual, const Printed& printed) {
  const Telling in{actual, printed};
  Sheet sheet;
  sheet.word = "actual";
  sheet.title = printed.say("Estimate against actual");
  sheet.landscape = true;
  sheet.money = true;
  const plan::Heading& heading = printed.job().heading;
  for (const std::string& line : {heading.customer, heading.place})
    if (!line.empty()) sheet.about.push_back(line);
  if (heading.invented) sheet.about.push_back(in.say("An invented job: its place and its people are made up."));
  if (actual.stages.empty()) {
    sheet.passages.push_back(
        {{Paragraph{Said(in.say("Nothing was estimated and nothing was entered, so there is nothing to compare."))}}});
  } else {
    add_finish(in, sheet);
    for (const StageActual& stage : actual.stages) add_stage(in, stage, sheet);
  }
  add_problems(in, sheet);
  return sheet;
}

std::optional<std::string> working_of_actual(const Actual& actual, const Printed& printed, const std::string& source) {
  const Telling in{actual, printed};
  const std::size_t slash = source.find('/');
  if (slash == std::string::npos) return std::nullopt;
  const std::string list = source.substr(0, slash), key = source.substr(slash + 1);
  if (list == "actual") {
    const auto at = units::read_number(key);
    if (!at || *at < 0 || *at >= static_cast<double>(actual.lines.size())) return std::nullopt;
    const LineActual& line = actual.lines[static_cast<std::size_t>(*at)];
    return line.description + ": spent = delivered " + in.money(line.delivered_money) + " - returned " +
           in.money(line.returned_money) + " = " + in.money(line.spent) + "; on the site = delivered " +
           in.number(line.delivered) + " - used " + in.number(line.used) + " - gone back " +
           in.number(line.returned - line.cancelled) + " = " + in.number(line.left());
  }
  if (list != "actual-stage") return std::nullopt;
  const auto stage = std::ranges::find(actual.stages, key, &StageActual::stage);
  if (key != "all" && stage == actual.stages.end()) return std::nullopt;
  const StageActual& sum = key == "all" ? actual.total : *stage;
  return "spent = stuff " + in.money(sum.spent_stuff) + " + work " + in.money(sum.spent_work) + " = " +
         in.money(sum.spent()) + "; estimate = stuff " + in.money(sum.estimate_stuff) + " + work " +
         in.money(sum.estimate_work) + " = " + in.money(sum.estimate());
}

}  // namespace sheets
