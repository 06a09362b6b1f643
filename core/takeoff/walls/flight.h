// A flight of steps as it comes out, and the walls beside it.
#pragma once

#include <cstdint>
#include <span>

#include "takeoff/line.h"

namespace takeoff::walls {

// Metres. Every riser is `riser`, but the lowest takes what units of a fixed height leave over.
struct Flight {
  int risers = 0;
  double riser = 0;
  double lowest = 0;
  double tread = 0;  // nosing to nosing
  double fall = 0;   // of each tread, share
  double depth = 0;  // of one unit
  double width = 0;  // as drawn, square to the way up
  double run() const { return (risers - 1) * tread + depth; }
  // Of the back of tread i (from 1), above the foot.
  double level(int i) const { return lowest + (i - 1) * (riser + tread * fall); }
};

// Pieces side by side over a width: whole ones, and what is cut. A last piece under a third of a unit is shared with
// its neighbour, so that both are cut. Widths within 1/8 in of whole units take no cut.
struct Across {
  int whole = 0;
  std::vector<double> cut;
  int pieces() const { return whole + static_cast<int>(cut.size()); }
};
Across across(double width, double unit);

// Whole units to buy for pieces that show one finished end: at most two from one, the largest with the smallest where
// they and the saw's kerf fit (exact for two pieces a unit). Without reuse one unit for each.
std::int64_t units_for(std::vector<double> pieces, double unit, double kerf, bool reuse);

// Walls beside the flight: blocks step with the treads, one course and at least the limit wall-embed in the ground
// beside each. Measures cheek_blocks, cheek_cut, cheek_caps.
Share cheek_walls(const plan::Job& job, const plan::Cheeks& cheeks, const Flight& flight, const plan::ElementId& of);

}  // namespace takeoff::walls
