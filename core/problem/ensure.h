// Broken promises inside the code. The check stays on in every build: a wrong order list costs more than a stop.
#pragma once

#include <source_location>

namespace problem {

// Ends the program with the place and the promise when it does not hold. Never for what people or files bring in.
void ensure(bool holds, const char* promise, std::source_location where = std::source_location::current());

}  // namespace problem
