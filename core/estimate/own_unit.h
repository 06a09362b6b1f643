// From the measure of a working (m, m2, m3, kg, h, pieces) to the unit that an item is bought in.
#pragma once

#include <optional>
#include <string_view>

#include "catalogue/item.h"
#include "problem/problem.h"
#include "takeoff/working.h"

namespace estimate {

// A unit with a size of its own: ton (the short ton of 2000 lb), lb, cu yd, sq ft, m3 ...
struct FixedUnit {
  std::string_view word;
  double si;  // how much of `unit` one is
  units::Unit unit;
};
std::optional<FixedUnit> fixed_unit(std::string_view word);  // nothing for other words

// `net` counted in item.unit, as a plain number, each conversion a term that leads to its field of the catalogue
// ("agg-no57/compacted_density_kg_m3"). In order:
// - pieces stay what they are, unless the item is bought by weight, volume, length, area or time;
// - units with a fixed size (ton is the short ton, 907.18474 kg) are divided by it;
// - what has a size is divided by it: metres by length and joint, m2 by the module, m3 by volume_l, kg by mass_kg;
// - volume and weight lead to each other by the item's densities. The volume of an aggregate is the placed one: weight
//   by the compacted density, and where it is bought by volume, what is delivered lies loose. All else is loose.
// "unit-unknown" where the item's data do not say.
problem::Result<takeoff::Working> in_own_unit(const takeoff::Working& net, const catalogue::Item& item,
                                              double day_hours);

}  // namespace estimate
