// The ground beside edges, piece by piece: what offsets and bands are put together from.
#pragma once

#include <span>

#include "geometry/offset.h"
#include "geometry/private/far_side.h"

namespace geometry {

// A chain of edges, each to be moved to its left by `left` (negative: right). Places are steps from `origin`.
struct Row {
  Point origin;
  std::vector<Beside> edges;
  bool closed = true;
  double left = 0;
};
Row row(std::span<const Edge> ring, Point origin, double left);  // of a closed ring
Row row(const Path& path, double left);                          // about the path's first point

// For each edge the strip of ground between it and its moved self, cut square at both ends (a sector's inner end is its
// centre when the radius is used up); for each corner that opens on that side the piece between two strips: a kite to
// the tip, cut off past the limit, or a sector. Neighbours share their borders to the step. Each ring has its ground to
// the left; edges keep their origins, the square ends have none.
std::vector<Ring> strips(const Row& row, Corner corner, double limit);

}  // namespace geometry
