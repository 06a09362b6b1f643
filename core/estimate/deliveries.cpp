#include "estimate/deliveries.h"

#include <algorithm>
#include <array>
#include <map>

#include "estimate/charges.h"
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

  Working quantity() const { return term(item->id + " ordered", line->order_quantity, units::piece, item->id); }
};

// Loads of one thing in one stage.
struct Visit {
  Stage stage;
  std::string what;
  Working loads;
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

Working truck_loads(const plan::Job& job, const Bulk& bulk) {
  const Item* truck = job.catalogue->item(job.choices.truck);
  if (truck && bulk.whole)
    if (const auto made = takeoff::loads(sum_of(bulk.loose), sum_of(bulk.weight), *truck)) return *made;
  return term("one load, its limits not known", 1, units::piece, "choices/truck");
}

bool is_ready_mix(const Item& item) { return item.kind == "concrete" && (item.unit == "cu yd" || item.unit == "m3"); }

Working mixer_loads(const Ordered& one) {
  constexpr double common_mixer = 10;  // cu yd
  const double yards = std::max(0.5, one.item->number("load_cu_yd").value_or(common_mixer));
  return Working::up(Working::quotient(*in_si(one), term("a mixer", yards * units::cubic_metres_per_cubic_yard,
                                                         units::cubic_metre, one.item->id + "/load_cu_yd")));
}

// Kilograms of one item.unit; a mixed pack weighs what it holds.
double mass_of(const plan::Job& job, const Item& item) {
  if (item.mass_kg) return *item.mass_kg;
  double sum = 0;
  for (const catalogue::PackContent& content : item.contents)
    if (const Item* size = job.catalogue->item(content.item)) sum += content.pieces * size->mass_kg.value_or(0);
  return sum;
}

Working flatbed_loads(const plan::Job& job, const std::vector<Ordered>& all) {
  constexpr double common_tons = 12, common_places = 10;
  std::vector<Working> weights, places;
  for (const Ordered& one : all) {
    places.push_back(term("pallets of " + one.item->id, pallets(*one.item, one.line->order_quantity), units::piece,
                          one.item->id + "/pieces_per_pack"));
    if (const double mass = mass_of(job, *one.item); mass > 0)
      weights.push_back(
          Working::product({one.quantity(), term("mass of one", mass, units::kilogram, one.item->id + "/mass_kg")}));
  }
  const Item* flat = job.catalogue->item("truck-flat");
  const auto detail = [flat](const char* key, double otherwise) {
    const auto value = flat ? flat->number(key) : std::nullopt;
    return value && *value > 0 ? *value : otherwise;
  };
  std::vector<Working> ways{Working::quotient(
      sum_of(std::move(places)),
      term("places", detail("pallet_places", common_places), units::piece, "truck-flat/pallet_places"))};
  if (!weights.empty())
    ways.push_back(
        Working::quotient(sum_of(std::move(weights)),
                          term("payload", detail("weight_limit_ton", common_tons) * units::kilograms_per_short_ton,
                               units::kilogram, "truck-flat/weight_limit_ton")));
  return Working::up(ways.size() == 1 ? ways.front() : Working::greatest(std::move(ways)));
}

std::vector<Visit> visits(const plan::Job& job, const std::vector<Ordered>& all) {
  std::vector<Visit> found;
  std::map<std::pair<Stage, plan::Id>, Bulk> bulks;
  std::map<Stage, std::vector<Ordered>> on_pallets;
  std::vector<Stage> small;
  for (const Ordered& one : all) {
    const Stage stage = one.line->stage;
    if (one.item->kind == "aggregate")
      add(bulks[{stage, one.item->id}], one);
    else if (is_ready_mix(*one.item))
      found.push_back({stage, name_of(*job.catalogue, one.item->id), mixer_loads(one)});
    else if (pallets(*one.item, one.line->order_quantity) > 0)
      on_pallets[stage].push_back(one);
    else
      small.push_back(stage);
  }
  for (const auto& [key, bulk] : bulks)
    found.push_back({key.first, name_of(*job.catalogue, key.second), truck_loads(job, bulk)});
  for (const auto& [stage, group] : on_pallets) {
    double count = 0;
    for (const Ordered& one : group) count += pallets(*one.item, one.line->order_quantity);
    found.push_back({stage, counted(count, "pallet"), flatbed_loads(job, group)});
  }
  if (on_pallets.empty() && !small.empty())
    found.push_back({*std::ranges::min_element(small), "small goods", term("one drop", 1, units::piece)});
  std::ranges::stable_sort(found, {}, &Visit::stage);
  return found;
}

OrderLine line_of(const catalogue::Supplier& supplier, const std::vector<Visit>& all, int decimals) {
  const std::string name = supplier.name.en.empty() ? supplier.id : supplier.name.en;
  std::vector<Working> parts;
  std::vector<std::string> words;
  for (const Visit& visit : all) {
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

}  // namespace

std::vector<OrderLine> deliveries(const plan::Job& job, const std::vector<OrderLine>& material) {
  std::vector<OrderLine> lines;
  for (const auto& [id, supplier] : job.catalogue->suppliers) {
    if (supplier.delivery <= units::Money()) continue;
    std::vector<Ordered> sent;
    for (const OrderLine& line : material) {
      const Item* item = job.catalogue->item(line.item);
      if (!item || item->supplier != id || line.work || line.by_others || !(line.order_quantity > 0)) continue;
      if (line.order_unit == item->unit) sent.push_back({&line, item});
    }
    if (!sent.empty()) lines.push_back(line_of(supplier, visits(job, sent), job.heading.decimals));
  }
  return lines;
}

}  // namespace estimate
