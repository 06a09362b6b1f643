#include "store/small_disk.h"

#include <sched.h>
#include <sys/mount.h>
#include <unistd.h>

#include <cstdio>
#include <fstream>

#include "store/backup.h"
#include "store/copy.h"
#include "store/job_tables.h"
#include "store/jobs.h"
#include "store/save_until_killed.h"

namespace store {

namespace {

void write_word(const std::string& path, const std::string& word) { std::ofstream(path) << word; }

// A world of mounts of our own: as root at once, else as the root of a world of our own.
bool own_mounts() {
  const std::string user = "0 " + std::to_string(getuid()) + " 1", group = "0 " + std::to_string(getgid()) + " 1";
  if (unshare(CLONE_NEWNS) != 0) {
    if (unshare(CLONE_NEWUSER | CLONE_NEWNS) != 0) return false;
    write_word("/proc/self/setgroups", "deny");
    write_word("/proc/self/uid_map", user);
    write_word("/proc/self/gid_map", group);
  }
  return mount("none", "/", nullptr, MS_REC | MS_PRIVATE, nullptr) == 0;
}

// Takes all that is left of the disk.
void fill(const std::string& path) {
  std::ofstream file(path, std::ios::binary);
  const std::string block(4096, 'x');
  while (file.write(block.data(), 4096).flush()) {
  }
}

int failed(const std::string& what) {
  std::printf("failed: %s\n", what.c_str());
  return 1;
}

int said(const char* step, const problem::Problem& fault) {
  const std::string text = problem::sentence(fault);
  if (text.find("full") == std::string::npos && text.find("space") == std::string::npos) return failed(text);
  std::printf("%s refused: %s\n", step, text.c_str());
  return 0;
}

}  // namespace

int on_a_small_disk(const std::string& folder) {
  if (!own_mounts() || mount("tmpfs", folder.c_str(), "tmpfs", 0, "size=8m") != 0) return no_disk;
  const std::string home = folder + "/book", ballast = folder + "/ballast";
  JobBook book = opened(home);
  const plan::Job job = demo_job("bakery-court");
  const auto id = good(book.add(job));
  good(book.save_version(id, job_of_version(1), kept_of_version(1), "one", ""));
  well(book.settle());
  fill(ballast);
  // Small edits still find room inside the files; a picture does not.
  const auto kept = book.keep(std::string(1'000'000, 'p'));
  if (kept) return failed("a picture went onto a full disk");
  if (const int wrong = said("picture", kept.error())) return wrong;
  std::optional<problem::Problem> fault;
  plan::Job last = job;
  for (int n = 1; n < 2000 && !fault; ++n) {
    last.heading.notes = std::string(static_cast<std::size_t>(n) * 1000, 'n');
    book.write(id, std::make_shared<const plan::Job>(last));
    if (const auto settled = book.settle(); !settled) fault = settled.error();
  }
  if (!fault) return failed("edits went onto a full disk");
  if (const int wrong = said("edit", *fault)) return wrong;
  if (!plan::same(good(book.read(id)), last)) return failed("the edit in hand was lost");
  if (const auto backup = back_up_daily(home, "2026-11-01T09:00:00Z"); backup) return failed("a backup was made");
  if (!backup_files(home).empty()) return failed("half a backup was left");
  if (good(book.version(good(book.versions(id)).front().id)).kept != kept_of_version(1))
    return failed("the version changed");
  std::remove(ballast.c_str());
  well(book.settle());
  good(book.save_version(id, job_of_version(2), kept_of_version(2), "two", ""));
  {
    auto database = good(Database::open_to_read(home + "/book.sqlite"));
    well(check_whole(database));
    if (!plan::same(good(take_job(database, id)), last)) return failed("the edit did not come after");
  }
  std::printf("with room again all was written\n");
  return 0;
}

}  // namespace store
