#include "geometry/edge.h"

#include <algorithm>
#include <numbers>

namespace geometry {

namespace {

Vec rotated(Vec v, double radians) {
  const double c = std::cos(radians);
  const double s = std::sin(radians);
  return {c * v.x - s * v.y, s * v.x + c * v.y};
}

// Between chord and arc for a chord of length 1: (theta - sin theta) / 2 x r^2 written in the bulge. Below 0.05 the two
// terms cancel, so the sum b/3 + b^3/15 - b^5/105 + ... (denominators (2k+1)(2k-1)(2k-3)) stands in for them.
double unit_segment(double b) {
  const double b2 = b * b;
  if (std::abs(b) < 0.05) {
    return b * (1.0 / 3 + b2 * (1.0 / 15 - b2 * (1.0 / 105 - b2 * (1.0 / 315 - b2 * (1.0 / 693 - b2 / 1287)))));
  }
  return ((1 + b2) * (1 + b2) * std::atan(b) - b * (1 - b2)) / (8 * b2);
}

}  // namespace

double Curve::radius() const {
  if (straight()) return 0;
  return geometry::length(chord()) * (1 + bulge * bulge) / (4 * std::abs(bulge));
}

Vec Curve::centre() const {
  if (straight()) return {};
  return 0.5 * chord() + ((1 - bulge * bulge) / (4 * bulge)) * left_of(chord());
}

double Curve::length() const {
  const double c = geometry::length(chord());
  if (straight()) return c;
  return c * (1 + bulge * bulge) * (std::atan(bulge) / bulge);
}

Vec Curve::at(double share) const {
  if (straight()) return share * chord();
  const double half = 2 * std::atan(bulge);
  // The chord to the place sought: the whole chord shortened, and turned back by half of the sweep that is missing.
  return (std::sin(share * half) / std::sin(half)) * rotated(chord(), (share - 1) * half);
}

Vec Curve::direction(double share) const {
  const double c = geometry::length(chord());
  if (c == 0) return {};
  const Vec along = (1 / c) * chord();
  return straight() ? along : rotated(along, (share - 0.5) * sweep());
}

double Curve::segment_area() const { return straight() ? 0 : dot(chord(), chord()) * unit_segment(bulge); }

Curve curve(std::span<const Edge> ring, std::size_t i) {
  return {ring[i].from, ring[(i + 1) % ring.size()].from, ring[i].bulge};
}

std::vector<Curve> curves(std::span<const Edge> ring) {
  std::vector<Curve> made;
  made.reserve(ring.size());
  for (std::size_t i = 0; i < ring.size(); ++i) made.push_back(curve(ring, i));
  return made;
}

double bulge_about(Vec centre, Vec end_from_start, bool counter_clockwise) {
  const Vec from = -centre;
  const Vec to = end_from_start - centre;
  double turn = std::atan2(cross(from, to), dot(from, to));
  if (std::abs(turn) < 1e-12) return 0;
  if (counter_clockwise && turn < 0) turn += 2 * std::numbers::pi;
  if (!counter_clockwise && turn > 0) turn -= 2 * std::numbers::pi;
  return std::tan(turn / 4);
}

Ring reversed(const Ring& ring) {
  const std::size_t n = ring.size();
  Ring back;
  back.reserve(n);
  for (std::size_t k = 0; k < n; ++k) {
    const Edge& walked = ring[n - 1 - k];
    // Plus zero, not minus zero, for a straight edge.
    back.push_back({ring[(n - k) % n].from, walked.bulge == 0 ? 0 : -walked.bulge, walked.origin});
  }
  return back;
}

Ring moved(Ring ring, Vec whole_steps) {
  for (Edge& edge : ring) edge.from = moved(edge.from, whole_steps);
  return ring;
}

Ring turned(Ring ring, Point about, units::Angle angle) {
  const units::Turn t = units::turn(angle);
  for (Edge& edge : ring) {
    const Vec arm = edge.from - about;
    edge.from = moved(about, {t.cosine * arm.x - t.sine * arm.y, t.sine * arm.x + t.cosine * arm.y});
  }
  return ring;
}

units::SquareMetres signed_area(std::span<const Edge> ring) {
  double twice = 0;  // square steps
  double bellies = 0;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Curve c = curve(ring, i);
    twice += cross(c.start - ring[0].from, c.end - ring[0].from);
    bellies += c.segment_area();
  }
  const double per_metre = units::Length::steps_per_metre;
  return units::SquareMetres((twice / 2 + bellies) / (per_metre * per_metre));
}

units::Metres perimeter(std::span<const Edge> ring) {
  double steps = 0;
  for (std::size_t i = 0; i < ring.size(); ++i) steps += curve(ring, i).length();
  return units::Metres(steps / units::Length::steps_per_metre);
}

}  // namespace geometry
