#include "estimate/change_order.h"

#include <algorithm>
#include <set>

#include "estimate/added.h"
#include "estimate/change_lines.h"
#include "estimate/money_words.h"
#include "estimate/words.h"

namespace estimate {

using problem::Severity;
using units::Money;

namespace {

OrderLine bare(const OrderedChange& of) {
  const Money amount = of.amount < Money() ? -of.amount : of.amount;
  OrderLine line{takeoff::Stage::protect,
                 of.item,
                 of.description,
                 {},
                 1,
                 "job",
                 1,
                 "job",
                 {},
                 amount,
                 false,
                 false,
                 false,
                 takeoff::term(of.description, 1, units::piece, of.item),
                 {}};
  line.kind = of.kind;
  return line;
}

struct Making {
  const plan::Job& quote;
  ChangeOrder made;
  std::vector<std::size_t> used = {};  // by how many credits, for each of what was committed
  std::vector<Money> left = {};        // of its amount
  std::set<std::string> by_code = {};  // unit prices that lines were priced by

  std::string shown(Money money) const { return shown_money(money, quote.heading); }

  void say(Severity severity, const char* code, std::string text, std::string mend) {
    made.problems.push_back({severity, code, std::move(text), std::move(mend), {}});
  }

  bool done(const std::string& stage) const {
    return std::ranges::find(made.input.done, stage) != made.input.done.end();
  }

  const plan::UnitPrice* unit_price(std::string_view code) const {
    const auto& all = quote.offer.unit_prices;
    const auto found = std::ranges::find(all, code, &plan::UnitPrice::code);
    return found == all.end() ? nullptr : &*found;
  }

  const plan::UnitPrice* unit_price_of(const Change& change) const {
    if ((change.before && change.before->by_others) || (change.after && change.after->by_others)) return nullptr;
    std::string_view item = line_of(change).item;
    if (item.starts_with(added_prefix)) item.remove_prefix(added_prefix.size());
    return unit_price(item);
  }

