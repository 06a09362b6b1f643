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

// The strip of ground between edge i and its moved self, cut square at both ends (a sector's inner end is its centre
// when the radius is used up), and what lies between it and the next at a corner that opens on that side: a kite to the
// tip, cut off past the limit, or a sector. None or one ring, its ground to the left; neighbours share their borders to
// the step. Edges keep their origins, square ends have none.
std::vector<Ring> strip(const Row& row, std::size_t i);
std::vector<Ring> corner_piece(const Row& row, std::size_t i, Corner corner, double limit);

}  // namespace geometry
