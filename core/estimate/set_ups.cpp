#include "estimate/set_ups.h"

#include <algorithm>

#include "estimate/charges.h"

namespace estimate {

using takeoff::term;
using takeoff::Working;

namespace {

bool anything_built(const plan::Job& job, const takeoff::Takeoff& takeoff) {
  const auto of_the_job = [&job](const auto& one) {
    return std::ranges::any_of(one.of, [&job](const plan::ElementId& id) { return job.find(id) != nullptr; });
  };
  return std::ranges::any_of(takeoff.lines, of_the_job) || std::ranges::any_of(takeoff.tasks, of_the_job);
}

const catalogue::Rate* rate_per(const plan::Job& job, const takeoff::Takeoff& takeoff, const char* id,
                                const char* unit) {
  const catalogue::Rate* rate = job.catalogue->rate(id);
  if (!rate || rate->si_unit != unit) return nullptr;
  const bool asked = std::ranges::find(takeoff.tasks, rate->id, &takeoff::Task::rate) != takeoff.tasks.end();
  return asked ? nullptr : rate;
}

takeoff::Task task(const catalogue::Rate& rate, Working working) {
  const takeoff::Stage stage = takeoff::stage_of(rate.stage).value_or(takeoff::Stage::protect);
  return {stage, rate.id, rate.name.en, {}, std::move(working), 1, {}};
}

}  // namespace

std::vector<takeoff::Task> set_ups(const plan::Job& job, const takeoff::Takeoff& takeoff,
                                   const std::vector<OrderLine>& material) {
  if (!anything_built(job, takeoff)) return {};
  std::vector<takeoff::Task> tasks;
  for (const char* id : {"set-out", "protect", "clean-up"})
    if (const auto* rate = rate_per(job, takeoff, id, "job"))
      tasks.push_back(task(*rate, term("the job", 1, units::piece)));
  std::vector<Working> counts;
  for (const OrderLine& line : material) {
    const catalogue::Item* item = job.catalogue->item(line.item);
    const double count = item && line.order_unit == item->unit ? pallets(*item, line.order_quantity) : 0;
    if (count > 0) counts.push_back(term("pallets of " + item->id, count, units::piece, item->id + "/pieces_per_pack"));
  }
  if (counts.empty()) return tasks;
  const Working count = counts.size() == 1 ? counts.front() : Working::sum(std::move(counts));
  for (const char* id : {"pallet-unload", "pallet-carry"})
    if (const auto* rate = rate_per(job, takeoff, id, "pallet")) tasks.push_back(task(*rate, count));
  return tasks;
}

}  // namespace estimate
