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
  double markup = 0;          // what the price is over the cost (profit and rounding), as a share of the cost
  double margin = 0;          // the same as a share of the price before tax; both are always shown
  std::vector<Due> payments;  // add up to the total; the last takes the odd coins
  bool final = true;
  std::vector<problem::Problem> problems;
};

// Steps whose share is 0 are left out. Overhead is a share of the direct cost. Chained, the contingency is a share of
// the sum before it and so is a markup; otherwise both are shares of the direct cost. A margin is a share of the price
// before it is rounded, chained or not: price = cost / (1 - margin). Where not all kinds are taxed, the taxed part of
// the price is as large as their part of the direct cost.
//
// Each sum is rounded once, half away from zero. Problems (code "offer-..."): a share below 0 or over 100 (10,000 %), a
// margin of 1 or more, a sum past all reason, payment shares that do not add up to 1, a stage that there is not; what
// is not valid counts as not there. Factors on hours and added lines are spoken of by the estimate itself.
Priced priced(const plan::Job& job, const Estimate& estimate);

}  // namespace estimate
