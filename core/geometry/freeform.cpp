#include "geometry/freeform.h"

#include <algorithm>
#include <optional>

#include "geometry/index.h"
#include "problem/ensure.h"

namespace geometry {

namespace {

// A point of the curve and the unit tangent there.
struct Knot {
  Point at;
  Vec tangent;
};

// The cubic between two control points; `from` and `to` are its derivatives over the parameter 0..1.
struct Cubic {
  Point start;
  Vec chord;
  Vec from;
  Vec to;

  Vec at(double u) const { return u * u * (3 - 2 * u) * chord + u * (1 - u) * (1 - u) * from - u * u * (1 - u) * to; }
  Vec derivative(double u) const {
    return 6 * u * (1 - u) * chord + (1 - u) * (1 - 3 * u) * from - u * (2 - 3 * u) * to;
  }
};

Vec unit(Vec v) { return (1 / length(v)) * v; }

// A slope as a direction; the chord's where the curve turns right back and has none.
Vec heading(Vec slope, Vec chord) { return length(slope) > 0 ? unit(slope) : unit(chord); }

// The bulge of an arc whose chord and tangent (either order, as they are met) include half its sweep. What bulges by
// less than a hundredth of a step is straight.
double bulge_from(Vec first, Vec then, double chord) {
  const double bulge = std::tan(std::atan2(cross(first, then), dot(first, then)) / 2);
  return std::abs(bulge) * chord / 2 < 0.01 ? 0 : bulge;
}

// Two arcs from one knot to the other, tangent to both and to each other where the two tangent lengths are equal.
// Nothing when they would have to turn back.
struct Biarc {
  Point middle;
  double first = 0;
  double second = 0;
};
std::optional<Biarc> biarc(const Knot& a, const Knot& b) {
  const Vec chord = b.at - a.at;
  const Vec sum = a.tangent + b.tangent;
  const double along = dot(chord, sum);
  const double spread = 2 * (1 - dot(a.tangent, b.tangent));
  const double root = std::sqrt(along * along + spread * dot(chord, chord));
  if (along + root <= 0) return std::nullopt;
  const double reach = dot(chord, chord) / (along + root);
  const Vec from_start = 0.5 * (chord + reach * (a.tangent - b.tangent));
  Biarc made{moved(a.at, from_start)};
  if (made.middle == a.at || made.middle == b.at) return std::nullopt;
  const Vec first = made.middle - a.at;
  const Vec second = b.at - made.middle;
  made.first = bulge_from(a.tangent, first, length(first));
  made.second = bulge_from(second, b.tangent, length(second));
  if (std::abs(made.first) > 1 || std::abs(made.second) > 1) return std::nullopt;
  return made;
}

// How far the cubic between u0 and u1 lies from the arcs, in steps, at places dense enough for a curve that turns once.
// One step is added for the rounding of the places to the grid.
double furthest(const Cubic& cubic, double u0, double u1, const Knot& a, const Knot& b, const Biarc& arcs) {
  const Curve first{a.at, arcs.middle, arcs.first};
  const Curve second{arcs.middle, b.at, arcs.second};
  double worst = 0;
  constexpr int places = 32;
  for (int i = 1; i < places; ++i) {
    const Point place = moved(cubic.start, cubic.at(u0 + (u1 - u0) * i / places));
    worst = std::max(worst, std::min(nearest(first, place).distance, nearest(second, place).distance));
  }
  return worst * units::Length::steps_per_metre + 1;
}

struct Maker {
  const Cubic& cubic;
  double within;
  Origin origin;
  Ring& ring;

  void add(double u0, double u1, const Knot& a, const Knot& b, int depth) const {
    if (a.at == b.at) return;
    const auto arcs = biarc(a, b);
    if (arcs && furthest(cubic, u0, u1, a, b, *arcs) <= within) {
      ring.push_back({a.at, arcs->first, origin});
      ring.push_back({arcs->middle, arcs->second, origin});
      return;
    }
    const double u = (u0 + u1) / 2;
    const Vec slope = cubic.derivative(u);
    if (depth == 0 || length(slope) == 0 || length(b.at - a.at) < 16) {
      ring.push_back({a.at, 0, origin});
      return;
    }
    const Knot middle{moved(cubic.start, cubic.at(u)), unit(slope)};
    add(u0, u, a, middle, depth - 1);
    add(u, u1, middle, b, depth - 1);
  }
};

// The slope at `at` of the parabola through three points whose parameters are the chord lengths between them.
Vec slope_between(Vec before, Vec after) {
  const double b = length(before);
  const double a = length(after);
  return (1 / (b + a)) * ((a / b) * before + (b / a) * after);
}

std::vector<Vec> slopes(std::span<const Point> through, bool closed) {
  const std::size_t count = through.size();
  const auto chord = [&](std::size_t i) { return through[(i + 1) % count] - through[i % count]; };
  std::vector<Vec> made(count);
  for (std::size_t i = 0; i < count; ++i) {
    if (closed || (i > 0 && i + 1 < count)) made[i] = slope_between(chord(i + count - 1), chord(i));
  }
  if (!closed && count > 2) {  // the same parabola at its end
    made.front() = 2 * unit(chord(0)) - made[1];
    made.back() = 2 * unit(chord(count - 2)) - made[count - 2];
  }
  return made;
}

}  // namespace

Ring freeform(std::span<const Point> through, bool closed, std::uint64_t element, units::Length within) {
  problem::ensure(through.size() >= (closed ? 3U : 2U), "a freeform curve has points enough");
  problem::ensure(within > units::Length(), "a tolerance is positive");
  std::vector<Point> points;
  std::vector<Origin> origins;
  for (std::size_t i = 0; i < through.size(); ++i) {
    if (!points.empty() && points.back() == through[i]) continue;
    points.push_back(through[i]);
    origins.push_back({element, static_cast<std::int32_t>(i)});
  }
  while (closed && points.size() > 1 && points.back() == points.front()) points.pop_back();

  const std::size_t spans = closed ? points.size() : points.size() - 1;
  Ring ring;
  if (points.size() < 3) {  // nothing that could be curved
    for (std::size_t i = 0; i < spans; ++i) ring.push_back({points[i], 0, origins[i]});
    return ring;
  }
  const std::vector<Vec> slope = slopes(points, closed);
  for (std::size_t i = 0; i < spans; ++i) {
    const std::size_t next = (i + 1) % points.size();
    const Vec chord = points[next] - points[i];
    const Cubic cubic{points[i], chord, length(chord) * slope[i], length(chord) * slope[next]};
    const Maker maker{cubic, static_cast<double>(within.steps()), origins[i], ring};
    maker.add(0, 1, {points[i], heading(slope[i], chord)}, {points[next], heading(slope[next], chord)}, 20);
  }
  return ring;
}

}  // namespace geometry
