// The program that the test of versions kills: saves one version after the other, and prints the number of each once it
// is on the disk.
#pragma once

#include <string>

#include "estimate/kept.h"
#include "plan/job.h"

namespace store {

inline constexpr const char* save_until_killed_word = "save-until-killed";

int save_until_killed(const std::string& folder);  // never ends by itself but for a fault

// What version number `n` holds: the same for everyone who asks. 200 lines, all of them other ones than the last time.
plan::Job job_of_version(std::int64_t n);
estimate::Kept kept_of_version(std::int64_t n);
std::string name_of_version(std::int64_t n);

}  // namespace store
