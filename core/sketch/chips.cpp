#include "sketch/chips.h"

#include <cmath>
#include <numbers>

#include "sketch/fields.h"
#include "sketch/shapes.h"
#include "units/amount.h"
#include "units/number.h"

namespace sketch {

using geometry::Curve;
using geometry::Vec;

double reading_turn(Vec along) {
  if (along.x < 0 || (along.x == 0 && along.y < 0)) along = -along;
  return std::atan2(along.y, along.x);
}

std::string show_length(double steps, units::System system) {
  return units::show_length(units::Length::of_steps(std::llround(steps)), system);
}

std::string show_area(double square_metres, units::System system) {
  if (system == units::System::metric) return units::show_grouped(square_metres, 2) + " m²";
  return units::show_grouped(square_metres / units::square_metres_per_square_foot, 1) + " ft²";
}

Chip length_chip(const Curve& curve, units::System system) {
  return {geometry::moved(curve.start, curve.at(0.5)), reading_turn(curve.direction(0.5)),
          show_length(curve.length(), system)};
}

Chip radius_chip(const Curve& arc, units::System system) {
  return {geometry::moved(arc.start, arc.at(0.5)), reading_turn(arc.direction(0.5)),
          "R " + show_length(arc.radius(), system)};
}

Chip corner_chip(const Curve& before, const Curve& after) {
  const Vec back = -before.direction(1);
  const Vec out = after.direction(0);
  const double between = std::abs(std::atan2(cross(back, out), dot(back, out)));
  return {after.start, 0, show_angle(between * 180 / std::numbers::pi)};
}

Chip area_chip(const std::vector<Curve>& ring, units::System system) {
  Vec sum;
  for (const Curve& curve : ring) sum = sum + (curve.start - ring.front().start);
  return {geometry::moved(ring.front().start, (1.0 / static_cast<double>(ring.size())) * sum), 0,
          show_area(std::abs(area(ring)), system)};
}

}  // namespace sketch
