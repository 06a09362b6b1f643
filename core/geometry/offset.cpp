#include "geometry/offset.h"

#include <algorithm>

#include "geometry/flatten.h"
#include "geometry/private/geos.h"
#include "geometry/private/offset_trace.h"
#include "geometry/private/shapes.h"
#include "problem/ensure.h"

namespace geometry {

namespace {

struct FreeParams {
  void operator()(GEOSBufferParams* params) const { GEOSBufferParams_destroy_r(geos::context(), params); }
};

geos::Geometry fine(const Region& region, Point origin) {
  std::vector<geos::Patch> patches;
  for (const Polygon& polygon : region.polygons()) {
    geos::Patch patch{flatten(polygon.outer.edges(), offset_flattening), {}};
    for (const Outline& hole : polygon.holes) patch.holes.push_back(flatten(hole.edges(), offset_flattening));
    patches.push_back(std::move(patch));
  }
  return geos::multipolygon(patches, origin);
}

problem::Result<geos::Geometry> buffered(const Region& region, Point origin, double out, Corner corner, double limit) {
  constexpr int chords_of_a_quarter = 64;
  const std::unique_ptr<GEOSBufferParams, FreeParams> params(GEOSBufferParams_create_r(geos::context()));
  problem::ensure(params != nullptr, "GEOS has memory for a buffer's style");
  GEOSBufferParams_setQuadrantSegments_r(geos::context(), params.get(), chords_of_a_quarter);
  const int join = corner == Corner::mitred ? GEOSBUF_JOIN_MITRE : GEOSBUF_JOIN_ROUND;
  GEOSBufferParams_setJoinStyle_r(geos::context(), params.get(), join);
  GEOSBufferParams_setMitreLimit_r(geos::context(), params.get(), limit);
  return geos::made(GEOSBufferWithParams_r(geos::context(), fine(region, origin).get(), params.get(), out), origin);
}

bool has_area(const Ring& ring) {
  if (ring.size() < 2) return false;
  return std::abs(signed_area(ring).si()) * units::Length::steps_per_metre * units::Length::steps_per_metre >= 1;
}

// A region of the loops, each led back by `lead`.
template <class Lead>
Region assembled(const std::vector<geos::Patch>& patches, Lead lead) {
  std::vector<std::pair<std::size_t, Polygon>> ranked;
  for (const geos::Patch& patch : patches) {
    OffsetTrace::Traced outer = lead(patch.outer);
    if (!has_area(outer.ring)) continue;
    Polygon polygon{Shapes::outline(std::move(outer.ring)), {}};
    std::vector<std::pair<std::size_t, Ring>> holes;
    for (const geos::Loop& loop : patch.holes) {
      OffsetTrace::Traced hole = lead(loop);
      if (has_area(hole.ring)) holes.emplace_back(hole.rank, std::move(hole.ring));
    }
    std::ranges::stable_sort(holes, {}, [](const auto& hole) { return hole.first; });
    for (auto& [rank, ring] : holes) polygon.holes.push_back(Shapes::outline(std::move(ring)));
    ranked.emplace_back(outer.rank, std::move(polygon));
  }
  std::ranges::stable_sort(ranked, {}, [](const auto& polygon) { return polygon.first; });
  std::vector<Polygon> polygons;
  for (auto& [rank, polygon] : ranked) polygons.push_back(std::move(polygon));
  return Shapes::region(std::move(polygons));
}

// Each ring still the way round that it was, and nothing crossing once it is in chords.
bool sound(const Region& region) {
  for (const Polygon& polygon : region.polygons()) {
    if (polygon.outer.signed_area().si() <= 0) return false;
    for (const Outline& hole : polygon.holes) {
      if (hole.signed_area().si() >= 0) return false;
    }
  }
  return geos::valid(geos::flattened(region));
}

}  // namespace

problem::Result<Region> offset(const Region& region, units::Length out, Corner corner, double limit) {
  problem::ensure(limit >= 1, "a mitre is at least as long as its width");
  if (out == units::Length{} || region.empty()) return region;
  const Point origin = region.bounds().low;
  if (out > reach_of_plan || -out > reach_of_plan) {
    return problem::fault("offset-too-far", "An outline can't be moved further than the plan reaches.",
                          "Give a smaller width.", {.element = {}, .file = {}, .at = xy(origin)});
  }
  const double steps = static_cast<double>(out.steps());
  const auto buffer = buffered(region, origin, steps, corner, limit);
  if (!buffer) return std::unexpected(buffer.error());
  const OffsetTrace sources(region, origin, steps, corner, limit);
  const std::vector<geos::Patch> loops = geos::patches(**buffer, origin);
  Region exact = assembled(loops, [&](const geos::Loop& loop) { return sources.trace(loop); });
  if (sound(exact)) return exact;
  // Where the exact curves of a needle-thin place would cross, GEOS's own points stand, set to the grid by GEOS.
  const auto on_grid = geos::made(GEOSGeom_setPrecision_r(geos::context(), buffer->get(), 1, 0), origin);
  if (!on_grid) return std::unexpected(on_grid.error());
  return assembled(geos::patches(**on_grid, origin), [&](const geos::Loop& loop) { return sources.plain(loop); });
}

}  // namespace geometry
