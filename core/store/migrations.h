// The forms that the job book's tables have had, step by step. A step is never changed once people have it; a new form
// is a new step behind it.
#pragma once

#include "store/database.h"

namespace store {

// The number of the last step that this program knows.
int newest_form();

// A file with a newer form than this program knows is refused, with both forms named (book-newer).
problem::Result<void> check_form(Database& database);

// Does the steps that the file lacks. A book that people have worked in is first copied to a backup, then the steps are
// done on a copy of their own, which is checked page by page and thrown away; only when all of that went well are they
// done on the book itself, in one transaction. A fault of a step is so found where it hurts nobody, and a program
// killed at any moment leaves the old form or the new one, whole: the transaction is undone when the file is next
// opened.
problem::Result<void> migrate(Database& database);

}  // namespace store
