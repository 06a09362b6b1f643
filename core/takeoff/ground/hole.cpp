#include <algorithm>

#include "takeoff/ground/trench.h"

namespace takeoff::ground {

using geometry::Point;
using geometry::Vec;

namespace {

constexpr double steps = units::Length::steps_per_metre;

double bottom_at(const std::vector<Knot>& knots, double across) {
  if (across <= knots.front().across) return knots.front().level;
  for (std::size_t i = 0; i + 1 < knots.size(); ++i) {
    const Knot &a = knots[i], &b = knots[i + 1];
    if (across <= b.across && b.across > a.across)
      return a.level + (b.level - a.level) * (across - a.across) / (b.across - a.across);
  }
  return knots.back().level;
}

}  // namespace

void Hole::add(Piece piece) {
  for (const Slice* slice : {&piece.from, &piece.to})
    for (const double across : {-piece.reach_before, piece.reach_after}) {
      const Point corner = slice->place(across);
      if (pieces_.empty() && slice == &piece.from && across == -piece.reach_before) box_ = {corner, corner};
      box_.low = {std::min(box_.low.x, corner.x), std::min(box_.low.y, corner.y)};
      box_.high = {std::max(box_.high.x, corner.x), std::max(box_.high.y, corner.y)};
    }
  pieces_.push_back(std::move(piece));
}

namespace {

// The bottom of one slice, faces included; nothing beyond them.
std::optional<std::pair<double, std::size_t>> face_or_bottom(const Slice& slice, double across) {
  const std::vector<Knot>& knots = slice.bottom;
  if (across < knots.front().across) {
    if (slice.slope_before <= 0) return std::nullopt;
    return std::pair(knots.front().level + (knots.front().across - across) / slice.slope_before, std::size_t{0});
  }
  if (across > knots.back().across) {
    if (slice.slope_after <= 0) return std::nullopt;
    return std::pair(knots.back().level + (across - knots.back().across) / slice.slope_after, knots.size());
  }
  std::size_t i = 1;
  while (i + 1 < knots.size() && knots[i].across < across) ++i;
  return std::pair(bottom_at(knots, across), i);
}

}  // namespace

std::optional<Hole::Found> Hole::bottom(Point point) const {
  if (point.x < box_.low.x || point.y < box_.low.y || point.x > box_.high.x || point.y > box_.high.y) return {};
  for (const Piece& piece : pieces_) {
    const Vec chord = piece.to.at - piece.from.at;
    const auto ahead = [&](const Slice& slice) {  // metres past the slice, along the line
      const Vec way = geometry::left_of(slice.across);
      return dot(point - slice.at, way) * (dot(way, chord) < 0 ? -1 : 1) / steps;
    };
    const double past = ahead(piece.from), short_of = -ahead(piece.to);
    if (past < 0 || short_of < 0 || past + short_of <= 0) continue;
    const double share = past / (past + short_of);
    const double a = dot(point - piece.from.at, piece.from.across) / steps;
    const double b = dot(point - piece.to.at, piece.to.across) / steps;
    const double across = a + (b - a) * share;
    if (across < -piece.reach_before || across > piece.reach_after) continue;
    const auto first = face_or_bottom(piece.from, across), last = face_or_bottom(piece.to, across);
    if (!first || !last) continue;
    return Found{first->first + (last->first - first->first) * share,
                 reinterpret_cast<const char*>(this) + first->second};
  }
  return {};
}

}  // namespace takeoff::ground
