#include "takeoff/ground/trench.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "takeoff/ground/slopes.h"

namespace takeoff::ground {

using geometry::Point;
using geometry::Vec;

namespace {

constexpr double steps = units::Length::steps_per_metre;
constexpr double hair = 1e-4;     // metres: places are asked for this far inside of an edge that may part two planes
constexpr double finest = 0.002;  // metres across: a change of planes is found this near
constexpr double wide = 0.5;      // metres from place to place
// Places looked at across (250 m) and along (1 km); in a larger hole they lie further apart, and between them the
// places where the planes change are still sought.
constexpr double most_across = 500;
constexpr double most_along = 2'000;
constexpr double finest_run = 0.02;  // the same along the line
constexpr double farthest = 30;      // metres that a face may run out

// Walks across one slice and gathers its strips.
struct Walker {
  const Slice& slice;
  const LiesAt& lies;
  Section made;
  bool stopped = false;

  std::optional<Lies> at(double across) const {
    const double given = slice.given ? slice.given(across) : std::numeric_limits<double>::quiet_NaN();
    return lies(slice.place(across), given);
  }

  // Between two places across, from left to right or the other way; `level` of the bottom at both.
  void part(double from, double to, double level_from, double level_to, bool until_out) {
    const int count =
        std::max(1, static_cast<int>(std::ceil(std::min(std::abs(to - from) / wide, most_across) - 1e-9)));
    const auto bottom = [&](double share) { return level_from + (level_to - level_from) * share; };
    for (int i = 0; i < count && !stopped; ++i) {
      const double a = static_cast<double>(i) / count, b = static_cast<double>(i + 1) / count;
      fine(from + (to - from) * a, from + (to - from) * b, bottom(a), bottom(b), until_out);
    }
  }

  void fine(double from, double to, double level_from, double level_to, bool until_out) {
    if (stopped) return;
    const double width = std::abs(to - from), inside = std::min(hair, width / 4) / width;
    const std::optional<Lies> first = at(from + (to - from) * inside), last = at(to - (to - from) * inside);
    if (!first || !last) {
      made.known = false;
      return;
    }
    if (first->source != last->source && width > finest) {
      const double middle = (from + to) / 2, level = (level_from + level_to) / 2;
      fine(from, middle, level_from, level, until_out);
      return fine(middle, to, level, level_to, until_out);
    }
    const auto ends = [inside](double a, double b) {  // led on to the ends of the strip
      const double rise = (b - a) / (1 - 2 * inside) * inside;
      return std::pair(a - rise, b + rise);
    };
    const auto [start_a, start_b] = ends(first->level, last->level);
    const auto [ground_a, ground_b] = ends(first->existing, last->existing);
    if (made.changes.empty() || made.changes.back().source != first->source)
      made.changes.push_back({from, first->source});
    keep(
        {from, to, start_a - level_from, start_b - level_to, ground_a - level_from, ground_b - level_to, first->virgin},
        until_out);
  }

