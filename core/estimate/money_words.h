// Money and shares in words, exactly as they are reckoned with.
#pragma once

#include <string>

#include "plan/job.h"

namespace estimate {

// "84,210.00 USD"
std::string shown_money(units::Money money, const plan::Heading& heading);

// "7.42 %" of 0.0742, "12.345 %" of 0.12345: all its digits, so that who reckons it again gets the same.
std::string exact_percent(double share);

}  // namespace estimate
