#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/overlay.h"
#include "takeoff/edges/notes.h"
#include "takeoff/there/kinds.h"
#include "takeoff/there/overlay.h"
#include "takeoff/there/shapes.h"
#include "takeoff/there/there.h"

namespace takeoff::there {

namespace {

using geometry::Curve;
using geometry::Point;

// Slabs that stay, except the one itself.
std::vector<const plan::Ground*> staying(const plan::Site& site, const plan::Ground& but) {
  std::vector<const plan::Ground*> found;
  for (const auto& ground : site.grounds) {
    const auto* what = std::get_if<plan::Removal>(&ground->element->kind);
    if (what && what->fate == "leave" && sawn(what->what) && ground.get() != &but && !ground->drawn.empty())
      found.push_back(ground.get());
  }
  return found;
}

// Beside an edge of `other`, running along it within 20 degrees, no further than `reach`: as stretches meet.
bool runs_along(Point point, geometry::Vec direction, const std::vector<Curve>& other, double reach) {
  const double along = std::cos(20 * std::numbers::pi / 180);
  return std::ranges::any_of(other, [&](const Curve& edge) {
    const geometry::Nearest near = geometry::nearest(edge, point);
    return near.distance <= reach + 1e-9 && near.share > 0 && near.share < 1 &&
           std::abs(geometry::dot(edge.direction(near.share), direction)) >= along;
  });
}

void saw(const plan::Job& job, const plan::Site& site, const plan::Ground& ground, const Removed& removed,
         Share& share) {
  if (!sawn(removed.what->what) || ground.drawn.empty()) return;
  const auto slabs = staying(site, ground);
  if (slabs.empty())
    share.problems.push_back(
        edges::notice("removal-saw-cut", "no slab that stays is drawn, so no saw cut is counted",
                      "where it is cut out of a larger slab, draw that slab as a removal that stays", removed.id));
  const double reach = job.choices.reach.metres().si();
  std::vector<std::vector<Curve>> edges_of_slabs;
  for (const plan::Ground* slab : slabs) edges_of_slabs.push_back(curves(slab->drawn));
  const Stretches cut = where(curves(ground.drawn), [&](Point point, const Curve& own, double at) {
    for (std::size_t i = 0; i < slabs.size(); ++i) {
      // Where the two share their outer edge and lie on the same side of it, the slab ends there: nothing to saw.
      if (runs_along(point, own.direction(at), edges_of_slabs[i], reach)) {
        const geometry::Vec out = -(2 * reach * units::Length::steps_per_metre) * geometry::left_of(own.direction(at));
        if (slabs[i]->drawn.contains(geometry::moved(point, out))) return true;
      } else if (slabs[i]->drawn.contains(point)) {
        return true;
      }
    }
    return false;
  });
  share.measures.put("saw_cut_m", cut.length);
  const double depth = removed.what->thickness.metres().si();
  share.measures.put("saw_cut_m2", cut.length * depth);
  edges::add_task(job, "saw-slab", Stage::protect, "saw cut, full depth", removed.id,
                  Working::product({term("saw cut", cut.length, units::metre, removed.id),
                                    term("depth", depth, units::metre, removed.id)})
                      .named("face of the cut"),
                  share);
}

// By the rate's own unit: a stump by the piece, a wall by volume, sod by area.
void hours(const plan::Job& job, const Removed& removed, Share& share) {
  const plan::Id id = "remove-" + removed.what->what;
  const catalogue::Rate* rate = job.catalogue->rate(id);
  Working work = removed.volume;
  if (rate && rate->si_unit == "m2") work = removed.area;
  if (rate && rate->si_unit == "t") work = removed.weight;
  if (rate && rate->si_unit == "piece") work = term("one", 1, units::piece, removed.id);
  if (rate && rate->si_unit == "m" && removed.length) work = *removed.length;
  const std::size_t before = share.tasks.size();
  edges::add_task(job, id, Stage::protect, "take out " + removed.what->what, removed.id, work, share);
  if (share.tasks.size() == before || !removed.what->steel) return;
  share.tasks.back().factor = job.catalogue->number_limit("removal-steel", 1.5);
  share.tasks.back().condition = "steel in it";
}

void reuse(const plan::Job& job, const Removed& removed, Share& share) {
  const double back = removed.area.amount().value * (1 - removed.what->loss);
  share.measures.put("reuse_m2", back);
  share.problems.push_back(
      edges::notice("removal-reuse", shown_area(job, back) + " of " + removed.what->what + " is kept to be laid again",
                    "take it off the order where it is laid, and stack it off the dig", removed.id));
}

// What is taken out twice on paper.
void overlaps(const plan::Job& job, const plan::Site& site, const plan::Ground& ground, const Removed& removed,
              Share& share) {
  for (const auto& other : site.grounds) {
    if (other.get() == &ground) return;
    const auto* what = std::get_if<plan::Removal>(&other->element->kind);
    if (!what || what->what != removed.what->what || other->drawn.empty() || ground.drawn.empty()) continue;
    if (what->fate == "leave" || !geometry::overlap(other->drawn.bounds(), ground.drawn.bounds())) continue;
    const auto both = geometry::meet(other->drawn, ground.drawn);
    if (!both || both->area().si() < 1e-3) continue;
    share.problems.push_back(edges::flag(
        "removal-twice",
        shown_area(job, both->area().si()) + " is in " + called(*other->element) + " too and counts in both",
        "draw each piece once: the estimator decides", removed.id));
  }
}

// Of a slab that stays only what is not cut out of it.
plan::Ground left_of_it(const plan::Site& site, const plan::Ground& ground) {
  plan::Ground rest = ground;
  std::vector<geometry::Region> out;
  for (const auto& other : site.grounds) {
    const auto* what = std::get_if<plan::Removal>(&other->element->kind);
    if (what && what->fate != "leave" && sawn(what->what) && !other->drawn.empty() &&
        geometry::overlap(other->drawn.bounds(), ground.drawn.bounds()))
      out.push_back(other->drawn);
  }
  if (out.empty()) return rest;
  if (auto cut = geometry::subtract(ground.drawn, out)) rest.drawn = std::move(*cut);
  return rest;
}

}  // namespace

Share removal(const plan::Job& job, const plan::Site& site, const plan::Ground& ground,
              const levels::Terrain& terrain) {
  Share share;
  share.measures.element = ground.element->id;
  const auto* what = std::get_if<plan::Removal>(&ground.element->kind);
  if (!what) return share;
  const bool stays = what->fate == "leave";
  const plan::Ground measured_on = stays && !ground.drawn.empty() ? left_of_it(site, ground) : ground;
  const auto removed = measured(job, measured_on, share);
  if (!removed) return share;
  if (stays) {
    overlay(job, measured_on, *removed, terrain, share);
    return share;
  }
  share.facts.push_back("removal");
  share.measures.put("removal_area_m2", removed->area.amount().value);
  if (removed->length) share.measures.put("removal_length_m", removed->length->amount().value);
  share.measures.put("removal_m3", removed->volume.amount().value);
  share.measures.put("removal_kg", removed->weight.amount().value);
  overlaps(job, site, ground, *removed, share);
  saw(job, site, ground, *removed, share);
  hours(job, *removed, share);
  if (removed->what->fate == "reuse") reuse(job, *removed, share);
  return share;
}

}  // namespace takeoff::there
