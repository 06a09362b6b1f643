#include "geometry/outline.h"

#include <algorithm>
#include <numbers>

#include "geometry/index.h"
#include "problem/ensure.h"

namespace geometry {

namespace {

// A point that was put on a curve and rounded to the grid lies within half the diagonal of a grid cell of it.
constexpr double on_edge = 0.75;  // steps

Box joined(Box a, Box b) {
  return {{std::min(a.low.x, b.low.x), std::min(a.low.y, b.low.y)},
          {std::max(a.high.x, b.high.x), std::max(a.high.y, b.high.y)}};
}

// Area and first moments of a ring in steps, about `from`.
struct Moments {
  double area = 0;
  Vec first;
};

// The centre of gravity of the segment between chord and arc lies chord^3 / (12 area) from the circle's centre; of a
// very flat one, where this cancels, two fifths of the rise above the chord, as in a parabola.
Vec segment_centroid(const Curve& c) {
  const Vec chord = c.chord();
  const Vec middle = 0.5 * chord;
  if (std::abs(c.bulge) < 1e-4) return middle - (0.4 * c.bulge / 2) * left_of(chord);
  const double base = length(chord);
  const double arm = base * base * base / (12 * c.segment_area());  // signed as the bulge
  return c.centre() - (arm / base) * left_of(chord);
}

Moments moments(std::span<const Edge> ring, Point from) {
  Moments sum;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Curve c = curve(ring, i);
    const Vec a = c.start - from;
    const Vec b = c.end - from;
    const double half = cross(a, b) / 2;
    sum.area += half;
    sum.first = sum.first + (half / 3) * (a + b);
    if (c.straight() || a == b) continue;
    const double belly = c.segment_area();
    sum.area += belly;
    sum.first = sum.first + belly * (a + segment_centroid(c));
  }
  return sum;
}

double distance_to_line(Vec p, Vec chord) {
  const double square = dot(chord, chord);
  const double share = square == 0 ? 0 : std::clamp(dot(p, chord) / square, 0.0, 1.0);
  return length(p - share * chord);
}

bool lies_on(const Curve& c, Point point) {
  const Vec p = point - c.start;
  if (c.straight()) return distance_to_line(p, c.chord()) <= on_edge;
  if (std::min(length(p), length(point - c.end)) <= on_edge) return true;
  const Vec from = -c.centre();
  const Vec to = p - c.centre();
  if (std::abs(length(to) - c.radius()) > on_edge) return false;
  double turn = std::atan2(cross(from, to), dot(from, to)) * (c.bulge > 0 ? 1 : -1);
  if (turn < 0) turn += 2 * std::numbers::pi;
  return turn <= std::abs(c.sweep());
}

// Whether a ray from the origin eastwards crosses the line from a to b. Half open in y, so that a vertex counts once.
bool crosses_line(Vec a, Vec b) {
  if ((a.y > 0) == (b.y > 0)) return false;
  const double side = cross(a, b);
  return (b.y > a.y) == (side > 0);
}

// The same of an arc from a to b, taken in pieces that rise or fall throughout.
int arc_crossings(const Curve& c, Vec a, Vec b) {
  const Vec centre = a + c.centre();
  const double radius = c.radius();
  if (std::abs(centre.y) > radius + 1) return 0;
  // phi is the angle counted the way the arc runs; heights are centre + way x radius x sin(phi), and turn at
  // phi = (k + 1/2) pi.
  constexpr double pi = std::numbers::pi;
  const double way = c.bulge > 0 ? 1 : -1;
  double phi = std::atan2(a.y - centre.y, a.x - centre.x) * way;
  const double last = phi + std::abs(c.sweep());
  const double half_chord = std::sqrt(std::max(0.0, radius * radius - centre.y * centre.y));
  int count = 0;
  double height = a.y;
  for (auto k = static_cast<int>(std::floor(phi / pi - 0.5)) + 1; phi < last; ++k) {
    const double turn = (k + 0.5) * pi;
    const bool ends = turn >= last;
    const double reached = ends ? b.y : centre.y + way * radius * (k % 2 == 0 ? 1 : -1);
    const double to = ends ? last : turn;
    if ((height > 0) != (reached > 0)) {
      const bool east_half = std::cos((phi + to) / 2) >= 0;
      if (centre.x + (east_half ? half_chord : -half_chord) > 0) ++count;
    }
    height = reached;
    phi = to;
  }
  return count;
}

int crossings(const Curve& c, Point point) {
  const Vec a = c.start - point;
  const Vec b = c.end - point;
  if (c.straight()) return crosses_line(a, b) ? 1 : 0;
  return a == b ? 0 : arc_crossings(c, a, b);
}

bool ring_contains(const Ring& ring, Point point) {
  int count = 0;
  for (std::size_t i = 0; i < ring.size(); ++i) count += crossings(curve(ring, i), point);
  return count % 2 == 1;
}

bool on_ring(const Ring& ring, Point point) {
  for (std::size_t i = 0; i < ring.size(); ++i) {
    if (lies_on(curve(ring, i), point)) return true;
  }
  return false;
}

Box ring_bounds(const Ring& ring) {
  Box box = bounds(curve(ring, 0));
  for (std::size_t i = 1; i < ring.size(); ++i) box = joined(box, bounds(curve(ring, i)));
  return box;
}

bool inside(const Box& box, Point p) {
  return box.low.x <= p.x && p.x <= box.high.x && box.low.y <= p.y && p.y <= box.high.y;
}

}  // namespace

