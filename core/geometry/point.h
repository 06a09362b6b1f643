// Points on the grid, and vectors in doubles for computing between them.
#pragma once

#include <cmath>
#include <compare>

#include "problem/problem.h"
#include "units/length.h"

namespace geometry {

// A point of the plan: x east, y north, whole steps from the job's own origin, nothing further out than
// `reach_of_plan`.
struct Point {
  units::Length x;
  units::Length y;
  constexpr auto operator<=>(const Point&) const = default;  // by x, then y
};

inline constexpr units::Length reach_of_plan = units::Length::millimetres(5'000'000);

// A difference or direction in steps, as doubles (exact for whole steps below 2^53).
struct Vec {
  double x = 0;
  double y = 0;
  constexpr bool operator==(const Vec&) const = default;
  constexpr Vec operator-() const { return {-x, -y}; }
  friend constexpr Vec operator+(Vec a, Vec b) { return {a.x + b.x, a.y + b.y}; }
  friend constexpr Vec operator-(Vec a, Vec b) { return {a.x - b.x, a.y - b.y}; }
  friend constexpr Vec operator*(double k, Vec a) { return {k * a.x, k * a.y}; }
};

constexpr double dot(Vec a, Vec b) { return a.x * b.x + a.y * b.y; }
constexpr double cross(Vec a, Vec b) { return a.x * b.y - a.y * b.x; }
constexpr Vec left_of(Vec a) { return {-a.y, a.x}; }  // turned 90 degrees counter-clockwise
inline double length(Vec a) { return std::hypot(a.x, a.y); }

// Exact for points within the plan's reach: the difference of two grid points is a whole number of steps.
constexpr Vec operator-(Point a, Point b) {
  return {static_cast<double>((a.x - b.x).steps()), static_cast<double>((a.y - b.y).steps())};
}
// The grid point nearest to `from` + `by`, halves away from zero. `by` is rounded alone, so that moving `from` by whole
// steps moves the result by the same.
inline Point moved(Point from, Vec by) {
  return {from.x + units::Length::of_steps(std::llround(by.x)), from.y + units::Length::of_steps(std::llround(by.y))};
}

inline problem::Xy xy(Point p) { return {p.x.metres().si(), p.y.metres().si()}; }

}  // namespace geometry
