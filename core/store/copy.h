// Whole copies of a job book, and whether one is whole. Copies are made by SQLite's own backup: page by page, the file
// as it stands at one moment, while others read and write. A copy is one file, without a log beside it.
#pragma once

#include <string>

#include "store/database.h"

namespace store {

// Every page in use, index and reference of the file is looked at; the first thing wrong is said (book-damaged). In a
// file without sums (page_sums.h) words and numbers inside a row are past what this finds.
problem::Result<void> check_whole(Database& database);

// Writes all of `from` to a new file at `path`, checks it and has it on the disk when it returns. One that is there is
// replaced. Where it fails nothing is left at `path`.
problem::Result<void> copy_to(Database& from, const std::string& path);

// Puts the content of the book at `path` in the place of all that `into` holds, in one transaction: killed half-way,
// `into` is as before. Only where `can_fill` says yes: pages with sums and pages without don't go into one file.
problem::Result<bool> can_fill(Database& into, const std::string& path);
problem::Result<void> fill_from(Database& into, const std::string& path);

// Has the file or the folder on the disk; a name given or taken in a folder is there only once the folder is.
problem::Result<void> have_on_disk(const std::string& path);

}  // namespace store
