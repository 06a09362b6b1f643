// The whole chain: job -> site -> takeoff -> estimate. A pure function.
#pragma once

#include <memory>

#include "estimate/priced.h"
#include "plan/job.h"
#include "plan/site.h"
#include "takeoff/takeoff.h"

namespace results {

struct Results {
  std::shared_ptr<const plan::Job> job;  // the value that they belong to
  plan::Site site;
  takeoff::Takeoff takeoff;
  estimate::Estimate estimate;
  estimate::Priced priced;
  std::vector<problem::Problem> problems() const;  // takeoff's, estimate's, the price's: problems, flags, notices
  bool final() const;                              // no line without a price, nothing with a problem
};

Results compute(std::shared_ptr<const plan::Job> job);
// The same, taking over from the last time what an edit did not touch, and leaving it for the next.
using takeoff::Memory;
Results compute(std::shared_ptr<const plan::Job> job, Memory& memory);

}  // namespace results
