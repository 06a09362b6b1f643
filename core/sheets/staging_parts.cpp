#include "sheets/staging_parts.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>

#include "sheets/source.h"
#include "units/quantity.h"

namespace sheets {

using estimate::OrderLine;
using estimate::Visit;
using takeoff::Stage;

namespace {

std::string of_visit(std::size_t number, const std::string& what) {
  return "visit/" + std::to_string(number) + "/" + what;
}

std::string stage_words(const Printed& printed, Stage stage) {
  const auto days = stage_days(printed);
  const auto found = days.find(stage);
  const std::string when = found == days.end() ? "" : days_words(printed, found->second);
  return joined({stage_number(stage) + " " + stage_title(printed, stage), when}, " · ");
}

// The names of what comes, each once.
std::string goods_of(const Printed& printed, const Visit& visit) {
  std::vector<std::string> names;
  for (const std::size_t number : visit.lines) {
    std::string name = name_of(printed, printed.results->estimate.lines[number].item);
    if (std::ranges::find(names, name) == names.end()) names.push_back(std::move(name));
  }
  return joined(names, "; ");
}

bool several(const Visit& visit) { return visit.kind == Visit::Kind::pallets || visit.kind == Visit::Kind::small; }

std::string what_comes(const Printed& printed, const Visit& visit) {
  if (visit.kind == Visit::Kind::pallets) return printed.say("Goods on pallets");
  return visit.kind == Visit::Kind::small ? printed.say("Small goods") : goods_of(printed, visit);
}

std::string how_much(const Printed& printed, const Visit& visit) {
  if (visit.kind == Visit::Kind::small || visit.lines.empty()) return "";
  if (visit.kind == Visit::Kind::pallets)
    return number_words(printed, visit.pallets) + " " + unit_words(printed, visit.pallets, "pallet");
  return bought(printed, printed.results->estimate.lines[visit.lines.front()]).words();
}

double detail(const Printed& printed, const plan::Id& truck, const char* key) {
  const catalogue::Item* item = printed.job().catalogue->item(truck);
  return item ? item->number(key).value_or(0) : 0;
}

// A flatbed that the job's catalogue has not: the loads are counted by what is common.
constexpr double common_tons = 12, common_places = 10;
std::string by_custom() { return counted_here("common practice: 12 short tons and 10 pallets on a flatbed"); }

std::string truck_words(const Printed& printed, const Visit& visit) {
  if (!visit.truck.empty()) return name_of(printed, visit.truck);
  if (visit.kind == Visit::Kind::pallets) return printed.say("flatbed, as is common");
  return visit.kind == Visit::Kind::ready_mix ? printed.say("mixer") : "";
}

Said payload(const Printed& printed, const Visit& visit) {
  if (visit.truck.empty() && visit.kind == Visit::Kind::pallets)
    return {weight_words(printed, common_tons * units::kilograms_per_short_ton), by_custom()};
  const double tons = detail(printed, visit.truck, "weight_limit_ton");
  if (!(tons > 0)) return {};
  return {weight_words(printed, tons * units::kilograms_per_short_ton), of_item(visit.truck, "weight_limit_ton")};
}

Row visit_row(const Printed& printed, const Visit& visit, std::size_t number) {
  const double loads = visit.loads.amount().value;
  Said weight, count, each;
  if (visit.weight) weight = {weight_words(printed, visit.weight->amount().value), of_visit(number, "weight")};
  count = visit.rides ? Said(printed.say("with the pallets"))
                      : Said(number_words(printed, loads), of_visit(number, "loads"));
  if (visit.weight && loads > 0)
    each = {weight_words(printed, visit.weight->amount().value / loads), of_visit(number, "load")};
  return {{what_comes(printed, visit),
           name_of(printed, visit.supplier),
           {how_much(printed, visit), of_visit(number, "loads")},
           weight,
           count,
           each,
           payload(printed, visit),
           truck_words(printed, visit)}};
}

struct Sum {
  double loads = 0;
  double weight = 0;
  double pallets = 0;

