// What stands up, on the text sheet: its preliminary checks, and the cuts that the saw has to make.
#pragma once

#include <string>

#include "results/results.h"

namespace files {

// A section each, with its heading; empty where there is nothing to say.
std::string checks_text(const results::Results& results);
std::string cuts_text(const results::Results& results);

}  // namespace files
