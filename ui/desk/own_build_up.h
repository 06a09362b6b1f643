// A build-up belongs to the catalogue and means the same wherever it lies. A layer that is changed in one place is
// changed there only: what lies there gets a build-up of its own in the job's catalogue, "hybrid-foot-of-a1", named
// "... of A1". A build-up of one's own that nothing else uses is changed in place; where it has been taken over by
// something else too (a copied area), whoever changes it gets a new one, and the other keeps what it has.
#pragma once

#include <functional>
#include <vector>

#include "plan/job.h"

namespace ui {

// The build-ups that an element lies on: of an area, steps, a pillar, a wall's base, a run's trench. Where an element
// can have one but has none chosen its id is empty; of all other kinds null.
const plan::Id* build_up_of(const plan::Element& element);

std::vector<plan::ElementId> users_of(const plan::Job& job, const plan::Id& build_up);  // in the job's order

// The job with a layer (counted from 0 at the top) of what lies under `element` changed. As before where there is no
// such element, build-up or layer, or where the change changes nothing.
plan::Job with_layer(const plan::Job& job, const plan::ElementId& element, std::size_t layer,
                     const std::function<void(catalogue::Layer&)>& change);

// The same for the whole build-up: layers put in, taken out.
plan::Job with_layers(const plan::Job& job, const plan::ElementId& element,
                      const std::function<void(std::vector<catalogue::Layer>&)>& change);

}  // namespace ui
