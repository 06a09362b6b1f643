// In how many loads the goods come. A supplier charges each load, not each customer.
#pragma once

#include <vector>

#include "estimate/estimate.h"

namespace estimate {

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
