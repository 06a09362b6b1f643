#include <algorithm>

#include "geometry/offset.h"
#include "sheets/plan_parts.h"

namespace sheets {

using takeoff::Stage;

namespace {

// Thickness that a house's wall is drawn with; nobody enters it.
constexpr units::Length wall_band = units::Length::inches(10);

void draw_building(Plan& plan, const plan::Ground& ground, const plan::Building& building) {
  const plan::ElementId& id = ground.element->id;
  Area inner;
  inner.contours = contours(ground.drawn);
  inner.material = Material::building;
  inner.tone = 1;  // plain: only the band of its walls is hatched
  inner.of = id;
  plan.put(inner);
  Area band = inner;
  band.tone = 0;
  band.line = Line::house;
  if (const auto inset = geometry::offset(ground.drawn, -wall_band, geometry::Corner::mitred))
    for (Contour& contour : contours(*inset)) band.contours.push_back(std::move(contour));
  plan.put(std::move(band));
  const std::optional<Vec> middle = inside(ground.drawn);
  std::string text = ground.element->name.empty() ? id : ground.element->name;
  if (building.floor) text += ", floor " + show_height(building.floor->metres().si(), plan.system());
  // Its tag stands in the middle, the name under it.
  if (middle) plan.mark(Sign::name, {middle->x, middle->y - 0.6}, std::move(text), id);
}

// The outline seen along the way up: from the foot, and from its left side as one climbs.
struct Flight {
  Vec up;
  Vec left;
  Vec foot;  // the left end of the foot's edge
  double run = 0;
  double width = 0;
  Vec at(double ahead, double across) const { return foot + ahead * up - across * left; }
};

Flight flight_of(const geometry::Region& drawn, double up) {
  Flight flight{from_angle(up), geometry::left_of(from_angle(up)), {}, 0, 0};
  double low = 0, high = 0, right = 0, left = 0;
  bool first = true;
  for (const geometry::Outline* outline : drawn.outlines()) {
    for (const geometry::Edge& edge : outline->edges()) {
      const Vec at = metres(edge.from);
      const double ahead = geometry::dot(at, flight.up), across = geometry::dot(at, flight.left);
      low = first ? ahead : std::min(low, ahead);
      high = first ? ahead : std::max(high, ahead);
      right = first ? across : std::min(right, across);
      left = first ? across : std::max(left, across);
      first = false;
    }
  }
  flight.foot = low * flight.up + left * flight.left;
  flight.run = high - low;
  flight.width = left - right;
  return flight;
}

// Treads from the foot up, their nosings, and the arrow that points up.
void draw_treads(Plan& plan, const Flight& flight, int risers, double tread, const plan::ElementId& of) {
  for (int i = 0; i < risers; ++i) {
    const double from = i * tread, to = i + 1 == risers ? flight.run : std::min((i + 1) * tread, flight.run);
    if (to <= from) break;
    Area area;
    area.contours.push_back(
        polygon({flight.at(from, 0), flight.at(from, flight.width), flight.at(to, flight.width), flight.at(to, 0)}));
    area.material = Material::block;
    area.line = Line::unit;
    area.tone = i % 2;
    area.of = of;
    plan.put(std::move(area));
    const double nosing = from + std::min(units::metres_per_inch, (to - from) / 4);
    plan.stroke(line(flight.at(nosing, 0), flight.at(nosing, flight.width)), Line::light, of);
  }
  const double middle = flight.width / 2, head = std::min(flight.run, flight.width) / 8;
  const Vec tip = flight.at(0.9 * flight.run, middle);
  plan.stroke(line(flight.at(0.1 * flight.run, middle), tip), Line::element, of);
  Contour point =
      polygon({tip - head * flight.up + head * flight.left, tip, tip - head * flight.up - head * flight.left});
  point.closed = false;
  plan.stroke(std::move(point), Line::element, of);
}

void draw_steps(Plan& plan, const plan::Ground& ground, const plan::Steps& steps) {
  if (ground.drawn.empty()) return;
  const plan::ElementId& id = ground.element->id;
  const auto risers = measured(plan, id, "risers"), tread = measured(plan, id, "tread_m");
  if (plan.built(Stage::coping) && risers && tread && *tread > 0)
    draw_treads(plan, flight_of(ground.drawn, steps.up.radians()), static_cast<int>(*risers), *tread, id);
  else
    return plan.put(contours(ground.drawn), Material::block, Line::element, Stage::coping, id);
  for (Contour& contour : contours(ground.drawn)) plan.stroke(std::move(contour), Line::element, id);
}

void draw_pillar(Plan& plan, const plan::Ground& ground) {
  const plan::ElementId& id = ground.element->id;
  plan.put(contours(ground.drawn), Material::block, Line::element, Stage::wall, id);
  if (!plan.built(Stage::wall)) return;
  const auto cap = geometry::offset(ground.drawn, -units::Length::inches(2), geometry::Corner::mitred);
  if (cap) plan.put(contours(*cap), Material::cap, Line::unit, Stage::wall, id);
}

// The drafting sign for a void: a cross from corner to corner of its box.
void draw_void(Plan& plan, const plan::Ground& ground) {
  const plan::ElementId& id = ground.element->id;
  const geometry::Box box = ground.drawn.bounds();
  const Vec low = metres(box.low), high = metres(box.high);
  plan.put(contours(ground.drawn), Material::none, Line::element, Stage::protect, id);
  plan.stroke(line(low, high), Line::light, id);
  plan.stroke(line({low.x, high.y}, {high.x, low.y}), Line::light, id);
}

void draw_kept_out(Plan& plan, const plan::Ground& ground, const plan::KeepOut& out) {
  if (ground.drawn.empty()) return;
  if (out.pillar) return draw_pillar(plan, ground);
  if (out.what == "planter" || out.what == "tree")
    return plan.put(contours(ground.drawn), Material::planting, Line::element, Stage::protect, ground.element->id);
  if (out.what == "pillar" || out.what == "column")
    return plan.put(contours(ground.drawn), Material::block, Line::element, Stage::protect, ground.element->id);
  draw_void(plan, ground);
}

}  // namespace

std::optional<double> measured(const Plan& plan, const plan::ElementId& of, std::string_view name) {
  for (const takeoff::Measures& measures : plan.results().takeoff.measures)
    if (measures.element == of) return measures.get(name);
  return std::nullopt;
}

void draw_buildings(Plan& plan) {
  for (const auto& ground : plan.site().grounds) {
    const auto* building = std::get_if<plan::Building>(&ground->element->kind);
    if (building && !ground->drawn.empty()) draw_building(plan, *ground, *building);
  }
}

void draw_standing(Plan& plan) {
  for (const auto& ground : plan.site().grounds) {
    const plan::Kind& kind = ground->element->kind;
    if (const auto* wall = std::get_if<plan::Wall>(&kind)) draw_wall(plan, *ground, *wall);
    if (const auto* steps = std::get_if<plan::Steps>(&kind)) draw_steps(plan, *ground, *steps);
    if (const auto* out = std::get_if<plan::KeepOut>(&kind)) draw_kept_out(plan, *ground, *out);
  }
}

}  // namespace sheets
