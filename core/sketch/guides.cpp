#include "sketch/guides.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/index.h"
#include "sketch/crossings.h"

namespace sketch {

using geometry::Curve;
using geometry::left_of;
using geometry::Point;
using geometry::Vec;

namespace {

constexpr double step_of_angle = std::numbers::pi / 12;  // 15 degrees
constexpr std::size_t edges_back = 3;                    // parallel and equal to so many of the last edges
constexpr std::size_t points_back = 12;                  // in line with so many of the last points

Vec unit(Vec v) { return (1 / length(v)) * v; }

bool same_line(const Guide& a, const Guide& b) {
  if ((a.radius == 0) != (b.radius == 0) || a.from != b.from) return false;
  if (a.radius != 0) return std::abs(a.radius - b.radius) < 1;
  return std::abs(cross(a.along, b.along)) < 1e-9;
}

// Of two guides along one line the first stays: tangent and square say more than parallel.
void add(std::vector<Guide>& guides, const Guide& guide) {
  if (std::ranges::none_of(guides, [&](const Guide& old) { return same_line(old, guide); })) guides.push_back(guide);
}

// Where the guide comes nearest to a place.
Point foot(const Guide& guide, Point at) {
  const Vec to = at - guide.from;
  if (guide.radius == 0) return geometry::moved(guide.from, dot(to, guide.along) * guide.along);
  if (length(to) == 0) return geometry::moved(guide.from, {guide.radius, 0});
  return geometry::moved(guide.from, guide.radius * unit(to));
}

void add_lines_at_the_last_point(std::vector<Guide>& made, const InHand& in_hand) {
  const Point last = in_hand.points.back();
  const Vec direction = in_hand.direction();
  if (!in_hand.edges.empty() && !in_hand.edges.back().straight()) add(made, {Takes::tangent, last, direction});
  add(made, {Takes::square, last, left_of(direction)});
  add(made, {Takes::parallel, last, direction});
  const std::size_t count = in_hand.edges.size();
  for (std::size_t i = count; i-- > 0;) {
    if (!in_hand.edges[i].straight() || (i + edges_back < count && i != 0)) continue;
    const Vec along = unit(in_hand.edges[i].chord());
    add(made, {Takes::parallel, last, along});
    if (i == 0) add(made, {Takes::square, last, left_of(along)});
  }
  if (in_hand.along) add(made, {Takes::parallel, last, *in_hand.along});
}

// Circles about the last point, as large as the last edges are long.
void add_equal(std::vector<Guide>& made, const InHand& in_hand) {
  const std::size_t count = in_hand.edges.size();
  for (std::size_t i = count; i-- > (count > edges_back ? count - edges_back : 0);)
    if (in_hand.edges[i].straight())
      add(made, {Takes::equal, in_hand.points.back(), {}, length(in_hand.edges[i].chord())});
}

// In line with earlier points, along the first edge and square to it.
void add_in_line(std::vector<Guide>& made, const InHand& in_hand) {
  if (in_hand.edges.empty() || !in_hand.edges.front().straight()) return;
  const Vec first = unit(in_hand.edges.front().chord());
  const std::size_t before_last = in_hand.points.size() - 1;
  for (std::size_t i = 0; i < before_last; ++i) {
    if (i != 0 && i + points_back < before_last) continue;
    add(made, {Takes::closing, in_hand.points[i], left_of(first)});
    add(made, {Takes::closing, in_hand.points[i], first});
  }
}

}  // namespace

Vec InHand::direction() const {
  if (!edges.empty()) return edges.back().direction(1);
  return along.value_or(Vec{1, 0});
}

std::vector<Guide> guides(const InHand& in_hand) {
  std::vector<Guide> made;
  if (in_hand.points.empty()) return made;
  add_lines_at_the_last_point(made, in_hand);
  add_in_line(made, in_hand);
  add_equal(made, in_hand);
  return made;
}

std::vector<Point> closing_points(const InHand& in_hand) {
  std::vector<Point> made;
  if (!in_hand.closes || in_hand.edges.size() < 2 || !in_hand.edges.front().straight()) return made;
  const Point last = in_hand.points.back();
  const Vec to_first = in_hand.points.front() - last;
  const Vec first = unit(in_hand.edges.front().chord());
  const Vec ahead = in_hand.direction();
  for (const Vec way : {left_of(ahead), ahead}) {
    for (const Vec closing : {left_of(first), first}) {
      const double turn = cross(way, closing);
      if (std::abs(turn) < 1e-3) continue;
      const double out = cross(to_first, closing) / turn;
      if (std::abs(out) >= 1) made.push_back(geometry::moved(last, out * way));
    }
  }
  return made;
}

namespace {

// The one search behind `aimed`: candidates of one class, the nearest within reach.
struct Nearest {
  Point pointer;
  double reach = 0;
  std::optional<Aimed> kept;
  double least = 0;
  void take(const Aimed& other) {
    const double away = length(other.at() - pointer);
    if (away > reach || (kept && away >= least)) return;
    kept = other;
    least = away;
  }
};

Curve stretch_about(const Guide& guide, Point at, double reach) {
  const double half = std::max(8 * reach, 1e6);
  if (guide.radius == 0) {
    const Point middle = foot(guide, at);
    return {geometry::moved(middle, -half * guide.along), geometry::moved(middle, half * guide.along), 0};
  }
  // The half of the circle that lies towards the place, as an arc of half a turn.
  const Vec side = left_of(length(at - guide.from) == 0 ? Vec{1, 0} : unit(at - guide.from));
  return {geometry::moved(guide.from, -guide.radius * side), geometry::moved(guide.from, guide.radius * side), 1};
}

// Crossings of help lines with edges, and the foot of the square from the last point on an edge.
void take_crossings(Nearest& nearest, const Scene& scene, const InHand& in_hand, const std::vector<Guide>& lines) {
  for (const Taken& edge : scene.snaps.edges(nearest.pointer, nearest.reach)) {
    const auto curve = scene.snaps.curve(edge);
    if (!curve) continue;
    for (const Guide& guide : lines)
      for (const Point at : crossings(stretch_about(guide, nearest.pointer, nearest.reach), *curve))
        nearest.take({{Takes::crossing, at, edge.of, edge.edge}, guide});
    if (!curve->straight() || in_hand.points.empty()) continue;
    const Vec along = unit(curve->chord());
    const double share = dot(in_hand.points.back() - curve->start, along);
    if (share < 0 || share > length(curve->chord())) continue;
    const Point at = geometry::moved(curve->start, share * along);
    nearest.take(
        {{Takes::square, at, edge.of, edge.edge}, Guide{Takes::square, in_hand.points.back(), left_of(along)}});
  }
}

Guide ray_at_whole_steps(const InHand& in_hand, Point pointer) {
  const Point last = in_hand.points.back();
  const Vec base = in_hand.direction();
  const Vec to = pointer - last;
  const double turn = std::round(std::atan2(cross(base, to), dot(base, to)) / step_of_angle) * 15;
  const units::Turn by = units::turn(units::Angle::degrees(turn));
  return {Takes::angle, last, {by.cosine * base.x - by.sine * base.y, by.sine * base.x + by.cosine * base.y}};
}

Aimed on_guide(const Guide& guide, Point pointer) { return {{guide.takes, foot(guide, pointer), {}, {}}, guide}; }

std::optional<Aimed> at_a_corner(const Taken& drawn, const InHand& in_hand, Nearest nearest) {
  if (drawn.takes == Takes::corner) nearest.take({drawn, {}});
  for (std::size_t i = 0; i + 1 < in_hand.points.size(); ++i)
    nearest.take({{Takes::corner, in_hand.points[i], {}, {0, static_cast<int>(i)}}, {}});
  return nearest.kept;
}

std::optional<Aimed> on_help(const InHand& in_hand, const std::vector<Guide>& lines, const Nearest& nothing) {
  Nearest nearest = nothing;
  for (const Point at : closing_points(in_hand))
    nearest.take({{Takes::closing, at, {}, {}}, Guide{Takes::closing, at, unit(in_hand.points.front() - at)}});
  if (nearest.kept) return nearest.kept;
  for (const Guide& guide : lines) nearest.take(on_guide(guide, nearest.pointer));
  return nearest.kept;
}

}  // namespace

Aimed aimed_at_points(const Scene& scene, const InHand& in_hand, const Pointer& pointer) {
  if (pointer.hold.free) return {{Takes::nothing, pointer.at, {}, {}}, {}};
  const Taken drawn = scene.snaps.take(pointer.at, scene.reach, scene.grid);
  return at_a_corner(drawn, in_hand, {pointer.at, scene.reach, {}, 0}).value_or(Aimed{drawn, {}});
}

Aimed aimed(const Scene& scene, const InHand& in_hand, const Pointer& pointer) {
  if (pointer.hold.free) return {{Takes::nothing, pointer.at, {}, {}}, {}};
  const Nearest nothing{pointer.at, scene.reach, {}, 0};
  const Taken drawn = scene.snaps.take(pointer.at, scene.reach);
  if (const auto corner = at_a_corner(drawn, in_hand, nothing)) return *corner;
  const bool steps = pointer.hold.steps && !in_hand.points.empty() && pointer.at != in_hand.points.back();
  const std::vector<Guide> lines = steps ? std::vector{ray_at_whole_steps(in_hand, pointer.at)} : guides(in_hand);
  Nearest crossing = nothing;
  if (drawn.takes == Takes::crossing) crossing.take({drawn, {}});
  if (drawn.takes != Takes::nothing) take_crossings(crossing, scene, in_hand, lines);
  if (crossing.kept) return *crossing.kept;
  if (drawn.takes != Takes::nothing) return {drawn, {}};
  if (steps) return on_guide(lines.front(), pointer.at);
  if (const auto help = on_help(in_hand, lines, nothing)) return *help;
  return {grid_point(pointer.at, scene.reach, scene.grid), {}};
}

}  // namespace sketch
