// Outlines and lines through points that were found with the tape.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "sketch/taped.h"

namespace sketch {

// One point to draw through. `arc`: the edge from the point before to the point after is an arc through this one, which
// is no corner then.
struct Through {
  std::string name;
  bool arc = false;
  bool operator==(const Through&) const = default;
};

// "A, B, (C), D": names apart by commas, or by spaces where there is no comma; in brackets those that an arc goes
// through.
std::vector<Through> read_through(std::string_view text);

// Closed: three corners at least (two with an arc), counter-clockwise. Open: two. `freeform`: a smooth curve through
// all of them instead (brackets mean nothing then). A name that is not found, a corner twice in a row, two arcs' points
// side by side, or an open line that begins or ends with one, is a Problem.
problem::Result<plan::DrawnRing> ring_through(const Measured& measured, std::span<const Through> names,
                                              bool freeform = false);
problem::Result<plan::DrawnLine> line_through(const Measured& measured, std::span<const Through> names,
                                              bool freeform = false);

}  // namespace sketch
