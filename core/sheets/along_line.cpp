#include "sheets/along_line.h"

#include <algorithm>
#include <cmath>

#include "plan/along.h"

namespace sheets {

namespace {

constexpr double per_metre = units::Length::steps_per_metre;
constexpr double same_place = 1e-4;  // metres

double turn_between(const geometry::Curve& a, const geometry::Curve& b) {
  const Vec out = a.direction(1), in = b.direction(0);
  return std::atan2(geometry::cross(out, in), geometry::dot(out, in));
}

// The turn of the path at its corner `i` (before curve i); 0 at the ends of an open one.
double turn_at(const geometry::Path& path, std::size_t i) {
  if (i > 0 && i < path.size()) return turn_between(path.curve(i - 1), path.curve(i));
  return path.closed() ? turn_between(path.curve(path.size() - 1), path.curve(0)) : 0;
}

}  // namespace

PlacedRun part_of(const geometry::Path& path, double from, double to, Strip strip, bool mitred_before,
                  bool mitred_after) {
  PlacedRun placed;
  double start = 0;
  for (std::size_t i = 0; i < path.size(); ++i) {
    const geometry::Curve curve = path.curve(i);
    const double length = curve.length() / per_metre;
    const double a = std::max(from, start), b = std::min(to, start + length);
    if (b - a > same_place) {
      placed.curves.push_back(plan::part(curve, (a - start) / length, (b - start) / length));
      if (mitred_before && placed.curves.size() == 1 && a - start < same_place) placed.before = turn_at(path, i);
      placed.after = mitred_after && start + length - b < same_place ? turn_at(path, i + 1) : 0;
    }
    start += length;
  }
  if (placed.curves.empty()) return placed;
  const geometry::Curve& first = placed.curves.front();
  if (first.straight()) return placed;
  const double radius = first.radius() / per_metre, way = first.bulge > 0 ? 1 : -1;
  for (const geometry::Curve& curve : placed.curves) placed.run.turn += std::abs(curve.sweep());
  placed.run.radius = std::max(1e-6, std::min(radius - way * strip.first, radius - way * strip.second));
  return placed;
}

std::vector<RowPiece> even_pieces(const PlacedRun& placed, Strip strip, bool mitred_before, bool mitred_after,
                                  double piece) {
  if (placed.curves.empty() || !(piece > 0)) return {};
  const PlacedRow row(placed, strip, {mitred_before && placed.before != 0, 0}, {mitred_after && placed.after != 0, 0});
  const bool curved = placed.run.radius > 0;
  const double far = placed.run.radius + strip.deep();
  const double length = curved ? placed.run.turn * far : row.length();
  RowMake make;
  make.pieces = static_cast<int>(std::clamp(std::ceil(length / piece - 1e-3), 1.0, 1e9));
  if (curved) {
    const double half = placed.run.turn / make.pieces / 2;
    make.how = RowMake::How::tapered;
    make.near_face = 2 * placed.run.radius * std::tan(half);
    make.far_face = 2 * far * std::tan(half);
  }
  return row.pieces(make);
}

Station station_on(const geometry::Path& path, double at, double left) {
  for (std::size_t i = 0; i < path.size(); ++i) {
    const geometry::Curve curve = path.curve(i);
    const double length = curve.length() / per_metre;
    if (at > length && i + 1 < path.size()) {
      at -= length;
      continue;
    }
    const double share = std::clamp(at / length, 0.0, 1.0);
    const Vec way = curve.direction(share);
    return {metres(curve.start) + (1 / per_metre) * curve.at(share) + left * geometry::left_of(way),
            std::atan2(way.y, way.x)};
  }
  return {};
}

}  // namespace sheets
