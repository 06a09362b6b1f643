#include "takeoff/levels/trace.h"

#include <algorithm>
#include <cmath>

namespace takeoff::levels {

using geometry::Facet;
using geometry::Vec;

namespace {

constexpr double on_line = 5e-5;     // metres
constexpr double least_way = 1e-4;   // metres: a shorter way is none
constexpr double least_fall = 1e-6;  // a share: flatter is level
constexpr int most_steps = 4000;     // over facets; water that goes on longer is left where it is

struct Edge {
  Vec from;
  Vec along;  // unit
  double run = 0;
  double off(Vec place) const { return cross(along, place - from); }  // positive inside
};

std::vector<Edge> edges(const Facet& facet) {
  std::vector<Edge> all;
  for (std::size_t i = 0; i < facet.ring.size(); ++i) {
    const Vec from = facet.ring[i];
    const Vec way = facet.ring[(i + 1) % facet.ring.size()] - from;
    const double run = length(way);
    if (run > 1e-9) all.push_back({from, (1 / run) * way, run});
  }
  return all;
}

}  // namespace

// The steepest way on from a place of this facet: down its fall until its edge, or along an edge that the place is on.
void Tracer::over(const Facet& facet, Vec from, std::optional<Way>& best) const {
  const std::vector<Edge> all = edges(facet);
  if (std::ranges::any_of(all, [&](const Edge& edge) { return edge.off(from) < -on_line; })) return;
  const Vec gradient{facet.plane.gx, facet.plane.gy};
  const auto take = [&](Vec to) {
    const double run = length(to - from);
    if (run < least_way) return;
    const double fall = -dot(gradient, to - from) / run;
    if (fall > least_fall && (!best || fall > best->fall + 1e-12)) best = Way{to, fall};
  };
  for (const Edge& edge : all) {
    if (edge.off(from) > on_line) continue;
    take(edge.from);
    take(edge.from + edge.run * edge.along);
  }
  const double fall = length(gradient);
  if (fall <= least_fall) return;
  const Vec down = (-1 / fall) * gradient;
  double reach = 1e9;
  for (const Edge& edge : all) {
    const double towards = -cross(edge.along, down);
    if (towards > 1e-12) reach = std::min(reach, std::max(edge.off(from), 0.0) / towards);
  }
  if (reach < 1e9) take(from + reach * down);
}

bool Tracer::leaves(Vec at) const {
  for (std::size_t r = 0; r < open_.size(); ++r) {
    if (!open_[r]) continue;
    const Rim& rim = area_.joints.rims[r];
    const double run = length(rim.to - rim.from);
    const Vec along = (1 / run) * (rim.to - rim.from);
    const double on = dot(along, at - rim.from);
    if (std::abs(cross(along, at - rim.from)) < on_line && on > -on_line && on < run + on_line) return true;
  }
  return false;
}

std::optional<Vec> Tracer::sink(Vec from) const {
  const Vec grow{on_line, on_line};
  for (int step = 0; step < most_steps; ++step) {
    if (leaves(from)) return {};
    std::optional<Way> best;
    for (const std::uint32_t f : area_.surface->touching(from - grow, from + grow))
      over(area_.surface->facets()[f], from, best);
    if (!best) return from;
    from = best->to;
  }
  return from;
}

}  // namespace takeoff::levels
