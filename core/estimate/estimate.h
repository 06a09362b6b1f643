// From what the job needs to what is ordered and what it costs.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "takeoff/takeoff.h"
#include "units/money.h"

namespace estimate {

// Where an order quantity comes from, in its order_unit; the parts add up to it.
struct Shares {
  double needed = 0;   // stock for cuts included (waste.h tells it apart)
  double broken = 0;   // breakage or another share on top
  double spare = 0;    // units kept for repairs
  double rounded = 0;  // whole pieces, packs, the least order
};

// What is bought of one item in one stage: all takeoff lines of that item and stage together, rounded once.
struct OrderLine {
  takeoff::Stage stage;
  plan::Id item;  // an item, or a labour rate for work
  std::string description;
  std::vector<plan::ElementId> of;
  double quantity = 0;        // net, in `unit`
  std::string unit;           // SI unit of the working, or piece
  double order_quantity = 0;  // in order_unit, as it can be bought
  std::string order_unit;
  std::optional<units::Money> unit_price;  // per order_unit, rounded for show; the amount is made from the exact price
  std::optional<units::Money> amount;      // nothing: no price, and the total is incomplete
  bool by_others = false;                  // priced at 0 on purpose
  bool work = false;                       // hours and their money, not material
  bool allowance = false;                  // a rule of thumb or a subcontract sum
  takeoff::Working working;                // from the net to the order quantity
  std::string sentence;    // the order number in words ("10 packs, because the large size runs out first")
  double exact_coins = 0;  // the price that the amount is made from, in coins per order_unit; 0: as unit_price
  plan::CostKind kind = plan::CostKind::material;
  Shares shares{};  // of material that was turned into what is bought; all 0 elsewhere
};

struct StageTotal {
  units::Money material;
  units::Money work;
  double hours = 0;
  units::Money amount() const { return material + work; }
};

struct Estimate {
  std::vector<OrderLine> lines;  // by stage; material, charges, hire and added lines before work
  std::map<takeoff::Stage, StageTotal> stages;
  StageTotal total;
  bool final = true;  // false: a line has no price, or an element has a problem
  std::vector<problem::Problem> problems;
};

Estimate estimate(const plan::Job& job, const takeoff::Takeoff& takeoff);

}  // namespace estimate
