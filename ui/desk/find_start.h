// A better start point for one area's pattern, found by trying thousands.
#pragma once

#include <functional>

#include "takeoff/paving/start.h"
#include "ui/desk/laid_numbers.h"

namespace ui {

struct FoundStart {
  plan::Job after;  // the job with the start moved; as it was where nothing is better
  LaidNumbers was;
  LaidNumbers is;
  double worst_was = 0;  // metres: least cut width with all edges wrong by up to the job's tolerance; only For::site
  double worst_is = 0;
  bool better = false;
};

// `goes_on` is told the share that is done and says whether to go on; stopped, the best so far is given.
using GoesOn = std::function<bool(double share)>;
problem::Result<FoundStart> find_start(const plan::Job& job, const plan::ElementId& area, takeoff::paving::For what,
                                       int tries = 2000, const GoesOn& goes_on = {});

}  // namespace ui
