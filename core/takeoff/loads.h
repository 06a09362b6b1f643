// Truck loads by the tighter of volume and weight.
#pragma once

#include "catalogue/item.h"
#include "problem/problem.h"
#include "takeoff/working.h"

namespace takeoff {

// greatest(up(loose volume / body), up(weight / payload)) of one truck, from its details volume_limit_cu_yd and
// weight_limit_ton (short tons); a truck that names only one limit is held to that one. `loose` in m3, `weight` in kg.
// "truck-limits" where it names neither.
problem::Result<Working> loads(Working loose, Working weight, const catalogue::Item& truck);

}  // namespace takeoff
