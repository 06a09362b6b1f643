#include "takeoff/ground/spread.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace takeoff::ground {

using geometry::Facet;
using geometry::Vec;

namespace {

constexpr double cell = 0.15;           // metres
constexpr double most_cells = 200'000;  // 4,500 m2 of them; over more ground they are larger, or memory would run out
constexpr double farthest = 10'000;     // metres: the plan reaches no further
constexpr double steps = units::Length::steps_per_metre;

// The nearest place of a segment.
Vec nearest_on(Vec a, Vec b, Vec p) {
  const Vec way = b - a;
  const double square = dot(way, way);
  const double share = square > 0 ? std::clamp(dot(p - a, way) / square, 0.0, 1.0) : 0;
  return a + share * way;
}

// Height of the surfaces at the nearest of their places. Places are metres from `origin`.
struct Nearest {
  std::span<const levels::SurfacePtr> surfaces;
  geometry::Point origin;

  double height(Vec place) const {
    double best = std::numeric_limits<double>::infinity(), found = 0;
    for (const levels::SurfacePtr& surface : surfaces) {
      const Vec here = place - (1 / steps) * (surface->origin() - origin);
      if (const auto height = surface->height(here)) return *height;
      // In boxes that grow until the nearest found lies within them; nothing further out can lie nearer.
      for (double reach = cell; reach < farthest; reach *= 2) {
        for (const std::uint32_t number : surface->touching(here - Vec{reach, reach}, here + Vec{reach, reach})) {
          const Facet& facet = surface->facets()[number];
          for (std::size_t i = 0; i < facet.ring.size(); ++i) {
            const Vec on = nearest_on(facet.ring[i], facet.ring[(i + 1) % facet.ring.size()], here);
            const double far = dot(here - on, here - on);
            if (far < best) best = far, found = facet.plane.at(on);
          }
        }
        if (best <= reach * reach) break;
      }
    }
    return found;
  }
};

void fan(const std::vector<Vec>& ring, const Nearest& nearest, std::vector<Facet>& facets) {
  std::vector<double> heights;
  heights.reserve(ring.size());
  for (const Vec place : ring) heights.push_back(nearest.height(place));
  for (std::size_t i = 1; i + 1 < ring.size(); ++i) {
    Facet facet{{ring[0], ring[i], ring[i + 1]}, {}, false};
    if (geometry::area(facet.ring) < 1e-12) continue;
    facet.plane = geometry::plane_through(ring[0], heights[0], ring[i], heights[i], ring[i + 1], heights[i + 1]);
    facets.push_back(std::move(facet));
  }
}

// Strips of one direction: x for (1, 0), y for (0, 1).
std::vector<std::vector<Vec>> sliced(const std::vector<Vec>& ring, Vec way, double side) {
  double low = std::numeric_limits<double>::infinity(), high = -low;
  for (const Vec place : ring) low = std::min(low, dot(place, way)), high = std::max(high, dot(place, way));
  std::vector<std::vector<Vec>> parts;
  for (double k = std::floor(low / side); k * side < high; ++k) {
    const std::vector<Vec> after = geometry::cut(ring, way.x, way.y, -k * side);
    std::vector<Vec> part = geometry::cut(after, -way.x, -way.y, (k + 1) * side);
    if (part.size() >= 3) parts.push_back(std::move(part));
  }
  return parts;
}

}  // namespace

problem::Result<geometry::Surface> spread_level(const geometry::Region& ground,
                                                std::span<const levels::SurfacePtr> surfaces, geometry::Point origin) {
  const auto pieces = geometry::pieces(ground, origin);
  if (!pieces) return std::unexpected(pieces.error());
  const Nearest nearest{surfaces, origin};
  const double side = std::max(cell, std::sqrt(ground.area().si() / most_cells));
  std::vector<Facet> facets;
  for (const Facet& piece : pieces->facets())
    for (const std::vector<Vec>& strip : sliced(piece.ring, {1, 0}, side))
      for (const std::vector<Vec>& part : sliced(strip, {0, 1}, side)) fan(part, nearest, facets);
  return geometry::Surface(origin, std::move(facets));
}

}  // namespace takeoff::ground
