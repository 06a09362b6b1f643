// The pieces of a row along an edge, one by one: border courses, copings, kerbs, caps.
#pragma once

#include "sheets/parts.h"
#include "takeoff/paving/placed.h"

namespace sheets {

using takeoff::paving::PlacedRun;
using takeoff::paving::RowMake;

// Where the row lies beside its line, metres to the left of it as walked: from its first to its second edge.
struct Strip {
  double first = 0;
  double second = 0;
  double deep() const { return std::abs(second - first); }
  static Strip beside(double from, double deep, geometry::Side side);
};

// How a run ends in a corner: on the mitre, or square and so far back from the tip of its longer edge.
struct RunEnd {
  bool mitred = false;
  double back = 0;
};

// No run is drawn in more parts than this: past it so many neighbours are drawn as one that it comes out even. It is
// half a mile of the shortest kerb; a run of kilometres would take gigabytes and show nothing.
inline constexpr int most_drawn = 4'000;

// A piece of a straight run between two stations of its longer edge, metres from where that edge begins.
struct Slot {
  double from = 0;
  double to = 0;
  bool cut = false;
};
std::vector<Slot> slots(const RowMake& make, double length);
// Whole pieces from the start, the last one cut: kerbs. Of both not more than `most_drawn`.
std::vector<Slot> whole_from_start(double length, double piece, double joint);

struct RowPiece {
  Contour contour;
  bool cut = false;
};

// Straight runs by their slots, curves by their make.
class PlacedRow {
 public:
  PlacedRow(const PlacedRun& placed, Strip strip, RunEnd before, RunEnd after);
  double length() const { return to_ - from_; }  // of the longer edge, between its ends
  std::vector<RowPiece> pieces(const RowMake& make) const;
  std::vector<RowPiece> straight(const std::vector<Slot>& slots, double joint) const;
  // A place beside the run, at a share of its length, and the way there.
  struct Place {
    Vec at;
    Vec along;  // unit, as walked
  };
  Place place(double share, double left) const;

 private:
  Vec at(double station, double left) const;  // straights; past their ends straight on
  std::vector<RowPiece> round(const RowMake& make) const;
  void add(std::vector<RowPiece>& pieces, std::vector<Vec> corners, bool cut, double joint) const;
  const PlacedRun& placed_;
  Strip strip_;
  RunEnd before_, after_;
  std::vector<Vec> points_;  // of the line, metres
  std::vector<double> stations_;
  double from_ = 0, to_ = 0;  // of the longer edge, on the line's stations
};

// The square piece between two runs at a square corner, and the piece with two legs of a coping.
Contour corner_block(const PlacedRun& before_it, Strip strip);
Contour corner_legs(const PlacedRun& before_it, Strip strip, double leg);

}  // namespace sheets
