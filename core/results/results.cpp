#include "results/results.h"

#include <algorithm>

#include "problem/ensure.h"

namespace results {

Results compute(std::shared_ptr<const plan::Job> job) {
  Memory none;
  return compute(std::move(job), none);
}

Results compute(std::shared_ptr<const plan::Job> job, Memory& memory) {
  problem::ensure(job && job->catalogue, "a job with its catalogue is computed");
  Results made;
  made.site = plan::site(*job);
  made.takeoff = takeoff::takeoff(*job, made.site, memory);
  made.estimate = estimate::estimate(*job, made.takeoff);
  made.priced = estimate::priced(*job, made.estimate);
  made.job = std::move(job);
  return made;
}

std::vector<problem::Problem> Results::problems() const {
  std::vector<problem::Problem> all = takeoff.problems;
  all.insert(all.end(), estimate.problems.begin(), estimate.problems.end());
  all.insert(all.end(), priced.problems.begin(), priced.problems.end());
  std::ranges::stable_sort(all, [](const auto& a, const auto& b) { return a.severity > b.severity; });
  return all;
}

bool Results::final() const {
  return estimate.final && priced.final && std::ranges::none_of(takeoff.problems, [](const problem::Problem& said) {
           return said.severity == problem::Severity::problem;
         });
}

}  // namespace results
