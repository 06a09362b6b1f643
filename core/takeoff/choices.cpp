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
const Kinds blocks{"wall-block", "seat-block", "pillar-block"};
const Kinds caps{"cap", "coping", "pillar-cap", "tread"};
const Kinds treads{"step-unit", "tread", "coping", "slab"};
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
  void base(const plan::Id& id, const std::string& use, const std::string& what) {
    const catalogue::BuildUp* build_up = job.catalogue->build_up(id);
    if (id.empty() || (build_up && build_up->use == use)) return;
    say("build-up-use",
        build_up ? "the build-up '" + id + "' is for " + build_up->use + " and can't lie under " + what
                 : "the build-up '" + id + "', chosen under " + what + ", is not in the catalogue",
        "choose one for " + use);
  }
  void operator()(const plan::Wall& wall) {
    for (const plan::Id& id : {wall.block, wall.curve_block, wall.half_block, wall.corner_block, wall.end_block})
      kind(id, blocks, "a block of a wall");
    for (const plan::Id& id : {wall.cap, wall.curve_cap}) kind(id, caps, "a cap");
    kind(wall.adhesive, {"adhesive"}, "the adhesive");
    if (wall.stone) {
      for (const plan::Id& id : {wall.stone->core, wall.stone->drain, wall.stone->fill})
        kind(id, {"aggregate"}, "stone in or behind a wall");
      kind(wall.stone->fabric, {"fabric"}, "fabric behind a wall");
      base(wall.stone->build_up, "wall-base", "a wall");
    }
    if (wall.pipe) kind(wall.pipe->item, {"pipe"}, "the pipe behind a wall");
    for (const plan::Reinforcement& layer : wall.layers)
      kind(layer.item, {"reinforcement"}, "a layer of reinforcement");
  }
  void operator()(const plan::Steps& steps) {
    kind(steps.unit, treads, "a step");
    kind(steps.riser_block, blocks, "a riser");
    kind(steps.adhesive, {"adhesive"}, "the adhesive");
    base(steps.build_up, "steps", "steps");
    if (steps.cheeks) kind(steps.cheeks->block, blocks, "a wall beside the steps");
    if (steps.cheeks) kind(steps.cheeks->cap, caps, "a cap");
  }
  void operator()(const plan::KeepOut& keep_out) {
    if (!keep_out.pillar) return;
    kind(keep_out.pillar->block, blocks, "a block of a pillar");
    kind(keep_out.pillar->cap, caps, "the cap of a pillar");
    base(keep_out.pillar->build_up, "wall-base", "a pillar");
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

// Shares that no earth has, and rain that falls upwards: nothing dug or drained can be right with them.
static std::vector<Problem> wrong_ground(const plan::Choices& choices) {
  const plan::Soil& soil = choices.soil;
  const auto share = [](double value) { return value >= 0 && value <= 1; };
  const std::pair<bool, const char*> rules[] = {
      {soil.swell >= 0 && soil.swell <= 2, "its swell is not between 0 and 2 (0.25 is 25 %)"},
      {soil.compacted > 0 && soil.compacted <= 1.5, "its compacted volume for bank volume is not between 0 and 1.5"},
      {soil.bank_density_kg_m3 > 0, "its density is not above 0"},
      {share(soil.reusable), "the share that may be placed again is not between 0 and 1"},
      {share(soil.topsoil_back), "the share of topsoil that is spread again is not between 0 and 1"},
      {soil.topsoil >= units::Length(), "the depth of its topsoil is below 0"},
      {soil.stands == "A" || soil.stands == "B" || soil.stands == "C", "how its cut faces stand is not A, B or C"},
      {choices.rain_mm_h >= 0, "the rain intensity is below 0"}};
  std::vector<Problem> found;
  for (const auto& [good, what] : rules)
    if (!good)
      found.push_back({problem::Severity::problem,
                       "soil-choice",
                       std::string("the soil of the job can't be right: ") + what,
                       "correct it among the job's choices",
                       {}});
  return found;
}

std::vector<Problem> wrong_choices(const plan::Job& job) {
  Checker checker{job, {}, {}};
  checker.kind(job.choices.truck, {"truck"}, "the truck that hauls");
  checker.kind(job.choices.disposal, {"disposal"}, "a disposal fee");
  checker.kind(job.choices.saw, {"saw"}, "the saw");
  for (Problem& said : wrong_ground(job.choices)) checker.found.push_back(std::move(said));
  return std::move(checker.found);
}

}  // namespace takeoff