  void add(const Visit& visit) {
    loads += visit.loads.amount().value;
    weight += visit.weight ? visit.weight->amount().value : 0;
    pallets += visit.pallets;
  }
};

Row sum_row(const Printed& printed, const Sum& sum, const std::string& name, Row::Kind kind) {
  const std::string from = counted_here("the rows above added up");
  const std::string pallets =
      sum.pallets > 0 ? number_words(printed, sum.pallets) + " " + unit_words(printed, sum.pallets, "pallet") : "";
  return {
      {name, {}, {pallets, from}, {weight_words(printed, sum.weight), from}, {number_words(printed, sum.loads), from}},
      kind};
}

}  // namespace

std::vector<Caution> stored_wrongly(const Printed& printed) {
  std::vector<Caution> made;
  for (const catalogue::SiteRule& rule : printed.job().catalogue->site_rules) {
    if (rule.mark != "drop-spot" && rule.against != "drop-spot") continue;
    const auto& said = printed.results->takeoff.problems;
    const bool so = std::ranges::any_of(said, [&](const auto& one) { return one.code == "site-" + rule.id; });
    if (so)
      made.push_back(
          {filled(printed, "On this plan: %1. Decided by: %2.", {printed.say(rule.text), printed.say(rule.who)})});
  }
  return made;
}

Passage loads_passage(const Printed& printed, const std::vector<Visit>& visits) {
  Table table{{{printed.say("What comes"), Align::left, 0.27},
               {printed.say("From"), Align::left, 0.13},
               {printed.say("How much"), Align::right, 0.1},
               {printed.say("Weight"), Align::right, 0.1},
               {printed.say("Loads"), Align::right, 0.07},
               {printed.say("Each load"), Align::right, 0.1},
               {printed.say("Truck carries"), Align::right, 0.1},
               {printed.say("Truck"), Align::left, 0.13}},
              {}};
  Sum all;
  for (const Stage stage : takeoff::all_stages) {
    Sum sum;
    std::size_t rows = 0;
    for (std::size_t number = 0; number < visits.size(); ++number) {
      if (visits[number].stage != stage) continue;
      if (rows++ == 0) table.rows.push_back({{stage_words(printed, stage)}, Row::Kind::group});
      table.rows.push_back(visit_row(printed, visits[number], number));
      if (several(visits[number])) table.rows.push_back({{goods_of(printed, visits[number])}, Row::Kind::note});
      sum.add(visits[number]);
      all.add(visits[number]);
    }
    if (rows > 1) table.rows.push_back(sum_row(printed, sum, printed.say("This stage"), Row::Kind::sum));
  }
  table.rows.push_back(sum_row(printed, all, printed.say("Whole job"), Row::Kind::total));
  Passage passage{{Heading{printed.say("Loads by stage"), {}}, table}};
  passage.blocks.push_back(Paragraph{
      {printed.say(
          "Loads are split evenly; two materials never share a body. What has no weight is not in the weights.")},
      Paragraph::Kind::note});
  for (const OrderLine& line : printed.results->estimate.lines)
    if (line.by_others && is_brought(printed, line))
      passage.blocks.push_back(Paragraph{{filled(printed, "Supplied by others, ask when it comes: %1, %2.",
                                                 {name_of(printed, line.item), bought(printed, line).words()}),
                                          of_line(printed, line)},
                                         Paragraph::Kind::note});
  return passage;
}

Passage trucks_passage(const Printed& printed, const std::vector<Visit>& visits) {
  Table table{{{printed.say("Truck"), Align::left, 0.4},
               {printed.say("Carries at most"), Align::right, 0.2},
               {printed.say("Body"), Align::right, 0.2},
               {printed.say("Pallet places"), Align::right, 0.2}},
              {}};
  std::set<plan::Id> trucks;
  for (const Visit& visit : visits)
    if (!visit.truck.empty()) trucks.insert(visit.truck);
  for (const plan::Id& truck : trucks) {
    Said weight, body, places;
    if (const double tons = detail(printed, truck, "weight_limit_ton"); tons > 0)
      weight = {weight_words(printed, tons * units::kilograms_per_short_ton), of_item(truck, "weight_limit_ton")};
    if (const double yards = detail(printed, truck, "volume_limit_cu_yd"); yards > 0)
      body = {volume_words(printed, yards * units::cubic_metres_per_cubic_yard), of_item(truck, "volume_limit_cu_yd")};
    if (const double count = detail(printed, truck, "pallet_places"); count > 0)
      places = {number_words(printed, count), of_item(truck, "pallet_places")};
    table.rows.push_back({{name_of(printed, truck), weight, body, places}});
  }
  const bool flatbed = std::ranges::any_of(
      visits, [](const Visit& visit) { return visit.kind == Visit::Kind::pallets && visit.truck.empty(); });
  if (flatbed)
    table.rows.push_back({{printed.say("flatbed, as is common"),
                           {weight_words(printed, common_tons * units::kilograms_per_short_ton), by_custom()},
                           {},
                           {number_words(printed, common_places), by_custom()}}});
  if (table.rows.empty()) return {};
  return {
      {Heading{printed.say("What a truck carries"), {}}, table,
       Caution{printed.say("A loaded truck breaks drives, kerbs, pipes and septic lids: the way is looked at before "
                           "it comes, and axle limits of the road are the driver's to keep.")}}};
}

double pallet_room(double pallets) { return pallets * pallet_length * (pallet_width + aisle); }

double pile_room(double cubic_metres) {
  // A cone of 35 degrees: V = pi r^3 tan(35) / 3.
  const double steep = std::tan(35 * std::numbers::pi / 180);
  const double radius = std::cbrt(3 * cubic_metres / (std::numbers::pi * steep));
  return std::numbers::pi * radius * radius;
}

Passage room_passage(const Printed& printed, const std::vector<Visit>& visits) {
  double there = 0;
  for (const DropSpot& spot : drop_spots(printed)) there += spot.area;
  Table table{{{printed.say("Stage"), Align::left, 0.36},
               {printed.say("Pallets with aisle"), Align::right, 0.18},
               {printed.say("Piles"), Align::right, 0.14},
               {printed.say("Room needed"), Align::right, 0.16},
               {printed.say("All at once?"), Align::left, 0.16}},
              {}};
  const std::string by_rule =
      counted_here("pallets of the stage with their aisle, and a cone of 35 degrees for each material");
  for (const Stage stage : takeoff::all_stages) {
    double pallets = 0, piles = 0;
    for (const Visit& visit : visits) {
      if (visit.stage != stage) continue;
      pallets += pallet_room(visit.pallets);
      if (visit.kind == Visit::Kind::bulk && visit.loose) piles += pile_room(visit.loose->amount().value);
    }
    if (pallets + piles <= 0) continue;
    const auto area = [&](double value) { return value > 0 ? Said(area_words(printed, value), by_rule) : Said(); };
    const std::string fits = there <= 0 ? "" : printed.say(pallets + piles <= there ? "fits" : "in several goes");
    table.rows.push_back({{stage_number(stage) + " " + stage_title(printed, stage), area(pallets), area(piles),
                           area(pallets + piles), fits}});
  }
  if (table.rows.empty()) return {};
  const std::string rule = filled(
      printed, "A pallet counts as %1 x %2 with an aisle of %3 along it, a pile as a cone of 35° (common practice).",
      {length_words(printed, pallet_length), length_words(printed, pallet_width), length_words(printed, aisle)});
  return {{Heading{printed.say("Room"),
                   {there > 0 ? filled(printed, "%1 drawn", {area_words(printed, there)}) : "",
                    there > 0 ? counted_here("areas of the drop spots added up") : ""}},
           Paragraph{{rule, counted_here("sizes of a pallet and its aisle")}, Paragraph::Kind::note}, table}};
}

}  // namespace sheets
