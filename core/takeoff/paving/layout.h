// Laying units over a region: whole units as runs, cut pieces with their shape.
//
// The rule: a unit is its module less half a joint on each side; the corner of cell (0, 0) lies on the start point; the
// pattern is turned about it. An edge of the region that enters a unit by less than 0.5 mm does not cut it: edges are
// tested against the unit shrunk by that on every side; a unit that no edge enters is whole or not there, by its
// centre. A unit that an edge enters is clipped whole, and a piece narrower than 0.5 mm is nothing.
#pragma once

#include <cstdint>
#include <vector>

#include "geometry/outline.h"
#include "takeoff/paving/lattice.h"

namespace takeoff::paving {

inline constexpr double grazing = 160;  // steps: 0.5 mm

// Whole units of one kind in one row: a = first .. last, all of row b.
struct Run {
  int kind = 0;  // number in Lattice::kinds
  int b = 0;
  int first = 0;
  int last = 0;
  int count() const { return last - first + 1; }
};

// A side of a cut piece. `cut` sides lie along an edge of the region (`against` is its origin); others are sides of the
// unit.
struct PieceSide {
  geometry::Vec from;  // frame, steps, from the unit's own corner
  bool cut = false;
  geometry::Origin against;
};

// A part of a unit that is left by the edges that cross it, counter-clockwise.
struct Piece {
  int kind = 0;
  int a = 0;
  int b = 0;
  std::vector<PieceSide> sides;
  double area = 0;         // steps squared
  double cut_length = 0;   // steps: all cut sides
  double least_width = 0;  // steps: smallest distance between parallels that hold it
  bool convex = true;      // no notch deeper than 1/8 in, which a straight cut would leave; notches are listed apart
  bool sliver = false;
};

struct Layout {
  Lattice lattice;
  std::vector<Run> runs;
  std::vector<Piece> pieces;
  double region_area = 0;  // steps squared, of the flattened region
  double unit_area = 0;    // steps squared, whole and cut
  std::int64_t whole() const;
  std::int64_t whole(int kind) const;
  std::int64_t cut(int kind) const;
};

// The person's limits for slivers: a share of the unit's area, a least width. Either makes one.
struct Slivers {
  double share = 1.0 / 3;
  double width = 0;  // steps
};

// Row by row: only units that an edge enters are clipped, so the cost follows the outline's length and not its area.
Layout lay(const geometry::Region& region, const Lattice& lattice, const Slivers& slivers);

// Counts only, no shapes: for trying many starts. Cuts and slivers as `lay` would find them.
struct Counts {
  std::int64_t whole = 0;
  std::int64_t cut = 0;
  std::int64_t slivers = 0;
  double least_width = 0;  // steps, of all cut pieces; 0 when there is none
  bool operator==(const Counts&) const = default;
};
Counts count(const geometry::Region& region, const Lattice& lattice, const Slivers& slivers);

}  // namespace takeoff::paving
