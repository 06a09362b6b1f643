#include "ui/panels/fields.h"

#include <algorithm>

#include "ui/panels/fields_making.h"

namespace ui {

QString step_name(const QString& label, const plan::ElementId& id) {
  return Fields::tr("Change %1 of %2").arg(label.toLower(), QString::fromStdString(id));
}

std::vector<Field> headed(const QString& heading, std::vector<Field> fields) {
  if (!fields.empty()) fields.front().group = heading;
  return fields;
}

void add(std::vector<Field>& to, std::vector<Field> more) {
  for (Field& field : more) to.push_back(std::move(field));
}

namespace {

struct KindWords {
  QString operator()(const plan::PavedArea&) const { return Fields::tr("Paved area"); }
  QString operator()(const plan::Pool&) const { return Fields::tr("Pool"); }
  QString operator()(const plan::Wall& wall) const {
    return wall.free_standing ? Fields::tr("Free-standing wall") : Fields::tr("Wall");
  }
  QString operator()(const plan::Steps&) const { return Fields::tr("Steps"); }
  QString operator()(const plan::Building&) const { return Fields::tr("Building"); }
  QString operator()(const plan::KeepOut& out) const {
    return out.pillar ? Fields::tr("Pillar") : Fields::tr("Keep-out");
  }
  QString operator()(const plan::EdgeRun& run) const {
    if (run.what == "kerb") return Fields::tr("Kerb");
    return run.what == "edging" ? Fields::tr("Edging") : Fields::tr("Restraint");
  }
  QString operator()(const plan::DrainRun& run) const {
    if (run.what == "channel") return Fields::tr("Channel");
    return run.what == "sleeve" ? Fields::tr("Sleeve") : Fields::tr("Pipe");
  }
  QString operator()(const plan::Level&) const { return Fields::tr("Level"); }
  QString operator()(const plan::Feature&) const { return Fields::tr("Feature"); }
  QString operator()(const plan::Removal&) const { return Fields::tr("Removal"); }
  QString operator()(const plan::SiteMark&) const { return Fields::tr("Site mark"); }
  QString operator()(const plan::Protection&) const { return Fields::tr("Protection"); }
  QString operator()(const plan::Note&) const { return Fields::tr("Note"); }
  QString operator()(const plan::Dimension&) const { return Fields::tr("Dimension"); }
  QString operator()(const plan::SitePlan&) const { return Fields::tr("Site plan"); }
  QString operator()(const plan::LevelBook&) const { return Fields::tr("Level book"); }
  QString operator()(const plan::BaseLine&) const { return Fields::tr("Base line"); }
  QString operator()(const plan::TapeBook&) const { return Fields::tr("Taped measures"); }
};

// A field of the job's heading.
template <class Way>
Field heading(std::string name, const QString& label, Way way) {
  using Member = std::remove_pointer_t<decltype(way(std::declval<plan::Heading&>()))>;
  Field field;
  field.id = "job/" + name;
  field.label = label;
  field.editor = editor_of<Member>();
  field.step = Fields::tr("Change %1 of the job").arg(label.toLower());
  field.get = [way](const plan::Job& job) -> Value { return value_of(*way(job.heading)); };
  field.set = [way](const plan::Job& job, const Value& value) {
    plan::Job after = job;
    take(*way(after.heading), value);
    return after;
  };
  return field;
}

}  // namespace

QString kind_words(const plan::Kind& kind) { return std::visit(KindWords{}, kind); }

std::vector<Choice> elements_of(const plan::Job& job, const std::vector<std::string>& kinds) {
  std::vector<Choice> found;
  for (const plan::ElementPtr& element : job.elements) {
    if (std::ranges::find(kinds, plan::kind_name(element->kind)) == kinds.end()) continue;
    const QString id = QString::fromStdString(element->id);
    found.push_back({element->id, element->name.empty() ? id : id + " " + QString::fromStdString(element->name)});
  }
  return found;
}

Field name_of(const plan::ElementId& id) {
  Field field;
  field.id = "name";
  field.label = Fields::tr("Name");
  field.step = Fields::tr("Rename %1").arg(QString::fromStdString(id));
  field.get = [id](const plan::Job& job) -> Value {
    const plan::Element* element = job.find(id);
    return element ? Value(element->name) : Value{};
  };
  field.set = [id](const plan::Job& job, const Value& value) {
    const plan::Element* element = job.find(id);
    if (!element) return job;
    plan::Element after = *element;
    take(after.name, value);
    return plan::with(job, std::move(after));
  };
  return field;
}

std::vector<Field> fields_of_job() {
  Field units = as_words(heading("units", Fields::tr("Units"), [](auto& h) { return &h.units; }),
                         {{"us", Fields::tr("Feet and inches")}, {"metric", Fields::tr("Metres")}});
  units.by_order = true;  // of an enumeration
  Field notes = heading("notes", Fields::tr("Notes"), [](auto& h) { return &h.notes; });
  notes.editor = Editor::long_text;
  return {heading("name", Fields::tr("Name"), [](auto& h) { return &h.name; }),
          heading("customer", Fields::tr("Customer"), [](auto& h) { return &h.customer; }),
          heading("place", Fields::tr("Place"), [](auto& h) { return &h.place; }),
          std::move(units),
          heading("currency", Fields::tr("Currency"), [](auto& h) { return &h.currency; }),
          std::move(notes)};
}

std::vector<Field> fields_of(const plan::Job& job, const plan::ElementId& id, Page page) {
  const plan::Element* element = job.find(id);
  if (!element) return {};
  if (const auto* area = std::get_if<plan::PavedArea>(&element->kind)) {
    if (page == Page::pattern) return area_pattern(job, id, *area);
    return page == Page::levels ? area_levels(job, id, *area) : area_build_up(job, id, *area);
  }
  if (page != Page::build_up) return {};
  if (const auto* pool = std::get_if<plan::Pool>(&element->kind)) return pool_fields(id, *pool);
  if (const auto* wall = std::get_if<plan::Wall>(&element->kind)) return wall_fields(job, id, *wall);
  if (const auto* steps = std::get_if<plan::Steps>(&element->kind)) return steps_fields(job, id, *steps);
  if (const auto* run = std::get_if<plan::EdgeRun>(&element->kind)) return edge_run_fields(id, *run);
  if (const auto* run = std::get_if<plan::DrainRun>(&element->kind)) return drain_run_fields(job, id, *run);
  return site_fields(job, *element);
}

}  // namespace ui
