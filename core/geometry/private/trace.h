// From the points that GEOS gives back to edges: each segment of a result is led back to the edge it lies on.
#pragma once

#include <span>
#include <vector>

#include "geometry/outline.h"
#include "geometry/private/geos.h"
#include "geometry/private/match.h"

namespace geometry {

// The region of these patches over their sources: chords of one source that follow each other are its curve again
// (whole, or a part of it about the true centre), and a corner between two sources of which one is an arc is put on
// their true meeting point when that lies within 2 mm. Where two sources lie on each other the earlier one counts. A
// vertex where the result touches itself stays where it is. What lies on no source gets straight edges of no origin.
// The region is valid: where curves put back would cross (arcs closer to each other than the flattening), the edges
// within a millimetre or so keep their chords and their corners. Each ring begins at the edge of the earliest source,
// and rings and polygons come in that order.
Region traced(std::span<const geos::Patch> patches, std::span<const Source> sources);

}  // namespace geometry
