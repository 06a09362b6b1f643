#include "takeoff/walls/base_steps.h"

#include <algorithm>
#include <limits>

namespace takeoff::walls {

namespace {

constexpr double dust = 1e-6;  // metres

// The lower course runs on into the bank, so nothing within `reach` of a stretch may allow less than it starts from.
std::vector<int> run_on(const std::vector<Allowed>& allowed, double reach) {
  std::vector<int> result;
  result.reserve(allowed.size());
  std::size_t first = 0;
  for (std::size_t i = 0; i < allowed.size(); ++i) {
    while (allowed[first].to <= allowed[i].from - reach + dust) ++first;
    int least = allowed[i].course;
    for (std::size_t j = first; j < allowed.size() && allowed[j].from < allowed[i].to + reach - dust; ++j) {
      least = std::min(least, allowed[j].course);
    }
    result.push_back(least);
  }
  return result;
}

struct Best {
  double held = -std::numeric_limits<double>::infinity();  // metres x courses that need not be buried
  int steps = 0;
  int course = 0;  // of the last run
  std::size_t from = 0;
};

}  // namespace

double bury_divisor(double toe) {
  if (toe <= 0) return 20;
  constexpr double slopes[] = {0, 1.0 / 3, 1.0 / 2, 2.0 / 3};
  constexpr double divisors[] = {20, 10, 7, 5};
  const double slope = 1 / toe;
  for (int i = 1; i < 4; ++i) {
    if (slope > slopes[i]) continue;
    return divisors[i - 1] + (divisors[i] - divisors[i - 1]) * (slope - slopes[i - 1]) / (slopes[i] - slopes[i - 1]);
  }
  return divisors[3];
}

std::vector<int> base_steps(const std::vector<Allowed>& allowed, double least_run, double into_bank) {
  std::vector<int> may = run_on(allowed, into_bank);
  if (allowed.empty()) return may;
  const double whole = allowed.back().to - allowed.front().from;
  const auto [low, high] = std::ranges::minmax(may);
  if (low == high || whole < least_run + dust) return std::vector<int>(may.size(), low);

  // A run of twice the least length could as well be two, so no run has to be tried beyond that.
  std::vector<Best> best(may.size() + 1);
  best[0] = {0, 0, 0, 0};
  for (std::size_t end = 1; end <= may.size(); ++end) {
    int course = std::numeric_limits<int>::max();
    for (std::size_t start = end; start-- > 0;) {
      course = std::min(course, may[start]);
      const double length = allowed[end - 1].to - allowed[start].from;
      if (length < least_run - dust || best[start].held == -std::numeric_limits<double>::infinity()) continue;
      const double held = best[start].held + length * (course - low);
      const int steps = best[start].steps + (start > 0 && best[start].course != course ? 1 : 0);
      Best& now = best[end];
      if (held > now.held + dust || (held > now.held - dust && steps < now.steps)) now = {held, steps, course, start};
      const bool could_be_two = length - (allowed[end - 1].to - allowed[end - 1].from) > 2 * least_run + dust;
      if (could_be_two && best[end].held > -std::numeric_limits<double>::infinity()) break;
    }
  }
  std::vector<int> result(may.size(), low);
  for (std::size_t end = may.size(); end > 0; end = best[end].from) {
    std::fill(result.begin() + static_cast<std::ptrdiff_t>(best[end].from),
              result.begin() + static_cast<std::ptrdiff_t>(end), best[end].course);
  }
  return result;
}

}  // namespace takeoff::walls
