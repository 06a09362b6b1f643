// The two halves of `actual`: lines out of entries, stages out of lines and hours.
#pragma once

#include "estimate/actual.h"

namespace estimate {

std::vector<LineActual> actual_lines(const plan::Job& job, const Kept& kept, const std::vector<Entry>& standing,
                                     std::vector<problem::Problem>& problems);

// Fills stages, total and unmeasured from the lines that `made` has.
void add_stages(const Kept& kept, const std::vector<Entry>& standing, Actual& made);

// Money with a guard: nothing past 9e15 coins, one by one and all together.
class Counted {
 public:
  // 0 and a problem where it is nothing or too large.
  units::Money operator()(std::optional<units::Money> money, const std::string& of,
                          std::vector<problem::Problem>& problems);

 private:
  double sum_ = 0;
};

}  // namespace estimate
