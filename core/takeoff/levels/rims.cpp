#include "takeoff/levels/rims.h"

#include <algorithm>

#include "geometry/index.h"
#include "plan/along.h"

namespace takeoff::levels {

using geometry::Point;
using geometry::Vec;
using plan::Meets;

namespace {

constexpr double on_edge = 0.003;    // metres: a rim lies this near to the true edge that it was flattened from
constexpr double same_level = 1e-3;  // metres: paving this much higher holds no water to speak of
constexpr double past_rim = 0.005;   // metres beyond the gap

struct Edge {
  geometry::Curve curve;
  geometry::Box box;
  const plan::Stretch* stretch = nullptr;
};

std::vector<Edge> edges(const plan::Ground& ground) {
  std::vector<Edge> all;
  const auto outlines = ground.net.outlines();
  const units::Length grow = units::Length::nearest(units::Metres(on_edge));
  for (const plan::Stretch& stretch : ground.stretches) {
    const geometry::Ring& ring = outlines[static_cast<std::size_t>(stretch.outline)]->edges();
    const geometry::Curve whole = geometry::curve(ring, static_cast<std::size_t>(stretch.edge));
    const double run = whole.length() / units::Length::steps_per_metre;
    const geometry::Curve part =
        plan::part(whole, std::clamp(stretch.from / run, 0.0, 1.0), std::clamp(stretch.to / run, 0.0, 1.0));
    if (part.start != part.end) all.push_back({part, geometry::grown(geometry::bounds(part), grow), &stretch});
  }
  return all;
}

const plan::Stretch* nearest(const std::vector<Edge>& edges, Point at) {
  const plan::Stretch* best = nullptr;
  double least = on_edge;
  for (const Edge& edge : edges) {
    if (!geometry::overlap(edge.box, {at, at})) continue;
    const double distance = geometry::nearest(edge.curve, at).distance;
    if (distance > least) continue;
    least = distance;
    best = edge.stretch;
  }
  return best;
}

bool kerb_lets_off(const plan::Site& site, const plan::ElementId& id) {
  const plan::Ground* ground = site.find(id);
  const auto* run = ground == nullptr ? nullptr : std::get_if<plan::EdgeRun>(&ground->element->kind);
  if (run == nullptr || run->upstand <= units::Length()) return true;
  return run->weeps && !run->weeps->kind.contains("left in") && run->weeps->kind != "cord";
}

}  // namespace

Area area(const plan::Ground& ground, SurfacePtr surface) {
  Area made{&ground, &std::get<plan::PavedArea>(ground.element->kind), std::move(surface), {}, {}};
  made.joints = joints(*made.surface);
  const std::vector<Edge> all = edges(ground);
  for (const Rim& rim : made.joints.rims)
    made.facing.push_back(nearest(all, made.surface->point(0.5 * (rim.from + rim.to))));
  return made;
}

Vec outwards(const Rim& rim) { return (1 / length(rim.to - rim.from)) * -left_of(rim.to - rim.from); }

Point past(const Area& area, std::size_t rim, double by) {
  const Rim& one = area.joints.rims[rim];
  return area.surface->point(0.5 * (one.from + one.to) + by * outwards(one));
}

bool lets_off(const Area& area, std::size_t rim, const plan::Site& site, const Terrain& terrain) {
  const plan::Stretch* facing = area.facing[rim];
  if (facing == nullptr) return true;
  switch (facing->meets) {
    case Meets::planting:
    case Meets::restraint:
    case Meets::steps:
    case Meets::inlet:
    case Meets::channel: return true;
    case Meets::kerb: return kerb_lets_off(site, facing->other);
    case Meets::paving: {
      const auto other = terrain.finished.find(facing->other);
      if (other == terrain.finished.end()) return true;
      const auto height = other->second->height(past(area, rim, facing->gap + past_rim));
      const Rim& one = area.joints.rims[rim];
      const double own = area.surface->facets()[one.facet].plane.at(0.5 * (one.from + one.to));
      return !height || *height <= own + same_level;
    }
    default: return false;
  }
}

}  // namespace takeoff::levels
