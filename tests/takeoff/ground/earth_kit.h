// Ground made of planes for the tests of digging, and sums over what was dug.
#pragma once

#include "geometry/surface.h"
#include "takeoff/ground/earth.h"

namespace earth_kit {

using geometry::Point;
using geometry::Vec;

// height = z + gx x + gy y, metres.
struct Ground {
  double z = 0, gx = 0, gy = 0;
  double at(double x, double y) const { return z + gx * x + gy * y; }
};

// 400 m across.
inline geometry::Surface all_over(Ground ground) {
  geometry::Facet facet{{{-200, -200}, {200, -200}, {200, 200}, {-200, 200}}, {ground.z, ground.gx, ground.gy}, false};
  return geometry::Surface(Point(), {facet});
}

inline takeoff::levels::Terrain lying(Ground ground) {
  takeoff::levels::Terrain terrain;
  terrain.existing = std::make_shared<const geometry::Surface>(all_over(ground));
  return terrain;
}

inline void finish(takeoff::levels::Terrain& terrain, const plan::Site& site, const plan::ElementId& id,
                   Ground ground) {
  terrain.finished[id] = std::make_shared<const geometry::Surface>(
      geometry::over(all_over(ground), *geometry::pieces(site.find(id)->net, Point())));
}

inline double bank(const takeoff::ground::Excavation& made, bool topsoil = false) {
  double sum = 0;
  for (const auto& hole : made.dug)
    if (hole.bank && hole.topsoil == topsoil) sum += hole.bank->amount().value;
  return sum;
}
inline double fill(const takeoff::ground::Excavation& made) {
  double sum = 0;
  for (const auto& hole : made.dug)
    if (hole.fill) sum += hole.fill->amount().value;
  return sum;
}
inline double measure(const takeoff::ground::Excavation& made, const plan::ElementId& id, const std::string& name) {
  for (const auto& one : made.measures)
    if (one.element == id) return one.get(name).value_or(-1e9);
  return -1e9;
}
inline const takeoff::ground::Dug* hole(const takeoff::ground::Excavation& made, const std::string& text) {
  for (const auto& one : made.dug)
    if (one.text == text) return &one;
  return nullptr;
}
inline bool said(const takeoff::ground::Excavation& made, const std::string& code) {
  for (const auto& one : made.share.problems)
    if (one.code == code) return true;
  return false;
}

inline takeoff::ground::Excavation dug(const plan::Job& job, const plan::Site& site,
                                       const takeoff::levels::Terrain& terrain) {
  return takeoff::ground::dig(job, site, takeoff::ground::bodies(job, site), terrain);
}

}  // namespace earth_kit
