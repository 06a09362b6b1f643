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

// As a region; what is thinner than a millimetre and no shape is nothing.
problem::Result<Region> piece(std::vector<Ring> rings) {
  if (rings.empty()) return Region{};
  const double across = 2 * std::abs(signed_area(rings.front()).si()) / perimeter(rings.front()).si();
  auto made = shape({std::move(rings.front())});
  if (made) return std::move(made->region);
  if (across > units::Length::millimetres(1).metres().si()) return std::unexpected(made.error());
  return Region{};
}

// An inside corner sharper than a right angle: the square end of either strip reaches past the other edge.
bool sharp(const Row& beside, std::size_t i) {
  const Beside& before = beside.edges[i];
  const Beside& after = beside.edges[(i + 1) % beside.edges.size()];
  return dot(before.from.direction(1), after.from.direction(0)) < 0 && !outside(before, after, beside.left);
}

// Strips and corners, all of them together. What a strip has past a neighbour, on that one's other side, is nearer to
// the neighbour than to its own edge, and so not on this side of the path. (Not so where an edge bends over the one
// before it, so that the path crosses itself behind a sharp corner: there left and right mean nothing, and ground may
// be missing.)
problem::Result<Region> united(const Path& path, double left, double limit) {
  const Row beside = row(path, left);
  const Row other_side = row(path, -left);
  const std::size_t count = beside.edges.size();
  std::vector<Region> pieces;
  for (std::size_t i = 0; i < count; ++i) {
    auto own = piece(strip(beside, i));
    if (!own) return own;
    std::vector<Region> past;
    const auto cut_by = [&](std::size_t j) -> std::optional<problem::Problem> {
      auto cutter = piece(strip(other_side, j));
      if (!cutter) return cutter.error();
      past.push_back(std::move(*cutter));
      return std::nullopt;
    };
    const std::size_t next = (i + 1) % count;
    const std::size_t before = (i + count - 1) % count;
    if ((path.closed() || i + 1 < count) && sharp(beside, i)) {
      if (auto fault = cut_by(next)) return std::unexpected(*fault);
    }
    if ((path.closed() || i > 0) && sharp(beside, before)) {
      if (auto fault = cut_by(before)) return std::unexpected(*fault);
    }
    if (!past.empty()) own = subtract(*own, past);
    if (!own) return own;
    pieces.push_back(std::move(*own));
    auto corner = piece(corner_piece(beside, i, Corner::mitred, limit));
    if (!corner) return corner;
    pieces.push_back(std::move(*corner));
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
