// Heights over the plan, planar piece by piece: the ground through survey points, a finished surface, and the earth
// between two of them.
//
// Plan coordinates here are metres from the surface's own origin, a grid point, so that moving everything by whole
// steps gives the same bits. Heights are metres above the job's datum.
#pragma once

#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "geometry/outline.h"

namespace geometry {

// height = z + gx x + gy y. Water runs towards (-gx, -gy).
struct Plane {
  double z = 0;
  double gx = 0;
  double gy = 0;
  double at(Vec place) const { return z + gx * place.x + gy * place.y; }
  double fall() const { return std::hypot(gx, gy); }  // a share: 0.02 is 2 %
  bool operator==(const Plane&) const = default;
};
// Through three places that do not stand in one line (else: level, at the mean of the three).
Plane plane_through(Vec a, double za, Vec b, double zb, Vec c, double zc);

// One convex piece, counter-clockwise, at least three corners.
struct Facet {
  std::vector<Vec> ring;
  Plane plane;
  bool guess = false;  // outside of what was measured
  bool operator==(const Facet&) const = default;
};

// Facets that do not overlap. Neighbours need not share whole edges, and their heights may differ there (a step).
class Surface {
 public:
  Surface() = default;
  Surface(Point origin, std::vector<Facet> facets);
  Point origin() const { return origin_; }
  const std::vector<Facet>& facets() const { return facets_; }
  bool empty() const { return facets_.empty(); }
  Vec place(Point point) const;  // metres from the origin
  Point point(Vec place) const;  // the nearest grid point
  // Of the facet that has the point; on a shared edge the first of them. Nothing outside.
  std::optional<double> height(Vec place) const;
  std::optional<double> height(Point point) const { return height(place(point)); }
  const Facet* facet(Vec place) const;
  std::vector<std::uint32_t> touching(Vec low, Vec high) const;  // facets whose box touches that box, ascending
  double area() const;                                           // m2 of the plan
  bool operator==(const Surface& other) const;

 private:
  struct Grid;
  Point origin_;
  std::vector<Facet> facets_;
  std::shared_ptr<const Grid> grid_;
};

// A measured point of the ground.
struct Spot {
  Point at;
  double height = 0;  // metres
  bool operator==(const Spot&) const = default;
};

// The ground through the spots: their Delaunay triangles; the order of the spots changes nothing. Beyond their hull the
// surface goes on level from its edge, `reach` metres out, and is marked as a guess. One spot or all in a line: level
// strips, all guessed. Two spots at one place that differ in height: "level-twice" with the place.
problem::Result<Surface> through(std::span<const Spot> spots, double reach);

// A region cut into convex pieces, arcs flattened within `flat` metres; plane level at 0. Areas add up to the region's
// within perimeter x flat.
problem::Result<Surface> pieces(const Region& region, Point origin, double flat = 0.0005);

// What of `surface` lies over `ground` (convex pieces; their planes are not read), each with the surface's plane.
Surface over(const Surface& surface, const Surface& ground);

// The same surface moved up (positive) or down.
Surface raised(const Surface& surface, double by);

// What lies between two surfaces where both are: exact prisms, facet by facet, split where they cross.
struct Between {
  double above = 0;       // m3 where `upper` lies over `lower`
  double below = 0;       // m3 where it lies under it; never negative
  double area_above = 0;  // m2 of the plan
  double area_below = 0;
  double greatest = 0;  // metres, upper less lower; 0 where they do not meet
  double least = 0;
  Vec at_greatest;  // from the origin of `upper`
  Vec at_least;
  double guessed = 0;  // m2 of the plan where one of the two is a guess
};
Between between(const Surface& upper, const Surface& lower);

// The part of a convex ring with a x + b y + c >= 0; empty where nothing is left.
std::vector<Vec> cut(std::span<const Vec> ring, double a, double b, double c);
double area(std::span<const Vec> ring);  // m2, counter-clockwise positive

}  // namespace geometry
