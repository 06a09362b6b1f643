// Whole numbers spread evenly over a range from the first case on. RapidCheck by itself starts at the low end of a
// range and reaches all of it with the last case only.
#pragma once

#include <rapidcheck.h>

template <class Number>
Number even(Number first, Number past_last) {
  return *rc::gen::resize(rc::kNominalSize, rc::gen::inRange<Number>(first, past_last));
}
