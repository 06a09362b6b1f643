// The heights of the whole site, worked out once and read by every trade that digs, drains or checks a fall.
#pragma once

#include <map>
#include <memory>
#include <optional>

#include "geometry/surface.h"
#include "plan/site.h"

namespace takeoff::levels {

using SurfacePtr = std::shared_ptr<const geometry::Surface>;

struct Terrain {
  std::map<plan::ElementId, double> points;  // height of each level in metres: as typed, or reduced from the level book
  SurfacePtr existing;                       // through the existing levels; null where there are none
  // The surfaces under the removals' undersides are not in it: what was taken out first is credited where it is dug.
  std::map<plan::ElementId, SurfacePtr> finished;  // of each paved area that has a finish, over its net ground
  std::vector<problem::Problem> problems;

  // Ground as it lies, and the finished level there (of the area that has the point, else of `area` if given).
  std::optional<double> existing_at(geometry::Point point) const;
  std::optional<double> finished_at(geometry::Point point) const;
  bool guessed_at(geometry::Point point) const;  // beyond what was measured
};

// What one terrain leaves for the next of the same job, edited: never read for anything but what would come out the
// same.
struct TerrainMemory {
  std::shared_ptr<const plan::Job> job;  // whose it was
  std::shared_ptr<const Terrain> terrain;
};

Terrain terrain(const plan::Job& job, const plan::Site& site);

}  // namespace takeoff::levels
