// What is brought, counted as it comes off the truck.
#include <algorithm>
#include <cmath>

#include "estimate/added.h"
#include "estimate/charges.h"
#include "estimate/kinds.h"
#include "sheets/crew_parts.h"

namespace sheets {

using catalogue::Item;
using estimate::OrderLine;

namespace {

bool metric(const Printed& printed) { return printed.job().heading.units == units::System::metric; }

const Item* item_of(const Printed& printed, const OrderLine& line) { return printed.job().catalogue->item(line.item); }

std::string several(const Printed& printed, double number, const std::string& unit) {
  return number_words(printed, number) + " " + unit_words(printed, number, unit);
}

// 675 pieces at 450 on a pallet and 45 in a layer: one full pallet and 5 layers.
std::string on_pallets(const Printed& printed, const Item& item, double quantity) {
  const double per = item.pack.pieces, layer = item.pack.pieces_per_layer;
  if (item.unit == "pack" || per <= 0) {
    if (per <= 0) return "";
    return filled(printed, "%1 on each pallet", {several(printed, per, "piece")});
  }
  const double full = std::floor(quantity / per + 1e-9), rest = quantity - full * per;
  std::string pallets, loose;
  if (full > 0) pallets = filled(printed, "%1 of %2", {several(printed, full, "pallet"), number_words(printed, per)});
  if (rest <= 0.5) return pallets;
  const bool in_layers = layer > 1 && std::abs(rest / layer - std::round(rest / layer)) < 1e-9;
  if (in_layers)
    loose = filled(printed, "%1 of %2", {several(printed, rest / layer, "layer"), number_words(printed, layer)});
  else
    loose = several(printed, rest, item.unit);
  if (pallets.empty()) return in_layers ? filled(printed, "part pallet: %1", {loose}) : printed.say("part pallet");
  return filled(printed, "%1 and %2", {pallets, loose});
}

std::string in_loads(const Printed& printed, const OrderLine& line, const std::vector<estimate::Visit>& visits) {
  const auto& lines = printed.results->estimate.lines;
  for (const estimate::Visit& visit : visits) {
    const bool loads = visit.kind == estimate::Visit::Kind::bulk || visit.kind == estimate::Visit::Kind::ready_mix;
    const bool has = std::ranges::any_of(visit.lines, [&](std::size_t number) { return &lines[number] == &line; });
    if (!loads || !has) continue;
    const double count = visit.loads.amount().value;
    const std::string truck = visit.truck.empty() ? "" : " (" + name_of(printed, visit.truck) + ")";
    return filled(printed, "in %1", {several(printed, count, "load")}) + truck;
  }
  return "";
}

// What of it is needed, in the measure that tells most: pieces, the unit of order where that is a weight or the measure
// comes to next to nothing (glue), else length, area, volume.
std::string needed(const Printed& printed, const OrderLine& line, const Item& item) {
  constexpr double little = 0.05;  // m3
  if (!(line.shares.needed > 0)) return "";
  if (line.unit == "m3" && line.quantity < little)
    return filled(printed, "%1 needed", {several(printed, line.shares.needed, line.order_unit)});
  if (item.unit == "ton") return filled(printed, "%1 needed", {number_words(printed, line.shares.needed)});
  if (line.unit != "piece") return filled(printed, "%1 needed", {measured(printed, line.quantity, line.unit).words()});
  if (item.unit != "piece") return "";
  const double spare = line.order_quantity - line.shares.needed;
  const std::string net = number_words(printed, line.shares.needed);
  const bool whole = std::abs(spare - std::round(spare)) < 1e-9;
  if (spare < 0.5 || !whole) return filled(printed, "%1 needed", {net});
  return filled(printed, "%1 needed, %2 over", {net, number_words(printed, spare)});
}

// Over what one person lifts: said where the number stands.
std::string heavy(const Printed& printed, const Item& item) {
  constexpr double published = 23;  // kg: 51 lb, the recommended weight limit of NIOSH
  if (item.unit != "piece" || item.mass_kg.value_or(0) <= published) return "";
  return filled(printed, "%1 each: lift by two", {weight_words(printed, *item.mass_kg)});
}

std::string short_tons(const Printed& printed, double quantity) {
  constexpr double kilograms = 907.18474;  // one short ton
  return weight_words(printed, quantity * kilograms);
}

}  // namespace

Counted parted(const std::string& words) {
  const std::size_t space = words.find(' ');
  if (space == std::string::npos) return {words, ""};
  return {words.substr(0, space), words.substr(space + 1)};
}

Counted bought(const Printed& printed, const OrderLine& line) {
  const std::string number = number_words(printed, line.order_quantity);
  if (line.order_unit == "ton" && metric(printed))
    return {number, printed.say(number == "1" ? "short ton" : "short tons")};
  return {number, unit_words(printed, line.order_quantity, line.order_unit)};
}

Counted measured(const Printed& printed, double quantity, const std::string& unit) {
  if (unit == "m") return {length_words(printed, quantity), ""};
  if (unit == "m2") return parted(area_words(printed, quantity));
  if (unit == "m3") return parted(volume_words(printed, quantity));
  if (unit == "kg") return parted(weight_words(printed, quantity));
  return {number_words(printed, quantity), unit_words(printed, quantity, unit)};
}

bool is_brought(const Printed& printed, const OrderLine& line) {
  if (line.work || line.item.starts_with(estimate::added_prefix)) return false;
  const plan::CostKind kind = estimate::kind_of(printed.job(), line);
  return kind == plan::CostKind::material || kind == plan::CostKind::allowance || kind == plan::CostKind::subcontract;
}

std::string how_it_comes(const Printed& printed, const OrderLine& line, const std::vector<estimate::Visit>& visits) {
  const Item* item = item_of(printed, line);
  if (!item) return printed.say("not in the job's catalogue: ask the office");
  std::vector<std::string> parts;
  if (estimate::kind_of(*item) == plan::CostKind::subcontract) parts.push_back(printed.say("done by a licensed trade"));
  if (line.by_others) parts.push_back(printed.say("supplied by others"));
  if (estimate::pallets(*item, line.order_quantity) > 0)
    parts.push_back(on_pallets(printed, *item, line.order_quantity));
  if (item->unit == "ton" && metric(printed)) parts.push_back(short_tons(printed, line.order_quantity));
  parts.push_back(in_loads(printed, line, visits));
  parts.push_back(needed(printed, line, *item));
  parts.push_back(heavy(printed, *item));
  if (line.allowance && line.unit != "piece") parts.push_back(printed.say("a rule of thumb, not measured"));
  return joined(parts, "; ");
}

std::vector<estimate::Visit> visits_of(const Printed& printed) {
  return estimate::visits(printed.job(), printed.results->estimate.lines);
}

}  // namespace sheets
