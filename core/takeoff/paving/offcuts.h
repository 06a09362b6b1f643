// Which offcut serves which piece, and how many units are bought for cuts.
#pragma once

#include <map>
#include <vector>

#include "plan/job.h"
#include "takeoff/paving/layout.h"

namespace takeoff::paving {

// How a unit may be cut and turned, told by its item: details `edges` = finished (chamfered or textured: a saw side
// may never show; the default for units) or sawn, and `face` = plain or directional.
struct Cutting {
  bool finished_edges = true;
  bool directional = false;
  bool square = false;
  double kerf = 0;  // steps
};
Cutting cutting(const catalogue::Item& item, units::Length kerf);

// One needed piece of one kind of unit, reduced to what the saw must know. Sizes are in steps, in the unit's own
// frame: along its long side for a cut across it, along its short side for a rip.
struct Need {
  double along = 0;         // how far the piece reaches from the finished end that it keeps
  double whole = 0;         // the unit's size that way
  bool straight = false;    // it keeps one end: the rest of its unit may serve another, or the other way round;
                            // an end that is scribed or cut more than once counts by its furthest reach
  double slope = 0;         // of one straight oblique cut: run over the unit's other size, signed; 0 is square
  double middle = 0;        // reach of that cut at the middle of the unit; `along` where it is square
  bool lengthwise = false;  // the cut runs along the long side (a rip)
  bool turned = false;      // it keeps the far end: in place, its unit shows the other end than one that is not turned
};
Need need(const Layout& layout, const Piece& piece);

struct Bought {
  std::int64_t pieces = 0;        // cut pieces needed
  std::int64_t units = 0;         // whole units bought for them
  std::int64_t from_offcuts = 0;  // pieces - units
  std::int64_t bound = 0;         // proven: no plan can do with fewer under the same rule
};
// Finished edges: at most two pieces a unit, a + kerf + b <= L, by sorting and pairing the largest with the smallest
// that fit: exact where all cuts are square or all have one slope. Two oblique cuts of the same slope pair by their
// middles (the other half, turned by 180 degrees, serves the same edge), other shapes by their furthest reach; both
// orders are tried and the better one holds. A directional unit pairs pieces of opposite ends only, a square one
// without direction pairs rips with cuts. Sawn edges: cutting_stock. A piece that is not `straight` is never an
// offcut's client or source.
Bought bought_for_cuts(const std::vector<Need>& needs, const Cutting& cutting, plan::Reuse reuse);

// What all cut pieces need, item by item; several layouts may be put together where offcuts may travel (Reuse::job).
using Needs = std::map<Id, std::vector<Need>>;
void add_needs(Needs& needs, const Layout& layout);

}  // namespace takeoff::paving
