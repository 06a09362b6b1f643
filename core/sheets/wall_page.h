// The page of one wall: its face unrolled, its section, its courses, what has to be decided.
#pragma once

#include <optional>

#include "sheets/printed.h"

namespace sheets {

// Nothing for what is no wall, stands already or can't be built.
std::optional<Passage> wall_page(const Printed& printed, const plan::ElementId& wall);

}  // namespace sheets
