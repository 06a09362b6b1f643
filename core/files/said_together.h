// Problems that say the same, told as one, so that a page of repeats does not hide the one that matters.
#pragma once

#include <vector>

#include "problem/problem.h"

namespace files {

// What one element has of one kind with one mend becomes a single row, its texts one after the other; then what several
// elements have in the same words becomes a single row that names them all ("P1, P2, each"). Each row stands where the
// first of its kind stood. A problem with a place in a file or a point of the plan stays alone.
std::vector<problem::Problem> said_together(const std::vector<problem::Problem>& all);

}  // namespace files
