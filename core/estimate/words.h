// Counts and sums in plain words, for the sentence of an order line.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "catalogue/catalogue.h"
#include "units/money.h"

namespace estimate {

// At most two decimals, none that are 0: 10, 16.2, 0.62. What is not 0 is never shown as 0 (0.004 is "0.004").
std::string in_words(double number);

// "1 piece", "12 pieces", "2.5 cu yd": measures (cu yd, sq ft, ft, m, m2, m3, kg, t, lb, h) have no plural of their
// own.
std::string counted(double number, std::string_view unit);

// "3 %" of 0.03.
std::string percent(double share);

// The English name of an item, its id where the catalogue does not know it or has no name.
std::string name_of(const catalogue::Catalogue& catalogue, const catalogue::Id& item);

// "28 tons: 27.3 needed" becomes "28 short tons: ...": where tonnes are at home, a ton of 2000 lb says so.
std::string with_short_tons(std::string text);

std::string joined(const std::vector<std::string>& parts, std::string_view between);

}  // namespace estimate
