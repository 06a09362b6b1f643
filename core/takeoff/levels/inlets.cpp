#include "takeoff/levels/inlets.h"

#include <algorithm>

#include "geometry/flatten.h"
#include "geometry/index.h"

namespace takeoff::levels {

using geometry::Point;
using geometry::Vec;

namespace {

Point at_station(const geometry::Path& path, double steps) {
  for (std::size_t i = 0; i < path.size(); ++i) {
    const geometry::Curve curve = path.curve(i);
    if (steps <= curve.length() || i + 1 == path.size())
      return moved(curve.start, curve.at(std::clamp(steps / curve.length(), 0.0, 1.0)));
    steps -= curve.length();
  }
  return path.end();
}

}  // namespace

Inlets::Inlets(const plan::Site& site) {
  for (const auto& ground : site.grounds) {
    if (const auto* keep_out = std::get_if<plan::KeepOut>(&ground->element->kind);
        keep_out && keep_out->what == "inlet")
      for (const geometry::Outline* outline : ground->footprint.outlines())
        std::ranges::move(geometry::curves(outline->edges()), std::back_inserter(edges_));
    const auto* run = std::get_if<plan::DrainRun>(&ground->element->kind);
    if (run == nullptr || !ground->path) continue;
    for (const plan::AtRun& part : run->parts)
      if (part.what == "inlet") points_.push_back(at_station(*ground->path, static_cast<double>(part.at.steps())));
    if (run->what != "channel") continue;
    channels_.emplace_back();
    for (std::size_t i = 0; i < ground->path->size(); ++i) {
      edges_.push_back(ground->path->curve(i));
      std::ranges::copy(geometry::flatten(edges_.back()), std::back_inserter(channels_.back()));
    }
    for (const geometry::Outline* outline : ground->footprint.outlines())
      std::ranges::move(geometry::curves(outline->edges()), std::back_inserter(edges_));
  }
}

bool Inlets::takes(Point at, double within) const {
  const double steps = within * units::Length::steps_per_metre;
  if (std::ranges::any_of(points_, [&](Point point) { return length(point - at) <= steps; })) return true;
  return std::ranges::any_of(
      edges_, [&](const geometry::Curve& curve) { return geometry::nearest(curve, at).distance <= within; });
}

bool Inlets::channel_between(Point from, Point to) const {
  const Vec way = to - from;
  for (const std::vector<Point>& channel : channels_)
    for (std::size_t i = 1; i < channel.size(); ++i) {
      const Vec one = channel[i - 1] - from;
      const Vec other = channel[i] - from;
      if (cross(way, one) * cross(way, other) > 0) continue;
      const Vec edge = other - one;
      if (cross(edge, -one) * cross(edge, way - one) <= 0) return true;
    }
  return false;
}

}  // namespace takeoff::levels
