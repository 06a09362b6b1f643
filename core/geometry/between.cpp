// The overlap of two surfaces: convex piece against convex piece.
#include <algorithm>
#include <cmath>

#include "geometry/surface.h"

namespace geometry {

namespace {

constexpr double nothing = 1e-12;  // m2

Facet shifted(Facet facet, Vec by) {
  for (Vec& corner : facet.ring) corner = corner + by;
  facet.plane.z -= facet.plane.gx * by.x + facet.plane.gy * by.y;
  return facet;
}

std::vector<Vec> overlap_of(std::span<const Vec> ring, std::span<const Vec> cutter) {
  std::vector<Vec> left(ring.begin(), ring.end());
  for (std::size_t i = 0; i < cutter.size() && !left.empty(); ++i) {
    const Vec from = cutter[i], along = cutter[(i + 1) % cutter.size()] - from;
    left = cut(left, -along.y, along.x, along.y * from.x - along.x * from.y);
  }
  return left;
}

// Everything of `other` that lies over `facet` (in the facet's coordinates), pair by pair.
template <class Do>
void each_overlap(const Facet& facet, const Surface& other, Vec shift, Do act) {
  Vec low = facet.ring.front(), high = low;
  for (const Vec corner : facet.ring) {
    low = {std::min(low.x, corner.x), std::min(low.y, corner.y)};
    high = {std::max(high.x, corner.x), std::max(high.y, corner.y)};
  }
  for (const std::uint32_t n : other.touching(low - shift, high - shift)) {
    const Facet there = shifted(other.facets()[n], shift);
    const std::vector<Vec> both = overlap_of(facet.ring, there.ring);
    if (both.empty() || area(both) < nothing) continue;
    act(there, both);
  }
}

// Volume of the prism over a convex ring under a plane: height at the middle of each triangle x its area.
double prism(std::span<const Vec> ring, const Plane& height) {
  double sum = 0;
  for (std::size_t i = 1; i + 1 < ring.size(); ++i) {
    const double twice = cross(ring[i] - ring[0], ring[i + 1] - ring[0]);
    sum += twice / 6 * (height.at(ring[0]) + height.at(ring[i]) + height.at(ring[i + 1]));
  }
  return sum;
}

void add(Between& sum, bool& first, std::span<const Vec> ring, const Plane& height) {
  const std::vector<Vec> over = cut(ring, height.gx, height.gy, height.z);
  const std::vector<Vec> under = cut(ring, -height.gx, -height.gy, -height.z);
  const double more = over.empty() ? 0 : prism(over, height), less = under.empty() ? 0 : -prism(under, height);
  if (more > 0) sum.above += more, sum.area_above += area(over);
  if (less > 0) sum.below += less, sum.area_below += area(under);
  for (const Vec corner : ring) {
    const double h = height.at(corner);
    if (first || h > sum.greatest) sum.greatest = h, sum.at_greatest = corner;
    if (first || h < sum.least) sum.least = h, sum.at_least = corner;
    first = false;
  }
}

}  // namespace

// The pairs are found from the side of fewer facets: a small area over a large ground asks only for what lies near it.
Between between(const Surface& upper, const Surface& lower) {
  Between sum;
  bool first = true;
  const auto take = [&](const Facet& up, const Facet& low, std::span<const Vec> both) {
    add(sum, first, both, {up.plane.z - low.plane.z, up.plane.gx - low.plane.gx, up.plane.gy - low.plane.gy});
    if (up.guess || low.guess) sum.guessed += area(both);
  };
  const Vec shift = upper.empty() ? Vec{} : upper.place(lower.origin());
  if (lower.facets().size() < upper.facets().size()) {
    for (const Facet& facet : lower.facets()) {
      const Facet low = shifted(facet, shift);
      each_overlap(low, upper, Vec{}, [&](const Facet& up, std::span<const Vec> both) { take(up, low, both); });
    }
    return sum;
  }
  for (const Facet& up : upper.facets())
    each_overlap(up, lower, shift, [&](const Facet& low, std::span<const Vec> both) { take(up, low, both); });
  return sum;
}

Surface over(const Surface& surface, const Surface& ground) {
  std::vector<Facet> facets;
  const Vec shift = ground.empty() ? Vec{} : ground.place(surface.origin());
  for (const Facet& piece : ground.facets())
    each_overlap(piece, surface, shift, [&](const Facet& there, std::span<const Vec> both) {
      facets.push_back({{both.begin(), both.end()}, there.plane, there.guess});
    });
  return {ground.origin(), std::move(facets)};
}

}  // namespace geometry
