// The start sheet: where the first unit lies, which way the rows run, what the tape must read, the levels, and which
// pallets are opened first.
#include "sheets/all_sheets.h"
#include "sheets/numbered.h"
#include "sheets/parts.h"
#include "sheets/set_out.h"
#include "sheets/source.h"
#include "sheets/start_parts.h"
#include "takeoff/setting_out/setting_out.h"

namespace sheets {

namespace {

std::vector<plan::ElementId> laid_areas(const Printed& printed) {
  std::vector<plan::ElementId> ids;
  for (const auto& [id, layout] : printed.results->takeoff.layouts)
    if (layout && !layout->lattice.kinds.empty()) ids.push_back(id);
  return tags(printed, ids);
}

Passage plan_passage(const Printed& printed, const std::vector<plan::ElementId>& areas) {
  Drawing drawing;
  drawing.figure = plan_with(printed, {[](const plan::Element& element) {
                                         return std::holds_alternative<plan::PavedArea>(element.kind) ||
                                                std::holds_alternative<plan::Building>(element.kind) ||
                                                std::holds_alternative<plan::Pool>(element.kind);
                                       },
                                       {Sign::start_point}});
  drawing.title = printed.say("Start points and rows");
  drawing.height_mm = 100;
  drawing.north = 0;
  drawing.plan = true;
  for (const plan::ElementId& id : areas) {
    const auto& paved = std::get<plan::PavedArea>(printed.job().find(id)->kind);
    drawing.notes.push_back({metres(paved.laying->start), {filled(printed, "start of %1", {id})}});
  }
  return {{drawing}, std::nullopt, true};
}

// The corners that must be square, measured corner to corner.
Passage diagonals_passage(const Printed& printed, const takeoff::setting_out::SettingOut& out) {
  Table table{{{printed.say("Diagonal of"), Align::left, 0.3},
               {printed.say("From corner to corner"), Align::left, 0.4},
               {printed.say("Length"), Align::right, 0.3}},
              {}};
  for (std::size_t i = 0; i < out.diagonals.size(); ++i) {
    const auto& diagonal = out.diagonals[i];
    table.rows.push_back({{diagonal.of,
                           numbered(printed, diagonal.what),
                           {length_words(printed, diagonal.length), of_setting_out("diagonal", i)}}});
  }
  if (table.rows.empty()) return {};
  return {{Heading{printed.say("Square?"), {}},
           Paragraph{{printed.say("Both diagonals of a rectangle read the same.")}, Paragraph::Kind::note}, table}};
}

Passage area_passage(const Printed& printed, const plan::ElementId& id, const takeoff::setting_out::SettingOut& out,
                     const takeoff::levels::Terrain& terrain) {
  const plan::Element& element = *printed.job().find(id);
  const auto& paved = std::get<plan::PavedArea>(element.kind);
  Passage passage{{Heading{id + " " + element.name,
                           {name_of(printed, paved.laying->pattern), of_item(paved.laying->pattern, "name")}}},
                  takeoff::Stage::paving};
  const auto add = [&](const std::vector<Block>& blocks) {
    for (const Block& block : blocks) {
      passage.blocks.push_back(block);
      if (std::holds_alternative<Table>(block)) passage.blocks.emplace_back(Gap{2});
    }
  };
  add(start_point(printed, id, out));
  add(running_blocks(printed, running_measures(printed, id)));
  if (const auto levels = level_table(printed, id, out, terrain)) add({*levels});
  if (const auto pallets = first_pallets(printed, id)) add({*pallets});
  return passage;
}

}  // namespace

Sheet start_sheet(const Printed& printed) {
  Sheet sheet = sheet_named(printed, "start-sheet", "Start sheet");
  sheet.about = {printed.say("Where the first unit lies and what the tape must read.")};
  const std::vector<plan::ElementId> areas = laid_areas(printed);
  if (areas.empty()) {
    sheet.passages.push_back(
        {{Paragraph{{printed.say("No area of this job is laid with units yet: there is nothing to start.")}}}});
    return sheet;
  }
  const auto out = set_out(*printed.results);
  const auto terrain = takeoff::levels::terrain(printed.job(), printed.results->site);
  sheet.passages.push_back(plan_passage(printed, areas));
  if (const plan::Element* line = printed.job().find(out.base_line))
    sheet.passages.push_back(
        {{Paragraph{{filled(printed, "Base line %1: %2, from its start as drawn.", {line->id, line->name})}}}});
  for (const plan::ElementId& id : areas) sheet.passages.push_back(area_passage(printed, id, out, terrain));
  if (Passage diagonals = diagonals_passage(printed, out); !diagonals.blocks.empty())
    sheet.passages.push_back(std::move(diagonals));
  return sheet;
}

}  // namespace sheets
