// A surface that falls away from one or more edges: the pool deck's usual form.
#pragma once

#include "takeoff/levels/finish.h"

namespace takeoff::levels {

// Over `pieces` of the area's net ground. A source that can't be used is a problem among the others' surface; with none
// left, the fault of the first.
problem::Result<Finished> falls_from(const plan::Job& job, const plan::Site& site, const plan::Ground& ground,
                                     const geometry::Surface& pieces);

}  // namespace takeoff::levels
