// The elevation of a wall as a drawing to print: stations under it, levels at its ends, layers with their lengths.
#pragma once

#include "sheets/printed.h"
#include "sheets/wall_elevation.h"

namespace sheets {

Drawing elevation_drawing(const Printed& printed, const plan::ElementId& wall, const WallElevation& elevation);

}  // namespace sheets
