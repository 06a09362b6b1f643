#include "files/dxf_curves.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace files {

namespace {

constexpr int most_halvings = 10;
constexpr std::size_t most_corners = 20'000;  // of one curve; past them nothing is halved any more

Position corner(Spot2 at, double bulge) { return {.x = at.x, .y = at.y, .z = {}, .spot = {}, .bulge = bulge}; }

// Of the arc from a through m to b: by the angle under which a and b are seen from m.
double bulge_through(Spot2 a, Spot2 m, Spot2 b) {
  const double ax = a.x - m.x, ay = a.y - m.y, bx = b.x - m.x, by = b.y - m.y;
  const double cross = ax * by - ay * bx, dot = ax * bx + ay * by;
  const double seen = std::atan2(std::abs(cross), dot);
  const double bulge = std::tan((std::numbers::pi - seen) / 2);
  if (!std::isfinite(bulge) || std::abs(bulge) < 1e-12) return 0;
  return cross < 0 ? bulge : -bulge;  // to the right of the chord it turns left
}

struct Piece {
  double from, to;
  Spot2 a, b;
};

// How far a point lies from the arc's circle, or from the chord's line.
double off(Spot2 at, Spot2 a, Spot2 b, double bulge) {
  const double dx = b.x - a.x, dy = b.y - a.y, chord = std::hypot(dx, dy);
  if (bulge == 0) return std::abs((at.x - a.x) * dy - (at.y - a.y) * dx) / chord;
  const double left = (1 - bulge * bulge) / (4 * bulge), radius = chord * (1 + bulge * bulge) / (4 * std::abs(bulge));
  const double cx = a.x + dx / 2 - dy * left, cy = a.y + dy / 2 + dx * left;
  return std::abs(std::hypot(at.x - cx, at.y - cy) - radius);
}

// How far the curve's quarters lie from the arc through its middle.
double off(const CurveAt& curve, const Piece& piece, double bulge) {
  const auto at = [&](double share) {
    return off(curve(piece.from + (piece.to - piece.from) * share), piece.a, piece.b, bulge);
  };
  return std::max(at(0.25), at(0.75));
}

void pieces(const CurveAt& curve, const Piece& piece, double within, int halvings, std::vector<Position>& into) {
  const double middle = (piece.from + piece.to) / 2;
  const Spot2 m = curve(middle);
  const double bulge = bulge_through(piece.a, m, piece.b);
  const bool a_point = std::hypot(piece.a.x - m.x, piece.a.y - m.y) + std::hypot(piece.b.x - m.x, piece.b.y - m.y) == 0;
  // Past half a circle the quarters tell too little.
  if (a_point || halvings >= most_halvings || into.size() >= most_corners ||
      (std::abs(bulge) <= 1 && off(curve, piece, bulge) <= within)) {
    into.push_back(corner(piece.a, bulge));
    return;
  }
  pieces(curve, {piece.from, middle, piece.a, m}, within, halvings + 1, into);
  pieces(curve, {middle, piece.to, m, piece.b}, within, halvings + 1, into);
}

std::vector<double> all_of(const DxfEntity& entity, int code) {
  std::vector<double> values;
  for (const DxfNumber& number : entity.numbers)
    if (number.code == code) values.push_back(number.value);
  return values;
}

// De Boor's rule on weighted points.
struct Spline {
  std::size_t degree;
  std::vector<double> knots;
  std::vector<double> x, y, w;  // x and y times the weight

