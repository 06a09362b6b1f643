#include "geometry/overlay.h"

#include <algorithm>

#include "geometry/flatten.h"
#include "geometry/private/geos.h"
#include "geometry/private/shapes.h"
#include "geometry/private/trace.h"

namespace geometry {

namespace {

using geos::Geometry;
using geos::made;

constexpr double grid = 1;  // GEOS sees whole steps

Box joined(Box a, Box b) {
  return {{std::min(a.low.x, b.low.x), std::min(a.low.y, b.low.y)},
          {std::max(a.high.x, b.high.x), std::max(a.high.y, b.high.y)}};
}

// What stands in one overlay: all regions that are not empty, and the low corner of them all, from which GEOS counts.
struct Table {
  std::vector<const Region*> regions;
  std::vector<Box> boxes;
  Point origin;

  void put(const Region& region) {
    if (region.empty()) return;
    const Box box = region.bounds();
    origin = regions.empty() ? box.low : joined(box, {origin, origin}).low;
    regions.push_back(&region);
    boxes.push_back(box);
  }
  Geometry flat(std::size_t i) const { return geos::multipolygon(geos::flattened(*regions[i]), origin); }
  std::vector<Source> all_sources() const {
    std::vector<Source> all;
    for (const Region* region : regions) {
      for (const Source& source : sources(*region)) all.push_back(source);
    }
    return all;
  }
};

problem::Result<Geometry> difference(const Geometry& a, const Geometry& b, Point place) {
  return made(GEOSDifferencePrec_r(geos::context(), a.get(), b.get(), grid), place);
}
problem::Result<Geometry> common(const Geometry& a, const Geometry& b, Point place) {
  return made(GEOSIntersectionPrec_r(geos::context(), a.get(), b.get(), grid), place);
}
problem::Result<Geometry> together(const Geometry& a, const Geometry& b, Point place) {
  return made(GEOSUnionPrec_r(geos::context(), a.get(), b.get(), grid), place);
}

std::unexpected<problem::Problem> disagree(Point place) {
  return problem::fault("overlay-areas-disagree", "the areas of outlines that lie over each other do not add up here",
                        "move one of the outlines a little and draw it again if that does not help",
                        {.element = {}, .file = {}, .at = xy(place)});
}

// Areas that should be equal, of shapes with so much edge in all: rounding moves each edge by at most a step.
bool agree(double a, double b, double edge) { return std::abs(a - b) <= edge + 1; }

// The traced region against the chords it came from: an arc takes at most the flattening along its length, and its two
// ends may have been put on true corners up to 2 mm away.
bool agrees(const Region& region, const Geometry& chords) {
  const double step = 1 / units::Length::steps_per_metre;
  const auto error = static_cast<double>(flattening.steps());
  double allowed = 1;
  for (const Outline* outline : region.outlines()) {
    for (const Curve& c : curves(outline->edges())) {
      allowed += c.straight() ? c.length() : (error + 1) * (c.length() + 1280);
    }
  }
  return std::abs(region.area().si() / (step * step) - geos::area(*chords)) <= allowed;
}

problem::Result<Region> finished(const Table& table, const Geometry& chords, Point place) {
  Region region = traced(geos::patches(*chords, table.origin), table.all_sources());
  if (!agrees(region, chords)) return disagree(place);
  return region;
}

// The union of regions first..last, made two and two, each pair checked against what the two have in common. Only its
// area is used: it is the check of the union that is made in one go.
struct Part {
  Geometry geometry;
  Box box;
};
problem::Result<Part> by_halves(const Table& table, std::size_t first, std::size_t last) {
  if (last - first == 1) return Part{table.flat(first), table.boxes[first]};
  const std::size_t middle = (first + last) / 2;
  auto a = by_halves(table, first, middle);
  if (!a) return a;
  auto b = by_halves(table, middle, last);
  if (!b) return b;
  const Point place{std::max(a->box.low.x, b->box.low.x), std::max(a->box.low.y, b->box.low.y)};
  if (!overlap(a->box, b->box)) {
    // Nothing to unite: side by side in one geometry.
    std::vector<geos::Patch> all = geos::patches(*a->geometry, table.origin);
    for (geos::Patch& patch : geos::patches(*b->geometry, table.origin)) all.push_back(std::move(patch));
    return Part{geos::multipolygon(all, table.origin), joined(a->box, b->box)};
  }
  auto both = together(a->geometry, b->geometry, place);
  if (!both) return std::unexpected(both.error());
  auto meeting = common(a->geometry, b->geometry, place);
  if (!meeting) return std::unexpected(meeting.error());
  const double shared = geos::area(**meeting);
  const double edge = geos::length(*a->geometry) + geos::length(*b->geometry);
  if (!agree(geos::area(*a->geometry) + geos::area(*b->geometry), geos::area(**both) + shared, edge)) {
    return disagree(place);
  }
  return Part{std::move(*both), joined(a->box, b->box)};
}

// All regions first.. of the table as one geometry.
problem::Result<Geometry> united(const Table& table, std::size_t first) {
  if (table.regions.size() - first == 1) return table.flat(first);
  if (table.regions.size() - first == 2) {
    // Of two, the pair that is checked is the union itself.
    auto pair = by_halves(table, first, table.regions.size());
    if (!pair) return std::unexpected(pair.error());
    return std::move(pair->geometry);
  }
  const Point place = table.boxes[first].low;
  std::vector<geos::Patch> all;
  for (std::size_t i = first; i < table.regions.size(); ++i) {
    for (geos::Patch& patch : geos::flattened(*table.regions[i])) all.push_back(std::move(patch));
  }
  // Not a valid multipolygon, as its parts lie over each other, but what the union of many is asked with.
  const Geometry pile = geos::multipolygon(all, table.origin);
  auto whole = made(GEOSUnaryUnionPrec_r(geos::context(), pile.get(), grid), place);
  if (!whole) return whole;
  auto check = by_halves(table, first, table.regions.size());
  if (!check) return std::unexpected(check.error());
  if (!agree(geos::area(**whole), geos::area(*check->geometry), geos::length(*pile))) return disagree(place);
  return whole;
}

}  // namespace

problem::Result<Region> unite(std::span<const Region> regions) {
  Table table;
  for (const Region& region : regions) table.put(region);
  if (table.regions.empty()) return Region{};
  if (table.regions.size() == 1) return *table.regions.front();
  auto whole = united(table, 0);
  if (!whole) return std::unexpected(whole.error());
  return finished(table, *whole, table.boxes.front().low);
}

problem::Result<Region> subtract(const Region& from, std::span<const Region> cutters) {
  Table table;
  table.put(from);
  if (from.empty()) return Region{};
  for (const Region& cutter : cutters) {
    if (!cutter.empty() && overlap(cutter.bounds(), table.boxes.front())) table.put(cutter);
  }
  if (table.regions.size() == 1) return from;
  const Point place{std::max(table.boxes[0].low.x, table.boxes[1].low.x),
                    std::max(table.boxes[0].low.y, table.boxes[1].low.y)};
  const Geometry ground = table.flat(0);
  auto taken = united(table, 1);
  if (!taken) return std::unexpected(taken.error());
  auto rest = difference(ground, *taken, place);
  if (!rest) return std::unexpected(rest.error());
  auto lost = common(ground, *taken, place);
  if (!lost) return std::unexpected(lost.error());
  const double edge = geos::length(*ground) + geos::length(**taken);
  if (!agree(geos::area(*ground), geos::area(**rest) + geos::area(**lost), edge)) return disagree(place);
  return finished(table, *rest, place);
}

problem::Result<Region> meet(const Region& a, const Region& b) {
  if (a.empty() || b.empty() || !overlap(a.bounds(), b.bounds())) return Region{};
  Table table;
  table.put(a);
  table.put(b);
  const Point place{std::max(table.boxes[0].low.x, table.boxes[1].low.x),
                    std::max(table.boxes[0].low.y, table.boxes[1].low.y)};
  const Geometry first = table.flat(0);
  const Geometry second = table.flat(1);
  auto shared = common(first, second, place);
  if (!shared) return std::unexpected(shared.error());
  auto both = together(first, second, place);
  if (!both) return std::unexpected(both.error());
  const double edge = geos::length(*first) + geos::length(*second);
  if (!agree(geos::area(*first) + geos::area(*second), geos::area(**shared) + geos::area(**both), edge)) {
    return disagree(place);
  }
  return finished(table, *shared, place);
}

}  // namespace geometry
