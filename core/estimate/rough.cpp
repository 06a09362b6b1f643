#include "estimate/rough.h"

#include <algorithm>
#include <cmath>

#include "estimate/quantile.h"

namespace estimate {

namespace {

units::Money at(const std::vector<double>& sorted, double share) {
  return units::Money::of_coins(std::llround(quantile(sorted, share)));
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
  made.low = at(each, 0.25);
  made.middle = at(each, 0.5);
  made.high = at(each, 0.75);
  made.note = "not a quote: from " + std::to_string(made.jobs) + " closed jobs";
  return made;
}

}  // namespace estimate
