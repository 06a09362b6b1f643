#include "sketch/next_edge.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "sketch/shapes.h"

namespace sketch {

using geometry::Point;
using geometry::Vec;
using units::Length;

namespace {

constexpr double pi = std::numbers::pi;

Vec turned(Vec v, double radians) {
  const double c = std::cos(radians);
  const double s = std::sin(radians);
  return {c * v.x - s * v.y, s * v.x + c * v.y};
}

Vec towards(double degrees) {
  const units::Turn turn = units::turn(units::Angle::degrees(degrees));
  return {turn.cosine, turn.sine};
}

// Exact for directions along the axes.
Vec unit(Vec v) {
  const double long_way = length(v);
  return long_way == 0 ? Vec{1, 0} : (1 / long_way) * v;
}

std::optional<double> steps(const Fields& fields, const std::string& id) {
  const auto typed = fields.length(id);
  if (!typed) return {};
  return static_cast<double>(typed->steps());
}

std::optional<double> radians(const Fields& fields) {
  const auto typed = fields.number("angle");
  if (!typed) return {};
  return *typed * pi / 180;
}

double side(double turn) { return turn < 0 ? -1 : 1; }

// The chord is set; the pointer or the fields bend it.
double bent(const Start& start, Point pointer, const Fields& fields) {
  const Point from = start.in_hand.points.back();
  const double by_pointer = bulge_through(from, *start.set, pointer);
  if (const auto sweep = radians(fields)) return bulge_of_sweep(*sweep);
  const auto radius = steps(fields, "radius");
  if (!radius) return by_pointer;
  const bool large = std::abs(by_pointer) > 1;
  return bulge_of_radius(length(*start.set - from), *radius, by_pointer >= 0, large).value_or(0);
}

// The sweep, by what is typed of the three that hang together: length = radius x sweep.
Next tangent_edge(const Start& start, const Aimed& aim, const Fields& fields) {
  const Point from = start.in_hand.points.back();
  const Vec ahead = start.in_hand.direction();
  const Vec to = aim.at() - from;
  const double free_bulge = length(to) == 0 ? 0 : bulge_along(ahead, to);
  const auto radius = steps(fields, "radius");
  const auto along = steps(fields, "length");
  const auto typed = radians(fields);
  if (!radius && !along && !typed) return {aim.at(), free_bulge, aim};
  const double left = typed ? side(*typed) : side(cross(ahead, to));
  double sweep = 4 * std::atan(free_bulge);
  double out = 0;
  if (radius) {
    // The pointer's place round the centre says how far the arc goes.
    const Vec from_centre = to - left * *radius * left_of(ahead);
    const double round =
        left * std::atan2(cross(-left * left_of(ahead), from_centre), dot(-left * left_of(ahead), from_centre));
    sweep = typed ? *typed : along ? left * *along / *radius : left * (round < 0 ? round + 2 * pi : round);
    out = *radius;
  } else {
    if (typed) sweep = *typed;
    const double chord = dot(to, turned(ahead, sweep / 2));
    if (sweep != 0) out = along ? *along / std::abs(sweep) : chord / (2 * std::sin(std::abs(sweep) / 2));
    if (sweep == 0) return {geometry::moved(from, along.value_or(dot(to, ahead)) * ahead), 0, aim};
  }
  const double chord = 2 * out * std::sin(std::abs(sweep) / 2);
  return {geometry::moved(from, chord * turned(ahead, sweep / 2)), bulge_of_sweep(sweep), aim};
}

Next about_centre(const Start& start, const Aimed& aim, const Fields& fields) {
  const Vec out = start.in_hand.points.back() - *start.set;
  const double radius = length(out);
  // The turn to the place that the pointer took hold of, counted on from how far it went round.
  const Vec to = aim.at() - *start.set;
  const double turn = std::atan2(cross(out, to), dot(out, to));
  double sweep = turn + 2 * pi * std::round((start.swing - turn) / (2 * pi));
  if (const auto typed = radians(fields)) sweep = *typed;
  const auto along = steps(fields, "length");
  if (along && radius > 0 && !radians(fields)) sweep = side(start.swing) * *along / radius;
  sweep = std::clamp(sweep, -1.99 * pi, 1.99 * pi);
  return {geometry::moved(*start.set, turned(out, sweep)), bulge_of_sweep(sweep), aim};
}

}  // namespace

std::vector<FieldKind> fields_of(const Start& start) {
  if (start.in_hand.points.empty()) return {field::x(), field::y()};
  switch (start.way) {
    case EdgeWay::line: break;
    case EdgeWay::through:
      if (start.set) return {field::radius(), field::sweep()};
      break;
    case EdgeWay::centre:
      if (start.set) return {field::length(), field::sweep()};
      return {field::radius(), field::direction(), field::x(), field::y()};
    case EdgeWay::tangent: return {field::radius(), field::sweep(), field::length()};
  }
  return {field::length(), field::direction(), field::x(), field::y()};
}

Point placed(Point from, Point aimed, const Fields& fields) {
  const auto x = fields.length("x");
  const auto y = fields.length("y");
  if (x || y) return {x ? from.x + *x : aimed.x, y ? from.y + *y : aimed.y};
  auto out = steps(fields, "length");
  if (!out) out = steps(fields, "radius");
  if (!out) out = steps(fields, "width");
  const auto degrees = fields.number("angle");
  if (!out && !degrees) return aimed;
  const Vec along = degrees ? towards(*degrees) : unit(aimed - from);
  return geometry::moved(from, out.value_or(dot(aimed - from, along)) * along);
}

bool arc_too_small(const Start& start, const Fields& fields) {
  const auto radius = steps(fields, "radius");
  if (!radius || radians(fields) || !start.set) return false;
  return !bulge_of_radius(length(*start.set - start.in_hand.points.back()), *radius, true, false);
}

Next first_corner(const Scene& scene, const Pointer& pointer, const Fields& fields) {
  const Aimed aim = aimed(scene, {}, pointer);
  return {placed({}, aim.at(), fields), 0, aim};
}

Next next_edge(const Scene& scene, const Start& start, const Pointer& pointer, const Fields& fields) {
  // While an arc bends, help lines of straight edges mean nothing; the points in hand still take hold.
  const bool bending = start.set.has_value() || start.way == EdgeWay::tangent;
  const Aimed aim = bending ? aimed_at_points(scene, start.in_hand, pointer) : aimed(scene, start.in_hand, pointer);
  const Point from = start.in_hand.points.back();
  switch (start.way) {
    case EdgeWay::line: break;
    case EdgeWay::through:
      if (start.set) return {*start.set, bent(start, aim.at(), fields), aim};
      break;
    case EdgeWay::centre:
      if (start.set) return about_centre(start, aim, fields);
      break;
    case EdgeWay::tangent: return tangent_edge(start, aim, fields);
  }
  return {placed(from, aim.at(), fields), 0, aim};
}

void show_place(Fields& fields, Point from, Point at, units::System system) {
  const Vec to = at - from;
  const auto out = Length::of_steps(std::llround(length(to)));
  fields.point("length", out, system);
  fields.point("radius", out, system);
  fields.point("angle", to == Vec{} ? 0 : std::atan2(to.y, to.x) * 180 / pi);
  fields.point("x", at.x - from.x, system);
  fields.point("y", at.y - from.y, system);
}

void show_edge(Fields& fields, const Start& start, const Next& next, units::System system) {
  const Point from = start.in_hand.points.back();
  const bool bending = start.way == EdgeWay::tangent || (start.set && start.way != EdgeWay::line);
  if (!bending) return show_place(fields, from, next.at, system);
  const geometry::Curve curve{from, next.at, next.bulge};
  fields.point("radius", Length::of_steps(std::llround(curve.radius())), system);
  fields.point("angle", curve.sweep() * 180 / pi);
  fields.point("length", Length::of_steps(std::llround(curve.length())), system);
}

}  // namespace sketch
