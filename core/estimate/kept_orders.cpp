#include "estimate/kept_orders.h"

#include <algorithm>

namespace estimate {

namespace {

auto of(int before, int after) {
  return [before, after](const KeptOrder& one) { return one.before == before && one.after == after; };
}

// Those begun before the order of the two versions.
std::vector<KeptOrder> before_it(const std::vector<KeptOrder>& orders, int before, int after) {
  return {orders.begin(), std::ranges::find_if(orders, of(before, after))};
}

}  // namespace

const KeptOrder* find(const std::vector<KeptOrder>& orders, int before, int after) {
  const auto found = std::ranges::find_if(orders, of(before, after));
  return found == orders.end() ? nullptr : &*found;
}

std::vector<KeptOrder> with(std::vector<KeptOrder> orders, KeptOrder order) {
  const auto found = std::ranges::find_if(orders, of(order.before, order.after));
  if (found == orders.end())
    orders.push_back(std::move(order));
  else
    *found = std::move(order);
  return orders;
}

std::vector<KeptOrder> without(std::vector<KeptOrder> orders, int before, int after) {
  std::erase_if(orders, of(before, after));
  return orders;
}

std::vector<Earlier> earlier(const std::vector<KeptOrder>& orders, int before, int after) {
  std::vector<Earlier> all;
  for (const KeptOrder& one : before_it(orders, before, after))
    all.push_back({one.input.number, one.amount, one.input.days});
  if (const KeptOrder* own = find(orders, before, after))
    all.insert(all.end(), own->input.earlier.begin(), own->input.earlier.end());
  return all;
}

KeptOrder begun(const std::vector<KeptOrder>& orders, int before, int after, units::Money contract) {
  KeptOrder order{before, after, {}, {}};
  order.input.contract = orders.empty() ? contract : orders.front().input.contract;
  std::size_t number = orders.size() + 1;
  const auto taken = [&](const KeptOrder& one) { return one.input.number == std::to_string(number); };
  while (std::ranges::any_of(orders, taken)) ++number;
  order.input.number = std::to_string(number);
  return order;
}

double charged(const std::vector<KeptOrder>& orders, int before, int after, const plan::UnitPrice& price) {
  double past = 0;
  for (const KeptOrder& one : before_it(orders, before, after))
    for (const Met& met : one.input.met)
      if (met.code == price.code) past = met.quantity - price.assumed;
  return past;
}

}  // namespace estimate
