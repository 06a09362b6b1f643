#include <algorithm>

#include "takeoff/levels/judged.h"
#include "takeoff/levels/levels.h"

namespace takeoff::levels {

namespace {

using Pairs = std::set<std::pair<plan::ElementId, plan::ElementId>>;

std::optional<Area> area_of(const plan::Ground& ground, const Terrain& terrain) {
  const auto surface = terrain.finished.find(ground.element->id);
  if (surface == terrain.finished.end() || surface->second->empty()) return {};
  return area(ground, surface->second);
}

Judged judged(const Look& look, const Area& area, Pairs& pairs) {
  Judged made;
  made.says.assign(area.surface->facets().size(), "good");
  look_towards(look, area, made);
  look_at_falls(look, area, made);
  look_for_lows(look, area, made);
  look_at_lips(look, area, pairs, made);
  look_at_house(look, area, made);
  look_at_slabs(look, area, made);
  return made;
}

}  // namespace

std::map<plan::ElementId, Share> falls(const plan::Job& job, const plan::Site& site, const Terrain& terrain) {
  const Inlets inlets(site);
  const Look look{job, site, terrain, inlets};
  std::map<plan::ElementId, Share> all;
  Pairs pairs;
  for (const auto& ground : site.grounds) {
    const plan::ElementId& id = ground->element->id;
    if (const auto area = area_of(*ground, terrain)) all[id] = judged(look, *area, pairs).share;
    if (std::holds_alternative<plan::Pool>(ground->element->kind)) look_at_pool(look, *ground, all[id]);
    if (std::holds_alternative<plan::Wall>(ground->element->kind)) look_at_wall(look, *ground, all[id]);
  }
  for (auto& [id, share] : all) share.measures.element = id;
  return all;
}

std::vector<FallPatch> fall_plan(const plan::Job& job, const plan::Site& site, const Terrain& terrain) {
  const Inlets inlets(site);
  const Look look{job, site, terrain, inlets};
  std::vector<FallPatch> patches;
  for (const auto& ground : site.grounds) {
    const auto area = area_of(*ground, terrain);
    if (!area) continue;
    Judged made;
    made.says.assign(area->surface->facets().size(), "good");
    look_towards(look, *area, made);
    look_at_falls(look, *area, made);
    for (std::size_t i = 0; i < made.says.size(); ++i) {
      const geometry::Facet& facet = area->surface->facets()[i];
      FallPatch patch{
          ground->element->id, {}, facet.plane.fall(), std::atan2(-facet.plane.gy, -facet.plane.gx), made.says[i]};
      for (const geometry::Vec corner : facet.ring) patch.ring.push_back(area->surface->point(corner));
      patches.push_back(std::move(patch));
    }
  }
  return patches;
}

}  // namespace takeoff::levels
