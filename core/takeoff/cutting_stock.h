// Pieces out of stock lengths: pipe, edging, bars, rolls, sawn-edge units and hidden cuts.
#pragma once

#include <vector>

#include "units/length.h"

namespace takeoff {

struct StockPlan {
  int bought = 0;  // stock pieces
  int bound = 0;   // proven: no plan can do with fewer
  std::vector<std::vector<std::size_t>>
      cuts;  // per stock piece, the numbers of the demanded pieces cut from it, longest first
  bool exact() const { return bought == bound; }
};

// One dimension, one stock length, kerf between pieces (none at the ends). Every demand must fit the stock; longer ones
// are the caller's to split (joints at the stock's ends). First the longest-first rule with its proven bound beside it
// (the larger of total length and the dual-feasible bound of pieces over half). Where they differ: the linear bound and
// its patterns rounded down (cutting_patterns.h), what they leave searched; and where there are at most 60 demands an
// exact search, with a bound on its steps, the same result on every machine. Demands of 0 cost nothing.
StockPlan cutting_stock(const std::vector<units::Length>& demands, units::Length stock, units::Length kerf);

}  // namespace takeoff
