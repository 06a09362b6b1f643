// Everything under the surface, for the whole site at once: areas that touch and share a layer are one body, and two
// things that share one stone or one dig are found here, so that earth is not dug twice.
#pragma once

#include <string>
#include <vector>

#include "plan/site.h"
#include "takeoff/levels/terrain.h"
#include "takeoff/line.h"

namespace takeoff::ground {

// One connected body of one layer of one build-up.
struct Body {
  int group = 0;  // bodies of one group lie over each other: the layers of one build-up under the same areas
  std::vector<plan::ElementId> of;
  plan::Id build_up;
  catalogue::Layer layer;
  geometry::Region net;        // the areas' own ground, united
  geometry::Region footprint;  // moved out past free stretches
  double top = 0;              // metres below the finished surface
  double thickness = 0;        // metres
  bool open = false;           // open-graded
};
struct Bodies {
  std::vector<Body> bodies;
  std::vector<problem::Problem> problems;
};
// A layer's footprint: union of the touching areas that share it; then only free stretches move out by the layer's
// extra (a kerb: past the outside of its footing; soft edge: the greater of 6 in and the base thickness where the
// build-up says so); 0 against coping, building, wall, other paving.
Bodies bodies(const plan::Job& job, const plan::Site& site);

// The named area of a body: each area's own ground (as taped on site where a person taped it) and what lies past its
// edges.
Working area_of(const plan::Site& site, const Body& body);

Share layers(const plan::Job& job, const plan::Site& site,
             const Bodies& bodies);  // stone, sand, mortar, slab: weight by placed density, lifts, passes, chokes
                                     // (C10), movement joints (C17)
Share fabric(const plan::Job& job, const plan::Site& site,
             const Bodies& bodies);  // strips both ways tried, overlap, turn-up
// The way out of water from each body of open stone: its sill, the dead depth below it (by heights where the areas have
// levels, else by depths below the surface), draw-down, kerbs that dam, weeps that the ground outside buries. No lines,
// only problems.
Share way_out(const plan::Job& job, const plan::Site& site, const Bodies& bodies, const levels::Terrain& terrain);

}  // namespace takeoff::ground
