#include <algorithm>
#include <array>
#include <map>
#include <numeric>
#include <optional>

#include "geometry/index.h"
#include "geometry/offset.h"
#include "geometry/overlay.h"
#include "plan/along.h"
#include "takeoff/ground/ground.h"

namespace takeoff::ground {

using geometry::Region;
using plan::Meets;
using units::Length;

namespace {

const plan::PavedArea* paved(const plan::Ground& ground) { return std::get_if<plan::PavedArea>(&ground.element->kind); }

// How far the layer reaches past this stretch: its own extra at a soft edge; under a kerb and its extra past it, and
// never short of the outside of the kerb's footing; nothing against what stands or is paved.
Length past(const plan::Job& job, const plan::Site& site, const catalogue::Layer& layer, const plan::Stretch& stretch) {
  if (layer.past_edge <= Length()) return {};
  switch (stretch.meets) {
    case Meets::planting:
    case Meets::restraint: return layer.past_edge;
    case Meets::kerb: {
      const plan::Ground* other = site.find(stretch.other);
      const auto* run = other ? std::get_if<plan::EdgeRun>(&other->element->kind) : nullptr;
      const catalogue::Item* item = run ? job.catalogue->item(run->item) : nullptr;
      const Length kerb = item && item->width ? *item->width : Length();
      const Length footing =
          run && run->footing ? Length::of_steps((kerb + run->footing->width).steps() / 2) : Length();
      return std::max(kerb + layer.past_edge, footing);
    }
    case Meets::coping:
    case Meets::building:
    case Meets::wall_face:
    case Meets::wall_back:
    case Meets::seat_wall:
    case Meets::paving:
    case Meets::steps:
    case Meets::pillar:
    case Meets::planter:
    case Meets::inlet:
    case Meets::channel:
    case Meets::water: return {};
  }
  return {};
}

// Areas that touch (they meet each other at a stretch) and are as deep as each other make one body: groups of them, in
// the order of their first areas.
using Group = std::vector<const plan::Ground*>;
std::vector<Group> touching(const Group& areas) {
  std::map<plan::ElementId, std::size_t> number;
  for (std::size_t i = 0; i < areas.size(); ++i) number.emplace(areas[i]->element->id, i);
  std::vector<std::size_t> leader(areas.size());
  std::iota(leader.begin(), leader.end(), 0);
  const auto first_of = [&leader](std::size_t i) {
    while (leader[i] != i) i = leader[i] = leader[leader[i]];
    return i;
  };
  for (std::size_t i = 0; i < areas.size(); ++i)
    for (const plan::Stretch& stretch : areas[i]->stretches)
      if (const auto other = number.find(stretch.other); other != number.end()) {
        const std::size_t a = first_of(i), b = first_of(other->second);
        leader[std::max(a, b)] = std::min(a, b);
      }
  std::map<std::size_t, Group> groups;
  for (std::size_t i = 0; i < areas.size(); ++i) groups[first_of(i)].push_back(areas[i]);
  std::vector<Group> all;
  for (auto& [first, group] : groups) all.push_back(std::move(group));
  return all;
}

// What a layer never reaches into, by place.
class Solids {
 public:
  explicit Solids(const plan::Site& site) {
    for (const auto& ground : site.grounds) {
      const bool kerb_or_drain = std::holds_alternative<plan::EdgeRun>(ground->element->kind) ||
                                 std::holds_alternative<plan::DrainRun>(ground->element->kind);
      if (plan::rank(ground->element->kind) > 0 && !kerb_or_drain && !ground->net.empty())
        grounds_.push_back(ground.get());
    }
    std::vector<geometry::Box> boxes;
    boxes.reserve(grounds_.size());
    for (const plan::Ground* ground : grounds_) boxes.push_back(ground->net.bounds());
    index_.emplace(boxes);
  }
  std::vector<Region> near(const Region& region, const Group& own) const {
    std::vector<Region> found;
    for (const std::uint32_t i : index_->touching(region.bounds()))
      if (std::ranges::find(own, grounds_[i]) == own.end()) found.push_back(grounds_[i]->net);
    return found;
  }

 private:
  Group grounds_;
  std::optional<geometry::Index> index_;
};

struct Maker {
  const plan::Job& job;
  const plan::Site& site;
  const Solids& solids;
  Bodies made;
  int groups = 0;

  void of_group(const catalogue::BuildUp& build_up, const Group& group) {
    std::vector<Region> nets;
    for (const plan::Ground* ground : group) nets.push_back(ground->net);
    auto net = geometry::unite(nets);
    if (!net) return fail(net.error(), group);
    double top = 0;
    ++groups;
    for (const catalogue::Layer& layer : build_up.layers) {
      if (layer.role == "unit") {
        top += unit_height(*group.front(), build_up);
        continue;
      }
      Body body;
      body.group = groups;
      for (const plan::Ground* ground : group) body.of.push_back(ground->element->id);
      body.build_up = build_up.id;
      body.layer = layer;
      body.net = *net;
      body.top = top;
      body.thickness = layer.thickness ? layer.thickness->metres().si() : 0;
      const catalogue::Item* item = job.catalogue->item(layer.item);
      body.open = item && catalogue::open_graded(*item);
      // Fabric lies under the base and is measured by its footprint (fabric.cpp).
      auto footprint = layer.role == "fabric" ? problem::Result<Region>(*net) : reach(*net, layer, group);
      if (!footprint) return fail(footprint.error(), group);
      body.footprint = std::move(*footprint);
      top += body.thickness;
      made.bodies.push_back(std::move(body));
    }
  }

