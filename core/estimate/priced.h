// From what the work costs to what the customer pays, step by step, each step with its working.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "estimate/estimate.h"
#include "plan/offer.h"

namespace estimate {

// One step: "direct", "overhead", "contingency", "profit", "rounding", "tax". The amounts of the steps before "tax" add
// up to the price, all of them to the total, to the coin.
struct PriceStep {
  std::string code;
  std::string name;  // "Overhead, 15 % of the direct cost"
  units::Money amount;
  std::string working;  // "15 % of 84,210.00 USD"
};

struct Due {
  std::string name;
  std::string stage;
  units::Money amount;
};

struct Priced {
  std::map<plan::CostKind, units::Money> by_kind;  // of the direct cost
  std::vector<PriceStep> steps;
  units::Money direct;
  units::Money price;         // before tax
  units::Money total;         // with tax
  double markup = 0;          // profit on the cost before it; both are always shown
  double margin = 0;          // profit on the price before tax
  std::vector<Due> payments;  // add up to the total; the last takes the odd coins
  bool final = true;
  std::vector<problem::Problem> problems;
};

// Each sum is rounded once, half away from zero. Problems (code "offer-..."): a share below 0, a margin of 1 or more,
// payment shares that do not add up to 1, a factor that is none; what is not valid counts as not there.
Priced priced(const plan::Job& job, const Estimate& estimate);

}  // namespace estimate
