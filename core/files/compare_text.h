// A comparison of two kept estimates for paper and for a spreadsheet.
#pragma once

#include <string>

#include "estimate/compare.h"
#include "plan/differences.h"

namespace files {

struct Compared {
  std::string job;     // its name
  std::string before;  // names of the two versions
  std::string after;
  std::string currency;
  int decimals = 2;
};

// Plain text: the drawing and the choices that differ, the lines by stage with quantity, price and amount before and
// after, the steps of the price, the difference in all.
std::string comparison_text(const Compared& of, const estimate::Comparison& comparison,
                            const plan::Differences& differences);

// One row a change, RFC 4180; the amounts of the column "by" add up to the difference of the direct cost.
std::string comparison_csv(const Compared& of, const estimate::Comparison& comparison);

// "added", "gone", "quantity", "price", "words"
std::string word(estimate::Difference what);

}  // namespace files
