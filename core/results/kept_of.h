// What is kept of a job's results when a version of it is saved.
#pragma once

#include <string>

#include "estimate/kept.h"
#include "results/results.h"

namespace results {

// As estimate::kept, with all that the results have to say: the takeoff's problems too, problems before flags before
// notices, at most 1,000; and final only if all of it is.
estimate::Kept kept_of(const Results& results, std::string program);

}  // namespace results
