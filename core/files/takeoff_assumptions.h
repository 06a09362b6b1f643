// What stands behind the numbers of a takeoff, as a sheet of a spreadsheet.
#pragma once

#include "files/workbook.h"
#include "results/results.h"

namespace files {

// The sheet Assumptions, one row a thing: what it is (price, choice, hours factor, assumption, exclusion, unit price,
// problem, flag, notice), the text, a value with its unit in a column of its own where there is one, why or what to do,
// and the element. Sentences that were struck out are left out.
Sheet assumptions_sheet(const results::Results& results);

}  // namespace files
