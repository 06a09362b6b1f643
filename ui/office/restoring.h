// Putting a backup in the place of the job book. The running window holds the book, so what is wanted is noted beside
// the book, the program ends, and the next start does it before it opens the book.
#pragma once

#include <QString>
#include <optional>
#include <string>

#include "problem/problem.h"

namespace ui {

problem::Result<void> note_restore(const std::string& folder, const std::string& backup);

// Does what was noted, once: what can't be done is not tried again at every start. Gives the sentence to say; nothing
// where nothing was noted. `now` is in UTC (store/now.h).
std::optional<QString> restore_noted(const std::string& folder, const std::string& now);

}  // namespace ui
