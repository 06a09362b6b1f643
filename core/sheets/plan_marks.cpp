#include "sheets/plan_parts.h"

namespace sheets {

namespace {

std::optional<Vec> middle(const plan::Ground& ground) {
  if (const auto at = inside(ground.net.empty() ? ground.drawn : ground.net)) return at;
  if (!ground.path) return std::nullopt;
  const geometry::Curve curve = ground.path->curve(ground.path->size() / 2);
  return metres(geometry::moved(curve.start, curve.at(0.5)));
}

}  // namespace

void draw_marks(Plan& plan) {
  for (const auto& ground : plan.site().grounds)
    if (const auto at = middle(*ground)) plan.mark(Sign::tag, *at, ground->element->id, ground->element->id);
}

}  // namespace sheets
