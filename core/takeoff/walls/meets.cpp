#include "takeoff/walls/meets.h"

#include <algorithm>
#include <array>
#include <cmath>

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

// Before any overlay: can the two be near each other at all?
bool near(const plan::Ground& other, const geometry::Box& zone, Length reach) {
  if (other.path) return geometry::overlap(geometry::grown(other.path->bounds(), reach), zone);
  return !other.footprint.empty() && geometry::overlap(other.footprint.bounds(), zone);
}

std::optional<Found> in_zone(const plan::Job& job, const plan::Ground& other, const Region& zone) {
  const auto* wall = std::get_if<plan::Wall>(&other.element->kind);
  const Length reach = wall ? zone_of(job, *wall) : Length::feet(10);
  if (!near(other, zone.bounds(), reach)) return std::nullopt;
  auto found = taken_by(job, other);
  if (!found) return std::nullopt;
  const auto both = geometry::meet(zone, found->taken);
  if (!both || both->area().si() < crumb) return std::nullopt;
  found->taken = *both;
  return found;
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

std::vector<problem::Problem> layer_meets(const plan::Job& job, const plan::Site& site, const plan::Ground& ground,
                                          const plan::Wall& wall, const Profile& profile, std::size_t layer) {
  std::vector<problem::Problem> said;
  if (!ground.path) return said;
  const plan::Reinforcement& given = wall.layers[layer];
  std::vector<plan::ElementId> told;
  for (const Extent& extent : extents(profile, given)) {
    const auto face = piece_of(*ground.path, extent.from, extent.to);
    const auto zone = face ? strip(*face, given.length, wall.behind) : std::nullopt;
    if (!zone) {
      said.push_back(edges::notice(
          "layer-zone",
          "the zone of the layer on course " + std::to_string(given.on_course) +
              " can't be drawn behind the wall, so what it meets is not known, " + between(job, extent.from, extent.to),
          "look on the plan whether it meets a pool, pipe, footing or wall", ground.element->id));
      continue;
    }
    for (const auto& other : site.grounds) {
      const plan::ElementId& id = other->element->id;
      if (id == ground.element->id || id == wall.drained_by || std::ranges::find(told, id) != told.end()) continue;
      const auto found = in_zone(job, *other, *zone);
      if (!found) continue;
      told.push_back(id);
      said.push_back(edges::flag("layer-meets",
                                 "the layer on course " + std::to_string(given.on_course) + " meets " + found->what +
                                     " in plan, " + between(job, extent.from, extent.to),
                                 "ask the engineer who gave the layers before anything is cut or dug",
                                 ground.element->id));
      said.back().place.at = found->taken.centroid();
    }
  }
  return said;
}

}  // namespace takeoff::walls
