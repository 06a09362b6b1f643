#include "takeoff/levels/lows.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <queue>

#include "takeoff/levels/corners.h"
#include "takeoff/levels/trace.h"

namespace takeoff::levels {

using geometry::Vec;

namespace {

constexpr double puddle = 1e-3;      // metres deep
constexpr double inlet_reach = 0.3;  // metres
constexpr double never = std::numeric_limits<double>::infinity();

std::vector<char> ways_off(const Area& area, const Corners& corners, const std::vector<char>& open,
                           const Inlets& inlets) {
  std::vector<char> off(corners.at.size(), 0);
  for (std::size_t r = 0; r < area.joints.rims.size(); ++r) {
    if (!open[r]) continue;
    off[corners.of_rim[r].first] = 1;
    off[corners.of_rim[r].second] = 1;
  }
  for (std::size_t c = 0; c < off.size(); ++c)
    if (!off[c] && inlets.takes(area.surface->point(corners.at[c]), inlet_reach)) off[c] = 1;
  // An inlet in the middle of a facet takes what comes to that facet's lowest corner only if it lies there; its own
  // place is no corner, so nothing else is to be done.
  return off;
}

// How high water rises at each corner before it gets away: the least, over all ways off, of the highest place on it.
std::vector<double> water_levels(const Corners& corners, const std::vector<char>& off) {
  std::vector<double> level(corners.at.size(), never);
  using Entry = std::pair<double, std::uint32_t>;
  std::priority_queue<Entry, std::vector<Entry>, std::greater<>> queue;
  for (std::uint32_t c = 0; c < off.size(); ++c) {
    if (!off[c]) continue;
    level[c] = corners.height[c];
    queue.emplace(level[c], c);
  }
  std::vector<char> done(corners.of_facet.size(), 0);
  while (!queue.empty()) {
    const auto [height, corner] = queue.top();
    queue.pop();
    if (height > level[corner]) continue;
    for (const std::uint32_t facet : corners.facets[corner]) {
      if (done[facet]) continue;
      done[facet] = 1;
      for (const std::uint32_t next : corners.of_facet[facet]) {
        const double reached = std::max(height, corners.height[next]);
        if (reached >= level[next]) continue;
        level[next] = reached;
        queue.emplace(reached, next);
      }
    }
  }
  return level;
}

struct Puddles {
  std::vector<int> of;              // of each corner; -1: dry
  std::vector<std::uint32_t> lows;  // the lowest corner of each
};

Puddles puddles(const Corners& corners, const std::vector<double>& level) {
  Puddles made{std::vector<int>(corners.at.size(), -1), {}};
  const auto wet = [&](std::uint32_t c) { return level[c] > corners.height[c] + puddle; };
  for (std::uint32_t start = 0; start < corners.at.size(); ++start) {
    if (made.of[start] >= 0 || !wet(start)) continue;
    const int number = static_cast<int>(made.lows.size());
    std::uint32_t lowest = start;
    std::vector<std::uint32_t> open{start};
    made.of[start] = number;
    while (!open.empty()) {
      const std::uint32_t corner = open.back();
      open.pop_back();
      if (corners.height[corner] < corners.height[lowest]) lowest = corner;
      for (const std::uint32_t facet : corners.facets[corner])
        for (const std::uint32_t next : corners.of_facet[facet])
          if (made.of[next] < 0 && wet(next)) {
            made.of[next] = number;
            open.push_back(next);
          }
    }
    made.lows.push_back(lowest);
  }
  return made;
}

// Base 2 and 3: places spread evenly over a box, the same every time.
double halton(int number, int base) {
  double value = 0;
  double share = 1.0 / base;
  for (; number > 0; number /= base, share /= base) value += share * (number % base);
  return value;
}

void add_catchments(const Area& area, const Corners& corners, const Puddles& found, const std::vector<char>& open,
                    std::vector<Low>& lows) {
  constexpr int seeds = 512;
  const geometry::Surface& surface = *area.surface;
  const geometry::Box box = area.ground->net.bounds();
  const Vec low = surface.place(box.low);
  const Vec size = surface.place(box.high) - low;
  const Tracer tracer(area, open);
  std::vector<int> count(lows.size(), 0);
  int inside = 0;
  for (int i = 1; inside < seeds && i < 40 * seeds; ++i) {
    const Vec seed{low.x + size.x * halton(i, 2), low.y + size.y * halton(i, 3)};
    if (surface.facet(seed) == nullptr) continue;
    ++inside;
    const std::optional<Vec> end = tracer.sink(seed);
    if (!end) continue;
    const auto corner = corners.nearest(*end);
    const int puddle_there = found.of[corner];
    if (puddle_there >= 0) ++count[static_cast<std::size_t>(puddle_there)];
  }
  for (std::size_t i = 0; i < lows.size(); ++i) lows[i].drains = surface.area() * count[i] / std::max(inside, 1);
}

}  // namespace

std::vector<Low> lows(const Area& area, const plan::Site& site, const Terrain& terrain, const Inlets& inlets) {
  const Corners corners = corners_of(area);
  std::vector<char> open(area.joints.rims.size(), 0);
  for (std::size_t r = 0; r < open.size(); ++r) open[r] = lets_off(area, r, site, terrain) ? 1 : 0;
  const std::vector<double> level = water_levels(corners, ways_off(area, corners, open, inlets));
  const Puddles found = puddles(corners, level);
  std::vector<Low> all;
  for (const std::uint32_t corner : found.lows) {
    Low low{corners.at[corner], {}, 0, nullptr};
    if (level[corner] < never) low.depth = level[corner] - corners.height[corner];
    for (std::size_t r = 0; r < open.size(); ++r)
      if (corners.of_rim[r].first == corner || corners.of_rim[r].second == corner) low.held_by = area.facing[r];
    all.push_back(low);
  }
  if (!all.empty()) add_catchments(area, corners, found, open, all);
  return all;
}

}  // namespace takeoff::levels
