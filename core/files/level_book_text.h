// A level book on the text sheet, as a field book has it: readings, heights, and the sums that prove them.
#pragma once

#include <string>

#include "plan/job.h"

namespace files {

// A section for each level book of the job, headed by its name: point, backsight, intermediate, foresight, height of
// instrument, height, and the correction where the misclosure was shared out; under it the arithmetic check and the
// misclosure. Rod readings to 1 mm or 0.01 ft, as a rod is read. A book with a fault shows none of its rows: the fault
// stands among the problems. Empty where the job has no level book.
std::string level_books_text(const plan::Job& job);

}  // namespace files
