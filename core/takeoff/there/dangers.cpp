#include <algorithm>

#include "geometry/offset.h"
#include "geometry/overlay.h"
#include "takeoff/edges/notes.h"
#include "takeoff/there/drops.h"
#include "takeoff/there/trench.h"

namespace takeoff::there {

namespace {

// Fill in the ring that was dug for the shell settles for years.
void deck_on_backfill(const plan::Job& job, const plan::Site& site, const plan::Ground& ground, Share& share) {
  const auto* pool = std::get_if<plan::Pool>(&ground.element->kind);
  if (!pool || !pool->surround || pool->surround->clearance <= plan::Length() || ground.drawn.empty()) return;
  const auto dug = geometry::offset(ground.drawn, pool->shell + pool->surround->clearance, geometry::Corner::round);
  if (!dug) return;
  double area = 0;
  std::optional<problem::Xy> at;
  for (const auto& other : site.grounds) {
    if (!std::holds_alternative<plan::PavedArea>(other->element->kind) || other->net.empty()) continue;
    if (!geometry::overlap(other->net.bounds(), dug->bounds())) continue;
    const auto over = geometry::meet(other->net, *dug);
    if (!over || over->area().si() <= 1e-4) continue;
    area += over->area().si();
    if (!at) at = middle(*over);
  }
  if (area <= 0) return;
  problem::Problem said = edges::notice(
      "deck-on-backfill",
      shown_area(job, area) + " of paving lies on the backfill of " + called(*ground.element) +
          ", which settles unless it was placed in lifts",
      "probe it; stone in lifts, a slab, or a second visit: the estimator decides with the owner", ground.element->id);
  said.place.at = at;
  share.problems.push_back(std::move(said));
}

}  // namespace

Share dangers(const plan::Job& job, const plan::Site& site, const ground::Bodies& bodies,
              const levels::Terrain& terrain) {
  Share share;
  for (const auto& ground : site.grounds) {
    if (!ground->computed) continue;
    guards(job, site, *ground, terrain, share);
    trenches(job, site, *ground, bodies, terrain, share);
    deck_on_backfill(job, site, *ground, share);
  }
  return share;
}

}  // namespace takeoff::there
