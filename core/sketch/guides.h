// Help lines for the next point of what is drawn: square or parallel to what is in hand, tangent to its last arc, as
// long as its last edges, and those that help to close it.
//
// Order, with what is drawn already (snap.h): corner, also of what is in hand; crossing, also of a help line with an
// edge; middle; edge; help line; grid. Help lines never take hold of each other: what would be worth a crossing of two
// (a corner square to the last edge from which the shape closes square to its first) is worked out as a point.
#pragma once

#include <optional>
#include <vector>

#include "sketch/snap.h"
#include "sketch/tool.h"

namespace sketch {

// What the next point is drawn on from. `along` is the direction of the edge on which the first point was set.
struct InHand {
  std::vector<geometry::Curve> edges;   // set already, in order
  std::vector<geometry::Point> points;  // their corners; the last is where the next edge starts
  std::optional<geometry::Vec> along;
  bool closes = false;
  // The unit direction in which the last edge ends, or the given one; east where there is none.
  geometry::Vec direction() const;
};

// A line through `from` along the unit vector `along`, or a circle about `from`.
struct Guide {
  Takes takes = Takes::nothing;
  geometry::Point from;
  geometry::Vec along;
  double radius = 0;  // steps; 0 is a line
};
std::vector<Guide> guides(const InHand& in_hand);
// Corners from which an outline closes square to its first edge, or in line with it.
std::vector<geometry::Point> closing_points(const InHand& in_hand);

struct Pointer {
  geometry::Point at;
  Hold hold;
};
// Where the pointer takes hold, and the help line that brought it there.
struct Aimed {
  Taken taken;
  std::optional<Guide> guide;
  geometry::Point at() const { return taken.at; }
};
// `hold.free` takes hold of nothing. `hold.steps` keeps the direction from the last point at whole steps of 15 degrees
// from the last edge and leaves help lines and grid alone; a corner, crossing, middle or edge within reach still wins.
Aimed aimed(const Scene& scene, const InHand& in_hand, const Pointer& pointer);
// The same without help lines and steps: what is drawn, the points in hand, the grid.
Aimed aimed_at_points(const Scene& scene, const InHand& in_hand, const Pointer& pointer);

}  // namespace sketch
