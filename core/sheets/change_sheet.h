// A change order on paper: why, what comes and goes, what the contract comes to with it, and the signatures before the
// work of it begins.
#pragma once

#include "estimate/change_order.h"
#include "sheets/printed.h"

namespace sheets {

// `printed` is the job that was agreed. Its numbers lead to "change/N" (line N), "change-step/N", "change/sum" and
// "change/running".
Sheet change_sheet(const estimate::ChangeOrder& order, const Printed& printed);

// Nothing: there is no such place in this order.
std::optional<std::string> working_of_change(const estimate::ChangeOrder& order, const std::string& source);

}  // namespace sheets
