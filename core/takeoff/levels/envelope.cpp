#include "takeoff/levels/envelope.h"

#include <algorithm>

namespace takeoff::levels {

using geometry::Plane;
using geometry::Vec;

namespace {

constexpr double same_place = 1e-9;   // metres: nearer to a line than this is on it
constexpr double same_height = 1e-9;  // metres
constexpr double sliver = 1e-12;      // m2

bool outside(const std::vector<Vec>& ring, const HalfPlane& side) {
  return std::ranges::all_of(ring, [&](Vec corner) { return side.at(corner) <= same_place; });
}
bool crosses(const std::vector<Vec>& ring, const HalfPlane& side) {
  return std::ranges::any_of(ring, [&](Vec corner) { return side.at(corner) < -same_place; });
}
std::vector<Vec> kept(const std::vector<Vec>& ring, const HalfPlane& side) {
  return geometry::cut(ring, side.a, side.b, side.c);
}

Vec middle(const std::vector<Vec>& ring) {
  Vec sum;
  for (const Vec corner : ring) sum = sum + corner;
  return (1.0 / static_cast<double>(ring.size())) * sum;
}

// Lays pieces over one convex part of the ground.
class Laying {
 public:
  explicit Laying(std::vector<Vec> ring) { cells_.push_back({std::move(ring), {}, {}, -1}); }

  void lay(const Piece& piece) {
    std::vector<Cell> after;
    after.reserve(cells_.size() + 4);
    for (Cell& cell : cells_) lay(piece, std::move(cell), after);
    cells_ = std::move(after);
  }
  std::vector<Cell> done() { return std::move(cells_); }

 private:
  static void put(std::vector<Cell>& to, const Cell& like, std::vector<Vec> ring) {
    if (ring.size() >= 3 && geometry::area(ring) > sliver)
      to.push_back({std::move(ring), like.rank, like.plane, like.source});
  }

  static void lay(const Piece& piece, Cell cell, std::vector<Cell>& after) {
    std::vector<Vec> inside = cell.ring;
    for (const HalfPlane& side : piece.sides) {
      if (outside(inside, side)) inside.clear();
      if (crosses(inside, side)) inside = kept(inside, side);
      if (inside.size() < 3) return after.push_back(std::move(cell));
    }
    const Plane gain{piece.rank.z - cell.rank.z, piece.rank.gx - cell.rank.gx, piece.rank.gy - cell.rank.gy};
    const auto wins = [&](Vec corner) { return gain.at(corner) > same_height; };
    const auto loses = [&](Vec corner) { return gain.at(corner) < -same_height; };
    const bool fresh = cell.source < 0;
    if (geometry::area(inside) <= sliver || (!fresh && std::ranges::none_of(inside, wins)))
      return after.push_back(std::move(cell));

    std::vector<Vec> rest = cell.ring;
    for (const HalfPlane& side : piece.sides) {
      if (!crosses(rest, side)) continue;
      put(after, cell, kept(rest, {-side.a, -side.b, -side.c}));
      rest = kept(rest, side);
    }
    if (!fresh && std::ranges::any_of(inside, loses)) {
      put(after, cell, geometry::cut(inside, -gain.gx, -gain.gy, -gain.z));
      inside = geometry::cut(inside, gain.gx, gain.gy, gain.z);
    }
    put(after, {{}, piece.rank, piece.plane, piece.source}, std::move(inside));
  }

  std::vector<Cell> cells_;
};

}  // namespace

HalfPlane beyond(Vec place, Vec towards) { return {towards.x, towards.y, -dot(place, towards)}; }

Plane plane_at(Vec place, double height, Vec gradient) {
  return {height - dot(gradient, place), gradient.x, gradient.y};
}

std::vector<Cell> highest(const geometry::Surface& ground, std::span<const Piece> pieces) {
  std::vector<Cell> all;
  struct Near {
    double rank;
    std::size_t number;
  };
  for (const geometry::Facet& facet : ground.facets()) {
    // The likeliest winner goes first: the others then mostly lose everywhere and cut nothing.
    std::vector<Near> near;
    const Vec centre = middle(facet.ring);
    for (std::size_t i = 0; i < pieces.size(); ++i)
      if (std::ranges::none_of(pieces[i].sides, [&](const HalfPlane& side) { return outside(facet.ring, side); }))
        near.push_back({pieces[i].rank.at(centre), i});
    std::ranges::stable_sort(near, std::ranges::greater{}, &Near::rank);
    Laying laying(facet.ring);
    for (const Near& one : near) laying.lay(pieces[one.number]);
    std::ranges::move(laying.done(), std::back_inserter(all));
  }
  return all;
}

}  // namespace takeoff::levels
