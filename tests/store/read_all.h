// The program that the tests of damaged files start: reads all that is in a book, so that a crash or a wait without end
// takes only this program.
#pragma once

#include <string>

namespace store {

inline constexpr const char* read_all_word = "read-all";    // read-all FOLDER
inline constexpr const char* read_job_word = "read-job";    // read-job FILE
inline constexpr const char* open_word = "open-and-close";  // open-and-close FOLDER
inline constexpr int told = 3;                              // ends with this where a fault was said

// Prints a hash of all versions, one of all jobs as they are now and one of the catalogue; faults on standard error,
// `told` then.
int read_all(const std::string& folder);
int read_job_file(const std::string& path);  // prints a hash of the job
int open_and_close(const std::string& folder);

}  // namespace store
