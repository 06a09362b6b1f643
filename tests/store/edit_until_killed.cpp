#include "store/edit_until_killed.h"

#include <unistd.h>

#include <atomic>
#include <chrono>
#include <cstdio>
#include <deque>
#include <thread>

#include "store/jobs.h"

namespace store {

using Clock = std::chrono::steady_clock;

int edit_until_killed(const std::string& folder) {
  JobBook book = opened(folder);
  plan::Job job = demo_job("pool-terrace-b");
  const std::int64_t id = good(book.add(job));
  std::atomic<bool> failed{false};
  book.on_written([&](std::int64_t, std::optional<problem::Problem> fault) {
    if (!fault) return;
    std::fprintf(stderr, "%s\n", problem::sentence(*fault).c_str());
    failed = true;
  });
  struct Handed {
    int number;
    Clock::time_point when;
  };
  std::deque<Handed> young;
  for (int number = 1; !failed; ++number) {
    job = edited(job, number);
    book.write(id, std::make_shared<const plan::Job>(job));
    young.push_back({number, Clock::now()});
    int old = 0;
    for (; !young.empty() && Clock::now() - young.front().when > std::chrono::seconds(1); young.pop_front())
      old = young.front().number;
    // Straight to the pipe: what stands in a buffer would die with the program.
    const std::string line = std::to_string(old) + "\n";
    if (old > 0 && ::write(STDOUT_FILENO, line.data(), line.size()) < 0) return 1;
    std::this_thread::sleep_for(std::chrono::milliseconds(number % 7));
  }
  return 1;
}

}  // namespace store
