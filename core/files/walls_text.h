// What stands up, on the text sheet: its preliminary checks, the cuts that the saw has to make, and from which end
// places along a wall are measured.
#pragma once

#include <string>

#include "results/results.h"

namespace files {

// A section each, with its heading; empty where there is nothing to say.
//
// Checks stand by element and stretch: first each with its value and limit, then how they were worked out, a part that
// several of them share only once. Cuts stand by element and item, equal ones in one row with all their places, in the
// order in which a fence is set: square ones first, then by angle, long pieces before short ones.
std::string checks_text(const results::Results& results);
std::string cuts_text(const results::Results& results);

// "places along it are measured from its start, the right end as you face it"; empty for anything but a wall that is to
// be built.
std::string start_of(const plan::Element& element);

}  // namespace files
