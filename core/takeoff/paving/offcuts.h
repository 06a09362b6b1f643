// Which offcut serves which piece (trade.md C2), and how many units are bought for cuts.
#pragma once

#include <vector>

#include "plan/job.h"
#include "takeoff/paving/layout.h"

namespace takeoff::paving {

// How a unit may be cut and turned, told by its item: details `edges` = finished (chamfered or textured: a saw side may never
// show; the default for units) or sawn, and `face` = plain or directional.
struct Cutting {
  bool finished_edges = true;
  bool directional = false;
  bool square = false;
  double kerf = 0;  // steps
};
Cutting cutting(const catalogue::Item& item, units::Length kerf);

// One needed piece of one kind of unit, reduced to what the saw must know.
struct Need {
  double along = 0;      // steps: size of the piece across a straight cut right through the unit (its length measured from the finished end that it keeps)
  double whole = 0;      // steps: the unit's size that way
  bool straight = false; // one straight cut right across, square or oblique: its other half may serve
  double slope = 0;      // of an oblique cut: run over the unit's width, signed; 0 is square
  bool lengthwise = false;  // the cut runs along the long side (a rip)
  bool turned = false;
};
Need need(const Layout& layout, const Piece& piece);

struct Bought {
  std::int64_t pieces = 0;         // cut pieces needed
  std::int64_t units = 0;          // whole units bought for them
  std::int64_t from_offcuts = 0;   // pieces - units
  std::int64_t bound = 0;          // proven: no plan can do with fewer under the same rule
};
// At most two pieces a unit with finished edges, a + kerf + b <= L, by sorting and pairing the largest with the smallest that fit: exact.
// A piece with a finished end on both sides, a notch, or under the sliver limit is never an offcut's client or source beyond itself.
Bought bought_for_cuts(const std::vector<Need>& needs, const Cutting& cutting, plan::Reuse reuse);

}  // namespace takeoff::paving
