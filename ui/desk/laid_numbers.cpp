#include "ui/desk/laid_numbers.h"

#include <algorithm>
#include <cmath>

#include "plan/site.h"
#include "takeoff/paving/area.h"

namespace ui {

namespace {

std::int64_t count_of(const takeoff::Measures& measures, std::string_view name) {
  return std::llround(measures.get(name).value_or(0));
}

problem::Problem nothing_chosen(const plan::ElementId& area) {
  return {problem::Severity::problem,
          "nothing-chosen",
          "no pattern is chosen for this area yet",
          "choose one",
          {area, "", 0, 0, {}}};
}

}  // namespace

plan::Job only_ground(const plan::Job& job) {
  plan::Job made = job;
  std::erase_if(made.elements, [](const plan::ElementPtr& element) { return plan::rank(element->kind) == 0; });
  return made;
}

problem::Result<LaidNumbers> laid_numbers(const plan::Job& job, const plan::ElementId& area) {
  const plan::Site site = plan::site(job);
  const plan::Ground* ground = site.find(area);
  if (!ground || !std::holds_alternative<plan::PavedArea>(ground->element->kind))
    return std::unexpected(nothing_chosen(area));
  const takeoff::paving::LaidArea laid = takeoff::paving::lay_area(job, site, *ground);
  if (!laid.layout) return std::unexpected(laid.problems.empty() ? nothing_chosen(area) : laid.problems.front());
  const takeoff::Measures measures = takeoff::paving::paving(job, laid).measures;
  LaidNumbers found;
  found.whole = count_of(measures, "units_whole");
  found.cut = count_of(measures, "units_cut");
  found.slivers = count_of(measures, "slivers");
  found.bought = count_of(measures, job.choices.reuse == plan::Reuse::none ? "bought_none" : "bought_area");
  found.net_area_m2 = ground->net.area().si();
  double least = 0;
  for (const takeoff::paving::Piece& piece : laid.layout->pieces)
    least = least == 0 ? piece.least_width : std::min(least, piece.least_width);
  found.least_width = least / units::Length::steps_per_metre;
  return found;
}

}  // namespace ui
