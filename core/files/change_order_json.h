// What was entered for the change orders of a job, as a text, and back: JSON with its fields always in the same order,
// money in whole coins.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "estimate/kept_orders.h"

namespace files {

// Texts must be UTF-8 and numbers finite; then write and read is the identity.
std::string write_change_orders(const std::vector<estimate::KeptOrder>& orders);

// Refused with line and column: what is no such text, an unknown field, a format newer than this program's. `file` is
// what the sentence calls it.
problem::Result<std::vector<estimate::KeptOrder>> read_change_orders(std::string_view text, const std::string& file);

}  // namespace files
