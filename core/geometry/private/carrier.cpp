#include "geometry/private/carrier.h"

#include <algorithm>
#include <numbers>

namespace geometry {

namespace {

constexpr double straight_from = 1e13;

Vec unit(Vec v) { return (1 / length(v)) * v; }

}  // namespace

double Carrier::left(Vec at) const {
  if (turn == 0) return cross(along, at - point);
  return turn * (radius - length(at - point));
}

Vec Carrier::normal(Vec at) const {
  if (turn == 0) return left_of(along);
  const Vec out = at - point;
  return (-turn / std::max(length(out), 1e-300)) * out;
}

Vec Carrier::direction(Vec at) const { return -left_of(normal(at)); }

std::optional<Carrier> carrier(const Curve& curve, Vec start, double to_the_left) {
  if (curve.straight() || curve.radius() > straight_from) {
    const Vec along = unit(curve.chord());
    return Carrier{start + to_the_left * left_of(along), along, 0, 0};
  }
  const int turn = curve.bulge > 0 ? 1 : -1;
  const double radius = curve.radius() - turn * to_the_left;
  if (radius <= 0) return std::nullopt;
  return Carrier{start + curve.centre(), {}, radius, turn};
}

std::optional<Vec> meeting(const Carrier& a, const Carrier& b, Vec near) {
  Vec at = near;
  for (int round = 0; round < 60; ++round) {
    const Vec to_a = a.normal(at);
    const Vec to_b = b.normal(at);
    const double between = cross(to_a, to_b);
    if (std::abs(between) < 1e-9) return std::nullopt;
    const double far_a = a.left(at);
    const double far_b = b.left(at);
    const Vec step = (1 / between) * Vec{far_b * to_a.y - far_a * to_b.y, far_a * to_b.x - far_b * to_a.x};
    at = at + step;
    if (!std::isfinite(at.x) || !std::isfinite(at.y)) return std::nullopt;
    if (length(step) < 1e-6) return at;
  }
  return std::nullopt;
}

double turn_between(const Carrier& on, Vec from, Vec to, double sweep) {
  const Vec a = from - on.point;
  const Vec b = to - on.point;
  const double turned = on.turn * std::atan2(cross(a, b), dot(a, b));
  const double round = 2 * std::numbers::pi;
  return turned + round * std::round((std::abs(sweep) - turned) / round);
}

double bulge_between(const Carrier& on, Vec from, Vec to, double sweep) {
  if (on.turn == 0) return 0;
  const double turned = turn_between(on, from, to, sweep);
  const double plain = on.turn * std::tan(turned / 4);
  const Vec chord = to - from;
  // Tiny or almost whole arcs would be bent out of shape.
  if (turned > 1.5 * std::numbers::pi || std::abs(plain) * length(chord) / 2 < 4) return plain;
  // A circle displaced and of another radius is off by a + b cos(angle from the middle). Given the mean of the ends,
  // the middle has to be off by this much for the whole to cancel.
  const double half = turned / 2;
  const double ends = (on.left(from) + on.left(to)) / 2;
  const double sinc = std::sin(half) / half;
  const double off = half < 0.01 ? -ends / 2 : ends * (1 - sinc) / (std::cos(half) - sinc);
  const Vec first = from - on.point;
  const double c = std::cos(half);
  const double s = on.turn * std::sin(half);
  const Vec way = unit({c * first.x - s * first.y, s * first.x + c * first.y});
  const Vec middle = on.point + (on.radius - on.turn * off) * way;
  return -2 * cross(chord, middle - from) / dot(chord, chord);
}

}  // namespace geometry
