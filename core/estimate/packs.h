// From what is needed of an item to what is bought of it.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "catalogue/item.h"
#include "problem/problem.h"
#include "takeoff/working.h"

namespace estimate {

// A part of what is needed, and the share that is added to it; without one the item's breakage.
struct Part {
  takeoff::Working net;
  std::optional<double> allowance;
};

// Net x (1 + allowance) in item.unit, not rounded: parts of one allowance together, each allowance a term. Parts must
// be of like units. "unit-unknown" as in_own_unit says.
problem::Result<takeoff::Working> with_allowance(const std::vector<Part>& parts, const catalogue::Item& item,
                                                 double day_hours);

// The least that can be bought more of: a layer of 45, half a cubic yard of ready-mix (common practice), one piece. The
// detail order_step (in item.unit) stands over all else.
struct Lot {
  double size = 1;   // in item.unit
  std::string word;  // layer, pack; empty: the unit itself
  std::string of;    // the field that says so
};
Lot lot(const catalogue::Item& item);

struct Bought {
  takeoff::Working working;
  std::string sentence;  // "675 pieces: 641 needed, 661 with 3 % on top, bought as 15 layers of 45"
  double needed = 0;     // in item.unit: net, with the shares on top, and kept for repairs
  double with_shares = 0;
  double spare = 0;
  double quantity() const { return working.amount().value; }  // in item.unit
};

// (whole + stock for cuts) x (1 + breakage), rounded up to pieces, spare units for repairs on top
// (`attic_share` of the net, rounded up by itself), rounded up to the lot, at least the least order (detail
// least_order, or least_order_ton and least_order_cu_yd of what is bought by them).
problem::Result<Bought> buy(const std::vector<Part>& parts, const catalogue::Item& item, double day_hours,
                            double attic_share = 0);

}  // namespace estimate
