#include "takeoff/there/overlay.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>

#include "takeoff/edges/notes.h"
#include "takeoff/there/shapes.h"

namespace takeoff::there {

namespace {

using geometry::Curve;
using geometry::Point;
using geometry::Vec;

constexpr double patch = 12 * units::metres_per_inch;
constexpr double hole = 2 * units::metres_per_inch;

double metres(const Curve& curve) { return curve.length() / units::Length::steps_per_metre; }
Point on(const Curve& curve, double share) { return geometry::moved(curve.start, curve.at(share)); }

struct LowEdge {
  Curve curve;
  bool known = false;  // from levels
};

std::optional<LowEdge> low_edge(const plan::Ground& ground, const levels::Terrain& terrain) {
  std::optional<Curve> longest;
  std::optional<Curve> lowest;
  double least = 0;
  bool known = terrain.existing != nullptr;
  for (const geometry::Polygon& polygon : ground.drawn.polygons())
    for (const Curve& curve : geometry::curves(polygon.outer.edges())) {
      if (!longest || metres(curve) > metres(*longest) + 1e-9) longest = curve;
      if (!known || metres(curve) < units::metres_per_foot) continue;
      const auto height = terrain.existing_at(on(curve, 0.5));
      known = height && !terrain.guessed_at(on(curve, 0.5));
      if (known && (!lowest || *height < least - 1e-9)) lowest = curve, least = *height;
    }
  if (known && lowest) return LowEdge{*lowest, true};
  if (longest) return LowEdge{*longest, false};
  return std::nullopt;
}

// Corners of the existing ground inside the slab from which it rises every way.
std::vector<Point> low_points(const plan::Ground& ground, const levels::Terrain& terrain) {
  std::map<std::pair<double, double>, std::pair<bool, bool>> corners;  // (nothing lower beside it, something higher)
  for (const geometry::Facet& facet : terrain.existing->facets())
    for (const Vec corner : facet.ring) {
      auto& [low, dips] = corners.try_emplace({corner.x, corner.y}, true, false).first->second;
      if (facet.guess) low = false;
      for (const Vec other : facet.ring) {
        const double up = facet.plane.at(other) - facet.plane.at(corner);
        low = low && up > -1e-9;
        dips = dips || up > 1e-6;
      }
    }
  std::vector<Point> found;
  for (const auto& [corner, state] : corners) {
    const Point point = terrain.existing->point({corner.first, corner.second});
    if (state.first && state.second && ground.drawn.contains(point)) found.push_back(point);
  }
  return found;
}

std::vector<Point> holes(const plan::Ground& ground, const levels::Terrain& terrain, const LowEdge& edge,
                         double apart) {
  const double length = metres(edge.curve);
  const int count = std::max(1, static_cast<int>(std::ceil(length / apart - 1e-9)));
  std::vector<Point> all;
  for (int i = 0; i < count; ++i) all.push_back(on(edge.curve, (i + 0.5) / count));
  if (!edge.known) return all;
  for (const Point low : low_points(ground, terrain)) {
    const bool served = std::ranges::any_of(
        all, [&](Point other) { return geometry::length(other - low) / units::Length::steps_per_metre <= apart / 2; });
    if (!served) all.push_back(low);
  }
  return all;
}

}  // namespace

void overlay(const plan::Job& job, const plan::Ground& ground, const Removed& slab, const levels::Terrain& terrain,
             Share& share) {
  const plan::ElementId& id = slab.id;
  share.facts.push_back("overlay");
  share.measures.put("overlay_m2", slab.area.amount().value);
  if (!sawn(slab.what->what) || ground.drawn.empty()) return;
  const auto edge = low_edge(ground, terrain);
  if (!edge) return;
  const units::Length given = job.catalogue->length_limit("overlay-hole-spacing", units::Length::feet(10));
  const double apart = std::max(given, units::Length::feet(1)).metres().si();  // nearer is a typing error
  const auto places = holes(ground, terrain, *edge, apart);
  const auto count = static_cast<double>(places.size());
  const double stone = std::numbers::pi / 4 * hole * hole * slab.what->thickness.metres().si();
  share.measures.put("drain_holes", count);
  share.measures.put("drain_hole_stone_m3", count * stone);
  share.measures.put("drain_hole_fabric_m2", count * patch * patch);
  edges::add_task(job, "overlay-hole", Stage::protect, "drill drain holes, fill with stone, patch of fabric", id,
                  term("drain holes", count, units::piece, id), share);
  if (!edge->known)
    share.problems.push_back(edges::notice(
        "overlay-levels", "no levels are known on this slab: its longest edge is taken as the low one for drain holes",
        "take levels on the slab", id));
  share.problems.push_back(
      edges::notice("overlay-joints", "joints and cracks of a slab that stays come through paving bonded to it",
                    "draw them on site and carry each through as a movement joint: the crew lead decides", id));
}

}  // namespace takeoff::there
