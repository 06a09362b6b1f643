// How narrow a cut piece is, and whether it is a sliver or has a notch.
#pragma once

#include <span>
#include <vector>

#include "takeoff/paving/layout.h"

namespace takeoff::paving {

// A notch no deeper than this is a straight cut to the saw: 1/8 in, steps (trade rule for flats on curves).
inline constexpr double notch = 1016;

struct Breadth {
  double least = 0;    // smallest distance between two parallels that hold the polygon, steps
  bool convex = true;  // no corner lies deeper than `notch` under the hull
};

// Of a closed polygon, counter-clockwise, at least three points. `hull` is room to work in, kept by the caller so that
// thousands of pieces need no memory of their own.
Breadth breadth(std::span<const geometry::Vec> polygon, std::vector<geometry::Vec>& hull);

// Area under the share of the unit's, or least width under the width: either makes a sliver.
bool is_sliver(double area, double least_width, double unit_area, const Slivers& limits);

}  // namespace takeoff::paving
