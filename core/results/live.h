// Results kept up with the job as it is edited, off the caller's thread.
#pragma once

#include <functional>
#include <memory>

#include "results/results.h"

namespace results {

// One thread and one slot for the newest job. A computation that has begun is finished and told: giving it up for each
// newer value would starve the screen. Only `stop` (a person pressed Stop) and the end of the program drop a result.
class Live {
 public:
  // `ready` is called on Live's own thread with each result, in order.
  explicit Live(std::function<void(std::shared_ptr<const Results>)> ready);
  ~Live();  // waits for the computation that runs
  Live(const Live&) = delete;
  Live& operator=(const Live&) = delete;

  void take(std::shared_ptr<const plan::Job> job);  // replaces what waits in the slot
  void stop();                                      // forgets what waits; what runs is dropped when it ends
  bool busy() const;

 private:
  struct Work;
  std::unique_ptr<Work> work_;
};

}  // namespace results
