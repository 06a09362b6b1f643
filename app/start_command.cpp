#include <cstdio>

#include "commands.h"
#include "files/files.h"
#include "plan/site.h"
#include "takeoff/paving/area.h"
#include "takeoff/paving/start.h"

namespace app {

namespace {

using takeoff::paving::For;
using takeoff::paving::Start;

For purpose(const std::string& word) {
  if (word == "slivers") return For::slivers;
  return word == "site" ? For::site : For::cuts;
}

std::string row(const Start& start, units::System system, For what) {
  const double worst = what == For::site ? start.worst_width : start.counts.least_width;
  char numbers[96];
  std::snprintf(numbers, sizeof numbers, "%8lld %8lld %8lld   ", static_cast<long long>(start.counts.whole),
                static_cast<long long>(start.counts.cut), static_cast<long long>(start.counts.slivers));
  const std::string width = units::show_length(units::Length::of_steps(static_cast<long long>(worst)), system);
  return numbers + width + "   at " + units::write_length(start.start.x, system) + ", " +
         units::write_length(start.start.y, system) + "\n";
}

}  // namespace

int start(const StartWords& words) {
  const auto text = files::read_file(words.job);
  if (!text) return refuse(text.error());
  const auto job = files::read_job(*text, words.job);
  if (!job) return refuse(job.error());
  const plan::Site site = plan::site(*job);
  const plan::Ground* ground = site.find(words.element);
  const auto* area = ground ? std::get_if<plan::PavedArea>(&ground->element->kind) : nullptr;
  if (!area)
    return refuse({problem::Severity::problem,
                   "element-unknown",
                   "there is no paved area '" + words.element + "' in this job",
                   "name one by its id",
                   {words.element, words.job, 0, 0, {}}});
  const takeoff::paving::LaidArea laid = takeoff::paving::lay_area(*job, site, *ground);
  if (!laid.layout)
    return refuse(laid.problems.empty() ? problem::Problem{problem::Severity::problem,
                                                           "nothing-chosen",
                                                           "this area has no pattern yet",
                                                           "choose one",
                                                           {words.element, words.job, 0, 0, {}}}
                                        : problem::in_file(laid.problems.front(), words.job));
  const For what = purpose(words.what);
  const takeoff::paving::Slivers slivers{job->choices.sliver_share,
                                         static_cast<double>(job->choices.sliver_width.steps())};
  const auto starts = takeoff::paving::best_starts(laid.field, laid.layout->lattice, slivers, what, 2000,
                                                   static_cast<double>(job->choices.start_tolerance.steps()));
  std::string table = "   whole      cut  slivers   least   start (x, y)\n";
  for (std::size_t i = 0; i < starts.size() && i < static_cast<std::size_t>(words.show); ++i)
    table += row(starts[i], job->heading.units, what);
  if (!words.output.empty() && !starts.empty()) {
    plan::Element moved = *ground->element;
    std::get<plan::PavedArea>(moved.kind).laying->start = starts.front().start;
    const int code = deliver(files::write_job(plan::with(*job, std::move(moved))), words.output);
    if (code != 0) return code;
  }
  return deliver(table, "");
}

}  // namespace app
