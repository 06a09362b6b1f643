// A wall's base, the bank behind it and what is filled again there, cut through square to its face. Metres; across the
// face, positive behind it.
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>

#include "takeoff/ground/digger.h"
#include "takeoff/walls/zone.h"

namespace takeoff::ground {

// What a wall needs of the ground, metres across its face, positive behind it.
struct Needs {
  double depth = 0;     // of the blocks
  double pad = 0;       // thickness of the base
  double pad_past = 0;  // front and back
  double work = 0;      // room beside the base
  double slope = 0;     // of the bank
  bool retaining = true;
  bool fill_bought = false;  // of the reinforced zone
  walls::Behind behind;
  double front() const { return -(pad_past + work); }
  double rear() const { return depth + pad_past + work; }
  // Where the bank begins to go up.
  double back(const walls::Stretch& stretch) const {
    if (!retaining) return rear();
    return std::max({rear(), depth + behind.stone_depth, stretch.reach});
  }
};

// The other leg of a corner that has the fill in its bend: what lies nearer to that leg, and within its reach, is
// filled with it.
struct Other {
  double corner = 0;  // station
  double slope = 0;   // along the line for 1 across it, of the line that halves the corner
  double reach = 0;   // behind the other leg's face: to where its bank begins
  double zone = 0;    // the same, to the end of its reinforced zone
  double end = 0;     // how far behind this leg's face the other leg ends
  // How far behind the face the fill of this leg goes at a station.
  double limit(double station, double theirs) const {
    const double along = std::abs(station - corner);
    return along > theirs * slope ? std::numeric_limits<double>::infinity() : along / slope;
  }
};

// One stretch of one leg, cut through wherever it is asked for.
struct Cutter {
  Digger& d;
  const Needs& need;
  const walls::Profile& profile;
  const LegOfPath& leg;
  const walls::Stretch& stretch;
  double side = 1;  // +1: the body lies to the left of the line
  std::vector<Other> others = {};
  double from = 0, to = 0;  // what is cut now; the limits hold just inside of it

  double height(const walls::Heights& heights, double station) const {
    return station - stretch.from < stretch.to - station ? heights.after(station) : heights.before(station);
  }
  double base() const { return profile.base_level(stretch.column); }
  double under() const { return base() - need.pad; }
  double back() const { return need.back(stretch); }
  double limit(double station, double Other::* theirs) const {
    station = std::clamp(station, from + 1e-7, std::max(from + 1e-7, to - 1e-7));
    double most = std::numeric_limits<double>::infinity();
    for (const Other& other : others) most = std::min(most, other.limit(station, other.*theirs));
    return most;
  }

  // Of the bank, what the other legs of corners do not fill.
  double own_bank(const Slice& at, const Section& cut) const;

  Slice slice(double station) const;
  // The trench alone: what lies over the ground in front belongs to the bank.
  Section trench(const Slice& whole, double front) const;
  // Dug in all, in the trench; virgin width; filled again beside and behind; of earth that the wall's own stone asks
  // for (reinforced zone and cap); how far that stands over the ground as it lies, at its back; how far the underside
  // of the base stands over it.
  enum { all, base_trench, virgin, refill, own_earth, ledge, hollow, numbers };
  std::vector<double> measure(const Slice& at, const Section& cut) const;
};

}  // namespace takeoff::ground
