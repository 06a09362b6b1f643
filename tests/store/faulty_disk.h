// A disk that fails: SQLite's own way to the disk with a counter in between. Counted are writes, syncs, truncations,
// openings and deletions of every file that SQLite keeps.
#pragma once

namespace store {

enum class Fails { never, once, from_then_on };

// From now on the `n`-th of these (from 1) fails, once or with all that come after it. Counting begins anew.
void let_disk_fail(Fails how, int n);
// Whether the one that was to fail came.
bool disk_failed();

}  // namespace store
