// The finished surface of one paved area, exact: convex pieces, each with one fall.
#pragma once

#include <span>

#include "plan/site.h"
#include "takeoff/levels/envelope.h"

namespace takeoff::levels {

struct Finished {
  geometry::Surface surface;  // over the area's net ground, from a grid point of it
  std::vector<problem::Problem> problems;
};

// Which surface is told by the area's finish (plan/levels.h):
//   edges      the greatest over all sources of height - lip - fall x distance; cones round corners and arcs by wedges,
//              within 0.1 mm ten metres out
//   plane      height at a point, one fall
//   two-falls  down from a line on both sides; past the line's ends it climbs on as before
//   levels     Delaunay triangles of `spots`; past their hull level from its edge
//   along      height by the nearest place on the line, cross fall; past its ends level as at the end
//
// No surface: "finish-height", "finish-from", "finish-line", "finish-levels" (nothing given to make it from).
// With the surface: problem "finish-under" (a source lies more than 1 mm under what falls from another), flag
// "finish-valley" (two falls meet in a valley with neither inlet nor channel on it), notice "finish-past-levels" (part
// of the area lies past its levels), flag "finish-twist" (four levels out of one plane by more than the limit `twist`).
problem::Result<Finished> finished(const plan::Job& job, const plan::Site& site, const plan::Ground& ground,
                                   std::span<const geometry::Spot> spots);

// How far the fourth of four places lies off the plane of the other three, the greatest of the four ways; metres.
double out_of_plane(std::span<const geometry::Spot> four);

}  // namespace takeoff::levels
