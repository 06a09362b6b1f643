#include "takeoff/walls/crossing.h"

#include <algorithm>

#include "geometry/flatten.h"

namespace takeoff::walls {

namespace {

using geometry::Point;

struct Chord {
  Point a;
  Point b;
  std::size_t number = 0;
  units::Length low() const { return std::min(a.x, b.x); }
  units::Length high() const { return std::max(a.x, b.x); }
};

int side(Point a, Point b, Point p) {
  const double turn = cross(b - a, p - a);
  return turn > 0 ? 1 : turn < 0 ? -1 : 0;
}

bool in_box(Point a, Point b, Point p) {
  return std::min(a.x, b.x) <= p.x && p.x <= std::max(a.x, b.x) && std::min(a.y, b.y) <= p.y &&
         p.y <= std::max(a.y, b.y);
}

std::optional<Point> meets(const Chord& s, const Chord& t) {
  if (std::max(s.a.y, s.b.y) < std::min(t.a.y, t.b.y) || std::max(t.a.y, t.b.y) < std::min(s.a.y, s.b.y)) return {};
  const int sa = side(t.a, t.b, s.a), sb = side(t.a, t.b, s.b), ta = side(s.a, s.b, t.a), tb = side(s.a, s.b, t.b);
  if (ta == 0 && in_box(s.a, s.b, t.a)) return t.a;
  if (tb == 0 && in_box(s.a, s.b, t.b)) return t.b;
  if (sa == 0 && in_box(t.a, t.b, s.a)) return s.a;
  if (sb == 0 && in_box(t.a, t.b, s.b)) return s.b;
  if (sa * sb < 0 && ta * tb < 0) return s.a;
  return {};
}

// Neighbours share a point; they only meet elsewhere where the second runs back over the first.
bool turns_back(const Chord& s, const Chord& t) {
  return cross(s.b - s.a, t.b - t.a) == 0 && dot(s.b - s.a, t.b - t.a) < 0;
}

}  // namespace

std::optional<problem::Xy> crossing(const geometry::Path& path) {
  std::vector<Chord> chords;
  for (std::size_t i = 0; i < path.size(); ++i) {
    const std::vector<Point> points = geometry::flatten(path.curve(i), units::Length::millimetres(2));
    for (std::size_t k = 1; k < points.size(); ++k) {
      if (points[k - 1] != points[k]) chords.push_back({points[k - 1], points[k], chords.size()});
    }
  }
  for (std::size_t i = 1; i < chords.size(); ++i) {
    if (turns_back(chords[i - 1], chords[i])) return xy(chords[i].a);
  }
  const std::size_t last = chords.empty() ? 0 : chords.size() - 1;
  const auto neighbours = [&](const Chord& s, const Chord& t) {
    const auto [low, high] = std::minmax(s.number, t.number);
    return high - low <= 1 || (path.closed() && low == 0 && high == last);
  };
  std::ranges::stable_sort(chords, {}, &Chord::low);
  for (std::size_t i = 0; i < chords.size(); ++i) {
    for (std::size_t j = i + 1; j < chords.size() && chords[j].low() <= chords[i].high(); ++j) {
      if (neighbours(chords[i], chords[j])) continue;
      if (const auto place = meets(chords[i], chords[j])) return xy(*place);
    }
  }
  return std::nullopt;
}

}  // namespace takeoff::walls
