// What is kept of an estimate when a version is saved: lines, steps of the price and totals as plain values, nothing to
// be computed from. Two of them are compared, whatever program or price list made them.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "estimate/priced.h"

namespace estimate {

struct KeptLine {
  std::string stage;  // the stage's word
  plan::Id item;      // item, rate or added line
  plan::CostKind kind = plan::CostKind::material;
  std::string description;
  std::vector<plan::ElementId> of;
  double quantity = 0;  // net, in `unit`
  std::string unit;
  double order_quantity = 0;  // in order_unit
  std::string order_unit;
  std::optional<units::Money> unit_price;
  std::optional<units::Money> amount;
  bool by_others = false;
  bool allowance = false;
  std::string sentence;  // the order number in words
  std::string working;   // in the job's units
  bool operator==(const KeptLine&) const = default;
};

struct KeptStep {
  std::string code;
  std::string name;
  units::Money amount;
  std::string working;
  bool operator==(const KeptStep&) const = default;
};

struct Kept {
  std::string currency;
  int decimals = 2;
  std::string program;  // version that made it
  std::vector<KeptLine> lines;
  std::vector<KeptStep> steps;  // of the price, as priced.h has them
  units::Money direct;          // sum of the lines
  units::Money price;           // before tax
  units::Money total;           // with tax
  bool final = false;
  std::vector<std::string> problems;  // their sentences, at most 1,000
  bool operator==(const Kept&) const = default;
};

Kept kept(const plan::Job& job, const Estimate& estimate, const Priced& priced, std::string program);

}  // namespace estimate
