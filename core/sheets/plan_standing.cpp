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
  if (middle) plan.mark(Sign::name, *middle, std::move(text), id);
}

}  // namespace

void draw_buildings(Plan& plan) {
  for (const auto& ground : plan.site().grounds) {
    const auto* building = std::get_if<plan::Building>(&ground->element->kind);
    if (building && !ground->drawn.empty()) draw_building(plan, *ground, *building);
  }
}

void draw_standing(Plan&) {}

}  // namespace sheets
