// What is paid beside the goods: bringing them, and the pallets that they stand on.
#pragma once

#include <vector>

#include "estimate/estimate.h"

namespace estimate {

// After the material lines they belong to:
// - the deliveries, a line for each supplier;
// - the short loads of ready-mix, a line for each order;
// - for the pallets that stand under what the deposit's supplier sends (whole ones for each line), the deposit as a
// charge
//   and as a credit, both in the stage where the first is used. Items: of kind deposit, and of kind credit if there is
//   one of that supplier; otherwise the deposit is given back at what it cost.
// Goods by others bring no charges.
std::vector<OrderLine> charges(const plan::Job& job, const std::vector<OrderLine>& material);

// Pallets that one line brings, a part one whole; 0 where the item comes on none, and for bags that fill not one: those
// are carried by hand.
double pallets(const catalogue::Item& item, double order_quantity);

}  // namespace estimate
