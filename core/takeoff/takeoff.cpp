#include "takeoff/takeoff.h"

#include <algorithm>

#include "takeoff/choices.h"
#include "takeoff/edges/edges.h"
#include "takeoff/edges/movement.h"
#include "takeoff/ground/earth.h"
#include "takeoff/levels/levels.h"
#include "takeoff/measures.h"
#include "takeoff/paving/area.h"
#include "takeoff/there/there.h"
#include "takeoff/walls/saw.h"
#include "takeoff/walls/walls.h"
#include "takeoff/water/water.h"

namespace takeoff {

namespace {

// Gathers what the trades say, element by element and then of the whole site.
class Gatherer {
 public:
  explicit Gatherer(const plan::Job& job) : job_(job) {}

  void of_element(const plan::Ground& ground, Share share) {
    measures_of(ground.element->id);  // in the order of the elements, those without a measure too
    share.measures.element = ground.element->id;
    of_site(std::move(share));
  }

  // Of the site as a whole; measures go to the element that they name.
  void of_site(Share share) {
    measured(std::move(share.measures));
    share.measures = {};
    whole_.add(std::move(share));
  }

  void measured(Measures found) {
    if (found.element.empty() || found.values.empty()) return;
    Measures& own = measures_of(found.element);
    for (auto& value : found.values) own.values.push_back(std::move(value));
  }

  void kept(paving::LaidArea area) {
    if (area.layout) taken_.layouts.emplace(area.ground->element->id, area.layout);
    areas_.push_back(std::move(area));
  }

  const std::vector<Cut>& cuts() const { return whole_.cuts; }

  std::vector<const paving::LaidArea*> areas() const {
    std::vector<const paving::LaidArea*> all;
    for (const paving::LaidArea& area : areas_) all.push_back(&area);
    return all;
  }

  Takeoff finish(std::vector<problem::Problem> site_problems) {
    taken_.problems = std::move(site_problems);
    for (problem::Problem& said : whole_.problems) taken_.problems.push_back(std::move(said));
    std::ranges::stable_sort(taken_.problems, [](const auto& a, const auto& b) { return a.severity > b.severity; });
    taken_.lines = std::move(whole_.lines);
    for (Line& line : taken_.lines) line.stage = moved(line);
    std::ranges::stable_sort(taken_.lines, {}, &Line::stage);
    taken_.tasks = std::move(whole_.tasks);
    std::ranges::stable_sort(taken_.tasks, {}, &Task::stage);
    taken_.checks = std::move(whole_.checks);
    taken_.cuts = std::move(whole_.cuts);
    whole_.facts.push_back("always");
    taken_.stages = stage_notes(*job_.catalogue, {std::move(whole_.facts)});
    return std::move(taken_);
  }

 private:
  Measures& measures_of(const plan::ElementId& id) {
    const auto [known, is_new] = number_of_.emplace(id, taken_.measures.size());
    if (is_new) taken_.measures.push_back({id, {}});
    return taken_.measures[known->second];
  }

  Stage moved(const Line& line) const {
    for (const plan::StageMove& move : job_.stage_moves)
      if (move.item == line.item) return stage_of(move.stage).value_or(line.stage);
    return line.stage;
  }

