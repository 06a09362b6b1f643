// What of a selected element can be taken hold of: its corners, the middles of its straight edges (which move square to
// themselves), the middles of its arcs (which bend).
#pragma once

#include <optional>

#include "plan/edits.h"
#include "sketch/view.h"

namespace sketch {

enum class GripKind { corner, edge, bend };
struct HotGrip {
  GripKind what = GripKind::corner;
  plan::ElementId of;
  plan::Corner corner;  // itself, or where the edge starts
  geometry::Point at;
};

// Corners before middles, the nearest first, within `reach` steps.
std::optional<HotGrip> hot_grip(const plan::Element& element, geometry::Point at, double reach);

// The element with what the grip holds taken to `to`.
problem::Result<plan::Element> changed_grip(const plan::Element& element, const HotGrip& grip, geometry::Point to);
// The bulge of the arc over the curve's chord through the point; 0 where the three stand in a line.
double bulge_through(const geometry::Curve& curve, geometry::Point at);

// Lengths of the edges that meet in the grip's corner, or of the edge itself.
void add_chips(View& view, const plan::Element& element, const HotGrip& grip, units::System system);

}  // namespace sketch
