// Backups of the job book: whole copies in the folder backups/ beside it. One a day, one before the tables get a new
// form, one before a backup is restored. Times are in UTC, written as 2026-11-28T21:47:26Z, and come from the caller.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "store/database.h"

namespace store {

// Why a backup was made; it stands in the file's name.
enum class Why { day, new_form, restore };

struct Backup {
  std::string path;
  std::string made;  // 2026-11-28T21:47:26Z
  Why why = Why::day;
  std::uintmax_t bytes = 0;
  bool operator==(const Backup&) const = default;
};

struct BackupRow {
  Backup backup;
  std::optional<std::int64_t> jobs;  // nothing: it can't be read, or is older than jobs are
};

// How long and how much is kept.
struct Keeping {
  int days = 14;                                     // the day of the newest backup counts as the first
  std::uintmax_t bytes = 2ULL * 1024 * 1024 * 1024;  // of all together
};

// Whether there is still no backup of the day of `now`.
bool due(const std::vector<Backup>& there, const std::string& now);
// Those to be dropped, the oldest first: older than the days that are kept, then as many as it takes to come within the
// bytes. Days are counted from the newest backup, not from today: after a winter without the program, or with a clock
// that stands wrong, the last ones are still there. The newest is never among them.
std::vector<Backup> to_drop(const std::vector<Backup>& there, const Keeping& keeping = {});

// The backups of the book in `folder`, the newest first; files of other names are left out.
std::vector<Backup> backup_files(const std::string& folder);
// The same with the number of jobs in each.
std::vector<BackupRow> backups(const std::string& folder);

// Makes a backup: written under another name, checked, on the disk, then named; then drops those that are too many. A
// backup that can't be made leaves the older ones alone and says why.
problem::Result<Backup> back_up(Database& book, const std::string& folder, Why why, const std::string& now,
                                const Keeping& keeping = {});
// The backup of the day, if there is none yet. To be called when the book was opened.
problem::Result<std::optional<Backup>> back_up_daily(const std::string& folder, const std::string& now,
                                                     const Keeping& keeping = {});

// Puts a backup in the place of the book. The present book becomes a backup first; one too damaged for that is moved
// aside as it lies (damaged-...). A window that holds the book must be closed: refused by its name (book-held). A
// backup that is not whole is refused, and the book stays.
problem::Result<void> restore(const std::string& folder, const std::string& backup, const std::string& now);

}  // namespace store
