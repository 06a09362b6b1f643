#include "units/angle.h"

#include <cmath>

#include "problem/ensure.h"

namespace units {

// Cosine and sine of an angle within 45 degrees of zero. The special values are taken exactly, because these are the
// angles of paving: at 45 degrees both are equal, at 30 degrees the sine is one half.
static Turn within_eighth(double degrees) {
  const double radians = degrees * std::numbers::pi / 180;
  if (std::fabs(degrees) == 45) return {std::sqrt(0.5), std::copysign(std::sqrt(0.5), degrees)};
  if (std::fabs(degrees) == 30) return {std::cos(radians), std::copysign(0.5, degrees)};
  return {std::cos(radians), std::sin(radians)};
}

Turn turn(Angle angle) {
  problem::ensure(std::isfinite(angle.degrees()), "an angle is finite");
  int quarters = 0;
  const Turn small = within_eighth(std::remquo(angle.degrees(), 90.0, &quarters));
  // Adding 0 makes plain zeros of minus zeros.
  switch (quarters & 3) {
    case 0: return {small.cosine + 0.0, small.sine + 0.0};
    case 1: return {-small.sine + 0.0, small.cosine + 0.0};
    case 2: return {-small.cosine + 0.0, -small.sine + 0.0};
    default: return {small.sine + 0.0, -small.cosine + 0.0};
  }
}

}  // namespace units
