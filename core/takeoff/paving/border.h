// Rows of units along an edge: border courses and copings share this.
#pragma once

#include <string>
#include <vector>

#include "geometry/offset.h"
#include "takeoff/paving/layout.h"

namespace takeoff::paving {

// One run of a row: a straight or an arc of one curvature sign, between corners.
struct RowRun {
  // Metres: the line towards the centre of curvature (straight: the shorter line between its mitres).
  double near_length = 0;
  double far_length = 0;     // metres: the other line
  double radius = 0;         // metres, of the near line; 0 straight
  double turn = 0;           // radians, of the arc
  double corner_before = 0;  // radians of turn at its ends; 0 where it ends square or tangent
  double corner_after = 0;
};

// How a run is made. On curves: uncut with wedge joints, or tapered (both sides cut), or stock radius pieces.
struct RowMake {
  enum class How { straight_even, straight_closers, uncut, tapered, radius } how = How::straight_even;
  int pieces = 0;
  int cut = 0;           // of them
  double near_face = 0;  // metres: piece width at the near line, net of joint
  double far_face = 0;
  double near_joint = 0;
  double far_joint = 0;
  double cut_angle = 0;   // radians, each side of a tapered piece
  double flat = 0;        // metres: how far the near line's chord lies off the arc (p (1/cos a - 1))
  double cut_length = 0;  // metres, all saw cuts of the run
};

struct RowRules {
  double piece = 0;  // metres: length along the line
  double deep = 0;   // metres: across
  double joint = 0;  // metres: as laid
  double joint_least = 0, joint_greatest = 0;
  double least_face = 0;  // of a tapered piece, default piece / 2
  double flat_limit = 0;  // metres, default 1/8 in
  // Metres: radius of the near or far line of radius pieces, and their length along it.
  std::vector<std::pair<double, double>> stock_radii;
};

// The runs of the strip between `from` and `from` + deep on the side that `towards` says, split at corners (turn > 5
// degrees) and at changes of curvature. `from` may be negative: a coping's nose lies on the other side of its line.
// Neighbouring arcs that one arc follows within 1/16 in are one run (freeform curves). A corner's mitre is taken on
// the tangents of the line there, so that a line d inside a corner of turn A is d tan(A/2) shorter on either leg;
// where an arc ends in a corner its turn is the greater of what its two lines still take. Of a closed line the runs
// go round and start at a corner or a change of curvature.
std::vector<RowRun> row_runs(const geometry::Path& line, double from, double deep, geometry::Side towards);

// All ways that work for one run, the least cutting first; empty when none does. Arc of turn T, n pieces, a = T/2n:
// uncut lies with joints 2p sin a - l cos a near and 2w sin a more far, the count that comes nearest to the joint
// wanted; tapered has the faces 2p tan a - j/cos a and 2(p+w) tan a - j/cos a, the least n whose far face is a piece
// and whose flat is within its limit; radius pieces fit where l^2/8 |1/R - 1/R_s| is at most 1/16 in. Derived.
std::vector<RowMake> ways(const RowRun& run, const RowRules& rules);

// What is built where two runs meet in a corner. butt: of the legs one runs through and the other stops against it,
// by turns from course to course. block: both stop against a square piece, w x w, cut from one unit.
enum class RowCorner { mitre, butt, block };
struct RowCorners {
  std::vector<RowRun> runs;  // lengths as cut at their ends; a corner that has become a square end is 0
  int mitres = 0;
  int butts = 0;
  int blocks = 0;  // pieces beside those of the runs
};
// A mitre needs a piece of w tan(A/2) + least face and a turn up to 135 degrees (no corner of the ground under 45), a
// block a piece as long as the row is deep; otherwise the corner is butted. `course` counts from 0. Common practice.
RowCorners at_corners(std::vector<RowRun> runs, RowCorner corner, const RowRules& rules, int course, bool closed);

// Least radius of the near line at which units of this size lie uncut within the joint limits; infinity where those
// limits are one.
double least_radius_uncut(double piece, double deep, double joint_least, double joint_greatest);

}  // namespace takeoff::paving
