#include "plan/edits.h"

#include <cmath>
#include <functional>
#include <numbers>

#include "plan/drawing.h"

namespace plan {

namespace {

// Moves, turns or mirrors every point by one function; `flips`: left and right change over.
struct Carried {
  std::function<geometry::Point(geometry::Point)> to;
  std::function<units::Angle(units::Angle)> direction;
  bool flips = false;

  void edges(geometry::Ring& ring) const {
    for (geometry::Edge& edge : ring) {
      edge.from = to(edge.from);
      if (flips && edge.bulge != 0) edge.bulge = -edge.bulge;
    }
  }
  void through(std::vector<geometry::Point>& points) const {
    for (geometry::Point& point : points) point = to(point);
  }
  void ring(DrawnRing& drawn) const {
    edges(drawn.edges);
    through(drawn.through);
  }
  void line(DrawnLine& drawn) const {
    edges(drawn.edges);
    through(drawn.through);
    drawn.end = to(drawn.end);
  }
  void along(DrawnLine& drawn) const { line(drawn); }
  void point(geometry::Point& at) const { at = to(at); }
  void place(geometry::Point& at) const { at = to(at); }
  void angle(units::Angle& angle) const { angle = direction(angle); }
  void side(geometry::Side& side) const {
    if (flips) side = side == geometry::Side::left ? geometry::Side::right : geometry::Side::left;
  }
  void slope(double& left, double& right) const {
    if (flips) std::swap(left, right);
  }
  void across(double& fall) const {
    if (flips && fall != 0) fall = -fall;
  }
};

units::Angle as_it_is(units::Angle angle) { return angle; }

units::Angle within_a_turn(double degrees) {
  const double rest = std::fmod(degrees, 360);
  return units::Angle::degrees(rest < 0 ? rest + 360 : rest);
}

// Of a mirror: the point across the line through `a` along the unit vector `along`, by its vector from `a`.
geometry::Point across(geometry::Point point, geometry::Point a, geometry::Vec along) {
  const geometry::Vec from = point - a;
  return geometry::moved(a, 2 * geometry::dot(from, along) * along - from);
}

}  // namespace

Element moved(Element element, geometry::Vec whole_steps) {
  const auto to = [whole_steps](geometry::Point point) { return geometry::moved(point, whole_steps); };
  visit_drawing(element.kind, Carried{to, as_it_is, false});
  return element;
}

Element turned(Element element, geometry::Point about, units::Angle by) {
  const units::Turn turn = units::turn(by);
  const auto to = [about, turn](geometry::Point point) {
    const geometry::Vec from = point - about;
    return geometry::moved(about,
                           {from.x * turn.cosine - from.y * turn.sine, from.x * turn.sine + from.y * turn.cosine});
  };
  const auto direction = [by](units::Angle angle) { return within_a_turn(angle.degrees() + by.degrees()); };
  visit_drawing(element.kind, Carried{to, direction, false});
  return element;
}

problem::Result<Element> mirrored(Element element, geometry::Point a, geometry::Point b) {
  if (std::holds_alternative<SitePlan>(element.kind))
    return problem::fault("mirror-site-plan", "A site plan is a picture of the site and is not mirrored.",
                          "Turn it instead.", {element.id, {}, 0, 0, {}});
  const geometry::Vec line = b - a;
  const double long_ = geometry::length(line);
  if (long_ == 0)
    return problem::fault("mirror-line", "The two points of the mirror line are one.", "Set them apart.",
                          {element.id, {}, 0, 0, geometry::xy(a)});
  const geometry::Vec along = (1 / long_) * line;
  const double line_degrees = std::atan2(line.y, line.x) * 180 / std::numbers::pi;
  const auto to = [a, along](geometry::Point point) { return across(point, a, along); };
  const auto direction = [line_degrees](units::Angle angle) {
    return within_a_turn(2 * line_degrees - angle.degrees());
  };
  visit_drawing(element.kind, Carried{to, direction, true});
  return element;
}

}  // namespace plan
