#include "estimate/totals.h"

namespace estimate {

void add_up(Estimate& estimate) {
  estimate.stages.clear();
  estimate.total = {};
  for (const OrderLine& line : estimate.lines) {
    StageTotal& stage = estimate.stages[line.stage];
    const units::Money amount = line.amount.value_or(units::Money());
    for (StageTotal* total : {&stage, &estimate.total}) {
      (line.work ? total->work : total->material) += amount;
      if (line.work) total->hours += line.order_quantity;
    }
  }
}

}  // namespace estimate
