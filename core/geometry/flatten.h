// Arcs as chords, for those who need straight lines: overlays, laying and pictures.
#pragma once

#include <span>
#include <vector>

#include "geometry/edge.h"

namespace geometry {

// The flattening error of an overlay: no chord lies further than this from its arc.
inline constexpr units::Length flattening = units::Length::of_steps(160);  // 0.5 mm

// The curve by halving until no chord is further than `within` from it: grid points from start to end, both included.
// The same points from either end, and moved by whole steps when the curve is; a straight curve gives its two ends.
std::vector<Point> flatten(const Curve& curve, units::Length within = flattening);

// A closed ring as its points, each once, in order.
std::vector<Point> flatten(std::span<const Edge> ring, units::Length within = flattening);

}  // namespace geometry
