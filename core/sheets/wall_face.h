// What shows on the face of a wall, unrolled: units and caps with the stations between which they lie.
#pragma once

#include <optional>
#include <vector>

#include "plan/site.h"
#include "takeoff/walls/courses.h"

namespace sheets {

struct FacePiece {
  int course = 0;
  double from = 0;  // stations, metres along the line as drawn
  double to = 0;    // from where nothing of it shows: behind the other leg of an inside corner
  takeoff::walls::Make make = takeoff::walls::Make::whole;
  bool again = false;  // the other face of a corner unit that the leg before has counted
};

struct WallFace {
  takeoff::walls::Blocks blocks;
  takeoff::walls::Profile profile;
  takeoff::walls::Courses courses;
  std::vector<FacePiece> units;
};

// The wall as the takeoff lays it; nothing where it can't be built. A course that its setback makes shorter than the
// line as drawn (at outside corners) is drawn as far as the corner: its outermost piece takes the rest.
std::optional<WallFace> wall_face(const plan::Job& job, const plan::Ground& ground, const plan::Wall& wall);

struct CapPiece {
  int course = 0;  // under it
  double from = 0;
  double to = 0;  // past the wall's length where it lies over the seam of a closed line
  bool cut = false;
};
// As many as the takeoff counts. Closers stand where the fewest joints come near one of the course below; on curves all
// are equal.
std::vector<CapPiece> caps_on(const plan::Job& job, const plan::Wall& wall, const WallFace& face);

}  // namespace sheets
