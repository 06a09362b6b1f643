// What was entered against a version comes out as it went in, is never changed in place, and is there once it was said
// to be there, whatever happens to the program, the disk or the form of the book.
#include <QtCore/QCoreApplication>
#include <QtCore/QProcess>
#include <random>
#include <thread>

#include "store/backup.h"
#include "store/copy.h"
#include "store/enter_until_killed.h"
#include "store/faulty_disk.h"
#include "store/folder.h"
#include "store/jobs.h"
#include "store/migrations.h"
#include "store/random_kept.h"

namespace store {
namespace {

namespace fs = std::filesystem;
using estimate::Act;
using estimate::Entry;

std::int64_t with_a_version(JobBook& book, const std::string& name = "agreed") {
  const plan::Job job = demo_job("bakery-court");
  const auto id = good(book.add(job));
  return good(book.save_version(id, job, kept_with_lines(), name, "")).id;
}

// As it was given, but for the time, which is the book's.
Entry without_time(Entry entry) {
  entry.entered.clear();
  return entry;
}

TEST(Ledger, AnyEntryComesBackByValue) {
  const std::string folder = own_folder();
  JobBook book = opened(folder);
  const auto version = with_a_version(book);
  std::int64_t number = 0;
  std::vector<Entry> all;
  EXPECT_TRUE(rc::check("entered then read is the same", [&] {
    Entry entry;
    entry.act = estimate::all_acts[random_job::below(7)];  // of a line: planned to returned
    entry.line = {"base", "stone", plan::CostKind::material};
    entry.date = "2024-02-29";
    entry.quantity = random_job::below(1'000'000'001) / 8.0;
    entry.whole = random_job::below(1000) / 3.0;
    entry.unit = "ton";
    if (random_job::below(2) == 0) entry.price = units::Money::of_coins(random_job::below(100));
    for (std::string* words : {&entry.who, &entry.ticket, &entry.note}) random_job::fill(*words);
    const Entry entered = good(book.enter(version, entry));
    entry.number = ++number;
    RC_ASSERT(without_time(entered) == entry);
    RC_ASSERT(entered.entered.size() == std::string("2026-11-28T21:47:26Z").size());
    all.push_back(entered);
    RC_ASSERT(good(book.entries(version)) == all);
  }));
  book = opened(own_folder() + "-other");  // lets go of the first
  EXPECT_EQ(good(opened(folder).entries(version)), all);
}

TEST(Ledger, IsOfItsVersionAndCountsFromOne) {
  JobBook book = opened(own_folder());
  const auto a = with_a_version(book), b = with_a_version(book);
  EXPECT_EQ(good(book.enter(a, delivery(1))).number, 1);
  EXPECT_EQ(good(book.enter(b, delivery(1))).number, 1);
  EXPECT_EQ(good(book.enter(a, delivery(2))).number, 2);
  EXPECT_EQ(good(book.entries(a)).size(), 2U);
  EXPECT_EQ(good(book.entries(b)).size(), 1U);
  EXPECT_TRUE(good(book.entries(b + 1)).empty());
  EXPECT_EQ(book.enter(b + 1, delivery(1)).error().code, "version-none");
}

TEST(Ledger, ACorrectionIsAnEntryOfItsOwn) {
  JobBook book = opened(own_folder());
  const auto version = with_a_version(book);
  const Entry first = good(book.enter(version, delivery(1)));
  Entry mended = first;
  mended.corrects = first.number;
  mended.quantity = 9;
  good(book.enter(version, mended));
  const auto entries = good(book.entries(version));
  ASSERT_EQ(entries.size(), 2U);
  EXPECT_EQ(entries[0], first) << "what stood is untouched";
  EXPECT_EQ(entries[1].corrects, 1);
  EXPECT_EQ(book.enter(version, mended).error().code, "ledger-corrects");
  EXPECT_EQ(good(book.entries(version)).size(), 2U);
}

TEST(Ledger, WhatDoesNotFitIsRefusedAndNothingIsWritten) {
  JobBook book = opened(own_folder());
  const auto version = with_a_version(book);
  Entry bad = delivery(1);
  bad.line.item = "sand";
  EXPECT_EQ(book.enter(version, bad).error().code, "ledger-line");
  bad = delivery(1);
  bad.note = "\xff";
  EXPECT_EQ(book.enter(version, bad).error().code, "ledger-words");
  bad = delivery(1);
  bad.date = "2026-02-29";  // 2026 is no leap year
  EXPECT_EQ(book.enter(version, bad).error().code, "ledger-date");
  EXPECT_TRUE(good(book.entries(version)).empty());
}

TEST(Ledger, ABookOpenedToReadRefusesAndReads) {
  const std::string folder = own_folder();
  JobBook first = opened(folder);
  const auto version = with_a_version(first);
  good(first.enter(version, delivery(1)));
  JobBook second = good(JobBook::open_or_read(folder));
  EXPECT_EQ(second.enter(version, delivery(2)).error().code, "book-held");
  EXPECT_EQ(good(second.entries(version)).size(), 1U);
}

TEST(Ledger, OnlyClosedJobsWithEntriesAreGivenForOffers) {
  const std::string folder = own_folder();
  JobBook book = opened(folder);
  const auto closed = with_a_version(book, "closed"), open = with_a_version(book, "open"),
             empty = with_a_version(book, "empty");
  good(book.enter(closed, delivery(1)));
  good(book.enter(open, delivery(1)));
  const auto job_of = [&](std::int64_t version) { return good(book.version(version)).row.job; };
  // A later version without entries does not hide the one that has some.
  const plan::Job value = demo_job("bakery-court");
  good(book.save_version(job_of(closed), value, kept_with_lines(), "later", ""));
  well(book.set_state(job_of(closed), State::closed));
  well(book.set_archived(job_of(closed), true));
  well(book.set_state(job_of(empty), State::closed));
  well(book.set_state(job_of(open), State::building));
  const ClosedLedgers ledgers = good(book.closed_ledgers());
  ASSERT_EQ(ledgers.jobs.size(), 1U);
  EXPECT_EQ(ledgers.jobs[0].job, job_of(closed));
  EXPECT_EQ(ledgers.jobs[0].name, value.heading.name);
  EXPECT_EQ(ledgers.jobs[0].version.row.name, "closed");
  EXPECT_EQ(ledgers.jobs[0].entries, good(book.entries(closed)));
  EXPECT_TRUE(ledgers.left_out.empty());
  // One that was changed by hand is left out by name.
  auto database = good(Database::open(folder + "/book.sqlite"));
  well(database.run("UPDATE ledger SET act = 'eaten'"));
  const ClosedLedgers after = good(book.closed_ledgers());
  EXPECT_TRUE(after.jobs.empty());
  ASSERT_EQ(after.left_out.size(), 1U);
  EXPECT_EQ(after.left_out[0].code, "ledger-damaged");
}

TEST(Ledger, ABookOfTheFormBeforeIsBroughtOnWithAllThatItHad) {
  const std::string folder = own_folder();
  std::int64_t version = 0;
  {
    JobBook book = opened(folder);
    version = with_a_version(book);
  }
  back_to_form(folder + "/book.sqlite", 6);
  EXPECT_EQ(good(good(Database::open(folder + "/book.sqlite")).form()), 6);
  JobBook book = opened(folder);
  EXPECT_EQ(good(good(Database::open(folder + "/book.sqlite")).form()), newest_form());
  EXPECT_EQ(good(book.version(version)).kept, kept_with_lines());
  good(book.enter(version, delivery(1)));
  EXPECT_EQ(good(book.entries(version)).size(), 1U);
  const auto kept = backup_files(folder);  // as it was, before the new form
  ASSERT_EQ(kept.size(), 1U);
  EXPECT_EQ(kept[0].why, Why::new_form);
}

TEST(Ledger, OnADiskThatFailsAnEntryIsWholeOrNotThere) {
  let_disk_fail(Fails::never, 0);  // before any file is opened, so that all of them go this way
  const std::string folder = own_folder() + "/made";
  std::int64_t version = 0;
  {
    JobBook book = opened(folder);
    version = with_a_version(book);
  }
  std::size_t there = 0;
  int told = 0;
  for (int n = 1;; ++n) {
    bool failed = false;
    {
      JobBook book = opened(folder);
      let_disk_fail(Fails::once, n);
      const auto entered = book.enter(version, delivery(static_cast<std::int64_t>(there) + 1));
      failed = disk_failed();
      let_disk_fail(Fails::never, 0);
      if (entered) ++there;
      if (!entered) ++told;
    }
    const auto entries = good(opened(folder).entries(version));
    ASSERT_EQ(entries.size(), there) << "point " << n;
    for (const Entry& entry : entries) EXPECT_EQ(without_time(entry), delivery(entry.number));
    if (!failed) break;
    ASSERT_LT(n, 1000);
  }
  EXPECT_GT(told, 0);
  auto database = good(Database::open(folder + "/book.sqlite"));
  well(check_whole(database));
}

// Lets a program enter until `wait` after it called the first one entered, kills it, and gives the last that it called
// so.
std::int64_t killed_after(const std::string& folder, std::chrono::milliseconds wait) {
  QProcess program;
  program.start(QCoreApplication::applicationFilePath(), {enter_until_killed_word, QString::fromStdString(folder)});
  if (!program.waitForReadyRead(60'000)) return 0;
  std::this_thread::sleep_for(wait);
  program.kill();
  program.waitForFinished(60'000);
  EXPECT_EQ(program.exitStatus(), QProcess::CrashExit) << program.readAllStandardError().toStdString();
  const QList<QByteArray> lines = program.readAllStandardOutput().split('\n');
  return lines.size() < 2 ? 0 : lines[lines.size() - 2].toLongLong();  // a line half printed is none
}

TEST(Ledger, NoneThatWasCalledEnteredIsLostToAKill) {
  const auto seed = std::random_device{}();
  std::printf("seed of the moments: %u\n", seed);
  std::mt19937 random(seed);
  std::uniform_int_distribution<int> moment(0, 180);
  const std::string folder = own_folder() + "/killed";
  std::int64_t before = 0;
  for (int run = 0; run < 8; ++run) {
    const std::int64_t promised = killed_after(folder, std::chrono::milliseconds(moment(random)));
    ASSERT_GT(promised, before) << "run " << run;
    JobBook book = opened(folder);
    const auto entries = good(book.entries(good(book.versions(good(book.jobs()).front().id)).front().id));
    const auto count = static_cast<std::int64_t>(entries.size());
    EXPECT_GE(count, promised) << "run " << run;
    EXPECT_LE(count, promised + 1) << "run " << run;  // at most the one that was in hand
    for (std::int64_t i = 0; i < count; ++i)
      ASSERT_EQ(without_time(entries[static_cast<std::size_t>(i)]), delivery(i + 1)) << "run " << run;
    before = count;
  }
  std::printf("%lld entries called entered\n", static_cast<long long>(before));
}

}  // namespace
}  // namespace store
