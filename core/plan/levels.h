// Heights: what was read on site, what lies there, and what the finished ground shall be. Heights are above the job's
// datum; falls are shares (0.02 is 2 %), positive going down.
#pragma once

#include "plan/wall.h"

namespace plan {

// A point whose height is known. `what`: "existing" (ground as it lies), "finished" (of the area `of`), "bench-mark",
// "invert", or anything else, which is kept and shown and makes no surface. Without a height it takes the one that the
// level book has for a point of this element's id.
struct Level {
  geometry::Point at;
  std::optional<Length> height;
  std::string what;
  ElementId of;
  bool operator==(const Level&) const = default;
};

// One row of a level book, entered as read on the rod. `point` is a Level's id or a name. A turning point has a
// foresight and a backsight in one row.
struct RodReading {
  std::string point;
  std::optional<Length> back;
  std::optional<Length> between;
  std::optional<Length> fore;
  std::string note;
  bool operator==(const RodReading&) const = default;
};

// Readings in the order in which they were taken, from a point of known height.
struct LevelBook {
  Length start;                  // height of the first row's point: the bench mark
  std::optional<Length> finish;  // known height of the last row's point; empty: the run was not closed
  bool share_out = false;        // the misclosure is shared out over the set-ups, evenly
  std::vector<RodReading> readings;
  bool operator==(const LevelBook&) const = default;
};

// One thing that a surface falls away from: the back of a pool's coping, a building's wall, a wall's face, a channel,
// or an edge of the area's own drawing. The paving starts there at `height` (less `lip`) and falls at `fall`.
struct FallFrom {
  ElementId element;                 // empty: the area's own edge
  std::optional<int> edge;           // number in the element's (or own) drawing; empty: all of it
  std::optional<Length> height;      // empty: the pool's coping level or the building's floor level
  std::optional<Length> height_end;  // at the end of the edge, where it changes along it
  Length lip;                        // the paving starts this much lower
  double fall = 0.02;
  bool operator==(const FallFrom&) const = default;
};

// The finished surface of a paved area. Which fields count is told by `way`:
//   edges      `from`: z(x) = greatest over all of height - lip - fall x plan distance; hips and valleys follow
//   plane      `height` at `at`, falling by `fall` towards `direction`
//   two-falls  `line` with `height` at its start and `height_end` at its end; `fall` down away from it on its left,
//              `fall_right` on its right (both positive: a ridge, both negative: a valley)
//   levels     the finished levels that name this area, joined by triangles (Delaunay)
//   along      `line` with `heights` along it; across it `fall` down to the right (negative: to the left)
struct Finish {
  enum class Way { edges, plane, two_falls, levels, along } way = Way::levels;
  std::vector<FallFrom> from;
  geometry::Point at;
  std::optional<Length> height;
  std::optional<Length> height_end;
  units::Angle direction;
  double fall = 0;
  double fall_right = 0;
  std::optional<DrawnLine> line;
  std::vector<HeightAt> heights;
  bool operator==(const Finish&) const = default;
};

// A line from which the crew sets out: offsets and stations are measured from it, tape ties from its two ends.
struct BaseLine {
  geometry::Point from;
  geometry::Point to;
  std::optional<Length> chord_step;  // offsets along the chord of a curve, this far apart
  bool operator==(const BaseLine&) const = default;
};

}  // namespace plan
