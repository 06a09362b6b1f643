#include "estimate/waste.h"

#include <algorithm>
#include <array>

namespace estimate {

using catalogue::Item;

namespace {

std::optional<double> measure(const takeoff::Takeoff& takeoff, const plan::ElementId& id, const std::string& name) {
  for (const takeoff::Measures& measures : takeoff.measures)
    if (measures.element == id)
      if (const auto value = measures.get(name)) return value;
  return std::nullopt;
}

// Units of `item` that lie in the field of the element, cut ones by their area; nothing where it has none.
std::optional<double> in_field(const plan::Job& job, const takeoff::Takeoff& takeoff, const plan::ElementId& id,
                               const plan::Id& item) {
  const auto found = takeoff.layouts.find(id);
  if (found == takeoff.layouts.end() || !found->second) return std::nullopt;
  const takeoff::paving::Layout& layout = *found->second;
  std::optional<double> sum;
  for (std::size_t k = 0; k < layout.lattice.kinds.size(); ++k)
    if (layout.lattice.kinds[k].item == item)
      sum = sum.value_or(0) + static_cast<double>(layout.whole(static_cast<int>(k)));
  if (!sum) return std::nullopt;
  for (const takeoff::paving::Piece& piece : layout.pieces) {
    const takeoff::paving::Kind& kind = layout.lattice.kinds[static_cast<std::size_t>(piece.kind)];
    if (kind.item == item && kind.width * kind.height > 0) *sum += piece.area / (kind.width * kind.height);
  }
  const plan::Element* element = job.find(id);
  const auto* area = element ? std::get_if<plan::PavedArea>(&element->kind) : nullptr;
  const auto net = measure(takeoff, id, "net_area_m2");
  if (area && area->taped_area_m2 && *area->taped_area_m2 > 0 && net && *net > 0) *sum *= *area->taped_area_m2 / *net;
  return sum;
}

// Of the pieces that the takeoff asks for, those that are not laid: bought for cuts and cut off.
double cut_off(const plan::Job& job, const takeoff::Takeoff& takeoff, const OrderLine& order) {
  double asked = 0, laid = 0;
  for (const takeoff::Line& line : takeoff.lines) {
    if (line.item != order.item || line.stage != order.stage || line.working.amount().unit != units::piece) continue;
    const double value = line.working.amount().value;
    asked += value;
    const auto field = line.of.size() == 1 ? in_field(job, takeoff, line.of.front(), line.item) : std::nullopt;
    // What offcuts save between areas is no unit laid.
    if (!field)
      laid += std::max(0.0, value);
    else
      laid += *field + measure(takeoff, line.of.front(), "border_units:" + line.item).value_or(0);
  }
  return std::clamp(asked - laid, 0.0, std::max(0.0, order.shares.needed));
}

// A mixed pack holds so many pieces; what of them no size asked for is left over.
Waste of_packs(const Item& pack, const OrderLine& line) {
  double in_one = 0;
  for (const catalogue::PackContent& content : pack.contents) in_one += content.pieces;
  const double all = line.order_quantity * in_one;
  Waste made;
  made.unit = "piece";
  made.laid.quantity = std::min(line.quantity, all);
  made.rounded.quantity = all - made.laid.quantity;
  return made;
}

Waste quantities(const plan::Job& job, const takeoff::Takeoff& takeoff, const Item& item, const OrderLine& line) {
  if (item.kind == "mixed-pack" && line.unit == "piece" && !item.contents.empty()) return of_packs(item, line);
  Waste made;
  made.unit = line.order_unit;
  const Shares& shares = line.shares;
  if (!(shares.needed > 0)) {
    made.laid.quantity = line.order_quantity;
    return made;
  }
  made.cuts.quantity = line.unit == "piece" && line.order_unit == "piece" ? cut_off(job, takeoff, line) : 0;
  made.laid.quantity = shares.needed - made.cuts.quantity;
  made.broken.quantity = shares.broken;
  made.spare.quantity = shares.spare;
  made.rounded.quantity = shares.rounded;
  return made;
}

// Each part gets what the sum so far is worth, less what the parts before it got: nothing is lost in rounding.
void share_out(units::Money amount, Waste& waste) {
  const std::array parts{&waste.laid, &waste.cuts, &waste.broken, &waste.spare, &waste.rounded};
  double all = 0;
  for (const WastePart* part : parts) all += std::max(0.0, part->quantity);
  units::Money given;
  double sum = 0;
  for (WastePart* part : parts) {
    sum += std::max(0.0, part->quantity);
    const units::Money to_here = all > 0 ? units::times(amount, std::min(1.0, sum / all)) : units::Money();
    part->money = to_here - given;
    given = to_here;
  }
  waste.laid.money += amount - given;  // where there is no quantity at all
}

}  // namespace

std::vector<Waste> waste(const plan::Job& job, const takeoff::Takeoff& takeoff, const Estimate& estimate) {
  std::vector<Waste> all;
  for (std::size_t i = 0; i < estimate.lines.size(); ++i) {
    const OrderLine& line = estimate.lines[i];
    const Item* item = job.catalogue->item(line.item);
    if (!item || !line.amount || line.kind != plan::CostKind::material) continue;
    Waste made = quantities(job, takeoff, *item, line);
    made.line = i;
    share_out(*line.amount, made);
    all.push_back(std::move(made));
  }
  return all;
}

WasteTotals totals(const std::vector<Waste>& all) {
  WasteTotals sum;
  for (const Waste& one : all) {
    sum.laid += one.laid.money;
    sum.cuts += one.cuts.money;
    sum.broken += one.broken.money;
    sum.spare += one.spare.money;
    sum.rounded += one.rounded.money;
  }
  return sum;
}

}  // namespace estimate
