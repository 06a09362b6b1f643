// Planar pieces laid over a ground, the highest of them at every place: how a surface that falls away from several
// edges comes about, exactly and without a grid.
#pragma once

#include <span>
#include <vector>

#include "geometry/surface.h"

namespace takeoff::levels {

// The side of a line where a x + b y + c >= 0; a and b of length 1, so that the value is metres from the line.
struct HalfPlane {
  double a = 0;
  double b = 0;
  double c = 0;
  double at(geometry::Vec place) const { return a * place.x + b * place.y + c; }
};
// What lies on the side of `place` towards which `towards` points (a unit vector).
HalfPlane beyond(geometry::Vec place, geometry::Vec towards);

// Counts within all its sides. Of the pieces at one place the one with the highest `rank` gives its `plane`.
struct Piece {
  std::vector<HalfPlane> sides;
  geometry::Plane rank;
  geometry::Plane plane;
  int source = 0;  // the caller's own number
};
struct Cell {
  std::vector<geometry::Vec> ring;
  geometry::Plane rank;
  geometry::Plane plane;
  int source = -1;  // no piece lies there
};

// The convex pieces of `ground` (their planes are not read) cut where the highest piece changes. Areas add up to the
// ground's but for slivers under a millionth of a square millimetre.
std::vector<Cell> highest(const geometry::Surface& ground, std::span<const Piece> pieces);

// The plane with this height at a place and this gradient.
geometry::Plane plane_at(geometry::Vec place, double height, geometry::Vec gradient);

}  // namespace takeoff::levels
