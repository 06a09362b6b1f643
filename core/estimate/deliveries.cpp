#include "estimate/deliveries.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>

#include "estimate/charges.h"
#include "estimate/kinds.h"
#include "estimate/words.h"
#include "takeoff/loads.h"
#include "units/quantity.h"

namespace estimate {

using catalogue::Item;
using takeoff::Stage;
using takeoff::term;
using takeoff::Working;

namespace {

struct Ordered {
  const OrderLine* line;
  const Item* item;
  std::size_t number;  // of the line

  Working quantity() const { return term(item->id + " ordered", line->order_quantity, units::piece, item->id); }
};

struct Size {
  std::string_view word;
  double si;
  units::Unit unit;
};
constexpr std::array sizes{
    Size{"ton", units::kilograms_per_short_ton, units::kilogram},
    Size{"t", 1000, units::kilogram},
    Size{"lb", units::kilograms_per_pound, units::kilogram},
    Size{"kg", 1, units::kilogram},
    Size{"cu yd", units::cubic_metres_per_cubic_yard, units::cubic_metre},
    Size{"cu ft", units::cubic_metres_per_cubic_foot, units::cubic_metre},
    Size{"m3", 1, units::cubic_metre},
};

Working sum_of(std::vector<Working> parts) {
  return parts.size() == 1 ? parts.front() : Working::sum(std::move(parts));
}

Visit visit_of(Stage stage, Visit::Kind kind, const std::vector<Ordered>& all) {
  Visit visit{stage, all.front().item->supplier,
              kind,  {},
              {},    0,
              {},    {},
              {},    term("one load, its limits not known", 1, units::piece, "choices/truck")};
  for (const Ordered& one : all) visit.lines.push_back(one.number);
  return visit;
}

std::optional<Working> in_si(const Ordered& one) {
  const auto size = std::ranges::find(sizes, std::string_view(one.item->unit), &Size::word);
  if (size == sizes.end()) return std::nullopt;
  return Working::product(
      {one.quantity(), term("one " + one.item->unit, size->si, size->unit, one.item->id + "/unit")});
}

struct Bulk {
  std::vector<Working> loose;
  std::vector<Working> weight;
  bool whole = true;  // false: of one part the measure is not known
};

void add(Bulk& bulk, const Ordered& one) {
  const auto heavy = one.item->number("loose_density_kg_m3");
  const double value = heavy ? *heavy : one.item->density_kg_m3.value_or(0);
  const auto measured = in_si(one);
  if (!measured || !(value > 0)) {
    bulk.whole = false;
    return;
  }
  const Working density =
      term("loose density", value, units::kilogram_per_cubic_metre, one.item->id + "/loose_density_kg_m3");
  const bool weighed = measured->amount().unit == units::kilogram;
  bulk.weight.push_back(weighed ? *measured : Working::product({*measured, density}));
  bulk.loose.push_back(weighed ? Working::quotient(*measured, density) : *measured);
}

// Loads of one material in one stage by the job's truck.
Visit bulk_visit(const plan::Job& job, Stage stage, const std::vector<Ordered>& all) {
  Bulk bulk;
  Visit visit = visit_of(stage, Visit::Kind::bulk, all);
  for (const Ordered& one : all) add(bulk, one);
  visit.what = name_of(*job.catalogue, all.front().item->id);
  if (bulk.whole) visit.weight = sum_of(bulk.weight);
  if (bulk.whole) visit.loose = sum_of(bulk.loose);
  const Item* truck = job.catalogue->item(job.choices.truck);
  if (!truck || !bulk.whole) return visit;
  if (const auto made = takeoff::loads(*visit.loose, *visit.weight, *truck)) {
    visit.loads = *made;
    visit.truck = truck->id;
  }
  return visit;
}

bool is_ready_mix(const Item& item) { return item.kind == "concrete" && (item.unit == "cu yd" || item.unit == "m3"); }

Visit mixer_visit(const plan::Job& job, const Ordered& one) {
  constexpr double common_mixer = 10;  // cu yd
  const double yards = std::max(0.5, one.item->number("load_cu_yd").value_or(common_mixer));
  Visit visit = visit_of(one.line->stage, Visit::Kind::ready_mix, {one});
  visit.what = name_of(*job.catalogue, one.item->id);
  visit.loose = *in_si(one);
  if (const double density = one.item->density_kg_m3.value_or(0); density > 0)
    visit.weight = Working::product(
        {*in_si(one), term("density", density, units::kilogram_per_cubic_metre, one.item->id + "/density_kg_m3")});
  visit.loads = Working::up(Working::quotient(*in_si(one), term("a mixer", yards * units::cubic_metres_per_cubic_yard,
                                                                units::cubic_metre, one.item->id + "/load_cu_yd")));
  return visit;
}

// Kilograms of one item.unit; a mixed pack weighs what it holds.
double mass_of(const plan::Job& job, const Item& item) {
  if (item.mass_kg) return *item.mass_kg;
  double sum = 0;
  for (const catalogue::PackContent& content : item.contents)
    if (const Item* size = job.catalogue->item(content.item)) sum += content.pieces * size->mass_kg.value_or(0);
  return sum;
}

std::optional<Working> weight_of(const plan::Job& job, const Ordered& one) {
  const double mass = mass_of(job, *one.item);
  if (!(mass > 0)) return std::nullopt;
  return Working::product({one.quantity(), term("mass of one", mass, units::kilogram, one.item->id + "/mass_kg")});
}

// The weight of all of which it is known; nothing where it is of none.
std::optional<Working> weight_of(const plan::Job& job, const std::vector<Ordered>& all) {
  std::vector<Working> weights;
  for (const Ordered& one : all)
    if (auto weight = weight_of(job, one)) weights.push_back(*std::move(weight));
  return weights.empty() ? std::nullopt : std::optional(sum_of(std::move(weights)));
}

Visit flatbed_visit(const plan::Job& job, Stage stage, const std::vector<Ordered>& all) {
  constexpr double common_tons = 12, common_places = 10;
  std::vector<Working> places;
  Visit visit = visit_of(stage, Visit::Kind::pallets, all);
  for (const Ordered& one : all) {
    places.push_back(term("pallets of " + one.item->id, pallets(*one.item, one.line->order_quantity), units::piece,
                          one.item->id + "/pieces_per_pack"));
    visit.pallets += pallets(*one.item, one.line->order_quantity);
  }
  visit.what = counted(visit.pallets, "pallet");
  visit.weight = weight_of(job, all);
  const Item* flat = job.catalogue->item("truck-flat");
  const auto detail = [flat](const char* key, double otherwise) {
    const auto value = flat ? flat->number(key) : std::nullopt;
    return value && *value > 0 ? *value : otherwise;
  };
  std::vector<Working> ways{Working::quotient(
      sum_of(std::move(places)),
      term("places", detail("pallet_places", common_places), units::piece, "truck-flat/pallet_places"))};
  if (visit.weight)
    ways.push_back(Working::quotient(
        *visit.weight, term("payload", detail("weight_limit_ton", common_tons) * units::kilograms_per_short_ton,
                            units::kilogram, "truck-flat/weight_limit_ton")));
  visit.loads = Working::up(ways.size() == 1 ? ways.front() : Working::greatest(std::move(ways)));
  visit.truck = flat ? flat->id : "";
  return visit;
}

// Small goods ride with the pallets of the same supplier; one that sends none brings them in one drop.
void add_small(const plan::Job& job, const std::vector<Ordered>& small, std::vector<Visit>& found) {
  if (small.empty()) return;
  const bool rides = std::ranges::find(found, Visit::Kind::pallets, &Visit::kind) != found.end();
  const Stage first = std::ranges::min(small, {}, [](const Ordered& one) { return one.line->stage; }).line->stage;
  Visit visit = visit_of(first, Visit::Kind::small, small);
  visit.what = "small goods";
  visit.rides = rides;
  visit.weight = weight_of(job, small);
  visit.loads = term(rides ? "with the pallets" : "one drop", rides ? 0 : 1, units::piece);
  found.push_back(std::move(visit));
}

std::vector<Visit> visits_of(const plan::Job& job, const std::vector<Ordered>& all) {
  std::vector<Visit> found;
  std::map<std::pair<Stage, plan::Id>, std::vector<Ordered>> bulks;
  std::map<Stage, std::vector<Ordered>> on_pallets;
  std::vector<Ordered> small;
  for (const Ordered& one : all) {
    const Stage stage = one.line->stage;
    if (one.item->kind == "aggregate")
      bulks[{stage, one.item->id}].push_back(one);
    else if (is_ready_mix(*one.item))
      found.push_back(mixer_visit(job, one));
    else if (pallets(*one.item, one.line->order_quantity) > 0)
      on_pallets[stage].push_back(one);
    else
      small.push_back(one);
  }
  for (const auto& [key, group] : bulks) found.push_back(bulk_visit(job, key.first, group));
  for (const auto& [stage, group] : on_pallets) found.push_back(flatbed_visit(job, stage, group));
  add_small(job, small, found);
  std::ranges::stable_sort(found, {}, &Visit::stage);
  return found;
}

OrderLine line_of(const catalogue::Supplier& supplier, const std::vector<Visit>& all, int decimals) {
  const std::string name = supplier.name.en.empty() ? supplier.id : supplier.name.en;
  std::vector<Working> parts;
  std::vector<std::string> words;
  for (const Visit& visit : all) {
    if (visit.rides) continue;
    const std::string when = takeoff::title(visit.stage);
    // A product of one carries the name into the sentence of the working.
    parts.push_back(Working::product({visit.loads}).named("loads of " + visit.what + ", " + when));
    words.push_back(in_words(visit.loads.amount().value) + " of " + visit.what + " (" + when + ")");
  }
  Working loads = sum_of(std::move(parts));
  const double count = loads.amount().value;
  OrderLine line{all.front().stage,
                 "delivery:" + supplier.id,
                 "Delivery, " + name,
                 {},
                 count,
                 "piece",
                 count,
                 "load",
                 supplier.delivery,
                 units::times(supplier.delivery, count),
                 false,
                 false,
                 false,
                 std::move(loads),
                 {}};
  line.sentence = counted(count, "load") + " by " + name + " at " + units::write_money(supplier.delivery, decimals) +
                  ": " + joined(words, "; ");
  return line;
}

// What `supplier` sends of these lines.
std::vector<Ordered> sent_by(const plan::Job& job, const plan::Id& supplier, const std::vector<OrderLine>& lines) {
  std::vector<Ordered> sent;
  for (std::size_t number = 0; number < lines.size(); ++number) {
    const OrderLine& line = lines[number];
    const Item* item = job.catalogue->item(line.item);
    if (!item || item->supplier != supplier || line.work || line.by_others || !(line.order_quantity > 0)) continue;
    if (line.order_unit == item->unit) sent.push_back({&line, item, number});
  }
  return sent;
}

}  // namespace

std::vector<Visit> visits(const plan::Job& job, const std::vector<OrderLine>& lines) {
  std::set<plan::Id> suppliers;
  std::vector<OrderLine> goods = lines;
  for (OrderLine& line : goods) {
    const Item* item = job.catalogue->item(line.item);
    const plan::CostKind kind = item ? kind_of(*item) : plan::CostKind::fee;
    const bool sent = kind == plan::CostKind::material || kind == plan::CostKind::allowance;
    if (sent) suppliers.insert(item->supplier);
    line.work = line.work || !sent;
  }
  std::vector<Visit> all;
  for (const plan::Id& supplier : suppliers) {
    const std::vector<Ordered> sent = sent_by(job, supplier, goods);
    if (!sent.empty()) std::ranges::move(visits_of(job, sent), std::back_inserter(all));
  }
  std::ranges::stable_sort(all, {}, &Visit::stage);
  return all;
}

std::vector<OrderLine> deliveries(const plan::Job& job, const std::vector<OrderLine>& material) {
  std::vector<OrderLine> lines;
  for (const auto& [id, supplier] : job.catalogue->suppliers) {
    if (supplier.delivery <= units::Money()) continue;
    const std::vector<Ordered> sent = sent_by(job, id, material);
    if (!sent.empty()) lines.push_back(line_of(supplier, visits_of(job, sent), job.heading.decimals));
  }
  return lines;
}

}  // namespace estimate
