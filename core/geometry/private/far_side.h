// Edges beside themselves, and the line beside a path: what `parallel` gives, and the far side of a band.
#pragma once

#include "geometry/offset.h"
#include "geometry/private/carrier.h"

namespace geometry {

// One edge and the line or circle it lies on when moved. Places are steps from a local origin of the caller's.
struct Beside {
  Curve from;
  Vec start;
  Origin origin;
  std::optional<Carrier> on;  // nothing when an arc's radius is used up

  Vec end() const { return start + from.chord(); }
  Vec foot_at_start(double left) const { return start + left * left_of(from.direction(0)); }
  Vec foot_at_end(double left) const { return end() + left * left_of(from.direction(1)); }
};
Beside beside(const Curve& from, Vec start, Origin origin, double left);

// Between two moved edges: where the first stops, where the second starts, and what straight pieces lie between.
struct Joint {
  std::vector<Vec> points;      // one at least
  std::vector<Origin> origins;  // of the pieces between them: a corner's own piece is the edge's before it
  bool bridged = false;         // the neighbours do not meet; a straight piece joins them
  double bulge = 0;             // of the one piece of a rounded corner
};

double turning(Vec before, Vec after);                                 // signed angle from one direction to another
bool smooth(const Beside& before, const Beside& after);                // they meet tangentially
bool outside(const Beside& before, const Beside& after, double left);  // the corner opens on the side moved to

// Neighbours in their source: a smooth joint, an outside corner (with its mitre, or cut off square to its bisector at
// limit x width) or an inside one.
Joint joint_of_neighbours(const Beside& before, const Beside& after, double left, double limit);

// Open or closed as the path is; empty when nothing is left. Outside corners whose tip lies further than limit x width
// from their corner are cut off, or all are rounded.
struct FarSide {
  Ring edges;
  Point end;
  bool bridged = false;
  bool whole = true;  // no edge vanished
};
FarSide far_side(const Path& path, double to_the_left, double limit, Corner corner = Corner::mitred);

// What lies at an outside corner between the end of one moved edge and the start of the next, corner at (0, 0): the
// tip, or the two points where it is cut off past the limit. Directions are unit vectors.
std::vector<Vec> mitre(Vec before, Vec after, double to_the_left, double limit);

}  // namespace geometry
