#include "takeoff/setting_out/drawings.h"

#include "plan/footprint.h"

namespace takeoff::setting_out {

namespace {

// The outline or the line by which a kind of element is set out; of those that are not set out neither.
struct Shown {
  const plan::DrawnShape* outline = nullptr;
  const plan::DrawnLine* line = nullptr;
};

Shown shown(const plan::Kind& kind) {
  if (const auto* area = std::get_if<plan::PavedArea>(&kind)) return {&area->outline, nullptr};
  if (const auto* pool = std::get_if<plan::Pool>(&kind)) return {&pool->outline, nullptr};
  if (const auto* steps = std::get_if<plan::Steps>(&kind)) return {&steps->outline, nullptr};
  if (const auto* keep = std::get_if<plan::KeepOut>(&kind); keep && keep->pillar) return {&keep->outline, nullptr};
  if (const auto* wall = std::get_if<plan::Wall>(&kind); wall && !wall->existing) return {nullptr, &wall->line};
  if (const auto* run = std::get_if<plan::EdgeRun>(&kind)) return {nullptr, &run->line};
  if (const auto* run = std::get_if<plan::DrainRun>(&kind)) return {nullptr, &run->line};
  return {};
}

}  // namespace

std::vector<Drawn> drawings(const plan::Ground& ground) {
  const Shown what = shown(ground.element->kind);
  if (!ground.computed || (!what.outline && !what.line)) return {};
  std::vector<Drawn> made;
  if (what.outline) {
    const auto rings = plan::drawing(*what.outline, plan::mark(ground.element->id));
    int first = 1;
    for (const geometry::Ring& ring : rings) {
      if (ring.size() > 1) made.push_back({geometry::curves(ring), first, first, true});
      first += static_cast<int>(ring.size());
    }
    return made;
  }
  const auto path = plan::path(*what.line, plan::mark(ground.element->id));
  if (!path) return {};
  Drawn line;
  line.closed = path->closed();
  for (std::size_t i = 0; i < path->size(); ++i) line.curves.push_back(path->curve(i));
  made.push_back(std::move(line));
  return made;
}

}  // namespace takeoff::setting_out
