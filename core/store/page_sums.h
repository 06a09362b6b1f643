// A sum in the last eight bytes of every page of the book's file, so that a bit that turned on the disk, or a page that
// was written in another one's place, is said when the page is read: whatever it holds (jobs, prices, versions),
// nothing else comes out of it than what was put in.
//
// It stands between SQLite and the disk (a VFS of SQLite, in front of the default one), for the file of the database
// alone: the log and the journals have sums of SQLite's own. The room for it is reserved when a file is made; a file
// without it (byte 20 of its head is not 8) is read and written without. Any program reads such a file, but one that
// writes it without these sums makes it one that is refused here.
//
// The sum is two words of 32 bits, each step of which can be walked back, so that one altered word always shows.
#pragma once

#include <cstdint>

struct sqlite3;

namespace store {

inline constexpr int sum_bytes = 8;
inline constexpr const char* summing_disk = "groundcourse-page-sums";  // its name for `?vfs=`

void have_summing_disk();  // once in a program is enough, more do no harm

// Reserves the room in a file that is still empty; without effect in any other.
void reserve_sums(sqlite3* database);

// Whether the file's pages have sums. Settled by its first page; for a copy, of which the first page may be written
// last, whoever copies says it before.
bool has_sums(sqlite3* database);
void expect_sums(sqlite3* database, bool expected);

// Whether reading a page was refused for its sum since the last time this was asked, on this thread.
bool a_sum_was_wrong();

std::uint64_t page_sum(const unsigned char* page, int bytes, std::int64_t number);  // of all but its last 8 bytes

}  // namespace store
