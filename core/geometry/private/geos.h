// GEOS behind values: one context a thread, geometries that free themselves, coordinates as whole steps from a local
// grid point, failures as Problems. Only for geometry's own .cpp files and their tests.
#pragma once

#define GEOS_USE_ONLY_R_API
#include <geos_c.h>

#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "geometry/outline.h"

namespace geometry::geos {

// This thread's context; it lives as long as the thread.
GEOSContextHandle_t context();

// What GEOS complained of last on this thread; empty when it did not.
std::string complaint();

struct Free {
  void operator()(GEOSGeometry* geometry) const;
};
using Geometry = std::unique_ptr<GEOSGeometry, Free>;

// A closed ring of points, each once. A patch is a polygon of such rings.
using Loop = std::vector<Point>;
struct Patch {
  Loop outer;
  std::vector<Loop> holes;
  bool operator==(const Patch&) const = default;
};

// The region's arcs as chords within `flattening`, polygon by polygon. Rings of fewer than three points are gone.
std::vector<Patch> flattened(const Region& region);

// A multipolygon with coordinates in steps from `origin`. Null never: out of memory ends the program.
Geometry multipolygon(std::span<const Patch> patches, Point origin);

// A closed line through the loop's points, in steps from `origin`.
Geometry closed_line(const Loop& loop, Point origin);

// All polygons of a geometry (points and lines in it are left out), rounded to the grid; the outside runs
// counter-clockwise, holes clockwise.
std::vector<Patch> patches(const GEOSGeometry& geometry, Point origin);

// The geometry, or a Problem "overlay-failed" at the place when GEOS gave none.
problem::Result<Geometry> made(GEOSGeometry* geometry, Point place);

double area(const GEOSGeometry& geometry);    // square steps
double length(const GEOSGeometry& geometry);  // steps; of polygons the perimeter

// Nothing when valid, else the place of the fault in steps from the geometry's own origin.
std::optional<Vec> fault_of(const GEOSGeometry& geometry);

// Whether these patches together make a valid multipolygon.
bool valid(std::span<const Patch> patches);

}  // namespace geometry::geos
