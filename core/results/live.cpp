#include "results/live.h"

#include <condition_variable>
#include <mutex>
#include <thread>

#include "problem/ensure.h"

namespace results {

struct Live::Work {
  std::function<void(std::shared_ptr<const Results>)> ready;
  mutable std::mutex guard;
  std::condition_variable woken;
  std::shared_ptr<const plan::Job> waiting;  // the slot
  bool running = false;
  bool dropped = false;  // of what runs: `stop` was asked for
  bool over = false;
  std::thread thread;  // last, so that all it reads is made before it

  void run();
};

void Live::Work::run() {
  Memory memory;
  std::unique_lock held(guard);
  while (true) {
    woken.wait(held, [this] { return over || waiting != nullptr; });
    if (over) return;
    std::shared_ptr<const plan::Job> job = std::move(waiting);
    waiting = nullptr;
    running = true;
    dropped = false;
    held.unlock();
    auto made = std::make_shared<const Results>(compute(std::move(job), memory));
    held.lock();
    running = false;
    if (over) return;
    if (dropped) continue;
    held.unlock();
    ready(std::move(made));
    held.lock();
  }
}

Live::Live(std::function<void(std::shared_ptr<const Results>)> ready) : work_(std::make_unique<Work>()) {
  problem::ensure(ready != nullptr, "somebody waits for the results");
  work_->ready = std::move(ready);
  work_->thread = std::thread([work = work_.get()] { work->run(); });
}

Live::~Live() {
  {
    const std::lock_guard held(work_->guard);
    work_->over = true;
  }
  work_->woken.notify_one();
  work_->thread.join();
}

void Live::take(std::shared_ptr<const plan::Job> job) {
  problem::ensure(job != nullptr, "there is a job to compute");
  {
    const std::lock_guard held(work_->guard);
    work_->waiting = std::move(job);
  }
  work_->woken.notify_one();
}

void Live::stop() {
  const std::lock_guard held(work_->guard);
  work_->waiting = nullptr;
  work_->dropped = true;
}

bool Live::busy() const {
  const std::lock_guard held(work_->guard);
  return work_->waiting != nullptr || (work_->running && !work_->dropped);
}

}  // namespace results
