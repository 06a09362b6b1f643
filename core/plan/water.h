// Where water goes: drain runs with what hangs on them, and what pours.
#pragma once

#include "plan/wall.h"

namespace plan {

// Something of an item at a place along a run: an inlet (basin, channel outlet, downspout boot) or a fitting.
struct AtRun {
  Length at;  // from the start of the line
  Id item;
  std::string what;           // inlet, cleanout, bend, wye, outlet ...
  std::optional<Length> top;  // of an inlet's grate; empty: the surface there
  ElementId takes;            // what brings it water, where the plan does not show it
  bool operator==(const AtRun&) const = default;
};

// Pipe, channel or sleeve. Levels of a pipe are inverts; of a channel its own. A run goes down from its start at
// `fall`, or by `inverts` where those are given; it ends in another run (`into`) or in the open.
struct DrainRun {
  DrawnLine line;
  std::string what;  // pipe, channel, sleeve
  Id item;
  Length width;                         // of what shows at the surface; 0 lies below
  std::optional<Length> start;          // invert at the start of the line
  double fall = 0.01;                   // down along the line
  std::vector<HeightAt> inverts;        // instead of start and fall
  ElementId into;                       // the run that it joins; empty: its end is an outlet to daylight
  std::optional<Length> outlet_ground;  // ground at the outlet; empty: the existing surface
  std::vector<AtRun> parts;             // inlets and fittings along it
  Id bend;                              // one for each corner of the line; empty: none are bought
  Id joiner;                            // where it joins `into`: a wye
  Id outlet_item;                       // screen or grate at an outlet
  Id build_up;                          // of use pipe: stone and fabric of the trench; empty: dug earth back
  std::string caps_and_string;          // of a sleeve: what closes it, e.g. "capped, pull string"
  bool operator==(const DrainRun&) const = default;
};

// A sheet of water over an edge of a given length and head.
struct Spout {
  Length length;
  Length head;
  double contractions = 0;  // ends at which the nappe draws in: 0, 1 or 2
  bool operator==(const Spout&) const = default;
};

// A counted item at a point: light, spout, basin, boulder.
struct Feature {
  geometry::Point at;
  Id item;
  int count = 1;
  std::optional<Spout> spout;
  bool operator==(const Feature&) const = default;
};

}  // namespace plan
