// In how many loads the goods come. A supplier charges each load, not each customer.
#pragma once

#include <vector>

#include "estimate/estimate.h"

namespace estimate {

// Goods that come together: what one supplier sends for one stage in one kind of truck.
struct Visit {
  enum class Kind { bulk, ready_mix, pallets, small };
  takeoff::Stage stage;
  plan::Id supplier;
  Kind kind = Kind::small;
  std::string what;                // English: a material, "7 pallets", "small goods"
  std::vector<std::size_t> lines;  // numbers of the order lines
  double pallets = 0;
  std::optional<takeoff::Working> weight;  // kg, of what is known; nothing: of none
  std::optional<takeoff::Working> loose;   // m3, of bulk and ready-mix
  plan::Id truck;                          // whose limits the loads are counted by; empty: not an item of the job
  takeoff::Working loads;
  bool rides = false;  // small goods that come with the same supplier's pallets: no load of their own
};
// Of all goods among the order lines (no work, machines, trucks, fees, deposits, subcontracts; nothing that others
// supply), by stage, then supplier. The loads are those that `deliveries` charges.
std::vector<Visit> visits(const plan::Job& job, const std::vector<OrderLine>& lines);

// One line for each supplier with a delivery charge of whom something is bought, item "delivery:" and his id, in the
// stage where he is first needed; the working adds up the loads, each part named by what it brings and when:
// - stone, sand and soil: for each material and stage by the job's truck, the greater of loose volume / body and
//   weight / payload, rounded up; two materials never share a body. Without a truck whose limits are known: one load;
// - ready-mix: by the mixer (detail load_cu_yd; 10 cu yd is common practice);
// - what stands on pallets: for each stage by flatbed, the greater of weight / payload and pallets / places, rounded up
//   (truck-flat of the job's catalogue, its details weight_limit_ton and pallet_places; else 12 short tons, 10 places);
// - small goods ride with the supplier's pallets; a supplier that sends none brings them in one drop.
// Goods by others bring no charges.
std::vector<OrderLine> deliveries(const plan::Job& job, const std::vector<OrderLine>& material);

}  // namespace estimate
