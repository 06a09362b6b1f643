#include "oracle.h"

#include <algorithm>
#include <boost/geometry.hpp>
#include <boost/geometry/geometries/multi_polygon.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/polygon.hpp>

#include "takeoff/paving/rows.h"

namespace oracle {

namespace bg = boost::geometry;

using P = bg::model::d2::point_xy<double>;
using Polygon = bg::model::polygon<P, false, true>;
using Polygons = bg::model::multi_polygon<Polygon>;

namespace {

// The chords are laying's own: how an arc is cut into them is not in question here.
Polygons framed(const laying::Region& region, const laying::Lattice& lattice) {
  const auto chords = takeoff::paving::chords(region);
  takeoff::paving::FrameOutline outline;
  takeoff::paving::frame(chords, lattice, outline);
  std::size_t ring = 0;
  auto edge = outline.edges.begin();
  const auto fill = [&](auto& points) {
    for (std::size_t i = 0; i < chords.rings.at(ring).size(); ++i, ++edge)
      points.emplace_back(edge->from.x, edge->from.y);
    points.push_back(points.front());
    ++ring;
  };
  Polygons made;
  for (const auto& polygon : region.polygons()) {
    Polygon one;
    fill(one.outer());
    for (std::size_t hole = 0; hole < polygon.holes.size(); ++hole) {
      one.inners().emplace_back();
      fill(one.inners().back());
    }
    made.push_back(one);
  }
  return made;
}

// By separating axes: the boxes overlap, and the rectangle has corners strictly on both sides of the segment's line.
bool enters(P p, P q, double x0, double y0, double x1, double y1) {
  if (std::max(p.x(), q.x()) <= x0 || std::min(p.x(), q.x()) >= x1) return false;
  if (std::max(p.y(), q.y()) <= y0 || std::min(p.y(), q.y()) >= y1) return false;
  const double dx = q.x() - p.x(), dy = q.y() - p.y();
  bool left = false, right = false;
  for (const auto& [x, y] : {std::pair(x0, y0), std::pair(x1, y0), std::pair(x1, y1), std::pair(x0, y1)}) {
    const double side = dx * (y - p.y()) - dy * (x - p.x());
    left = left || side > 0;
    right = right || side < 0;
  }
  return left && right;
}

bool enters_ring(const auto& ring, double x0, double y0, double x1, double y1) {
  for (std::size_t i = 0; i + 1 < ring.size(); ++i) {
    if (enters(ring[i], ring[i + 1], x0, y0, x1, y1)) return true;
  }
  return false;
}

// The extent across the line through each two of the points; the least is the least width.
double least_width(const Polygon& polygon) {
  double least = 1e300;
  const auto& ring = polygon.outer();
  for (std::size_t i = 0; i + 1 < ring.size(); ++i) {
    for (std::size_t j = 0; j < i; ++j) {
      const Vec d{ring[j].x() - ring[i].x(), ring[j].y() - ring[i].y()};
      const double n = std::hypot(d.x, d.y);
      if (n < 1) continue;
      double low = 1e300, high = -1e300;
      for (const P& p : ring) {
        const double at = (d.x * p.y() - d.y * p.x()) / n;
        low = std::min(low, at);
        high = std::max(high, at);
      }
      least = std::min(least, high - low);
    }
  }
  return least;
}

// All of a lattice that the box of the region can touch: the corners of the box in units of the two vectors.
struct Window {
  int a0, a1, b0, b1;
};
Window window(const Polygons& region, const laying::Lattice& lattice, const takeoff::paving::Kind& kind) {
  double x0 = 1e300, x1 = -1e300, y0 = 1e300, y1 = -1e300;
  for (const Polygon& one : region) {
    for (const P& p : one.outer()) {
      x0 = std::min(x0, p.x()), x1 = std::max(x1, p.x());
      y0 = std::min(y0, p.y()), y1 = std::max(y1, p.y());
    }
  }
  Window w{1 << 30, -(1 << 30), 1 << 30, -(1 << 30)};
  for (const double x : {x0 - kind.width, x1}) {
    for (const double y : {y0 - kind.height, y1}) {
      const double b = (y - kind.low.y) / lattice.across.y;
      const double a = (x - kind.low.x - b * lattice.across.x) / lattice.along;
      w = {std::min(w.a0, static_cast<int>(std::floor(a)) - 2), std::max(w.a1, static_cast<int>(std::ceil(a)) + 2),
           std::min(w.b0, static_cast<int>(std::floor(b)) - 2), std::max(w.b1, static_cast<int>(std::ceil(b)) + 2)};
    }
  }
  return w;
}

}  // namespace

std::size_t Answer::pieces() const {
  std::size_t sum = 0;
  for (const auto& [key, parts] : cut) sum += parts.size();
  return sum;
}

bool chords_are_simple(const laying::Region& region) {
  laying::Lattice as_drawn;
  return bg::is_valid(framed(region, as_drawn));
}

Answer lay(const laying::Region& region, const laying::Lattice& lattice, double grazing, bool all_areas) {
  const Polygons ground = framed(region, lattice);
  Answer answer;
  for (std::size_t k = 0; k < lattice.kinds.size(); ++k) {
    const auto& kind = lattice.kinds[k];
    const Window w = window(ground, lattice, kind);
    for (int b = w.b0; b <= w.b1; ++b) {
      for (int a = w.a0; a <= w.a1; ++a) {
        const double x0 = kind.low.x + a * lattice.along + b * lattice.across.x;
        const double y0 = kind.low.y + b * lattice.across.y;
        const double x1 = x0 + kind.width, y1 = y0 + kind.height;
        const double g = grazing;
        bool entered = false;
        for (const Polygon& one : ground) {
          entered = entered || enters_ring(one.outer(), x0 + g, y0 + g, x1 - g, y1 - g);
          for (const auto& hole : one.inners()) entered = entered || enters_ring(hole, x0 + g, y0 + g, x1 - g, y1 - g);
        }
        const Key key{static_cast<int>(k), a, b};
        const bool within = !entered && bg::covered_by(P((x0 + x1) / 2, (y0 + y1) / 2), ground);
        if (within) answer.whole[key] = true, answer.whole_area += kind.width * kind.height;
        if (!entered && !all_areas) continue;
        Polygon unit;
        unit.outer() = {P(x0, y0), P(x1, y0), P(x1, y1), P(x0, y1), P(x0, y0)};
        Polygons parts;
        bg::intersection(unit, ground, parts);
        for (const Polygon& part : parts) {
          answer.clipped_area += bg::area(part);
          const UnitPart made{bg::area(part), least_width(part)};
          if (!entered || made.least_width < grazing) continue;
          answer.cut[key].push_back(made);
          answer.cut_area += made.area;
        }
        if (answer.cut.contains(key)) {
          std::sort(answer.cut[key].begin(), answer.cut[key].end(), [](auto& l, auto& r) { return l.area > r.area; });
        }
      }
    }
  }
  return answer;
}

}  // namespace oracle
