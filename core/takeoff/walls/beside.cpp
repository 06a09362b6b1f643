#include "takeoff/walls/beside.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "geometry/index.h"

namespace takeoff::walls {

using geometry::Curve;
using geometry::Point;
using geometry::Vec;

namespace {

constexpr double steps = units::Length::steps_per_metre;
constexpr double dust = 1e-4;  // metres: a share at an end is the end
constexpr int parts_of_arc = 16;

units::Length length_of(double metres) { return units::Length::nearest(units::Metres(metres + dust)); }

geometry::Box round(Point point, double reach) { return geometry::grown({point, point}, length_of(reach)); }

void add_points(const Curve& curve, std::vector<Point>& points) {
  points.push_back(curve.start);
  points.push_back(curve.end);
  for (int i = 1; !curve.straight() && i < parts_of_arc; ++i)
    points.push_back(geometry::moved(curve.start, curve.at(double(i) / parts_of_arc)));
}

}  // namespace

std::vector<Curve> edges_of(const plan::Ground& ground) {
  std::vector<Curve> all;
  for (const geometry::Region* region : {&ground.net, &ground.footprint}) {
    for (const geometry::Outline* outline : region->outlines())
      for (const Curve& curve : geometry::curves(outline->edges())) all.push_back(curve);
    if (!all.empty()) return all;
  }
  if (ground.path)
    for (std::size_t i = 0; i < ground.path->size(); ++i) all.push_back(ground.path->curve(i));
  for (const geometry::Outline* outline : ground.drawn.outlines())
    for (const Curve& curve : geometry::curves(outline->edges())) all.push_back(curve);
  return all;
}

FaceLine::FaceLine(const geometry::Path& path, geometry::Side behind, std::vector<double> stations)
    : closed_(path.closed()), left_(behind == geometry::Side::left) {
  double station = 0;
  for (std::size_t i = 0; i < path.size(); ++i) {
    curves_.push_back(path.curve(i));
    boxes_.push_back(geometry::bounds(curves_.back()));
    starts_.push_back(station);
    station += curves_.back().length() / steps;
    add_points(curves_.back(), points_);
  }
  starts_.push_back(station);
  for (const double one : stations) points_.push_back(at(one));
}

std::size_t FaceLine::edge_at(double station) const {
  const auto next = std::ranges::upper_bound(starts_, station);
  const auto number = static_cast<std::size_t>(next - starts_.begin());
  return std::clamp<std::size_t>(number, 1, curves_.size()) - 1;
}

Point FaceLine::at(double station) const {
  const std::size_t edge = edge_at(station);
  const double share = (station - starts_[edge]) / (starts_[edge + 1] - starts_[edge]);
  return geometry::moved(curves_[edge].start, curves_[edge].at(std::clamp(share, 0.0, 1.0)));
}

Vec FaceLine::direction(std::size_t edge, double share) const {
  const double along = share * (starts_[edge + 1] - starts_[edge]);
  const double left_over = (1 - share) * (starts_[edge + 1] - starts_[edge]);
  const Vec here = curves_[edge].direction(share);
  const std::size_t last = curves_.size() - 1;
  if (along < dust && (edge > 0 || closed_)) return here + curves_[edge > 0 ? edge - 1 : last].direction(1);
  if (left_over < dust && (edge < last || closed_)) return here + curves_[edge < last ? edge + 1 : 0].direction(0);
  return here;
}

std::optional<FaceLine::Foot> FaceLine::foot(Point point, double reach) const {
  const geometry::Box near = round(point, reach);
  std::size_t edge = 0;
  geometry::Nearest best{std::numeric_limits<double>::infinity(), 0};
  for (std::size_t i = 0; i < curves_.size(); ++i) {
    if (!geometry::overlap(near, boxes_[i])) continue;
    const geometry::Nearest found = geometry::nearest(curves_[i], point);
    if (found.distance < best.distance) {
      best = found;
      edge = i;
    }
  }
  if (best.distance > reach) return std::nullopt;
  const Vec way = direction(edge, best.share);
  const Vec to = (point - curves_[edge].start) - curves_[edge].at(best.share);
  const double side = cross(way, to);
  Foot made{{best.distance, starts_[edge] + best.share * (starts_[edge + 1] - starts_[edge]),
             best.distance > dust && left_ == (side > 0)},
            true};
  const bool at_start = made.found.station < dust;
  const bool at_end = made.found.station > length() - dust;
  if (closed_ || !(at_start || at_end)) return made;
  const double past = dot(way, to) * (at_start ? -1 : 1);
  made.counts = past <= std::abs(side) + dust * steps;
  return made;
}

std::vector<Reaching> reaching(const std::vector<Curve>& edges, double reach) {
  std::vector<Reaching> all;
  for (const Curve& edge : edges) all.push_back({edge, geometry::grown(geometry::bounds(edge), length_of(reach))});
  return all;
}

std::vector<Beside> FaceLine::beside(const std::vector<Curve>& edges, double reach) const {
  std::vector<Beside> all;
  const auto take = [&](Point point) {
    const std::optional<Foot> found = foot(point, reach);
    if (found && found->counts) all.push_back(found->found);
  };
  std::vector<Point> theirs;
  for (const Curve& edge : edges) add_points(edge, theirs);
  for (const Point& point : theirs) take(point);
  for (const auto& [edge, box] : reaching(edges, reach)) {
    for (const Point& point : points_) {
      if (!geometry::overlap(box, {point, point})) continue;
      const geometry::Nearest found = geometry::nearest(edge, point);
      if (found.distance <= reach) take(geometry::moved(edge.start, edge.at(found.share)));
    }
  }
  return all;
}

double FaceLine::behind(double station, const std::vector<Reaching>& edges) const {
  const std::size_t edge = edge_at(station);
  const double share = std::clamp((station - starts_[edge]) / (starts_[edge + 1] - starts_[edge]), 0.0, 1.0);
  const Point here = geometry::moved(curves_[edge].start, curves_[edge].at(share));
  double least = std::numeric_limits<double>::infinity();
  for (const auto& [one, box] : edges) {
    if (!geometry::overlap(box, {here, here})) continue;
    const geometry::Nearest found = geometry::nearest(one, here);
    if (found.distance >= least) continue;
    const Vec to = (one.start - here) + one.at(found.share);
    if (found.distance <= dust || (cross(direction(edge, share), to) > 0) != left_) continue;
    const std::optional<Foot> own = foot(geometry::moved(one.start, one.at(found.share)), found.distance + dust);
    if (own && own->found.behind) least = found.distance;
  }
  return least;
}

}  // namespace takeoff::walls
