#include "ui/desk/find_start.h"

#include "plan/site.h"
#include "takeoff/paving/area.h"

namespace ui {

namespace {

using takeoff::paving::For;
using takeoff::paving::Start;

plan::Job with_start(const plan::Job& job, const plan::Element& element, geometry::Point start) {
  plan::Element after = element;
  std::get<plan::PavedArea>(after.kind).laying->start = start;
  return plan::with(job, std::move(after));
}

// Whether the person gets what was asked for: the same number at another place is no reason to move.
bool improves(const Start& best, const Start& now, For what) {
  switch (what) {
    case For::cuts:
      return best.counts.cut != now.counts.cut ? best.counts.cut < now.counts.cut
                                               : best.counts.slivers < now.counts.slivers;
    case For::slivers:
      return best.counts.slivers != now.counts.slivers ? best.counts.slivers < now.counts.slivers
                                                       : best.counts.cut < now.counts.cut;
    case For::site:
      return best.worst_width != now.worst_width ? best.worst_width > now.worst_width : best.at_risk < now.at_risk;
  }
  return false;
}

}  // namespace

problem::Result<FoundStart> find_start(const plan::Job& job, const plan::ElementId& area, For what, int tries,
                                       const GoesOn& goes_on) {
  const auto was = laid_numbers(job, area);
  if (!was) return std::unexpected(was.error());
  const plan::Site site = plan::site(job);
  const plan::Ground& ground = *site.find(area);
  const takeoff::paving::LaidArea laid = takeoff::paving::lay_area(job, site, ground);
  const takeoff::paving::Slivers slivers{job.choices.sliver_share,
                                         static_cast<double>(job.choices.sliver_width.steps())};
  const double tolerance = static_cast<double>(job.choices.start_tolerance.steps());
  const auto starts =
      takeoff::paving::best_starts(laid.field, laid.layout->lattice, slivers, what, tries, tolerance, goes_on);
  FoundStart found{job, *was, *was, 0, 0, false};
  const Start* now = nullptr;
  for (const Start& start : starts)
    if (start.start == laid.layout->lattice.start) now = &start;
  if (!now || starts.empty()) return found;
  found.worst_was = now->worst_width / units::Length::steps_per_metre;
  found.worst_is = found.worst_was;
  const Start& best = starts.front();
  if (!improves(best, *now, what)) return found;
  plan::Job after = with_start(job, *ground.element, best.start);
  const auto is = laid_numbers(after, area);
  if (!is) return std::unexpected(is.error());
  found.worst_is = best.worst_width / units::Length::steps_per_metre;
  found.is = *is;
  found.after = std::move(after);
  found.better = true;
  return found;
}

}  // namespace ui
