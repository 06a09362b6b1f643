#include "store/job_book.h"

#include "store/bodies.h"
#include "store/book_writer.h"
#include "store/catalogue_book.h"
#include "store/job_tables.h"
#include "store/lock.h"

namespace store {

using problem::Result;

namespace {

// A window that is just closing still writes; one that stays open is named.
constexpr int wait_milliseconds = 500;

Result<void> in_transaction(Database& database, const std::function<Result<void>()>& work) {
  auto transaction = Transaction::begin(database);
  if (!transaction) return std::unexpected(transaction.error());
  if (auto done = work(); !done) return done;
  return transaction->commit();
}

}  // namespace

// Let go in the order from below: the writer ends, then the lock opens.
struct JobBook::Open {
  Lock lock;
  Database reader;
  std::unique_ptr<BookWriter> writer;
};

JobBook::JobBook(std::unique_ptr<Open> open) : open_(std::move(open)) {}
JobBook::JobBook(JobBook&&) noexcept = default;
JobBook& JobBook::operator=(JobBook&&) noexcept = default;
JobBook::~JobBook() = default;

Result<JobBook> JobBook::open(const std::string& folder) {
  if (auto made = make_folder(folder); !made) return std::unexpected(made.error());
  // Not the catalogue's lock, which is held for one change at a time: commands go on while a window is open.
  auto lock = Lock::take(folder + "/window.lock", wait_milliseconds);
  if (!lock) return std::unexpected(lock.error());
  if (const auto made = CatalogueBook::open(folder); !made) return std::unexpected(made.error());
  const std::string path = folder + "/book.sqlite";
  auto reader = Database::open(path);
  if (!reader) return std::unexpected(reader.error());
  auto writer = BookWriter::start(path);
  if (!writer) return std::unexpected(writer.error());
  return JobBook(std::make_unique<Open>(std::move(*lock), std::move(*reader), std::move(*writer)));
}

Result<std::vector<JobRow>> JobBook::jobs() {
  static_cast<void>(open_->writer->settle());  // what could not be written is told to `on_written`
  return take_jobs(open_->reader);
}

Result<plan::Job> JobBook::read(std::int64_t id) {
  if (const auto newest = open_->writer->unwritten(id)) return *newest;
  const auto snapshot = Transaction::begin_reading(open_->reader);
  if (!snapshot) return std::unexpected(snapshot.error());
  return take_job(open_->reader, id);
}

Result<std::int64_t> JobBook::add(const plan::Job& job) { return open_->writer->add(job); }

Result<void> JobBook::remove(std::int64_t id) { return open_->writer->remove(id); }

void JobBook::write(std::int64_t id, std::shared_ptr<const plan::Job> job) {
  open_->writer->hand_over(id, std::move(job));
}

Result<void> JobBook::settle() { return open_->writer->settle(); }

void JobBook::on_written(std::function<void(std::int64_t, std::optional<problem::Problem>)> told) {
  open_->writer->on_written(std::move(told));
}

Result<std::string> JobBook::keep(const std::string& bytes) {
  std::string hash;
  auto done = open_->writer->run([&](Database& database) {
    return in_transaction(database, [&]() -> Result<void> {
      auto put = put_body(database, bytes, true);
      if (!put) return std::unexpected(put.error());
      hash = std::move(*put);
      return {};
    });
  });
  if (!done) return std::unexpected(done.error());
  return hash;
}

Result<std::string> JobBook::body(const std::string& hash) { return take_body(open_->reader, hash); }

Result<std::optional<std::string>> JobBook::setting(const std::string& key) {
  const auto rows = open_->reader.rows("SELECT value FROM settings WHERE key = ?", {key});
  if (!rows) return std::unexpected(rows.error());
  if (rows->empty()) return std::optional<std::string>();
  return std::get<std::string>(rows->front().front());
}

Result<void> JobBook::set(const std::string& key, const std::string& value) {
  return open_->writer->run(
      [&](Database& database) { return database.run("INSERT OR REPLACE INTO settings VALUES (?, ?)", {key, value}); });
}

}  // namespace store
