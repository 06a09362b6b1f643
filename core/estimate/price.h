// What a quantity of an item costs.
#pragma once

#include <optional>
#include <string>

#include "catalogue/item.h"
#include "units/money.h"

namespace estimate {

// Coins that were worked out, to the nearest whole one, halves away from zero. Under a millionth of a coin is dust of
// the reckoning: 12.4999999999 stands for 12.5. Nothing past 9e15 coins, where a double has no half coins.
std::optional<units::Money> money_of(double coins);

// `unit_price` is rounded for show; `amount` comes from the exact price of one and is rounded once. Nothing where the
// item has no price, where its price can't be turned into one per item.unit, or where the sum is past all reason.
struct Cost {
  std::optional<units::Money> unit_price;
  std::optional<units::Money> amount;
  bool by_others = false;
  double coins = 0;  // of one, not rounded
};

// `quantity` in item.unit.
Cost cost(const catalogue::Item& item, double quantity);

// "; at 4.95 USD per sq ft" where the price is not per item.unit; nothing where it is, or where there is none.
std::string price_basis(const catalogue::Item& item, int decimals, const std::string& currency);

// The price of one item.unit in coins, not rounded.
std::optional<double> coins_of_one(const catalogue::Item& item);

}  // namespace estimate
