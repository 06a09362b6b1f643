// How much of what is bought is not laid: cut off, broken, kept for repairs, over from packs; and what that costs.
#pragma once

#include <vector>

#include "estimate/estimate.h"

namespace estimate {

struct WastePart {
  double quantity = 0;  // in the unit of the waste
  units::Money money;
};

// Of one material line. The parts add up to its order quantity, and their money to its amount, to the coin.
struct Waste {
  std::size_t line = 0;  // number in the estimate
  std::string unit;      // the line's order_unit; of a mixed pack: piece
  WastePart laid;        // placed, laid, used
  WastePart cuts;        // cut off laid units and not used elsewhere: paved fields, borders count as laid
  WastePart broken;      // breakage and other shares on top
  WastePart spare;       // kept for repairs
  WastePart rounded;     // whole pieces, layers, packs, the least order
};

struct WasteTotals {
  units::Money laid, cuts, broken, spare, rounded;
  units::Money all() const { return laid + cuts + broken + spare + rounded; }
};

// One for each priced line of material out of the catalogue, in their order. Where it is not known how a quantity came
// about all of it counts as laid.
std::vector<Waste> waste(const plan::Job& job, const takeoff::Takeoff& takeoff, const Estimate& estimate);
WasteTotals totals(const std::vector<Waste>& all);

}  // namespace estimate
