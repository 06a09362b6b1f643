#include "takeoff/levels/joins.h"

#include <algorithm>

namespace takeoff::levels {

using geometry::Facet;
using geometry::Vec;

namespace {

constexpr double same_line = 2e-5;   // metres
constexpr double least_join = 1e-6;  // metres: shorter is a corner
constexpr double least_rim = 1e-4;   // metres: a shorter gap is dust between two cuts

struct Stretch {
  double from = 0;
  double to = 0;
};

// The part of the edge p-q that the edge r-s, running the other way, lies on.
std::optional<Stretch> shared(Vec p, Vec q, Vec r, Vec s) {
  const Vec one = q - p;
  const Vec other = s - r;
  const double l = length(one);
  const double m = length(other);
  if (l < least_join || m < least_join || dot(one, other) >= 0) return {};
  // Measured from the longer of the two: a short edge does not know its direction well.
  const bool by_first = l >= m;
  const Vec along = by_first ? (1 / l) * one : (1 / m) * other;
  const Vec base = by_first ? p : r;
  const Vec a = by_first ? r : p;
  const Vec b = by_first ? s : q;
  if (std::abs(cross(along, a - base)) > same_line || std::abs(cross(along, b - base)) > same_line) return {};
  const Vec on = (1 / l) * one;
  const double from = std::max(0.0, dot(on, s - p));
  const double to = std::min(l, dot(on, r - p));
  if (to - from < least_join) return {};
  return Stretch{from, to};
}

void add_rims(std::uint32_t facet, Vec p, Vec q, std::vector<Stretch> covered, std::vector<Rim>& rims) {
  const double whole = length(q - p);
  const Vec on = (1 / whole) * (q - p);
  std::ranges::sort(covered, {}, &Stretch::from);
  double reached = 0;
  covered.push_back({whole, whole});
  for (const Stretch& one : covered) {
    if (one.from - reached > least_rim) rims.push_back({facet, p + reached * on, p + one.from * on});
    reached = std::max(reached, one.to);
  }
}

}  // namespace

Joints joints(const geometry::Surface& surface) {
  Joints made;
  const std::vector<Facet>& facets = surface.facets();
  const Vec grow{same_line, same_line};
  for (std::uint32_t a = 0; a < facets.size(); ++a) {
    const std::vector<Vec>& ring = facets[a].ring;
    for (std::size_t i = 0; i < ring.size(); ++i) {
      const Vec p = ring[i];
      const Vec q = ring[(i + 1) % ring.size()];
      const double whole = length(q - p);
      if (whole < least_join) continue;
      std::vector<Stretch> covered;
      const Vec low{std::min(p.x, q.x), std::min(p.y, q.y)};
      const Vec high{std::max(p.x, q.x), std::max(p.y, q.y)};
      for (const std::uint32_t b : surface.touching(low - grow, high + grow)) {
        if (b == a) continue;
        const std::vector<Vec>& other = facets[b].ring;
        for (std::size_t k = 0; k < other.size(); ++k) {
          const auto part = shared(p, q, other[k], other[(k + 1) % other.size()]);
          if (!part) continue;
          covered.push_back(*part);
          const Vec on = (1 / whole) * (q - p);
          if (a < b) made.joins.push_back({a, b, p + part->from * on, p + part->to * on});
        }
      }
      add_rims(a, p, q, std::move(covered), made.rims);
    }
  }
  return made;
}

}  // namespace takeoff::levels
