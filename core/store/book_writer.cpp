#include "store/book_writer.h"

#include <chrono>
#include <condition_variable>
#include <deque>
#include <future>
#include <map>
#include <mutex>
#include <thread>

#include "problem/ensure.h"
#include "store/job_tables.h"

namespace store {

using problem::Problem;
using problem::Result;
using Clock = std::chrono::steady_clock;

namespace {

// A dragged corner hands over sixty values a second: they are gathered, the disk is not worn by each.
constexpr auto between_writes = std::chrono::milliseconds(100);
constexpr auto between_tries = std::chrono::seconds(1);

// A job whose newest value is not on the disk yet.
struct Waiting {
  BookWriter::JobPtr value;
  Clock::time_point due;
  std::optional<Problem> fault;  // of the last try
};

// Work that somebody waits for.
struct Asked {
  BookWriter::Work work;
  std::promise<Result<void>> done;
};

}  // namespace

struct BookWriter::Inside {
  mutable std::mutex mutex;
  std::condition_variable news;
  std::map<std::int64_t, Waiting> waiting;
  std::deque<Asked> asked;
  Told told;
  bool ending = false;

  // Only the writer's own thread touches this.
  std::map<std::int64_t, KeptJob> kept;

  std::thread thread;

  void run(const std::string& path, std::promise<Result<void>> opened);
  void loop(Database& database);
  void write_due(Database& database, std::unique_lock<std::mutex>& lock, bool all);
  void write_one(Database& database, std::unique_lock<std::mutex>& lock, std::int64_t job);
  Result<PutJob> write(Database& database, std::int64_t job, const plan::Job& value);
  std::optional<Clock::time_point> next_due() const;
};

// --- on the writer's thread

void BookWriter::Inside::run(const std::string& path, std::promise<Result<void>> opened) {
  auto database = Database::open(path);
  if (!database) return opened.set_value(std::unexpected(database.error()));
  opened.set_value({});
  loop(*database);
}

void BookWriter::Inside::loop(Database& database) {
  std::unique_lock lock(mutex);
  while (true) {
    if (!asked.empty()) {
      write_due(database, lock, true);
      Asked one = std::move(asked.front());
      asked.pop_front();
      lock.unlock();
      auto done = one.work(database);
      one.done.set_value(std::move(done));
      lock.lock();
      continue;
    }
    if (ending) return write_due(database, lock, true);
    write_due(database, lock, false);
    if (!asked.empty() || ending) continue;
    if (const auto due = next_due())
      news.wait_until(lock, *due);
    else
      news.wait(lock);
  }
}

std::optional<Clock::time_point> BookWriter::Inside::next_due() const {
  std::optional<Clock::time_point> least;
  for (const auto& [job, one] : waiting)
    if (!least || one.due < *least) least = one.due;
  return least;
}

void BookWriter::Inside::write_due(Database& database, std::unique_lock<std::mutex>& lock, bool all) {
  std::vector<std::int64_t> due;
  for (const auto& [job, one] : waiting)
    if (all || one.due <= Clock::now()) due.push_back(job);
  for (const std::int64_t job : due) write_one(database, lock, job);
}

// Writes the newest value of a job with the mutex let go, and takes it off the list unless a newer one came meanwhile.
void BookWriter::Inside::write_one(Database& database, std::unique_lock<std::mutex>& lock, std::int64_t job) {
  const JobPtr value = waiting.at(job).value;
  lock.unlock();
  const auto put = write(database, job, *value);
  std::optional<Problem> fault;
  if (!put)
    fault = put.error();
  else if (!put->not_kept.empty())
    fault = put->not_kept.front();
  lock.lock();
  const auto at = waiting.find(job);
  const bool known = fault && at->second.fault == fault;
  at->second.fault = fault;
  if (fault)
    at->second.due = Clock::now() + between_tries;
  else if (at->second.value == value)
    waiting.erase(at);
  else
    at->second.due = Clock::now() + between_writes;
  const Told who = told;
  lock.unlock();
  if (!known && who) who(job, fault);
  lock.lock();
}

Result<PutJob> BookWriter::Inside::write(Database& database, std::int64_t job, const plan::Job& value) {
  auto transaction = Transaction::begin(database);
  if (!transaction) return std::unexpected(transaction.error());
  if (!kept.contains(job)) {
    auto seen = kept_job(database, job);
    if (!seen) return std::unexpected(seen.error());
    kept[job] = std::move(*seen);
  }
  KeptJob next = kept[job];  // what the book has if all goes well
  auto put = put_job(database, job, value, next);
  if (!put) return put;
  if (auto done = transaction->commit(); !done) return std::unexpected(done.error());
  kept[job] = std::move(next);
  return put;
}

// --- on the caller's thread

BookWriter::BookWriter(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}

Result<std::unique_ptr<BookWriter>> BookWriter::start(const std::string& path) {
  auto inside = std::make_unique<Inside>();
  std::promise<Result<void>> opened;
  auto done = opened.get_future();
  inside->thread = std::thread(&Inside::run, inside.get(), path, std::move(opened));
  if (auto open = done.get(); !open) {
    inside->thread.join();
    return std::unexpected(open.error());
  }
  return std::unique_ptr<BookWriter>(new BookWriter(std::move(inside)));
}

BookWriter::~BookWriter() {
  {
    const std::lock_guard lock(inside_->mutex);
    inside_->ending = true;
  }
  inside_->news.notify_all();
  inside_->thread.join();
}

void BookWriter::hand_over(std::int64_t job, JobPtr value) {
  problem::ensure(value != nullptr && value->catalogue != nullptr, "a job that is handed over is one");
  {
    const std::lock_guard lock(inside_->mutex);
    Waiting& one = inside_->waiting[job];
    if (one.value == nullptr || one.fault) one.due = Clock::now() + between_writes;
    one.value = std::move(value);
  }
  inside_->news.notify_all();
}

BookWriter::JobPtr BookWriter::unwritten(std::int64_t job) const {
  const std::lock_guard lock(inside_->mutex);
  const auto found = inside_->waiting.find(job);
  return found == inside_->waiting.end() ? nullptr : found->second.value;
}

Result<void> BookWriter::run(Work work) {
  std::future<Result<void>> done;
  {
    const std::lock_guard lock(inside_->mutex);
    inside_->asked.push_back({std::move(work), {}});
    done = inside_->asked.back().done.get_future();
  }
  inside_->news.notify_all();
  return done.get();
}

Result<void> BookWriter::settle() {
  return run([this](Database&) -> Result<void> {
    const std::lock_guard lock(inside_->mutex);
    for (const auto& [job, one] : inside_->waiting)
      if (one.fault) return std::unexpected(*one.fault);
    return {};
  });
}

Result<std::int64_t> BookWriter::add(const plan::Job& job) {
  problem::ensure(job.catalogue != nullptr, "a job has a catalogue");
  std::int64_t made = 0;
  auto done = run([&](Database& database) -> Result<void> {
    auto transaction = Transaction::begin(database);
    if (!transaction) return std::unexpected(transaction.error());
    const auto id = put_new_job(database);
    if (!id) return std::unexpected(id.error());
    auto kept = kept_job(database, *id);
    if (!kept) return std::unexpected(kept.error());
    const auto put = put_job(database, *id, job, *kept);
    if (!put) return std::unexpected(put.error());
    if (!put->not_kept.empty()) return std::unexpected(put->not_kept.front());
    made = *id;
    return transaction->commit();
  });
  if (!done) return std::unexpected(done.error());
  return made;
}

Result<void> BookWriter::remove(std::int64_t job) {
  return run([this, job](Database& database) -> Result<void> {
    auto transaction = Transaction::begin(database);
    if (!transaction) return std::unexpected(transaction.error());
    auto dropped = drop_job(database, job);
    if (!dropped && dropped.error().code != "job-none") return dropped;
    if (auto done = transaction->commit(); !done) return done;
    inside_->kept.erase(job);
    const std::lock_guard lock(inside_->mutex);
    inside_->waiting.erase(job);
    return dropped;
  });
}

void BookWriter::on_written(Told told) {
  const std::lock_guard lock(inside_->mutex);
  inside_->told = std::move(told);
}

}  // namespace store
