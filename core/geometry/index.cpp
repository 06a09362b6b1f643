#include "geometry/index.h"

#include <algorithm>
#include <boost/geometry/geometries/box.hpp>
#include <boost/geometry/geometries/point.hpp>
#include <boost/geometry/index/rtree.hpp>
#include <boost/geometry/strategies/relate/cartesian.hpp>
#include <numbers>
#include <utility>

namespace geometry {

namespace {

// Steps as doubles are exact within the plan's reach, and boost's arithmetic on boxes can't overflow with them.
using TreePoint = boost::geometry::model::point<double, 2, boost::geometry::cs::cartesian>;
using TreeBox = boost::geometry::model::box<TreePoint>;
using Entry = std::pair<TreeBox, std::uint32_t>;

TreePoint tree_point(Point p) { return {static_cast<double>(p.x.steps()), static_cast<double>(p.y.steps())}; }

TreeBox tree_box(const Box& box) { return {tree_point(box.low), tree_point(box.high)}; }

std::vector<Entry> entries(std::span<const Box> boxes) {
  std::vector<Entry> made;
  made.reserve(boxes.size());
  for (const Box& box : boxes) made.emplace_back(tree_box(box), static_cast<std::uint32_t>(made.size()));
  return made;
}

// Outwards to whole steps; a touch of rounding noise past a whole step is not worth a step more.
std::int64_t floored(double steps) { return static_cast<std::int64_t>(std::floor(steps + 1e-4)); }
std::int64_t ceiled(double steps) { return static_cast<std::int64_t>(std::ceil(steps - 1e-4)); }

// Angle from the arc's start to `to` in the arc's own turning direction, 0..2 pi. Written without the difference of two
// large numbers, so that an almost straight arc loses nothing.
double angle_from_start(const Curve& arc, Vec centre, Vec to) {
  const double side = arc.bulge > 0 ? 1.0 : -1.0;
  const double angle = std::atan2(-side * cross(centre, to), dot(centre, centre) - dot(centre, to));
  return angle < 0 ? angle + 2 * std::numbers::pi : angle;
}

Nearest nearest_end(const Curve& curve, Vec to) {
  const double from_start = length(to);
  const double from_end = length(to - curve.chord());
  return from_start <= from_end ? Nearest{from_start, 0} : Nearest{from_end, 1};
}

Nearest nearest_in_steps(const Curve& curve, Vec to) {
  if (curve.straight()) {
    const Vec chord = curve.chord();
    const double squared = dot(chord, chord);
    const double share = squared > 0 ? std::clamp(dot(to, chord) / squared, 0.0, 1.0) : 0.0;
    return {length(to - share * chord), share};
  }
  const Vec centre = curve.centre();
  const double radius = curve.radius();
  const double out = length(to - centre);
  if (out == 0) return {radius, 0};
  const double sweep = std::abs(curve.sweep());
  const double angle = angle_from_start(curve, centre, to);
  if (angle > sweep) return nearest_end(curve, to);
  // out - radius, by the difference of the squares
  return {std::abs(dot(to, to) - 2 * dot(to, centre)) / (out + radius), angle / sweep};
}

}  // namespace

struct Index::Tree {
  boost::geometry::index::rtree<Entry, boost::geometry::index::rstar<16>> entries;
};

Index::Index(std::span<const Box> boxes) : tree_(std::make_unique<Tree>()) {
  const std::vector<Entry> all = entries(boxes);
  tree_->entries = decltype(tree_->entries)(all.begin(), all.end());  // packed: all at once
}
Index::~Index() = default;
Index::Index(Index&&) noexcept = default;
Index& Index::operator=(Index&&) noexcept = default;

std::vector<std::uint32_t> Index::touching(const Box& box) const {
  std::vector<std::uint32_t> found;
  for (auto at = tree_->entries.qbegin(boost::geometry::index::intersects(tree_box(box))); at != tree_->entries.qend();
       ++at) {
    found.push_back(at->second);
  }
  std::ranges::sort(found);
  return found;
}

Box bounds(const Curve& curve) {
  const Vec chord = curve.chord();
  Vec low{std::min(0.0, chord.x), std::min(0.0, chord.y)};
  Vec high{std::max(0.0, chord.x), std::max(0.0, chord.y)};
  if (!curve.straight()) {
    const Vec centre = curve.centre();
    const double radius = curve.radius();
    const double sweep = std::abs(curve.sweep());
    for (const Vec way : {Vec{1, 0}, Vec{0, 1}, Vec{-1, 0}, Vec{0, -1}}) {
      const Vec extreme = centre + radius * way;
      if (angle_from_start(curve, centre, extreme) > sweep) continue;
      low = {std::min(low.x, extreme.x), std::min(low.y, extreme.y)};
      high = {std::max(high.x, extreme.x), std::max(high.y, extreme.y)};
    }
  }
  using units::Length;
  return {{curve.start.x + Length::of_steps(floored(low.x)), curve.start.y + Length::of_steps(floored(low.y))},
          {curve.start.x + Length::of_steps(ceiled(high.x)), curve.start.y + Length::of_steps(ceiled(high.y))}};
}

bool past_reach(Point point) {
  return point.x > reach_of_plan || point.x < -reach_of_plan || point.y > reach_of_plan || point.y < -reach_of_plan;
}

bool past_reach(const Curve& curve) {
  const Box box = bounds(curve);
  return past_reach(box.low) || past_reach(box.high);
}

Nearest nearest(const Curve& curve, Point to) {
  Nearest found = nearest_in_steps(curve, to - curve.start);
  found.distance /= units::Length::steps_per_metre;
  return found;
}

}  // namespace geometry
