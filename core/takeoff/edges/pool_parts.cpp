#include "takeoff/edges/pool_parts.h"

#include <algorithm>

#include "geometry/offset.h"
#include "takeoff/edges/notes.h"

namespace takeoff::edges {

namespace {

// The ground between two lines round the water, m2.
problem::Result<double> ring_area(const geometry::Region& water, units::Length from, units::Length to) {
  const problem::Result<geometry::Region> inner = geometry::offset(water, from, geometry::Corner::mitred);
  if (!inner) return std::unexpected(inner.error());
  const problem::Result<geometry::Region> outer = geometry::offset(water, to, geometry::Corner::mitred);
  if (!outer) return std::unexpected(outer.error());
  return outer->area().si() - inner->area().si();
}

// The outside lines alone: what lies on an island in the pool is another ring, if it is wanted at all.
problem::Result<double> line_length(const geometry::Region& water, units::Length out, geometry::Corner corner) {
  const problem::Result<geometry::Region> moved = geometry::offset(water, out, corner);
  if (!moved) return std::unexpected(moved.error());
  double sum = 0;
  for (const geometry::Polygon& polygon : moved->polygons()) sum += polygon.outer.perimeter().si();
  return sum;
}

bool failed(const problem::Result<double>& value, const plan::ElementId& of, Share& share) {
  if (!value) share.problems.push_back(problem::in_element(value.error(), of));
  return !value;
}

Working metres(const std::string& name, double value, const plan::ElementId& of) {
  return term(name, value, units::metre, of);
}

void add_bars(const plan::Job& job, const plan::Ground& pool, const plan::Collar& collar, Share& share) {
  const plan::ElementId& id = pool.element->id;
  if (collar.rings.empty()) return;
  const catalogue::Item* bar = wanted(job, collar.bar, "the bars of the collar", id, share);
  if (!bar) return;
  const units::Length lap = job.catalogue->length_limit("bar-lap", units::Length::inches(20));
  if (!bar->length || *bar->length <= lap) {
    share.problems.push_back(
        fault("bar-length", "the bar " + bar->id + " is no longer than its lap of " + shown(job, lap.metres().si()),
              "enter the bar's stock length", id));
    return;
  }
  std::vector<Working> rings;
  double length = 0;
  for (const units::Length out : collar.rings) {
    const problem::Result<double> ring = line_length(pool.drawn, out, geometry::Corner::mitred);
    if (failed(ring, id, share)) return;
    length += *ring;
    rings.push_back(Working::up(
        Working::quotient(metres("ring " + shown(job, out.metres().si()) + " out", *ring, id),
                          Working::difference(metres("stock length", bar->length->metres().si(), bar->id + "/length"),
                                              metres("lap", lap.metres().si(), "bar-lap")))));
  }
  const Working bars = Working::sum(std::move(rings)).named("bars");
  share.lines.push_back(
      {Stage::coping, bar->id, "bars of the collar, laps counted; the engineer decides", {id}, bars, 0.0, false});
  share.measures.put("collar_bar_m", length);
  share.measures.put("collar_bars", bars.amount().value);
}

}  // namespace

Share surround(const plan::Job& job, const plan::Ground& pool, const plan::Pool& what) {
  Share share;
  const plan::ElementId& id = pool.element->id;
  const plan::Surround& stone = *what.surround;
  const problem::Result<double> ring = ring_area(pool.drawn, what.shell, what.shell + stone.clearance);
  if (failed(ring, id, share)) return share;
  share.measures.put("surround_ring_m2", *ring);
  const Working volume = Working::product(
      {term("ring round the shell", *ring, units::square_metre, id), metres("depth", stone.depth.metres().si(), id)});
  share.measures.put("surround_stone_m3", volume.amount().value);
  const catalogue::Item* item = wanted(job, stone.item, "the stone round the shell", id, share);
  if (!item) return share;
  const std::optional<double> density =
      item->number("compacted_density_kg_m3") ? item->number("compacted_density_kg_m3") : item->density_kg_m3;
  if (!density) {
    share.problems.push_back(fault("density-missing",
                                   "the item " + item->id + " has no placed density, so its weight is not known",
                                   "enter it in the catalogue", id));
    return share;
  }
  const Working weight =
      Working::product({volume, term("placed density", *density, units::kilogram_per_cubic_metre, item->id)});
  share.lines.push_back({Stage::coping, item->id, "stone round the shell, to a mean depth", {id}, weight, {}, false});
  add_task(job, "pool-stone", Stage::coping, "stone round the shell, in lifts", id, weight, share);
  return share;
}

Share collar(const plan::Job& job, const plan::Ground& pool, const plan::Pool& what) {
  Share share;
  const plan::ElementId& id = pool.element->id;
  const plan::Collar& collar = *what.collar;
  const problem::Result<double> ring = ring_area(pool.drawn, units::Length(), collar.width);
  const problem::Result<double> middle =
      line_length(pool.drawn, units::Length::of_steps(collar.width.steps() / 2), geometry::Corner::mitred);
  if (failed(ring, id, share) || failed(middle, id, share)) return share;
  const Working volume = Working::product({term("ring of the collar", *ring, units::square_metre, id),
                                           metres("thickness", collar.thickness.metres().si(), id)});
  share.measures.put("collar_concrete_m3", volume.amount().value);
  if (wanted(job, collar.concrete, "the collar", id, share)) {
    share.lines.push_back({Stage::coping, collar.concrete, "collar under the coping", {id}, volume, {}, false});
    share.facts.push_back("concrete");
  }
  add_task(job, "collar", Stage::coping, "collar under the coping", id,
           metres("middle line of the collar", *middle, id), share);
  add_bars(job, pool, collar, share);
  return share;
}

Share bonding(const plan::Job& job, const plan::Ground& pool, const plan::Pool& what) {
  Share share;
  const plan::ElementId& id = pool.element->id;
  const plan::Bonding& bond = *what.bonding;
  const problem::Result<double> ring = line_length(pool.drawn, bond.out, geometry::Corner::round);
  if (failed(ring, id, share)) return share;
  const Working length = Working::sum({metres("conductor round the pool", *ring, id),
                                       Working::product({term("ties", bond.ties, units::piece, id),
                                                         Working::sum({metres("out", bond.out.metres().si(), id),
                                                                       metres("deep", bond.depth.metres().si(), id)})
                                                             .named("length of a tie")})});
  share.measures.put("bonding_ring_m", *ring);
  share.measures.put("bonding_length_m", length.amount().value);
  share.facts.push_back("bonding");
  share.problems.push_back(
      flag("bonding",
           "the surface round the pool has to be bonded: " + shown(job, length.amount().value) +
               " of conductor and ties are an allowance (NEC 680.26(B)(2))",
           "a licensed electrician decides by the local edition; some editions or inspectors ask for a grid", id));
  const double least = limit_inches(job, "bond-wire", Bound::least, 18);
  const double greatest = limit_inches(job, "bond-wire", Bound::greatest, 24);
  const double out = bond.out.metres().si();
  if (out < least - 1e-9 || out > greatest + 1e-9) {
    share.problems.push_back(flag("bond-wire",
                                  "the conductor lies " + shown(job, out) + " from the inside wall, outside " +
                                      shown(job, least) + " to " + shown(job, greatest),
                                  "move it, or let the electrician decide", id));
  }
  const catalogue::Item* item = wanted(job, bond.item, "the bonding", id, share);
  if (!item) return share;
  const std::string text =
      "bonding: electrician, local edition rules; some editions or inspectors ask for a grid instead";
  const bool by_length = item->length.has_value();
  share.lines.push_back({Stage::under_ground,
                         item->id,
                         text,
                         {id},
                         by_length ? length : Working(term("job", 1, units::piece, id)),
                         {},
                         true});
  return share;
}

}  // namespace takeoff::edges
