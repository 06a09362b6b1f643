#include "takeoff/ground/slopes.h"

#include <cmath>

namespace takeoff::ground {

double side_slope(const std::string& stands) {
  if (stands == "A") return 0.75;
  if (stands == "B") return 1;
  return 1.5;
}

double trapezoid(double bottom, double depth, double slope) { return (bottom + slope * depth) * depth; }

double end_areas(std::span<const Station> sections) {
  double sum = 0;
  for (std::size_t i = 0; i + 1 < sections.size(); ++i)
    sum += (sections[i].area + sections[i + 1].area) / 2 * (sections[i + 1].at - sections[i].at);
  return sum;
}

double prismoid(double first, double middle, double last, double length) {
  return (first + 4 * middle + last) / 6 * length;
}

double prismoids(std::span<const Station> sections) {
  double sum = 0;
  std::size_t i = 0;
  while (i + 1 < sections.size()) {
    const double length = sections[i + 1].at - sections[i].at;
    const bool pair = i + 2 < sections.size() &&
                      std::abs(sections[i + 2].at - sections[i + 1].at - length) <= 1e-9 * std::abs(length);
    if (pair)
      sum += prismoid(sections[i].area, sections[i + 1].area, sections[i + 2].area, 2 * length);
    else
      sum += end_areas(sections.subspan(i, 2));
    i += pair ? 2 : 1;
  }
  return sum;
}

}  // namespace takeoff::ground
