#include "takeoff/there/subjects.h"

#include <algorithm>

namespace takeoff::there {

namespace {

using Words = std::set<std::string>;

bool open_below(const ground::Bodies& bodies, const plan::ElementId& id) {
  return std::ranges::any_of(bodies.bodies, [&id](const ground::Body& body) {
    return body.open && std::ranges::find(body.of, id) != body.of.end();
  });
}

bool dug_below(const ground::Bodies& bodies, const plan::ElementId& id) {
  return std::ranges::any_of(bodies.bodies, [&id](const ground::Body& body) {
    return body.thickness > 0 && std::ranges::find(body.of, id) != body.of.end();
  });
}

// The words of an element itself; none: no rule looks at it.
struct WordsOf {
  const plan::Job& job;
  const ground::Bodies& bodies;
  const plan::ElementId& id;

  Words operator()(const plan::PavedArea&) const {
    Words words{"paving"};
    if (!open_below(bodies, id)) words.insert("sealed");
    if (!dug_below(bodies, id)) words.insert("any");  // else its dig stands for it
    return words;
  }
  Words operator()(const plan::Wall& wall) const {
    return wall.existing ? Words{} : Words{"dig", "wall", "structure", "any"};
  }
  Words operator()(const plan::Steps&) const { return {"dig", "steps", "stand", "structure", "any"}; }
  Words operator()(const plan::KeepOut& out) const {
    if (out.pillar) return {"dig", "structure", "stand", "any"};
    return out.what == "planter" ? Words{"stand"} : Words{};
  }
  Words operator()(const plan::EdgeRun& run) const { return run.footing ? Words{"dig", "any"} : Words{"any"}; }
  Words operator()(const plan::DrainRun&) const { return {"dig", "any"}; }
  Words operator()(const plan::Feature& feature) const {
    const catalogue::Item* item = job.catalogue->item(feature.item);
    const bool boulder = feature.item.find("boulder") != std::string::npos || (item && item->kind == "boulder");
    return boulder ? Words{"stand", "any"} : Words{"any"};
  }
  Words operator()(const plan::Removal& removal) const {
    return removal.fate == "leave" ? Words{} : Words{"dig", "any"};
  }
  Words operator()(const plan::SiteMark& mark) const { return {mark.what}; }
  Words operator()(const plan::Pool&) const { return {}; }
  Words operator()(const plan::Building&) const { return {}; }
  Words operator()(const plan::Level&) const { return {}; }
  Words operator()(const plan::Protection&) const { return {}; }
  Words operator()(const plan::Note&) const { return {}; }
  Words operator()(const plan::Dimension&) const { return {}; }
  Words operator()(const plan::SitePlan&) const { return {}; }
  Words operator()(const plan::LevelBook&) const { return {}; }
  Words operator()(const plan::BaseLine&) const { return {}; }
  Words operator()(const plan::TapeBook&) const { return {}; }
};

void add_element(const plan::Job& job, const plan::Ground& ground, const ground::Bodies& bodies,
                 std::vector<Subject>& all) {
  Subject made;
  made.of = {ground.element->id};
  made.words = std::visit(WordsOf{job, bodies, ground.element->id}, ground.element->kind);
  if (made.words.empty() || !ground.computed) return;
  const bool mark = std::holds_alternative<plan::SiteMark>(ground.element->kind);
  const bool removal = std::holds_alternative<plan::Removal>(ground.element->kind);
  made.region = mark || removal ? ground.drawn : ground.net;
  if (made.region.empty() && ground.path) made.curves = curves(*ground.path);
  if (mark) made.points = std::get<plan::SiteMark>(ground.element->kind).points;
  if (const auto* feature = std::get_if<plan::Feature>(&ground.element->kind)) made.points = {feature->at};
  all.push_back(std::move(made));
}

void add_body(const plan::Job& job, const ground::Body& body, bool lowest, std::vector<Subject>& all) {
  Subject made;
  made.of = body.of;
  made.region = body.footprint;
  if (lowest) made.words = {"dig", "any"}, made.depth = body.top + body.thickness;
  if (body.layer.role == "base" || body.layer.role == "sub-base") {
    made.words.insert("base");
    if (body.open && job.choices.infiltration_counts) made.words.insert("infiltrates");
  }
  if (!made.words.empty()) all.push_back(std::move(made));
}

}  // namespace

std::vector<const ground::Body*> lowest(const ground::Bodies& bodies) {
  std::vector<const ground::Body*> found;
  for (const ground::Body& body : bodies.bodies) {
    if (body.thickness <= 0 || body.layer.role == "fabric") continue;
    const bool something_below = std::ranges::any_of(bodies.bodies, [&body](const ground::Body& other) {
      return other.group == body.group && other.thickness > 0 && other.layer.role != "fabric" && other.top > body.top;
    });
    if (!something_below) found.push_back(&body);
  }
  return found;
}

std::vector<Subject> subjects(const plan::Job& job, const plan::Site& site, const ground::Bodies& bodies) {
  std::vector<Subject> all;
  const auto deepest = lowest(bodies);
  for (const ground::Body& body : bodies.bodies)
    if (body.thickness > 0 && body.layer.role != "fabric")
      add_body(job, body, std::ranges::find(deepest, &body) != deepest.end(), all);
  for (const auto& ground : site.grounds) add_element(job, *ground, bodies, all);
  return all;
}

}  // namespace takeoff::there