Box grown(Box box, units::Length by) { return {{box.low.x - by, box.low.y - by}, {box.high.x + by, box.high.y + by}}; }

bool overlap(const Box& a, const Box& b) {
  return a.low.x <= b.high.x && b.low.x <= a.high.x && a.low.y <= b.high.y && b.low.y <= a.high.y;
}

units::SquareMetres Outline::signed_area() const { return geometry::signed_area(edges_); }
units::Metres Outline::perimeter() const { return geometry::perimeter(edges_); }
Box Outline::bounds() const { return ring_bounds(edges_); }

std::vector<const Outline*> Region::outlines() const {
  std::vector<const Outline*> all;
  for (const Polygon& polygon : polygons_) {
    all.push_back(&polygon.outer);
    for (const Outline& hole : polygon.holes) all.push_back(&hole);
  }
  return all;
}

units::SquareMetres Region::area() const {
  units::SquareMetres sum;
  for (const Outline* outline : outlines()) sum += outline->signed_area();
  return sum;
}

units::Metres Region::perimeter() const {
  units::Metres sum;
  for (const Outline* outline : outlines()) sum += outline->perimeter();
  return sum;
}

problem::Xy Region::centroid() const {
  if (empty()) return {};
  const Point from = polygons_.front().outer.edges().front().from;
  Moments sum;
  for (const Outline* outline : outlines()) {
    const Moments part = moments(outline->edges(), from);
    sum.area += part.area;
    sum.first = sum.first + part.first;
  }
  const Vec by = (1 / (sum.area * units::Length::steps_per_metre)) * sum.first;
  return {xy(from).x + by.x, xy(from).y + by.y};
}

Box Region::bounds() const {
  if (empty()) return {};
  Box box = polygons_.front().outer.bounds();
  for (const Polygon& polygon : polygons_) box = joined(box, polygon.outer.bounds());
  return box;
}

bool Region::contains(Point point) const {
  for (const Polygon& polygon : polygons_) {
    if (!inside(grown(polygon.outer.bounds(), units::Length::of_steps(1)), point)) continue;
    if (on_ring(polygon.outer.edges(), point)) return true;
    if (!ring_contains(polygon.outer.edges(), point)) continue;
    bool in_hole = false;
    for (const Outline& hole : polygon.holes) {
      if (on_ring(hole.edges(), point)) return true;
      in_hole = in_hole || ring_contains(hole.edges(), point);
    }
    if (!in_hole) return true;
  }
  return false;
}

problem::Result<Path> Path::make(Ring edges, Point end) {
  if (edges.empty()) {
    return problem::fault("path-empty", "a line needs at least two points", "draw a second point",
                          {.element = {}, .file = {}, .at = xy(end)});
  }
  Path path(std::move(edges), end);
  for (std::size_t i = 0; i < path.size(); ++i) {
    const Curve c = path.curve(i);
    if (c.start == c.end) {
      return problem::fault("edge-zero-length", "two points of the line that follow each other are the same point",
                            "take one of them out", {.element = {}, .file = {}, .at = xy(c.start)});
    }
    if (past_reach(c)) {
      return problem::fault("path-too-far", "the line runs more than 5 km from the job's origin",
                            "move the drawing to the origin, or make the line shorter",
                            {.element = {}, .file = {}, .at = xy(c.start)});
    }
  }
  return path;
}

Curve Path::curve(std::size_t i) const {
  return {edges_[i].from, i + 1 < edges_.size() ? edges_[i + 1].from : end_, edges_[i].bulge};
}

units::Metres Path::length() const {
  double steps = 0;
  for (std::size_t i = 0; i < size(); ++i) steps += curve(i).length();
  return units::Metres(steps / units::Length::steps_per_metre);
}

Box Path::bounds() const {
  Box box = geometry::bounds(curve(0));
  for (std::size_t i = 1; i < size(); ++i) box = joined(box, geometry::bounds(curve(i)));
  return box;
}

}  // namespace geometry
