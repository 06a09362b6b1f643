#include "estimate/short_load.h"

#include <cmath>

#include "estimate/price.h"
#include "estimate/words.h"

namespace estimate {

using catalogue::Item;
using takeoff::term;
using takeoff::Working;

namespace {

std::optional<OrderLine> short_load(const plan::Job& job, const OrderLine& order) {
  const Item* item = job.catalogue->item(order.item);
  if (!item || item->unit != "cu yd" || order.order_unit != item->unit || order.by_others || order.work) return {};
  const auto full = item->number("short_load_under_cu_yd"), fee = item->number("short_load_fee");
  if (!full || !fee || !(*fee > 0) || !(order.order_quantity > 0) || order.order_quantity >= *full) return {};
  const Working missing =
      Working::difference(term("a full charge", *full, units::piece, item->id + "/short_load_under_cu_yd"),
                          term("ordered", order.order_quantity, units::piece, item->id));
  const double yards = missing.amount().value;
  const double coins = *fee * std::pow(10.0, job.heading.decimals);
  const std::string name = name_of(*job.catalogue, item->id);
  OrderLine line{order.stage, "short-load:" + item->id, "Short load, " + name,   order.of, yards, "piece", yards,
                 "cu yd",     money_of(coins),          money_of(coins * yards), false,    false, false,   missing,
                 {}};
  line.sentence = counted(yards, "cu yd") + " short of " + in_words(*full) + ", each charged";
  return line;
}

}  // namespace

std::vector<OrderLine> short_loads(const plan::Job& job, const std::vector<OrderLine>& material) {
  std::vector<OrderLine> lines;
  for (const OrderLine& order : material)
    if (auto line = short_load(job, order)) lines.push_back(*std::move(line));
  return lines;
}

std::string cheaper_in_bags(const plan::Job& job, const OrderLine& ready_mix, const std::vector<Part>& parts) {
  const Item* item = job.catalogue->item(ready_mix.item);
  if (!item || item->kind != "concrete" || item->unit != "cu yd" || !ready_mix.amount || ready_mix.by_others) return "";
  units::Money whole = *ready_mix.amount;
  if (const auto fee = short_load(job, ready_mix); fee && fee->amount) whole += *fee->amount;
  std::string said;
  units::Money least = whole;
  for (const auto& [id, bag] : job.catalogue->items) {
    if (!bag || bag->kind != "concrete" || !id.starts_with("conc-bag") || !bag->number("volume_l")) continue;
    const auto bought = buy(parts, *bag, job.choices.day_hours);
    const Cost price = bought ? cost(*bag, bought->quantity()) : Cost{};
    if (!price.amount || price.by_others || *price.amount >= least) continue;
    least = *price.amount;
    said = "; cheaper in bags: " + in_words(bought->quantity()) + " of " + name_of(*job.catalogue, id) + " for " +
           units::write_money(least, job.heading.decimals) + " " + job.heading.currency + ", against " +
           units::write_money(whole, job.heading.decimals) + " with the short load";
  }
  return said;
}

}  // namespace estimate
