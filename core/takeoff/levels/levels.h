// What the heights of the site say: falls, low points, lips, what stands too high or too low.
#pragma once

#include "takeoff/levels/terrain.h"
#include "takeoff/line.h"

namespace takeoff::levels {

// A piece of a paved area with one fall, for a plan coloured by fall.
struct FallPatch {
  plan::ElementId area;
  std::vector<geometry::Point> ring;
  double fall = 0;     // share
  double towards = 0;  // radians, where water runs
  std::string says;    // "good", "flat", "steep", "to the house", "to the pool"
};
std::vector<FallPatch> fall_plan(const plan::Job& job, const plan::Site& site, const Terrain& terrain);

// Measures fall_least, fall_greatest, fall_flat_area_m2 ...; falls towards buildings or the pool, flat and steep
// places, twist, low points without an inlet with the area that drains to them, lips between areas, sills, coping and
// caps beside the ground. One Share per element, in the job's order.
std::map<plan::ElementId, Share> falls(const plan::Job& job, const plan::Site& site, const Terrain& terrain);

}  // namespace takeoff::levels
