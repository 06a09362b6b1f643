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
std::optional<Blocks> chosen_blocks(const plan::Job& job, const plan::Wall& wall, const plan::ElementId& of,
                                    Share& share);

enum class Make { whole, half, corner, end, cut };

// One unit in its course. `from` is metres along the line that it is counted on (the course's own; of a free-standing
// wall the longer face) from the start of its run.
struct Laid {
  Make make = Make::whole;
  double from = 0;
  double length = 0;    // that shows
  bool curved = false;  // of the block for curves
  double angle = 0;     // radians off square of its cut (mitre); 0 square
  bool again = false;   // the other face of a corner unit that the leg before has counted
  bool operator==(const Laid&) const = default;
};

// A course between two breaks (ends, steps, corners).
struct Run {
  int course = 0;
  double from = 0;  // stations on the drawn line
  double to = 0;
  double length = 0;  // that shows, of its own line: setback and corners taken in
  double hidden = 0;  // more, behind another leg at an inside corner: units counted, no face
  std::vector<Laid> units;
  double least_overlap = 0;  // metres, over the course below; half a unit where nothing nearer lies below
  bool operator==(const Run&) const = default;
};

// All courses between two corners (or where blocks of another face length take over). Laid from its own values alone,
// so an edit lays afresh only the bays that it touches.
struct Bay {
  std::vector<Leg> legs;        // its last one's corner is the one that it ends at
  double before = 0;            // turn of the corner that it begins at
  bool first_at_start = false;  // its corner has the long face, or runs through, in courses 1, 3, 5 as people count
  bool first_at_finish = true;
  std::vector<Column> columns;  // clipped to the bay
  // The columns across its ends, as their courses decide what meets there (no stations); none at an end of the wall.
  std::optional<Column> left;
  std::optional<Column> right;
  std::vector<Run> runs;  // by course, then along the wall
  bool operator==(const Bay&) const = default;
};

// How the units may lie. Lengths in metres.
struct LayRules {
  double least_overlap = 0.25;  // share of a unit; limit wall-bond
  double sliver = 0;            // no piece under this
  double kerf = 0;
  bool free_standing = false;  // counted along the longer of its two faces on curves
  double depth = 0;            // of the wall, for corners and curves
  bool start_shows = false;    // an end block stands there, where one is chosen
  bool finish_shows = false;
  double joint_on_curves = 0.25 * 0.0254;    // how far the faces of straight-sided units may open; limit wall-joint
  units::System system = units::System::us;  // for sentences, and whether pieces are cut by the inch or by 25 mm
  bool operator==(const LayRules&) const = default;
};
LayRules lay_rules(const plan::Job& job, const plan::Wall& wall, const Blocks& blocks);

struct Courses {
  std::vector<std::shared_ptr<const Bay>> bays;
  std::vector<problem::Problem> problems;  // without their element
  Blocks blocks;                           // as laid
  LayRules rules;
  double length(int course) const;  // that shows, of all its runs
  std::int64_t count(Make make, bool curved) const;
};

// The end pieces of each run (whole, half, or one of them cut in steps of 1 in, 25 mm in metric jobs) are chosen by
// dynamic programming over the courses of a bay: first no overlap under the least one, then no piece under the sliver
// limit, then fewest cuts, then wholes next to a corner, then fewest half units and the least length of pieces, then
// cuts at the finish. A wall walked the other way, mirrored or turned counts the same. Outside corners that are square:
// one corner unit each course, its long face on either leg by turns (the longer leg has it in courses 1, 3, 5 as people
// count; of equals the leg before; round a closed line every leg at its end); inside corners that are square, or too
// sharp for a mitre: courses run through by turns with the depth hidden; other angles, and square ones without a corner
// unit: both pieces cut at half the angle, whole and half faces by turns. An end block stands where an end shows, at
// the wall's ends and at steps of its top. On arcs a misfit up to 1/16 in for each joint is taken up by the joints,
// without a cut (common practice), and 1/32 in of a run anywhere. A leg of course i is L - i s (tan(A1/2) + tan(A2/2))
// at outside corners (plus at inside), an arc R - i s convex, R + i s concave. Bays of `before` whose own values are
// the same are taken over, not laid again. Problems: "wall-curve" (a curve tighter than the unit turns, with the least
// radius; judged at the top course on outside curves, at the base on inside ones), "wall-bond" as a notice with its
// place where the overlap is less than wanted, "wall-leg" (a leg that the setback uses up), "corner-unit" as a notice
// where a square corner has no unit.
Courses lay(const Profile& profile, const Blocks& blocks, const LayRules& rules, const Courses* before = nullptr);

// The least radius of a face that units can follow with the centre behind them: front x depth / (front - back) where
// they taper, or their detail min_outside_radius_mm where that is more; straight-sided units by their joints opening to
// `joint` at the face: (front + joint) x depth / joint.
double least_radius(const Unit& unit, double joint);

// Where a station falls on the course's own line, measured from the start of its bay; within 0 and the line's length.
double along(const Bay& bay, double setback, int course, double station);

// The share of a line: lines, tasks, measures, cuts of a laid wall (walls.h calls it). Cuts come out of units by pairs
// as Choices::reuse allows; equal ones of one stretch are one entry of the cut list, with their courses and their
// count.
Share counted(const plan::Job& job, const plan::Ground& ground, const Profile& profile, const Blocks& blocks,
              const Courses& courses);

}  // namespace takeoff::walls