  const plan::Job& job_;
  Takeoff taken_;
  std::map<plan::ElementId, std::size_t> number_of_;  // in taken_.measures
  Share whole_;
  std::vector<paving::LaidArea> areas_;
};

// What hold points and cautions ask of the plan itself; the trades add what they find.
std::vector<std::string> facts_of(const plan::Kind& kind) {
  struct Facts {
    using Words = std::vector<std::string>;
    Words operator()(const plan::PavedArea& area) const { return area.vehicles ? Words{"vehicles"} : Words{}; }
    Words operator()(const plan::Pool&) const { return {"pool"}; }
    Words operator()(const plan::Wall& wall) const {
      if (wall.existing) return {};
      Words words{"wall"};
      if (!wall.free_standing) words.push_back("retaining");
      if (!wall.layers.empty()) words.push_back("reinforcement");
      return words;
    }
    Words operator()(const plan::Steps&) const { return {"steps"}; }
    Words operator()(const plan::Building&) const { return {"building"}; }
    Words operator()(const plan::KeepOut& out) const {
      if (out.pillar) return {"pillar"};
      return out.what == "tree" ? Words{"tree"} : Words{};
    }
    Words operator()(const plan::EdgeRun& run) const { return run.what == "kerb" ? Words{"kerb"} : Words{}; }
    Words operator()(const plan::DrainRun& run) const { return {run.what}; }  // pipe, channel, sleeve
    Words operator()(const plan::Level&) const { return {}; }
    Words operator()(const plan::Feature&) const { return {}; }
    Words operator()(const plan::Removal& gone) const { return gone.fate == "leave" ? Words{} : Words{"removal"}; }
    Words operator()(const plan::SiteMark& mark) const { return {mark.what}; }
    Words operator()(const plan::Protection&) const { return {"protection"}; }
    Words operator()(const plan::Note&) const { return {}; }
    Words operator()(const plan::Dimension&) const { return {}; }
    Words operator()(const plan::SitePlan&) const { return {}; }
    Words operator()(const plan::LevelBook&) const { return {}; }
    Words operator()(const plan::BaseLine&) const { return {}; }
    Words operator()(const plan::TapeBook&) const { return {}; }
  };
  return std::visit(Facts{}, kind);
}

// Those of the walls that are still there are kept for the next time, the others dropped.
void ask_for_wall(const plan::Job& job, const plan::Site& site, const plan::Ground& ground, const Memory& before,
                  Memory& now, Gatherer& all) {
  const auto known = before.courses.find(ground.element->id);
  std::shared_ptr<const walls::Courses> laid = known == before.courses.end() ? nullptr : known->second;
  all.of_element(ground, walls::wall(job, site, ground, laid));
  if (laid) now.courses[ground.element->id] = std::move(laid);
}

void ask_trades(const plan::Job& job, const plan::Site& site, const levels::Terrain& terrain,
                const plan::Ground& ground, Gatherer& all) {
  const plan::Kind& kind = ground.element->kind;
  Share own = measures(ground);
  own.facts = facts_of(kind);
  for (problem::Problem& said : wrong_choices(job, ground)) own.problems.push_back(std::move(said));
  all.of_element(ground, std::move(own));
  if (std::holds_alternative<plan::PavedArea>(kind) && !ground.net.empty()) {
    paving::LaidArea area = paving::lay_area(job, site, ground);
    all.of_element(ground, paving::paving(job, area));
    all.of_element(ground, edges::joints(job, site, area));
    all.of_element(ground, edges::movement(job, area));
    all.kept(std::move(area));
  }
  if (std::holds_alternative<plan::Pool>(kind) && !ground.drawn.empty())
    all.of_element(ground, edges::coping(job, site, ground));
  all.of_element(ground, there::removal(job, site, ground, terrain));
  all.of_element(ground, there::protection(job, ground));
  all.of_element(ground, water::feature(job, ground));
  all.of_element(ground, walls::steps(job, site, ground));
  all.of_element(ground, walls::pillar(job, ground));
  if (const auto* run = std::get_if<plan::EdgeRun>(&kind); run && ground.path) {
    all.of_element(ground, run->what == "kerb" ? edges::kerb(job, site, ground) : edges::restraint(job, site, ground));
  }
}

// Heights, earth and water: what no element can say by itself.
void ask_of_the_ground(const plan::Job& job, const plan::Site& site, const levels::Terrain& terrain, Gatherer& all) {
  const ground::Bodies bodies = ground::bodies(job, site);
  for (auto& [id, share] : levels::falls(job, site, terrain)) all.of_site(std::move(share));
  for (auto& [id, share] : water::runs(job, site, terrain)) all.of_site(std::move(share));
  ground::Excavation dug = ground::dig(job, site, bodies, terrain);
  for (Measures& measured : dug.measures) all.measured(std::move(measured));
  all.of_site(std::move(dug.share));
  all.of_site(ground::haul(job, dug.dug));
  all.of_site(there::haul_removed(job, site));
  all.of_site(ground::layers(job, site, bodies));
  all.of_site(ground::fabric(job, site, bodies));
  all.of_site(ground::way_out(job, site, bodies, terrain));
  for (auto& [id, share] : water::runoff(job, site, bodies, terrain)) all.of_site(std::move(share));
  for (Share& share : there::marks(job, site, bodies, terrain)) all.of_site(std::move(share));
  all.of_site(there::dangers(job, site, bodies, terrain));
}

}  // namespace

Takeoff takeoff(const plan::Job& job, const plan::Site& site) {
  Memory none;
  return takeoff(job, site, none);
}

Takeoff takeoff(const plan::Job& job, const plan::Site& site, Memory& memory) {
  Gatherer all(job);
  Memory now;
  const levels::Terrain terrain = levels::terrain(job, site);
  for (const auto& ground : site.grounds) {
    ask_trades(job, site, terrain, *ground, all);
    if (std::holds_alternative<plan::Wall>(ground->element->kind)) ask_for_wall(job, site, *ground, memory, now, all);
  }
  memory = std::move(now);
  Share whole;
  whole.problems = wrong_choices(job);
  for (const problem::Problem& said : terrain.problems) whole.problems.push_back(said);
  all.of_site(std::move(whole));
  all.of_site(paving::saved_between_areas(job, all.areas()));
  ask_of_the_ground(job, site, terrain, all);
  all.of_site(walls::saw_list(job, all.cuts()));
  return all.finish(site.problems);
}

}  // namespace takeoff
