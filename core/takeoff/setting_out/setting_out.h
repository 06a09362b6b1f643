// What the crew sets out from a base line: data for a sheet and a CSV.
#pragma once

#include "takeoff/ground/ground.h"
#include "takeoff/levels/terrain.h"

namespace takeoff::setting_out {

// A corner or a centre: along the base line from its start and out from it (left positive), metres, and the ties from
// both ends of the base line. Two tapes meet twice: `side` names the right one, `check` is a third measure.
struct Mark {
  plan::ElementId of;
  std::string what;  // "corner 3", "centre of edge 2"
  geometry::Point at;
  double along = 0;
  double out = 0;
  double tie_from = 0;
  double tie_to = 0;
  std::string side;  // "left of the base line", "right of it", "on it"
  double check = 0;  // to the mark before it, of the same element; of the first: to the last
};
struct Diagonal {
  plan::ElementId of;
  std::string what;  // "corner 1 to corner 3"
  double length = 0;
};
// A curve by offsets from its chord.
struct Offset {
  plan::ElementId of;
  int edge = 0;
  double along = 0;  // the chord, from the edge's first corner
  double out = 0;    // to the curve, left positive
};
struct Stake {
  plan::ElementId of;
  geometry::Point at;
  std::string what;
  std::optional<double> ground;     // existing
  std::optional<double> formation;  // finished less the build-up
  std::optional<double> finish;
};
struct SettingOut {
  plan::ElementId base_line;
  std::vector<Mark> marks;
  std::vector<Diagonal> diagonals;
  std::vector<Offset> offsets;
  std::vector<Stake> stakes;
  std::vector<problem::Problem> problems;
};

SettingOut setting_out(const plan::Job& job, const plan::Site& site, const ground::Bodies& bodies,
                       const levels::Terrain& terrain);

}  // namespace takeoff::setting_out
