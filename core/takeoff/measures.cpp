#include "takeoff/measures.h"

namespace takeoff {

using problem::Problem;
using problem::Severity;

namespace {

// What no trade works out yet, of kinds that have none and of those that have one: it is said, and no total is final on
// it.
struct StillToCome {
  static constexpr const char* own_base = "the digging for its base, and hauling that earth away";
  std::string operator()(const plan::PavedArea&) const { return {}; }
  std::string operator()(const plan::Pool&) const { return {}; }
  std::string operator()(const plan::Building&) const { return {}; }
  std::string operator()(const plan::KeepOut& out) const { return out.pillar ? own_base : ""; }
  std::string operator()(const plan::EdgeRun&) const { return {}; }
  std::string operator()(const plan::Note&) const { return {}; }
  std::string operator()(const plan::Dimension&) const { return {}; }
  std::string operator()(const plan::SitePlan&) const { return {}; }
  std::string operator()(const plan::LevelBook&) const { return {}; }
  std::string operator()(const plan::BaseLine&) const { return {}; }
  std::string operator()(const plan::Wall& wall) const {
    if (wall.existing) return {};
    return wall.free_standing ? own_base
                              : "the digging for its base and of the bank behind it, and hauling that earth away";
  }
  std::string operator()(const plan::Steps&) const { return own_base; }
  std::string operator()(const plan::DrainRun&) const { return "its pipe, levels and outlets"; }
  std::string operator()(const plan::Level&) const { return {}; }  // said once for all of them
  std::string operator()(const plan::Feature&) const { return "what it takes to set it"; }
  std::string operator()(const plan::Removal&) const { return "its haul and hours"; }
  std::string operator()(const plan::SiteMark&) const { return "the rule of this mark"; }
  std::string operator()(const plan::Protection&) const { return "its mats and boards"; }
};

}  // namespace

Share measures(const plan::Ground& ground) {
  Share share;
  share.measures.element = ground.element->id;
  const bool pool = std::holds_alternative<plan::Pool>(ground.element->kind);
  if (!ground.drawn.empty()) {
    share.measures.put("outline_area_m2", ground.drawn.area().si());
    share.measures.put("perimeter_m", ground.drawn.perimeter().si());
    share.measures.put("net_area_m2", ground.net.area().si());
  }
  if (pool && !ground.drawn.empty()) {
    share.measures.put("water_area_m2", ground.drawn.area().si());
    share.measures.put("water_edge_m", ground.drawn.perimeter().si());
  }
  if (ground.path) share.measures.put("length_m", ground.path->length().si());
  const std::string missing = std::visit(StillToCome{}, ground.element->kind);
  if (!missing.empty())
    share.problems.push_back({Severity::problem,
                              "not-computed",
                              "not worked out: " + missing,
                              "add what it needs by hand; the total is not final",
                              {ground.element->id, "", 0, 0, {}}});
  return share;
}

void say_levels(const plan::Site& site, std::vector<problem::Problem>& problems) {
  std::vector<plan::ElementId> levels;
  for (const auto& ground : site.grounds)
    if (std::holds_alternative<plan::Level>(ground->element->kind)) levels.push_back(ground->element->id);
  if (levels.empty()) return;
  problems.push_back(
      {Severity::problem,
       "not-computed",
       std::to_string(levels.size()) + " level" + (levels.size() == 1 ? " is" : "s are") +
           " kept; surfaces, falls and digging by levels are not worked out, one depth stands everywhere",
       "check falls and depths by hand; the total is not final",
       {levels.front(), "", 0, 0, {}}});
}

}  // namespace takeoff
