// What a surface falls away from, as chords with heights.
#pragma once

#include "plan/site.h"
#include "takeoff/levels/envelope.h"

namespace takeoff::levels {

struct Chord {
  geometry::Vec from;  // metres from the surface's origin
  geometry::Vec to;
  double height = 0;  // metres, at the start; lip taken off
  double height_end = 0;
};
// Chords that follow each other.
struct Line {
  std::vector<Chord> chords;
  bool closed = false;
};
struct Source {
  std::vector<Line> lines;
  double fall = 0;
  bool outline = false;  // the ground of something: the surface lies on the right of its chords
  double radius = 0;     // metres: the tightest arc of it that bulges towards the surface; 0 none
};

// Faults: "finish-from" (no such element, or it has no such edge), "finish-height" (no height is typed and none follows
// from it).
problem::Result<Source> source(const plan::Job& job, const plan::Site& site, const plan::Ground& ground,
                               const plan::FallFrom& from, geometry::Point origin);

// Strips along its chords, and narrow wedges round corners and ends, of which the surface is at most 0.1 mm off the
// true cone ten metres away.
void add_pieces(const Source& source, int number, std::vector<Piece>& pieces);

// The wedges of a turn about `at`, from the unit vector `first` counter-clockwise through `sweep` radians: distance
// from `at` goes down the slope at `fall`, and counts against the rank as `rank_fall`.
void add_fan(geometry::Vec at, geometry::Vec first, double sweep, double height, double fall, double rank_fall,
             double rank_height, int number, std::vector<Piece>& pieces);

}  // namespace takeoff::levels
