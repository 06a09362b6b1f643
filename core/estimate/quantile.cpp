#include "estimate/quantile.h"

#include <algorithm>

namespace estimate {

double quantile(const std::vector<double>& sorted, double share) {
  const double place = static_cast<double>(sorted.size() - 1) * share;
  const auto below = static_cast<std::size_t>(place);
  const std::size_t above = std::min(below + 1, sorted.size() - 1);
  const double part = place - static_cast<double>(below);
  return sorted[below] + part * (sorted[above] - sorted[below]);
}

}  // namespace estimate
