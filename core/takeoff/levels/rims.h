// What lies beyond the rims of a finished surface: what holds water there, and what lets it off.
#pragma once

#include "takeoff/levels/inlets.h"
#include "takeoff/levels/joins.h"
#include "takeoff/levels/terrain.h"

namespace takeoff::levels {

// A finished area with all that its checks read, worked out once.
struct Area {
  const plan::Ground* ground = nullptr;
  const plan::PavedArea* paved = nullptr;
  SurfacePtr surface;
  Joints joints;
  std::vector<const plan::Stretch*> facing;  // of each rim; null: nothing known
};
Area area(const plan::Ground& ground, SurfacePtr surface);

// Whether water leaves over this rim. It does at planting, a restraint, steps, a flush kerb, a kerb with open weeps, an
// inlet or channel, and at paving that is not higher there (or whose height is not known). It does not at a building, a
// wall, a pillar or planter, a pool or its coping, a kerb that stands proud (a cord left in passes damp, not rain), or
// higher paving.
bool lets_off(const Area& area, std::size_t rim, const plan::Site& site, const Terrain& terrain);

// The place just past the middle of a rim, into what lies beyond it.
geometry::Point past(const Area& area, std::size_t rim, double by);
geometry::Vec outwards(const Rim& rim);  // unit vector, square to it

}  // namespace takeoff::levels
