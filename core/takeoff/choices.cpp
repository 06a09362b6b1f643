#include "takeoff/choices.h"

#include <algorithm>
#include <string_view>

namespace takeoff {

using problem::Problem;
using problem::Severity;

namespace {

using Kinds = std::vector<std::string_view>;
const Kinds laid{"paving-unit", "slab", "permeable-unit", "clay-unit"};
const Kinds fillers{"joint-sand", "joint-chips", "aggregate", "concrete"};
const Kinds copings{"coping", "slab", "cap", "tread"};
const Kinds kerbs{"kerb-unit", "edging-unit"};
const Kinds restraints{"restraint", "edging-unit", "kerb-unit"};

struct Checker {
  const plan::Job& job;
  plan::ElementId of;
  std::vector<Problem> found;

  void say(std::string code, std::string text, std::string mend) {
    found.push_back({Severity::problem, std::move(code), std::move(text), std::move(mend), {of, "", 0, 0, {}}});
  }

  void kind(const plan::Id& id, const Kinds& allowed, const std::string& what) {
    const catalogue::Item* item = job.catalogue->item(id);
    if (!item || std::ranges::find(allowed, item->kind) != allowed.end()) return;
    say("item-kind", "'" + id + "' is of kind " + item->kind + " and can't be " + what, "choose an item that can");
  }

  void edges(const plan::PavedArea& area) {
    std::size_t count = 0;
    for (const plan::DrawnRing& ring : area.outline)
      count += ring.through.empty() ? ring.edges.size() : ring.through.size();
    for (const plan::EdgeChoice& choice : area.edges) {
      if (choice.edge < 0 || static_cast<std::size_t>(choice.edge) >= count)
        say("edge-choice",
            "a junction is chosen for edge " + std::to_string(choice.edge) + ", and the drawing has " +
                std::to_string(count) + " edges, counted from 0",
            "name an edge that it has");
      const auto known = [&choice](const catalogue::Junction& row) { return row.id == choice.junction; };
      if (choice.junction != "none" && std::ranges::none_of(job.catalogue->junctions, known))
        say("edge-choice", "the junction table has no '" + choice.junction + "'", "choose a row that it has, or none");
    }
  }

  void operator()(const plan::PavedArea& area) {
    if (area.laying)
      for (const auto& [size, id] : area.laying->units) kind(id, laid, "laid as paving");
    for (const plan::BorderCourse& course : area.borders) kind(course.item, laid, "a border course");
    for (const plan::JointFill& fill : area.joint_fill) kind(fill.item, fillers, "joint filler");
    edges(area);
    if (!area.taped_area_m2) return;
    if (!(*area.taped_area_m2 > 0))
      say("taped-area", "the area taped on site is not above 0", "tape it again, or take the correction out");
    else
      found.push_back({Severity::notice,
                       "taped-area",
                       "units, layers and digging go by the area taped on site",
                       "edges, joints and borders go by the drawing: correct that too if it is far off",
                       {of, "", 0, 0, {}}});
  }
  void operator()(const plan::Pool& pool) {
    if (pool.coping) kind(pool.coping->item, copings, "coping");
    if (pool.surround) kind(pool.surround->item, {"aggregate"}, "stone round the shell");
    if (pool.collar) kind(pool.collar->concrete, {"concrete"}, "the collar");
  }
  void operator()(const plan::EdgeRun& run) {
    kind(run.item, run.what == "kerb" ? kerbs : restraints, "a " + run.what);
    if (run.footing) kind(run.footing->concrete, {"concrete"}, "a footing");
    if (run.spikes) kind(run.spikes->item, {"spike"}, "a spike");
    if (run.weeps) kind(run.weeps->item, {"weep"}, "a weep");
  }
  template <class Other>
  void operator()(const Other&) {}
};

}  // namespace

std::vector<Problem> wrong_choices(const plan::Job& job, const plan::Ground& ground) {
  Checker checker{job, ground.element->id, {}};
  std::visit(checker, ground.element->kind);
  return std::move(checker.found);
}

std::vector<Problem> wrong_choices(const plan::Job& job) {
  Checker checker{job, {}, {}};
  checker.kind(job.choices.truck, {"truck"}, "the truck that hauls");
  checker.kind(job.choices.disposal, {"disposal"}, "a disposal fee");
  return std::move(checker.found);
}

}  // namespace takeoff
