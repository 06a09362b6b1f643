#include "estimate/charges.h"

#include <algorithm>
#include <cmath>

#include "estimate/deliveries.h"
#include "estimate/price.h"
#include "estimate/short_load.h"
#include "estimate/words.h"

namespace estimate {

using catalogue::Item;
using takeoff::term;
using takeoff::Working;

namespace {

struct Ordered {
  const OrderLine* line;
  const Item* item;
};

std::vector<Ordered> ordered(const plan::Job& job, const std::vector<OrderLine>& material) {
  std::vector<Ordered> found;
  for (const OrderLine& line : material) {
    const Item* item = job.catalogue->item(line.item);
    if (item && !line.work && !line.by_others && line.order_quantity > 0) found.push_back({&line, item});
  }
  return found;
}

OrderLine charge(takeoff::Stage stage, plan::Id item, std::string description, const std::string& unit, Working count) {
  const double quantity = count.amount().value;
  return {stage, std::move(item), std::move(description), {}, quantity, "piece", quantity, unit, {}, {}, false,
          false, false,           std::move(count),       {}};
}

const Item* of_kind(const plan::Job& job, const std::string& kind, const plan::Id* supplier) {
  for (const auto& [id, item] : job.catalogue->items)
    if (item && item->kind == kind && (!supplier || item->supplier == *supplier)) return item.get();
  return nullptr;
}

std::vector<OrderLine> pallet_lines(const plan::Job& job, const std::vector<Ordered>& all) {
  const Item* deposit = of_kind(job, "deposit", nullptr);
  if (!deposit) return {};
  std::vector<Working> counts;
  std::optional<takeoff::Stage> first;
  for (const Ordered& one : all) {
    const double count = one.item->supplier == deposit->supplier ? pallets(*one.item, one.line->order_quantity) : 0;
    if (count <= 0) continue;
    counts.push_back(term("pallets of " + one.item->id, count, units::piece, one.item->id + "/pieces_per_pack"));
    first = first ? std::min(*first, one.line->stage) : one.line->stage;
  }
  if (counts.empty()) return {};
  const Working count = counts.size() == 1 ? counts.front() : Working::sum(std::move(counts));
  const double number = count.amount().value;
  OrderLine in = charge(*first, deposit->id, name_of(*job.catalogue, deposit->id) + ", charge", deposit->unit, count);
  const Cost paid = cost(*deposit, number);
  in.unit_price = paid.unit_price;
  in.amount = paid.amount;
  in.by_others = paid.by_others;
  in.sentence = counted(number, "pallet") + " stand under what is sent; the deposit comes back with them";
  const Item* credit = of_kind(job, "credit", &deposit->supplier);
  OrderLine out = charge(*first, credit ? credit->id : deposit->id,
                         name_of(*job.catalogue, credit ? credit->id : deposit->id) + ", credit", deposit->unit, count);
  const Cost back = credit ? cost(*credit, number) : Cost{};
  if (credit) {
    out.unit_price = back.unit_price;
    out.amount = back.amount;
  } else {
    if (paid.unit_price) out.unit_price = -*paid.unit_price;
    if (paid.amount) out.amount = -*paid.amount;
  }
  out.by_others = in.by_others;
  out.sentence = counted(number, "pallet") + " given back whole";
  return {in, out};
}

}  // namespace

double pallets(const Item& item, double order_quantity) {
  if (item.pack.kind != "pallet" && item.pack.kind != "mixed pallet") return 0;
  if (item.unit == "bag" && order_quantity < item.pack.pieces) return 0;
  const double on_one = item.unit == "pack" || item.unit == item.pack.kind ? 1 : item.pack.pieces;
  return on_one > 0 ? std::ceil(order_quantity / on_one - 1e-9) : 0;
}

std::vector<OrderLine> charges(const plan::Job& job, const std::vector<OrderLine>& material) {
  const std::vector<Ordered> all = ordered(job, material);
  std::vector<OrderLine> lines = deliveries(job, material);
  for (OrderLine& line : short_loads(job, material)) lines.push_back(std::move(line));
  for (OrderLine& line : pallet_lines(job, all)) lines.push_back(std::move(line));
  return lines;
}

}  // namespace estimate
