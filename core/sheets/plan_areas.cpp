#include <cmath>

#include "geometry/offset.h"
#include "sheets/plan_parts.h"

namespace sheets {

using takeoff::Stage;

void draw_pools(Plan& plan) {
  for (const auto& ground : plan.site().grounds) {
    const auto* pool = std::get_if<plan::Pool>(&ground->element->kind);
    if (!pool || ground->drawn.empty()) continue;
    const plan::ElementId& id = ground->element->id;
    plan.put(contours(ground->footprint), Material::coping, Line::element, Stage::coping, id);
    plan.put(contours(ground->drawn), Material::water, Line::element, Stage::finish, id);
  }
}

void draw_areas(Plan& plan) {
  for (const auto& ground : plan.site().grounds) {
    const auto* area = std::get_if<plan::PavedArea>(&ground->element->kind);
    if (!area || ground->net.empty()) continue;
    const plan::ElementId& id = ground->element->id;
    plan.put(contours(ground->net), Material::joint, Line::element, Stage::paving, id);
    const auto layout = plan.results().takeoff.layouts.find(id);
    if (layout == plan.results().takeoff.layouts.end() || !plan.built(Stage::paving)) continue;
    plan.put(Units{layout->second, contours(ground->net), Material::paving, id});
  }
}

}  // namespace sheets
