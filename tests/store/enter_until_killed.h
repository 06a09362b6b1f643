// The program that the test of ledgers kills: enters one delivery after the other, and prints the number of each once
// it is on the disk.
#pragma once

#include <string>

#include "estimate/ledger.h"

namespace store {

inline constexpr const char* enter_until_killed_word = "enter-until-killed";

int enter_until_killed(const std::string& folder);  // never ends by itself but for a fault

// An estimate with one line bought in tons and the work of its stage.
estimate::Kept kept_with_lines();
// Delivery number `n` of its line: the same for everyone who asks, but for the time of entering.
estimate::Entry delivery(std::int64_t n);

}  // namespace store
