// A program that edits a job without end, for tests that kill it.
#pragma once

#include <string>

namespace store {

// The word that makes the test program one of these: `store_tests --edit-until-killed FOLDER`.
inline constexpr const char* edit_until_killed_word = "--edit-until-killed";

// Opens the book in `folder`, adds a demo job and edits it on and on, handing over each value. Each edit's number is
// printed on a line of its own as soon as it was handed over more than a second ago. Returns only if the book can't be
// opened or a write failed.
int edit_until_killed(const std::string& folder);

}  // namespace store
