#include "estimate/kept.h"

namespace estimate {

namespace {

KeptLine kept_line(const plan::Job& job, const OrderLine& line) {
  return {takeoff::word(line.stage),
          line.item,
          line.kind,
          line.description,
          line.of,
          line.quantity,
          line.unit,
          line.order_quantity,
          line.order_unit,
          line.unit_price,
          line.amount,
          line.by_others,
          line.allowance,
          line.sentence,
          line.working.sentence(job.heading.units)};
}

}  // namespace

Kept kept(const plan::Job& job, const Estimate& estimate, const Priced& priced, std::string program) {
  constexpr std::size_t most_problems = 1000;
  Kept made;
  made.currency = job.heading.currency;
  made.decimals = job.heading.decimals;
  made.program = std::move(program);
  for (const OrderLine& line : estimate.lines) made.lines.push_back(kept_line(job, line));
  for (const PriceStep& step : priced.steps) made.steps.push_back({step.code, step.name, step.amount, step.working});
  made.direct = priced.direct;
  made.price = priced.price;
  made.total = priced.total;
  made.final = priced.final;
  for (const auto* problems : {&estimate.problems, &priced.problems})
    for (const problem::Problem& said : *problems)
      if (made.problems.size() < most_problems) made.problems.push_back(problem::sentence(said));
  return made;
}

}  // namespace estimate
