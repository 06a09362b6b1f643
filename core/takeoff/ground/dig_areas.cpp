// Paved areas dug to their formation, and the ring round a pool's shell.
#include <algorithm>
#include <array>
#include <cmath>

#include "geometry/offset.h"
#include "geometry/overlay.h"
#include "takeoff/ground/digger.h"
#include "takeoff/ground/spread.h"

namespace takeoff::ground {

using geometry::Region;
using geometry::Surface;
using problem::Severity;

namespace {

// The deepest layers, one body each: their footprint is what is dug, down to their underside.
std::vector<const Body*> lowest(const Bodies& bodies) {
  std::vector<const Body*> found;
  for (const Body& body : bodies.bodies) {
    if (body.thickness <= 0 || body.layer.role == "fabric") continue;
    const bool something_below = std::ranges::any_of(bodies.bodies, [&body](const Body& other) {
      return other.group == body.group && other.thickness > 0 && other.top > body.top;
    });
    if (!something_below) found.push_back(&body);
  }
  return found;
}

// What was summed over pieces of ground that the two surfaces both have.
struct Sums {
  double area = 0;     // dug or filled over
  double covered = 0;  // of it, where both surfaces are
  double above = 0, below = 0;
  double deepest = 0;
  double guessed = 0;
  double mean(double volume) const { return covered > 0 ? volume / covered : 0; }
};

class Area {
 public:
  Area(Digger& digger, const Body& body) : d(digger), body_(body), depth_(body.top + body.thickness) {}

  void dig() {
    Formation formation{body_.footprint, depth_, {}};
    for (const plan::ElementId& id : body_.of)
      if (const levels::SurfacePtr finished = surface_of(id))
        formation.surfaces.push_back(std::make_shared<const Surface>(geometry::raised(*finished, -depth_)));
    if (formation.surfaces.empty())
      by_depth();
    else
      by_levels(formation);
    strip();
    d.lie.add(std::move(formation));
    const Working area = area_of(d.site, body_);
    d.task(Stage::dig, "grade-fine", "formation of " + names(body_.of), body_.of, area);
    // Soil that is counted on to soak stays as it is unless the engineer says otherwise; any other is compacted.
    if (!body_.open || !d.job.choices.infiltration_counts)
      d.task(Stage::dig, "compact-ground", "formation of " + names(body_.of), body_.of, area);
  }

 private:
  levels::SurfacePtr surface_of(const plan::ElementId& id) const {
    if (!d.terrain.existing || d.terrain.existing->empty()) return nullptr;
    const auto found = d.terrain.finished.find(id);
    return found == d.terrain.finished.end() || !found->second || found->second->empty() ? nullptr : found->second;
  }

  std::vector<Cleared> cleared(const Region& region) {
    auto pieces = d.lie.cleared(region);
    if (pieces) return std::move(*pieces);
    d.made.share.problems.push_back(problem::in_element(pieces.error(), body_.of.front()));
    return {Cleared{region, 0, false, false}};
  }

  // One depth over the whole footprint, less what came off before.
  void by_depth() {
    Working volume =
        Working::product({area_of(d.site, body_), term("depth of the build-up", depth_, units::metre, body_.build_up)});
    double off = 0;
    for (const Cleared& piece : cleared(body_.footprint))
      off += piece.ground.area().si() * (piece.stays ? depth_ : std::min(depth_, piece.off));
    if (off > 0)
      volume = Working::difference(volume.named("to the formation"), term("topsoil and what is removed before", off,
                                                                          units::cubic_metre, names(body_.of)));
    if (volume.amount().value < 0) volume = term("nothing left to dig", 0, units::cubic_metre, names(body_.of));
    d.by_one_depth.insert(d.by_one_depth.end(), body_.of.begin(), body_.of.end());
    put(volume.named("bank volume of " + names(body_.of)), {}, depth_);
    if (body_.of.size() == 1) d.measured(body_.of.front(), "dig_m3", volume.amount().value);
  }

