// What the crew sets out from a base line: data for a sheet and a CSV.
#pragma once

#include "takeoff/ground/ground.h"
#include "takeoff/levels/terrain.h"

namespace takeoff::setting_out {

// A corner or a centre: along the base line from its start and out from it (left positive), metres, and the ties from
// both ends of the base line. Two tapes meet twice: `side` names the right one, `check` is a third measure. Every
// number is worked out from the mark's own grid point, so that they agree with each other.
struct Mark {
  plan::ElementId of;
  std::string what;  // "corner 3", "centre of edge 2"; edges and corners are numbered as drawn, from 1
  geometry::Point at;
  double along = 0;
  double out = 0;
  double tie_from = 0;
  double tie_to = 0;
  std::string side;              // "left of the base line", "right of it", "on it" (within half a millimetre)
  double check = 0;              // to the mark before it, of the same element; of the first: to the last
  std::optional<double> radius;  // of a centre
  bool poor = false;             // the tapes cross under the limit `setting-out-crossing`: measure the check
};
// Of a shape of four straight edges. A rectangle has both equal, and its corners are square within the limit
// `setting-out-square` at the ends of their sides.
struct Diagonal {
  plan::ElementId of;
  std::string what;  // "corner 1 to corner 3"
  double length = 0;
  bool rectangle = false;
};
// A curve by offsets from its chord. A curve of more than half a circle is taken in parts of equal turn, each with a
// chord of its own.
struct Offset {
  plan::ElementId of;
  int edge = 0;              // as drawn, from 1
  int part = 0;              // 0: the whole edge; else from 1
  geometry::Point from, to;  // ends of the chord
  double chord = 0;
  double along = 0;  // the chord, from `from`
  double out = 0;    // to the curve, left positive
};
// A grade stake at a corner of a paved area.
struct Stake {
  plan::ElementId of;
  geometry::Point at;
  std::string what;
  std::optional<double> ground;     // existing
  std::optional<double> formation;  // finished less the build-up
  std::optional<double> finish;
  bool guessed = false;  // the ground there lies beyond what was measured
};
struct SettingOut {
  plan::ElementId base_line;  // empty: none, and no marks
  std::vector<Mark> marks;
  std::vector<Diagonal> diagonals;
  std::vector<Offset> offsets;
  std::vector<Stake> stakes;
  std::vector<problem::Problem> problems;
};

// Of everything that is built: outlines of paved areas, steps and pillars, the pool's water edge, lines of walls, edge
// and drain runs. What stands already, and shapes with a fault (the Site says which), are left out; so are centres
// further from their curve than a tape is long (limit `setting-out-tape`): there the offsets serve. Without a base line
// there are no marks; the rest stands by itself. Problems are notices: "base-line-none", "base-line-several",
// "base-line-no-length", "ties-cross-poorly", "ties-long", "stakes-guessed".
SettingOut setting_out(const plan::Job& job, const plan::Site& site, const ground::Bodies& bodies,
                       const levels::Terrain& terrain);

}  // namespace takeoff::setting_out
