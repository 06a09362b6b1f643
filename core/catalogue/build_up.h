// What lies under a surface, top to bottom.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "catalogue/item.h"

namespace catalogue {

struct Layer {
  std::string role;  // unit, bedding, base, sub-base, fabric, mortar, slab, mesh
  Id item;           // empty for role unit: whatever unit the area has
  std::optional<units::Length> thickness;
  units::Length past_edge;            // extra width beyond a free edge
  std::optional<units::Length> lift;  // greatest compacted lift
  std::string source;
  std::string notes;
  bool operator==(const Layer&) const = default;
};

struct BuildUp {
  Id id;
  std::string use;  // paving, wall-base, steps, kerb, pool, pipe
  Words name;
  std::string surface;
  std::string water;
  std::string notes;
  std::vector<Layer> layers;  // from the top
  bool operator==(const BuildUp&) const = default;
};

// dense, open (permeable), hybrid (open base and bedding under sealed joints), bound (on a slab): told from the layers'
// items (an aggregate with a porosity is open-graded) and the joint fill of the surface.
bool open_graded(const Item& item);

}  // namespace catalogue
