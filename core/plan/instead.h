// The same job built otherwise, so that the two can be priced and compared: at the prices of another list, on another
// build-up, in another pattern. Pure functions; the job that is given stays as it is.
#pragma once

#include <functional>
#include <vector>

#include "plan/job.h"

namespace plan {

// Each item that both have at the price of `list`; an item that has no price there keeps its own. What an item is made
// of, its sizes and packs stay the job's: only prices change.
Job at_prices_of(const Job& job, const catalogue::Catalogue& list);

// Those of the areas on another build-up of the job's catalogue; all other elements stay.
Job on_build_up(const Job& job, const std::vector<ElementId>& areas, const Id& build_up);

// Those of the areas changed by `lay`, which picks pattern and units.
Job laid_instead(const Job& job, const std::vector<ElementId>& areas,
                 const std::function<PavedArea(const PavedArea&)>& lay);

}  // namespace plan
