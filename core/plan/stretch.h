// Third step of the Site: what each net edge faces.
#pragma once

#include "plan/site.h"

namespace plan {

// Fills `stretches` of every ground with a net (see site.h for the rule).
void meet(std::vector<Ground>& grounds, Length reach);

}  // namespace plan
