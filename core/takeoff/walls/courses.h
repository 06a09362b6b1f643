// Every unit of every course: a wall is counted by laying it.
#pragma once

#include <memory>
#include <vector>

#include "takeoff/walls/profile.h"

namespace takeoff::walls {

// What the courses are laid from; `curve`, `half`, `corner` and `end` only where they were chosen.
struct Blocks {
  Unit block;
  std::optional<Unit> curve;
  std::optional<Unit> half;
  std::optional<Unit> corner;
  std::optional<Unit> end;
  bool operator==(const Blocks&) const = default;
};
// What a wall has chosen; nothing where its block can't be. A piece of another height than the block is a problem
// "wall-block" and left out.
std::optional<Blocks> blocks(const plan::Job& job, const plan::Wall& wall, const plan::ElementId& of, Share& share);

enum class Make { whole, half, corner, end, cut };

// One unit in its course. `from` is metres along the course's own line from the start of its run.
struct Laid {
  Make make = Make::whole;
  double from = 0;
  double length = 0;    // that shows
  bool curved = false;  // of the block for curves
  double angle = 0;     // radians off square of its cut (mitre); 0 square
  bool operator==(const Laid&) const = default;
};

// A course between two breaks (ends, steps, corners).
struct Run {
  int course = 0;
  double from = 0;  // stations on the drawn line
  double to = 0;
  double length = 0;  // of its own line: setback and corners taken in
  double hidden = 0;  // behind another leg at an inside corner: units counted, no face
  std::vector<Laid> units;
  double least_overlap = 0;  // metres, over the course below; the unit's half or more where nothing lies below
  bool operator==(const Run&) const = default;
};

// All courses between two corners. Laid from its own values alone, so an edit lays afresh only the bays that it
// touches.
struct Bay {
  std::vector<Leg> legs;
  std::vector<Column> columns;  // clipped to the bay
  std::vector<Run> runs;        // by course, then along the wall
  bool operator==(const Bay&) const = default;
};

struct Courses {
  std::vector<std::shared_ptr<const Bay>> bays;
  std::vector<problem::Problem> problems;  // without their element
  double length(int course) const;         // that shows, of all its runs
  std::int64_t count(Make make, bool curved) const;
};

// How the units may lie. Lengths in metres.
struct LayRules {
  double least_overlap = 0.25;  // share of a unit; limit wall-bond
  double sliver = 0;            // no piece under this
  double kerf = 0;
  bool free_standing = false;  // counted along the longer of its two faces on curves
  double depth = 0;            // of the wall, for corners and curves
};

// The start piece of each run (whole, half, or cut in steps of 1 in) is chosen by dynamic programming over the courses
// of a bay: first no overlap under the least one, then no piece under the sliver limit, then fewest cuts, then wholes
// next to a corner. Outside corners that are square: one corner unit each course, its long face on either leg by turns;
// inside corners: courses run through by turns with the depth hidden; other angles: both pieces cut at half the angle.
// A leg of course i is L - i s (tan(A1/2) + tan(A2/2)) at outside corners (plus at inside), an arc R - i s convex,
// R + i s concave. Bays of `before` whose own values are the same are taken over, not laid again.
// Problems: "wall-curve" (a curve tighter than the unit turns, with the least radius; judged at the top course on
// outside curves, at the base on inside ones), "wall-bond" as a notice with its place where the overlap is less than
// wanted, "wall-leg" (a leg that the setback uses up), "corner-unit" as a notice where a square corner has no unit.
Courses lay(const Profile& profile, const Blocks& blocks, const LayRules& rules, const Courses* before = nullptr);

// Where a station falls on the course's own line, measured from the start of its bay.
double along(const Bay& bay, double setback, int course, double station);

// The share of a line: lines, tasks, measures, cuts of a laid wall (walls.h calls it).
Share counted(const plan::Job& job, const plan::Ground& ground, const Profile& profile, const Blocks& blocks,
              const Courses& courses);

}  // namespace takeoff::walls