  void by_levels(const Formation& formation) {
    std::vector<Working> dug, filled;
    double deepest = 0;
    std::vector<Region> nets;
    for (const plan::ElementId& id : body_.of) {
      const plan::Ground& ground = *d.site.find(id);
      nets.push_back(ground.net);
      const levels::SurfacePtr finished = surface_of(id);
      if (!finished) {
        dug.push_back(Working::product({own_area(ground, ground.net.area().si()),
                                        term("depth of the build-up", depth_, units::metre, body_.build_up)}));
        d.by_one_depth.push_back(id);
        deepest = std::max(deepest, depth_);
        continue;
      }
      const Sums sums = sum(ground.net, geometry::raised(*finished, -depth_), true);
      add(sums, own_area(ground, sums.area), id, dug, filled);
      tell(sums, ground);
      deepest = std::max(deepest, sums.deepest);
    }
    past_edges(nets, formation, dug, filled, deepest);
    std::optional<Working> fill;
    if (!filled.empty()) fill = Working::sum(std::move(filled)).named("fill under " + names(body_.of));
    put(Working::sum(std::move(dug)).named("bank volume of " + names(body_.of)), std::move(fill), deepest);
  }

  // As taped on site, where a person taped it and all of it is dug.
  static Working own_area(const plan::Ground& ground, double dug) {
    const auto* area = std::get_if<plan::PavedArea>(&ground.element->kind);
    const bool whole = std::abs(dug - ground.net.area().si()) < 1e-9 * std::max(1.0, dug);
    if (whole && area && area->taped_area_m2 && *area->taped_area_m2 > 0)
      return term("area taped on site", *area->taped_area_m2, units::square_metre, ground.element->id);
    return term(whole ? "net area" : "net area less what stays", dug, units::square_metre, ground.element->id);
  }

  void past_edges(const std::vector<Region>& nets, const Formation& formation, std::vector<Working>& dug,
                  std::vector<Working>& filled, double& deepest) {
    const auto past = geometry::subtract(body_.footprint, nets);
    if (!past) {
      d.made.share.problems.push_back(problem::in_element(past.error(), body_.of.front()));
      return;
    }
    if (past->empty() || past->area().si() < 1e-9) return;
    const auto spread = spread_level(*past, formation.surfaces, d.terrain.existing->origin());
    if (!spread) {
      d.made.share.problems.push_back(problem::in_element(spread.error(), body_.of.front()));
      return;
    }
    const Sums sums = sum(*past, *spread, true);
    add(sums, term("past the edges", sums.area, units::square_metre, body_.build_up + "/past_edge"), names(body_.of),
        dug, filled);
    d.measured(body_.of.front(), "dig_past_edges_m3", sums.mean(sums.above) * sums.area);
    deepest = std::max(deepest, sums.deepest);
  }

  // `over_it`: the surface covers just this ground.
  Sums sum(const Region& region, const Surface& formation, bool over_it) {
    Sums sums;
    const std::vector<Cleared> all = cleared(region);
    for (const Cleared& piece : all) {
      if (piece.stays) continue;
      sums.area += all.size() == 1 ? region.area().si() : piece.ground.area().si();
      Surface part = formation;
      if (!over_it || all.size() > 1) {
        const auto cells = geometry::pieces(piece.ground, formation.origin());
        if (!cells) {
          d.made.share.problems.push_back(problem::in_element(cells.error(), body_.of.front()));
          continue;
        }
        part = geometry::over(formation, *cells);
      }
      // The ground is lower by what came off it first: the same as the formation higher, which has fewer facets.
      const geometry::Between found = geometry::between(*d.terrain.existing, geometry::raised(part, piece.off));
      sums.covered += found.area_above + found.area_below;
      sums.above += found.above;
      sums.below += found.below;
      sums.guessed += found.guessed;
      sums.deepest = std::max(sums.deepest, found.greatest + piece.off);
    }
    return sums;
  }

