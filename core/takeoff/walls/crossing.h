// Does a line meet itself?
#pragma once

#include <optional>

#include "geometry/outline.h"

namespace takeoff::walls {

// A place where the path crosses or touches itself, or turns straight back on itself; its two ends may meet (a closed
// path). Judged over chords within 2 mm of its arcs: no wall comes that near to itself.
std::optional<problem::Xy> crossing(const geometry::Path& path);

}  // namespace takeoff::walls
