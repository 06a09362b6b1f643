#include "takeoff/levels/corners.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace takeoff::levels {

using geometry::Vec;

namespace {

constexpr double same_place = 1e-4;  // metres

class Merging {
 public:
  explicit Merging(Corners& corners) : corners_(corners) {}

  std::uint32_t corner(Vec place) {
    const long x = std::lround(place.x / same_place);
    const long y = std::lround(place.y / same_place);
    for (long i = x - 1; i <= x + 1; ++i)
      for (long k = y - 1; k <= y + 1; ++k) {
        const auto found = cells_.find({i, k});
        if (found != cells_.end() && length(corners_.at[found->second] - place) <= same_place) return found->second;
      }
    const auto number = static_cast<std::uint32_t>(corners_.at.size());
    cells_.emplace(std::pair{x, y}, number);
    corners_.at.push_back(place);
    corners_.height.push_back(1e9);
    return number;
  }

 private:
  Corners& corners_;
  std::map<std::pair<long, long>, std::uint32_t> cells_;
};

}  // namespace

std::uint32_t Corners::nearest(Vec place) const {
  std::uint32_t best = 0;
  for (std::uint32_t i = 1; i < at.size(); ++i)
    if (length(at[i] - place) < length(at[best] - place)) best = i;
  return best;
}

Corners corners_of(const Area& area) {
  Corners made;
  Merging merging(made);
  const std::vector<geometry::Facet>& facets = area.surface->facets();
  made.of_facet.resize(facets.size());
  const auto add = [&](std::uint32_t facet, Vec place) {
    const std::uint32_t corner = merging.corner(place);
    made.height[corner] = std::min(made.height[corner], facets[facet].plane.at(place));
    made.of_facet[facet].push_back(corner);
    return corner;
  };
  for (std::uint32_t f = 0; f < facets.size(); ++f)
    for (const Vec place : facets[f].ring) add(f, place);
  for (const Join& join : area.joints.joins)
    for (const std::uint32_t facet : {join.a, join.b}) {
      add(facet, join.from);
      add(facet, join.to);
    }
  for (const Rim& rim : area.joints.rims) {
    const std::uint32_t from = add(rim.facet, rim.from);
    made.of_rim.emplace_back(from, add(rim.facet, rim.to));
  }
  made.facets.resize(made.at.size());
  for (std::uint32_t f = 0; f < facets.size(); ++f) {
    std::vector<std::uint32_t>& own = made.of_facet[f];
    std::ranges::sort(own);
    const auto twice = std::ranges::unique(own);
    own.erase(twice.begin(), twice.end());
    for (const std::uint32_t corner : own) made.facets[corner].push_back(f);
  }
  return made;
}

}  // namespace takeoff::levels
