#include "takeoff/edges/junction.h"

#include <algorithm>
#include <string_view>

namespace takeoff::edges {

namespace {

bool speaks_of(const std::string& condition, std::string_view words) {
  return condition.find(words) != std::string::npos;
}

const plan::PavedArea* paved(const plan::Element* element) {
  return element ? std::get_if<plan::PavedArea>(&element->kind) : nullptr;
}

// Keep-outs stand in the table as one side and are told apart by the condition.
std::string side(plan::Meets meets) {
  switch (meets) {
    case plan::Meets::pillar:
    case plan::Meets::planter:
    case plan::Meets::inlet: return "keep-out";
    default: return plan::word(meets);
  }
}

enum class Fit { no, general, special };
Fit fit_if(bool holds) { return holds ? Fit::special : Fit::no; }

Fit fit(const plan::Job& job, const plan::PavedArea& area, const plan::Stretch& stretch,
        const catalogue::Junction& row) {
  if (row.side_a != "paving" || row.side_b != side(stretch.meets)) return Fit::no;
  const std::string& condition = row.condition;
  if (speaks_of(condition, "different level")) return Fit::no;  // pavings share one level until levels are drawn
  if (speaks_of(condition, "open base meets dense base")) {
    const plan::PavedArea* other = paved(job.find(stretch.other));
    return fit_if(other && !other->build_up.empty() && !area.build_up.empty() &&
                  open_base(job, *other) != open_base(job, area));
  }
  if (speaks_of(condition, "bound deck")) return fit_if(bound(job, area));
  if (speaks_of(condition, "open base")) return fit_if(open_base(job, area));
  if (speaks_of(condition, "dense base")) return fit_if(!open_base(job, area) && !bound(job, area));
  if (row.side_b == "keep-out") {
    const bool tree = speaks_of(condition, "planter") || speaks_of(condition, "tree");
    if (stretch.meets == plan::Meets::planter) return fit_if(tree);
    return fit_if(speaks_of(condition, stretch.meets == plan::Meets::inlet ? "inlet" : "pillar"));
  }
  return Fit::general;
}

bool has_role(const plan::Job& job, const plan::PavedArea& area, std::initializer_list<std::string_view> roles) {
  const catalogue::BuildUp* build_up = job.catalogue->build_up(area.build_up);
  return build_up && std::ranges::any_of(build_up->layers, [&](const catalogue::Layer& layer) {
           return std::ranges::find(roles, std::string_view(layer.role)) != roles.end();
         });
}

}  // namespace

bool open_base(const plan::Job& job, const plan::PavedArea& area) {
  const catalogue::BuildUp* build_up = job.catalogue->build_up(area.build_up);
  if (!build_up) return false;
  for (const catalogue::Layer& layer : build_up->layers) {
    if (layer.role != "base" && layer.role != "sub-base") continue;
    const catalogue::Item* item = job.catalogue->item(layer.item);
    return item && catalogue::open_graded(*item);
  }
  return false;
}

bool bound(const plan::Job& job, const plan::PavedArea& area) { return has_role(job, area, {"mortar", "slab"}); }

const catalogue::Junction* junction_for(const plan::Job& job, const plan::Ground& ground,
                                        const plan::Stretch& stretch) {
  const plan::PavedArea* area = paved(ground.element.get());
  if (!area) return nullptr;
  const auto& table = job.catalogue->junctions;
  if (stretch.origin.element == plan::mark(ground.element->id)) {
    for (const plan::EdgeChoice& choice : area->edges) {
      if (choice.edge != stretch.origin.edge) continue;
      if (choice.junction == "none") return nullptr;
      const auto chosen = std::ranges::find(table, choice.junction, &catalogue::Junction::id);
      if (chosen != table.end()) return &*chosen;
    }
  }
  const catalogue::Junction* found = nullptr;
  for (const catalogue::Junction& row : table) {
    const Fit how = fit(job, *area, stretch, row);
    if (how == Fit::special) return &row;
    if (how == Fit::general && !found) found = &row;
  }
  return found;
}

}  // namespace takeoff::edges
