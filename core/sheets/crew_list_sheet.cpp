// The crew list: what to bring and to do, stage by stage, in the order of building. No price anywhere.
#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "sheets/all_sheets.h"
#include "sheets/crew_parts.h"
#include "sheets/source.h"

namespace sheets {

using estimate::OrderLine;
using takeoff::Stage;

namespace {

// Work that is a thing to do for itself, by the kind of its rate, in the order in which it is done; all other work
// comes with what is laid.
struct Doing {
  std::string_view kind;
  bool ground_only;  // only in the first stages: elsewhere it belongs to what is laid
  bool after;        // the goods of the stage are in
};
constexpr std::array doings{Doing{"remove", false, false}, Doing{"strip", false, false}, Doing{"dig", false, false},
                            Doing{"trench", false, false}, Doing{"grade", true, false},  Doing{"compact", true, false},
                            Doing{"fill", false, true}};

bool is_doing(const Printed& printed, const OrderLine& line, const Doing& doing) {
  const catalogue::Rate* rate = line.work ? printed.job().catalogue->rate(line.item) : nullptr;
  return rate && doing.kind == rate->line_kind && (!doing.ground_only || line.stage <= Stage::dig);
}

// How much there is to do: the tasks of this stage and rate together.
Counted how_much(const Printed& printed, const OrderLine& line) {
  double sum = 0;
  std::string unit = "h";
  for (const takeoff::Task& task : printed.results->takeoff.tasks) {
    if (task.stage != line.stage || task.rate != line.item) continue;
    sum += task.working.amount().value;
    unit = units::name(task.working.amount().unit);
  }
  return sum > 0 ? measured(printed, sum, unit) : parted(hours_words(printed, line.order_quantity));
}

Bring to_do(const Printed& printed, const OrderLine& line) {
  const Counted much = how_much(printed, line);
  const std::string from = of_line(printed, line);
  return {name_of(printed, line.item),
          {hours_words(printed, line.order_quantity), from},
          {much.number, from},
          much.unit,
          tags(printed, line.of)};
}

bool is_haul(const Printed& printed, const OrderLine& line) {
  const catalogue::Item* item = printed.job().catalogue->item(line.item);
  return !line.work && item && item->kind == "truck";
}

// Spoil of many places is hauled from the whole site: a row of all their tags would tell nobody anything.
Bring to_haul(const Printed& printed, const OrderLine& line) {
  constexpr std::size_t many = 6;
  const Counted loads = bought(printed, line);
  std::vector<std::string> from = tags(printed, line.of);
  if (from.size() > many) from.clear();
  return {printed.say("Haul away"),
          {name_of(printed, line.item)},
          {loads.number, of_line(printed, line)},
          loads.unit,
          std::move(from)};
}

Bring to_bring(const Printed& printed, const OrderLine& line, const std::vector<estimate::Visit>& visits) {
  const Counted much = bought(printed, line);
  const std::string from = of_line(printed, line);
  return {name_of(printed, line.item),
          {how_it_comes(printed, line, visits), from},
          {much.number, from},
          much.unit,
          tags(printed, line.of)};
}

// A hand-held saw that runs longer than a person may hold it without a mask.
std::optional<Caution> long_sawing(const Printed& printed, Stage stage) {
  constexpr double in_a_shift = 4;  // hours: 29 CFR 1926.1153, Table 1, hand-held power saws outdoors
  double hours = 0;
  for (const OrderLine& line : printed.results->estimate.lines) {
    const catalogue::Item* item = printed.job().catalogue->item(line.item);
    if (line.stage == stage && item && item->kind == "saw" && item->id.find("hand") != std::string::npos)
      hours += line.quantity;
  }
  if (hours <= in_a_shift) return std::nullopt;
  return Caution{filled(printed,
                        "The hand-held saw runs %1 here: over 4 h of it in a shift needs a respirator, said on the day "
                        "it happens (29 CFR 1926.1153, Table 1; local rules decide).",
                        {hours_words(printed, hours)})};
}

void add_doings(const Printed& printed, Stage stage, bool after, std::vector<Block>& blocks) {
  for (const Doing& doing : doings)
    for (const OrderLine& line : printed.results->estimate.lines)
      if (line.stage == stage && doing.after == after && is_doing(printed, line, doing))
        blocks.emplace_back(to_do(printed, line));
}

void add_lines(const Printed& printed, Stage stage, const std::vector<estimate::Visit>& visits,
               std::vector<Block>& blocks) {
  const auto& lines = printed.results->estimate.lines;
  add_doings(printed, stage, false, blocks);
  for (const OrderLine& line : lines)
    if (line.stage == stage && is_haul(printed, line)) blocks.emplace_back(to_haul(printed, line));
  for (const OrderLine& line : lines)
    if (line.stage == stage && is_brought(printed, line)) blocks.emplace_back(to_bring(printed, line, visits));
  add_doings(printed, stage, true, blocks);
}

// Whose business a point is stands there only where it is not the crew lead's, who has the list in hand.
std::vector<Hold> holds_of_crew(const Printed& printed, Stage stage) {
  const auto& points = notes_of(printed, stage).hold_points;
  std::vector<Hold> made = holds(printed, stage);
  for (std::size_t i = 0; i < made.size(); ++i)
    if (points[i].who == "crew lead") made[i].by.clear();
  return made;
}

Passage stage_passage(const Printed& printed, Stage stage, const std::vector<estimate::Visit>& visits) {
  Passage passage{{}, stage};
  std::vector<Block>& blocks = passage.blocks;
  add_lines(printed, stage, visits, blocks);
  for (Hold& hold : holds_of_crew(printed, stage)) blocks.emplace_back(std::move(hold));
  for (Caution& caution : cautions(printed, stage)) blocks.emplace_back(std::move(caution));
  if (const auto saw = long_sawing(printed, stage)) blocks.emplace_back(*saw);
  if (blocks.empty() && !stage_days(printed).contains(stage)) return passage;
  if (const auto waits = waits_for(printed, stage)) blocks.insert(blocks.begin(), *waits);
  blocks.insert(blocks.begin(), stage_heading(printed, stage));
  return passage;
}

Passage hours_passage(const Printed& printed) {
  Table table{{{printed.say("Stage"), Align::left, 0.46},
               {printed.say("Hours"), Align::right, 0.16},
               {printed.say("Days of the crew"), Align::right, 0.2},
               {printed.say("When"), Align::right, 0.18}},
              {}};
  double hours = 0, days = 0;
  for (const auto& [stage, one] : stage_days(printed)) {
    const std::string from = of_stage(stage, "hours");
    table.rows.push_back({{stage_number(stage) + " " + stage_title(printed, stage),
                           {hours_words(printed, one.hours), from},
                           {number_words(printed, std::round(one.days * 10) / 10), from},
                           {days_words(printed, one), from}}});
    hours += one.hours;
    days += one.days;
  }
  const std::string from = counted_here("the hours of the stages added up");
  table.rows.push_back({{printed.say("All stages"),
                         {hours_words(printed, hours), from},
                         {number_words(printed, std::round(days * 10) / 10), from},
                         {}},
                        Row::Kind::total});
  const plan::Choices& choices = printed.job().choices;
  const std::string crew = filled(printed, "A crew of %1, %2 h a day; waiting for weather and trades not counted.",
                                  {number_words(printed, choices.crew), number_words(printed, choices.day_hours)});
  return {
      {Heading{printed.say("Hours and days"), {}}, Paragraph{{crew, of_job("crew")}, Paragraph::Kind::note}, table}};
}

bool is_machine(const Printed& printed, const OrderLine& line) {
  const catalogue::Item* item = printed.job().catalogue->item(line.item);
  return !line.work && item && (item->kind == "machine" || item->kind == "saw" || item->kind == "blade");
}

// Machine by machine in the order in which they are first wanted, so that one is not sent back and hired again.
Passage machines_passage(const Printed& printed) {
  Table table{{{printed.say("Machine or tool"), Align::left, 0.4},
               {printed.say("Stage"), Align::left, 0.32},
               {printed.say("On site"), Align::right, 0.14},
               {printed.say("It runs"), Align::right, 0.14}},
              {}};
  std::vector<plan::Id> order;
  const auto& lines = printed.results->estimate.lines;
  for (const OrderLine& line : lines)
    if (is_machine(printed, line) && std::ranges::find(order, line.item) == order.end()) order.push_back(line.item);
  for (const plan::Id& machine : order) {
    std::string name = name_of(printed, machine);
    for (const OrderLine& line : lines) {
      if (line.item != machine || !is_machine(printed, line)) continue;
      const std::string from = of_line(printed, line);
      const bool runs = line.unit == "h";
      table.rows.push_back({{std::exchange(name, ""),
                             stage_number(line.stage) + " " + stage_title(printed, line.stage),
                             {bought(printed, line).words(), from},
                             runs ? Said(hours_words(printed, line.quantity), from) : Said()}});
    }
  }
  if (table.rows.empty()) return {};
  return {{Heading{printed.say("Machines and tools"), {}}, table}};
}

}  // namespace

Sheet crew_list(const Printed& printed) {
  Sheet sheet = sheet_named(printed, "crew-list", "Crew list");
  sheet.about = {printed.say("What to bring, in the order of building."),
                 printed.say("Tick it when it is on site. No prices here.")};
  sheet.key_plan = true;
  if (nothing_to_do(printed)) {
    sheet.passages.push_back(
        {{Paragraph{{printed.say("Nothing is built in this job yet: there is nothing to bring.")}}}});
    return sheet;
  }
  const auto visits = visits_of(printed);
  for (const Stage stage : takeoff::all_stages)
    if (Passage passage = stage_passage(printed, stage, visits); !passage.blocks.empty())
      sheet.passages.push_back(std::move(passage));
  if (!stage_days(printed).empty()) sheet.passages.push_back(hours_passage(printed));
  if (Passage machines = machines_passage(printed); !machines.blocks.empty())
    sheet.passages.push_back(std::move(machines));
  return sheet;
}

}  // namespace sheets
