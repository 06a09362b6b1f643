#include "store/copy.h"

#include <fcntl.h>
#include <sqlite3.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>
#include <filesystem>
#include <optional>

#include "store/page_sums.h"

namespace store {

using problem::Result;

namespace {

std::unexpected<problem::Problem> refuse(const std::string& path, const std::string& cause) {
  return problem::fault("book-copy", "the job book can't be copied: " + cause,
                        "look at the space on the disk and at the rights of the folder", {{}, path, 0, 0, {}});
}

// The driver must bring the same SQLite as the one linked here: a connection of another one can't be handed over.
Result<void> check_library(Database& database) {
  const auto source = database.rows("SELECT sqlite_source_id()");
  if (!source) return std::unexpected(source.error());
  if (source->at(0).at(0) == Bound(std::string(sqlite3_sourceid()))) return {};
  return refuse(database.path(), "Qt's SQLite is another one than the program's");
}

Result<void> copy_pages(Database& from, Database& into) {
  if (auto same = check_library(from); !same) return same;
  auto* const target = static_cast<sqlite3*>(into.handle());
  auto* const source = static_cast<sqlite3*>(from.handle());
  expect_sums(target, has_sums(source));
  sqlite3_backup* const copying = sqlite3_backup_init(target, "main", source, "main");
  if (copying == nullptr) return refuse(into.path(), sqlite3_errmsg(target));
  // All pages in one step, so that no writer can change the file in between and make the copy begin again.
  int told = sqlite3_backup_step(copying, -1);
  for (int waited = 0; (told == SQLITE_BUSY || told == SQLITE_LOCKED) && waited < 50; ++waited) {
    sqlite3_sleep(100);
    told = sqlite3_backup_step(copying, -1);
  }
  const int ended = sqlite3_backup_finish(copying);
  if (told != SQLITE_DONE) return refuse(into.path(), sqlite3_errstr(told));
  if (ended != SQLITE_OK) return refuse(into.path(), sqlite3_errstr(ended));
  return {};
}

void drop(const std::string& path) {
  std::error_code error;
  for (const char* tail : {"", "-journal", "-wal", "-shm"}) std::filesystem::remove(path + tail, error);
}

Result<void> make_copy(Database& from, const std::string& path) {
  auto copy = Database::open(path);
  if (!copy) return std::unexpected(copy.error());
  if (auto done = copy_pages(from, *copy); !done) return done;
  if (auto one_file = copy->run("PRAGMA journal_mode = DELETE"); !one_file) return one_file;
  return check_whole(*copy);
}

}  // namespace

Result<void> check_whole(Database& database) {
  const auto pages = database.rows("PRAGMA integrity_check(1)");
  if (!pages) return std::unexpected(pages.error());
  const auto references = database.rows("PRAGMA foreign_key_check");
  if (!references) return std::unexpected(references.error());
  std::optional<std::string> wrong;
  if (pages->empty() || pages->at(0).at(0) != Bound(std::string("ok")))
    wrong = pages->empty() ? "no answer" : std::get<std::string>(pages->at(0).at(0));
  else if (!references->empty())
    wrong = "a row of " + std::get<std::string>(references->at(0).at(0)) + " names one that is not there";
  if (!wrong) return {};
  return problem::fault("book-damaged", "the job book's file is damaged: " + *wrong, "restore the newest whole backup",
                        {{}, database.path(), 0, 0, {}});
}

Result<void> copy_to(Database& from, const std::string& path) {
  drop(path);
  auto made = make_copy(from, path);
  if (made) made = have_on_disk(path);
  if (!made) drop(path);
  return made;
}

Result<bool> can_fill(Database& into, const std::string& path) {
  auto from = Database::open_to_read(path);
  if (!from) return std::unexpected(from.error());
  return has_sums(static_cast<sqlite3*>(into.handle())) == has_sums(static_cast<sqlite3*>(from->handle()));
}

Result<void> fill_from(Database& into, const std::string& path) {
  auto from = Database::open_to_read(path);
  if (!from) return std::unexpected(from.error());
  return copy_pages(*from, into);
}

Result<void> have_on_disk(const std::string& path) {
  const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
  if (file < 0) return refuse(path, std::strerror(errno));
  const int done = ::fsync(file);
  const int cause = errno;
  ::close(file);
  if (done != 0) return refuse(path, std::strerror(cause));
  return {};
}

}  // namespace store
