// The slow, obvious way: every unit of the window against every edge, and what is left of it by a general polygon
// engine.
#pragma once

#include <map>
#include <tuple>

#include "laying.h"

namespace oracle {

using laying::Vec;

struct UnitPart {
  double area = 0;
  double least_width = 0;
};
using Key = std::tuple<int, int, int>;  // kind, a, b

struct Answer {
  std::map<Key, std::vector<UnitPart>> cut;  // units with parts, largest first
  std::map<Key, bool> whole;
  double whole_area = 0;
  double cut_area = 0;
  double clipped_area = 0;  // of the region within all units, no rule applied
  std::size_t pieces() const;
};

// `grazing` in steps, as the rule has it; `all_areas` also clips the units that no edge enters.
Answer lay(const laying::Region& region, const laying::Lattice& lattice, double grazing, bool all_areas = false);

// Whether the region's chords, fine as laying cuts them, neither cross nor touch.
bool chords_are_simple(const laying::Region& region);

}  // namespace oracle
