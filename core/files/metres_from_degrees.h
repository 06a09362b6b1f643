// Longitude and latitude laid out in metres about an origin.
//
// The plan is the plane that touches the WGS 84 ellipsoid at the origin: x east, y north, in metres (local Cartesian
// coordinates of a point at height 0 on the ellipsoid; the third coordinate, how far the earth falls away below the
// plane, is dropped). A length d away from the origin comes out short by the factor cos(d / R) at most: at 5 km by 0.03
// mm in 100 m, and 5 km themselves by 0.5 mm. So within the 5 km of a job every 100 m are true within 0.1 mm.
#pragma once

#include "problem/problem.h"

namespace files {

// Degrees on WGS 84, east and north positive: longitude within +-180, latitude within +-90.
struct Degrees {
  double longitude = 0;
  double latitude = 0;
};

problem::Xy metres_from_degrees(Degrees origin, Degrees point);

// How far apart two points are, straight through the earth: within 1 mm of the way on the ground up to 5 km, and never
// small for far places (the plane above shows the far side of the earth near the origin again).
double metres_between(Degrees a, Degrees b);

}  // namespace files