  void keep(Strip strip, bool until_out) {
    if (strip.depth_from <= 0 && until_out) stopped = true;
    if (stopped || (strip.depth_from <= 0 && strip.depth_to <= 0)) return;
    const double share = strip.depth_from / (strip.depth_from - strip.depth_to);
    const double where = strip.from + (strip.to - strip.from) * share;
    const double below = strip.below_from + (strip.below_to - strip.below_from) * share;
    if (strip.depth_to < 0) {
      strip.to = where, strip.depth_to = 0, strip.below_to = below;
      stopped = until_out;
    } else if (strip.depth_from < 0) {
      strip.from = where, strip.depth_from = 0, strip.below_from = below;
    }
    if (strip.from > strip.to) {
      std::swap(strip.from, strip.to);
      std::swap(strip.depth_from, strip.depth_to);
      std::swap(strip.below_from, strip.below_to);
    }
    made.strips.push_back(strip);
  }
};

}  // namespace

Point Slice::place(double distance) const { return geometry::moved(at, steps * distance * across); }

Section section(const Slice& slice, const LiesAt& lies) {
  Walker walker{slice, lies, {}, false};
  const std::vector<Knot>& knots = slice.bottom;
  for (std::size_t i = 0; i + 1 < knots.size(); ++i)
    if (knots[i + 1].across - knots[i].across > 1e-9)
      walker.part(knots[i].across, knots[i + 1].across, knots[i].level, knots[i + 1].level, false);
  const auto face = [&](const Knot& foot, double slope, double way) {
    walker.stopped = false;
    if (slope > 0)
      walker.part(foot.across, foot.across + way * farthest, foot.level, foot.level + farthest / slope, true);
  };
  face(knots.back(), slice.slope_after, 1);
  face(knots.front(), slice.slope_before, -1);
  return std::move(walker.made);
}

double Section::area(double turn, double from, double to) const {
  double sum = 0;
  for (const Strip& strip : strips) {
    const double a = std::max(from, strip.from), b = std::min(to, strip.to);
    if (b <= a) continue;
    const auto at = [&](double across) {
      const double share = (across - strip.from) / (strip.to - strip.from);
      return (strip.depth_from + (strip.depth_to - strip.depth_from) * share) * std::max(0.0, 1 - turn * across);
    };
    sum += prismoid(at(a), at((a + b) / 2), at(b), b - a);
  }
  return sum;
}

double Section::virgin_width(double turn) const {
  double sum = 0;
  for (const Strip& strip : strips)
    if (strip.virgin) sum += (strip.to - strip.from) * std::max(0.0, 1 - turn * (strip.from + strip.to) / 2);
  return sum;
}

double Section::deepest() const {
  double most = 0;
  for (const Strip& strip : strips) most = std::max({most, strip.below_from, strip.below_to});
  return most;
}

std::vector<LegOfPath> legs_of(const geometry::Path& path) {
  constexpr double corner = 5 * std::numbers::pi / 180;
  std::vector<LegOfPath> legs;
  double station = 0;
  for (std::size_t i = 0; i < path.size(); ++i) {
    const geometry::Curve curve = path.curve(i);
    const bool turns = legs.empty() || [&] {
      const Vec a = legs.back().curves.back().direction(1), b = curve.direction(0);
      return std::abs(std::atan2(cross(a, b), dot(a, b))) > corner;
    }();
    if (turns) legs.push_back({{}, station, 0});
    legs.back().curves.push_back(curve);
    legs.back().length += curve.length() / steps;
    station += curve.length() / steps;
  }
  return legs;
}

Frame frame(const LegOfPath& leg, double station) {
  double rest = (station - leg.from) * steps;
  for (std::size_t i = 0; i < leg.curves.size(); ++i) {
    const geometry::Curve& curve = leg.curves[i];
    const double length = curve.length();
    if (rest > length && i + 1 < leg.curves.size()) {
      rest -= length;
      continue;
    }
    const double share = std::clamp(rest / length, 0.0, 1.0);
    const double turn = curve.straight() ? 0 : (curve.bulge > 0 ? 1 : -1) / (curve.radius() / steps);
    return {geometry::moved(curve.start, curve.at(share)), geometry::left_of(curve.direction(share)), turn};
  }
  return {};
}

double Along::as_deep_as(double depth) const {
  double sum = 0;
  for (const auto& [run, deep] : depths)
    if (deep >= depth - 1e-9) sum += run;
  return sum;
}

namespace {

struct Runner {
  const SliceAt& slice_at;
  const LiesAt& lies;
  const Measure& measure;
  Hole& hole;
  Along made;

  struct Cut {
    double station = 0;
    Slice slice;
    Section section;
  };
  Cut cut(double station) {
    ++made.sections;
    Cut found{station, slice_at(station), {}};
    found.section = section(found.slice, lies);
    made.known = made.known && found.section.known;
    return found;
  }

  // The same planes are cut, and what parts them runs straight from the first to the last.
  static bool alike(const Cut& first, const Cut& middle, const Cut& last) {
    const auto &a = first.section.changes, &m = middle.section.changes, &b = last.section.changes;
    if (a.size() != m.size() || m.size() != b.size()) return false;
    if (first.slice.slope_after != middle.slice.slope_after || middle.slice.slope_after != last.slice.slope_after)
      return false;
    for (std::size_t i = 0; i < m.size(); ++i)
      if (a[i].source != m[i].source || m[i].source != b[i].source ||
          std::abs(m[i].across - (a[i].across + b[i].across) / 2) > 2 * finest)
        return false;
    return true;
  }

  void part(const Cut& first, const Cut& last) {
    const double length = last.station - first.station;
    const Cut middle = cut((first.station + last.station) / 2);
    if (!alike(first, middle, last) && length > finest_run) {
      part(first, middle);
      return part(middle, last);
    }
    const std::vector<double> a = measure(first.slice, first.section), m = measure(middle.slice, middle.section),
                              b = measure(last.slice, last.section);
    made.volumes.resize(a.size());
    for (std::size_t i = 0; i < a.size(); ++i) made.volumes[i] += prismoid(a[i], m[i], b[i], length);
    const double deepest = std::max({first.section.deepest(), middle.section.deepest(), last.section.deepest()});
    made.deepest = std::max(made.deepest, deepest);
    made.depths.emplace_back(length, middle.section.deepest());
    Hole::Piece piece{first.slice, last.slice, 0, 0};
    for (const Cut* one : {&first, &middle, &last})
      for (const Strip& strip : one->section.strips) {
        piece.reach_before = std::max(piece.reach_before, -strip.from);
        piece.reach_after = std::max(piece.reach_after, strip.to);
      }
    hole.add(std::move(piece));
  }
};

}  // namespace

Along along(double from, double to, const SliceAt& slice_at, const LiesAt& lies, const Measure& measure, Hole& hole) {
  Runner runner{slice_at, lies, measure, hole, {}};
  runner.made.length = to - from;
  if (to - from <= 1e-9) return std::move(runner.made);
  const int count = std::max(1, static_cast<int>(std::ceil(std::min((to - from) / wide, most_along) - 1e-9)));
  Runner::Cut before = runner.cut(from);
  for (int i = 1; i <= count; ++i) {
    Runner::Cut next = runner.cut(from + (to - from) * i / count);
    runner.part(before, next);
    before = std::move(next);
  }
  return std::move(runner.made);
}

}  // namespace takeoff::ground
