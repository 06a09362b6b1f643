// Where water stands: places of a finished surface from which it can't get away.
#pragma once

#include "takeoff/levels/rims.h"

namespace takeoff::levels {

struct Low {
  geometry::Vec at;                        // the lowest place of the puddle, metres from the surface's origin
  std::optional<double> depth;             // metres, until it spills; empty: it never does
  double drains = 0;                       // m2 of the plan that lead water to it: about, by 512 places
  const plan::Stretch* held_by = nullptr;  // what holds the water there, where it is an edge
};

// Every puddle deeper than 1 mm (a thinner one dries off), in the order of the surface. A place is a low when every way
// from it to a rim that lets water off, or to an inlet (within 0.3 m), climbs. Exact over the facets: along a straight
// way within a facet the height is highest at one of its ends.
std::vector<Low> lows(const Area& area, const plan::Site& site, const Terrain& terrain, const Inlets& inlets);

}  // namespace takeoff::levels
