#include "plan/along.h"

#include <cmath>
#include <utility>

namespace plan {

using geometry::Curve;
using geometry::Ring;

Curve part(const Curve& curve, double from, double to) {
  const geometry::Point start = from <= 0 ? curve.start : geometry::moved(curve.start, curve.at(from));
  const geometry::Point end = to >= 1 ? curve.end : geometry::moved(curve.start, curve.at(to));
  const double bulge = from <= 0 && to >= 1 ? curve.bulge : std::tan(curve.sweep() * (to - from) / 4);
  return {start, end, curve.straight() ? 0 : bulge};
}

namespace {

// One stretch as an edge; the end of the last one closes the path.
struct Piece {
  Curve curve;
  geometry::Origin origin;
};

Piece piece(const Ring& ring, const Stretch& stretch) {
  const auto edge = static_cast<std::size_t>(stretch.edge);
  const Curve whole = geometry::curve(ring, edge);
  const double total = whole.length() / Length::steps_per_metre;
  const double from = stretch.from < 1e-6 ? 0 : stretch.from / total;
  const double to = total - stretch.to < 1e-6 ? 1 : stretch.to / total;
  return {part(whole, from, to), ring[edge].origin};
}

void finish(std::vector<Along>& all, const Ring& ring, int group, std::vector<Stretch> stretches) {
  if (stretches.empty()) return;
  Ring edges;
  geometry::Point end;
  for (const Stretch& stretch : stretches) {
    const Piece made = piece(ring, stretch);
    if (made.curve.start == made.curve.end) continue;
    edges.push_back({made.curve.start, made.curve.bulge, made.origin});
    end = made.curve.end;
  }
  auto path = geometry::Path::make(std::move(edges), end);
  if (path) all.push_back({group, std::move(*path), std::move(stretches)});
}

}  // namespace

std::vector<Along> along(const Ground& ground, const std::function<int(const Stretch&)>& group) {
  std::vector<Along> all;
  const auto outlines = ground.net.outlines();
  for (std::size_t o = 0; o < outlines.size(); ++o) {
    std::vector<std::pair<int, Stretch>> round;
    for (const Stretch& stretch : ground.stretches)
      if (stretch.outline == static_cast<int>(o)) round.emplace_back(group(stretch), stretch);
    // Begin where a group begins, so that none is torn at the outline's first point.
    std::size_t first = 0;
    while (first < round.size() && round[first].first == round[(first + round.size() - 1) % round.size()].first)
      ++first;
    if (first == round.size()) first = 0;
    std::vector<Stretch> open;
    int now = -1;
    for (std::size_t i = 0; i < round.size(); ++i) {
      const auto& [number, stretch] = round[(first + i) % round.size()];
      if (number != now) finish(all, outlines[o]->edges(), now, std::exchange(open, {}));
      now = number;
      if (number >= 0) open.push_back(stretch);
    }
    finish(all, outlines[o]->edges(), now, std::move(open));
  }
  return all;
}

}  // namespace plan
