// One element alone, as the job file writes it: for whoever keeps a job element by element.
#pragma once

#include <string>
#include <string_view>

#include "plan/element.h"

namespace files {

std::string write_element(const plan::Element& element);  // write then read is the identity
// Refused with line and column as in a job file; `file` is what the sentence calls the text.
problem::Result<plan::Element> read_element(std::string_view text, const std::string& file);

}  // namespace files
