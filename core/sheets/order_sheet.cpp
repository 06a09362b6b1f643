// What each supplier is asked for, a page for each: what, how much, how heavy, for which stage, in how many loads. The
// price that the office counts on stands beside the place for the one that is confirmed; what the customer pays is
// nobody's business here.
#include <algorithm>

#include "estimate/charges.h"
#include "estimate/money_words.h"
#include "estimate/packs.h"
#include "sheets/all_sheets.h"
#include "sheets/order_parts.h"
#include "sheets/source.h"

namespace sheets {

namespace {

using estimate::OrderLine;
using estimate::Visit;

struct Ordering {
  const Printed& printed;
  std::vector<Visit> visits;
  const std::vector<OrderLine>& lines() const { return printed.results->estimate.lines; }
  const catalogue::Catalogue& all() const { return *printed.job().catalogue; }
  std::string say(const std::string& english) const { return printed.say(english); }
};

std::string stage_title(const Printed& printed, takeoff::Stage stage) {
  return std::to_string(static_cast<int>(stage) + 1) + "  " + printed.say(takeoff::title(stage));
}

// "15 layers, 2 pallets": how the goods come.
std::string bought_as(const Ordering& order, const catalogue::Item& item, double quantity) {
  const estimate::Lot lot = estimate::lot(item);
  std::string text;
  if (!lot.word.empty() && lot.size > 1) {
    const double lots = quantity / lot.size;
    text = filled(order.printed, "%1 %2 of %3",
                  {number_words(order.printed, lots), unit_words(order.printed, lots, lot.word),
                   number_words(order.printed, lot.size)});
  }
  if (const double pallets = estimate::pallets(item, quantity); pallets > 0)
    text += (text.empty() ? "" : ", ") + filled(order.printed, pallets == 1 ? "on %1 pallet" : "on %1 pallets",
                                                {number_words(order.printed, pallets)});
  return text;
}

Said weight_said(const Ordering& order, std::size_t number) {
  const auto weight = weight_of(order.printed.job(), order.lines()[number]);
  if (!weight) return {};
  return {weight_words(order.printed, weight->amount().value), "weight/" + std::to_string(number)};
}

Said price_said(const Ordering& order, const catalogue::Item& item) {
  if (!item.price || item.price->by_others) return {};
  const std::string money = estimate::shown_money(item.price->amount, order.printed.job().heading);
  return {filled(order.printed, "%1 per %2", {money, unit_words(order.printed, 1, item.price->unit)}),
          of_item(item.id, "price")};
}

Row line_row(const Ordering& order, std::size_t number) {
  const OrderLine& line = order.lines()[number];
  const catalogue::Item& item = *order.all().item(line.item);
  const std::string from = of_line(order.printed, line);
  std::string unit = unit_words(order.printed, line.order_quantity, line.order_unit);
  if (line.order_unit == "ton" && order.printed.job().heading.units == units::System::metric)
    unit = order.say("short tons");
  return {{{},
           Said(name_of(order.printed, line.item)),
           Said(number_words(order.printed, line.order_quantity), from),
           Said(unit),
           Said(bought_as(order, item, line.order_quantity), from),
           weight_said(order, number),
           price_said(order, item),
           {}}};
}

Row stage_row(const Ordering& order, const catalogue::Supplier* supplier, takeoff::Stage stage) {
  std::string text = stage_title(order.printed, stage) + ".  " + order.say("Wanted on") + " ________________";
  if (supplier && supplier->lead_days > 0)
    text += "   " + filled(order.printed,
                           supplier->lead_days == 1 ? "asked for by ________________ (%1 day before)"
                                                    : "asked for by ________________ (%1 days before)",
                           {number_words(order.printed, supplier->lead_days)});
  return {{Said(text)}, Row::Kind::group};
}

Table goods(const Ordering& order, const Asked& asked, const catalogue::Supplier* supplier) {
  Table table;
  table.columns = {{"", Align::left, 0, true},
                   {order.say("What"), Align::left, 0.27},
                   {order.say("How much"), Align::right, 0.08},
                   {order.say("Unit"), Align::left, 0.07},
                   {order.say("Comes as"), Align::left, 0.17},
                   {order.say("Weight"), Align::right, 0.09},
                   {order.say("Price expected"), Align::right, 0.13},
                   {order.say("Confirmed: price, day"), Align::left, 0.16}};
  std::optional<takeoff::Stage> stage;
  for (const std::size_t number : asked.lines) {
    const OrderLine& line = order.lines()[number];
    if (line.stage != stage) table.rows.push_back(stage_row(order, supplier, line.stage));
    stage = line.stage;
    table.rows.push_back(line_row(order, number));
  }
  return table;
}

std::string what_comes(const Ordering& order, const Visit& visit) {
  switch (visit.kind) {
    case Visit::Kind::pallets:
      return filled(order.printed, visit.pallets == 1 ? "%1 pallet" : "%1 pallets",
                    {number_words(order.printed, visit.pallets)});
    case Visit::Kind::small: return order.say(visit.rides ? "Small goods, with the pallets" : "Small goods");
    default: return name_of(order.printed, order.lines()[visit.lines.front()].item);
  }
}

// What the loads were counted by.
Said truck_carries(const Ordering& order, const Visit& visit, const std::string& from) {
  for (const takeoff::Term& term : visit.loads.terms())
    if (term.name == "payload" && term.amount.unit == units::kilogram)
      return {weight_words(order.printed, term.amount.value), from};
  return {};
}

std::string truck_words(const Ordering& order, const Visit& visit) {
  if (!visit.truck.empty()) return name_of(order.printed, visit.truck);
  return visit.kind == Visit::Kind::pallets ? order.say("Flatbed, as is common") : "";
}

Row visit_row(const Ordering& order, std::size_t number) {
  const Visit& visit = order.visits[number];
  const std::string from = "visit/" + std::to_string(number) + "/";
  const double loads = visit.loads.amount().value;
  Said weight, each;
  if (visit.weight) weight = {weight_words(order.printed, visit.weight->amount().value), from + "weight"};
  if (visit.weight && loads > 0)
    each = {weight_words(order.printed, visit.weight->amount().value / loads), from + "load"};
  return {{Said(stage_title(order.printed, visit.stage)), Said(what_comes(order, visit)),
           visit.rides ? Said() : Said(number_words(order.printed, loads), from + "loads"), weight, each,
           Said(truck_words(order, visit)), truck_carries(order, visit, from + "loads")}};
}

Table loads(const Ordering& order, const Asked& asked) {
  Table table;
  table.columns = {{order.say("Stage"), Align::left, 0.2},
                   {order.say("What comes"), Align::left, 0.28},
                   {order.say("Loads"), Align::right, 0.07},
                   {order.say("Weight"), Align::right, 0.11},
                   {order.say("Weight of a load"), Align::right, 0.11},
                   {order.say("Truck"), Align::left, 0.12},
                   {order.say("The truck carries"), Align::right, 0.11}};
  for (const std::size_t number : asked.visits) table.rows.push_back(visit_row(order, number));
  return table;
}

// Weights that the catalogue does not know are no weights of 0.
bool all_weighed(const Ordering& order, const Asked& asked) {
  return std::ranges::all_of(asked.visits, [&](std::size_t visit) {
    return std::ranges::all_of(order.visits[visit].lines, [&](std::size_t line) {
      return weight_of(order.printed.job(), order.lines()[line]).has_value();
    });
  });
}

std::string about_supplier(const Ordering& order, const catalogue::Supplier& supplier) {
  std::string text;
  if (supplier.lead_days > 0)
    text = filled(
        order.printed,
        supplier.lead_days == 1 ? "Needs %1 day from order to delivery." : "Needs %1 days from order to delivery.",
        {number_words(order.printed, supplier.lead_days)});
  if (!supplier.least_order.empty())
    text += (text.empty() ? "" : " ") + filled(order.printed, "Least order: %1.", {order.say(supplier.least_order)});
  return text;
}

void add_supplier(const Ordering& order, const Asked& asked, Sheet& sheet) {
  const auto known = order.all().suppliers.find(asked.supplier);
  const catalogue::Supplier* supplier = known == order.all().suppliers.end() ? nullptr : &known->second;
  Passage goods_of;
  if (!sheet.passages.empty()) goods_of.blocks.emplace_back(NewPage{});
  const std::string name =
      asked.supplier.empty() ? order.say("No supplier chosen") : name_of(order.printed, asked.supplier);
  const auto count = std::to_string(asked.lines.size());
  goods_of.blocks.emplace_back(
      Heading{name,
              {filled(order.printed, asked.lines.size() == 1 ? "%1 line" : "%1 lines", {count}),
               counted_here("lines of this supplier")}});
  if (supplier)
    if (std::string about = about_supplier(order, *supplier); !about.empty())
      goods_of.blocks.emplace_back(Paragraph{Said(std::move(about)), Paragraph::Kind::note});
  goods_of.blocks.emplace_back(goods(order, asked, supplier));
  const Blanks confirmation{{order.say("Order number"), order.say("Asked on"), order.say("Confirmed by"),
                             order.say("Confirmed on"), order.say("Delivery days")},
                            1};
  if (asked.visits.empty()) goods_of.blocks.emplace_back(confirmation);
  sheet.passages.push_back(std::move(goods_of));
  if (asked.visits.empty()) return;
  Passage rest;
  rest.blocks.emplace_back(Heading{order.say("Deliveries against the truck"), {}, "", 2});
  rest.blocks.emplace_back(loads(order, asked));
  if (!all_weighed(order, asked))
    rest.blocks.emplace_back(Paragraph{
        Said(order.say("Some of these goods have no weight in the catalogue: the weights are of the others. Ask for "
                       "them before the truck is loaded.")),
        Paragraph::Kind::note});
  rest.blocks.emplace_back(confirmation);
  sheet.passages.push_back(std::move(rest));
}

void add_by_others(const Ordering& order, Sheet& sheet) {
  Table table;
  table.columns = {{order.say("What"), Align::left, 0.5},
                   {order.say("How much"), Align::right, 0.12},
                   {order.say("Unit"), Align::left, 0.1},
                   {order.say("Stage"), Align::left, 0.28}};
  for (const OrderLine& line : order.lines()) {
    if (!supplied_by_others(order.printed, line)) continue;
    table.rows.push_back({{Said(name_of(order.printed, line.item)),
                           Said(number_words(order.printed, line.order_quantity), of_line(order.printed, line)),
                           Said(unit_words(order.printed, line.order_quantity, line.order_unit)),
                           Said(stage_title(order.printed, line.stage))}});
  }
  if (table.rows.empty()) return;
  Passage passage;
  if (!sheet.passages.empty()) passage.blocks.emplace_back(NewPage{});
  passage.blocks.emplace_back(Heading{order.say("Supplied by others, not ordered here"), {}});
  passage.blocks.emplace_back(std::move(table));
  sheet.passages.push_back(std::move(passage));
}

}  // namespace

Sheet order(const Printed& printed) {
  const Ordering ordering{printed, estimate::visits(printed.job(), printed.results->estimate.lines)};
  Sheet sheet;
  sheet.word = "order";
  sheet.title = printed.say("Order");
  sheet.landscape = true;
  const plan::Heading& heading = printed.job().heading;
  const std::string& prices = printed.job().catalogue->note;
  if (!heading.place.empty()) sheet.about.push_back(filled(printed, "Deliver to: %1", {heading.place}));
  sheet.about.push_back(printed.say("Prices expected are those of the office's price list; the confirmed ones hold."));
  for (const Asked& one : asked(printed, ordering.visits)) add_supplier(ordering, one, sheet);
  add_by_others(ordering, sheet);
  if (!sheet.passages.empty() && !prices.empty())
    sheet.passages.push_back({{Paragraph{Said(printed.say(prices)), Paragraph::Kind::note}}});
  if (sheet.passages.empty())
    sheet.passages.push_back({{Paragraph{Said(printed.say("Nothing is to be ordered yet."))}}});
  return sheet;
}

}  // namespace sheets
