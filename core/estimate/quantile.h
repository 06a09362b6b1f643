// Quartiles of a few numbers.
#pragma once

#include <cstddef>
#include <vector>

namespace estimate {

// By linear interpolation between the ordered values, at place 1 + (n - 1) share: definition 7 of Hyndman and Fan,
// "Sample quantiles in statistical packages", The American Statistician 50 (1996). `sorted` rises and is not empty.
double quantile(const std::vector<double>& sorted, double share);

}  // namespace estimate
