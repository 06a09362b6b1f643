#include "results/kept_of.h"

#include "problem/ensure.h"

namespace results {

estimate::Kept kept_of(const Results& results, std::string program) {
  constexpr std::size_t most = 1000;
  problem::ensure(results.job != nullptr, "results that were worked out are kept");
  estimate::Kept made = estimate::kept(*results.job, results.estimate, results.priced, std::move(program));
  made.final = results.final();
  made.problems.clear();
  const std::vector<problem::Problem> said = results.problems();
  for (std::size_t i = 0; i < said.size() && i < most; ++i) made.problems.push_back(problem::sentence(said[i]));
  return made;
}

}  // namespace results
