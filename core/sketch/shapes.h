// Whole shapes from few points, and the bulges of arcs drawn in different ways. Everything in steps; an arc turns left
// where its bulge is positive (tan of a quarter of its sweep).
#pragma once

#include <optional>
#include <vector>

#include "plan/drawn.h"

namespace sketch {

// The bulge limit of an edge: a sweep of 359.77 degrees. What would turn further is cut to it.
inline constexpr double most_bulge = 1e3;

// The arc from start to end through the third point; 0 (a line) where the three are in one line.
double bulge_through(geometry::Point start, geometry::Point end, geometry::Point third);
// The arc that leaves its start along `tangent` and ends `chord` away.
double bulge_along(geometry::Vec tangent, geometry::Vec chord);
// The arc of this radius over a chord; `left`: it turns left; `large`: more than half a circle. Nothing where the
// circle is too small for the chord.
std::optional<double> bulge_of_radius(double chord, double radius, bool left, bool large);
double bulge_of_sweep(double radians);

// One corner, the unit direction of its first side, and both sides with their signs (left of the direction: positive).
geometry::Ring rectangle(geometry::Point corner, geometry::Vec along, double width, double depth);
// A whole circle is two half circles.
geometry::Ring circle(geometry::Point centre, double radius);
geometry::Ring circle_across(geometry::Point a, geometry::Point b);
// Three arcs through three points; nothing where they are in one line.
std::optional<geometry::Ring> circle_through(geometry::Point a, geometry::Point b, geometry::Point c);

// Outlines are kept counter-clockwise: of points in the other order the first stays the first.
plan::DrawnRing counter_clockwise(plan::DrawnRing ring);
// The ring or line with its control points as curves.
std::vector<geometry::Curve> drawn_curves(const plan::DrawnRing& ring);
std::vector<geometry::Curve> drawn_curves(const plan::DrawnLine& line);
plan::DrawnLine as_line(const std::vector<geometry::Curve>& curves);  // one after the other; at least one
double area(const std::vector<geometry::Curve>& ring);                // m2, counter-clockwise positive

}  // namespace sketch
