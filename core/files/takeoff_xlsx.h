// The takeoff as a spreadsheet that computes again: what an office opens, checks, sorts and hands on.
#pragma once

#include <string>

#include "files/workbook.h"
#include "results/results.h"

namespace files {

// Four sheets; units and currency stand in columns of their own, never in a cell with a number:
//   Summary      by stage: material, work, amount, hours; then from the direct cost to the total, and the payments
//   Lines        as the CSV has them, with a number each; the amount is order quantity x unit price, rounded to the
//                coin, where that gives the amount to the coin (otherwise the amount itself); below them their sum
//   Working      of each line, by its number: every term, each result a formula over its parts; the order quantity of
//                a line is taken from here where it is the working's result
//   Assumptions  what the quote takes for granted and leaves out, what was chosen for the job, the hours factors, the
//                unit prices, then everything that the check says
// Sums of Summary are taken from Lines by stage. All formulas carry the values that the program itself computed.
Workbook takeoff_workbook(const results::Results& results);

// The same as the bytes of a file; dated as the offer is. Refused as write_workbook says.
problem::Result<std::string> takeoff_xlsx(const results::Results& results);

}  // namespace files
