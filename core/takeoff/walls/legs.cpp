#include <cmath>
#include <numbers>

#include "takeoff/edges/rows.h"
#include "takeoff/walls/profile.h"

namespace takeoff::walls {

namespace {

constexpr double corner_from = edges::corner_from * std::numbers::pi / 180;

double turn(const geometry::Curve& a, const geometry::Curve& b) {
  const geometry::Vec out = a.direction(1), in = b.direction(0);
  return std::atan2(cross(out, in), dot(out, in));
}

// Curves of one circle may have been drawn in pieces, each off by the grid that points lie on.
bool one_circle(double a, double b) { return std::abs(a - b) < 1e-4 * std::abs(a); }

void join(std::vector<Leg>& all, const Leg& next, double turned) {
  if (!all.empty() && std::abs(turned) >= corner_from) all.back().corner = turned;
  if (all.empty() || all.back().corner != 0) {
    all.push_back(next);
    return;
  }
  Leg& last = all.back();
  const bool both_straight = last.radius == 0 && next.radius == 0;
  if (both_straight || (last.radius != 0 && next.radius != 0 && one_circle(last.radius, next.radius))) {
    last.to = next.to;
    if (both_straight) last.bend += 2 * std::tan(turned / 2);
  } else {
    all.push_back(next);
  }
}

}  // namespace

std::vector<Leg> legs(const geometry::Path& face, geometry::Side behind) {
  const double sign = behind == geometry::Side::left ? 1 : -1;
  std::vector<Leg> all;
  double steps = 0;
  for (std::size_t i = 0; i < face.size(); ++i) {
    const geometry::Curve curve = face.curve(i);
    Leg leg;
    leg.from = steps / units::Length::steps_per_metre;
    steps += curve.length();
    leg.to = steps / units::Length::steps_per_metre;
    if (!curve.straight()) {
      leg.radius = curve.radius() / units::Length::steps_per_metre * (curve.bulge > 0 ? sign : -sign);
    }
    join(all, leg, i > 0 ? sign * turn(face.curve(i - 1), curve) : 0);
  }
  if (face.closed()) {
    const double last = sign * turn(face.curve(face.size() - 1), face.curve(0));
    if (std::abs(last) >= corner_from) all.back().corner = last;
  }
  return all;
}

}  // namespace takeoff::walls
