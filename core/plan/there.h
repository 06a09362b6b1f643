// What is there already, what has to be kept away from, and what is put down to protect it.
#pragma once

#include "plan/drawn.h"

namespace plan {

// What stands or lies there and goes, or stays as formation. `what`: concrete, asphalt, unit-paving, wall, coping, sod,
// stump ... (its density is the limit removed-<what>). `fate`: haul, reuse (here, less `loss`), leave (an overlay: the
// slab stays and paving is built on it).
struct Removal {
  DrawnShape outline;
  std::optional<DrawnLine> line;
  Length width;  // of what is drawn as a line
  std::string what;
  Length thickness;
  std::optional<Length> top;  // level of a slab that stays; empty: the existing ground
  std::string fate;
  double loss = 0;  // share of what is reused that breaks
  bool steel = false;
  bool operator==(const Removal&) const = default;
};

// A mark whose rules are rows of site-rules.csv by `what`: buried-service, overhead-line, lot-line, setback, easement,
// flood, barrier, septic, well, gate, path, drop-spot, downspout ...
struct SiteMark {
  std::vector<geometry::Point> points;
  std::optional<DrawnLine> line;
  DrawnShape outline;
  std::string what;
  std::optional<Length> depth;         // of a buried service
  std::optional<Length> height;        // of an overhead line or a barrier, above the ground
  std::optional<Length> width;         // of a gate or a path
  std::optional<double> roof_area_m2;  // that a downspout drains
  ElementId into;                      // the drain run that takes a downspout's water; empty: it runs onto the ground
  bool operator==(const SiteMark&) const = default;
};

struct Protection {
  DrawnShape outline;
  std::optional<DrawnLine> line;
  Id item;
  bool operator==(const Protection&) const = default;
};

}  // namespace plan
