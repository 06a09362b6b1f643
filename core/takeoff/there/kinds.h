// What is known of each kind of thing that is removed.
#pragma once

#include <optional>

#include "takeoff/line.h"

namespace takeoff::there {

struct Removed {
  const plan::Removal* what = nullptr;
  plan::ElementId id;
  Working area;                   // m2
  std::optional<Working> length;  // m, of a line
  Working volume;                 // m3 in place
  Working weight;                 // kg
  Term bulked;                    // loose volume for one in place
  std::string heap;               // rubble, or the kind itself
};

// kg/m3: the limit removed-<what>, else the default below (common practice; plain concrete 150 lb/cu ft). Nothing for a
// kind that neither knows.
std::optional<double> density(const plan::Job& job, const std::string& what);
bool sawn(const std::string& what);  // concrete and asphalt: units are lifted, walls taken down

// Measured and weighed; a problem in `share` and nothing where it can't be.
std::optional<Removed> measured(const plan::Job& job, const plan::Ground& ground, Share& share);

}  // namespace takeoff::there
