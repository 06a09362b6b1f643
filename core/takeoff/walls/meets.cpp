#include "takeoff/walls/meets.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "geometry/index.h"
#include "geometry/offset.h"
#include "geometry/overlay.h"
#include "takeoff/edges/notes.h"
#include "takeoff/walls/words.h"

namespace takeoff::walls {

namespace {

using geometry::Region;
using units::Length;

constexpr double crumb = 1e-4;  // m2: under it two regions only touch

// What another wall takes behind its face: its body, its stone and its longest layer.
Length zone_of(const plan::Job& job, const plan::Wall& wall) {
  const catalogue::Item* block = job.catalogue->item(wall.block);
  Length zone = wall.thickness > Length() ? wall.thickness : block && block->width ? *block->width : Length::inches(12);
  if (wall.stone && !wall.stone->drain.empty() && !wall.free_standing)
    zone += wall.stone->drain_depth.value_or(job.catalogue->length_limit("wall-stone", Length::inches(12)));
  for (const plan::Reinforcement& layer : wall.layers) zone = std::max(zone, layer.length);
  return zone;
}

// A pipe without a width at the surface is as wide as itself.
Length width_of(const plan::Job& job, const plan::DrainRun& run) {
  if (run.width > Length()) return run.width;
  const catalogue::Item* item = job.catalogue->item(run.item);
  const double inches = item ? item->number("nominal_diameter_in").value_or(4) : 4;
  return Length::nearest(units::Metres(std::clamp(inches, 1.0, 120.0) * units::metres_per_inch));
}

struct Found {
  std::string what;
  Region taken;
};

std::optional<Region> strip(const geometry::Path& path, Length width, geometry::Side side) {
  auto made = geometry::band(path, width, side);
  return made ? std::optional(std::move(*made)) : std::nullopt;
}

std::optional<Found> taken_by(const plan::Job& job, const plan::Ground& other) {
  const plan::Kind& kind = other.element->kind;
  const std::string named = " " + other.element->id;
  if (std::holds_alternative<plan::Pool>(kind)) return Found{"the pool" + named, other.footprint};
  if (std::holds_alternative<plan::Building>(kind)) return Found{"the building" + named, other.footprint};
  if (std::holds_alternative<plan::Steps>(kind)) return Found{"the steps" + named, other.footprint};
  if (const auto* out = std::get_if<plan::KeepOut>(&kind))
    return Found{"the " + (out->what.empty() ? "keep-out" : out->what) + named, other.footprint};
  if (!other.path) return std::nullopt;
  if (const auto* run = std::get_if<plan::DrainRun>(&kind)) {
    const Length half = Length::of_steps(std::max<std::int64_t>(1, width_of(job, *run).steps() / 2));
    const auto left = strip(*other.path, half, geometry::Side::left);
    const auto right = strip(*other.path, half, geometry::Side::right);
    if (!left || !right) return std::nullopt;
    auto both = geometry::unite(std::array{*left, *right});
    return both ? std::optional(Found{"the " + run->what + named, std::move(*both)}) : std::nullopt;
  }
  if (const auto* wall = std::get_if<plan::Wall>(&kind)) {
    auto zone = strip(*other.path, zone_of(job, *wall), wall->behind);
    return zone ? std::optional(Found{"the zone of wall" + named, std::move(*zone)}) : std::nullopt;
  }
  return std::nullopt;
}

// Where the other may come: a zone that lies outside of it meets nothing.
std::optional<geometry::Box> reach_of(const plan::Job& job, const plan::Ground& other) {
  const auto* wall = std::get_if<plan::Wall>(&other.element->kind);
  const Length reach = wall ? zone_of(job, *wall) : Length::feet(10);
  if (other.path) return geometry::grown(other.path->bounds(), reach);
  if (other.footprint.empty()) return std::nullopt;
  return other.footprint.bounds();
}

// The part of an extent from where the zone behind it can reach the box: whole edges of the wall and one more on each
// side, so that corners keep their shape. Of a long wall only that part is worth drawing.
std::optional<Extent> part_near(const geometry::Path& path, const Extent& extent, const geometry::Box& box) {
  std::optional<std::size_t> first;
  std::size_t last = 0;
  std::vector<double> starts{0};
  for (std::size_t i = 0; i < path.size(); ++i) {
    const geometry::Curve curve = path.curve(i);
    starts.push_back(starts.back() + curve.length() / Length::steps_per_metre);
    if (starts[i + 1] <= extent.from || starts[i] >= extent.to) continue;
    if (!geometry::overlap(geometry::bounds(curve), box)) continue;
    first = first.value_or(i);
    last = i;
  }
  if (!first) return std::nullopt;
  return Extent{std::max(extent.from, starts[*first > 0 ? *first - 1 : 0]),
                std::min(extent.to, starts[std::min(last + 2, path.size())])};
}

}  // namespace

std::optional<geometry::Path> piece_of(const geometry::Path& path, double from, double to) {
  geometry::Ring edges;
  geometry::Point end;
  double at = 0;
  for (std::size_t i = 0; i < path.size(); ++i) {
    const geometry::Curve curve = path.curve(i);
    const double length = curve.length() / Length::steps_per_metre;
    const double first = std::clamp((from - at) / length, 0.0, 1.0), last = std::clamp((to - at) / length, 0.0, 1.0);
    at += length;
    if (last <= first) continue;
    const geometry::Point start = first > 0 ? geometry::moved(curve.start, curve.at(first)) : curve.start;
    const geometry::Point stop = last < 1 ? geometry::moved(curve.start, curve.at(last)) : curve.end;
    if (start == stop) continue;
    edges.push_back(
        {start, curve.bulge == 0 ? 0 : std::tan(curve.sweep() * (last - first) / 4), path.edges()[i].origin});
    end = stop;
  }
  if (edges.empty()) return std::nullopt;
  auto made = geometry::Path::make(std::move(edges), end);
  return made ? std::optional(std::move(*made)) : std::nullopt;
}

std::vector<Meeting> meetings(const plan::Job& job, const plan::Site& site, const plan::Ground& ground,
                              const plan::Wall& wall, const std::vector<Extent>& there, Length length) {
  std::vector<Meeting> all;
  if (!ground.path) return all;
  for (const auto& other : site.grounds) {
    const plan::ElementId& id = other->element->id;
    if (id == ground.element->id || id == wall.drained_by) continue;
    const auto box = reach_of(job, *other);
    if (!box) continue;
    // An inside corner of the zone reaches further than its length: as far as the sharpest mitre.
    const geometry::Box reached = geometry::grown(*box, Length::of_steps(4 * length.steps()));
    for (const Extent& extent : there) {
      const auto part = part_near(*ground.path, extent, reached);
      if (!part) continue;
      const auto taken = taken_by(job, *other);
      if (!taken) break;
      const auto face = piece_of(*ground.path, part->from, part->to);
      const auto zone = face ? strip(*face, length, wall.behind) : std::nullopt;
      Meeting met{taken->what, extent, {}};
      if (zone) {
        const auto both = geometry::meet(*zone, taken->taken);
        if (both && both->area().si() < crumb) continue;
        if (both) met.at = both->centroid();
      }
      all.push_back(std::move(met));
      break;
    }
  }
  return all;
}

problem::Problem in_words(const plan::Job& job, const plan::ElementId& of, int on_course, const Meeting& one) {
  const std::string layer = "the layer on course " + std::to_string(on_course);
  const std::string where = between(job, one.extent.from, one.extent.to);
  if (!one.at)
    return edges::notice("layer-zone",
                         "the zone of " + layer + " can't be drawn behind the wall, so whether it meets " + one.what +
                             " is not known, " + where,
                         "look on the plan whether it does", of);
  problem::Problem made = edges::flag("layer-meets", layer + " meets " + one.what + " in plan, " + where,
                                      "ask the engineer who gave the layers before anything is cut or dug", of);
  made.place.at = one.at;
  return made;
}

}  // namespace takeoff::walls
