// Figures beside what is drawn.
#pragma once

#include <string>
#include <vector>

#include "geometry/edge.h"
#include "sketch/view.h"
#include "units/read_length.h"

namespace sketch {

// Beside the middle of the curve, turned with it so that it reads from below or from the right.
Chip length_chip(const geometry::Curve& curve, units::System system);
Chip radius_chip(const geometry::Curve& arc, units::System system);
// The angle between two edges that meet, 0 to 180 degrees, at their corner.
Chip corner_chip(const geometry::Curve& before, const geometry::Curve& after);
// In the middle of the corners of a closed ring.
Chip area_chip(const std::vector<geometry::Curve>& ring, units::System system);

std::string show_length(double steps, units::System system);
std::string show_area(double square_metres, units::System system);  // 250.0 ft2 with a raised 2, or 23.23 m2
double reading_turn(geometry::Vec along);                           // within a quarter turn either way

}  // namespace sketch
