#include "estimate/machines.h"

#include <algorithm>
#include <cmath>

#include "estimate/labour.h"
#include "estimate/price.h"
#include "estimate/words.h"

namespace estimate {

using catalogue::Item;
using catalogue::Rate;
using problem::Problem;
using problem::Severity;
using takeoff::term;
using takeoff::Working;

namespace {

// What one machine runs in one stage.
struct Runs {
  takeoff::Stage stage;
  plan::Id machine;
  std::vector<Working> hours;
  std::vector<plan::ElementId> of;

  void add(const OrderLine& line, const Rate& rate) {
    double heads = 0;
    if (const auto crew = read_crew(rate.crew))
      for (const Hands& hands : *crew) heads += hands.heads;
    Working own = term("hours of " + line.description, line.order_quantity, units::hour, rate.id);
    if (heads > 0 && heads != 1)
      own = Working::quotient(std::move(own), term("people at it", heads, units::piece, rate.id + "/crew"));
    hours.push_back(std::move(own));
    for (const plan::ElementId& id : line.of)
      if (std::ranges::find(of, id) == of.end()) of.push_back(id);
  }
};

std::vector<Runs> runs_of(const plan::Job& job, const std::vector<OrderLine>& work) {
  std::vector<Runs> all;
  for (const OrderLine& line : work) {
    const Rate* rate = line.work ? job.catalogue->rate(line.item) : nullptr;
    if (!rate || rate->machine.empty() || !(line.order_quantity > 0) || !std::isfinite(line.order_quantity)) continue;
    auto known = std::ranges::find_if(
        all, [&](const Runs& one) { return one.stage == line.stage && one.machine == rate->machine; });
    if (known == all.end()) known = all.insert(all.end(), Runs{line.stage, rate->machine, {}, {}});
    known->add(line, *rate);
  }
  return all;
}

double detail(const Item& item, const char* key, double otherwise) {
  const auto value = item.number(key);
  return value && *value > 0 ? *value : otherwise;
}

Working at_least(Working hired, const Item& item, const char* key, double otherwise) {
  const double least = detail(item, key, otherwise);
  if (!(least > hired.amount().value)) return hired;
  return Working::greatest(
      {std::move(hired), term("least hire", least, units::piece, item.id + "/" + std::string(key))});
}

Working days_of(const Working& hours, const Item& item, double day_hours) {
  const Working halves = Working::up(
      Working::quotient(hours, term("hours in half a day", day_hours / 2, units::hour, "choices/day_hours")));
  return at_least(Working::product({halves, term("half a day", 0.5, units::piece)}), item, "least_hire_days", 0.5);
}

Working hours_hired(const Working& hours, const Item& item) {
  return at_least(Working::up(Working::quotient(hours, term("one hour", 1, units::hour))), item, "least_hire_hours", 0);
}

void say(std::vector<Problem>& problems, const OrderLine& line, std::string code, std::string text, std::string mend) {
  problems.push_back({Severity::problem,
                      std::move(code),
                      std::move(text),
                      std::move(mend),
                      {line.of.empty() ? plan::ElementId() : line.of.front(), "", 0, 0, {}}});
}

void price(const Item& item, OrderLine& line, std::vector<Problem>& problems) {
  const Cost money = cost(item, line.order_quantity);
  line.unit_price = money.unit_price;
  line.amount = money.amount;
  line.by_others = money.by_others;
  line.exact_coins = money.coins;
  if (line.by_others) line.sentence += "; supplied by others, priced at 0";
  if (!line.amount)
    say(problems, line, "no-price", "the hire of '" + item.id + "' has no price, so the total is not final",
        "enter its price per " + item.unit + ", or that it costs nothing here");
}

OrderLine line_of(const plan::Job& job, Runs runs, std::vector<Problem>& problems) {
  const Working hours = runs.hours.size() == 1 ? runs.hours.front() : Working::sum(std::move(runs.hours));
  const double ran = hours.amount().value;
  const double day_hours = job.choices.day_hours > 0 ? job.choices.day_hours : 8;
  OrderLine line{runs.stage,
                 runs.machine,
                 name_of(*job.catalogue, runs.machine),
                 std::move(runs.of),
                 ran,
                 "h",
                 ran,
                 "h",
                 {},
                 {},
                 false,
                 false,
                 false,
                 hours,
                 {}};
  line.kind = plan::CostKind::machine;
  const std::string runs_for = "it runs " + counted(ran, "hour");
  const Item* item = job.catalogue->item(line.item);
  if (!item || (item->unit != "day" && item->unit != "hour")) {
    line.sentence = runs_for + ", not turned into what is hired";
    say(problems, line, item ? "no-price" : "item-unknown",
        item ? "'" + item->id + "' is hired by the " + item->unit + ", and the work counts its hours"
             : "the work runs '" + line.item + "', which the job's catalogue has not, so its hire is not priced",
        item ? "give its price per day or per hour" : "copy it in, or take it out of the labour rate");
    return line;
  }
  const bool by_day = item->unit == "day";
  line.working = by_day ? days_of(hours, *item, day_hours) : hours_hired(hours, *item);
  line.order_quantity = line.working.amount().value;
  line.order_unit = item->unit;
  line.sentence = counted(line.order_quantity, item->unit) + " of hire: " + runs_for;
  if (by_day) line.sentence += ", by the half day of " + in_words(day_hours / 2) + " hours";
  price(*item, line, problems);
  return line;
}

}  // namespace

std::vector<OrderLine> machines(const plan::Job& job, const std::vector<OrderLine>& work,
                                std::vector<Problem>& problems) {
  std::vector<OrderLine> lines;
  for (Runs& runs : runs_of(job, work)) lines.push_back(line_of(job, std::move(runs), problems));
  return lines;
}

}  // namespace estimate
