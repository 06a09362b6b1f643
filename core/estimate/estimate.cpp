#include "estimate/estimate.h"

#include <algorithm>
#include <array>

#include "estimate/added.h"
#include "estimate/charges.h"
#include "estimate/kinds.h"
#include "estimate/labour.h"
#include "estimate/machines.h"
#include "estimate/mixed_packs.h"
#include "estimate/packs.h"
#include "estimate/price.h"
#include "estimate/set_ups.h"
#include "estimate/short_load.h"
#include "estimate/totals.h"
#include "estimate/words.h"

namespace estimate {

using catalogue::Item;
using problem::Problem;
using problem::Severity;
using takeoff::Working;

namespace {

// Lines of one stage, item and unit, in the order of the takeoff.
struct Group {
  std::size_t first;  // number of its first line
  takeoff::Stage stage;
  plan::Id item;
  units::Unit unit;
  std::vector<Part> parts;
  std::vector<plan::ElementId> of;
  bool approximate = false;
  std::string note;  // after the sentence of its order line
};

std::vector<Group> grouped(const takeoff::Takeoff& takeoff, const std::vector<bool>& taken) {
  std::vector<Group> groups;
  for (std::size_t i = 0; i < takeoff.lines.size(); ++i) {
    if (taken[i]) continue;
    const takeoff::Line& line = takeoff.lines[i];
    const units::Unit unit = line.working.amount().unit;
    auto known = std::ranges::find_if(groups, [&](const Group& group) {
      return group.stage == line.stage && group.item == line.item && group.unit == unit;
    });
    if (known == groups.end())
      known = groups.insert(groups.end(), Group{i, line.stage, line.item, unit, {}, {}, false, {}});
    known->parts.push_back({line.working, line.allowance});
    known->approximate = known->approximate || line.approximate;
    for (const plan::ElementId& id : line.of)
      if (std::ranges::find(known->of, id) == known->of.end()) known->of.push_back(id);
  }
  return groups;
}

// Single pieces beside mixed packs are bought with the others of their item and stage.
void add_singles(const MixedOrder& order, std::vector<Group>& groups) {
  for (const Single& single : order.singles) {
    auto known = std::ranges::find_if(groups, [&](const Group& group) {
      return group.stage == order.stage && group.item == single.item && group.unit == units::piece;
    });
    if (known == groups.end())
      known = groups.insert(groups.end(),
                            Group{order.from.front(), order.stage, single.item, units::piece, {}, {}, false, {}});
    known->parts.push_back(single.part);
    known->approximate = known->approximate || order.approximate;
    known->note += single.note;
    for (const plan::ElementId& id : order.of)
      if (std::ranges::find(known->of, id) == known->of.end()) known->of.push_back(id);
  }
}

double attic_share(const plan::Job& job, const Item& item) {
  constexpr std::array laid{"paving-unit", "slab", "permeable-unit", "clay-unit", "coping"};
  if (!job.choices.count_attic || std::ranges::find(laid, item.kind) == laid.end()) return 0;
  return std::max(0.0, job.choices.attic_share);
}

void say(std::vector<Problem>& problems, const OrderLine& line, Problem said) {
  problems.push_back(problem::in_element(std::move(said), line.of.empty() ? plan::ElementId() : line.of.front()));
}

void say_no_price(const OrderLine& line, const Item& item, std::vector<Problem>& problems) {
  const bool given = item.price.has_value();
  say(problems, line,
      {Severity::problem,
       "no-price",
       given ? "the price of '" + item.id + "' per " + item.price->unit + " can't be turned into one per " + item.unit
             : "'" + item.id + "' has no price, so the total is not final",
       given ? "give its price per " + item.unit + ", or the sizes that lead from one to the other"
             : "enter its price, or that others supply it",
       {}});
}

void mark(const plan::Job& job, OrderLine& line) {
  if (const Item* item = job.catalogue->item(line.item))
    line.sentence += price_basis(*item, job.heading.decimals, job.heading.currency);
  if (line.by_others) line.sentence += "; supplied by others, priced at 0";
  if (line.allowance) line.sentence += "; an allowance, not a measured number";
}

OrderLine order_line(const plan::Job& job, const Group& group, std::vector<Problem>& problems) {
  std::vector<Working> nets;
  for (const Part& part : group.parts) nets.push_back(part.net);
  const Working net = nets.size() == 1 ? nets.front() : Working::sum(std::move(nets));
  const std::string unit = units::name(group.unit);
  OrderLine line{group.stage,
                 group.item,
                 name_of(*job.catalogue, group.item),
                 group.of,
                 net.amount().value,
                 unit,
                 net.amount().value,
                 unit,
                 {},
                 {},
                 false,
                 false,
                 group.approximate,
                 net,
                 {}};
  const Item* item = job.catalogue->item(group.item);
  if (!item) {
    say(problems, line,
        {Severity::problem,
         "item-unknown",
         "the job's catalogue has no '" + group.item + "', so it is not priced",
         "choose an item that it has, or copy it in",
         {}});
    line.sentence = counted(line.quantity, unit) + ", not in the job's catalogue";
    return line;
  }
  line.allowance = line.allowance || item->kind == "allowance";
  auto bought = buy(group.parts, *item, job.choices.day_hours, attic_share(job, *item));
  if (!bought) {
    say(problems, line, bought.error());
    line.sentence = counted(line.quantity, unit) + " needed, not turned into what is bought";
    return line;
  }
  line.working = bought->working;
  line.order_quantity = bought->quantity();
  line.order_unit = item->unit;
  line.shares = {bought->needed, bought->with_shares - bought->needed, bought->spare,
                 line.order_quantity - bought->with_shares - bought->spare};
  line.sentence = item->unit == "ton" && job.heading.units == units::System::metric ? with_short_tons(bought->sentence)
                                                                                    : bought->sentence;
  line.sentence += group.note;
  const Cost money = cost(*item, line.order_quantity);
  line.unit_price = money.unit_price;
  line.amount = money.amount;
  line.by_others = money.by_others;
  line.exact_coins = money.coins;
  line.sentence += cheaper_in_bags(job, line, group.parts);
  if (!line.amount) say_no_price(line, *item, problems);
  mark(job, line);
  return line;
}

// Material lines with the number of the takeoff line that they began with, so that mixed packs stand where their first
// size stood.
std::vector<OrderLine> material(const plan::Job& job, const takeoff::Takeoff& takeoff, std::vector<Problem>& problems) {
  std::vector<std::pair<std::size_t, OrderLine>> placed;
  std::vector<bool> taken(takeoff.lines.size(), false);
  std::vector<MixedOrder> orders = mixed_packs(job, takeoff, problems);
  for (MixedOrder& order : orders) {
    for (const std::size_t number : order.from) taken[number] = true;
    if (!order.line) continue;
    if (const Item* pack = job.catalogue->item(order.line->item); pack && !order.line->amount)
      say_no_price(*order.line, *pack, problems);
    mark(job, *order.line);
    placed.emplace_back(order.from.front(), *std::move(order.line));
  }
  std::vector<Group> groups = grouped(takeoff, taken);
  for (const MixedOrder& order : orders) add_singles(order, groups);
  for (const Group& group : groups) placed.emplace_back(group.first, order_line(job, group, problems));
  std::ranges::stable_sort(placed, {}, &std::pair<std::size_t, OrderLine>::first);
  std::vector<OrderLine> lines;
  for (auto& [number, line] : placed) lines.push_back(std::move(line));
  return lines;
}

}  // namespace

Estimate estimate(const plan::Job& job, const takeoff::Takeoff& takeoff) {
  Estimate made;
  made.lines = material(job, takeoff, made.problems);
  std::vector<takeoff::Task> tasks = takeoff.tasks;
  for (takeoff::Task& task : set_ups(job, takeoff, made.lines)) tasks.push_back(std::move(task));
  for (OrderLine& line : charges(job, made.lines)) {
    if (const Item* item = job.catalogue->item(line.item); item && !line.amount)
      say_no_price(line, *item, made.problems);
    made.lines.push_back(std::move(line));
  }
  std::vector<OrderLine> work = labour(job, tasks, made.problems);
  std::vector<OrderLine> hired = machines(job, work, made.problems);
  for (OrderLine& line : work) made.lines.push_back(std::move(line));
  for (OrderLine& line : made.lines) line.kind = kind_of(job, line);
  for (OrderLine& line : hired) made.lines.push_back(std::move(line));
  for (OrderLine& line : added_lines(job, job.offer.lines, made.problems)) made.lines.push_back(std::move(line));
  std::ranges::stable_sort(made.lines, {}, [](const OrderLine& line) { return std::pair(line.stage, line.work); });
  add_up(made);
  const auto grave = [](const Problem& said) { return said.severity == Severity::problem; };
  made.final = std::ranges::all_of(made.lines, [](const OrderLine& line) { return line.amount.has_value(); }) &&
               std::ranges::none_of(made.problems, grave) && std::ranges::none_of(takeoff.problems, grave);
  return made;
}

}  // namespace estimate
