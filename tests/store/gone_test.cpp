// A folder that is moved or taken away under an open book, one that can't be written, a restore where no backups lie.
#include <gtest/gtest.h>
#include <unistd.h>

#include <chrono>
#include <fstream>
#include <mutex>
#include <thread>

#include "store/backup.h"
#include "store/copy.h"
#include "store/folder.h"
#include "store/jobs.h"
#include "store/save_until_killed.h"

namespace store {
namespace {

namespace fs = std::filesystem;
using Clock = std::chrono::steady_clock;

// What the writer told last, from its own thread.
class Listener {
 public:
  explicit Listener(JobBook& book) {
    book.on_written([this](std::int64_t, std::optional<problem::Problem> fault) {
      const std::lock_guard lock(mutex_);
      last_ = std::move(fault);
      ++times_;
    });
  }
  // Waits for the next word, two seconds at most; nothing: none came.
  std::optional<std::optional<problem::Problem>> next() {
    for (const auto end = Clock::now() + std::chrono::seconds(2); Clock::now() < end;) {
      {
        const std::lock_guard lock(mutex_);
        if (times_ > heard_) {
          heard_ = times_;
          return last_;
        }
      }
      std::this_thread::sleep_for(std::chrono::milliseconds(5));
    }
    return {};
  }

 private:
  std::mutex mutex_;
  std::optional<problem::Problem> last_;
  int times_ = 0, heard_ = 0;
};

std::shared_ptr<const plan::Job> edit(int n) {
  return std::make_shared<const plan::Job>(edited(demo_job("bakery-court"), n));
}

TEST(Gone, AFolderMovedAwayIsSaidWithinTwoSecondsAndWrittenOnceItIsBack) {
  const std::string folder = own_folder() + "/here", away = own_folder() + "/away";
  fs::remove_all(folder);
  fs::remove_all(away);
  JobBook book = opened(folder);
  const auto id = good(book.add(demo_job("bakery-court")));
  fs::rename(folder, away);
  Listener listener(book);
  book.write(id, edit(1));
  const auto told = listener.next();
  ASSERT_TRUE(told && *told);
  EXPECT_EQ((*told)->code, "book-gone");
  EXPECT_EQ((*told)->place.file, folder + "/book.sqlite");
  EXPECT_TRUE(plan::same(good(book.read(id)), *edit(1))) << "the window still has it";
  const auto saved = book.save_version(id, *edit(1), kept_of_version(1), "one", "");
  ASSERT_FALSE(saved);
  EXPECT_EQ(saved.error().code, "book-gone");
  fs::rename(away, folder);
  const auto after = listener.next();
  ASSERT_TRUE(after);
  EXPECT_FALSE(*after) << problem::sentence(**after);
  auto again = good(JobBook::open_or_read(folder));
  EXPECT_TRUE(plan::same(good(again.read(id)), *edit(1)));
}

TEST(Gone, AFolderTakenAwayOrAnotherBookInItsPlaceIsSaid) {
  for (const bool replaced : {false, true}) {
    const std::string folder = own_folder() + "/taken";
    fs::remove_all(folder);
    JobBook book = opened(folder);
    const auto id = good(book.add(demo_job("bakery-court")));
    fs::remove_all(folder);
    fs::create_directories(folder);
    if (replaced) std::ofstream(folder + "/book.sqlite") << "another";
    Listener listener(book);
    book.write(id, edit(2));
    const auto told = listener.next();
    ASSERT_TRUE(told && *told) << replaced;
    EXPECT_EQ((*told)->code, "book-gone");
    EXPECT_FALSE(book.set_archived(id, true));
    EXPECT_FALSE(book.settle());
  }
}

TEST(Gone, AFolderThatCanNotBeWrittenIsSaidOrReadAlone) {
  if (geteuid() == 0) GTEST_SKIP() << "nothing is closed to this user, who is root";
  const std::string folder = own_folder() + "/closed";
  fs::remove_all(folder);
  std::int64_t id = 0;
  {
    JobBook book = opened(folder);
    id = good(book.add(demo_job("bakery-court")));
  }
  fs::permissions(folder, fs::perms::owner_read | fs::perms::owner_exec);
  const auto whole = JobBook::open(folder);
  auto read = JobBook::open_or_read(folder);
  fs::permissions(folder, fs::perms::owner_all);
  EXPECT_FALSE(whole);
  ASSERT_TRUE(read);
  EXPECT_TRUE(read->only_read());
  EXPECT_TRUE(plan::same(good(read->read(id)), demo_job("bakery-court")));
}

TEST(Gone, ADamagedBookIsRestoredWhereNoBackupsLieBesideIt) {
  const std::string folder = own_folder() + "/bare", elsewhere = own_folder() + "/elsewhere.sqlite";
  fs::remove_all(folder);
  std::int64_t id = 0;
  {
    JobBook book = opened(folder);
    id = good(book.add(demo_job("bakery-court")));
  }
  {
    auto database = good(Database::open_to_read(folder + "/book.sqlite"));
    well(copy_to(database, elsewhere));
  }
  std::ofstream(folder + "/book.sqlite", std::ios::binary) << "no database at all";
  fs::remove_all(folder + "/backups");
  well(restore(folder, elsewhere, "2026-11-02T09:00:00Z"));
  EXPECT_FALSE(fs::exists(folder + "/book.sqlite.restored"));
  EXPECT_TRUE(fs::exists(folder + "/backups/damaged-20261102T090000Z.sqlite"));
  JobBook book = opened(folder);
  EXPECT_TRUE(plan::same(good(book.read(id)), demo_job("bakery-court")));
}

}  // namespace
}  // namespace store
