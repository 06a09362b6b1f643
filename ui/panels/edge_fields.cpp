#include "ui/panels/edge_fields.h"

#include <algorithm>
#include <map>

#include "takeoff/edges/junction.h"
#include "ui/panels/fields_making.h"
#include "ui/panels/length_field.h"
#include "ui/panels/panel_words.h"
#include "ui/words/words.h"

namespace ui {

namespace {

using plan::PavedArea;

struct Facing {
  std::string words;  // what it meets, as the junction table has it
  plan::ElementId other;
  const catalogue::Junction* built = nullptr;
  bool operator==(const Facing&) const = default;
};

QString shown(double metres, units::System system) {
  return shown_length(units::Length::nearest(units::Metres(metres)), system);
}

QString in_words(const Facing& facing) {
  QString what = facing.other.empty()
                     ? said(facing.words)
                     : Fields::tr("%1 %2").arg(said(facing.words), QString::fromStdString(facing.other));
  const QString built = facing.built ? own_name(facing.built->name, facing.built->id) : Fields::tr("nothing is built");
  return Fields::tr("%1: %2").arg(what, built);
}

Field told(std::string id, const QString& words, const QString& length) {
  Field field;
  field.id = std::move(id);
  field.label = words;
  field.editor = Editor::told;
  field.get = [text = length.toStdString()](const plan::Job&) -> Value { return text; };
  field.set = [](const plan::Job& job, const Value&) { return job; };
  return field;
}

// A junction of the table for one edge, "none", or nothing: as the table says.
Field choice(const plan::Job& job, const plan::ElementId& id, int edge) {
  Field field;
  field.id = "edge/" + std::to_string(edge);
  field.label = Fields::tr("Built here");
  field.editor = Editor::words;
  field.step = Fields::tr("Change edge %1 of %2").arg(edge + 1).arg(QString::fromStdString(id));
  field.choices.push_back({"", Fields::tr("By the table")});
  field.choices.push_back({"none", Fields::tr("Nothing")});
  for (const catalogue::Junction& row : job.catalogue->junctions)
    if (row.side_a == "paving") field.choices.push_back({row.id, own_name(row.name, row.id)});
  field.get = [id, edge](const plan::Job& now) -> Value {
    const plan::Element* element = now.find(id);
    const auto* area = element ? std::get_if<PavedArea>(&element->kind) : nullptr;
    if (!area) return {};
    const auto found = std::ranges::find(area->edges, edge, &plan::EdgeChoice::edge);
    return found == area->edges.end() ? std::string() : found->junction;
  };
  field.set = [id, edge](const plan::Job& now, const Value& value) {
    const auto* junction = std::get_if<std::string>(&value);
    return changed<PavedArea>(now, id, [&](PavedArea& area) {
      std::erase_if(area.edges, [edge](const plan::EdgeChoice& one) { return one.edge == edge; });
      if (junction && !junction->empty()) area.edges.push_back({edge, *junction});
      std::ranges::sort(area.edges, {}, &plan::EdgeChoice::edge);
    });
  };
  return field;
}

struct Part {
  Facing facing;
  double length = 0;
};

// Neighbours that face the same are one; so is all of an edge that something else cut in.
void take(std::vector<Part>& parts, const Facing& facing, double length) {
  const auto same = std::ranges::find(parts, facing, &Part::facing);
  if (same == parts.end())
    parts.push_back({facing, length});
  else
    same->length += length;
}

}  // namespace

std::vector<Field> edge_fields(const results::Results& results, const plan::Job& job, const plan::ElementId& id) {
  const plan::Ground* ground = results.site.find(id);
  if (!ground || !ground->computed) return {};
  std::map<int, std::vector<Part>> own;
  std::vector<Part> cut_in;
  const std::uint64_t mark = plan::mark(id);
  for (const plan::Stretch& stretch : ground->stretches) {
    const Facing facing{plan::word(stretch.meets), stretch.other,
                        takeoff::edges::junction_for(*results.job, *ground, stretch)};
    take(stretch.origin.element == mark ? own[stretch.origin.edge] : cut_in, facing, stretch.length().si());
  }
  std::vector<Field> found;
  for (const auto& [edge, parts] : own) {
    double whole = 0;
    for (const Part& part : parts) whole += part.length;
    std::vector<Field> rows;
    for (std::size_t i = 0; i < parts.size(); ++i)
      rows.push_back(told("edge/" + std::to_string(edge) + "/" + std::to_string(i), in_words(parts[i].facing),
                          shown(parts[i].length, job.heading.units)));
    rows.push_back(choice(job, id, edge));
    add(found, headed(Fields::tr("Edge %1, %2").arg(edge + 1).arg(shown(whole, job.heading.units)), std::move(rows)));
  }
  std::vector<Field> rows;
  for (std::size_t i = 0; i < cut_in.size(); ++i)
    rows.push_back(
        told("cut/" + std::to_string(i), in_words(cut_in[i].facing), shown(cut_in[i].length, job.heading.units)));
  add(found, headed(Fields::tr("Where something cuts in"), std::move(rows)));
  return found;
}

}  // namespace ui
