// Mixed packs: several sizes of one pattern on one pallet.
#pragma once

#include <optional>
#include <vector>

#include "estimate/estimate.h"
#include "estimate/packs.h"

namespace estimate {

// One size: whole pieces needed (breakage included), what one pack brings of it, and how it is sold by itself. Without
// a `single_coins` it can only come out of packs.
struct SizeNeed {
  double needed = 0;
  int in_pack = 1;
  std::optional<double> single_coins;  // price of one piece
  double single_lot = 1;               // pieces that are sold at once
};

struct Mix {
  int packs = 0;
  std::vector<double> singles;  // pieces bought one by one, size by size
  std::vector<double> left;     // what is over of each size
  double coins = 0;             // 0 where the pack has no price
};

// As many packs as the size that runs out first asks for.
Mix packs_alone(const std::vector<SizeNeed>& sizes, std::optional<double> pack_coins);

// Least price, then least left over: every count of packs from 0 to that of packs_alone is tried, the rest of each size
// bought by itself. Nothing without a price of the pack.
std::optional<Mix> cheapest_mix(const std::vector<SizeNeed>& sizes, std::optional<double> pack_coins);

// Pieces of one size that are bought beside the packs, or in their place: breakage is in them already.
struct Single {
  plan::Id item;
  Part part;
  std::string note;  // for the sentence of the line that they are ordered with
};

// Lines that are drawn into mixed packs, and what is ordered in their place.
struct MixedOrder {
  std::vector<std::size_t> from;  // numbers of the takeoff's lines, ascending
  takeoff::Stage stage;
  std::vector<plan::ElementId> of;
  bool approximate = false;
  std::optional<OrderLine> line;  // nothing: single pieces cost less than any packs
  std::vector<Single> singles;    // to be ordered with other pieces of that item and stage, rounded once
};

// For each mixed pack of the job's catalogue: the areas laid with just the sizes that it holds, stage by stage. A
// border or another area that uses one of the sizes alone stays with the single item. Ordered is what costs least
// (cheapest_mix), packs alone where a price is missing; the sentence says what whole packs alone would be.
std::vector<MixedOrder> mixed_packs(const plan::Job& job, const takeoff::Takeoff& takeoff,
                                    std::vector<problem::Problem>& problems);

}  // namespace estimate