  void check_committed();
  void take(const Change& change);
  void keep_back(OrderedChange& line);
  Money kept_of(const OrderedChange& line, std::size_t which, std::string& words);
  void meet();
  void meet(const Met& met, const plan::UnitPrice& price);
  void ticket(const Ticket& ticket);
  void put_on_top(bool additions);
  void sum_up();
  std::string running() const;
};

// What can't be kept back counts as nothing.
void Making::check_committed() {
  for (Committed& one : made.input.committed) {
    if (!(one.share >= 0 && one.share <= 1) || one.amount < Money()) {
      say(Severity::problem, "change-share",
          "what was ordered or cut of '" + one.item + "' is no part of it, so nothing is kept back",
          "enter a share from 0 to 1, or an amount of money from 0 up");
      one.share = 0;
      one.amount = Money();
    }
    used.push_back(0);
    left.push_back(one.amount);
  }
}

Money Making::kept_of(const OrderedChange& line, std::size_t which, std::string& words) {
  const Committed& stock = made.input.committed[which];
  ++used[which];
  const Money credit = -line.amount, share = units::times(credit, stock.share);
  const Money of_amount = std::min(left[which], credit - share);
  left[which] = left[which] - of_amount;
  if (stock.share > 0) words += exact_percent(stock.share) + " of " + shown(credit) + " (" + shown(share) + ")";
  if (of_amount > Money()) words += (words.empty() ? "" : " and ") + shown(of_amount);
  if (!stock.note.empty()) words += ", " + stock.note;
  return share + of_amount;
}

void Making::keep_back(OrderedChange& line) {
  if (line.amount >= Money()) return;
  const Money credit = -line.amount;
  if (done(line.stage)) {
    say(Severity::flag, "change-done",
        "the stage of '" + line.description + "' is done, so " + shown(credit) + " is not credited",
        "take the stage out of those that are done if the work was not done");
    line.kept = credit;
    line.amount = Money();
    line.working += "; not credited, the stage is done";
    return;
  }
  for (std::size_t i = 0; i < made.input.committed.size(); ++i) {
    const Committed& stock = made.input.committed[i];
    if (stock.stage != line.stage || stock.item != line.item || stock.kind != line.kind) continue;
    std::string words;
    const Money kept = kept_of(line, i, words);
    if (kept == Money()) continue;
    line.kept += kept;
    line.amount += kept;
    line.working += "; kept back as ordered or cut: " + words + "; credited " + shown(-line.amount);
  }
}

void Making::take(const Change& change) {
  if (change.what == Difference::words) return;
  const plan::UnitPrice* price = unit_price_of(change);
  LinePrice taken = price_change(quote.heading, change, price);
  const std::string& name = taken.line.description;
  if (taken.unit_differs)
    say(Severity::flag, "change-unit",
        "the unit price '" + price->code + "' is in " + price->unit + ", the line '" + name + "' is not",
        "it is priced by the line; give the unit price in its unit");
  if (taken.no_price)
    say(Severity::problem, "change-no-price", "'" + name + "' has no price, so it counts as 0", "give it one");
  if (taken.too_large)
    say(Severity::problem, "change-too-large", "'" + name + "' is past what can be counted, so it counts as 0",
        "check its quantity and price");
  if (taken.line.by == PricedBy::unit_price) by_code.insert(price->code);
  keep_back(taken.line);
  made.lines.push_back(std::move(taken.line));
}

void Making::meet(const Met& met, const plan::UnitPrice& price) {
  auto line = met_line(quote.heading, met, price);
  if (!line) {
    say(Severity::problem, "change-quantity", "what was met of '" + price.text + "' is no quantity, so it counts as 0",
        "enter what was measured on site, in " + price.unit);
    return;
  }
  if (by_code.contains(price.code))
    say(Severity::flag, "change-twice", "'" + price.text + "' was met on site and is in the lines that changed too",
        "see that it is not charged twice");
  made.lines.push_back(*std::move(line));
}

void Making::meet() {
  std::set<std::string> seen;
  for (const Met& met : made.input.met) {
    const plan::UnitPrice* price = unit_price(met.code);
    if (!price) {
      say(Severity::problem, "change-unit-price",
          "the quote has no unit price '" + met.code + "', so nothing is charged",
          "put the work on a ticket, or choose one of the quote's unit prices");
    } else if (!seen.insert(met.code).second) {
      say(Severity::problem, "change-unit-price", "'" + met.code + "' was met twice, so the second does not count",
          "add the two up");
    } else {
      meet(met, *price);
    }
  }
}

void Making::ticket(const Ticket& ticket) {
  if (ticket.signed_by.empty())
    say(Severity::flag, "change-ticket", "the ticket " + ticket.number + " is not signed",
        "have the customer sign hours, machines and material the same day");
  if (!takeoff::stage_of(ticket.stage))
    say(Severity::problem, "change-stage",
        "the ticket " + ticket.number + " names the stage '" + ticket.stage + "', which there is not",
        "choose its stage");
  for (const TicketLine& row : ticket.lines) {
    if (auto line = ticket_line(quote.heading, ticket, row)) {
      made.lines.push_back(*std::move(line));
    } else {
      say(Severity::problem, "change-quantity",
          "'" + row.text + "' on ticket " + ticket.number + " has no quantity that counts", "enter a number from 0 up");
    }
  }
}

// Of a credit everything is reckoned as of a sum that is paid, and taken off.
void Making::put_on_top(bool additions) {
  Estimate wanted;
  for (const OrderedChange& line : made.lines) {
    if (line.by == PricedBy::unit_price || line.amount == Money()) continue;
    if ((line.amount > Money()) == additions) wanted.lines.push_back(bare(line));
  }
  if (wanted.lines.empty()) return;
  plan::Job terms = quote;
  terms.offer.contingency = 0;
  terms.offer.round_to = Money();
  terms.offer.payments.clear();
  const Priced all = priced(terms, wanted);
  for (const PriceStep& step : all.steps)
    if (step.code != "direct")
      made.on_top.push_back({step.code, (additions ? "On what is added: " : "On what is credited: ") + step.name,
                             additions ? step.amount : -step.amount, step.working});
  for (const problem::Problem& said : all.problems)
    if (std::ranges::none_of(made.problems, [&](const problem::Problem& other) {
          return other.code == said.code && other.text == said.text;
        }))
      made.problems.push_back(said);
}

std::string Making::running() const {
  const ChangeInput& input = made.input;
  std::string text = shown(input.contract) + " as signed";
  if (!input.earlier.empty())
    text += ", " + shown(made.before - input.contract) + " by " + std::to_string(input.earlier.size()) +
            " earlier order" + (input.earlier.size() == 1 ? "" : "s");
  return text + ", " + shown(made.amount) + " by this one: " + shown(made.after);
}

void Making::sum_up() {
  for (const OrderedChange& line : made.lines) made.amount += line.amount;
  for (const KeptStep& step : made.on_top) made.amount += step.amount;
  if (made.input.reason == Reason::our_error && made.amount > Money()) {
    made.on_top.push_back({"our-error", "An error of ours: not charged", -made.amount,
                           "all of " + shown(made.amount) + ", as the customer has no part in it"});
    made.amount = Money();
  }
  made.before = made.input.contract;
  made.days = made.input.days;
  for (const Earlier& one : made.input.earlier) {
    made.before += one.amount;
    made.days += one.days;
  }
  made.after = made.before + made.amount;
  made.running = running();
  for (std::size_t i = 0; i < used.size(); ++i) {
    const Committed& stock = made.input.committed[i];
    if (left[i] == Money() && (used[i] > 0 || stock.share == 0)) continue;
    say(Severity::flag, "change-stock",
        used[i] == 0 ? "of '" + stock.item + "' nothing is credited that its ordered or cut stock could come off"
                     : "what was ordered or cut of '" + stock.item + "' is " + shown(left[i]) + " more than its credit",
        "charge it by a ticket if the customer is to pay for it");
  }
  made.final = std::ranges::none_of(made.problems,
                                    [](const problem::Problem& said) { return said.severity == Severity::problem; });
}

}  // namespace

std::string words(Reason reason) {
  switch (reason) {
    case Reason::owner: return "the owner's wish";
    case Reason::hidden_ground: return "hidden ground";
    case Reason::site: return "the site";
    case Reason::our_error: return "an error of ours";
  }
  return "";
}

ChangeOrder change_order(const plan::Job& quote, const Comparison& comparison, ChangeInput input) {
  Making making{quote, {}};
  making.made.input = std::move(input);
  making.made.problems = missing(making.made.input);
  making.check_committed();
  if (!comparison.comparable)
    making.say(Severity::problem, "change-currency",
               "the two estimates are in different currencies, so none of their lines is in the order",
               "compare estimates in the currency of the contract");
  for (const Change& change : comparison.changes) making.take(change);
  making.meet();
  for (const Ticket& ticket : making.made.input.tickets) making.ticket(ticket);
  making.put_on_top(true);
  making.put_on_top(false);
  making.sum_up();
  return std::move(making.made);
}

}  // namespace estimate
