#include "sheets/row_pieces.h"

#include <algorithm>
#include <cmath>

namespace sheets {

namespace {

using How = RowMake::How;
constexpr double per_metre = units::Length::steps_per_metre;

Vec turned(Vec v, double by) {
  const Vec t = from_angle(by);
  return {v.x * t.x - v.y * t.y, v.x * t.y + v.y * t.x};
}

// The part of a convex polygon on the side of a line through `at` to which `towards` points.
std::vector<Vec> clipped(const std::vector<Vec>& polygon, Vec at, Vec towards) {
  std::vector<Vec> kept;
  for (std::size_t i = 0; i < polygon.size(); ++i) {
    const Vec a = polygon[i], b = polygon[(i + 1) % polygon.size()];
    const double da = geometry::dot(a - at, towards), db = geometry::dot(b - at, towards);
    if (da >= 0) kept.push_back(a);
    if ((da >= 0) != (db >= 0)) kept.push_back(a + (da / (da - db)) * (b - a));
  }
  return kept;
}

Contour sector(Vec centre, double near, double far, double from, double to) {
  const double bulge = std::tan((to - from) / 4);
  Contour made;
  made.turns = {{centre + far * from_angle(from), bulge},
                {centre + far * from_angle(to), 0},
                {centre + near * from_angle(to), -bulge},
                {centre + near * from_angle(from), 0}};
  return made;
}

// The circle that a curved run follows.
struct Circle {
  Vec centre;
  double start = 0;  // angle
  double way = 1;    // counter-clockwise
  double radius = 0;
};

Circle circle_of(const PlacedRun& placed) {
  geometry::Curve arc = placed.curves.front();
  double turn = 0;
  for (const geometry::Curve& curve : placed.curves) turn += curve.sweep();
  if (std::abs(turn) < 3 && placed.curves.size() > 1) arc = {arc.start, placed.curves.back().end, std::tan(turn / 4)};
  const Vec centre = metres(arc.start) + (1 / per_metre) * arc.centre();
  const Vec spoke = metres(arc.start) - centre;
  return {centre, std::atan2(spoke.y, spoke.x), turn > 0 ? 1.0 : -1.0, geometry::length(spoke)};
}

Vec start_direction(const PlacedRun& placed) { return placed.curves.front().direction(0); }
Vec end_direction(const PlacedRun& placed) { return placed.curves.back().direction(1); }

// How many neighbours are drawn as one.
int together(double pieces) { return std::max(1, static_cast<int>(std::ceil(std::min(pieces, 1e9) / most_drawn))); }

}  // namespace

Strip Strip::beside(double from, double deep, geometry::Side side) {
  const double sign = side == geometry::Side::left ? 1 : -1;
  return {sign * from, sign * (from + deep)};
}

std::vector<Slot> slots(const RowMake& make, double length) {
  std::vector<Slot> found;
  const double joint = make.near_joint;
  const bool closers = make.how == How::straight_closers && make.pieces >= 2;
  const double closer = closers ? make.near_face + joint : 0;
  const int between = closers ? make.pieces - 2 : make.pieces;
  const double module = between > 0 ? (length - 2 * closer) / between : 0;
  const int each = together(make.pieces);
  double at = 0;
  for (int i = 0; i < make.pieces; i += each) {
    const int count = std::min(each, make.pieces - i);
    const bool first = closers && i == 0, last = closers && i + count == make.pieces;
    const int ends = count == 1 ? (first || last ? 1 : 0) : (first ? 1 : 0) + (last ? 1 : 0);
    const double step = ends * closer + (count - ends) * module;
    found.push_back({at + joint / 2, at + step - joint / 2, ends == count || make.cut >= make.pieces});
    at += step;
  }
  return found;
}

std::vector<Slot> whole_from_start(double length, double piece, double joint) {
  std::vector<Slot> found;
  if (!(piece > 0)) return found;
  const double module = piece + joint, pieces = std::ceil(length / module - 1e-9);
  const int each = together(pieces);
  for (double i = 0; i < pieces; i += each) {
    const double whole = (i + std::min<double>(each, pieces - i) - 1) * module + piece, to = std::min(whole, length);
    found.push_back({i * module, to, each == 1 && to < whole - 1e-4});
  }
  return found;
}

PlacedRow::PlacedRow(const PlacedRun& placed, Strip strip, RunEnd before, RunEnd after)
    : placed_(placed), strip_(strip), before_(before), after_(after) {
  points_.push_back(metres(placed.curves.front().start));
  stations_.push_back(0);
  for (const geometry::Curve& curve : placed.curves) {
    points_.push_back(metres(curve.end));
    stations_.push_back(stations_.back() + curve.length() / per_metre);
  }
  const double tan_before = std::tan(placed.before / 2), tan_after = std::tan(placed.after / 2);
  from_ = std::min(strip.first * tan_before, strip.second * tan_before) + before.back;
  to_ = stations_.back() - std::min(strip.first * tan_after, strip.second * tan_after) - after.back;
}

Vec PlacedRow::at(double station, double left) const {
  std::size_t i = 0;
  while (i + 2 < points_.size() && station > stations_[i + 1]) ++i;
  const Vec chord = points_[i + 1] - points_[i];
  const Vec along = (1 / std::max(geometry::length(chord), 1e-12)) * chord;
  return points_[i] + (station - stations_[i]) * along + left * geometry::left_of(along);
}

PlacedRow::Place PlacedRow::place(double share, double left) const {
  if (placed_.run.radius > 0) {
    const Circle circle = circle_of(placed_);
    const double angle = circle.start + circle.way * share * placed_.run.turn;
    const Vec out = from_angle(angle);
    return {circle.centre + (circle.radius - circle.way * left) * out, circle.way * geometry::left_of(out)};
  }
  const double station = from_ + share * length();
  const Vec ahead = at(station + 1e-3, left) - at(station - 1e-3, left);
  return {at(station, left), (1 / geometry::length(ahead)) * ahead};
}

void PlacedRow::add(std::vector<RowPiece>& pieces, std::vector<Vec> corners, bool cut, double joint) const {
  const std::size_t before = corners.size();
  const std::vector<Vec> as_made = corners;
  if (before_.mitred) {
    const Vec along = turned(start_direction(placed_), -placed_.before / 2);
    corners = clipped(corners, points_.front() + joint / 2 * along, along);
  }
  if (after_.mitred) {
    const Vec along = turned(end_direction(placed_), placed_.after / 2);
    corners = clipped(corners, points_.back() + (-joint / 2) * along, -along);
  }
  if (corners.size() < 3) return;
  const bool clipped_now = corners.size() != before || corners != as_made;
  pieces.push_back({polygon(std::move(corners)), cut || clipped_now});
}

std::vector<RowPiece> PlacedRow::straight(const std::vector<Slot>& slots, double joint) const {
  std::vector<RowPiece> made;
  for (const Slot& slot : slots) {
    const double u = from_ + slot.from, v = from_ + slot.to;
    add(made, {at(u, strip_.first), at(v, strip_.first), at(v, strip_.second), at(u, strip_.second)}, slot.cut, joint);
  }
  return made;
}

std::vector<RowPiece> PlacedRow::round(const RowMake& make) const {
  const Circle circle = circle_of(placed_);
  const double near = placed_.run.radius, far = near + strip_.deep();
  // Where the run begins: the line that a corner takes less from says it, as its turn does.
  double skipped = 0;
  if (placed_.run.corner_before > 0) {
    const auto taken = [&](double left) {
      return left * std::tan(placed_.before / 2) / std::max(circle.radius - circle.way * left, 1e-6);
    };
    skipped = std::min(taken(strip_.first), taken(strip_.second));
  }
  skipped += before_.back / ((near + far) / 2);
  const double step = placed_.run.turn / std::max(make.pieces, 1);
  std::vector<RowPiece> made;
  if (const int each = together(make.pieces); each > 1) {
    for (int i = 0; i < make.pieces; i += each) {
      const double from = circle.start + circle.way * (skipped + i * step);
      const double to = from + circle.way * step * std::min(each, make.pieces - i);
      made.push_back({sector(circle.centre, near, far, std::min(from, to), std::max(from, to)), false});
    }
    return made;
  }
  for (int i = 0; i < make.pieces; ++i) {
    const double middle = circle.start + circle.way * (skipped + (i + 0.5) * step);
    if (make.how == How::radius) {
      const double half = make.near_face / near / 2;
      made.push_back({sector(circle.centre, near, far, middle - half, middle + half), false});
      continue;
    }
    const Vec out = from_angle(middle), across = geometry::left_of(out);
    const auto corner = [&](double r, double half) { return circle.centre + r * out + half * across; };
    add(made,
        {corner(near, -make.near_face / 2), corner(far, -make.far_face / 2), corner(far, make.far_face / 2),
         corner(near, make.near_face / 2)},
        make.how == How::tapered, make.near_joint);
  }
  return made;
}

std::vector<RowPiece> PlacedRow::pieces(const RowMake& make) const {
  return placed_.run.radius > 0 ? round(make) : straight(slots(make, length()), make.near_joint);
}

Contour corner_block(const PlacedRun& before_it, Strip strip) {
  const Vec at = metres(before_it.curves.back().end);
  const Vec left = geometry::left_of(end_direction(before_it));
  const Vec next = turned(left, before_it.after);
  const auto corner = [&](double x, double y) { return at + x * left + y * next; };
  return polygon({corner(strip.first, strip.first), corner(strip.second, strip.first),
                  corner(strip.second, strip.second), corner(strip.first, strip.second)});
}

Contour corner_legs(const PlacedRun& before_it, Strip strip, double leg) {
  const Vec at = metres(before_it.curves.back().end);
  const Vec in = end_direction(before_it), out = turned(in, before_it.after);
  const Vec left = geometry::left_of(in), next = geometry::left_of(out);
  const bool turns_left = before_it.after > 0;
  const double outer = turns_left == (strip.first < strip.second) ? strip.first : strip.second;
  const double inner = outer == strip.first ? strip.second : strip.first;
  const Vec tip = at + outer * (left + next);
  return polygon({tip, tip - leg * in, tip - leg * in + (inner - outer) * left, at + inner * (left + next),
                  tip + leg * out + (inner - outer) * next, tip + leg * out});
}

}  // namespace sheets
