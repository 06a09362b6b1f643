#include "sketch/crossings.h"

#include <array>
#include <cmath>

#include "geometry/index.h"
#include "units/length.h"

namespace sketch {

using geometry::Curve;
using geometry::Point;
using geometry::Vec;

namespace {

// A place counts as on a curve within one step and a half: it was rounded to the grid, by less than one step.
constexpr double on_it = 1.5 / units::Length::steps_per_metre;

std::vector<Vec> lines(Vec p, Vec u, Vec q, Vec v) {
  const double turn = cross(u, v);
  if (std::abs(turn) <= 1e-12 * length(u) * length(v)) return {};
  return {p + (cross(q - p, v) / turn) * u};
}

std::vector<Vec> line_and_circle(Vec p, Vec u, Vec centre, double radius) {
  const Vec along = (1 / length(u)) * u;
  const Vec foot = p + dot(centre - p, along) * along;
  const double away = length(centre - foot);
  // A line that only touches is met where it touches, though rounding put it a little outside.
  if (away > radius + 1) return {};
  const double half = away >= radius ? 0 : std::sqrt((radius - away) * (radius + away));
  return {foot + half * along, foot - half * along};
}

std::vector<Vec> circles(Vec a, double ra, Vec b, double rb) {
  const Vec between = b - a;
  const double apart = length(between);
  if (apart < 1 || apart > ra + rb + 1 || apart < std::abs(ra - rb) - 1) return {};
  const double to_chord = (apart * apart + (ra - rb) * (ra + rb)) / (2 * apart);
  const double square = (ra - to_chord) * (ra + to_chord);
  const double half = square > 0 ? std::sqrt(square) : 0;
  const Vec along = (1 / apart) * between;
  const Vec foot = a + to_chord * along;
  return {foot + half * left_of(along), foot - half * left_of(along)};
}

}  // namespace

std::vector<Point> crossings(const Curve& a, const Curve& b) {
  if (a.start == a.end || b.start == b.end) return {};
  const Vec b_start = b.start - a.start;
  std::vector<Vec> places;
  if (a.straight() && b.straight())
    places = lines({}, a.chord(), b_start, b.chord());
  else if (a.straight())
    places = line_and_circle({}, a.chord(), b_start + b.centre(), b.radius());
  else if (b.straight())
    places = line_and_circle(b_start, b.chord(), a.centre(), a.radius());
  else
    places = circles(a.centre(), a.radius(), b_start + b.centre(), b.radius());
  std::vector<Point> met;
  for (const Vec place : places) {
    if (!(length(place) < 4 * geometry::reach_of_plan.metres().si() * units::Length::steps_per_metre)) continue;
    const Point at = geometry::moved(a.start, place);
    if (!met.empty() && met.back() == at) continue;
    if (geometry::nearest(a, at).distance <= on_it && geometry::nearest(b, at).distance <= on_it) met.push_back(at);
  }
  return met;
}

}  // namespace sketch
