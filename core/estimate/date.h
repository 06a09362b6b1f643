// A day as the office writes it.
#pragma once

#include <string_view>

namespace estimate {

// 2026-11-28, and a day that there is.
bool is_date(std::string_view text);

}  // namespace estimate
