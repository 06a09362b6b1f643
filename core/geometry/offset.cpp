#include "geometry/offset.h"

#include <algorithm>

#include "geometry/flatten.h"
#include "geometry/private/geos.h"
#include "geometry/private/offset_trace.h"
#include "geometry/private/shapes.h"
#include "geometry/private/strips.h"
#include "problem/ensure.h"

namespace geometry {

namespace {

// Arcs as chords so fine that each place of them is found on the true curve again; finer still for tiny widths.
units::Length fine(double out) {
  return units::Length::of_steps(
      std::clamp<std::int64_t>(std::llround(std::abs(out) / 4), 1, offset_flattening.steps()));
}

geos::Geometry chords(const Region& region, Point origin, units::Length within) {
  std::vector<geos::Patch> patches;
  for (const Polygon& polygon : region.polygons()) {
    geos::Patch patch{flatten(polygon.outer.edges(), within), {}};
    for (const Outline& hole : polygon.holes) patch.holes.push_back(flatten(hole.edges(), within));
    patches.push_back(std::move(patch));
  }
  return geos::multipolygon(patches, origin);
}

geos::Geometry all_strips(const Region& region, Point origin, double out, Corner corner, double limit) {
  std::vector<geos::Patch> patches;
  const auto add = [&](const std::vector<Ring>& rings) {
    for (const Ring& ring : rings) {
      geos::Loop loop = flatten(ring, fine(out));
      if (loop.size() >= 3) patches.push_back({std::move(loop), {}});
    }
  };
  for (const Outline* outline : region.outlines()) {
    const Row beside = row(outline->edges(), origin, -out);
    for (std::size_t i = 0; i < beside.edges.size(); ++i) {
      add(strip(beside, i));
      add(corner_piece(beside, i, corner, limit));
    }
  }
  return geos::multipolygon(patches, origin);
}

// By what a width is: the ground and all that lies within the width of its edges, or without it. GEOS's own buffer
// would do, but that it first simplifies each outline by a hundredth of the width, vertex after vertex, and so loses
// whole shallow hollows that come in fine chords.
problem::Result<geos::Geometry> widened(const Region& region, Point origin, double out, Corner corner, double limit) {
  const geos::Geometry beside = all_strips(region, origin, out, corner, limit);
  const auto united = geos::made(GEOSUnaryUnionPrec_r(geos::context(), beside.get(), 1), origin);
  if (!united) return std::unexpected(united.error());
  geos::Geometry ground = chords(region, origin, fine(out));
  // Valid within the 0.5 mm of every overlay, a region may still cross itself by less at the tip of a needle.
  if (geos::fault_of(*ground)) ground.reset(GEOSMakeValid_r(geos::context(), ground.get()));
  return geos::made(out > 0 ? GEOSUnionPrec_r(geos::context(), ground.get(), united->get(), 1)
                            : GEOSDifferencePrec_r(geos::context(), ground.get(), united->get(), 1),
                    origin);
}

// Less than half a millimetre across is nothing: no chord of an overlay is surer than that.
bool has_area(const Ring& ring) {
  if (ring.size() < 2) return false;
  return std::abs(signed_area(ring).si()) > perimeter(ring).si() / 2 * flattening.metres().si();
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

// Each ring still the way round that it was, nothing crossing once it is in chords, and the area that the chords had.
bool sound(const Region& region, double square_steps) {
  for (const Polygon& polygon : region.polygons()) {
    if (polygon.outer.signed_area().si() <= 0) return false;
    for (const Outline& hole : polygon.holes) {
      if (hole.signed_area().si() >= 0) return false;
    }
  }
  const double metre = units::Length::steps_per_metre;
  const double allowed = 8 * static_cast<double>(offset_flattening.steps()) * region.perimeter().si() * metre + 1e4;
  if (std::abs(region.area().si() * metre * metre - square_steps) > allowed) return false;
  return geos::valid(geos::flattened(region));
}

// Each outline's far side as it is. While no edge vanishes or turns back and nothing crosses, the far sides are the
// outlines of the result: a ring that winds once round everything has nothing to be cut off. Else there is more to it.
std::optional<Region> direct(const Region& region, double out, Corner corner, double limit) {
  const auto beside = [&](const Outline& outline) -> std::optional<Outline> {
    const auto path = Path::make(outline.edges(), outline.edges().front().from);
    if (!path) return std::nullopt;
    FarSide far = far_side(*path, -out, limit, corner);
    if (!far.whole || far.bridged || far.edges.size() < 2) return std::nullopt;
    if (far.end != far.edges.front().from || !has_area(far.edges)) return std::nullopt;
    return Shapes::outline(std::move(far.edges));
  };
  std::vector<Polygon> polygons;
  for (const Polygon& polygon : region.polygons()) {
    const auto outer = beside(polygon.outer);
    if (!outer || outer->signed_area().si() <= 0) return std::nullopt;
    polygons.push_back({*outer, {}});
    for (const Outline& hole : polygon.holes) {
      const auto inner = beside(hole);
      if (!inner || inner->signed_area().si() >= 0) return std::nullopt;
      polygons.back().holes.push_back(*inner);
    }
  }
  Region made = Shapes::region(std::move(polygons));
  if (!geos::valid(geos::flattened(made))) return std::nullopt;
  return made;
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
  if (auto made = direct(region, steps, corner, limit)) return std::move(*made);
  const auto chords = widened(region, origin, steps, corner, limit);
  if (!chords) return std::unexpected(chords.error());
  const OffsetTrace sources(region, origin, steps, corner, limit);
  const std::vector<geos::Patch> loops = geos::patches(**chords, origin);
  Region exact = assembled(loops, [&](const geos::Loop& loop) { return sources.trace(loop); });
  if (sound(exact, geos::area(**chords))) return exact;
  // Where the exact curves of a needle-thin place would cross, the chords stand as they are.
  return assembled(loops, [&](const geos::Loop& loop) { return sources.plain(loop); });
}

}  // namespace geometry
