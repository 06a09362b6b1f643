// The courses of one bay before a unit lies in them: their own lines, their runs, and the pieces that are fixed.
#pragma once

#include "takeoff/walls/courses.h"

namespace takeoff::walls {

inline constexpr double dust = 1e-6;  // metres: less is no length
// Metres: less is no piece and no overlap. No saw takes so little off and no block is that true; and a wall drawn askew
// is off by a few thousandths of it, because its points lie on a grid.
inline constexpr double thin = units::metres_per_inch / 32;

// The line of one course along the legs of its bay; "own" metres are measured from its start.
struct CourseLine {
  const Bay* bay = nullptr;
  std::vector<double> starts;  // own metres of each leg's start (before the corner takes its part)
  std::vector<double> scales;  // own metres for each metre as drawn
  double length = 0;           // 0 where the setback uses it up
  std::size_t leg_at(double own) const;
  double own(double station) const;
  double station(double own) const;
};
// `outside` metres further out on inside curves: 0, or the depth of a free-standing wall counted on its longer face.
CourseLine course_line(const Bay& bay, double setback, int course, double outside);

// The lines of all courses of a bay that units are counted on, by course from 0.
std::vector<CourseLine> counted_lines(const Bay& bay, const Blocks& blocks, const LayRules& rules);

// A piece that its place decides. No length: none.
struct Fixed {
  Make make = Make::whole;
  double length = 0;
  double angle = 0;
};

// One run of one course, about to be filled.
struct Slot {
  int course = 0;
  double from = 0;  // stations
  double to = 0;
  double own_from = 0;  // on the counted line, with what is hidden
  double own_to = 0;
  double shows = 0;   // metres of its own face
  double hidden = 0;  // metres
  Fixed start;
  Fixed finish;
  bool corner_before = false;
  bool corner_after = false;
  double on_arcs = 0;  // counted metres of it on arcs
  double fill() const { return own_to - own_from - start.length - finish.length; }
};

// Bays of a profile without runs, in order.
std::vector<Bay> bays(const Profile& profile, const Blocks& blocks);
const Unit& unit_of(const Bay& bay, const Blocks& blocks);  // that fills it

// Its slots by course, then along the wall; `lines` are the counted lines by course, from 0.
std::vector<Slot> slots(const Bay& bay, const Blocks& blocks, const LayRules& rules,
                        const std::vector<CourseLine>& lines);

// What happens at a corner of so many radians. `through`: inside corners where one leg runs on behind the other, square
// ones and those too sharp for a mitre to leave half a face over the sliver limit.
enum class Meeting { none, square_out, through, mitre };
Meeting meeting(double corner, const Blocks& blocks, const LayRules& rules);

}  // namespace takeoff::walls
