// The forms that the job book's tables have had, step by step. A step is never changed once people have it; a new form
// is a new step behind it.
#pragma once

#include "store/database.h"

namespace store {

// The number of the last step that this program knows.
int newest_form();

// Does the steps that the file lacks, each in one transaction. A file with a newer form than this program knows is
// refused.
problem::Result<void> migrate(Database& database);

}  // namespace store
