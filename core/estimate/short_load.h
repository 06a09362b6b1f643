// Ready-mix by the part load: the fee for what a load is short of, and bags in its place.
#pragma once

#include <string>
#include <vector>

#include "estimate/estimate.h"
#include "estimate/packs.h"

namespace estimate {

// For each order under the item's detail short_load_under_cu_yd one line "short-load:" and the item's id: the cubic
// yards short, at short_load_fee (in whole money, not coins) each. Items bought by the cu yd only; none by others.
std::vector<OrderLine> short_loads(const plan::Job& job, const std::vector<OrderLine>& material);

// What is said beside the order of ready-mix where the job's bagged concrete (kind concrete, id from conc-bag, a
// volume_l) would cost less than the ready-mix with its short load: how many bags, and both prices. Empty otherwise.
std::string cheaper_in_bags(const plan::Job& job, const OrderLine& ready_mix, const std::vector<Part>& parts);

}  // namespace estimate
