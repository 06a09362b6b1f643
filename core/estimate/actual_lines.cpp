#include "estimate/actual_lines.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "estimate/change_lines.h"
#include "estimate/own_unit.h"
#include "estimate/proportion.h"

namespace estimate {

using problem::Problem;
using problem::Severity;
using units::Money;

namespace {

constexpr double most_coins = 9e15;

std::optional<units::Unit> unit_of(const std::string& name) {
  for (const units::Unit unit :
       {units::piece, units::metre, units::square_metre, units::cubic_metre, units::kilogram, units::hour})
    if (units::name(unit) == name) return unit;
  return std::nullopt;
}

// What is needed of the line in the unit that it is bought in.
std::optional<double> needed(const plan::Job& job, const KeptLine& line) {
  const catalogue::Item* item = job.catalogue->item(line.item);
  const auto unit = unit_of(line.unit);
  if (!item || !unit || !(line.quantity > 0)) return std::nullopt;
  if ((item->unit.empty() ? "piece" : item->unit) != line.order_unit) return std::nullopt;
  const auto own = in_own_unit(takeoff::term("net", line.quantity, *unit), *item, job.choices.day_hours);
  return own ? std::optional(own->amount().value) : std::nullopt;
}

void add(const plan::Job& job, const KeptLine& line, std::vector<LineActual>& lines) {
  const auto known = std::ranges::find_if(
      lines, [&](const LineActual& one) { return one.key == key_of(line) && one.unit == line.order_unit; });
  const auto own = needed(job, line);
  const bool priced = line.amount || line.by_others;
  if (known == lines.end()) {
    LineActual made;
    made.key = key_of(line);
    made.description = line.description;
    made.unit = line.order_unit;
    made.net = line.quantity;
    made.net_unit = line.unit;
    made.needed = own;
    made.estimated = line.order_quantity;
    made.estimate = line.amount.value_or(Money());
    made.priced = priced;
    lines.push_back(std::move(made));
    return;
  }
  known->net = known->net_unit == line.unit ? known->net + line.quantity : 0;
  known->needed = known->needed && own ? std::optional(*known->needed + *own) : std::nullopt;
  known->estimated += line.order_quantity;
  known->estimate += line.amount.value_or(Money());
  known->priced = known->priced && priced;
}

// What was entered of one line, entry by entry.
struct Gathering {
  LineActual& line;
  std::vector<Problem>& problems;
  Counted& counted;
  std::optional<Money> confirmed_price;
  double returned_unpriced = 0;
  bool no_price = false;

  // A quantity without a price of its own.
  std::optional<Money> worth(double quantity) {
    if (confirmed_price) return safe_times(*confirmed_price, quantity);
    if (line.priced && line.estimated > 0) return in_proportion(line.estimate, quantity, line.estimated);
    no_price = no_price || quantity > 0;
    return Money();
  }

  Money coins(std::optional<Money> money) { return counted(money, line.description, problems); }

  void confirmed(const Entry& entry) {
    line.confirmed += entry.quantity;
    if (entry.price && entry.quantity > 0) confirmed_price = entry.price;
  }

  void take(const Entry& entry) {
    if (entry.quantity > 0) line.state = std::max(line.state, entry.act);
    switch (entry.act) {
      case Act::ordered: line.ordered += entry.quantity; break;
      case Act::confirmed: confirmed(entry); break;
      case Act::delivered:
        line.delivered += entry.quantity;
        line.delivered_money += coins(entry.price ? units::times(*entry.price, entry.quantity) : worth(entry.quantity));
        break;
      case Act::used:
        line.used += entry.quantity;
        line.use_entered = true;
        break;
      case Act::returned:
        line.returned += entry.quantity;
        if (entry.price) {
          line.returned_money += coins(units::times(*entry.price, entry.quantity));
        } else {
          returned_unpriced += entry.quantity;
        }
        break;
      default: break;
    }
  }

  void flag(const char* code, const std::string& text, const char* mend) {
    problems.push_back({Severity::flag, code, line.description + ": " + text, mend, {}});
  }

  void finish() {
    line.cancelled = std::max(0.0, line.returned - line.delivered);
    const double back = std::max(0.0, returned_unpriced - line.cancelled);
    if (line.delivered > 0) {
      line.used_money = coins(in_proportion(line.delivered_money, line.used, line.delivered));
      line.returned_money += coins(in_proportion(line.delivered_money, back, line.delivered));
      line.spent = line.delivered_money - line.returned_money;
    } else {
      line.used_money = coins(worth(line.used));
      line.spent = line.used_money - line.returned_money;
    }
    if (no_price) flag("actual-no-price", "it has no price, so what was entered of it counts 0", "enter its price");
    if (line.delivered > 0 && line.left() < -1e-9)
      flag("actual-more-used", "more was used and returned than was delivered", "enter the delivery that is missing");
  }
};

}  // namespace

double LineActual::left() const { return delivered > 0 ? delivered - used - (returned - cancelled) : 0; }

double LineActual::coming() const { return std::max(0.0, ordered - delivered - cancelled); }

Money Counted::operator()(std::optional<Money> money, const std::string& of, std::vector<Problem>& problems) {
  const double size = money ? std::abs(static_cast<double>(money->coins())) : most_coins;
  if (sum_ + size < most_coins) {
    sum_ += size;
    return *money;
  }
  problems.push_back({Severity::problem,
                      "actual-large",
                      of + ": with it the sum is more money than can be counted, so it counts 0",
                      "look at the entries' quantities and prices",
                      {}});
  return {};
}

std::vector<LineActual> actual_lines(const plan::Job& job, const Kept& kept, const std::vector<Entry>& standing,
                                     std::vector<Problem>& problems) {
  std::vector<LineActual> lines;
  for (const KeptLine& line : kept.lines)
    if (!is_work(line)) add(job, line, lines);
  Counted counted;
  for (LineActual& line : lines) {
    Gathering gathering{line, problems, counted, {}, 0, false};
    for (const Entry& entry : standing)
      if (entry.line == line.key && entry.unit == line.unit) gathering.take(entry);
    gathering.finish();
  }
  return lines;
}

}  // namespace estimate
