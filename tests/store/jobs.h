// Jobs to put into a book, and edits of them.
#pragma once

#include <memory>
#include <stdexcept>
#include <string>
#include <vector>

#include "plan/job.h"
#include "store/job_book.h"

namespace store {

// The demo jobs of that name in demo-jobs/, and all three names.
plan::Job demo_job(const std::string& name);
std::vector<std::string> demo_names();

// The job after its edit number `n`: the same for everyone who asks. Renames, adds, takes away and moves elements, and
// now and then changes the heading.
plan::Job edited(const plan::Job& job, int n);

// Makes the file one of form 2 (no jobs yet), 3 (no versions yet) or 6 (no entries yet): what later forms added goes.
void back_to_form(const std::string& path, int form);

// Opened, or the test ends with the sentence of the fault.
JobBook opened(const std::string& folder);
template <class T>
T good(problem::Result<T> result) {
  if (!result) throw std::runtime_error(problem::sentence(result.error()));
  return std::move(*result);
}
inline void well(problem::Result<void> result) {
  if (!result) throw std::runtime_error(problem::sentence(result.error()));
}

}  // namespace store
