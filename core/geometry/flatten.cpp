#include "geometry/flatten.h"

#include <algorithm>

#include "problem/ensure.h"

namespace geometry {

namespace {

// The points strictly between `from` and `to`, in order, as vectors from the arc's first end.
void halve(Vec from, Vec to, double bulge, int depth, std::vector<Vec>& between) {
  if (depth == 0) return;
  const Vec chord = to - from;
  const Vec middle = 0.5 * (from + to) - (bulge / 2) * left_of(chord);
  const double half = bulge / (1 + std::sqrt(1 + bulge * bulge));
  halve(from, middle, half, depth - 1, between);
  between.push_back(middle);
  halve(middle, to, half, depth - 1, between);
}

// All chords of one halving are alike, so the number of halvings is known before the first. One step is kept back for
// the rounding of the points to the grid.
int halvings(double chord, double bulge, double within) {
  const double allowed = within > 2 ? within - 1 : within / 2;
  double b = std::abs(bulge);
  int count = 0;
  while (b * chord / 2 > allowed) {
    const double stretch = std::sqrt(1 + b * b);
    chord *= stretch / 2;
    b /= 1 + stretch;
    ++count;
  }
  return count;
}

}  // namespace

std::vector<Point> flatten(const Curve& curve, units::Length within) {
  problem::ensure(within > units::Length(), "a flattening error is positive");
  if (curve.straight()) return {curve.start, curve.end};
  const bool forwards = curve.start < curve.end;
  const Curve walked = forwards ? curve : curve.reversed();
  const double allowed = static_cast<double>(within.steps());
  std::vector<Vec> between;
  halve({}, walked.chord(), walked.bulge, halvings(length(walked.chord()), walked.bulge, allowed), between);

  std::vector<Point> points{walked.start};
  for (const Vec& v : between) {
    const Point p = moved(walked.start, v);
    if (p != points.back()) points.push_back(p);
  }
  if (points.size() > 1 && points.back() == walked.end) points.pop_back();
  points.push_back(walked.end);
  if (!forwards) std::reverse(points.begin(), points.end());
  return points;
}

std::vector<Point> flatten(std::span<const Edge> ring, units::Length within) {
  std::vector<Point> points;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const std::vector<Point> part = flatten(curve(ring, i), within);
    for (std::size_t k = 0; k + 1 < part.size(); ++k) {
      if (points.empty() || points.back() != part[k]) points.push_back(part[k]);
    }
  }
  while (points.size() > 1 && points.back() == points.front()) points.pop_back();
  return points;
}

}  // namespace geometry
