#include "takeoff/paving/slivers.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace takeoff::paving {

namespace {

using geometry::Vec;

bool turns_left_all_round(std::span<const Vec> p) {
  const std::size_t n = p.size();
  Vec before = p[0] - p[n - 1];
  for (std::size_t i = 0; i < n; ++i) {
    const Vec after = p[i + 1 == n ? 0 : i + 1] - p[i];
    if (cross(before, after) < 0) return false;
    before = after;
  }
  return true;
}

// Monotone chain: the lower hull, then the upper one.
void make_hull(std::span<const Vec> polygon, std::vector<Vec>& hull) {
  const std::size_t n = polygon.size();
  hull.assign(polygon.begin(), polygon.end());
  std::sort(hull.begin(), hull.end(), [](Vec a, Vec b) { return a.x != b.x ? a.x < b.x : a.y < b.y; });
  hull.resize(3 * n + 1);
  const auto sorted = hull.begin();
  const auto chain = hull.begin() + static_cast<std::ptrdiff_t>(n);
  std::ptrdiff_t size = 0;
  const auto add = [&](Vec p, std::ptrdiff_t floor) {
    while (size - floor >= 2 && cross(chain[size - 1] - chain[size - 2], p - chain[size - 1]) <= 0) --size;
    chain[size++] = p;
  };
  const auto count = static_cast<std::ptrdiff_t>(n);
  for (std::ptrdiff_t i = 0; i < count; ++i) add(sorted[i], 0);
  const std::ptrdiff_t floor = size - 1;
  for (std::ptrdiff_t i = count - 2; i >= 0; --i) add(sorted[i], floor);
  hull.erase(hull.begin(), chain);
  hull.resize(static_cast<std::size_t>(std::max<std::ptrdiff_t>(size - 1, 1)));
}

// The least width lies square to a side of the hull. Pieces have a handful of sides, so every point is tried: walking
// the farthest point along would stop short on sides that lie in line but for rounding.
double least_width(std::span<const Vec> hull) {
  double least = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < hull.size(); ++i) {
    const Vec side = hull[i + 1 == hull.size() ? 0 : i + 1] - hull[i];
    const double squared = dot(side, side);
    if (squared == 0) continue;
    double reach = 0;
    for (const Vec& point : hull) reach = std::max(reach, cross(side, point - hull[i]));
    least = std::min(least, reach * reach / squared);
  }
  return std::isfinite(least) ? std::sqrt(least) : 0;
}

// Whether a point inside the hull lies deeper than `notch` under every side of it. Squares are compared: no roots.
bool deep(Vec point, std::span<const Vec> hull) {
  for (std::size_t i = 0; i < hull.size(); ++i) {
    const Vec side = hull[i + 1 == hull.size() ? 0 : i + 1] - hull[i];
    const double reach = cross(side, point - hull[i]);
    if (reach <= 0 || reach * reach <= notch * notch * dot(side, side)) return false;
  }
  return true;
}

}  // namespace

Breadth breadth(std::span<const Vec> polygon, std::vector<Vec>& hull) {
  Breadth found;
  if (turns_left_all_round(polygon)) {
    found.least = least_width(polygon);
    return found;
  }
  make_hull(polygon, hull);
  found.least = least_width(hull);
  for (const Vec& point : polygon) found.convex = found.convex && !deep(point, hull);
  return found;
}

bool is_sliver(double area, double least, double unit_area, const Slivers& limits) {
  return area < limits.share * unit_area || least < limits.width;
}

}  // namespace takeoff::paving
