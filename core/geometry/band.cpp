#include <algorithm>

#include "geometry/offset.h"
#include "geometry/overlay.h"
#include "geometry/private/strips.h"
#include "geometry/validity.h"
#include "problem/ensure.h"

namespace geometry {

namespace {

Edge flipped(const Edge& edge, Point from) { return {from, edge.bulge == 0 ? 0 : -edge.bulge, edge.origin}; }

// The path, the square end, the far side back, and the other square end.
Ring round_open(const Path& path, const FarSide& far) {
  Ring ring = path.edges();
  ring.push_back({path.end(), 0, {}});
  Point at = far.end;
  for (std::size_t i = far.edges.size(); i > 0; --i) {
    ring.push_back(flipped(far.edges[i - 1], at));
    at = far.edges[i - 1].from;
  }
  ring.push_back({at, 0, {}});
  return ring;
}

// The region, when what was drawn is a clean shape as it stands: nothing crosses, touches or falls apart.
std::optional<Region> clean(const Drawn& drawn) {
  const auto made = shape(drawn);
  if (!made || !made->notices.empty() || made->region.polygons().size() != 1) return std::nullopt;
  return made->region;
}

// Path and far side, when they make one clean shape with the ground between them.
std::optional<Region> direct(const Path& path, double left, double limit) {
  const FarSide far = far_side(path, left, limit);
  if (far.bridged || far.edges.empty()) return std::nullopt;
  if (!path.closed()) {
    const Row beside = row(path, left);
    const Point first = moved(beside.origin, beside.edges.front().foot_at_start(left));
    const Point last = moved(beside.origin, beside.edges.back().foot_at_end(left));
    if (far.edges.front().from != first || far.end != last) return std::nullopt;
    const Ring ring = round_open(path, far);
    if ((signed_area(ring).si() > 0) != (left > 0)) return std::nullopt;
    return clean({ring});
  }
  const double inner = signed_area(path.edges()).si();
  const double outer = signed_area(far.edges).si();
  if ((inner > 0) != (outer > 0)) return std::nullopt;
  const bool shrinks = (inner > 0) == (left > 0);
  if ((std::abs(outer) < std::abs(inner)) != shrinks) return std::nullopt;
  return shrinks ? clean({path.edges(), far.edges}) : clean({far.edges, path.edges()});
}

problem::Result<Region> united(const Path& path, double left, double limit) {
  std::vector<Region> pieces;
  for (Ring& ring : strips(row(path, left), Corner::mitred, limit)) {
    const double across = 2 * std::abs(signed_area(ring).si()) / perimeter(ring).si();
    auto made = shape({std::move(ring)});
    if (made) {
      pieces.push_back(std::move(made->region));
    } else if (across > units::Length::millimetres(1).metres().si()) {
      return std::unexpected(made.error());
    }
  }
  return unite(pieces);
}

}  // namespace

problem::Result<Region> band(const Path& path, units::Length width, Side side, double limit) {
  problem::ensure(limit >= 1, "a mitre is at least as long as its width");
  const Point place = path.edges().front().from;
  if (width <= units::Length{} || width > reach_of_plan) {
    return problem::fault("band-width", "A strip along a line needs a width above zero and within the plan's reach.",
                          "Give the strip a width.", {.element = {}, .file = {}, .at = xy(place)});
  }
  const double left = static_cast<double>(width.steps()) * (side == Side::left ? 1 : -1);
  if (auto made = direct(path, left, limit)) return std::move(*made);
  return united(path, left, limit);
}

}  // namespace geometry
