#include "sheets/plan_figure.h"

#include <algorithm>

#include "geometry/flatten.h"
#include "sheets/plan_parts.h"

namespace sheets {

namespace {

// Straight sides of a region's outlines, metres.
struct Side {
  Vec from;
  Vec to;
};

std::vector<Side> sides(const geometry::Region& region) {
  std::vector<Side> all;
  for (const geometry::Outline* outline : region.outlines()) {
    const std::vector<geometry::Point> ring = geometry::flatten(outline->edges(), units::Length::millimetres(20));
    for (std::size_t i = 0; i < ring.size(); ++i) all.push_back({metres(ring[i]), metres(ring[(i + 1) % ring.size()])});
  }
  return all;
}

double distance(const Side& side, Vec at) {
  const Vec along = side.to - side.from;
  const double square = geometry::dot(along, along);
  const double share = square > 0 ? std::clamp(geometry::dot(at - side.from, along) / square, 0.0, 1.0) : 0;
  return geometry::length(at - side.from - share * along);
}

// Where a level line comes into the sides and leaves them again, from left to right.
std::vector<double> crossings(const std::vector<Side>& sides, double y) {
  std::vector<double> found;
  for (const Side& side : sides) {
    if ((side.from.y <= y) == (side.to.y <= y)) continue;
    const double share = (y - side.from.y) / (side.to.y - side.from.y);
    found.push_back(side.from.x + share * (side.to.x - side.from.x));
  }
  std::ranges::sort(found);
  return found;
}

std::vector<Vec> middles(const std::vector<Side>& sides, double y) {
  const std::vector<double> at = crossings(sides, y);
  std::vector<Vec> found;
  for (std::size_t i = 0; i + 1 < at.size(); i += 2) found.push_back({(at[i] + at[i + 1]) / 2, y});
  return found;
}

}  // namespace

std::optional<Vec> inside(const geometry::Region& region) {
  if (region.empty()) return std::nullopt;
  const std::vector<Side> all = sides(region);
  const geometry::Box box = region.bounds();
  const double low = metres(box.low).y, high = metres(box.high).y;
  constexpr int lines = 12;
  std::optional<Vec> best;
  double room = 0;
  for (int i = 0; i < lines; ++i) {
    for (const Vec& at : middles(all, low + (i + 0.5) / lines * (high - low))) {
      double nearest = geometry::length(metres(box.high) - metres(box.low));
      for (const Side& side : all) nearest = std::min(nearest, distance(side, at));
      // A little more room is no reason to go elsewhere: the place must not jump while a corner is dragged.
      if (best && nearest <= 1.02 * room) continue;
      best = at;
      room = nearest;
    }
  }
  return best;
}

std::vector<std::pair<Vec, Vec>> crossing(const geometry::Region& region, double at, bool upright) {
  std::vector<Side> all = sides(region);
  const auto swapped = [](Vec v) { return Vec{v.y, v.x}; };
  if (upright)
    for (Side& side : all) side = {swapped(side.from), swapped(side.to)};
  const std::vector<double> found = crossings(all, at);
  std::vector<std::pair<Vec, Vec>> inside_it;
  for (std::size_t i = 0; i + 1 < found.size(); i += 2) {
    const Vec from{found[i], at}, to{found[i + 1], at};
    inside_it.emplace_back(upright ? swapped(from) : from, upright ? swapped(to) : to);
  }
  return inside_it;
}

void Plan::later(std::vector<Contour> contours, const plan::ElementId& of) {
  Area area;
  area.contours = std::move(contours);
  area.line = Line::later;
  area.later = true;
  area.of = of;
  put(std::move(area));
}

void Plan::put(std::vector<Contour> contours, Material material, Line line, takeoff::Stage stage,
               const plan::ElementId& of) {
  if (contours.empty()) return;
  if (!built(stage)) return later(std::move(contours), of);
  Area area;
  area.contours = std::move(contours);
  area.material = material;
  area.line = line;
  area.of = of;
  put(std::move(area));
}

Figure plan_figure(const results::Results& results, const PlanWants& wants) {
  Plan plan(results, wants);
  draw_ground(plan);
  draw_buildings(plan);
  draw_pools(plan);
  draw_areas(plan);
  draw_runs(plan);
  draw_standing(plan);
  draw_marks(plan);
  return plan.finish();
}

}  // namespace sheets