  static void add(const Sums& sums, const Working& area, const std::string& of, std::vector<Working>& dug,
                  std::vector<Working>& filled) {
    dug.push_back(Working::product(
        {area, term("mean depth, existing ground over formation", sums.mean(sums.above), units::metre, of)}));
    if (sums.below > 1e-9)
      filled.push_back(Working::product(
          {area, term("mean height, formation over existing ground", sums.mean(sums.below), units::metre, of)}));
  }

  void tell(const Sums& sums, const plan::Ground& ground) {
    const plan::ElementId& id = ground.element->id;
    d.measured(id, "dig_m3", sums.mean(sums.above) * sums.area);
    d.measured(id, "fill_m3", sums.mean(sums.below) * sums.area);
    d.measured(id, "dig_deepest_m", sums.deepest);
    d.measured(id, "dig_mean_m", sums.mean(sums.above));
    if (sums.guessed > 0.05)
      d.say(Severity::notice, "dig-guessed",
            "the ground under " + d.surface(sums.guessed) + " lies beyond the levels that were taken",
            "take more levels there; the ground is taken to go on level", id);
    if (sums.covered < sums.area * (1 - 1e-3))
      d.say(
          Severity::notice, "dig-uncovered",
          "no level reaches " + d.surface(sums.area - sums.covered) + " of it; the mean depth of the rest stands there",
          "take levels there", id);
  }

  void put(Working bank, std::optional<Working> fill, double deepest) {
    if (fill) d.task(Stage::dig, "area-fill", "fill under " + names(body_.of) + ", compacted volume", body_.of, *fill);
    d.dug({.text = "dig of " + names(body_.of),
           .of = body_.of,
           .bank = std::move(bank),
           .fill = std::move(fill),
           .deepest = deepest});
  }

  void strip() {
    double area = 0;
    for (const Cleared& piece : cleared(body_.footprint))
      if (piece.topsoil) area += piece.ground.area().si();
    d.topsoil_off(body_.of, area);
  }

  Digger& d;
  const Body& body_;
  double depth_;
};

}  // namespace

void dig_areas(Digger& digger) {
  for (const Body* body : lowest(digger.bodies)) Area(digger, *body).dig();
}

// The ring for the stone round the shell, below the formation of the paving over it.
void dig_pools(Digger& digger) {
  for (const auto& ground : digger.site.grounds) {
    const auto* pool = std::get_if<plan::Pool>(&ground->element->kind);
    if (!pool || !pool->surround || ground->drawn.empty() || pool->surround->clearance <= units::Length()) continue;
    const plan::ElementId& id = ground->element->id;
    const auto inner = geometry::offset(ground->drawn, pool->shell, geometry::Corner::mitred);
    const auto outer =
        geometry::offset(ground->drawn, pool->shell + pool->surround->clearance, geometry::Corner::mitred);
    if (!inner || !outer) {
      digger.made.share.problems.push_back(problem::in_element(inner ? outer.error() : inner.error(), id));
      continue;
    }
    const double depth = pool->surround->depth.metres().si();
    const Working volume = Working::product({term("ring round the shell", outer->area().si() - inner->area().si(),
                                                  units::square_metre, id),
                                             term("depth", depth, units::metre, id)})
                               .named("bank volume of the ring");
    digger.measured(id, "dig_ring_m3", volume.amount().value);
    digger.dug({.text = "ring round the shell of " + id, .of = {id}, .bank = volume, .deepest = depth});
    digger.say(Severity::notice, "pool-hole",
               "the hole for the shell itself is not in the digging, only the ring for the stone round it",
               "the pool builder digs it or says how deep; never below the shell, and the pool stays full, unless the "
               "pool builder or an engineer says so",
               id);
  }
}

}  // namespace takeoff::ground
