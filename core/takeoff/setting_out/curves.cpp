#include "takeoff/setting_out/curves.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "plan/along.h"

namespace takeoff::setting_out {

namespace {

constexpr double steps_per_metre = units::Length::steps_per_metre;
constexpr double most_stations = 10000;  // of one chord

double metres(geometry::Vec steps) { return geometry::length(steps) / steps_per_metre; }

// How far the ends of the two sides at a corner lie off square.
double off_square(geometry::Vec before, geometry::Vec after) {
  const double across = std::abs(geometry::dot(before, after));
  return across / std::min(geometry::length(before), geometry::length(after)) / steps_per_metre;
}

// Up to half a circle: the centre lies on the other side of the chord from the curve. Of an arc that turns left the
// curve lies right of its chord, so the offset is negative.
void offsets_of(const geometry::Curve& arc, Offset common, double step, std::vector<Offset>& into) {
  common.from = arc.start;
  common.to = arc.end;
  common.chord = metres(arc.chord());
  const double radius = arc.radius() / steps_per_metre;
  const double half = common.chord / 2;
  const double to_centre = std::sqrt(std::max(0.0, (radius - half) * (radius + half)));
  std::vector<double> places;
  if (common.chord / step <= most_stations)
    for (int i = 1; i * step < common.chord - 1e-6; ++i)
      if (std::abs(i * step - half) >= step / 10) places.push_back(i * step);
  places.push_back(half);
  std::ranges::sort(places);
  for (const double place : places) {
    const double x = place - half;
    const double height = std::sqrt(std::max(0.0, (radius - x) * (radius + x))) - to_centre;
    common.along = place;
    common.out = arc.bulge > 0 ? -height : height;
    into.push_back(common);
  }
}

}  // namespace

std::vector<Diagonal> diagonals(const plan::ElementId& of, const Drawn& drawn, double out_of_square) {
  const auto& sides = drawn.curves;
  if (!drawn.closed || sides.size() != 4 || !std::ranges::all_of(sides, &geometry::Curve::straight)) return {};
  bool square = true;
  for (std::size_t i = 0; i < 4; ++i)
    square = square && off_square(sides[i].chord(), sides[(i + 1) % 4].chord()) <= out_of_square;
  const auto named = [&](int from) {
    return "corner " + std::to_string(drawn.first_corner + from) + " to corner " +
           std::to_string(drawn.first_corner + from + 2);
  };
  return {{of, named(0), metres(sides[2].start - sides[0].start), square},
          {of, named(1), metres(sides[3].start - sides[1].start), square}};
}

std::vector<Offset> offsets(const plan::ElementId& of, const Drawn& drawn, double step) {
  std::vector<Offset> made;
  for (std::size_t i = 0; i < drawn.curves.size(); ++i) {
    const geometry::Curve& arc = drawn.curves[i];
    if (arc.straight()) continue;
    Offset common;
    common.of = of;
    common.edge = drawn.first_edge + static_cast<int>(i);
    const int parts = std::abs(arc.sweep()) > std::numbers::pi + 1e-9
                          ? static_cast<int>(std::ceil(std::abs(arc.sweep()) / (std::numbers::pi / 2)))
                          : 1;
    for (int part = 0; part < parts; ++part) {
      common.part = parts == 1 ? 0 : part + 1;
      offsets_of(
          parts == 1 ? arc : plan::part(arc, static_cast<double>(part) / parts, static_cast<double>(part + 1) / parts),
          common, step, made);
    }
  }
  return made;
}

}  // namespace takeoff::setting_out
