#include "sheets/order_parts.h"

#include <algorithm>
#include <array>

#include "units/number.h"
#include "units/quantity.h"

namespace sheets {

using estimate::OrderLine;
using estimate::Visit;
using takeoff::term;
using takeoff::Working;

namespace {

bool is_ordered(const Printed& printed, const OrderLine& line) {
  const catalogue::Item* item = printed.job().catalogue->item(line.item);
  if (!item || line.work || line.by_others || !(line.order_quantity > 0)) return false;
  return item->kind != "deposit" && item->kind != "credit" && item->kind != "labour";
}

struct Mass {
  std::string_view unit;
  double kilograms;
};
constexpr std::array weighed{Mass{"ton", units::kilograms_per_short_ton}, Mass{"t", 1000},
                             Mass{"lb", units::kilograms_per_pound}, Mass{"kg", 1}};
struct Volume {
  std::string_view unit;
  double cubic_metres;
};
constexpr std::array measured{Volume{"cu yd", units::cubic_metres_per_cubic_yard},
                              Volume{"cu ft", units::cubic_metres_per_cubic_foot}, Volume{"m3", 1}};

// A mixed pack weighs what it holds; 0 where a part of it is not known.
double mass_of(const plan::Job& job, const catalogue::Item& item) {
  if (item.mass_kg) return *item.mass_kg;
  double sum = 0;
  for (const catalogue::PackContent& content : item.contents) {
    const catalogue::Item* size = job.catalogue->item(content.item);
    if (!size || !size->mass_kg) return 0;
    sum += content.pieces * *size->mass_kg;
  }
  return sum;
}

std::optional<std::size_t> counted(const std::string& text, std::size_t below) {
  const auto number = units::read_number(text);
  if (!number || *number < 0 || *number >= static_cast<double>(below)) return std::nullopt;
  return static_cast<std::size_t>(*number);
}

std::optional<std::string> of_visit(const Printed& printed, const std::string& number, const std::string& what) {
  const std::vector<Visit> visits = estimate::visits(printed.job(), printed.results->estimate.lines);
  const auto at = counted(number, visits.size());
  if (!at) return std::nullopt;
  const Visit& visit = visits[*at];
  const units::System system = printed.job().heading.units;
  if (what == "loads") return visit.loads.sentence(system);
  if (!visit.weight) return std::nullopt;
  if (what == "weight") return visit.weight->sentence(system);
  if (what != "load" || !(visit.loads.amount().value > 0)) return std::nullopt;
  return Working::quotient(*visit.weight, visit.loads).sentence(system);
}

}  // namespace

bool supplied_by_others(const Printed& printed, const OrderLine& line) {
  return line.by_others && !line.work && printed.job().catalogue->item(line.item) != nullptr;
}

std::optional<Working> weight_of(const plan::Job& job, const OrderLine& line) {
  const catalogue::Item* item = job.catalogue->item(line.item);
  if (!item || !(line.order_quantity > 0)) return std::nullopt;
  const Working ordered = term("ordered", line.order_quantity, units::piece, item->id);
  const auto of = [&](const std::string& field) { return item->id + "/" + field; };
  if (const double mass = mass_of(job, *item); mass > 0)
    return Working::product({ordered, term("mass of one", mass, units::kilogram, of("mass_kg"))});
  if (const auto mass = std::ranges::find(weighed, item->unit, &Mass::unit); mass != weighed.end())
    return Working::product({ordered, term("one " + item->unit, mass->kilograms, units::kilogram, of("unit"))});
  const auto volume = std::ranges::find(measured, item->unit, &Volume::unit);
  const auto loose = item->number("loose_density_kg_m3");
  const double density = loose ? *loose : item->density_kg_m3.value_or(0);
  if (volume == measured.end() || !(density > 0)) return std::nullopt;
  return Working::product(
      {ordered, term("one " + item->unit, volume->cubic_metres, units::cubic_metre, of("unit")),
       term("density", density, units::kilogram_per_cubic_metre, of(loose ? "loose_density_kg_m3" : "density_kg_m3"))});
}

std::vector<Asked> asked(const Printed& printed, const std::vector<Visit>& visits) {
  std::vector<Asked> all;
  const auto of = [&all](const catalogue::Id& supplier) -> Asked& {
    const auto known = std::ranges::find(all, supplier, &Asked::supplier);
    return known == all.end() ? all.emplace_back(Asked{supplier, {}, {}}) : *known;
  };
  const auto& lines = printed.results->estimate.lines;
  for (std::size_t at = 0; at < lines.size(); ++at)
    if (is_ordered(printed, lines[at])) of(printed.job().catalogue->item(lines[at].item)->supplier).lines.push_back(at);
  for (std::size_t at = 0; at < visits.size(); ++at) of(visits[at].supplier).visits.push_back(at);
  return all;
}

std::optional<std::string> working_of_order(const Printed& printed, const std::string& list, const std::string& number,
                                            const std::string& what) {
  if (list == "visit") return of_visit(printed, number, what);
  if (list != "weight") return std::nullopt;
  const auto& lines = printed.results->estimate.lines;
  const auto at = counted(number, lines.size());
  if (!at) return std::nullopt;
  const auto weight = weight_of(printed.job(), lines[*at]);
  if (!weight) return std::nullopt;
  return weight->sentence(printed.job().heading.units);
}

}  // namespace sheets