  Spot2 at(double t, std::size_t span) const {
    std::vector<double> px(degree + 1), py(degree + 1), pw(degree + 1);
    for (std::size_t i = 0; i <= degree; ++i) {
      px[i] = x[span - degree + i];
      py[i] = y[span - degree + i];
      pw[i] = w[span - degree + i];
    }
    for (std::size_t round = 1; round <= degree; ++round)
      for (std::size_t i = degree; i >= round; --i) {
        const double low = knots[span - degree + i], high = knots[span + 1 + i - round];
        const double share = high > low ? (t - low) / (high - low) : 0;
        px[i] = (1 - share) * px[i - 1] + share * px[i];
        py[i] = (1 - share) * py[i - 1] + share * py[i];
        pw[i] = (1 - share) * pw[i - 1] + share * pw[i];
      }
    return {px[degree] / pw[degree], py[degree] / pw[degree]};
  }
};

std::optional<Spline> spline_in(const DxfEntity& entity) {
  const double degree = entity.number_or(71, 0);
  if (!(degree >= 1 && degree <= 15) || degree != std::floor(degree)) return std::nullopt;
  Spline made{static_cast<std::size_t>(degree), all_of(entity, 40), all_of(entity, 10), all_of(entity, 20),
              all_of(entity, 41)};
  const std::size_t points = made.x.size();
  if (made.w.empty()) made.w.assign(points, 1);
  if (points <= made.degree || made.y.size() != points || made.w.size() != points) return std::nullopt;
  if (made.knots.size() != points + made.degree + 1 || !std::ranges::is_sorted(made.knots)) return std::nullopt;
  for (std::size_t i = 0; i < points; ++i) {
    if (!(made.w[i] > 0)) return std::nullopt;
    made.x[i] *= made.w[i];
    made.y[i] *= made.w[i];
  }
  return made;
}

void close(std::vector<Position>& line, Spot2 end, double within) {
  line.push_back(corner(end, 0));
  // Round once: the end is the start, to the last bit.
  if (std::hypot(line.front().x - end.x, line.front().y - end.y) <= within / 100)
    line.back() = corner({line.front().x, line.front().y}, 0);
}

}  // namespace

Spot2 on_edge(const Position& from, const Position& to, double t) {
  if (from.bulge == 0) return {from.x + t * (to.x - from.x), from.y + t * (to.y - from.y)};
  const double sweep = 4 * std::atan(from.bulge), k = from.bulge;
  // The centre lies on the chord's middle line, so far to the left of it.
  const double left = (1 - k * k) / (4 * k), dx = to.x - from.x, dy = to.y - from.y;
  const double cx = from.x + dx / 2 - dy * left, cy = from.y + dy / 2 + dx * left;
  const double turn = sweep * t, rx = from.x - cx, ry = from.y - cy;
  return {cx + rx * std::cos(turn) - ry * std::sin(turn), cy + rx * std::sin(turn) + ry * std::cos(turn)};
}

void arcs_along(const CurveAt& curve, double from, double to, double within, std::vector<Position>& into) {
  pieces(curve, {from, to, curve(from), curve(to)}, within, 0, into);
}

std::optional<std::vector<Position>> ellipse_of(const DxfEntity& entity, double within) {
  const double cx = entity.number_or(10, 0), cy = entity.number_or(20, 0);
  const double ax = entity.number_or(11, 0), ay = entity.number_or(21, 0);
  const double side = entity.number_or(230, 1) < 0 ? -1 : 1;
  const double ratio = entity.number_or(40, 0) * side;
  if (entity.find(10) == nullptr || entity.find(11) == nullptr || !(std::hypot(ax, ay) > 0) ||
      !(std::abs(ratio) > 0 && std::abs(ratio) <= 1.000001))
    return std::nullopt;
  const double from = entity.number_or(41, 0);
  double sweep = std::fmod(entity.number_or(42, 2 * std::numbers::pi) - from, 2 * std::numbers::pi);
  if (sweep <= 1e-9) sweep += 2 * std::numbers::pi;
  const CurveAt curve = [=](double t) {
    const double c = std::cos(t), s = ratio * std::sin(t);
    return Spot2{cx + ax * c - ay * s, cy + ay * c + ax * s};
  };
  std::vector<Position> line;
  const int quarters = std::max(1, static_cast<int>(std::ceil(sweep / (std::numbers::pi / 2) - 1e-9)));
  for (int i = 0; i < quarters; ++i)
    arcs_along(curve, from + sweep * i / quarters, from + sweep * (i + 1) / quarters, within, line);
  close(line, curve(from + sweep), within);
  return line;
}

std::optional<std::vector<Position>> spline_of(const DxfEntity& entity, double within) {
  const auto spline = spline_in(entity);
  if (!spline) return std::nullopt;
  std::vector<Position> line;
  std::size_t last = spline->degree;
  for (std::size_t span = spline->degree; span < spline->x.size(); ++span) {
    const double from = spline->knots[span], to = spline->knots[span + 1];
    if (!(to > from)) continue;
    arcs_along([&](double t) { return spline->at(t, span); }, from, to, within, line);
    last = span;
  }
  if (line.empty()) return std::nullopt;
  close(line, spline->at(spline->knots[last + 1], last), within);
  return line;
}

}  // namespace files
