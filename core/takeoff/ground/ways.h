// Where a body of open stone lets its water go, by height.
#pragma once

#include "takeoff/ground/ground.h"
#include "takeoff/levels/terrain.h"

namespace takeoff::ground {

// The lowest finished level of these areas along the edges at which they meet `other`; nothing where none is known.
std::optional<double> lowest_along(const plan::Site& site, const levels::Terrain& terrain,
                                   const std::vector<plan::ElementId>& areas, const plan::ElementId& other);

// How far the existing ground just outside a kerb stands over the sill of its weeps, `sill` below the paving: where it
// stands over it most, looked at every 10 in. Nothing where it lies below all along.
struct Above {
  double by = 0;  // metres
  geometry::Point at;
};
std::optional<Above> highest_outside(const plan::Site& site, const levels::Terrain& terrain,
                                     const std::vector<plan::ElementId>& areas, const plan::Ground& kerb, double sill);

// A pipe where it runs through the stone (looked at every 10 in): its lowest invert there, where it has levels.
// Nothing where it does not run through it.
struct Through {
  std::optional<double> invert;
};
std::optional<Through> lowest_inside(const plan::Job& job, const geometry::Path& path, const plan::DrainRun& run,
                                     const geometry::Region& stone);

}  // namespace takeoff::ground
