// Measures and quantities in the units that the job is read in.
#pragma once

#include <string>
#include <string_view>

#include "estimate/estimate.h"
#include "units/read_length.h"

namespace files {

// A named measure in words: "net_area_m2", 46.2 -> "net area 497.3 sq ft"; what stands after a colon in the name is of
// what ("rod_m:rod-5_8"). US: sq ft, ft, cu yd, tons of 2000 lb; metric: m2, m, m3, t. What is small is
// read in the small unit: under 0.05 cu yd in fl oz, under 0.05 ton in lb; under 0.05 m3 in l, 0.05 t in kg, 1 m in mm.
std::string measure_in_words(std::string_view name, double value, units::System system);

// A quantity in an SI unit ("m2", "m", "m3", "kg"; others stay as they are, pieces are plain numbers): "497.3 sq ft".
std::string quantity_in_words(double value, std::string_view unit, units::System system);

// True where the exact price of one is no whole number of coins, so that a rounded one would not give the amount.
bool has_part_coins(const estimate::OrderLine& line);

}  // namespace files
