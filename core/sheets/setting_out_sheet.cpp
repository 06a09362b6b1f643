// Setting out and levels: what the crew measures from the base line, and the stakes with their cut and fill.
#include <algorithm>

#include "sheets/all_sheets.h"
#include "sheets/numbered.h"
#include "sheets/set_out.h"
#include "sheets/setting_out_parts.h"
#include "sheets/source.h"

namespace sheets {

namespace {

using takeoff::setting_out::SettingOut;

Block note(std::string words) { return Paragraph{{std::move(words)}, Paragraph::Kind::note}; }

void put(Sheet& sheet, const std::string& title, std::vector<Block> notes, Table table) {
  if (table.rows.empty()) return;
  Passage passage;
  passage.blocks.emplace_back(Heading{title, {}});
  for (Block& one : notes) passage.blocks.push_back(std::move(one));
  passage.blocks.emplace_back(std::move(table));
  sheet.passages.push_back(std::move(passage));
}

void put_base_line(const Printed& printed, const SettingOut& out, Sheet& sheet) {
  const plan::Element* element = printed.job().find(out.base_line);
  const auto* line = element ? std::get_if<plan::BaseLine>(&element->kind) : nullptr;
  if (!line) return;
  const double length = geometry::length(line->to - line->from) / units::Length::steps_per_metre;
  Passage passage;
  passage.blocks.emplace_back(Heading{filled(printed, "Base line %1", {tag_and_name(printed, out.base_line)}),
                                      {length_words(printed, length), of_element(out.base_line, "length")}});
  if (auto drawing = set_out_drawing(printed, out)) passage.blocks.emplace_back(std::move(*drawing));
  sheet.passages.push_back(std::move(passage));
}

void put_marks(const Printed& printed, const SettingOut& out, Sheet& sheet) {
  std::vector<Block> notes;
  notes.push_back(note(printed.say(
      "Along is measured on the base line from its start, or before it; out square to it, left (L) or right (R) as one "
      "walks from start to end. Ties are tapes from both ends of the base line; the check is the distance to the mark "
      "in the row above, of the first one to the last of its element.")));
  if (std::ranges::any_of(out.marks, &takeoff::setting_out::Mark::poor))
    notes.push_back(
        note(printed.say("* The two tapes cross at a poor angle: a small slip moves the place far. Measure "
                         "the check too, or go by along and out.")));
  put(sheet, printed.say("Marks"), std::move(notes), mark_table(printed, out));
}

void put_stakes(const Printed& printed, const SettingOut& out, Sheet& sheet) {
  std::vector<Block> notes;
  const std::string unit = printed.job().heading.units == units::System::us ? printed.say("Heights are in feet.")
                                                                            : printed.say("Heights are in metres.");
  notes.push_back(note(unit + " " +
                       printed.say("Formation is the bottom of the build-up: dig or fill to there, then build up to "
                                   "the finish.")));
  if (std::ranges::any_of(out.stakes, &takeoff::setting_out::Stake::guessed))
    notes.push_back(
        note(printed.say("* The ground there lies beyond what was measured: its cut and fill is a guess "
                         "until levels are taken.")));
  put(sheet, printed.say("Stakes, cut and fill"), std::move(notes), stake_table(printed, out));
}

// What is said of the whole; poor ties and guessed stakes are marked in their rows.
void put_notices(const Printed& printed, const SettingOut& out, Sheet& sheet) {
  Passage passage;
  for (const problem::Problem& said : out.problems)
    if (said.code.starts_with("base-line"))
      passage.blocks.emplace_back(Paragraph{{as_sentence(printed, said.text) + " " + as_sentence(printed, said.mend)}});
  if (!passage.blocks.empty()) sheet.passages.push_back(std::move(passage));
}

}  // namespace

Sheet setting_out(const Printed& printed) {
  const SettingOut out = set_out(*printed.results);
  Sheet sheet;
  sheet.word = "setting-out";
  sheet.title = printed.say("Setting out and levels");
  sheet.about = {printed.say("From the base line, edge by edge. Tick what is set out and checked.")};
  put_notices(printed, out, sheet);
  put_base_line(printed, out, sheet);
  put_marks(printed, out, sheet);
  put(sheet, printed.say("Diagonals"), {note(printed.say("Both alike is square; one longer says which way it leans."))},
      diagonal_table(printed, out));
  put(sheet, printed.say("Curves by offsets"),
      {note(
          printed.say("Stretch a line along the chord from its first corner as drawn, and measure out square to it."))},
      offset_table(printed, out));
  put_stakes(printed, out, sheet);
  for (const plan::ElementPtr& element : printed.job().elements)
    if (std::holds_alternative<plan::LevelBook>(element->kind))
      sheet.passages.push_back({level_book(printed, *element)});
  if (sheet.passages.empty())
    sheet.passages.push_back({{Paragraph{printed.say("Nothing is drawn yet that could be set out.")}}});
  return sheet;
}

}  // namespace sheets
