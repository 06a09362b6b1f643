// Outlines that somebody else drew, to lie under the plan as a picture does.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "plan/drawn.h"

namespace files {

// Everything that a GeoJSON or DXF file draws, as lines (outlines as closed ones) in true size on the grid; points are
// not shown. The origin is the file's own, or the first position where that lies more than 5 km away or the file has
// longitude and latitude. Which of the two forms it is, the name's ending says: .dxf, or anything else for GeoJSON.
// `units` and faults are those of the import; a file that draws no line is refused too (outlines-none).
problem::Result<std::vector<plan::DrawnLine>> outlines_of(std::string_view text, const std::string& name,
                                                          std::string_view units);

// Whether the file's name ends in .dxf, in letters of any size.
bool is_dxf(const std::string& name);

}  // namespace files
