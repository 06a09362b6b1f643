// A surface that follows a line: its height runs along the line, its cross fall away from it.
#pragma once

#include "plan/site.h"
#include "takeoff/levels/envelope.h"

namespace takeoff::levels {

struct Following {
  std::vector<plan::HeightAt> heights;  // along the line; at least one
  double fall_left = 0;                 // down, away from the line
  double fall_right = 0;
  bool goes_on = false;  // past its ends the line climbs on as before; otherwise it keeps the height of its end
};

// Each place takes the height of its nearest place on the line. Along arcs this is a helicoid: narrow triangles, at
// most 3 degrees each, within about 0.2 mm of it. `ground` tells how far out they must reach.
std::vector<Piece> follow(const geometry::Path& path, const Following& following, const geometry::Surface& ground);

// Between two heights the straight line; before the first and past the last their own; of two at one place the first
// before it, the second `after` it. Metres.
double height_at(const std::vector<plan::HeightAt>& heights, double station, bool after);

}  // namespace takeoff::levels
