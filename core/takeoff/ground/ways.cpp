#include "takeoff/ground/ways.h"

#include <algorithm>
#include <cmath>

#include "takeoff/water/network.h"
#include "takeoff/water/water.h"

namespace takeoff::ground {

namespace {

constexpr double look = 0.25;     // metres from look to look
constexpr double outside = 0.15;  // metres past the kerb
constexpr double steps = units::Length::steps_per_metre;

// Places along the stretches at which an area meets `other`, with the way out of the area.
template <class Do>
void each_place(const plan::Ground& area, const plan::ElementId& other, Do act) {
  const auto outlines = area.net.outlines();
  for (const plan::Stretch& stretch : area.stretches) {
    if (stretch.other != other) continue;
    const geometry::Ring& ring = outlines[static_cast<std::size_t>(stretch.outline)]->edges();
    const geometry::Curve curve = geometry::curve(ring, static_cast<std::size_t>(stretch.edge));
    const double length = curve.length() / steps;
    const int looks = std::max(1, static_cast<int>(std::ceil(stretch.length().si() / look)));
    for (int i = 0; i <= looks && length > 0; ++i) {
      const double share = std::clamp((stretch.from + (stretch.to - stretch.from) * i / looks) / length, 0.0, 1.0);
      act(geometry::moved(curve.start, curve.at(share)), -geometry::left_of(curve.direction(share)));
    }
  }
}

}  // namespace

std::optional<double> lowest_along(const plan::Site& site, const levels::Terrain& terrain,
                                   const std::vector<plan::ElementId>& areas, const plan::ElementId& other) {
  std::optional<double> low;
  for (const plan::ElementId& id : areas)
    each_place(*site.find(id), other, [&](geometry::Point at, geometry::Vec) {
      const auto surface = terrain.finished.find(id);
      if (surface == terrain.finished.end()) return;
      if (const auto height = surface->second->height(at); height && (!low || *height < *low)) low = height;
    });
  return low;
}

std::optional<Above> highest_outside(const plan::Site& site, const levels::Terrain& terrain,
                                     const std::vector<plan::ElementId>& areas, const plan::Ground& kerb, double sill) {
  std::optional<Above> most;
  const double wide =
      kerb.footprint.empty() || !kerb.path ? 0 : kerb.footprint.area().si() / std::max(kerb.path->length().si(), 1e-3);
  for (const plan::ElementId& id : areas)
    each_place(*site.find(id), kerb.element->id, [&](geometry::Point at, geometry::Vec out) {
      const auto surface = terrain.finished.find(id);
      const auto paving = surface == terrain.finished.end() ? std::nullopt : surface->second->height(at);
      const geometry::Point beyond = geometry::moved(at, (wide + outside) * steps * out);
      const auto ground = terrain.existing_at(beyond);
      if (!paving || !ground || terrain.guessed_at(beyond) || terrain.finished_at(beyond)) return;
      const double by = *ground - (*paving - sill);
      if (by > 1e-3 && (!most || by > most->by)) most = Above{by, at};
    });
  return most;
}

std::optional<Through> lowest_inside(const plan::Job& job, const geometry::Path& path, const plan::DrainRun& run,
                                     const geometry::Region& stone) {
  const double length = path.length().si();
  const int looks = std::max(1, static_cast<int>(std::ceil(length / look)));
  const bool levels = water::invert(job, run, 0).has_value();
  std::optional<Through> found;
  for (int i = 0; i <= looks; ++i) {
    const double station = length * i / looks;
    if (!stone.contains(water::place_at(path, station))) continue;
    if (!found) found = Through{};
    if (!levels) return found;
    const double invert = *water::invert(job, run, station);
    if (!found->invert || invert < *found->invert) found->invert = invert;
  }
  return found;
}

}  // namespace takeoff::ground
