// Caps along the top of a wall.
#pragma once

#include "takeoff/walls/courses.h"

namespace takeoff::walls {

// A run of caps at one level, between corners: its front line lies the overhang outside the top course's face.
struct CapRun {
  int course = 0;   // under it
  double from = 0;  // stations
  double to = 0;
  double length = 0;        // metres of its own front line; free-standing: the longer of both
  double under = 0;         // metres of the top course that it covers
  double radius = 0;        // of the front line, signed as Leg's; 0 straight
  double turn = 0;          // radians of arc
  double mitre_before = 0;  // radians of turn at the corner it begins at; 0 square
  double mitre_after = 0;
};
std::vector<CapRun> cap_runs(const Profile& profile, const Blocks& blocks, double overhang, bool free_standing);

// How many caps one curve takes and how they are cut. Straight caps: C1's tapered rule on the front line, each turning
// 2 asin(w/2R), both sides cut at half of it. Tapered caps (wide a, narrow b, depth d): each turns
// q = 2 atan((a - b)/2d); a run of turn T wants (wide out - narrow out) = T/q; no cut where both come out whole within
// the joint limits, else the nearest mix and the rest by cuts.
struct CurveCaps {
  int caps = 0;
  int wide_out = 0;  // tapered caps only
  int narrow_out = 0;
  int cut = 0;
  double angle = 0;  // radians, of each cut side
};
std::optional<CurveCaps> curve_caps(double turn, double front_radius, double wide, double narrow, double depth,
                                    double joint, bool tapered);

// Caps, their joints, adhesive by beads into tubes, the drip groove. Measures cap_length_m, caps, caps_cut,
// curve_caps, straight_caps, adhesive_tubes, groove_m, cap_top_above_ground_m.
Share caps(const plan::Job& job, const plan::Ground& ground, const Profile& profile, const Blocks& blocks);

}  // namespace takeoff::walls
