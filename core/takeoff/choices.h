// Whether what was chosen can be what it was chosen for.
#pragma once

#include "plan/site.h"
#include "takeoff/line.h"

namespace takeoff {

// An item of the wrong kind (a paving unit as joint filler or as coping), an edge that the drawing does not have, a
// junction that the table does not have, a taped area that is no area: each a problem of its element, so that no total
// is final on it. Items that the catalogue lacks are said by the trade that wants them.
std::vector<problem::Problem> wrong_choices(const plan::Job& job, const plan::Ground& ground);
std::vector<problem::Problem> wrong_choices(const plan::Job& job);  // of the job as a whole: truck, disposal

}  // namespace takeoff
