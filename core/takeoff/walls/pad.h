// What stands on a rectangle of ground: its sides, and the base under it.
#pragma once

#include "geometry/outline.h"
#include "takeoff/line.h"

namespace takeoff::walls {

// Sides of a region measured along a direction (unit vector) and square to it, metres, from its own points so that
// moving it by whole steps gives the same bits.
struct Sides {
  double along = 0;
  double across = 0;
  bool rectangle = false;  // the region fills them, within a thousandth
};
Sides sides(const geometry::Region& region, geometry::Vec direction);  // the region is not empty

// The layers of a build-up under a rectangle, each past all four sides by its own extra: stone by placed weight, other
// layers by area or volume. Gives the placed volume of its stone and concrete, nothing where there is none; a problem
// "build-up-missing" or "density-missing" where the catalogue lacks what it needs.
std::optional<Working> add_pad(const plan::Job& job, const plan::Id& build_up, double along, double across, Stage stage,
                               const std::string& text, const plan::ElementId& of, Share& share);

}  // namespace takeoff::walls
