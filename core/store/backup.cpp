#include "store/backup.h"

#include <algorithm>
#include <chrono>
#include <filesystem>

#include "problem/ensure.h"
#include "store/copy.h"
#include "store/lock.h"
#include "store/migrations.h"

namespace store {

using problem::Result;
namespace fs = std::filesystem;

namespace {

constexpr int wait_milliseconds = 500;
constexpr const char* ending = ".sqlite";
constexpr const char* unfinished = "unfinished-";

std::string backup_folder(const std::string& folder) { return folder + "/backups"; }
std::string book_file(const std::string& folder) { return folder + "/book.sqlite"; }

std::string word(Why why) {
  switch (why) {
    case Why::day: return "day";
    case Why::new_form: return "new-form";
    case Why::restore: return "restore";
  }
  return {};
}

// 2026-11-28T21:47:26Z <-> 20261128T214726Z: a file's name has no colons on some disks.
std::string packed(const std::string& time) {
  std::string name = time;
  std::erase_if(name, [](char c) { return c == '-' || c == ':'; });
  return name;
}

constexpr const char* packed_form = "00000000T000000Z";

bool is_packed(const std::string& text) {
  return std::ranges::equal(text, std::string(packed_form), [](char have, char form) {
    return form == '0' ? have >= '0' && have <= '9' : have == form;
  });
}

std::string unpacked(const std::string& name) {
  return name.substr(0, 4) + "-" + name.substr(4, 2) + "-" + name.substr(6, 2) + "T" + name.substr(9, 2) + ":" +
         name.substr(11, 2) + ":" + name.substr(13, 2) + "Z";
}

std::string day(const std::string& time) { return time.substr(0, 10); }

std::chrono::sys_days date(const std::string& time) {
  const auto number = [&](std::size_t from, std::size_t count) { return std::stoi(time.substr(from, count)); };
  return std::chrono::year_month_day(std::chrono::year(number(0, 4)),
                                     std::chrono::month(static_cast<unsigned>(number(5, 2))),
                                     std::chrono::day(static_cast<unsigned>(number(8, 2))));
}

// book-20261128T214726Z-day.sqlite; nothing for any other name.
std::optional<Backup> backup_of(const fs::directory_entry& file) {
  std::error_code error;
  if (!file.is_regular_file(error)) return {};
  const std::string name = file.path().filename().string();
  constexpr std::size_t head = 5, time = 16;
  if (!name.starts_with("book-") || !name.ends_with(ending) || name.size() < head + time) return {};
  const std::string stamp = name.substr(head, time);
  if (!is_packed(stamp)) return {};
  for (const Why why : {Why::day, Why::new_form, Why::restore}) {
    if (name != "book-" + stamp + "-" + word(why) + ending) continue;
    const auto bytes = file.file_size(error);
    return Backup{file.path().string(), unpacked(stamp), why, error ? 0 : bytes};
  }
  return {};
}

std::unexpected<problem::Problem> refuse(const std::string& path, const std::string& cause) {
  return problem::fault("book-backup", "the backup can't be put in its place: " + cause,
                        "look at the space on the disk and at the rights of the folder", {{}, path, 0, 0, {}});
}

// What a program that was killed had begun.
void drop_unfinished(const std::string& folder) {
  std::error_code error;
  std::vector<fs::path> old;
  for (fs::directory_iterator file(backup_folder(folder), error), end; !error && file != end; file.increment(error))
    if (file->path().filename().string().starts_with(unfinished)) old.push_back(file->path());
  for (const fs::path& one : old) fs::remove(one, error);
}

Result<void> rename(const std::string& from, const std::string& to) {
  std::error_code error;
  fs::rename(from, to, error);
  if (error) return refuse(to, error.message());
  return have_on_disk(fs::path(to).parent_path().string());
}

// Moves a book that can't be read, with what lies beside it, out of the way.
Result<void> put_aside(const std::string& folder, const std::string& now) {
  const std::string to = backup_folder(folder) + "/damaged-" + packed(now) + ending;
  std::error_code error;
  if (auto made = make_folder(backup_folder(folder)); !made) return made;
  for (const char* tail : {"-wal", "-shm", ""}) {
    if (!fs::exists(book_file(folder) + tail, error)) continue;
    if (auto moved = rename(book_file(folder) + tail, to + tail); !moved) return moved;
  }
  return {};
}

// Whether the book is whole and takes the backup's pages as they are; one whose pages have sums takes none without.
bool takes(const std::string& path, const std::string& backup) {
  auto book = Database::open(path);
  if (!book || !check_whole(*book)) return false;
  const auto can = can_fill(*book, backup);
  return can && *can;
}

// Keeps the present book, then puts the backup's content into it.
Result<void> fill(const std::string& folder, const std::string& backup, const std::string& now) {
  auto book = Database::open(book_file(folder));
  if (!book) return std::unexpected(book.error());
  // All are kept for now: the one that is to be restored may be the oldest.
  const Keeping all{100'000, ~std::uintmax_t{0}};
  if (auto kept = back_up(*book, folder, Why::restore, now, all); !kept) return std::unexpected(kept.error());
  if (auto filled = fill_from(*book, backup); !filled) return filled;
  if (auto log = book->use_write_ahead_log(); !log) return log;
  return check_whole(*book);
}

// Puts a copy of the backup where there is no book, or one that can't be read or filled. The copy is whole and on the
// disk before the present file is touched: what seems damaged may only lie on a disk that fails just now.
Result<void> replace(const std::string& folder, const std::string& backup, const std::string& now) {
  const std::string copy = book_file(folder) + ".restored";
  {
    auto from = Database::open_to_read(backup);
    if (!from) return std::unexpected(from.error());
    if (auto copied = copy_to(*from, copy); !copied) return copied;
  }
  if (auto aside = put_aside(folder, now); !aside) {
    std::error_code error;
    fs::remove(copy, error);
    return aside;
  }
  return rename(copy, book_file(folder));
}

Result<void> check_backup(const std::string& path) {
  auto database = Database::open_to_read(path);
  if (!database) return std::unexpected(database.error());
  const auto form = database->form();
  if (!form) return std::unexpected(form.error());
  if (*form == 0)
    return problem::fault("book-damaged", "the backup is empty", "choose another one", {{}, path, 0, 0, {}});
  if (auto known = check_form(*database); !known) return known;
  return check_whole(*database);
}

}  // namespace

bool due(const std::vector<Backup>& there, const std::string& now) {
  return std::ranges::none_of(there, [&](const Backup& one) { return day(one.made) == day(now); });
}

std::vector<Backup> to_drop(const std::vector<Backup>& there, const Keeping& keeping) {
  std::vector<Backup> newest_first = there;
  std::ranges::stable_sort(newest_first, std::ranges::greater{}, &Backup::made);
  std::uintmax_t bytes = 0;
  std::size_t kept = 0;
  for (; kept < newest_first.size(); ++kept) {
    const Backup& one = newest_first[kept];
    const auto age = (date(newest_first.front().made) - date(one.made)).count();
    const bool fits = one.bytes <= keeping.bytes && bytes <= keeping.bytes - one.bytes;
    if (kept > 0 && (age >= keeping.days || !fits)) break;
    bytes += one.bytes;
  }
  std::vector<Backup> dropped(newest_first.begin() + static_cast<std::ptrdiff_t>(kept), newest_first.end());
  std::ranges::reverse(dropped);
  return dropped;
}

std::vector<Backup> backup_files(const std::string& folder) {
  std::vector<Backup> found;
  std::error_code error;
  for (fs::directory_iterator file(backup_folder(folder), error), end; !error && file != end; file.increment(error))
    if (auto one = backup_of(*file)) found.push_back(std::move(*one));
  std::ranges::sort(found, std::ranges::greater{}, [](const Backup& one) { return std::pair(one.made, one.path); });
  return found;
}

std::vector<BackupRow> backups(const std::string& folder) {
  std::vector<BackupRow> rows;
  for (Backup& one : backup_files(folder)) {
    BackupRow row{std::move(one), {}};
    if (auto database = Database::open_to_read(row.backup.path))
      if (const auto count = database->rows("SELECT count(*) FROM jobs"))
        row.jobs = std::get<std::int64_t>(count->at(0).at(0));
    rows.push_back(std::move(row));
  }
  return rows;
}

Result<Backup> back_up(Database& book, const std::string& folder, Why why, const std::string& now,
                       const Keeping& keeping) {
  problem::ensure(is_packed(packed(now)), "a time is written as 2026-11-28T21:47:26Z");
  if (auto made = make_folder(backup_folder(folder)); !made) return std::unexpected(made.error());
  drop_unfinished(folder);
  const std::string name = "book-" + packed(now) + "-" + word(why) + ending;
  const std::string begun = backup_folder(folder) + "/" + unfinished + name;
  if (auto copied = copy_to(book, begun); !copied) return std::unexpected(copied.error());
  Backup made{backup_folder(folder) + "/" + name, now, why, fs::file_size(begun)};
  if (auto named = rename(begun, made.path); !named) {
    drop_unfinished(folder);
    return std::unexpected(named.error());
  }
  for (const Backup& old : to_drop(backup_files(folder), keeping)) {
    std::error_code error;
    if (old.path != made.path) fs::remove(old.path, error);
  }
  return made;
}

Result<std::optional<Backup>> back_up_daily(const std::string& folder, const std::string& now, const Keeping& keeping) {
  if (!due(backup_files(folder), now)) return std::optional<Backup>();
  auto book = Database::open_to_read(book_file(folder));
  if (!book) return std::unexpected(book.error());
  auto made = back_up(*book, folder, Why::day, now, keeping);
  if (!made) return std::unexpected(made.error());
  return std::optional<Backup>(std::move(*made));
}

Result<void> restore(const std::string& folder, const std::string& backup, const std::string& now) {
  const auto window = Lock::take(folder + "/window.lock", wait_milliseconds);
  if (!window) return std::unexpected(window.error());
  const auto catalogue = Lock::take(folder + "/book.lock", wait_milliseconds);
  if (!catalogue) return std::unexpected(catalogue.error());
  if (auto good = check_backup(backup); !good) return good;
  if (fs::exists(book_file(folder)) && takes(book_file(folder), backup)) return fill(folder, backup, now);
  return replace(folder, backup, now);
}

}  // namespace store
