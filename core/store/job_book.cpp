#include "store/job_book.h"

#include <filesystem>

#include "store/bodies.h"
#include "store/book_writer.h"
#include "store/catalogue_book.h"
#include "store/job_tables.h"
#include "store/lock.h"
#include "store/migrations.h"

namespace store {

using problem::Result;

namespace {

// A window that is just closing still writes; one that stays open is named.
constexpr int wait_milliseconds = 500;

// What keeps a book from being changed and not from being read.
bool leaves_it_readable(const problem::Problem& fault, const std::string& path) {
  std::error_code error;
  if (!std::filesystem::exists(path, error)) return false;
  return fault.code == "book-held" || fault.code == "book-newer" || fault.code == "book-lock";
}

// A file written by an older program is read by none but through its new form.
Result<void> check_readable(Database& database, const problem::Problem& why) {
  const auto form = database.form();
  if (!form) return std::unexpected(form.error());
  if (*form < newest_form()) return std::unexpected(why);
  return {};
}

}  // namespace

// Let go in the order from below: the writer ends, then the lock opens. A book that is only read has neither.
struct JobBook::Open {
  std::optional<Lock> lock;
  Database reader;
  std::unique_ptr<BookWriter> writer;
  std::optional<problem::Problem> only_read;
  std::function<void(std::int64_t, std::optional<problem::Problem>)> told{};  // here only where there is no writer
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
  return JobBook(std::make_unique<Open>(std::move(*lock), std::move(*reader), std::move(*writer), std::nullopt));
}

Result<JobBook> JobBook::open_or_read(const std::string& folder) {
  auto whole = open(folder);
  const std::string path = folder + "/book.sqlite";
  if (whole || !leaves_it_readable(whole.error(), path)) return whole;
  problem::Problem why = whole.error();
  auto reader = Database::open_to_read(path);
  if (!reader) return std::unexpected(reader.error());
  if (auto readable = check_readable(*reader, why); !readable) return std::unexpected(readable.error());
  return JobBook(std::make_unique<Open>(std::nullopt, std::move(*reader), nullptr, std::move(why)));
}

const std::optional<problem::Problem>& JobBook::only_read() const { return open_->only_read; }

Result<std::vector<JobRow>> JobBook::jobs() {
  static_cast<void>(settle());  // what could not be written is told to `on_written`
  return take_jobs(open_->reader);
}

Result<std::vector<JobRow>> JobBook::jobs(const Wanted& wanted) {
  auto all = jobs();
  if (!all) return all;
  return arranged(*all, wanted);
}

Result<plan::Job> JobBook::read(std::int64_t id) {
  if (const auto newest = open_->writer ? open_->writer->unwritten(id) : nullptr) return *newest;
  const auto snapshot = Transaction::begin_reading(open_->reader);
  if (!snapshot) return std::unexpected(snapshot.error());
  return take_job(open_->reader, id);
}

Result<std::int64_t> JobBook::add(const plan::Job& job) {
  if (open_->only_read) return std::unexpected(*open_->only_read);
  return open_->writer->add(job);
}

Result<void> JobBook::remove(std::int64_t id) {
  if (open_->only_read) return std::unexpected(*open_->only_read);
  return open_->writer->remove(id);
}

void JobBook::write(std::int64_t id, std::shared_ptr<const plan::Job> job) {
  if (open_->writer) return open_->writer->hand_over(id, std::move(job));
  if (open_->told) open_->told(id, open_->only_read);
}

Result<void> JobBook::settle() {
  if (open_->writer) return open_->writer->settle();
  return {};  // nothing is ever under way
}

void JobBook::on_written(std::function<void(std::int64_t, std::optional<problem::Problem>)> told) {
  if (open_->writer) return open_->writer->on_written(std::move(told));
  open_->told = std::move(told);
}

Result<void> JobBook::change(const std::function<Result<void>(Database&)>& work) {
  if (open_->only_read) return std::unexpected(*open_->only_read);
  return open_->writer->run([&](Database& database) -> Result<void> {
    auto transaction = Transaction::begin(database);
    if (!transaction) return std::unexpected(transaction.error());
    if (auto done = work(database); !done) return done;
    return transaction->commit();
  });
}

Result<std::string> JobBook::keep(const std::string& bytes) {
  std::string hash;
  return made(hash, [&](Database& database) { return put_body(database, bytes, true); });
}

Result<void> JobBook::set_state(std::int64_t id, State state) {
  return change([&](Database& database) { return put_state(database, id, state); });
}

Result<void> JobBook::set_archived(std::int64_t id, bool archived) {
  return change([&](Database& database) { return put_archived(database, id, archived); });
}

Result<std::int64_t> JobBook::copy(std::int64_t id, const std::string& name) {
  auto job = read(id);
  if (!job) return std::unexpected(job.error());
  job->heading.name = name;
  job->heading.number.clear();
  return add(*job);
}

Result<VersionRow> JobBook::save_version(std::int64_t job, const plan::Job& value, const estimate::Kept& kept,
                                         const std::string& name, const std::string& note) {
  const auto version = new_version(value, kept, name, note);
  if (!version) return std::unexpected(version.error());
  VersionRow row;
  return made(row, [&](Database& database) { return put_version(database, job, *version); });
}

Result<std::vector<VersionRow>> JobBook::versions(std::int64_t job) { return take_versions(open_->reader, job); }

Result<Version> JobBook::version(std::int64_t id) { return take_version(open_->reader, id); }

Result<DocumentRow> JobBook::issue(std::int64_t version, const std::string& name, const std::string& language,
                                   const std::string& bytes) {
  DocumentRow row;
  return made(row, [&](Database& database) { return put_document(database, version, name, language, bytes); });
}

Result<std::vector<DocumentRow>> JobBook::documents(std::int64_t version) {
  return take_documents(open_->reader, version);
}

Result<Document> JobBook::document(std::int64_t id) { return take_document(open_->reader, id); }

Result<estimate::Entry> JobBook::enter(std::int64_t version, const estimate::Entry& entry) {
  estimate::Entry entered;
  return made(entered, [&](Database& database) { return put_entry(database, version, entry); });
}

Result<std::vector<estimate::Entry>> JobBook::entries(std::int64_t version) {
  return take_entries(open_->reader, version);
}

Result<ClosedLedgers> JobBook::closed_ledgers() {
  const auto snapshot = Transaction::begin_reading(open_->reader);
  if (!snapshot) return std::unexpected(snapshot.error());
  return take_closed_ledgers(open_->reader);
}

Result<std::string> JobBook::body(const std::string& hash) { return take_body(open_->reader, hash); }

Result<std::optional<std::string>> JobBook::setting(const std::string& key) {
  const auto rows = open_->reader.rows("SELECT value FROM settings WHERE key = ?", {key});
  if (!rows) return std::unexpected(rows.error());
  if (rows->empty()) return std::optional<std::string>();
  return std::get<std::string>(rows->front().front());
}

Result<void> JobBook::set(const std::string& key, const std::string& value) {
  return change(
      [&](Database& database) { return database.run("INSERT OR REPLACE INTO settings VALUES (?, ?)", {key, value}); });
}

}  // namespace store
