#include <algorithm>
#include <array>

#include "geometry/offset.h"
#include "geometry/overlay.h"
#include "plan/along.h"
#include "takeoff/ground/ground.h"

namespace takeoff::ground {

using geometry::Region;
using plan::Meets;
using units::Length;

namespace {

const plan::PavedArea* paved(const plan::Ground& ground) {
  return std::get_if<plan::PavedArea>(&ground.element->kind);
}

// How far the layer reaches past this stretch: its own extra at a soft edge; under a kerb and its extra past it, and never
// short of the outside of the kerb's footing; nothing against what stands or is paved.
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
      const Length footing = run && run->footing ? Length::of_steps((kerb + run->footing->width).steps() / 2) : Length();
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

// Which areas touch: they meet each other at a stretch. Numbers of groups, by the first area's place.
std::vector<std::vector<const plan::Ground*>> touching(const std::vector<const plan::Ground*>& areas) {
  std::vector<std::vector<const plan::Ground*>> groups;
  for (const plan::Ground* area : areas) {
    const auto meets = [&](const std::vector<const plan::Ground*>& group) {
      return std::ranges::any_of(group, [&](const plan::Ground* member) {
        const auto faces = [](const plan::Ground& a, const plan::Ground& b) {
          return std::ranges::any_of(a.stretches, [&](const auto& s) { return s.other == b.element->id; });
        };
        return faces(*member, *area) || faces(*area, *member);
      });
    };
    std::vector<const plan::Ground*> joined;
    std::vector<std::vector<const plan::Ground*>> rest;
    for (auto& group : groups) {
      if (!meets(group)) {
        rest.push_back(std::move(group));
        continue;
      }
      joined.insert(joined.end(), group.begin(), group.end());
    }
    joined.push_back(area);
    rest.push_back(std::move(joined));
    groups = std::move(rest);
  }
  return groups;
}

// What a layer never reaches into.
std::vector<Region> solids(const plan::Site& site, const std::vector<const plan::Ground*>& own) {
  std::vector<Region> found;
  for (const auto& ground : site.grounds) {
    const int rank = plan::rank(ground->element->kind);
    const bool kerb_or_drain = std::holds_alternative<plan::EdgeRun>(ground->element->kind) ||
                               std::holds_alternative<plan::DrainRun>(ground->element->kind);
    if (rank == 0 || kerb_or_drain || ground->net.empty()) continue;
    if (std::ranges::find(own, ground.get()) != own.end()) continue;
    found.push_back(ground->net);
  }
  return found;
}

struct Maker {
  const plan::Job& job;
  const plan::Site& site;
  Bodies made;

  void of_group(const catalogue::BuildUp& build_up, const std::vector<const plan::Ground*>& group) {
    std::vector<Region> nets;
    for (const plan::Ground* ground : group) nets.push_back(ground->net);
    auto net = geometry::unite(nets);
    if (!net) return fail(net.error(), group);
    double top = 0;
    for (const catalogue::Layer& layer : build_up.layers) {
      if (layer.role == "unit") {
        top += unit_height(*group.front(), layer);
        continue;
      }
      Body body;
      for (const plan::Ground* ground : group) body.of.push_back(ground->element->id);
      body.build_up = build_up.id;
      body.layer = layer;
      body.net = *net;
      body.top = top;
      body.thickness = layer.thickness ? layer.thickness->metres().si() : 0;
      const catalogue::Item* item = job.catalogue->item(layer.item);
      body.open = item && catalogue::open_graded(*item);
      auto footprint = reach(*net, layer, group);
      if (!footprint) return fail(footprint.error(), group);
      body.footprint = std::move(*footprint);
      top += body.thickness;
      made.bodies.push_back(std::move(body));
    }
  }

  // The unit layer of the build-up stands for whatever unit the area has.
  double unit_height(const plan::Ground& ground, const catalogue::Layer& layer) const {
    const plan::PavedArea* area = paved(ground);
    if (area && area->laying)
      for (const auto& [size, id] : area->laying->units)
        if (const catalogue::Item* unit = job.catalogue->item(id); unit && unit->height)
          return unit->height->metres().si();
    return layer.thickness ? layer.thickness->metres().si() : 0;
  }

  problem::Result<Region> reach(const Region& net, const catalogue::Layer& layer,
                                const std::vector<const plan::Ground*>& group) const {
    std::vector<Region> parts{net};
    for (const plan::Ground* ground : group) {
      const auto paths = plan::along(*ground, [&](const plan::Stretch& stretch) {
        const Length out = past(job, site, layer, stretch);
        return out > Length() ? static_cast<int>(out.steps()) : -1;
      });
      for (const plan::Along& along : paths) {
        auto band = geometry::band(along.path, Length::of_steps(along.group), geometry::Side::right, 2);
        if (!band) return std::unexpected(band.error());
        parts.push_back(std::move(*band));
      }
    }
    if (parts.size() == 1) return net;
    const auto wide = geometry::unite(parts);
    if (!wide) return std::unexpected(wide.error());
    return geometry::subtract(*wide, solids(site, group));
  }

  void fail(const problem::Problem& fault, const std::vector<const plan::Ground*>& group) {
    made.problems.push_back(problem::in_element(fault, group.front()->element->id));
  }
};

// Where the footprints of two build-ups meet past their edges, the deeper one has the ground: its dig and its stone.
void share_ground(Bodies& all) {
  for (Body& body : all.bodies) {
    std::vector<Region> deeper;
    for (const Body& other : all.bodies) {
      if (other.build_up == body.build_up || other.layer.role == "fabric" || body.layer.role == "fabric") continue;
      if (other.top + other.thickness > body.top + body.thickness && other.thickness > 0 &&
          other.layer.past_edge > Length() && body.layer.past_edge > Length())
        deeper.push_back(other.footprint);
    }
    if (deeper.empty()) continue;
    std::vector<Region> own_kept;
    const auto less = geometry::subtract(body.footprint, deeper);
    if (!less) {
      all.problems.push_back(problem::in_element(less.error(), body.of.front()));
      continue;
    }
    own_kept = {*less, body.net};  // never less than under the paving itself
    if (auto kept = geometry::unite(own_kept)) body.footprint = std::move(*kept);
  }
}

}  // namespace

Bodies bodies(const plan::Job& job, const plan::Site& site) {
  Maker maker{job, site, {}};
  std::vector<plan::Id> in_use;
  for (const auto& ground : site.grounds)
    if (const auto* area = paved(*ground); area && !area->build_up.empty() && !ground->net.empty())
      if (std::ranges::find(in_use, area->build_up) == in_use.end()) in_use.push_back(area->build_up);
  for (const plan::Id& id : in_use) {
    std::vector<const plan::Ground*> areas;
    for (const auto& ground : site.grounds)
      if (const auto* area = paved(*ground); area && area->build_up == id && !ground->net.empty())
        areas.push_back(ground.get());
    const catalogue::BuildUp* build_up = job.catalogue->build_up(id);
    if (!build_up) {
      maker.made.problems.push_back({problem::Severity::problem, "build-up-unknown",
                                     "the job's catalogue has no build-up '" + id + "'",
                                     "choose one that it has, or copy it in",
                                     {areas.front()->element->id, "", 0, 0, {}}});
      continue;
    }
    for (const auto& group : touching(areas)) maker.of_group(*build_up, group);
  }
  share_ground(maker.made);
  return std::move(maker.made);
}

}  // namespace takeoff::ground
