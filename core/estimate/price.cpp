#include "estimate/price.h"

#include <cmath>

namespace estimate {

constexpr double most_coins = 9e15;

std::optional<units::Money> money_of(double coins) {
  if (!(std::abs(coins) <= most_coins)) return std::nullopt;
  const double cleaned = std::abs(coins) < 1e9 ? std::round(coins * 1e6) / 1e6 : coins;
  return units::times(units::Money::of_coins(1), cleaned);
}

std::optional<double> coins_of_one(const catalogue::Item& item) {
  const auto price = catalogue::price_of_one(item);
  if (!price || !(std::abs(price->coins) <= most_coins)) return std::nullopt;
  return price->coins;
}

std::string price_basis(const catalogue::Item& item, int decimals, const std::string& currency) {
  if (!item.price || item.price->by_others || item.price->unit == item.unit) return "";
  return "; at " + units::write_money(item.price->amount, decimals) + " " + currency + " per " + item.price->unit;
}

Cost cost(const catalogue::Item& item, double quantity) {
  Cost made;
  const auto coins = coins_of_one(item);
  if (!coins) return made;
  made.unit_price = money_of(*coins);
  made.coins = *coins;
  made.by_others = item.price->by_others && item.price->amount == units::Money();
  if (!(std::abs(*coins * quantity) <= most_coins)) return made;
  made.amount =
      item.price->unit == item.unit ? units::times(item.price->amount, quantity) : money_of(*coins * quantity);
  return made;
}

}  // namespace estimate
