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

namespace store {

struct JobRow {
  std::int64_t id = 0;
  std::string name;
  std::string customer;
  std::string place;
  std::int64_t edits = 0;  // how often it was written
};

class JobBook {
 public:
  // The book in `folder`; made with the starter catalogue where there is none. Held by one window at a time: a second
  // one is refused, naming who holds it. The catalogue's commands and all that reads go on beside it.
  static problem::Result<JobBook> open(const std::string& folder = data_folder());
  JobBook(JobBook&&) noexcept;
  JobBook& operator=(JobBook&&) noexcept;
  ~JobBook();  // writes what is still to be written

  problem::Result<std::vector<JobRow>> jobs();              // the newest first
  problem::Result<plan::Job> read(std::int64_t id);         // the newest value, on disk already or not
  problem::Result<std::int64_t> add(const plan::Job& job);  // durable when it returns
  problem::Result<void> remove(std::int64_t id);

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
  std::unique_ptr<Open> open_;
};

}  // namespace store
