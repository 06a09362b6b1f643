#include <cmath>
#include <numbers>

#include "plan/edits.h"
#include "ui/desk/lay_pattern.h"
#include "ui/desk/own_build_up.h"
#include "ui/panels/fields_making.h"

namespace ui {

namespace {

using plan::PavedArea;
const std::vector<std::string> laid{"paving-unit", "slab", "permeable-unit", "clay-unit"};
const std::vector<std::string> fillers{"joint-sand", "joint-chips", "aggregate", "concrete"};

const catalogue::Layer* layer_of(const plan::Job& job, const plan::ElementId& id, std::size_t number) {
  const plan::Element* element = job.find(id);
  const plan::Id* build_up = element ? build_up_of(*element) : nullptr;
  const catalogue::BuildUp* found = build_up ? job.catalogue->build_up(*build_up) : nullptr;
  return found && number < found->layers.size() ? &found->layers[number] : nullptr;
}

QString layer_name(const plan::Job& job, const catalogue::Layer& layer) {
  const catalogue::Item* item = job.catalogue->item(layer.item);
  if (item && !item->name.en.empty()) return QString::fromStdString(item->name.en);
  return QString::fromStdString(layer.item.empty() ? layer.role : layer.item);
}

// Of a layer: its thickness, and of fabric its lap.
Field layer_field(const plan::Job& job, const plan::ElementId& id, std::size_t number) {
  const catalogue::Layer& layer = *layer_of(job, id, number);
  const bool fabric = !layer.thickness;
  Field field;
  field.id = "layer/" + std::to_string(number) + (fabric ? "/past_edge" : "/thickness");
  field.label = fabric ? Fields::tr("%1, past the edge").arg(layer_name(job, layer)) : layer_name(job, layer);
  field.editor = Editor::length;
  field.never_below_0 = true;
  field.step = step_name(layer_name(job, layer), id);
  field.get = [id, number, fabric](const plan::Job& now) -> Value {
    const catalogue::Layer* found = layer_of(now, id, number);
    if (!found) return {};
    return fabric ? Value(found->past_edge) : value_of(found->thickness);
  };
  field.set = [id, number, fabric](const plan::Job& now, const Value& value) {
    return with_layer(now, id, number, [&](catalogue::Layer& change) {
      if (fabric)
        take(change.past_edge, value);
      else if (std::holds_alternative<units::Length>(value))
        take(change.thickness, value);
    });
  };
  return field;
}

std::vector<Field> fills(const plan::ElementId& id, const PavedArea& area) {
  std::vector<Field> found;
  for (std::size_t i = 0; i < area.joint_fill.size(); ++i) {
    const std::string at = "joint_fill/" + std::to_string(i);
    found.push_back(
        as_item(made<PavedArea>(id, at + "/item", Fields::tr("Filler"),
                                [i](auto& a) { return i < a.joint_fill.size() ? &a.joint_fill[i].item : nullptr; }),
                fillers));
    if (i + 1 < area.joint_fill.size())
      found.push_back(not_below_0(made<PavedArea>(id, at + "/depth", Fields::tr("Down to"), [i](auto& a) {
        return i < a.joint_fill.size() ? &a.joint_fill[i].depth : nullptr;
      })));
    found.push_back(action<PavedArea>(id, at + "/out", Fields::tr("Take this filler out"),
                                      step_name(Fields::tr("Filler"), id), [i](PavedArea& a) {
                                        if (i < a.joint_fill.size())
                                          a.joint_fill.erase(a.joint_fill.begin() + static_cast<std::ptrdiff_t>(i));
                                      }));
  }
  if (area.joint_fill.size() < 2)
    found.push_back(action<PavedArea>(id, "joint_fill/add", Fields::tr("Add a filler"),
                                      step_name(Fields::tr("Filler"), id), [](PavedArea& a) {
                                        a.joint_fill.push_back({"joint-polymer", {}});
                                        if (a.joint_fill.size() > 1)
                                          a.joint_fill[a.joint_fill.size() - 2].depth = units::Length::inches(1);
                                      }));
  return found;
}

}  // namespace

std::vector<Field> layer_fields(const plan::Job& job, const plan::ElementId& id) {
  std::vector<Field> found;
  for (std::size_t i = 0; const catalogue::Layer* layer = layer_of(job, id, i); ++i)
    if (layer->role != "unit") found.push_back(layer_field(job, id, i));
  return found;
}

std::vector<Field> area_build_up(const plan::Job& job, const plan::ElementId& id, const PavedArea& area) {
  std::vector<Field> found{as_build_up(
      made<PavedArea>(id, "build_up", Fields::tr("Build-up"), [](auto& a) { return &a.build_up; }), "paving")};
  add(found, layer_fields(job, id));
  add(found, headed(Fields::tr("Joint fill, from the top"), fills(id, area)));
  add(found, headed(Fields::tr("Use"), {made<PavedArea>(id, "vehicles", Fields::tr("Vehicles drive on it"),
                                                        [](auto& a) { return &a.vehicles; }),
                                        as_area(made<PavedArea>(id, "taped_area", Fields::tr("Area as taped on site"),
                                                                [](auto& a) { return &a.taped_area_m2; }))}));
  return found;
}

namespace {

std::vector<Field> unit_fields(const plan::Job& job, const plan::ElementId& id, const PavedArea& area) {
  std::vector<Field> found;
  const catalogue::Pattern* pattern = area.laying ? job.catalogue->pattern(area.laying->pattern) : nullptr;
  if (!pattern) return found;
  const std::vector<std::string> sizes = catalogue::sizes(*pattern);
  for (const std::string& size : sizes) {
    const QString label =
        sizes.size() == 1 ? Fields::tr("Unit") : Fields::tr("Unit, %1").arg(QString::fromStdString(size));
    Field field =
        made<PavedArea>(id, "unit/" + size, label,
                        [size](auto& a) -> std::conditional_t<std::is_const_v<std::remove_reference_t<decltype(a)>>,
                                                              const std::string, std::string>* {
                          if (!a.laying) return nullptr;
                          const auto at = a.laying->units.find(size);
                          return at == a.laying->units.end() ? nullptr : &at->second;
                        });
    field.set = [id, size](const plan::Job& now, const Value& value) {
      return changed<PavedArea>(now, id, [&](PavedArea& a) {
        if (a.laying && std::holds_alternative<std::string>(value))
          a.laying->units[size] = std::get<std::string>(value);
      });
    };
    found.push_back(as_item(std::move(field), laid));
  }
  return found;
}

QString shown(units::Length length, units::System system) {
  QString text = QString::fromStdString(units::show_length(length, system));
  return text.replace(QLatin1Char('\''), QChar(0x2032)).replace(QLatin1Char('"'), QChar(0x2033));
}

QString joint_of_unit(const plan::Job& job, const PavedArea& area) {
  if (area.laying->units.empty()) return {};
  const catalogue::Item* item = job.catalogue->item(area.laying->units.begin()->second);
  if (!item || !item->joint) return {};
  return shown(*item->joint, job.heading.units);
}

struct Straight {
  int number = 0;
  double degrees = 0;
  units::Length length;
};
std::vector<Straight> straight_edges(const plan::Element& element) {
  std::vector<Straight> found;
  int number = 0;
  for (const plan::DrawnEdge& edge : plan::drawn_edges(element)) {
    ++number;
    const geometry::Vec chord = edge.curve.chord();
    if (!edge.curve.straight() || geometry::length(chord) == 0) continue;
    const double degrees = std::atan2(chord.y, chord.x) * 180 / std::numbers::pi;
    found.push_back(
        {number, std::round(degrees * 1e9) / 1e9, units::Length::of_steps(std::llround(geometry::length(chord)))});
  }
  return found;
}

bool runs_along(const Straight& edge, const plan::Laying& laying) {
  return std::abs(std::remainder(edge.degrees - laying.direction.degrees(), 180)) < 1e-6;
}

// The direction of laying taken from a straight edge of the drawing.
Field along_edge(const plan::Job& job, const plan::ElementId& id) {
  const std::vector<Straight> edges = straight_edges(*job.find(id));
  Field field;
  field.id = "direction/along";
  field.label = Fields::tr("Runs along");
  field.editor = Editor::words;
  field.by_order = true;
  field.may_be_empty = true;
  field.step = step_name(Fields::tr("Direction"), id);
  for (const Straight& edge : edges)
    field.choices.push_back(
        {"", Fields::tr("Edge %1, %2").arg(edge.number).arg(shown(edge.length, job.heading.units))});
  field.get = [id, edges](const plan::Job& now) -> Value {
    const plan::Element* element = now.find(id);
    const auto* area = element ? std::get_if<PavedArea>(&element->kind) : nullptr;
    for (std::size_t i = 0; area && area->laying && i < edges.size(); ++i)
      if (runs_along(edges[i], *area->laying)) return static_cast<std::int64_t>(i);
    return {};
  };
  field.set = [id, edges](const plan::Job& now, const Value& value) {
    const auto* chosen = std::get_if<std::int64_t>(&value);
    return changed<PavedArea>(now, id, [&](PavedArea& a) {
      if (!chosen || !a.laying || *chosen < 0 || *chosen >= static_cast<std::int64_t>(edges.size())) return;
      const Straight& edge = edges[static_cast<std::size_t>(*chosen)];
      if (!runs_along(edge, *a.laying)) a.laying->direction = units::Angle::degrees(edge.degrees);
    });
  };
  return field;
}

std::vector<Choice> ways() {
  return {{"soldier", Fields::tr("Soldier, across")}, {"sailor", Fields::tr("Sailor, along")}};
}
std::vector<Choice> corners() {
  return {{"mitre", Fields::tr("Mitre")},
          {"butt", Fields::tr("Butt, by turns")},
          {"block", Fields::tr("Block in the corner")}};
}
std::vector<Choice> places() {
  return {{"outside", Fields::tr("Outer edge")},
          {"everywhere", Fields::tr("Outer edge and islands")},
          {"islands", Fields::tr("Islands only")}};
}

// A row of the list of courses: its fields, then what can be done with it.
std::vector<Field> course(const plan::ElementId& id, std::size_t i, std::size_t count) {
  const std::string at = "border/" + std::to_string(i) + "/";
  const auto member = [i](auto way) {
    return [i, way](auto& a) { return i < a.borders.size() ? way(a.borders[i]) : nullptr; };
  };
  const QString step = Fields::tr("Change border of %1").arg(QString::fromStdString(id));
  std::vector<Field> found{
      as_item(made<PavedArea>(id, at + "item", Fields::tr("Unit"), member([](auto& c) { return &c.item; })), laid),
      as_words(made<PavedArea>(id, at + "way", Fields::tr("Lies as"), member([](auto& c) { return &c.way; })), ways()),
      as_words(made<PavedArea>(id, at + "corner", Fields::tr("Corners"), member([](auto& c) { return &c.corner; })),
               corners()),
      as_words(made<PavedArea>(id, at + "where", Fields::tr("Along"), member([](auto& c) { return &c.where; })),
               places()),
      not_below_0(made<PavedArea>(id, at + "joint", Fields::tr("Joint"), member([](auto& c) { return &c.joint; })))};
  const auto swap = [i](PavedArea& a) {
    if (i + 1 < a.borders.size()) std::swap(a.borders[i], a.borders[i + 1]);
  };
  if (i + 1 < count) found.push_back(action<PavedArea>(id, at + "in", Fields::tr("Move one course in"), step, swap));
  found.push_back(action<PavedArea>(id, at + "out", Fields::tr("Take this course out"),
                                    Fields::tr("Take a border course out of %1").arg(QString::fromStdString(id)),
                                    [i](PavedArea& a) {
                                      if (i < a.borders.size())
                                        a.borders.erase(a.borders.begin() + static_cast<std::ptrdiff_t>(i));
                                    }));
  for (Field& field : found)
    if (field.editor != Editor::action) field.step = step;
  return headed(Fields::tr("Border course %1, from the outside").arg(i + 1), std::move(found));
}

// A new course is of the course before it, or of the first unit that the field has.
plan::BorderCourse another(const PavedArea& area) {
  if (!area.borders.empty()) return area.borders.back();
  plan::BorderCourse made;
  if (area.laying && !area.laying->units.empty()) made.item = area.laying->units.begin()->second;
  return made;
}

}  // namespace

std::vector<Field> area_pattern(const plan::Job& job, const plan::ElementId& id, const PavedArea& area) {
  Field pattern = made<PavedArea>(id, "pattern", Fields::tr("Pattern"),
                                  [](auto& a) { return a.laying ? &a.laying->pattern : nullptr; });
  pattern.editor = Editor::pattern;
  pattern.set = [id](const plan::Job& now, const Value& value) {
    const auto* chosen = std::get_if<std::string>(&value);
    const catalogue::Pattern* known = chosen ? now.catalogue->pattern(*chosen) : nullptr;
    return changed<PavedArea>(now, id, [&](PavedArea& a) { a = with_pattern(std::move(a), *now.catalogue, known); });
  };
  std::vector<Field> found{std::move(pattern)};
  if (area.laying) {
    add(found, unit_fields(job, id, area));
    Field joint = made<PavedArea>(id, "joint", Fields::tr("Joint"),
                                  [](auto& a) { return a.laying ? &a.laying->joint : nullptr; });
    joint.otherwise = joint_of_unit(job, area);
    found.push_back(not_below_0(std::move(joint)));
    Field direction = made<PavedArea>(id, "direction", Fields::tr("Direction"),
                                      [](auto& a) { return a.laying ? &a.laying->direction : nullptr; });
    found.push_back(within(std::move(direction), -360, 360));
    found.push_back(along_edge(job, id));
    add(found, headed(Fields::tr("Start point"),
                      {made<PavedArea>(id, "start/x", Fields::tr("East"),
                                       [](auto& a) { return a.laying ? &a.laying->start.x : nullptr; }),
                       made<PavedArea>(id, "start/y", Fields::tr("North"),
                                       [](auto& a) { return a.laying ? &a.laying->start.y : nullptr; })}));
  }
  for (std::size_t i = 0; i < area.borders.size(); ++i) add(found, course(id, i, area.borders.size()));
  Field more = action<PavedArea>(id, "border/add", Fields::tr("Add a border course"),
                                 Fields::tr("Add a border course to %1").arg(QString::fromStdString(id)),
                                 [](PavedArea& a) { a.borders.push_back(another(a)); });
  if (area.borders.empty()) more.group = Fields::tr("Border courses");
  found.push_back(std::move(more));
  return found;
}

}  // namespace ui
