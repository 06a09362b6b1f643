#include "sketch/whole_shape.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "sketch/next_edge.h"
#include "sketch/shapes.h"
#include "sketch/words.h"

namespace sketch {

using geometry::Point;
using geometry::Ring;
using geometry::Vec;
using units::Length;

namespace {

// Of a direction and its square the one that lies nearer to east, so that the width stays what lies across.
Vec eastward(Vec along) {
  if (std::abs(along.y) > std::abs(along.x)) along = {along.y, -along.x};
  return along.x < 0 ? -along : along;
}

// Negative as typed; otherwise towards the pointer.
double side(const std::optional<Length>& typed, double by_pointer, double reach) {
  if (!typed) return by_pointer;
  const auto steps = static_cast<double>(typed->steps());
  return steps >= 0 && by_pointer < -reach ? -steps : steps;
}

std::unexpected<problem::Problem> no_size() {
  return problem::fault("shape-no-size", words::no_size, words::no_size_mend);
}

Ring rectangle_to(const WholeStart& start, Point place, const Fields& fields) {
  Vec along = eastward(start.along.value_or(Vec{1, 0}));
  if (const auto degrees = fields.number("angle")) {
    const units::Turn turn = units::turn(units::Angle::degrees(*degrees));
    along = {turn.cosine, turn.sine};
  }
  const Point corner = start.points.front();
  const Vec to = place - corner;
  double width = side(fields.length("width"), dot(to, along), start.reach);
  double depth = side(fields.length("depth"), dot(to, left_of(along)), start.reach);
  if (start.equal_sides) {
    const double both = std::max(std::abs(width), std::abs(depth));
    if (!fields.has("width")) width = std::copysign(fields.has("depth") ? std::abs(depth) : both, width);
    if (!fields.has("depth")) depth = std::copysign(fields.has("width") ? std::abs(width) : both, depth);
  }
  return rectangle(corner, along, std::round(width), std::round(depth));
}

bool has_no_size(const Ring& ring) {
  for (const geometry::Curve& curve : geometry::curves(ring))
    if (curve.start == curve.end) return true;
  return false;
}

}  // namespace

std::size_t places_needed(Whole whole) { return whole == Whole::three ? 3 : 2; }

std::vector<FieldKind> fields_of(const WholeStart& start) {
  if (start.points.empty()) return {field::x(), field::y()};
  switch (start.whole) {
    case Whole::rectangle: return {field::width(), field::depth(), field::direction()};
    case Whole::circle: return {field::radius()};
    case Whole::across: return {field::diameter(), field::direction()};
    case Whole::three: break;
  }
  return {field::x(), field::y()};
}

bool fixed(Whole whole, const Fields& fields) {
  switch (whole) {
    case Whole::rectangle: return fields.has("width") && fields.has("depth");
    case Whole::circle: return fields.has("radius");
    case Whole::across: return fields.has("width") && fields.has("angle");
    case Whole::three: break;
  }
  return fields.has("x") && fields.has("y");
}

problem::Result<Ring> whole_ring(const WholeStart& start, Point place, const Fields& fields) {
  const Point first = start.points.front();
  Ring ring;
  if (start.whole == Whole::rectangle) {
    ring = rectangle_to(start, place, fields);
  } else if (start.whole == Whole::circle) {
    const auto typed = fields.length("radius");
    ring = circle(first, typed ? static_cast<double>(typed->steps()) : std::round(length(place - first)));
    if (typed && *typed < Length()) return no_size();
  } else if (start.whole == Whole::across) {
    ring = circle_across(first, placed(first, place, fields));
  } else {
    const auto through = circle_through(first, start.points[1], placed(start.points[1], place, fields));
    if (!through) return problem::fault("circle-in-line", words::in_line, words::in_line_mend);
    ring = *through;
  }
  if (has_no_size(ring)) return no_size();
  return ring;
}

void show_whole(Fields& fields, const WholeStart& start, const Ring& ring, units::System system) {
  const auto size = [&](std::size_t i) {
    return Length::of_steps(std::llround(length(geometry::curve(ring, i).chord())));
  };
  if (start.whole == Whole::three) return show_place(fields, start.points.back(), ring.back().from, system);
  if (start.whole == Whole::circle) return fields.point("radius", Length::of_steps(size(0).steps() / 2), system);
  fields.point("width", size(0), system);
  if (start.whole == Whole::rectangle) fields.point("depth", size(1), system);
  const Vec along = ring[1].from - ring[0].from;
  const Vec east = dot(along, Vec{1, 0}) < 0 && start.whole == Whole::rectangle ? -along : along;
  fields.point("angle", std::atan2(east.y, east.x) * 180 / std::numbers::pi);
}

}  // namespace sketch
