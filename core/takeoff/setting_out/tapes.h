// Tapes and offsets: the plain geometry of setting out, knowing no job. Metres, or any one unit throughout.
#pragma once

#include <array>
#include <optional>
#include <span>

#include "problem/problem.h"

namespace takeoff::setting_out {

using problem::Xy;

// Where a tape of `to_a` from `a` meets one of `to_b` from `b`: first the place left of the line from `a` to `b`, then
// the one right of it (the same where the tapes just reach). Nothing where they don't meet: a tape too short, one
// circle inside the other, both ends at one place, a length below 0. Tapes that miss each other by rounding meet on the
// line.
std::optional<std::array<Xy, 2>> two_tapes(Xy a, double to_a, Xy b, double to_b);

// The angle between two tapes at `at`, folded to 0..90 degrees: near 0 they run along each other, and a small slip of
// one of them moves the place far.
double crossing_degrees(Xy a, Xy b, Xy at);

// Along the line from `a` to `b` and out from it, left positive.
struct Station {
  double along = 0;
  double out = 0;
};
Station station(Xy a, Xy b, Xy at);

// Ground between a line and offsets from it, equally spaced. Simpson's third takes an odd number of offsets; a strip
// left over is taken as a trapezium at the end. Fewer than two offsets have no area.
struct OffsetArea {
  double trapezoid = 0;
  double simpson = 0;
};
OffsetArea area_by_offsets(double spacing, std::span<const double> offsets);

}  // namespace takeoff::setting_out
