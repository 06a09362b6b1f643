// Jobs in the job book: one row per job, one per element, bodies of pictures once each.
//
// Every finished edit is durable within a second: a writer thread of its own owns the only writing connection, takes
// the newest job value, and writes what changed since the last one it wrote (elements are told apart by their pointers,
// then by value). A kill loses at most the gesture in hand. What could not be read back later (a length past all
// measure) is told and not written; its element stays as the book had it, and the rest goes through.
//
// All but `write`, `settle` and `on_written` belong to the thread that opened the book.
#pragma once

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "plan/job.h"
#include "store/database.h"
#include "store/documents.h"
#include "store/job_rows.h"
#include "store/ledger_tables.h"
#include "store/version_tables.h"

namespace store {

class JobBook {
 public:
  // The book in `folder`; made with the starter catalogue where there is none. Held by one window at a time: a second
  // one is refused, naming who holds it. The catalogue's commands and all that reads go on beside it.
  static problem::Result<JobBook> open(const std::string& folder = data_folder());
  // The same, but where another window holds the book, a newer program wrote it, or its folder can't be written, it is
  // opened to read, within a second: `only_read` says why, and everything that would change it is refused with those
  // words.
  static problem::Result<JobBook> open_or_read(const std::string& folder = data_folder());
  const std::optional<problem::Problem>& only_read() const;  // nothing: it can be changed

  JobBook(JobBook&&) noexcept;
  JobBook& operator=(JobBook&&) noexcept;
  ~JobBook();  // writes what is still to be written

  problem::Result<std::vector<JobRow>> jobs();  // all, archived ones too; the newest first
  problem::Result<std::vector<JobRow>> jobs(const Wanted& wanted);
  problem::Result<plan::Job> read(std::int64_t id);         // the newest value, on disk already or not
  problem::Result<std::int64_t> add(const plan::Job& job);  // durable when it returns
  // A job with versions is refused (job-has-versions): archive it.
  problem::Result<void> remove(std::int64_t id);

  // What the office says of a job; durable when they return.
  problem::Result<void> set_state(std::int64_t id, State state);
  problem::Result<void> set_archived(std::int64_t id, bool archived);
  // A new job of the same value under another name. Its number is left empty (a number is one job's), it has no
  // versions and is asked for.
  problem::Result<std::int64_t> copy(std::int64_t id, const std::string& name);

  // Versions: whole and durable when it returns, never changed and never dropped. `value` is what was estimated; it
  // need not be what the book has of the job. What could not be read back later is refused (version-not-kept).
  problem::Result<VersionRow> save_version(std::int64_t job, const plan::Job& value, const estimate::Kept& kept,
                                           const std::string& name, const std::string& note);
  problem::Result<std::vector<VersionRow>> versions(std::int64_t job);  // the newest first
  problem::Result<Version> version(std::int64_t id);                    // damaged: refused by name

  // What was printed of a version and given out; an issued version shows these bytes for ever.
  problem::Result<DocumentRow> issue(std::int64_t version, const std::string& name, const std::string& language,
                                     const std::string& bytes);
  problem::Result<std::vector<DocumentRow>> documents(std::int64_t version);  // the oldest first
  problem::Result<Document> document(std::int64_t id);

  // What was entered against a version's lines (estimate/ledger.h): checked, numbered and durable when it returns;
  // never changed and never dropped.
  problem::Result<estimate::Entry> enter(std::int64_t version, const estimate::Entry& entry);
  problem::Result<std::vector<estimate::Entry>> entries(std::int64_t version);  // as they were entered
  // Closed jobs with what was entered of them, archived ones too: the catalogue's offers are made out of these.
  problem::Result<ClosedLedgers> closed_ledgers();

  // Hands the newest value of a job to the writer and returns at once.
  void write(std::int64_t id, std::shared_ptr<const plan::Job> job);
  // Waits until all that was handed over is on disk or was tried; the first fault of what is not there.
  problem::Result<void> settle();
  // Called on the writer's thread after each write, and with the fault of one that failed, once as long as it lasts (it
  // is tried again every second, with the next value and at the end). `told` must not call the book.
  void on_written(std::function<void(std::int64_t, std::optional<problem::Problem>)> told);

  // A picture's bytes, kept once by their SHA-256 (hex), which is given back.
  problem::Result<std::string> keep(const std::string& bytes);
  problem::Result<std::string> body(const std::string& sha256);

  // Small words of the window, kept from one start to the next: open job, sizes, settings.
  problem::Result<std::optional<std::string>> setting(const std::string& key);
  problem::Result<void> set(const std::string& key, const std::string& value);

 private:
  struct Open;
  explicit JobBook(std::unique_ptr<Open> open);
  // Work on the writing connection, one transaction, on the disk when it returns; all or nothing.
  problem::Result<void> change(const std::function<problem::Result<void>(Database&)>& work);
  template <class T, class Work>
  problem::Result<T> made(T& into, const Work& work) {
    auto done = change([&](Database& database) -> problem::Result<void> {
      auto one = work(database);
      if (!one) return std::unexpected(one.error());
      into = std::move(*one);
      return {};
    });
    if (!done) return std::unexpected(done.error());
    return std::move(into);
  }
  std::unique_ptr<Open> open_;
};

}  // namespace store
