// Caps along the top of a wall.
#pragma once

#include "takeoff/walls/courses.h"

namespace takeoff::walls {

// A run of caps at one level, between corners. Its front line is the top course's face, setback taken in, moved out by
// the overhang: a straight between two corners of turn A gets (overhang - setback) tan(A/2) longer at each outside
// corner and shorter at each inside one, an arc keeps its turn. A step in the top ends a run square, and so does a
// corner where the two legs end at different levels.
struct CapRun {
  int course = 0;   // under it
  double from = 0;  // stations
  double to = 0;
  double length = 0;        // metres of the front line
  double under = 0;         // metres of the top course that it covers
  double longer = 0;        // what has to be filled with caps: the longer edge, between the tips of its corners
  double radius = 0;        // of the front line, signed as Leg's; 0 straight
  double turn = 0;          // radians of arc
  double mitre_before = 0;  // turn at the corner it begins at, as Leg's; 0 square
  double mitre_after = 0;
  bool joined_before = false;  // goes on without a corner into the run before: no end shows
  bool joined_after = false;
  bool shows_before = false;  // a square end over a lower level or at an end of the wall
  bool shows_after = false;
};
// `depth` is the cap's, front to back. Legs that the setback uses up have no run.
std::vector<CapRun> cap_runs(const Profile& profile, const Blocks& blocks, double overhang, double depth);

// Metres of a course's own line between two stations of one leg, `back` behind the line as drawn.
double own_length(const Profile& profile, std::size_t leg, double back, double from, double to);

// How many caps one curve takes and how they are cut. `outer_radius` is that of the longer edge: the front of an
// outside curve, the back of an inside one. Straight caps: tapered as copings are, on that edge, each turning at most
// 2 asin(w/2R), both sides cut at half of the turn; nothing where the shorter edge would be under half a cap.
// Tapered caps (wide a, narrow b, depth d): each turns q = 2 atan((a - b)/2d); a run of turn T wants (wide out - narrow
// out) = T/q and middle arc/((a + b)/2) caps. No cut where both come out whole with joints of at most `joint`; else the
// nearest mix, and two caps take the rest of turn and length by cuts of `angle` a side. A curve tighter than tapered
// caps all one way cuts every cap as straight ones are.
struct CurveCaps {
  int caps = 0;      // bought
  int wide_out = 0;  // tapered caps only: the mix as it would lie uncut
  int narrow_out = 0;
  int cut = 0;
  double angle = 0;      // radians, of each cut side, off the cap's own sides
  double rest_turn = 0;  // radians and caps that the mix leaves to the cuts
  double rest_caps = 0;
};
// The most that a straight cap of this length turns on a curve whose longer edge has that radius: 2 asin(w/2R).
double most_turn(double wide, double outer_radius);
std::optional<CurveCaps> curve_caps(double turn, double outer_radius, double wide, double narrow, double depth,
                                    double joint, bool tapered);

// Caps along one straight run: whole at both ends, what is over shared by two closers of half a cap or more.
struct CapRow {
  int caps = 0;
  double first_closer = 0;  // metres; 0: no cut
  double second_closer = 0;
  int before = 0;  // whole caps before the closers
  int near = 0;    // joints nearer to one below than wanted
  int cut() const { return first_closer > 0 ? (caps == 1 ? 1 : 2) : 0; }
};
// `below` are the joints of the course below, metres from the run's start. The closers lie where the fewest cap joints
// come within `apart` of one; of equals nearest to the middle and to each other's length.
CapRow cap_row(double length, double cap, const std::vector<double>& below, double apart);

// Caps, their joints, adhesive by beads into tubes, the drip groove. Nothing without a chosen cap but a notice. A wall
// that is glued takes adhesive between its courses too, by the line as drawn.
// Joints over those below are looked at where the courses are given. Measures cap_length_m (of top course covered),
// caps, caps_cut, curve_caps, straight_caps, cap_ends (square ends that show), adhesive_tubes, groove_m (straight front
// edges, both sides where the wall is free-standing), cap_top_above_ground_m (greatest).
Share caps(const plan::Job& job, const plan::Ground& ground, const Profile& profile, const Blocks& blocks,
           const Courses* courses = nullptr);

}  // namespace takeoff::walls
