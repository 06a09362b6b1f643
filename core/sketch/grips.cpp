#include "sketch/grips.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "sketch/chips.h"

namespace sketch {

namespace {

using geometry::Point;
using geometry::Vec;

Point middle(const geometry::Curve& curve) { return geometry::moved(curve.start, curve.at(0.5)); }

std::optional<plan::DrawnEdge> edge_at(const plan::Element& element, plan::Corner start) {
  for (const plan::DrawnEdge& edge : plan::drawn_edges(element)) {
    if (edge.start == start) return edge;
  }
  return std::nullopt;
}

bool clockwise(const plan::Element& element, int ring) {
  geometry::Ring edges;
  for (const plan::DrawnEdge& edge : plan::drawn_edges(element)) {
    if (edge.start.ring == ring) edges.push_back({edge.curve.start, edge.curve.bulge, {}});
  }
  return ring >= 0 && geometry::signed_area(edges).si() < 0;
}

}  // namespace

// Of the arc over the curve's chord through the point: half the angle over what is seen of the chord from there.
double bulge_through(const geometry::Curve& curve, Point at) {
  const Vec to_start = curve.start - at;
  const Vec to_end = curve.end - at;
  const double cross = geometry::cross(to_start, to_end);
  if (cross == 0) return 0;
  const double seen = std::atan2(std::abs(cross), geometry::dot(to_start, to_end));
  const double bulge = std::tan((std::numbers::pi - seen) / 2);
  return cross < 0 ? bulge : -bulge;  // a point to the right of the chord lies on an arc that turns left
}

std::optional<HotGrip> hot_grip(const plan::Element& element, Point at, double reach) {
  std::optional<HotGrip> best;
  double least = reach;
  const auto offer = [&](GripKind what, plan::Corner corner, Point place) {
    const double distance = geometry::length(place - at);
    if (distance > least) return;
    least = distance;
    best = HotGrip{what, element.id, corner, place};
  };
  for (const plan::Grip& grip : plan::corners(element)) offer(GripKind::corner, grip.corner, grip.at);
  if (best) return best;
  const auto grips = plan::corners(element);
  for (const plan::DrawnEdge& edge : plan::drawn_edges(element)) {
    const auto corner = std::ranges::find(grips, edge.start, &plan::Grip::corner);
    const bool freeform = corner != grips.end() && corner->control;
    if (freeform) continue;
    // An edge too short to have room between its corners has no middle to take hold of.
    if (edge.curve.length() < 4 * reach) continue;
    offer(edge.curve.straight() ? GripKind::edge : GripKind::bend, edge.start, middle(edge.curve));
  }
  return best;
}

problem::Result<plan::Element> changed_grip(const plan::Element& element, const HotGrip& grip, Point to) {
  if (grip.what == GripKind::corner) return plan::with_corner_at(element, grip.corner, to);
  const auto edge = edge_at(element, grip.corner);
  if (!edge) return element;
  if (grip.what == GripKind::bend) return plan::with_bulge(element, grip.corner, bulge_through(edge->curve, to));
  const Vec right = -geometry::left_of(edge->curve.direction(0.5));
  const double out = geometry::dot(to - grip.at, right) * (clockwise(element, grip.corner.ring) ? -1 : 1);
  return plan::with_edge_moved(element, grip.corner, units::Length::of_steps(std::llround(out)));
}

void add_chips(View& view, const plan::Element& element, const HotGrip& grip, units::System system) {
  const auto edges = plan::drawn_edges(element);
  const auto corner = edge_at(element, grip.corner);
  for (const plan::DrawnEdge& edge : edges) {
    if (edge.start.ring != grip.corner.ring) continue;
    const bool own = edge.start == grip.corner;
    const bool before = corner && edge.curve.end == corner->curve.start;
    const bool after = corner && grip.what == GripKind::edge && edge.curve.start == corner->curve.end;
    if (own || before || after)
      view.chips.push_back(edge.curve.straight() ? length_chip(edge.curve, system) : radius_chip(edge.curve, system));
  }
}

}  // namespace sketch
