// The writer: few rows for one edit, the newest value of many, faults told and tried again, nothing half written.
#include "store/book_writer.h"

#include <algorithm>
#include <chrono>
#include <mutex>
#include <thread>

#include "files/fields.h"
#include "files/files.h"
#include "store/catalogue_book.h"
#include "store/folder.h"
#include "store/job_tables.h"
#include "store/jobs.h"

namespace store {
namespace {

using JobPtr = std::shared_ptr<const plan::Job>;
using Clock = std::chrono::steady_clock;

JobPtr pointer(plan::Job job) { return std::make_shared<const plan::Job>(std::move(job)); }

std::string book_in(const std::string& folder) {
  good(CatalogueBook::open(folder));
  return folder + "/book.sqlite";
}

std::int64_t number(Database& database, const char* question) {
  return std::get<std::int64_t>(good(database.rows(question)).at(0).at(0));
}

// Rows that the writer's own connection has changed so far.
std::int64_t rows_changed(BookWriter& writer) {
  std::int64_t count = 0;
  well(writer.run([&](Database& database) -> problem::Result<void> {
    count = number(database, "SELECT total_changes()");
    return {};
  }));
  return count;
}

plan::Job in_book(const std::string& path, std::int64_t id) {
  auto database = good(Database::open(path));
  return good(take_job(database, id));
}

struct Told {
  std::mutex mutex;
  std::vector<std::optional<problem::Problem>> all;
  std::size_t faults() {
    const std::lock_guard lock(mutex);
    return static_cast<std::size_t>(std::ranges::count_if(all, [](const auto& one) { return one.has_value(); }));
  }
  std::size_t times() {
    const std::lock_guard lock(mutex);
    return all.size();
  }
};

template <class Holds>
bool within(std::chrono::milliseconds time, const Holds& holds) {
  const auto end = Clock::now() + time;
  while (!holds()) {
    if (Clock::now() > end) return false;
    std::this_thread::sleep_for(std::chrono::milliseconds(5));
  }
  return true;
}

TEST(BookWriter, OneElementEditedWritesItsRowAndTheJobs) {
  const std::string path = book_in(own_folder());
  auto writer = good(BookWriter::start(path));
  plan::Job job = demo_job("pool-terrace-b");
  const auto id = good(writer->add(job));
  const auto rows_for = [&](const plan::Job& value) {
    const auto before = rows_changed(*writer);
    writer->hand_over(id, pointer(value));
    EXPECT_TRUE(writer->settle());
    return rows_changed(*writer) - before;
  };
  EXPECT_EQ(rows_for(job), 0);  // the first value after the start is told apart by its text
  plan::Element element = *job.elements[3];
  element.name = "renamed";
  job = plan::with(job, element);
  EXPECT_EQ(rows_for(job), 2);                       // the element's row and the job's count of edits
  EXPECT_EQ(rows_for(plan::with(job, element)), 0);  // another pointer, the same value
  job = plan::with(job, {"new", "", plan::Note{{}, "here"}});
  EXPECT_EQ(rows_for(job), 2);
  const plan::Job without = plan::without(job, job.elements[5]->id);
  EXPECT_EQ(rows_for(without), 2);
  EXPECT_EQ(rows_for(job), 2);  // undone: back into the gap that it left
  job.heading.customer = "Somebody else";
  EXPECT_EQ(rows_for(job), 2);  // the job's row twice
  EXPECT_TRUE(plan::same(in_book(path, id), job));
}

TEST(BookWriter, OneEditGrowsTheFileByAFewPages) {
  const std::string path = book_in(own_folder());
  auto writer = good(BookWriter::start(path));
  plan::Job job = demo_job("pool-terrace-b");
  const auto id = good(writer->add(job));
  writer->hand_over(id, pointer(job));
  ASSERT_TRUE(writer->settle());
  const auto size = [&] { return std::filesystem::file_size(path + "-wal"); };
  ASSERT_TRUE(writer->run([](Database& database) { return database.run("PRAGMA wal_checkpoint(TRUNCATE)"); }));
  const auto before = size();
  plan::Element element = *job.elements[3];
  element.name = "renamed";
  writer->hand_over(id, pointer(plan::with(job, element)));
  ASSERT_TRUE(writer->settle());
  // Pages of 4,096 bytes and 24 before each. The job's text has some 230,000 bytes: 56 pages; an edit touches the
  // element's leaf and overflow, the job's leaf, and the indexes of what was replaced and counted.
  const auto pages = (size() - before) / 4120;
  RecordProperty("pages", static_cast<int>(pages));
  EXPECT_GE(pages, 2u);
  EXPECT_LE(pages, 10u);
}

TEST(BookWriter, OfManyValuesTheNewestIsWritten) {
  const std::string path = book_in(own_folder());
  auto writer = good(BookWriter::start(path));
  plan::Job job = demo_job("bakery-court");
  const auto id = good(writer->add(job));
  Told told;
  writer->on_written([&](std::int64_t, std::optional<problem::Problem> fault) {
    const std::lock_guard lock(told.mutex);
    told.all.push_back(std::move(fault));
  });
  const auto begin = Clock::now();
  for (int n = 0; n < 500; ++n) {
    job = edited(job, n);
    writer->hand_over(id, pointer(job));
  }
  const auto taken = std::chrono::duration_cast<std::chrono::milliseconds>(Clock::now() - begin).count();
  ASSERT_TRUE(writer->settle());
  EXPECT_TRUE(plan::same(in_book(path, id), job));
  // At most one write for each tenth of a second, the one asked for by settle, and one that was running.
  EXPECT_LE(told.times(), static_cast<std::size_t>(taken / 100 + 2));
  EXPECT_EQ(told.faults(), 0u);
  EXPECT_EQ(writer->unwritten(id), nullptr);
  writer->on_written({});
}

TEST(BookWriter, WithoutBeingAskedItWritesWithinASecond) {
  const std::string path = book_in(own_folder());
  auto writer = good(BookWriter::start(path));
  const plan::Job job = demo_job("bakery-court");
  const auto id = good(writer->add(job));
  auto reader = good(Database::open(path));
  for (int n = 1; n <= 5; ++n) {
    const plan::Job after = edited(job, n);
    writer->hand_over(id, pointer(after));
    EXPECT_TRUE(within(std::chrono::milliseconds(1000), [&] { return plan::same(good(take_job(reader, id)), after); }))
        << n;
  }
}

TEST(BookWriter, AFaultIsToldOnceAndTriedAgain) {
  const std::string path = book_in(own_folder());
  auto writer = good(BookWriter::start(path));
  const plan::Job job = demo_job("bakery-court");
  const auto id = good(writer->add(job));
  auto hand = good(Database::open(path));
  ASSERT_TRUE(
      hand.run("CREATE TRIGGER full BEFORE INSERT ON job_elements BEGIN SELECT RAISE(FAIL, 'disk is full'); END"));
  Told told;
  writer->on_written([&](std::int64_t, std::optional<problem::Problem> fault) {
    const std::lock_guard lock(told.mutex);
    told.all.push_back(std::move(fault));
  });
  plan::Job after = edited(job, 1);
  writer->hand_over(id, pointer(after));
  const auto settled = writer->settle();
  ASSERT_FALSE(settled);
  EXPECT_EQ(settled.error().code, "book-database");
  EXPECT_NE(settled.error().text.find("disk is full"), std::string::npos) << settled.error().text;
  EXPECT_TRUE(plan::same(in_book(path, id), job)) << "nothing of it was written";
  ASSERT_NE(writer->unwritten(id), nullptr);
  EXPECT_TRUE(plan::same(*writer->unwritten(id), after));
  EXPECT_FALSE(writer->settle());
  EXPECT_EQ(told.faults(), 1u);  // the same one is told once
  ASSERT_TRUE(hand.run("DROP TRIGGER full"));
  // Nobody asks: it comes by itself, a second after the last try.
  EXPECT_TRUE(within(std::chrono::milliseconds(3000), [&] { return writer->unwritten(id) == nullptr; }));
  EXPECT_TRUE(plan::same(in_book(path, id), after));
  after = edited(after, 2);
  writer->hand_over(id, pointer(after));
  EXPECT_TRUE(writer->settle());
  EXPECT_TRUE(plan::same(in_book(path, id), after));
  writer->on_written({});
}

// The row that fails is the last of several: those before it are not there either.
TEST(BookWriter, AWriteIsAllOrNothing) {
  const std::string path = book_in(own_folder());
  auto writer = good(BookWriter::start(path));
  const plan::Job job = demo_job("bakery-court");
  const auto id = good(writer->add(job));
  auto hand = good(Database::open(path));
  ASSERT_TRUE(hand.run(
      "CREATE TRIGGER odd BEFORE INSERT ON job_elements WHEN new.id = 'Z' BEGIN SELECT RAISE(FAIL, 'no'); END"));
  plan::Job after = edited(job, 1);
  after.heading.name = "Another";
  after = plan::with(after, {"Y", "", plan::Note{}});
  after = plan::with(after, {"Z", "", plan::Note{}});
  writer->hand_over(id, pointer(after));
  EXPECT_FALSE(writer->settle());
  EXPECT_TRUE(plan::same(in_book(path, id), job));
  ASSERT_TRUE(hand.run("DROP TRIGGER odd"));
  EXPECT_TRUE(writer->settle());
  EXPECT_TRUE(plan::same(in_book(path, id), after));
}

TEST(BookWriter, AnElementThatCannotBeReadBackKeepsNothingElseOut) {
  const std::string path = book_in(own_folder());
  auto writer = good(BookWriter::start(path));
  plan::Job job = demo_job("pool-terrace-a");
  const auto id = good(writer->add(job));
  plan::Element bad = *job.find("A1");
  // Further out than a job file may say.
  std::get<plan::PavedArea>(bad.kind).outline[0].edges[0].from.x = units::Length::of_steps(files::most_steps + 1);
  plan::Job after = plan::with(job, bad);
  after = plan::with(after, {"N1", "new", plan::Note{{}, "kept"}});
  writer->hand_over(id, pointer(after));
  const auto settled = writer->settle();
  ASSERT_FALSE(settled);
  EXPECT_EQ(settled.error().code, "job-not-kept");
  EXPECT_EQ(settled.error().place.element, "A1");
  // The new note is there, A1 as it was before.
  EXPECT_TRUE(plan::same(in_book(path, id), plan::with(after, *job.find("A1"))));
  std::get<plan::PavedArea>(bad.kind).outline[0].edges[0].from.x = units::Length::of_steps(files::most_steps);
  after = plan::with(after, bad);
  writer->hand_over(id, pointer(after));
  ASSERT_TRUE(writer->settle());
  EXPECT_TRUE(plan::same(in_book(path, id), after));
}

TEST(BookWriter, AddingWhatCannotBeReadBackAddsNothing) {
  const std::string path = book_in(own_folder());
  auto writer = good(BookWriter::start(path));
  plan::Job job = demo_job("pool-terrace-a");
  job.choices.reach = units::Length::of_steps(files::most_steps + 1);
  const auto refused = writer->add(job);
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().code, "job-not-kept");
  auto database = good(Database::open(path));
  EXPECT_EQ(number(database, "SELECT count(*) FROM jobs"), 0);
  EXPECT_EQ(number(database, "SELECT count(*) FROM bodies"), 0);
}

TEST(BookWriter, AJobThatTheBookDoesNotHaveIsAFault) {
  auto writer = good(BookWriter::start(book_in(own_folder())));
  writer->hand_over(77, pointer(demo_job("bakery-court")));
  const auto settled = writer->settle();
  ASSERT_FALSE(settled);
  EXPECT_EQ(settled.error().code, "job-none");
}

TEST(BookWriter, TheEndWritesWhatWasHandedOver) {
  const std::string path = book_in(own_folder());
  const plan::Job job = demo_job("bakery-court");
  std::int64_t id = 0;
  plan::Job after = job;
  {
    auto writer = good(BookWriter::start(path));
    id = good(writer->add(job));
    for (int n = 0; n < 40; ++n) writer->hand_over(id, pointer(after = edited(after, n)));
  }
  EXPECT_TRUE(plan::same(in_book(path, id), after));
}

TEST(BookWriter, ABookThatIsNotOneIsRefused) { EXPECT_FALSE(BookWriter::start(own_folder() + "/none/book.sqlite")); }

}  // namespace
}  // namespace store