  // The unit layer of the build-up stands for whatever unit the area has.
  double unit_height(const plan::Ground& ground, const catalogue::BuildUp& build_up) const {
    const plan::PavedArea* area = paved(ground);
    if (area && area->laying)
      for (const auto& [size, id] : area->laying->units)
        if (const catalogue::Item* unit = job.catalogue->item(id); unit && unit->height)
          return unit->height->metres().si();
    for (const catalogue::Layer& layer : build_up.layers)
      if (layer.role == "unit" && layer.thickness) return layer.thickness->metres().si();
    return 0;
  }

  problem::Result<Region> reach(const Region& net, const catalogue::Layer& layer, const Group& group) const {
    const auto wide = widened(net, layer, group);
    if (!wide || wide->area() <= net.area()) return wide;
    const std::vector<Region> in_the_way = solids.near(*wide, group);
    return in_the_way.empty() ? wide : geometry::subtract(*wide, in_the_way);
  }

  problem::Result<Region> widened(const Region& net, const catalogue::Layer& layer, const Group& group) const {
    const auto extra = [&](const plan::Stretch& stretch) { return past(job, site, layer, stretch); };
    if (group.size() == 1) {
      // Free all round by one width: the ring itself is moved.
      const auto& all = group.front()->stretches;
      const Length first = all.empty() ? Length() : extra(all.front());
      if (first > Length() && net.polygons().size() == 1 && net.polygons().front().holes.empty() &&
          std::ranges::all_of(all, [&](const plan::Stretch& s) { return extra(s) == first; }))
        return geometry::offset(net, first, geometry::Corner::mitred, 2);
    }
    std::vector<Region> parts{net};
    for (const plan::Ground* ground : group) {
      const auto paths = plan::along(*ground, [&](const plan::Stretch& stretch) {
        const Length out = extra(stretch);
        return out > Length() ? static_cast<int>(out.steps()) : -1;
      });
      for (const plan::Along& along : paths) {
        auto band = geometry::band(along.path, Length::of_steps(along.group), geometry::Side::right, 2);
        if (!band) return std::unexpected(band.error());
        parts.push_back(std::move(*band));
      }
    }
    return parts.size() == 1 ? problem::Result<Region>(net) : geometry::unite(parts);
  }

  void fail(const problem::Problem& fault, const Group& group) {
    made.problems.push_back(problem::in_element(fault, group.front()->element->id));
  }
};

// Where the footprints of two bodies meet past their edges, the deeper one has the ground, its dig and its stone; of
// equals the earlier. Nobody loses what lies under its own paving.
bool goes_before(const Body& a, std::size_t a_number, const Body& b, std::size_t b_number) {
  const double a_depth = a.top + a.thickness, b_depth = b.top + b.thickness;
  return a_depth > b_depth + 1e-9 || (a_depth > b_depth - 1e-9 && a_number < b_number);
}

void share_ground(Bodies& all) {
  std::vector<geometry::Box> boxes;
  boxes.reserve(all.bodies.size());
  for (const Body& body : all.bodies) boxes.push_back(body.footprint.bounds());
  const geometry::Index index(boxes);
  const auto reaches = [](const Body& body) {
    return body.thickness > 0 && body.layer.role != "fabric" && body.layer.past_edge > Length();
  };
  const std::vector<Body> before = all.bodies;
  for (std::size_t i = 0; i < before.size(); ++i) {
    if (!reaches(before[i])) continue;
    std::vector<Region> firsts;
    for (const std::uint32_t j : index.touching(boxes[i])) {
      const Body& other = before[j];
      if (other.group != before[i].group && reaches(other) && goes_before(other, j, before[i], i))
        firsts.push_back(other.footprint);
    }
    if (firsts.empty()) continue;
    const auto less = geometry::subtract(before[i].footprint, firsts);
    if (less && less->area() >= before[i].footprint.area()) continue;  // they only lie near
    const auto kept = less ? geometry::unite(std::array{*less, before[i].net}) : less;
    if (kept)
      all.bodies[i].footprint = *kept;
    else
      all.problems.push_back(problem::in_element(kept.error(), before[i].of.front()));
  }
}

}  // namespace

Bodies bodies(const plan::Job& job, const plan::Site& site) {
  const Solids solids(site);
  Maker maker{job, site, solids, {}, 0};
  // Areas of one build-up whose units are as high as each other are as deep as each other.
  std::vector<std::pair<plan::Id, std::map<double, Group>>> in_use;
  for (const auto& ground : site.grounds) {
    const auto* area = paved(*ground);
    if (!area || area->build_up.empty() || ground->net.empty()) continue;
    auto known = std::ranges::find(in_use, area->build_up, &std::pair<plan::Id, std::map<double, Group>>::first);
    if (known == in_use.end()) known = in_use.insert(in_use.end(), {area->build_up, {}});
    const catalogue::BuildUp* build_up = job.catalogue->build_up(area->build_up);
    known->second[build_up ? maker.unit_height(*ground, *build_up) : 0].push_back(ground.get());
  }
  for (const auto& [id, by_height] : in_use) {
    const catalogue::BuildUp* build_up = job.catalogue->build_up(id);
    for (const auto& [height, areas] : by_height) {
      if (build_up) {
        for (const Group& group : touching(areas)) maker.of_group(*build_up, group);
        continue;
      }
      maker.made.problems.push_back({problem::Severity::problem,
                                     "build-up-unknown",
                                     "the job's catalogue has no build-up '" + id + "'",
                                     "choose one that it has, or copy it in",
                                     {areas.front()->element->id, "", 0, 0, {}}});
    }
  }
  share_ground(maker.made);
  return std::move(maker.made);
}

}  // namespace takeoff::ground
