// The thread that owns the only writing connection to the job book. Work is done in the order in which it was handed
// over; of the values of one job only the newest is written, each write one transaction.
#pragma once

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>

#include "plan/job.h"
#include "store/database.h"

namespace store {

class BookWriter {
 public:
  using JobPtr = std::shared_ptr<const plan::Job>;
  using Told = std::function<void(std::int64_t job, std::optional<problem::Problem> fault)>;
  using Work = std::function<problem::Result<void>(Database&)>;

  // Opens the book at `path`, which must have its newest form.
  static problem::Result<std::unique_ptr<BookWriter>> start(const std::string& path);
  BookWriter(const BookWriter&) = delete;
  BookWriter& operator=(const BookWriter&) = delete;
  ~BookWriter();  // writes what is still to be written

  // A job's newest value: returns at once, is on the disk within a tenth of a second and the time of one write. Where
  // the write fails it is tried again every second, with the next value, by `settle` and at the end.
  void hand_over(std::int64_t job, JobPtr value);
  // The value that was handed over and is not on the disk yet; null where there is none.
  JobPtr unwritten(std::int64_t job) const;
  // Waits until all that was handed over is on the disk, or was tried; then the first fault of what is not there.
  problem::Result<void> settle();
  // Does `work` on this thread, after what was handed over before, and waits for it. `work` has its own transaction.
  problem::Result<void> run(Work work);
  // Puts a job not yet in the book into it, or takes one out; waits. Nothing of one taken out is written afterwards.
  problem::Result<std::int64_t> add(const plan::Job& job);
  problem::Result<void> remove(std::int64_t job);

  // Called on this thread after each write, and with the fault of one that failed, once as long as the same one
  // lasts. `told` must not wait for the writer.
  void on_written(Told told);

 private:
  struct Inside;
  explicit BookWriter(std::unique_ptr<Inside> inside);
  std::unique_ptr<Inside> inside_;
};

}  // namespace store
