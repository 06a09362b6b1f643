// A change order for printing and signing.
#pragma once

#include <string>

#include "estimate/change_order.h"

namespace files {

// Plain text as the takeoff: who asked, why, what comes and goes line by line with its working, overhead, profit and
// tax, what the contract and its days come to, what is still to be mended, and the place for both signatures. Amounts
// in the last column: those of the lines and of the steps on top add up to the sum of the order. `quote` is the job
// that the order was made of.
std::string change_order_text(const plan::Job& quote, const estimate::ChangeOrder& order);

}  // namespace files
