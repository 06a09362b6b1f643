// Whole copies of a job book, and whether one is whole. Copies are made by SQLite's own backup: page by page, the file
// as it stands at one moment, while others read and write. A copy is one file, without a log beside it.
#pragma once

#include <string>

#include "store/database.h"

namespace store {

// Every page, index and reference of the file is looked at; the first thing wrong is said (book-damaged). Words and
// numbers inside a row are past what this finds: versions and bodies carry a hash for that.
problem::Result<void> check_whole(Database& database);

// Writes all of `from` to a new file at `path`, checks it and has it on the disk when it returns. One that is there is
// replaced. Where it fails nothing is left at `path`.
problem::Result<void> copy_to(Database& from, const std::string& path);

// Puts the content of the book at `path` in the place of all that `into` holds, in one transaction: killed half-way,
// `into` is as before.
problem::Result<void> fill_from(Database& into, const std::string& path);

// Has the file or the folder on the disk; a name given or taken in a folder is there only once the folder is.
problem::Result<void> have_on_disk(const std::string& path);

}  // namespace store
