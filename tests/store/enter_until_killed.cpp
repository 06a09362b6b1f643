#include "store/enter_until_killed.h"

#include <unistd.h>

#include <cstdio>

#include "store/jobs.h"

namespace store {

using units::Money;

estimate::Kept kept_with_lines() {
  estimate::Kept kept;
  kept.currency = "USD";
  kept.program = "0.1";
  estimate::KeptLine stone;
  stone.stage = "base";
  stone.item = "stone";
  stone.description = "Open stone";
  stone.quantity = 9000;
  stone.unit = "kg";
  stone.order_quantity = 10;
  stone.order_unit = "ton";
  stone.unit_price = Money::of_coins(3000);
  stone.amount = Money::of_coins(30'000);  // 10 tons at 30.00
  estimate::KeptLine work = stone;
  work.item = "rate-base";
  work.kind = plan::CostKind::labour;
  work.quantity = work.order_quantity = 8;
  work.unit = work.order_unit = "h";
  work.unit_price = Money::of_coins(4000);
  work.amount = Money::of_coins(32'000);  // 8 h at 40.00
  kept.lines = {stone, work};
  kept.direct = kept.price = kept.total = Money::of_coins(62'000);
  return kept;
}

estimate::Entry delivery(std::int64_t n) {
  estimate::Entry entry;
  entry.number = n;
  entry.line = {"base", "stone", plan::CostKind::material};
  entry.date = "2026-11-28";
  entry.quantity = 1 + static_cast<double>(n % 7) / 8;
  entry.unit = "ton";
  if (n % 2 == 0) entry.price = Money::of_coins(3000 + n);
  entry.ticket = "T-" + std::to_string(n);
  entry.note = std::string(static_cast<std::size_t>(n % 5) * 100, 'x');
  return entry;
}

int enter_until_killed(const std::string& folder) {
  JobBook book = opened(folder);
  if (good(book.jobs()).empty()) {
    const plan::Job job = demo_job("bakery-court");
    good(book.save_version(good(book.add(job)), job, kept_with_lines(), "agreed", ""));
  }
  const std::int64_t version = good(book.versions(good(book.jobs()).front().id)).front().id;
  for (std::int64_t n = static_cast<std::int64_t>(good(book.entries(version)).size()) + 1;; ++n) {
    const auto entered = book.enter(version, delivery(n));
    if (!entered || entered->number != n) {
      std::fprintf(stderr, "%s\n", entered ? "a number was left out" : problem::sentence(entered.error()).c_str());
      return 1;
    }
    // Straight to the pipe: what stands in a buffer would die with the program.
    const std::string line = std::to_string(n) + "\n";
    if (::write(STDOUT_FILENO, line.data(), line.size()) < 0) return 1;
  }
}

}  // namespace store
