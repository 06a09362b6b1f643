#include "sketch/shapes.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/freeform.h"

namespace sketch {

using geometry::Curve;
using geometry::left_of;
using geometry::Point;
using geometry::Ring;
using geometry::Vec;

namespace {
double limited(double bulge) { return std::isfinite(bulge) ? std::clamp(bulge, -most_bulge, most_bulge) : most_bulge; }
}  // namespace

// The angle at the third point between the rays to both ends is 180 degrees less half the sweep.
double bulge_through(Point start, Point end, Point third) {
  const Vec a = start - third;
  const Vec b = end - third;
  const double turn = cross(a, b);
  if (length(a) == 0 || length(b) == 0 || std::abs(turn) <= 1e-9 * length(a) * length(b)) return 0;
  const double at_third = std::atan2(std::abs(turn), dot(a, b));
  const double half_sweep = std::numbers::pi - at_third;
  return limited((turn < 0 ? 1 : -1) * std::tan(half_sweep / 2));
}

// The chord turns from the tangent by half the sweep.
double bulge_along(Vec tangent, Vec chord) {
  const double half_sweep = std::atan2(cross(tangent, chord), dot(tangent, chord));
  return std::abs(half_sweep) < 1e-9 ? 0 : limited(std::tan(half_sweep / 2));
}

std::optional<double> bulge_of_radius(double chord, double radius, bool left, bool large) {
  if (!(radius > 0) || chord <= 0 || chord > 2 * radius + 1) return {};
  const double half_sweep = std::asin(std::min(1.0, chord / (2 * radius)));
  const double turned = large ? std::numbers::pi - half_sweep : half_sweep;
  return limited((left ? 1 : -1) * std::tan(turned / 2));
}

double bulge_of_sweep(double radians) { return limited(std::tan(radians / 4)); }

Ring rectangle(Point corner, Vec along, double width, double depth) {
  const Vec across = left_of(along);
  return {{corner, 0, {}},
          {geometry::moved(corner, width * along), 0, {}},
          {geometry::moved(corner, width * along + depth * across), 0, {}},
          {geometry::moved(corner, depth * across), 0, {}}};
}

Ring circle(Point centre, double radius) {
  return {{geometry::moved(centre, {-radius, 0}), 1, {}}, {geometry::moved(centre, {radius, 0}), 1, {}}};
}

Ring circle_across(Point a, Point b) { return {{a, 1, {}}, {b, 1, {}}}; }

std::optional<Ring> circle_through(Point a, Point b, Point c) {
  const double first = bulge_through(a, b, c);
  if (first == 0) return {};
  // From a to b the arc that does not hold c: its bulge is the other part of the turn, the other way round.
  const auto other = [](Point from, Point to, Point third) { return -1 / bulge_through(from, to, third); };
  return Ring{{a, other(a, b, c), {}}, {b, other(b, c, a), {}}, {c, other(c, a, b), {}}};
}

std::vector<Curve> drawn_curves(const plan::DrawnRing& ring) {
  if (ring.through.size() >= 3) return geometry::curves(geometry::freeform(ring.through, true));
  if (ring.through.empty()) return geometry::curves(ring.edges);
  Ring straight;
  for (const Point point : ring.through) straight.push_back({point, 0, {}});
  return geometry::curves(straight);
}

std::vector<Curve> drawn_curves(const plan::DrawnLine& line) {
  Ring edges = line.edges;
  Point end = line.end;
  if (line.through.size() >= 2) {
    edges = geometry::freeform(line.through, false);
    end = line.through.back();
  }
  std::vector<Curve> made;
  for (std::size_t i = 0; i < edges.size(); ++i)
    made.push_back({edges[i].from, i + 1 < edges.size() ? edges[i + 1].from : end, edges[i].bulge});
  return made;
}

plan::DrawnLine as_line(const std::vector<Curve>& curves) {
  plan::DrawnLine line;
  for (const Curve& curve : curves) line.edges.push_back({curve.start, curve.bulge, {}});
  line.end = curves.back().end;
  return line;
}

double area(const std::vector<Curve>& ring) {
  double twice = 0;
  double bellies = 0;
  for (const Curve& curve : ring) {
    twice += cross(curve.start - ring.front().start, curve.end - ring.front().start);
    bellies += curve.segment_area();
  }
  constexpr double steps = units::Length::steps_per_metre;
  return (twice / 2 + bellies) / (steps * steps);
}

plan::DrawnRing counter_clockwise(plan::DrawnRing ring) {
  if (area(drawn_curves(ring)) >= 0) return ring;
  if (!ring.through.empty()) {
    std::reverse(ring.through.begin() + 1, ring.through.end());
    return ring;
  }
  // Walked backwards from the same first corner.
  Ring back;
  const std::size_t count = ring.edges.size();
  for (std::size_t i = 0; i < count; ++i) {
    const std::size_t from = (count - i) % count;
    back.push_back({ring.edges[from].from, -ring.edges[(from + count - 1) % count].bulge, {}});
  }
  ring.edges = std::move(back);
  return ring;
}

}  // namespace sketch
