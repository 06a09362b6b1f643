// What was looked at, read and tested, for the close-out.
#include "sheets/close_out_parts.h"
#include "sheets/numbered.h"
#include "sheets/parts.h"
#include "sheets/set_out.h"
#include "sheets/source.h"

namespace sheets {

using takeoff::Stage;

Passage looked_at_passage(const Printed& printed) {
  Table table{{{printed.say("Hold point"), Align::left, 0.5},
               {printed.say("Whose business"), Align::left, 0.2},
               {printed.say("Looked at by"), Align::left, 0.17},
               {printed.say("On"), Align::left, 0.13}},
              {}};
  for (const Stage stage : takeoff::all_stages) {
    const std::vector<Hold> all = holds(printed, stage);
    if (all.empty()) continue;
    table.rows.push_back({{stage_number(stage) + " " + stage_title(printed, stage)}, Row::Kind::group});
    for (const Hold& hold : all) table.rows.push_back({{hold.look_at, hold.by, hold.who, hold.when}});
  }
  if (table.rows.empty()) return {};
  table.written = true;
  return {{Heading{printed.say("Record of hold points"), {}}, table}};
}

Passage levels_passage(const Printed& printed) {
  Table table{{{printed.say("Level at"), Align::left, 0.46},
               {printed.say("Asked for"), Align::right, 0.18},
               {printed.say("Read"), Align::left, 0.18},
               {printed.say("Difference"), Align::left, 0.18}},
              {}};
  const units::System system = printed.job().heading.units;
  for (const plan::ElementPtr& element : printed.job().elements) {
    const auto* pool = std::get_if<plan::Pool>(&element->kind);
    if (pool && pool->coping_level)
      table.rows.push_back(
          {{filled(printed, "%1: coping, highest and lowest all round", {element->id}),
            {show_height(pool->coping_level->metres().si(), system), of_element(element->id, "coping_level")},
            {},
            {}}});
  }
  const auto out = set_out(*printed.results);
  for (std::size_t i = 0; i < out.stakes.size(); ++i)
    if (const auto& stake = out.stakes[i]; stake.finish)
      table.rows.push_back({{stake.of + " " + numbered(printed, stake.what),
                             {show_height(*stake.finish, system), of_setting_out("stake", i)},
                             {},
                             {}}});
  if (table.rows.empty()) return {};
  table.written = true;
  return {{Heading{printed.say("Final levels"), {}}, table}};
}

Passage hose_test_passage(const Printed& printed) {
  const auto all = holds(printed, Stage::finish);
  if (all.empty() || printed.results->takeoff.layouts.empty()) return {};
  Passage passage{{Heading{printed.say("Hose test"), {}}}, std::nullopt, true};
  for (const Hold& hold : all) passage.blocks.emplace_back(Hold(hold));
  passage.blocks.emplace_back(
      Blanks{{printed.say("Deepest water after the wait, where"), printed.say("Highest lip, where")}});
  passage.blocks.emplace_back(Blanks{{printed.say("Outlets that ran"), printed.say("What was put right")}});
  return passage;
}

}  // namespace sheets
