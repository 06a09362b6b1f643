#include "store/save_until_killed.h"

#include <unistd.h>

#include <cstdio>

#include "store/jobs.h"

namespace store {

plan::Job job_of_version(std::int64_t n) {
  static const plan::Job demo = demo_job("bakery-court");
  return edited(demo, static_cast<int>(n));
}

std::string name_of_version(std::int64_t n) { return "Version '" + std::to_string(n) + "'"; }

estimate::Kept kept_of_version(std::int64_t n) {
  estimate::Kept kept;
  kept.currency = "USD";
  kept.program = "0.1";
  for (int i = 0; i < 200; ++i) {
    estimate::KeptLine line;
    line.stage = "base";
    line.item = "item-" + std::to_string(i);
    line.quantity = static_cast<double>(n) + i / 7.0;
    line.amount = units::Money::of_coins(n * 1000 + i);
    line.working = "for version " + std::to_string(n);
    kept.direct += *line.amount;
    kept.lines.push_back(std::move(line));
  }
  kept.price = kept.total = kept.direct;
  return kept;
}

int save_until_killed(const std::string& folder) {
  JobBook book = opened(folder);
  const auto jobs = good(book.jobs());
  const std::int64_t id = jobs.empty() ? good(book.add(demo_job("bakery-court"))) : jobs.front().id;
  for (std::int64_t n = static_cast<std::int64_t>(good(book.versions(id)).size()) + 1;; ++n) {
    const auto saved = book.save_version(id, job_of_version(n), kept_of_version(n), name_of_version(n), "");
    if (!saved || saved->number != n) {
      std::fprintf(stderr, "%s\n", saved ? "a number was left out" : problem::sentence(saved.error()).c_str());
      return 1;
    }
    // Straight to the pipe: what stands in a buffer would die with the program.
    const std::string line = std::to_string(n) + "\n";
    if (::write(STDOUT_FILENO, line.data(), line.size()) < 0) return 1;
  }
}

}  // namespace store
