// Work that comes with a job or with its pallets, not with what is laid.
#pragma once

#include <vector>

#include "estimate/estimate.h"

namespace estimate {

// Where an element of the job has a line or a task:
// - each of the rates set-out, protect and clean-up that the catalogue has per job, once;
// - the rates pallet-unload and pallet-carry, for every pallet under `material` (by others too: someone carries it).
// Each stands in the stage that its rate names. A rate that the takeoff already asks for is left to it.
std::vector<takeoff::Task> set_ups(const plan::Job& job, const takeoff::Takeoff& takeoff,
                                   const std::vector<OrderLine>& material);

}  // namespace estimate
