// The ground through measured points: Delaunay triangles, and level strips beyond their edge.
#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <set>

#include "geometry/private/geos.h"
#include "geometry/surface.h"

namespace geometry {

namespace {

constexpr double metres_per_step = 1.0 / 320'000;

// Sorted, each place once.
problem::Result<std::vector<Spot>> in_order(std::span<const Spot> spots) {
  std::vector<Spot> sorted(spots.begin(), spots.end());
  std::ranges::sort(sorted,
                    [](const Spot& a, const Spot& b) { return a.at != b.at ? a.at < b.at : a.height < b.height; });
  std::vector<Spot> once;
  for (const Spot& spot : sorted) {
    if (once.empty() || once.back().at != spot.at) {
      once.push_back(spot);
      continue;
    }
    if (once.back().height == spot.height) continue;
    problem::Problem fault{problem::Severity::problem,
                           "level-twice",
                           "two levels stand at one place with two heights",
                           "take one of them away, or move it to where it was read",
                           {}};
    fault.place.at = xy(spot.at);
    return std::unexpected(std::move(fault));
  }
  return once;
}

geos::Geometry points(std::span<const Spot> spots, Point origin) {
  std::vector<GEOSGeometry*> made;
  made.reserve(spots.size());
  for (const Spot& spot : spots) {
    const Vec v = spot.at - origin;
    made.push_back(GEOSGeom_createPointFromXY_r(geos::context(), v.x, v.y));
  }
  return geos::Geometry(
      GEOSGeom_createCollection_r(geos::context(), GEOS_MULTIPOINT, made.data(), static_cast<unsigned>(made.size())));
}

struct Maker {
  Point origin;
  double reach;
  std::map<Point, double> heights;
  std::vector<Facet> facets;
  std::set<std::pair<Point, Point>> edges = {};  // of the triangles, as they run round them

  Vec place(Point p) const { return metres_per_step * (p - origin); }

  void triangle(std::span<const Point> corners) {
    Facet facet;
    for (const Point p : corners) facet.ring.push_back(place(p));
    facet.plane = plane_through(facet.ring[0], heights.at(corners[0]), facet.ring[1], heights.at(corners[1]),
                                facet.ring[2], heights.at(corners[2]));
    facets.push_back(std::move(facet));
    for (std::size_t i = 0; i < corners.size(); ++i) edges.emplace(corners[i], corners[(i + 1) % corners.size()]);
  }

  // GEOS may leave out flat triangles along the hull. What lies between a hull edge and the triangles' own border is
  // filled from that border, dent by dent.
  void fill(std::span<const Point> chain) {
    std::map<Point, Point> border;
    for (const auto& [from, to] : edges)
      if (!edges.contains({to, from})) border.emplace(from, to);
    for (std::size_t i = 0; i < chain.size(); ++i) {
      const Point from = chain[i], to = chain[(i + 1) % chain.size()];
      std::vector<Point> path{from};
      for (auto at = border.find(from); path.back() != to && at != border.end(); at = border.find(at->second)) {
        const Point next = at->second;
        while (path.size() >= 2 && cross(next - path[path.size() - 2], path.back() - path[path.size() - 2]) > 0) {
          const Point dent = path.back();
          path.pop_back();
          triangle(std::vector<Point>{path.back(), next, dent});
        }
        path.push_back(next);
        if (path.size() > border.size()) break;
      }
    }
  }

  // Level outwards from the edge a -> b, the ground on its left.
  void strip(Point a, Point b) {
    const Vec pa = place(a), pb = place(b);
    const Vec along = pb - pa;
    const Vec out = (reach / length(along)) * Vec{along.y, -along.x};
    Facet facet{{pa, pa + out, pb + out, pb}, {}, true};
    facet.plane = plane_through(pa, heights.at(a), pb, heights.at(b), pa + out, heights.at(a));
    facets.push_back(std::move(facet));
  }

  // Level round the corner `at`, from one direction turning left to another, in steps of at most 45 degrees.
  void wedge(Point at, double from, double turn) {
    if (turn < 1e-12) return;
    const int steps = static_cast<int>(std::ceil(turn / (std::numbers::pi / 4) - 1e-9));
    const double each = turn / steps, far = reach / std::cos(each / 2);
    const Vec p = place(at);
    for (int i = 0; i < steps; ++i) {
      const double a = from + i * each, b = a + each;
      Facet facet{{p, p + far * Vec{std::cos(a), std::sin(a)}, p + far * Vec{std::cos(b), std::sin(b)}}, {}, true};
      facet.plane.z = heights.at(at);
      facets.push_back(std::move(facet));
    }
  }

  // Round the edge of what is measured, a chain of points with the ground on its left, closed.
  void beyond(std::span<const Point> chain) {
    const std::size_t n = chain.size();
    if (n == 1) return wedge(chain[0], 0, 2 * std::numbers::pi);
    for (std::size_t i = 0; i < n; ++i) {
      const Point before = chain[(i + n - 1) % n], here = chain[i], after = chain[(i + 1) % n];
      strip(here, after);
      const Vec in = here - before, out = after - here;
      double turn = std::atan2(cross(in, out), dot(in, out));
      if (turn < 0 && dot(in, out) < 0) turn = std::numbers::pi;  // the end of a line of spots
      wedge(here, std::atan2(-in.x, in.y), turn);
    }
  }
};

// The convex hull, spots along its edges kept; of spots all in a line: there and back.
std::vector<Point> hull(std::span<const Spot> sorted) {
  std::vector<Point> chain;
  const auto half = [&chain](auto first, auto last) {
    const std::size_t base = chain.size();
    for (auto at = first; at != last; ++at) {
      while (chain.size() >= base + 2 &&
             cross(chain[chain.size() - 1] - chain[chain.size() - 2], at->at - chain[chain.size() - 1]) < 0)
        chain.pop_back();
      chain.push_back(at->at);
    }
    chain.pop_back();
  };
  if (sorted.size() == 1) return {sorted.front().at};
  half(sorted.begin(), sorted.end());
  half(sorted.rbegin(), sorted.rend());
  return chain;
}

}  // namespace

problem::Result<Surface> through(std::span<const Spot> spots, double reach) {
  auto once = in_order(spots);
  if (!once) return std::unexpected(once.error());
  if (once->empty()) return Surface();
  Point low = once->front().at;
  for (const Spot& spot : *once) low.y = std::min(low.y, spot.at.y);
  Maker maker{low, reach, {}, {}};
  for (const Spot& spot : *once) maker.heights.emplace_hint(maker.heights.end(), spot.at, spot.height);
  if (once->size() > 2) {
    const geos::Geometry given = points(*once, low);
    auto made = geos::made(GEOSDelaunayTriangulation_r(geos::context(), given.get(), 0, 0), low);
    if (!made) return std::unexpected(made.error());
    for (const geos::Patch& triangle : geos::patches(**made, low))
      if (triangle.outer.size() == 3) maker.triangle(triangle.outer);
  }
  const std::vector<Point> around = hull(*once);
  if (!maker.facets.empty()) maker.fill(around);
  maker.beyond(around);
  return Surface(low, std::move(maker.facets));
}

}  // namespace geometry
