#include "takeoff/walls/stability.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "takeoff/walls/pressure.h"

namespace takeoff::walls {

namespace {

constexpr double without_end = std::numeric_limits<double>::infinity();

double ratio(double of, double to) { return to > 0 ? of / to : without_end; }

// Pressures under a rigid base that can't pull, and how much of it stays in contact.
void press(Stability& found, double width) {
  const double e = found.eccentricity;
  const double off = std::abs(e);
  double most = 0;
  double least = 0;
  if (off <= width / 6) {
    found.contact = width;
    most = found.vertical / width * (1 + 6 * off / width);
    least = found.vertical / width * (1 - 6 * off / width);
  } else {
    found.contact = std::max(0.0, 3 * (width / 2 - off));
    most = ratio(2 * found.vertical, found.contact);
  }
  found.toe = e >= 0 ? most : least;
  found.heel = e >= 0 ? least : most;
}

}  // namespace

Stability stability(const std::vector<Weight>& weights, const std::vector<Push>& pushes, const Base& base) {
  Stability found;
  for (const Weight& weight : weights) {
    found.vertical += weight.force;
    found.righting += weight.force * weight.arm;
  }
  for (const Push& push : pushes) {
    found.horizontal += push.horizontal;
    found.turning += push.horizontal * push.height;
    found.vertical += push.vertical;
    found.righting += push.vertical * push.arm;
  }
  found.holding = base.adhesion * base.width + found.vertical * base.friction + base.passive;
  found.sliding = ratio(found.holding, found.horizontal);
  found.overturning = ratio(found.righting, found.turning);
  found.eccentricity = base.width / 2 - (found.righting - found.turning) / found.vertical;
  found.effective = std::max(0.0, base.width - 2 * std::max(0.0, found.eccentricity));
  found.pressure = ratio(found.vertical, found.effective);
  press(found, base.width);
  return found;
}

std::optional<Thrusts> thrusts(const Fill& fill, double height) {
  const std::optional<double> ka = coulomb(fill.phi, fill.delta, fill.beta, fill.omega);
  if (!ka) return std::nullopt;
  Thrusts found;
  found.ka = *ka;
  found.across = std::cos(fill.delta - fill.omega);
  found.earth = thrust(*ka, fill.weight, height) * found.across;
  found.load = surcharge(*ka, fill.load, height) * found.across;
  return found;
}

std::vector<Push> Thrusts::pushes(double height) const { return {{earth, height / 3, 0, 0}, {load, height / 2, 0, 0}}; }

}  // namespace takeoff::walls
