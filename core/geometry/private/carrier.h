// The line or circle on which an edge lies, moved aside: what corners of offsets are computed from.
#pragma once

#include <optional>

#include "geometry/edge.h"

namespace geometry {

// Steps from a local origin of the caller's. A line runs along `along` (a unit vector) through `point`; a circle has
// its centre at `point` and is run round in the sense of `turn` (1 counter-clockwise, -1 clockwise; 0 is a line).
struct Carrier {
  Vec point;
  Vec along;
  double radius = 0;
  int turn = 0;

  double left(Vec at) const;    // how far `at` lies to the left, steps; negative to the right
  Vec normal(Vec at) const;     // unit vector to the left at the place nearest to `at`
  Vec direction(Vec at) const;  // unit vector along, there
};

// Of a curve that starts at `start`, moved to its left (negative: right). Nothing when an arc's radius is used up.
// Arcs of over 1e13 steps of radius count as straight: within 1 m they are so to 1/100 step.
std::optional<Carrier> carrier(const Curve& curve, Vec start, double to_the_left);

// Where two carriers meet, the place that Newton's steps from `near` lead to; nothing when they lead nowhere (no
// meeting, or a grazing one).
std::optional<Vec> meeting(const Carrier& a, const Carrier& b, Vec near);

// The angle turned from `from` to `to` on a circle, both lying on it, positive in the circle's own sense. Of the
// possible turns, whole rounds apart, the one nearest to |sweep| counts, so that a negative result means an edge run
// backwards.
double turn_between(const Carrier& on, Vec from, Vec to, double sweep);

// The bulge of the circle's arc between two points that have been rounded to the grid, turning by about `sweep`. The
// arc is bellied so that what rounding adds on one side of the true circle it gives back on the other: neither area nor
// length feel the grid. 0 on a line.
double bulge_between(const Carrier& on, Vec from, Vec to, double sweep);

}  // namespace geometry
