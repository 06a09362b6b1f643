#include "geometry/private/geos.h"

#include <algorithm>
#include <cmath>

#include "geometry/flatten.h"
#include "problem/ensure.h"

namespace geometry::geos {

namespace {

struct Context {
  GEOSContextHandle_t handle = GEOS_init_r();
  std::string complaint;

  Context() {
    problem::ensure(handle != nullptr, "GEOS starts");
    GEOSContext_setErrorMessageHandler_r(
        handle, [](const char* text, void* self) { static_cast<Context*>(self)->complaint = text; }, this);
    GEOSContext_setNoticeMessageHandler_r(handle, [](const char*, void*) {}, nullptr);
  }
  ~Context() { GEOS_finish_r(handle); }
  Context(const Context&) = delete;
  Context& operator=(const Context&) = delete;
};

Context& mine() {
  thread_local Context context;
  return context;
}

GEOSCoordSequence* closed_sequence(const Loop& loop, Point origin) {
  std::vector<double> numbers;
  numbers.reserve(2 * loop.size() + 2);
  const auto add = [&](Point p) {
    const Vec v = p - origin;
    numbers.push_back(v.x);
    numbers.push_back(v.y);
  };
  for (const Point p : loop) add(p);
  add(loop.front());
  const auto count = static_cast<unsigned>(loop.size() + 1);
  GEOSCoordSequence* made = GEOSCoordSeq_copyFromBuffer_r(context(), numbers.data(), count, 0, 0);
  problem::ensure(made != nullptr, "GEOS has memory for points");
  return made;
}

GEOSGeometry* linear_ring(const Loop& loop, Point origin) {
  GEOSGeometry* ring = GEOSGeom_createLinearRing_r(context(), closed_sequence(loop, origin));
  problem::ensure(ring != nullptr, "a ring has at least three points");
  return ring;
}

bool counter_clockwise(const Loop& loop) {
  double twice = 0;
  for (std::size_t i = 0; i < loop.size(); ++i) {
    twice += cross(loop[i] - loop[0], loop[(i + 1) % loop.size()] - loop[0]);
  }
  return twice > 0;
}

Loop read_ring(const GEOSGeometry* ring, Point origin, bool wanted_counter_clockwise) {
  const GEOSCoordSequence* sequence = GEOSGeom_getCoordSeq_r(context(), ring);
  unsigned count = 0;
  GEOSCoordSeq_getSize_r(context(), sequence, &count);
  std::vector<double> numbers(2 * std::size_t{count});
  GEOSCoordSeq_copyToBuffer_r(context(), sequence, numbers.data(), 0, 0);
  Loop loop;
  for (std::size_t i = 0; i + 1 < count; ++i) {
    const Point p = moved(origin, {numbers[2 * i], numbers[2 * i + 1]});
    if (loop.empty() || loop.back() != p) loop.push_back(p);
  }
  while (loop.size() > 1 && loop.back() == loop.front()) loop.pop_back();
  if (counter_clockwise(loop) != wanted_counter_clockwise) std::reverse(loop.begin(), loop.end());
  return loop;
}

Patch read_polygon(const GEOSGeometry* polygon, Point origin) {
  Patch patch{read_ring(GEOSGetExteriorRing_r(context(), polygon), origin, true), {}};
  const int holes = GEOSGetNumInteriorRings_r(context(), polygon);
  for (int h = 0; h < holes; ++h) {
    Loop hole = read_ring(GEOSGetInteriorRingN_r(context(), polygon, h), origin, false);
    if (hole.size() >= 3) patch.holes.push_back(std::move(hole));
  }
  return patch;
}

}  // namespace

GEOSContextHandle_t context() { return mine().handle; }

std::string complaint() { return mine().complaint; }

void Free::operator()(GEOSGeometry* geometry) const { GEOSGeom_destroy_r(context(), geometry); }

std::vector<Patch> flattened(const Region& region) {
  std::vector<Patch> flat;
  for (const Polygon& polygon : region.polygons()) {
    Patch patch{flatten(polygon.outer.edges()), {}};
    if (patch.outer.size() < 3) continue;
    for (const Outline& hole : polygon.holes) {
      Loop loop = flatten(hole.edges());
      if (loop.size() >= 3) patch.holes.push_back(std::move(loop));
    }
    flat.push_back(std::move(patch));
  }
  return flat;
}

Geometry multipolygon(std::span<const Patch> patches, Point origin) {
  std::vector<GEOSGeometry*> polygons;
  for (const Patch& patch : patches) {
    std::vector<GEOSGeometry*> holes;
    for (const Loop& hole : patch.holes) holes.push_back(linear_ring(hole, origin));
    polygons.push_back(GEOSGeom_createPolygon_r(context(), linear_ring(patch.outer, origin), holes.data(),
                                                static_cast<unsigned>(holes.size())));
  }
  Geometry made(GEOSGeom_createCollection_r(context(), GEOS_MULTIPOLYGON, polygons.data(),
                                            static_cast<unsigned>(polygons.size())));
  problem::ensure(made != nullptr, "GEOS has memory for polygons");
  return made;
}

Geometry closed_line(const Loop& loop, Point origin) {
  Geometry line(GEOSGeom_createLineString_r(context(), closed_sequence(loop, origin)));
  problem::ensure(line != nullptr, "GEOS has memory for a line");
  return line;
}

std::vector<Patch> patches(const GEOSGeometry& geometry, Point origin) {
  if (GEOSGeomTypeId_r(context(), &geometry) == GEOS_POLYGON) {
    if (GEOSisEmpty_r(context(), &geometry) != 0) return {};
    Patch patch = read_polygon(&geometry, origin);
    if (patch.outer.size() < 3) return {};
    return {std::move(patch)};
  }
  std::vector<Patch> all;
  if (GEOSGeomTypeId_r(context(), &geometry) < GEOS_MULTIPOINT) return all;
  const int parts = GEOSGetNumGeometries_r(context(), &geometry);
  for (int i = 0; i < parts; ++i) {
    for (Patch& patch : patches(*GEOSGetGeometryN_r(context(), &geometry, i), origin)) all.push_back(std::move(patch));
  }
  return all;
}

problem::Result<Geometry> made(GEOSGeometry* geometry, Point place) {
  if (geometry != nullptr) return Geometry(geometry);
  return problem::fault("overlay-failed", "these outlines could not be overlaid (" + complaint() + ")",
                        "move one of the outlines that lie over each other here a little",
                        {.element = {}, .file = {}, .at = xy(place)});
}

double area(const GEOSGeometry& geometry) {
  double found = 0;
  problem::ensure(GEOSArea_r(context(), &geometry, &found) == 1, "GEOS can tell an area");
  return found;
}

double length(const GEOSGeometry& geometry) {
  double found = 0;
  problem::ensure(GEOSLength_r(context(), &geometry, &found) == 1, "GEOS can tell a length");
  return found;
}

std::optional<Vec> fault_of(const GEOSGeometry& geometry) {
  char* reason = nullptr;
  GEOSGeometry* place = nullptr;
  const char answer = GEOSisValidDetail_r(context(), &geometry, 0, &reason, &place);
  const Geometry freed(place);
  if (reason != nullptr) GEOSFree_r(context(), reason);
  if (answer == 1) return std::nullopt;
  Vec at;
  if (place != nullptr) {
    GEOSGeomGetX_r(context(), place, &at.x);
    GEOSGeomGetY_r(context(), place, &at.y);
  }
  return at;
}

bool valid(std::span<const Patch> patches) {
  if (patches.empty()) return true;
  return GEOSisValid_r(context(), multipolygon(patches, patches.front().outer.front()).get()) == 1;
}

}  // namespace geometry::geos
