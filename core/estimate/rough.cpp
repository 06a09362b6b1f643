#include "estimate/rough.h"

#include <algorithm>
#include <cmath>

namespace estimate {

namespace {

// `sorted` is not empty.
units::Money quantile(const std::vector<double>& sorted, double share) {
  const double place = static_cast<double>(sorted.size() - 1) * share;
  const auto below = static_cast<std::size_t>(place);
  const std::size_t above = std::min(below + 1, sorted.size() - 1);
  const double part = place - static_cast<double>(below);
  return units::Money::of_coins(std::llround(sorted[below] + part * (sorted[above] - sorted[below])));
}

}  // namespace

std::optional<Rough> rough(const std::vector<ClosedJob>& jobs) {
  constexpr std::size_t fewest = 3;
  constexpr double most_coins = 9e15;  // whole coins are exact in a double up to there
  std::vector<double> each;
  for (const ClosedJob& job : jobs) {
    const double one = static_cast<double>(job.price.coins()) / job.measure;
    if (job.measure > 0 && one > 0 && one < most_coins) each.push_back(one);
  }
  if (each.size() < fewest) return std::nullopt;
  std::ranges::sort(each);
  Rough made;
  made.jobs = each.size();
  made.left_out = jobs.size() - each.size();
  made.low = quantile(each, 0.25);
  made.middle = quantile(each, 0.5);
  made.high = quantile(each, 0.75);
  made.note = "not a quote: from " + std::to_string(made.jobs) + " closed jobs";
  return made;
}

}  // namespace estimate
