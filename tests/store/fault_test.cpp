// A disk that fails at the first write, at the second, … until a save goes through: what was there is whole, nothing
// half is called saved, and the cause is said. Every tenth
// point is tried, or every GROUNDCOURSE_FAULT_STEP-th.
#include <cstdlib>

#include <fstream>

#include "store/backup.h"
#include "store/copy.h"
#include "store/faulty_disk.h"
#include "store/folder.h"
#include "store/jobs.h"
#include "store/save_until_killed.h"

namespace store {
namespace {

namespace fs = std::filesystem;

int step() {
  const char* word = std::getenv("GROUNDCOURSE_FAULT_STEP");
  return word == nullptr ? 10 : std::max(1, std::atoi(word));
}

std::string prepared() {
  const std::string folder = own_folder() + "/made";
  JobBook book = opened(folder);
  const auto id = good(book.add(demo_job("bakery-court")));
  good(book.save_version(id, job_of_version(1), kept_of_version(1), name_of_version(1), ""));
  return folder;
}

void copy_folder(const std::string& from, const std::string& to) {
  fs::remove_all(to);
  fs::copy(from, to, fs::copy_options::recursive);
}

// The versions are 1 … as many as there must be, each whole.
void expect_versions(const std::string& folder, std::size_t least, std::size_t most) {
  {
    auto database = good(Database::open(folder + "/book.sqlite"));
    well(check_whole(database));
  }
  JobBook book = opened(folder);
  const auto rows = good(book.versions(good(book.jobs()).front().id));
  ASSERT_GE(rows.size(), least);
  ASSERT_LE(rows.size(), most);
  for (const VersionRow& row : rows) EXPECT_EQ(good(book.version(row.id)).kept, kept_of_version(row.number));
}

struct Points {
  int tried = 0, told = 0;
};

void expect_cause(const problem::Problem& fault) {
  const std::string text = problem::sentence(fault);
  EXPECT_TRUE(text.find("full") != std::string::npos || text.find("I/O error") != std::string::npos ||
              text.find("unable to open") != std::string::npos)
      << text;
}

// Saves a second version with the `n`-th point failing; nothing: the save went past it and no point failed.
std::optional<problem::Result<void>> save_at_point(const std::string& folder, Fails how, int n) {
  JobBook book = opened(folder);
  const auto id = good(book.jobs()).front().id;
  let_disk_fail(how, n);
  const auto saved = book.save_version(id, job_of_version(2), kept_of_version(2), name_of_version(2), "");
  const bool failed = disk_failed();
  let_disk_fail(Fails::never, 0);
  if (!failed) return {};
  if (saved) return problem::Result<void>();
  return problem::Result<void>(std::unexpected(saved.error()));
}

class EveryPoint : public ::testing::TestWithParam<Fails> {};

TEST_P(EveryPoint, ASaveIsWholeOrNotThere) {
  let_disk_fail(Fails::never, 0);  // before any file is opened, so that all of them go this way
  const std::string made = prepared(), folder = made + "-now";
  Points points;
  for (int n = 1;; n += step()) {
    ASSERT_LT(n, 10'000);
    copy_folder(made, folder);
    const auto saved = save_at_point(folder, GetParam(), n);
    if (!saved) {
      expect_versions(folder, 2, 2);
      break;
    }
    ++points.tried;
    if (!*saved) {
      ++points.told;
      expect_cause(saved->error());
    }
    expect_versions(folder, *saved ? 2 : 1, *saved ? 2 : 1);
  }
  EXPECT_GT(points.told, 0);
  std::printf("%d points, %d of them refused the save\n", points.tried, points.told);
}

TEST_P(EveryPoint, ABackupIsWholeOrNotThere) {
  let_disk_fail(Fails::never, 0);
  const std::string folder = prepared();
  Points points;
  for (int n = 1;; n += step()) {
    ASSERT_LT(n, 10'000);
    fs::remove_all(folder + "/backups");
    let_disk_fail(GetParam(), n);
    const auto made = back_up_daily(folder, "2026-11-01T09:00:00Z");
    const bool failed = disk_failed();
    let_disk_fail(Fails::never, 0);
    const auto there = backup_files(folder);
    EXPECT_EQ(there.size(), made ? 1U : 0U);
    for (const Backup& one : there) {
      auto database = good(Database::open_to_read(one.path));
      well(check_whole(database));
    }
    expect_versions(folder, 1, 1);
    if (!failed) break;
    ++points.tried;
    if (!made) ++points.told;
  }
  EXPECT_GT(points.told, 0);
  std::printf("%d points, %d of them refused the backup\n", points.tried, points.told);
}

TEST_P(EveryPoint, ARestoreLeavesTheOldBookOrTheBackup) {
  let_disk_fail(Fails::never, 0);
  const std::string made = prepared(), folder = made + "-now";
  const auto backup = good(back_up_daily(made, "2026-11-01T09:00:00Z"));
  const std::string name = fs::path(backup->path).filename();
  {
    JobBook book = opened(made);
    good(
        book.save_version(good(book.jobs()).front().id, job_of_version(2), kept_of_version(2), name_of_version(2), ""));
  }
  Points points;
  for (int n = 1;; n += step()) {
    ASSERT_LT(n, 10'000);
    copy_folder(made, folder);
    let_disk_fail(GetParam(), n);
    const auto restored = restore(folder, folder + "/backups/" + name, "2026-11-02T09:00:00Z");
    const bool failed = disk_failed();
    let_disk_fail(Fails::never, 0);
    if (restored)
      expect_versions(folder, 1, 1);
    else
      expect_versions(folder, 1, 2);
    if (!failed) break;
    ++points.tried;
    if (!restored) ++points.told;
  }
  EXPECT_GT(points.told, 0);
  std::printf("%d points, %d of them refused the restore\n", points.tried, points.told);
}

INSTANTIATE_TEST_SUITE_P(Disk, EveryPoint, ::testing::Values(Fails::once, Fails::from_then_on),
                         [](const auto& one) { return one.param == Fails::once ? "Once" : "FromThenOn"; });

}  // namespace
}  // namespace store
