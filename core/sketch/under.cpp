// What lies under the pointer, and what a dragged box takes.
#include <algorithm>
#include <cmath>

#include "geometry/flatten.h"
#include "geometry/index.h"
#include "plan/footprint.h"
#include "sketch/snap.h"

namespace sketch {

using geometry::Box;
using geometry::Curve;
using geometry::Point;
using geometry::Vec;
using plan::DrawnEdge;
using plan::Element;
using units::Length;

namespace {

// By even and odd crossings of a ray to the east, over chords: an outline that crosses itself is picked too.
bool inside_rings(const std::vector<DrawnEdge>& edges, Point at) {
  bool inside = false;
  for (const DrawnEdge& edge : edges) {
    if (edge.start.ring < 0) continue;
    const std::vector<Point> chords = geometry::flatten(edge.curve);
    for (std::size_t i = 0; i + 1 < chords.size(); ++i) {
      const Vec a = chords[i] - at;
      const Vec b = chords[i + 1] - at;
      if ((a.y > 0) == (b.y > 0)) continue;
      if ((cross(a, b) > 0) == (b.y > a.y)) inside = !inside;
    }
  }
  return inside;
}

bool has_ring(const std::vector<DrawnEdge>& edges) {
  return std::ranges::any_of(edges, [](const DrawnEdge& edge) { return edge.start.ring >= 0; });
}

// The body of a wall, a kerb or a channel belongs to its line.
bool on_its_body(const plan::Job& job, const plan::ElementPtr& element, const std::vector<DrawnEdge>& edges, Point at) {
  if (edges.empty() || has_ring(edges)) return false;
  const Length near = Length::millimetres(2000);
  const bool close = std::ranges::any_of(edges, [&](const DrawnEdge& edge) {
    return geometry::overlap(geometry::grown(bounds(edge.curve), near), {at, at});
  });
  if (!close) return false;
  std::vector<problem::Problem> unused;
  return plan::footprint(job, element, unused).footprint.contains(at);
}

enum class Touch { none, area, line };

Touch touch(const plan::Job& job, const plan::ElementPtr& element, Point at, double reach) {
  const std::vector<DrawnEdge> edges = plan::drawn_edges(*element);
  const auto near = [&](const DrawnEdge& edge) {
    return geometry::nearest(edge.curve, at).distance * Length::steps_per_metre <= reach;
  };
  const bool on_edge = std::ranges::any_of(edges, near);
  if (has_ring(edges)) return on_edge || inside_rings(edges, at) ? Touch::area : Touch::none;
  if (on_edge || on_its_body(job, element, edges, at)) return Touch::line;
  const auto grips = plan::corners(*element);
  const bool on_point =
      std::ranges::any_of(grips, [&](const plan::Grip& grip) { return geometry::length(grip.at - at) <= reach; });
  return on_point ? Touch::line : Touch::none;
}

Box box_of(Point a, Point b) {
  return {{std::min(a.x, b.x), std::min(a.y, b.y)}, {std::max(a.x, b.x), std::max(a.y, b.y)}};
}

bool holds(const Box& box, const Box& inner) {
  return inner.low.x >= box.low.x && inner.low.y >= box.low.y && inner.high.x <= box.high.x &&
         inner.high.y <= box.high.y;
}

bool meets(const Curve& curve, const Box& box) {
  if (!geometry::overlap(geometry::bounds(curve), box)) return false;
  const std::vector<Point> chords = geometry::flatten(curve);
  for (std::size_t i = 0; i + 1 < chords.size(); ++i) {
    // A straight piece misses a box where all corners of the box lie on one side of it.
    const Vec along = chords[i + 1] - chords[i];
    if (!geometry::overlap(box_of(chords[i], chords[i + 1]), box)) continue;
    bool left = false;
    bool right = false;
    for (const Point corner : {box.low, Point{box.high.x, box.low.y}, box.high, Point{box.low.x, box.high.y}}) {
      const double side = cross(along, corner - chords[i]);
      left = left || side >= 0;
      right = right || side <= 0;
    }
    if (left && right) return true;
  }
  return false;
}

bool wholly_in(const Element& element, const Box& box) {
  const auto edges = plan::drawn_edges(element);
  const auto grips = plan::corners(element);
  if (edges.empty() && grips.empty()) return false;
  return std::ranges::all_of(edges, [&](const DrawnEdge& edge) { return holds(box, geometry::bounds(edge.curve)); }) &&
         std::ranges::all_of(grips, [&](const plan::Grip& grip) { return holds(box, {grip.at, grip.at}); });
}

bool touched_by(const Element& element, const Box& box) {
  const auto edges = plan::drawn_edges(element);
  const auto grips = plan::corners(element);
  return std::ranges::any_of(edges, [&](const DrawnEdge& edge) { return meets(edge.curve, box); }) ||
         std::ranges::any_of(grips, [&](const plan::Grip& grip) { return holds(box, {grip.at, grip.at}); }) ||
         (has_ring(edges) && inside_rings(edges, box.low));
}

}  // namespace

std::vector<plan::ElementId> under(const plan::Job& job, Point at, double reach) {
  std::vector<plan::ElementId> lines;
  std::vector<plan::ElementId> areas;
  for (auto element = job.elements.rbegin(); element != job.elements.rend(); ++element) {
    const Touch how = touch(job, *element, at, reach);
    if (how == Touch::line) lines.push_back((*element)->id);
    if (how == Touch::area) areas.push_back((*element)->id);
  }
  lines.insert(lines.end(), areas.begin(), areas.end());
  return lines;
}

std::vector<plan::ElementId> inside(const plan::Job& job, Point from, Point to) {
  const Box box = box_of(from, to);
  const bool wholly = to.x >= from.x;
  std::vector<plan::ElementId> taken;
  for (const plan::ElementPtr& element : job.elements)
    if (wholly ? wholly_in(*element, box) : touched_by(*element, box)) taken.push_back(element->id);
  return taken;
}

}  // namespace sketch
