// As-built lists of what lies in the ground, for the close-out.
#include "sheets/close_out_parts.h"
#include "sheets/parts.h"
#include "sheets/source.h"

namespace sheets {

namespace {

std::optional<double> measure(const Printed& printed, const plan::ElementId& id, std::string_view name) {
  for (const takeoff::Measures& measures : printed.results->takeoff.measures)
    if (measures.element == id) return measures.get(name);
  return std::nullopt;
}

Said length_of(const Printed& printed, const plan::ElementId& id, const std::string& name) {
  const auto value = measure(printed, id, name);
  return value ? Said(length_words(printed, *value), of_measure(id, name)) : Said();
}

Said level_of(const Printed& printed, const plan::ElementId& id, const std::string& name) {
  const auto value = measure(printed, id, name);
  return value ? Said(show_height(*value, printed.job().heading.units), of_measure(id, name)) : Said();
}

std::string tagged(const plan::Element& element) { return element.id + " " + element.name; }

}  // namespace

Passage pipes_passage(const Printed& printed) {
  Table table{{{printed.say("Pipe, channel, sleeve"), Align::left, 0.3},
               {printed.say("Of"), Align::left, 0.26},
               {printed.say("Length"), Align::right, 0.11},
               {printed.say("Start level"), Align::right, 0.11},
               {printed.say("End level"), Align::right, 0.11},
               {printed.say("As taped"), Align::left, 0.11}},
              {}};
  for (const plan::ElementPtr& element : printed.job().elements) {
    const plan::ElementId& id = element->id;
    if (const auto* run = std::get_if<plan::DrainRun>(&element->kind))
      table.rows.push_back({{tagged(*element),
                             name_of(printed, run->item),
                             length_of(printed, id, "length_m"),
                             level_of(printed, id, "start_level_m"),
                             level_of(printed, id, "end_level_m"),
                             {}}});
    if (const auto* wall = std::get_if<plan::Wall>(&element->kind); wall && wall->pipe && !wall->existing)
      table.rows.push_back({{filled(printed, "behind %1", {tagged(*element)}),
                             name_of(printed, wall->pipe->item),
                             length_of(printed, id, "pipe_m"),
                             level_of(printed, id, "pipe_invert_high_m"),
                             {},
                             {}}});
  }
  if (table.rows.empty()) return {};
  table.written = true;
  return {{Heading{printed.say("Pipes, channels, sleeves"), {}},
           Paragraph{{printed.say("Taped from two fixed points before it was covered; bends, cleanouts and caps in the "
                                  "sketch.")},
                     Paragraph::Kind::note},
           table}};
}

Passage outlets_passage(const Printed& printed) {
  Table table{{{printed.say("Outlet of"), Align::left, 0.36},
               {printed.say("Invert"), Align::right, 0.16},
               {printed.say("Ground there"), Align::right, 0.16},
               {printed.say("Open, runs"), Align::centre, 0.12, true},
               {printed.say("Taped from"), Align::left, 0.2}},
              {}};
  for (const plan::ElementPtr& element : printed.job().elements) {
    const auto* run = std::get_if<plan::DrainRun>(&element->kind);
    if (run && run->into.empty() && run->what == "pipe")
      table.rows.push_back({{tagged(*element),
                             level_of(printed, element->id, "end_level_m"),
                             level_of(printed, element->id, "outlet_ground_m"),
                             {},
                             {}}});
    const auto* wall = std::get_if<plan::Wall>(&element->kind);
    if (!wall || !wall->pipe || wall->existing) continue;
    for (const plan::HeightAt& outlet : wall->pipe->outlets)
      table.rows.push_back(
          {{filled(printed, "%1, at %2", {tagged(*element), length_words(printed, outlet.at.metres().si())}),
            {show_height(outlet.height.metres().si(), printed.job().heading.units),
             of_element(element->id, "pipe outlets")},
            {},
            {},
            {}}});
  }
  if (table.rows.empty()) return {};
  table.written = true;
  return {{Heading{printed.say("Outlets"), {}}, table}};
}

Passage bonding_passage(const Printed& printed) {
  Table table{{{printed.say("Bonding of"), Align::left, 0.28},
               {printed.say("Ring"), Align::right, 0.16},
               {printed.say("Out from the water's edge"), Align::right, 0.2},
               {printed.say("Depth"), Align::right, 0.16},
               {printed.say("As taped"), Align::left, 0.2}},
              {}};
  for (const plan::ElementPtr& element : printed.job().elements) {
    const auto* pool = std::get_if<plan::Pool>(&element->kind);
    if (!pool || !pool->bonding) continue;
    const auto typed = [&](plan::Length length, const char* field) {
      return Said(length_words(printed, length.metres().si()), of_element(element->id, field));
    };
    table.rows.push_back({{tagged(*element),
                           length_of(printed, element->id, "bonding_ring_m"),
                           typed(pool->bonding->out, "bonding out"),
                           typed(pool->bonding->depth, "bonding depth"),
                           {}}});
  }
  if (table.rows.empty()) return {};
  table.written = true;
  return {{Heading{printed.say("Bonding"), {}}, table,
           Caution{printed.say(
               "A licensed electrician made and tested it by the local edition of the code; some inspectors "
               "ask for a grid instead. Nobody cuts or moves it without an electrician.")},
           Blanks{{printed.say("Electrician"), printed.say("Tested on"), printed.say("Certificate")}}}};
}

Passage services_passage(const Printed& printed) {
  Table table{{{printed.say("Buried service"), Align::left, 0.4},
               {printed.say("Depth said"), Align::right, 0.2},
               {printed.say("Found at"), Align::left, 0.2},
               {printed.say("Moved, mended by"), Align::left, 0.2}},
              {}};
  for (const plan::ElementPtr& element : printed.job().elements) {
    const auto* mark = std::get_if<plan::SiteMark>(&element->kind);
    if (!mark || mark->what != "buried-service") continue;
    Said depth;
    if (mark->depth) depth = {length_words(printed, mark->depth->metres().si()), of_element(element->id, "depth")};
    table.rows.push_back({{tagged(*element), depth, {}, {}}});
  }
  if (table.rows.empty()) return {};
  table.written = true;
  return {{Heading{printed.say("Buried services"), {}}, table}};
}

}  // namespace sheets
