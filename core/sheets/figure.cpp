#include "sheets/figure.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <numbers>

#include "sheets/parts.h"

namespace sheets {

namespace {

// Circle of the arc that leaves `from` with this bulge.
struct Arc {
  Vec centre;
  double radius = 0;
  double start = 0;  // angle at `from`
  double sweep = 0;
};

Arc arc_of(Vec from, Vec to, double bulge) {
  const Vec chord = to - from;
  const double half = geometry::length(chord) / 2;
  const double sweep = 4 * std::atan(bulge);
  // From the chord's middle the centre lies to the left by half / tan(sweep / 2).
  const double out = (1 - bulge * bulge) / (2 * bulge) * half;
  const double long_chord = std::max(2 * half, 1e-12);
  const Vec left = (1 / long_chord) * geometry::left_of(chord);
  const Vec centre = from + 0.5 * chord + out * left;
  const Vec spoke = from - centre;
  return {centre, geometry::length(spoke), std::atan2(spoke.y, spoke.x), sweep};
}

bool passes(const Arc& arc, double angle) {
  constexpr double round = 2 * std::numbers::pi;
  const double turned = std::remainder(arc.sweep > 0 ? angle - arc.start : arc.start - angle, round);
  return (turned < 0 ? turned + round : turned) <= std::abs(arc.sweep);
}

std::size_t edges(const Contour& contour) {
  if (contour.turns.empty()) return 0;
  return contour.closed ? contour.turns.size() : contour.turns.size() - 1;
}

}  // namespace

Contour contour(std::span<const geometry::Edge> ring) {
  Contour made;
  made.turns.reserve(ring.size());
  for (const geometry::Edge& edge : ring) made.turns.push_back({metres(edge.from), edge.bulge});
  return made;
}

Contour contour(const geometry::Path& path) {
  Contour made = contour(path.edges());
  made.closed = path.closed();
  if (!made.closed) made.turns.push_back({metres(path.end()), 0});
  return made;
}

std::vector<Contour> contours(const geometry::Region& region) {
  std::vector<Contour> made;
  for (const geometry::Outline* outline : region.outlines()) made.push_back(contour(outline->edges()));
  return made;
}

Contour polygon(std::vector<Vec> corners) {
  Contour made;
  for (const Vec& corner : corners) made.turns.push_back({corner, 0});
  return made;
}

Contour rectangle(Vec low, Vec high) { return polygon({low, {high.x, low.y}, high, {low.x, high.y}}); }

Contour line(Vec from, Vec to) { return {{{from, 0}, {to, 0}}, false}; }

double area_of(const Contour& contour) {
  double twice = 0;
  for (std::size_t i = 0; i < contour.turns.size(); ++i) {
    const Turn& turn = contour.turns[i];
    const Vec to = contour.turns[(i + 1) % contour.turns.size()].at;
    const Vec about = contour.turns.front().at;
    twice += geometry::cross(turn.at - about, to - about);
    if (turn.bulge == 0) continue;
    const Arc arc = arc_of(turn.at, to, turn.bulge);
    twice += arc.radius * arc.radius * (arc.sweep - std::sin(arc.sweep));
  }
  return twice / 2;
}

std::string show_fixed(double value, int decimals) {
  char text[64];
  const auto end = std::to_chars(text, text + sizeof text, value, std::chars_format::fixed, decimals).ptr;
  return {text, end};
}

std::string show_height(double metres, units::System system) {
  return system == units::System::us ? show_fixed(metres / units::metres_per_foot, 2) : show_fixed(metres, 3);
}

void Extent::take(Vec at) {
  low_ = empty_ ? at : Vec{std::min(low_.x, at.x), std::min(low_.y, at.y)};
  high_ = empty_ ? at : Vec{std::max(high_.x, at.x), std::max(high_.y, at.y)};
  empty_ = false;
}

void Extent::take(const Contour& contour) {
  for (const Turn& turn : contour.turns) take(turn.at);
  for (std::size_t i = 0; i < edges(contour); ++i) {
    const Turn& turn = contour.turns[i];
    if (turn.bulge == 0) continue;
    const Arc arc = arc_of(turn.at, contour.turns[(i + 1) % contour.turns.size()].at, turn.bulge);
    for (int quarter = 0; quarter < 4; ++quarter) {
      const double angle = quarter * std::numbers::pi / 2;
      if (passes(arc, angle)) take(arc.centre + arc.radius * from_angle(angle));
    }
  }
}

void Extent::take(const Part& part) {
  struct Take {
    Extent& extent;
    void operator()(const Area& area) const {
      for (const Contour& contour : area.contours) extent.take(contour);
    }
    void operator()(const Stroke& stroke) const { extent.take(stroke.contour); }
    void operator()(const Units& units) const {
      for (const Contour& contour : units.field) extent.take(contour);
    }
    void operator()(const Mark& mark) const { extent.take(mark.at); }
  };
  std::visit(Take{*this}, part);
}

void settle(Figure& figure) {
  Extent extent;
  for (const Part& part : figure.parts) extent.take(part);
  figure.low = extent.low();
  figure.high = extent.high();
}

}  // namespace sheets
