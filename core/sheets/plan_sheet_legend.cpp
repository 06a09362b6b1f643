#include <algorithm>
#include <array>
#include <set>

#include "sheets/plan_sheet_parts.h"
#include "sheets/section_drawing.h"
#include "sheets/source.h"

namespace sheets {

namespace {

struct Entry {
  std::string sign;
  std::string means;
};

struct Letter {
  const char* letter;
  const char* means;
};
constexpr std::array letters{Letter{"K", "kerb"}, Letter{"R", "restraint or edging"},
                             Letter{"I", "kept apart from what stands"}, Letter{"E", "sealed joint that moves"},
                             Letter{"F", "flush joint"}};

struct Drawn {
  Sign sign;
  const char* words;
  const char* means;
};
constexpr std::array signs{Drawn{Sign::tag, "tag", "see the list"},
                           Drawn{Sign::start_point, "ring with arrow", "start of the pattern and its way"},
                           Drawn{Sign::fall, "arrow with %", "fall, where water runs"},
                           Drawn{Sign::weep, "open triangle", "weep of the kerb"},
                           Drawn{Sign::outlet, "open arrow head", "outlet of a pipe"},
                           Drawn{Sign::wall_step, "heavy tick", "step in the top of the wall"},
                           Drawn{Sign::inlet, "grate", "inlet"}};

// What of it is in the figure.
struct Shown {
  std::set<Sign> signs;
  std::set<std::string> letters;
  bool pipe = false;
  bool later = false;
  bool dig = false;
};

Shown shown_in(const Figure& figure) {
  Shown shown;
  const auto take = [&](Line line) {
    shown.pipe = shown.pipe || line == Line::pipe;
    shown.later = shown.later || line == Line::later;
    shown.dig = shown.dig || line == Line::open_dig;
  };
  for (const Part& part : figure.parts) {
    if (const auto* stroke = std::get_if<Stroke>(&part)) take(stroke->line);
    if (const auto* area = std::get_if<Area>(&part)) take(area->line);
    const auto* mark = std::get_if<Mark>(&part);
    if (!mark) continue;
    shown.signs.insert(mark->sign);
    if (mark->sign == Sign::junction) shown.letters.insert(mark->text);
  }
  return shown;
}

std::vector<Entry> entries(const Printed& printed, const Shown& shown) {
  std::vector<Entry> all;
  for (const Drawn& one : signs)
    if (shown.signs.contains(one.sign)) all.push_back({printed.say(one.words), printed.say(one.means)});
  if (shown.signs.contains(Sign::level))
    all.push_back({printed.say("cross with a number"),
                   printed.say(printed.job().heading.units == units::System::us ? "level, feet" : "level, metres")});
  if (shown.pipe) all.push_back({printed.say("dashes and dots"), printed.say("pipe")});
  if (shown.dig) all.push_back({printed.say("slope marks"), printed.say("top edge of the dig")});
  if (shown.later) all.push_back({printed.say("dashed"), printed.say("built later")});
  for (const Letter& one : letters)
    if (shown.letters.contains(one.letter)) all.push_back({one.letter, printed.say(one.means)});
  return all;
}

std::optional<double> measured(const Printed& printed, const plan::ElementId& of, const std::string& name) {
  for (const takeoff::Measures& measures : printed.results->takeoff.measures)
    if (measures.element == of) return measures.get(name);
  return std::nullopt;
}

// Net area of what is closed, length of what is a line.
Said size_of(const Printed& printed, const plan::Element& element) {
  for (const char* name : {"water_area_m2", "net_area_m2", "outline_area_m2"})
    if (const auto area = measured(printed, element.id, name); area && *area > 0)
      return {area_words(printed, *area), of_measure(element.id, name)};
  for (const char* name : {"face_length_m", "length_m"})
    if (const auto length = measured(printed, element.id, name))
      return {length_words(printed, *length), of_measure(element.id, name)};
  return {};
}

std::string pattern_of(const Printed& printed, const plan::Element& element) {
  const auto* area = std::get_if<plan::PavedArea>(&element.kind);
  if (!area || !area->laying) return {};
  const plan::Laying& laying = *area->laying;
  std::string words = filled(printed, "%1, turned %2°",
                             {name_of(printed, laying.pattern), number_words(printed, laying.direction.degrees())});
  if (laying.joint) words += filled(printed, ", joint %1", {length_words(printed, laying.joint->metres().si())});
  return words;
}

bool listed(const plan::Kind& kind) {
  return !(std::holds_alternative<plan::Level>(kind) || std::holds_alternative<plan::Note>(kind) ||
           std::holds_alternative<plan::Dimension>(kind) || std::holds_alternative<plan::SitePlan>(kind) ||
           std::holds_alternative<plan::LevelBook>(kind) || std::holds_alternative<plan::BaseLine>(kind) ||
           std::holds_alternative<plan::TapeBook>(kind));
}

}  // namespace

Table plan_legend(const Printed& printed, const Figure& figure, std::size_t across) {
  Table table;
  table.small = true;
  for (std::size_t i = 0; i < across; ++i)
    table.columns.push_back({{}, Align::left, 0.95 / static_cast<double>(across)});
  const std::vector<Entry> all = entries(printed, shown_in(figure));
  for (std::size_t i = 0; i < all.size(); ++i) {
    if (i % across == 0) table.rows.emplace_back();
    table.rows.back().cells.emplace_back(filled(printed, "%1: %2", {all[i].sign, all[i].means}));
  }
  return table;
}

Table plan_elements(const Printed& printed) {
  Table table;
  table.columns = {{printed.say("Tag")},
                   {printed.say("Kind")},
                   {printed.say("Name")},
                   {printed.say("Size"), Align::right},
                   {printed.say("Pattern")}};
  for (const plan::ElementPtr& element : printed.job().elements) {
    if (!listed(element->kind)) continue;
    Row row;
    row.cells = {Said{element->id}, Said{kind_words(printed, element->kind)}, Said{element->name},
                 size_of(printed, *element), Said{pattern_of(printed, *element)}};
    table.rows.push_back(std::move(row));
  }
  return table;
}

}  // namespace sheets
