// Estimate against what was really used, on paper: for the office.
#pragma once

#include "estimate/actual.h"
#include "sheets/printed.h"

namespace sheets {

// `printed` is the job as it was kept; `printed.version` names the version. Its numbers lead to "actual/N" (line N of
// `actual`), "actual-stage/WORD" and "actual-stage/all".
Sheet actual_sheet(const estimate::Actual& actual, const Printed& printed);

// Nothing: there is no such place in these actuals.
std::optional<std::string> working_of_actual(const estimate::Actual& actual, const Printed& printed,
                                             const std::string& source);

}  // namespace sheets
