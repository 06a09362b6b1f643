// The time, as the book notes it.
#pragma once

#include <string>

namespace store {

std::string utc_now();  // 2026-11-28T21:47:26Z

}  // namespace store
