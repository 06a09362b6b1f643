#include "sketch/taped_outline.h"

#include <algorithm>

#include "sketch/shapes.h"

namespace sketch {

using geometry::Point;

namespace {

using Points = std::vector<Point>;

problem::Result<Points> points_of(const Measured& measured, std::span<const Through> names) {
  Points all;
  for (const Through& through : names) {
    const Point* at = measured.find(through.name);
    if (at == nullptr)
      return problem::fault("tape-point-unknown", "no point named \"" + through.name + "\" is found",
                            "look at its name, or at what it still needs");
    if (!all.empty() && all.back() == *at)
      return problem::fault("tape-point-twice", "\"" + through.name + "\" lies where the point before it lies",
                            "name each corner once");
    all.push_back(*at);
  }
  return all;
}

std::unexpected<problem::Problem> too_few(const std::string& what) {
  return problem::fault("tape-too-few", what, "name more points");
}

std::optional<problem::Problem> arc_fault(std::span<const Through> names, bool closed) {
  const std::size_t n = names.size();
  const problem::Problem fault{problem::Severity::problem,
                               "tape-arc",
                               "an arc takes a corner, one point in brackets and a corner",
                               "name a corner before and after each point in brackets",
                               {}};
  if (!closed && (names.front().arc || names.back().arc)) return fault;
  for (std::size_t i = 0; i < n; ++i)
    if (names[i].arc && (closed || i + 1 < n) && names[(i + 1) % n].arc) return fault;
  return {};
}

// Edges from corner to corner; of an open line the last corner is its end and starts none.
geometry::Ring edges(const Points& points, std::span<const Through> names, bool closed) {
  geometry::Ring made;
  const std::size_t n = points.size();
  for (std::size_t i = 0; i < n; ++i) {
    if (names[i].arc || (!closed && i + 1 == n)) continue;
    const bool arc = names[(i + 1) % n].arc;
    const double bulge = arc ? bulge_through(points[i], points[(i + 2) % n], points[(i + 1) % n]) : 0;
    made.push_back({points[i], bulge, {}});
  }
  return made;
}

}  // namespace

std::vector<Through> read_through(std::string_view text) {
  const std::string_view apart = text.find(',') != std::string_view::npos ? ",\n" : " \t\n";
  std::vector<Through> names;
  while (!text.empty()) {
    const std::size_t end = text.find_first_of(apart);
    std::string_view part = text.substr(0, end);
    text = end == std::string_view::npos ? std::string_view() : text.substr(end + 1);
    const auto trim = [&part] {
      while (!part.empty() && (part.front() == ' ' || part.front() == '\t')) part.remove_prefix(1);
      while (!part.empty() && (part.back() == ' ' || part.back() == '\t')) part.remove_suffix(1);
    };
    trim();
    const bool arc = part.size() > 2 && part.front() == '(' && part.back() == ')';
    if (arc) part = part.substr(1, part.size() - 2);
    trim();
    if (!part.empty()) names.push_back({std::string(part), arc});
  }
  return names;
}

problem::Result<plan::DrawnRing> ring_through(const Measured& measured, std::span<const Through> names, bool freeform) {
  auto points = points_of(measured, names);
  if (!points) return std::unexpected(points.error());
  if (points->size() > 1 && points->front() == points->back()) points->pop_back();  // closed by naming the first again
  names = names.first(points->size());
  if (points->size() < 3) return too_few("an outline goes through three points at least");
  if (freeform) return counter_clockwise({{}, std::move(*points)});
  if (const auto fault = arc_fault(names, true)) return std::unexpected(*fault);
  return counter_clockwise({edges(*points, names, true), {}});
}

problem::Result<plan::DrawnLine> line_through(const Measured& measured, std::span<const Through> names, bool freeform) {
  auto points = points_of(measured, names);
  if (!points) return std::unexpected(points.error());
  if (points->size() < 2) return too_few("a line goes through two points at least");
  const Point end = points->back();
  if (freeform) return plan::DrawnLine{{}, {}, std::move(*points)};
  if (const auto fault = arc_fault(names, false)) return std::unexpected(*fault);
  return plan::DrawnLine{edges(*points, names, false), end, {}};
}

}  // namespace sketch
