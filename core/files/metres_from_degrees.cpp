#include "files/metres_from_degrees.h"

#include <GeographicLib/LocalCartesian.hpp>
#include <cmath>

namespace files {

problem::Xy metres_from_degrees(Degrees origin, Degrees point) {
  const GeographicLib::LocalCartesian plane(origin.latitude, origin.longitude);
  double x = 0, y = 0, down = 0;
  plane.Forward(point.latitude, point.longitude, 0, x, y, down);
  return {x, y};
}

double metres_between(Degrees a, Degrees b) {
  const GeographicLib::LocalCartesian plane(a.latitude, a.longitude);
  double x = 0, y = 0, down = 0;
  plane.Forward(b.latitude, b.longitude, 0, x, y, down);
  return std::hypot(x, y, down);
}

}  // namespace files
