// The levels of the pipe behind a wall.
#pragma once

#include "takeoff/walls/profile.h"

namespace takeoff::walls {

struct Outlet {
  double at = 0;      // station
  double invert = 0;  // metres above the datum
};

// What the pipe can follow: the bottom of its stone, column by column. Of a closed wall the columns stand three times,
// one length apart, so that water can go either way round.
struct PipeLine {
  struct Piece {
    double from = 0;
    double to = 0;
    double bottom = 0;  // of the stone
    double top = 0;     // of the pad
  };
  std::vector<Piece> pieces;
  double fall = 0;
  double around = 0;  // length of a closed wall; 0 of an open one

  // The invert at `station` of a pipe that goes up from one outlet alone, stepping up with the base.
  double reached(const Outlet& outlet, double station) const;
  // The same of a closed wall, the shorter way round.
  double reached_either_way(const Outlet& outlet, double station) const;
  // Of all outlets together: the lower rules. At least one outlet.
  double invert(const std::vector<Outlet>& outlets, double station) const;
};
PipeLine pipe_line(const Profile& profile, double pad_thickness, double fall);

// A stretch with one level of base, and whether water gathers there: it is higher on both sides, or the wall ends.
struct Plateau {
  double from = 0;
  double to = 0;
  int base = 0;
  bool low = false;
};
std::vector<Plateau> plateaus(const Profile& profile);

}  // namespace takeoff::walls
