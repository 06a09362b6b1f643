// The empty field sheet: what is measured, counted and changed on site comes back to the office on it.
#include <algorithm>
#include <cmath>

#include "sheets/all_sheets.h"
#include "sheets/crew_parts.h"
#include "sheets/numbered.h"
#include "sheets/parts.h"
#include "sheets/set_out.h"
#include "sheets/source.h"

namespace sheets {

namespace {

constexpr int point_rows = 14;
constexpr int offset_rows = 8;
constexpr int level_rows = 14;
constexpr int spare_rows = 4;

void add_empty(Table& table, int rows) {
  table.written = true;
  for (int i = 0; i < rows; ++i) table.rows.push_back({std::vector<Said>(table.columns.size())});
}

const plan::Element* base_line(const Printed& printed) {
  for (const plan::ElementPtr& element : printed.job().elements)
    if (std::holds_alternative<plan::BaseLine>(element->kind)) return element.get();
  return nullptr;
}

Passage points_passage(const Printed& printed) {
  Table table{{{printed.say("Point"), Align::left, 0.16},
               {printed.say("Tied from"), Align::left, 0.14},
               {printed.say("Tape"), Align::left, 0.14},
               {printed.say("Tied from"), Align::left, 0.14},
               {printed.say("Tape"), Align::left, 0.14},
               {printed.say("Left or right"), Align::left, 0.12},
               {printed.say("Third tape, check"), Align::left, 0.16}},
              {}};
  add_empty(table, point_rows);
  Passage passage{{Heading{printed.say("Points by two tapes"), {}}}};
  const plan::Element* line = base_line(printed);
  passage.blocks.push_back(Paragraph{
      {line ? filled(printed, "Tie from the two ends of base line %1 (%2), or name other fixed points.",
                     {line->id, line->name})
            : printed.say("Tie from two fixed points that stay: corners of the house, stakes. Name them in the "
                          "sketch.")},
      Paragraph::Kind::note});
  passage.blocks.push_back(std::move(table));
  return passage;
}

Passage offsets_passage(const Printed& printed) {
  Table table{{{printed.say("Point"), Align::left, 0.2},
               {printed.say("Line from"), Align::left, 0.18},
               {printed.say("Line to"), Align::left, 0.18},
               {printed.say("Along the line"), Align::left, 0.16},
               {printed.say("Out from it"), Align::left, 0.16},
               {printed.say("Left or right"), Align::left, 0.12}},
              {}};
  add_empty(table, offset_rows);
  return {{Heading{printed.say("Offsets and running measures"), {}},
           Paragraph{{printed.say("A running measure along the line is an offset of nothing.")}, Paragraph::Kind::note},
           table}};
}

Passage levels_passage(const Printed& printed) {
  Table table{{{printed.say("Point"), Align::left, 0.26},
               {printed.say("Back"), Align::left, 0.13},
               {printed.say("Between"), Align::left, 0.13},
               {printed.say("Fore"), Align::left, 0.13},
               {printed.say("Height"), Align::right, 0.13},
               {printed.say("Note"), Align::left, 0.22}},
              {}};
  for (const plan::ElementPtr& element : printed.job().elements) {
    const auto* level = std::get_if<plan::Level>(&element->kind);
    if (!level || level->what != "bench-mark") continue;
    Said height;
    if (level->height)
      height = {show_height(level->height->metres().si(), printed.job().heading.units),
                of_element(element->id, "height")};
    table.rows.push_back({{element->id + " " + element->name, {}, {}, {}, height, {}}});
  }
  add_empty(table, level_rows);
  return {{Heading{printed.say("Levels read"), {}},
           Paragraph{{printed.say("Begin and end on the bench mark: what it does not close by is said.")},
                     Paragraph::Kind::note},
           table}};
}

// What came, was short or broken: goods by stage with what was ordered.
Passage counted_passage(const Printed& printed) {
  Table table{{{printed.say("What came"), Align::left, 0.4},
               {printed.say("Ordered"), Align::right, 0.18},
               {printed.say("Counted"), Align::left, 0.1},
               {printed.say("Short"), Align::left, 0.1},
               {printed.say("Broken"), Align::left, 0.1},
               {printed.say("Lot, ticket"), Align::left, 0.12}},
              {}};
  std::optional<takeoff::Stage> stage;
  for (const estimate::OrderLine& line : printed.results->estimate.lines) {
    if (line.kind != plan::CostKind::material) continue;
    if (stage != line.stage)
      table.rows.push_back({{stage_number(line.stage) + " " + stage_title(printed, line.stage)}, Row::Kind::group});
    stage = line.stage;
    table.rows.push_back(
        {{name_of(printed, line.item), {bought(printed, line).words(), of_line(printed, line)}, {}, {}, {}, {}}});
  }
  add_empty(table, spare_rows);
  return {{NewPage{}, Heading{printed.say("Counted, short, broken"), {}}, table}};
}

// Where stakes stand, the level asked for is there and the one that came out is written beside it.
Passage changed_passage(const Printed& printed) {
  Table table{{{printed.say("Point"), Align::left, 0.34},
               {printed.say("Asked for"), Align::right, 0.16},
               {printed.say("Made"), Align::left, 0.14},
               {printed.say("Why, who said so"), Align::left, 0.36}},
              {}};
  const auto all = set_out(*printed.results);
  for (std::size_t i = 0; i < all.stakes.size(); ++i) {
    const auto& stake = all.stakes[i];
    if (!stake.finish) continue;
    table.rows.push_back({{stake.of + " " + numbered(printed, stake.what),
                           {show_height(*stake.finish, printed.job().heading.units), of_setting_out("stake", i)},
                           {},
                           {}}});
  }
  add_empty(table, spare_rows);
  return {{Heading{printed.say("Changed levels and measures"), {}}, table}};
}

Passage hours_passage(const Printed& printed) {
  Table table{{{printed.say("Stage"), Align::left, 0.34},
               {printed.say("Hours planned"), Align::right, 0.16},
               {printed.say("Hours worked"), Align::left, 0.16},
               {printed.say("What held it up"), Align::left, 0.34}},
              {}};
  for (const auto& [stage, days] : stage_days(printed))
    table.rows.push_back({{stage_number(stage) + " " + stage_title(printed, stage),
                           {hours_words(printed, days.hours), of_stage(stage, "hours")},
                           {},
                           {}}});
  if (table.rows.empty()) return {};
  table.written = true;
  return {{Heading{printed.say("Hours"), {}}, table}};
}

}  // namespace

Sheet field(const Printed& printed) {
  Sheet sheet = sheet_named(printed, "field", "Field sheet");
  sheet.about = {printed.say("Write on it what was measured, counted and changed, and bring it back.")};
  sheet.passages.push_back({{Blanks{{printed.say("Day"), printed.say("Weather"), printed.say("Written by")}}}});
  for (Passage passage : {points_passage(printed), offsets_passage(printed), levels_passage(printed)})
    sheet.passages.push_back(std::move(passage));
  sheet.passages.push_back(
      {{NewPage{}, Heading{printed.say("Sketch"), {}},
        Paragraph{{printed.say("Mark north, the house and what each square is.")}, Paragraph::Kind::note}, Squares{}}});
  if (nothing_to_do(printed)) return sheet;
  for (Passage passage : {counted_passage(printed), changed_passage(printed), hours_passage(printed)})
    if (!passage.blocks.empty()) sheet.passages.push_back(std::move(passage));
  return sheet;
}

}  // namespace sheets
