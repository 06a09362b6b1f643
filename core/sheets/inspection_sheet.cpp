// Inspection record: every hold point with its limit, by whom, before what and on whose word, to be written on.
#include "sheets/all_sheets.h"
#include "sheets/crew_parts.h"
#include "sheets/source.h"

namespace sheets {

using takeoff::Stage;

namespace {

Passage hold_passage(const Printed& printed, Stage stage, const catalogue::HoldPoint& point, Hold hold) {
  Passage passage{{}, stage, true};
  const std::string source = point.source.empty() ? "" : filled(printed, "Source: %1", {printed.say(point.source)});
  passage.blocks.push_back(std::move(hold));
  if (!source.empty()) passage.blocks.push_back(Paragraph{{source}, Paragraph::Kind::note});
  passage.blocks.push_back(Blanks{{printed.say("Measured"), printed.say("Put right"), printed.say("Photo, ticket")}});
  return passage;
}

// Points of one stage, each with room to write; the heading and what they wait for stand with the first.
void add_stage(const Printed& printed, Stage stage, Sheet& sheet) {
  const auto& points = notes_of(printed, stage).hold_points;
  std::vector<Hold> all = holds(printed, stage);
  for (std::size_t i = 0; i < points.size(); ++i) {
    Passage passage = hold_passage(printed, stage, points[i], std::move(all[i]));
    if (i == 0) {
      std::vector<Block> head{Heading{stage_title(printed, stage), {}, stage_number(stage)}};
      if (const auto waits = waits_for(printed, stage)) head.push_back(*waits);
      passage.blocks.insert(passage.blocks.begin(), head.begin(), head.end());
    }
    sheet.passages.push_back(std::move(passage));
  }
}

Framed who_decides(const Printed& printed) {
  return {printed.say("Nothing is covered before it was looked at"),
          {{printed.say("The person named on a point looks at it and signs; nobody signs for another.")},
           {printed.say("Limits are those of the sources named. Local code, the permit and the engineer's papers stand "
                        "over them: the stricter one holds.")}},
          true};
}

}  // namespace

Sheet inspection(const Printed& printed) {
  Sheet sheet = sheet_named(printed, "inspection", "Inspection record");
  sheet.about = {printed.say("What is looked at before it is covered.")};
  if (nothing_to_do(printed)) {
    sheet.passages.push_back(
        {{Paragraph{{printed.say("Nothing is built in this job yet: there is nothing to look at.")}}}});
    return sheet;
  }
  sheet.passages.push_back({{who_decides(printed)}});
  for (const Stage stage : takeoff::all_stages) add_stage(printed, stage, sheet);
  sheet.passages.push_back({{Heading{printed.say("Other visits"), {}},
                             Blanks{{printed.say("Who"), printed.say("What was looked at"), printed.say("Day")}, 4}},
                            std::nullopt,
                            true});
  return sheet;
}

}  // namespace sheets
