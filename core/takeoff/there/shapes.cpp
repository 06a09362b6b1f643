#include "takeoff/there/shapes.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "geometry/flatten.h"
#include "geometry/offset.h"
#include "geometry/overlay.h"
#include "geometry/validity.h"
#include "units/number.h"

namespace takeoff::there {

using geometry::Curve;
using geometry::Point;
using geometry::Region;
using units::Length;

geometry::Box Drawn::bounds() const {
  std::optional<geometry::Box> all;
  const auto take = [&all](const geometry::Box& box) {
    if (!all) all = box;
    all->low = {std::min(all->low.x, box.low.x), std::min(all->low.y, box.low.y)};
    all->high = {std::max(all->high.x, box.high.x), std::max(all->high.y, box.high.y)};
  };
  if (!region.empty()) take(region.bounds());
  for (const Curve& curve : curves) take(geometry::bounds(curve));
  for (const Point point : points) take({point, point});
  return all.value_or(geometry::Box{});
}

std::vector<Curve> curves(const Region& region) {
  std::vector<Curve> all;
  for (const geometry::Outline* outline : region.outlines())
    for (const Curve& curve : geometry::curves(outline->edges())) all.push_back(curve);
  return all;
}

std::vector<Curve> curves(const geometry::Path& path) {
  std::vector<Curve> all;
  for (std::size_t i = 0; i < path.size(); ++i) all.push_back(path.curve(i));
  return all;
}

Drawn drawn(const plan::Ground& ground) {
  Drawn made;
  made.region = ground.drawn;
  if (ground.path) made.curves = curves(*ground.path);
  if (const auto* mark = std::get_if<plan::SiteMark>(&ground.element->kind)) made.points = mark->points;
  return made;
}

problem::Result<Region> disc(Point centre, double radius) {
  const Length out = Length::nearest(units::Metres(radius));
  return geometry::region(
      {{{centre.x - out, centre.y}, 1, {}}, {{centre.x + out, centre.y}, 1, {}}});  // two half circles
}

namespace {

// All within `reach` of a chord: an oblong with two half circles.
problem::Result<Region> round_chord(Point a, Point b, double reach) {
  const geometry::Vec along = b - a;
  const geometry::Vec side = (reach * Length::steps_per_metre / geometry::length(along)) * geometry::left_of(along);
  return geometry::region({{geometry::moved(a, -side), 0, {}},
                           {geometry::moved(b, -side), 1, {}},
                           {geometry::moved(b, side), 0, {}},
                           {geometry::moved(a, side), 1, {}}});
}

}  // namespace

problem::Result<Region> around(const Drawn& what, double reach) {
  if (reach <= 0) return what.region;
  std::vector<Region> parts;
  const auto add = [&parts](problem::Result<Region> made) -> problem::Result<void> {
    if (!made) return std::unexpected(made.error());
    parts.push_back(std::move(*made));
    return {};
  };
  problem::Result<void> good;
  if (!what.region.empty())
    good = add(geometry::offset(what.region, Length::nearest(units::Metres(reach)), geometry::Corner::round));
  for (const Curve& curve : what.curves) {
    const std::vector<Point> chords = geometry::flatten(curve);
    for (std::size_t i = 0; good && i + 1 < chords.size(); ++i)
      if (chords[i] != chords[i + 1]) good = add(round_chord(chords[i], chords[i + 1], reach));
  }
  for (const Point point : what.points)
    if (good) good = add(disc(point, reach));
  if (!good) return std::unexpected(good.error());
  if (parts.size() == 1) return parts.front();
  return geometry::unite(parts);
}

double distance(const Drawn& from, Point to) {
  if (from.region.contains(to)) return 0;
  double least = std::numeric_limits<double>::infinity();
  for (const Curve& curve : curves(from.region)) least = std::min(least, geometry::nearest(curve, to).distance);
  for (const Curve& curve : from.curves) least = std::min(least, geometry::nearest(curve, to).distance);
  for (const Point point : from.points) least = std::min(least, geometry::length(to - point) / Length::steps_per_metre);
  return least;
}

Stretches where(std::span<const Curve> curves, const Holds& holds) {
  constexpr double try_every = 0.1;  // metres
  constexpr double found_to = 1e-6;  // metres
  constexpr double from_end = 5e-5;  // metres: a corner belongs to nobody
  Stretches found;
  for (const Curve& curve : curves) {
    const double whole = curve.length() / Length::steps_per_metre;
    if (whole <= 2 * from_end) continue;
    const auto there = [&](double s) {
      return holds(geometry::moved(curve.start, curve.at(s / whole)), curve, s / whole);
    };
    const auto end = [&](double in, double out) {
      while (std::abs(out - in) > found_to) (there((in + out) / 2) ? in : out) = (in + out) / 2;
      return (in + out) / 2;
    };
    const auto add = [&](double a, double b) {
      if (!found.at) found.at = geometry::moved(curve.start, curve.at(a / whole));
      found.length += b - a;
    };
    const int steps = std::max(2, static_cast<int>(std::ceil(whole / try_every)));
    bool last = there(from_end);
    for (int i = 0; i < steps; ++i) {
      const double a = i == 0 ? from_end : i * whole / steps;
      const double b = i + 1 == steps ? whole - from_end : (i + 1) * whole / steps;
      const bool now = there(b);
      const double begin = i == 0 ? 0 : a;
      const double finish = i + 1 == steps ? whole : b;
      if (last && now) add(begin, finish);
      if (last && !now) add(begin, end(a, b));
      if (!last && now) add(end(b, a), finish);
      last = now;
    }
  }
  return found;
}

namespace {

// Where the chord from a to b meets the chord from c to d; both ends of both belong to them.
std::optional<Point> meeting(Point a, Point b, Point c, Point d) {
  const geometry::Vec one = b - a;
  const geometry::Vec other = d - c;
  const double turn = geometry::cross(one, other);
  if (turn == 0) return std::nullopt;
  const double s = geometry::cross(c - a, other) / turn;
  const double t = geometry::cross(c - a, one) / turn;
  if (s < 0 || s > 1 || t < 0 || t > 1) return std::nullopt;
  return geometry::moved(a, s * one);
}

}  // namespace

std::optional<Point> crossing(std::span<const Curve> one, std::span<const Curve> other) {
  for (const Curve& curve : one)
    for (const Curve& crossed : other) {
      if (!geometry::overlap(geometry::bounds(curve), geometry::bounds(crossed))) continue;
      const std::vector<Point> a = geometry::flatten(curve);
      const std::vector<Point> b = geometry::flatten(crossed);
      for (std::size_t i = 0; i + 1 < a.size(); ++i)
        for (std::size_t k = 0; k + 1 < b.size(); ++k)
          if (const auto met = meeting(a[i], a[i + 1], b[k], b[k + 1])) return met;
    }
  return std::nullopt;
}

std::string shown_area(const plan::Job& job, double square_metres) {
  if (job.heading.units == units::System::us)
    return units::show_number(square_metres / units::square_metres_per_square_foot, 1) + " sq ft";
  return units::show_number(square_metres, 1) + " m2";
}

std::string called(const plan::Element& element) { return element.name.empty() ? element.id : element.name; }

problem::Xy middle(const Region& region) { return region.centroid(); }

}  // namespace takeoff::there
