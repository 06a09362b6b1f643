// Who holds the book, and what a second window can do meanwhile: read, and be told who it is.
#include <sys/wait.h>
#include <unistd.h>

#include <QtCore/QCoreApplication>
#include <chrono>
#include <fstream>
#include <sstream>

#include "store/folder.h"
#include "store/jobs.h"
#include "store/lock.h"
#include "store/migrations.h"

namespace store {
namespace {

namespace fs = std::filesystem;

// The lock file of this program as if process `pid` had taken it.
void lie_a_lock(const std::string& path, long pid) {
  std::stringstream text;
  {
    const auto held = good(Lock::take(path, 0));
    text << std::ifstream(path).rdbuf();
  }
  std::string lines = text.str();
  lines.replace(0, lines.find('\n'), std::to_string(pid));
  std::ofstream(path) << lines;
}

long dead_process() {
  const pid_t child = fork();
  if (child == 0) _exit(0);
  waitpid(child, nullptr, 0);
  return child;
}

TEST(Holder, ASecondWindowReadsWithinASecondAndSaysWho) {
  const std::string folder = own_folder();
  JobBook first = opened(folder);
  EXPECT_FALSE(first.only_read());
  const auto id = good(first.add(demo_job("bakery-court")));
  const auto begun = std::chrono::steady_clock::now();
  auto second = good(JobBook::open_or_read(folder));
  EXPECT_LT(std::chrono::steady_clock::now() - begun, std::chrono::seconds(1));
  ASSERT_TRUE(second.only_read());
  EXPECT_EQ(second.only_read()->code, "book-held");
  const std::string who = "store_tests, process " + std::to_string(QCoreApplication::applicationPid());
  EXPECT_NE(second.only_read()->text.find(who), std::string::npos) << second.only_read()->text;
  EXPECT_TRUE(plan::same(good(second.read(id)), demo_job("bakery-court")));
  // What the first one writes afterwards is seen too.
  first.write(id, std::make_shared<const plan::Job>(edited(demo_job("bakery-court"), 1)));
  well(first.settle());
  EXPECT_TRUE(plan::same(good(second.read(id)), edited(demo_job("bakery-court"), 1)));
}

TEST(Holder, ABookOpenedToReadRefusesEveryChangeWithTheReason) {
  const std::string folder = own_folder();
  JobBook first = opened(folder);
  const auto id = good(first.add(demo_job("bakery-court")));
  JobBook second = good(JobBook::open_or_read(folder));
  EXPECT_EQ(second.add(demo_job("bakery-court")).error().code, "book-held");
  EXPECT_EQ(second.remove(id).error().code, "book-held");
  EXPECT_EQ(second.set("a", "b").error().code, "book-held");
  EXPECT_EQ(second.set_archived(id, true).error().code, "book-held");
  EXPECT_EQ(second.keep("bytes").error().code, "book-held");
  std::optional<problem::Problem> told;
  second.on_written([&](std::int64_t, std::optional<problem::Problem> fault) { told = std::move(fault); });
  second.write(id, std::make_shared<const plan::Job>(edited(demo_job("bakery-court"), 1)));
  ASSERT_TRUE(told);
  EXPECT_EQ(told->code, "book-held");
  EXPECT_TRUE(plan::same(good(first.read(id)), demo_job("bakery-court")));
}

TEST(Holder, ANewerBookIsReadAndItsFormNamed) {
  const std::string folder = own_folder();
  std::int64_t id = 0;
  {
    JobBook book = opened(folder);
    id = good(book.add(demo_job("bakery-court")));
  }
  const int newer = newest_form() + 1;
  {
    auto database = good(Database::open(folder + "/book.sqlite"));
    well(database.run(("PRAGMA user_version = " + std::to_string(newer)).c_str()));
  }
  EXPECT_EQ(JobBook::open(folder).error().code, "book-newer");
  JobBook book = good(JobBook::open_or_read(folder));
  ASSERT_TRUE(book.only_read());
  EXPECT_NE(book.only_read()->text.find("its form is " + std::to_string(newer)), std::string::npos);
  EXPECT_TRUE(plan::same(good(book.read(id)), demo_job("bakery-court")));
  EXPECT_FALSE(book.set("a", "b"));
}

TEST(Holder, ALockOfADeadProgramIsTakenOver) {
  const std::string path = own_folder() + "/window.lock";
  lie_a_lock(path, dead_process());
  EXPECT_TRUE(Lock::take(path, 0));
}

TEST(Holder, ALockWhoseNumberAnotherProgramGotIsTakenOver) {
  const std::string path = own_folder() + "/window.lock";
  lie_a_lock(path, 1);  // the first process of the machine lives, and is not this program
  EXPECT_TRUE(Lock::take(path, 0));
}

TEST(Holder, AClockADayOffMakesNoLockStaleAndNoneFresh) {
  for (const int days : {-1, 1}) {
    const std::string path = own_folder() + "/window" + std::to_string(days) + ".lock";
    const auto off = [&] { fs::last_write_time(path, fs::file_time_type::clock::now() + std::chrono::days(days)); };
    {
      const auto held = good(Lock::take(path, 0));
      off();
      const auto refused = Lock::take(path, 0);
      ASSERT_FALSE(refused) << days;
      EXPECT_EQ(refused.error().code, "book-held");
    }
    lie_a_lock(path, dead_process());
    off();
    EXPECT_TRUE(Lock::take(path, 0)) << days;
  }
}

// Rights say nothing to root, so what they do is looked at as nobody.
class AsNobody {
 public:
  AsNobody() : was_(geteuid()) {
    if (was_ == 0 && seteuid(65534) != 0) throw std::runtime_error("can't become nobody");
  }
  ~AsNobody() {
    if (was_ == 0 && seteuid(was_) != 0) std::abort();
  }

 private:
  uid_t was_;
};

TEST(Holder, AFolderThatCantBeWrittenIsRead) {
  const std::string folder = own_folder();
  std::int64_t id = 0;
  {
    JobBook book = opened(folder);
    id = good(book.add(demo_job("bakery-court")));
  }
  fs::permissions(fs::path(folder).parent_path(), fs::perms(0755));
  fs::permissions(folder, fs::perms(0555));
  {
    const AsNobody nobody;
    EXPECT_EQ(JobBook::open(folder).error().code, "book-lock");
    JobBook book = good(JobBook::open_or_read(folder));
    ASSERT_TRUE(book.only_read());
    EXPECT_EQ(good(book.jobs()).size(), 1U);
    EXPECT_TRUE(plan::same(good(book.read(id)), demo_job("bakery-court")));
    EXPECT_EQ(JobBook::open_or_read(folder + "/none").error().code, "book-folder");
  }
  fs::permissions(folder, fs::perms(0755));
}

TEST(Holder, AFolderThatVanishesIsSaidAndNothingCrashes) {
  const std::string folder = own_folder();
  JobBook book = opened(folder);
  const auto id = good(book.add(demo_job("bakery-court")));
  fs::remove_all(folder);
  // The disk took the file away under the open program: reads and writes fail with a sentence or still reach the old
  // file; a new start makes a new book.
  book.write(id, std::make_shared<const plan::Job>(edited(demo_job("bakery-court"), 1)));
  const auto settled = book.settle();
  if (!settled) {
    EXPECT_FALSE(settled.error().text.empty());
  }
  EXPECT_FALSE(fs::exists(folder + "/book.sqlite"));
}

}  // namespace
}  // namespace store
