// Backups of the job book: which are kept, what is in them, and that one put back gives the totals it was made with.
#include "store/backup.h"

#include <algorithm>
#include <fstream>
#include <random>

#include "store/copy.h"
#include "store/folder.h"
#include "store/jobs.h"
#include "store/lock.h"
#include "store/migrations.h"
#include "store/save_until_killed.h"

namespace store {
namespace {

namespace fs = std::filesystem;

// Day `n` of November 2026 (30 days), going on into December.
std::string time_of(int n, const std::string& clock = "T09:00:00Z") {
  const bool november = n <= 30;
  const std::string day = std::to_string(november ? n : n - 30);
  return std::string(november ? "2026-11-" : "2026-12-") + (day.size() < 2 ? "0" : "") + day + clock;
}

Backup of_day(int n, std::uintmax_t bytes = 1) { return {"b" + std::to_string(n), time_of(n), Why::day, bytes}; }

// The slow way: drops the oldest one as long as any rule is broken.
std::vector<Backup> dropped_slowly(std::vector<Backup> there, const std::vector<int>& days, const Keeping& keeping) {
  std::vector<Backup> dropped;
  for (std::size_t oldest = 0; there.size() > 1; ++oldest) {
    std::uintmax_t bytes = 0;
    for (const Backup& one : there) bytes += one.bytes;
    if (days.back() - days[oldest] < keeping.days && bytes <= keeping.bytes) break;
    dropped.push_back(there.front());
    there.erase(there.begin());
  }
  return dropped;
}

TEST(Backups, OneADay) {
  EXPECT_TRUE(due({}, time_of(5)));
  EXPECT_FALSE(due({of_day(5)}, time_of(5, "T23:59:59Z")));
  EXPECT_TRUE(due({of_day(5)}, time_of(6, "T00:00:00Z")));
}

TEST(Backups, FourteenDaysAreKept) {
  std::vector<Backup> there;
  for (int day = 1; day <= 20; ++day) there.push_back(of_day(day));
  const auto dropped = to_drop(there);
  ASSERT_EQ(dropped.size(), 6U);  // 20 - 14; the newest day counts as the first
  EXPECT_EQ(dropped.front(), of_day(1));
  EXPECT_EQ(dropped.back(), of_day(6));
}

TEST(Backups, TheLastIsNeverDropped) {
  EXPECT_TRUE(to_drop({}).empty());
  EXPECT_TRUE(to_drop({of_day(1, 3'000'000'000)}).empty());  // larger than all that is kept
  const auto dropped = to_drop({of_day(1, 10), of_day(2, 3'000'000'000)});
  ASSERT_EQ(dropped.size(), 1U);
  EXPECT_EQ(dropped[0], of_day(1, 10));
}

TEST(Backups, TheBytesOfAllTogetherAreKeptWithin) {
  // 900 + 900 = 1800 MiB fit into 2048, 2700 do not.
  const std::uintmax_t size = 900ULL * 1024 * 1024;
  const auto dropped = to_drop({of_day(1, size), of_day(2, size), of_day(3, size)});
  ASSERT_EQ(dropped.size(), 1U);
  EXPECT_EQ(dropped[0], of_day(1, size));
}

TEST(Backups, AreDroppedAsTheSlowWayDropsThem) {
  const auto seed = std::random_device{}();
  std::printf("seed: %u\n", seed);
  std::mt19937 random(seed);
  const auto up_to = [&](int most) { return std::uniform_int_distribution<int>(0, most)(random); };
  for (int round = 0; round < 2000; ++round) {
    std::vector<Backup> there;
    std::vector<int> days;
    for (int day = 1; day <= 60; ++day) {
      if (up_to(3) == 0) continue;
      there.push_back(of_day(day, static_cast<std::uintmax_t>(up_to(100))));
      days.push_back(day);
    }
    if (there.empty()) continue;
    const Keeping keeping{1 + up_to(30), static_cast<std::uintmax_t>(up_to(1500))};
    const auto expected = dropped_slowly(there, days, keeping);
    std::shuffle(there.begin(), there.end(), random);
    ASSERT_EQ(to_drop(there, keeping), expected) << "round " << round;
  }
}

struct Totals {
  std::vector<std::int64_t> coins;
  std::vector<std::string> names;
  bool operator==(const Totals&) const = default;
};

Totals totals(const std::string& folder) {
  JobBook book = opened(folder);
  Totals all;
  for (const JobRow& job : good(book.jobs())) {
    all.names.push_back(job.name);
    for (const VersionRow& row : good(book.versions(job.id)))
      all.coins.push_back(good(book.version(row.id)).kept.total.coins());
  }
  return all;
}

void save_one(const std::string& folder, std::int64_t n) {
  JobBook book = opened(folder);
  const auto jobs = good(book.jobs());
  const auto id = jobs.empty() ? good(book.add(demo_job("bakery-court"))) : jobs.front().id;
  good(book.save_version(id, job_of_version(n), kept_of_version(n), name_of_version(n), ""));
}

TEST(Backups, OnePutBackGivesTheTotalsItWasMadeWith) {
  const std::string folder = own_folder();
  save_one(folder, 1);
  save_one(folder, 2);
  const Totals before = totals(folder);
  // kept_of_version(n): the sum over i = 0 … 199 of n × 1000 + i is 200,000 n + 19,900.
  ASSERT_EQ(before.coins, (std::vector<std::int64_t>{419'900, 219'900}));
  const auto made = good(back_up_daily(folder, time_of(1)));
  ASSERT_TRUE(made);
  EXPECT_FALSE(good(back_up_daily(folder, time_of(1, "T20:00:00Z")))) << "one a day";
  save_one(folder, 3);
  const Totals after = totals(folder);
  ASSERT_EQ(after.coins.size(), 3U);
  well(restore(folder, made->path, time_of(2)));
  EXPECT_EQ(totals(folder), before);
  // What was there before is a backup now, and can be put back too.
  const auto rows = backups(folder);
  ASSERT_EQ(rows.size(), 2U);
  EXPECT_EQ(rows[0].backup.why, Why::restore);
  EXPECT_EQ(rows[0].backup.made, time_of(2));
  EXPECT_EQ(rows[0].jobs, std::optional<std::int64_t>(1));
  EXPECT_EQ(rows[1].backup, *made);
  well(restore(folder, rows[0].backup.path, time_of(3)));
  EXPECT_EQ(totals(folder), after);
}

TEST(Backups, AreOneFileAndWholeWhileTheWindowIsOpen) {
  const std::string folder = own_folder();
  JobBook book = opened(folder);
  const auto id = good(book.add(demo_job("bakery-court")));
  for (int n = 1; n < 20; ++n) book.write(id, std::make_shared<const plan::Job>(edited(demo_job("bakery-court"), n)));
  const auto made = good(back_up_daily(folder, time_of(1)));
  ASSERT_TRUE(made);
  int files = 0;
  for (const auto& file : fs::directory_iterator(folder + "/backups")) files += file.exists() ? 1 : 0;
  EXPECT_EQ(files, 1);
  auto copy = good(Database::open_to_read(made->path));
  well(check_whole(copy));
  EXPECT_EQ(copy.rows("PRAGMA journal_mode")->at(0).at(0), Bound(std::string("delete")));
  EXPECT_FALSE(copy.run("DELETE FROM jobs")) << "opened to read";
}

TEST(Backups, ARestoreIsRefusedWhileAWindowHoldsTheBook) {
  const std::string folder = own_folder();
  save_one(folder, 1);
  const auto made = good(back_up_daily(folder, time_of(1)));
  const JobBook book = opened(folder);
  const auto refused = restore(folder, made->path, time_of(2));
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().code, "book-held");
}

TEST(Backups, ADamagedBackupIsRefusedAndTheBookStays) {
  const std::string folder = own_folder();
  save_one(folder, 1);
  const Totals before = totals(folder);
  const auto made = good(back_up_daily(folder, time_of(1)));
  fs::resize_file(made->path, fs::file_size(made->path) / 2);
  EXPECT_FALSE(restore(folder, made->path, time_of(2)));
  EXPECT_FALSE(restore(folder, folder + "/backups/none.sqlite", time_of(2)));
  EXPECT_EQ(totals(folder), before);
}

TEST(Backups, ADamagedBookIsMovedAsideAndTheBackupTakesItsPlace) {
  const std::string folder = own_folder();
  save_one(folder, 1);
  const Totals before = totals(folder);
  const auto made = good(back_up_daily(folder, time_of(1)));
  std::ofstream(folder + "/book.sqlite") << std::string(5000, 'x');
  ASSERT_FALSE(JobBook::open(folder));
  well(restore(folder, made->path, time_of(2)));
  EXPECT_EQ(totals(folder), before);
  EXPECT_EQ(fs::file_size(folder + "/backups/damaged-20261102T090000Z.sqlite"), 5000U);
}

TEST(Backups, OneThatCantBeNamedLeavesTheOldOnesAndNothingHalf) {
  const std::string folder = own_folder();
  save_one(folder, 1);
  const auto first = good(back_up_daily(folder, time_of(1)));
  fs::create_directories(folder + "/backups/book-20261102T090000Z-day.sqlite/in the way");
  const auto second = back_up_daily(folder, time_of(2));
  ASSERT_FALSE(second);
  EXPECT_EQ(second.error().code, "book-backup");
  for (const auto& file : fs::directory_iterator(folder + "/backups"))
    EXPECT_FALSE(file.path().filename().string().starts_with("unfinished-")) << file.path();
  EXPECT_TRUE(fs::exists(first->path));
}

TEST(Backups, ComeBeforeANewForm) {
  const std::string folder = own_folder();
  {
    JobBook book = opened(folder);
  }
  back_to_form(folder + "/book.sqlite", 3);
  {
    JobBook book = opened(folder);
  }
  const auto there = backup_files(folder);
  ASSERT_EQ(there.size(), 1U);
  EXPECT_EQ(there[0].why, Why::new_form);
  auto old = good(Database::open_to_read(there[0].path));
  EXPECT_EQ(good(old.form()), 3);
  EXPECT_FALSE(fs::exists(folder + "/book.sqlite.trial"));
}

TEST(Backups, AStepThatCantBeDoneIsFoundOnTheCopy) {
  const std::string folder = own_folder();
  {
    JobBook book = opened(folder);
  }
  back_to_form(folder + "/book.sqlite", 3);
  {
    auto database = good(Database::open(folder + "/book.sqlite"));
    well(database.run("CREATE TABLE versions (in_the_way INTEGER)"));
  }
  EXPECT_FALSE(JobBook::open(folder));
  auto database = good(Database::open(folder + "/book.sqlite"));
  EXPECT_EQ(good(database.form()), 3);
  well(check_whole(database));
  EXPECT_FALSE(database.rows("SELECT number FROM jobs")) << "the step before the one that failed is undone too";
  EXPECT_FALSE(fs::exists(folder + "/book.sqlite.trial"));
}

}  // namespace
}  // namespace store
