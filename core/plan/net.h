// Second step of the Site: each element's footprint less what outranks it nearby.
#pragma once

#include "plan/site.h"

namespace plan {

// Fills `net` of every ground. Overlaps of paving, and paving that something covers wholly, go into `problems`.
void cut(std::vector<Ground>& grounds, std::vector<problem::Problem>& problems);

}  // namespace plan
