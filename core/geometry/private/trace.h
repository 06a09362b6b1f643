// From the points that GEOS gives back to edges: each segment of a result is led back to the edge it lies on.
#pragma once

#include <span>
#include <vector>

#include "geometry/outline.h"
#include "geometry/private/geos.h"

namespace geometry {

// An edge that a result can lie on, either way round.
struct Source {
  Curve curve;
  Origin origin;
};

std::vector<Source> sources(std::span<const Edge> ring);
std::vector<Source> sources(const Region& region);  // all its outlines, in order

// The region of these patches over their sources: chords of one source that follow each other are its curve again (whole,
// or a part of it about the true centre), and a corner between two sources of which one is an arc is put on their true
// meeting point when that lies within 2 mm. Where two sources lie on each other the earlier one counts. A vertex where
// the result touches itself stays where it is. What lies on no source gets straight edges of no origin.
// The region is valid: a polygon that would cross itself so (arcs closer to each other than the flattening) keeps its
// corners where GEOS put them, or, if that is not enough, its chords.
// Each ring begins at the edge of the earliest source, and rings and polygons come in that order.
Region traced(std::span<const geos::Patch> patches, std::span<const Source> sources);

}  // namespace geometry
