// First step of the Site: what each element takes of the ground, by itself.
#pragma once

#include "plan/site.h"

namespace plan {

// The drawing with its origins set: edges counted on from ring to ring, freeform rings as tangent arcs.
geometry::Drawn drawing(const DrawnShape& shape, std::uint64_t mark);
problem::Result<geometry::Path> path(const DrawnLine& line, std::uint64_t mark);

// The element's drawn region or path and its footprint: pool to the back of its coping, to the water's edge while it
// has none; wall its thickness (the depth of its block where none is typed), edge run its item's width, drain run the
// width that it shows. Faults and notices go into `problems`.
Ground footprint(const Job& job, const ElementPtr& element, std::vector<problem::Problem>& problems);

}  // namespace plan
