#include "estimate/change_lines.h"

#include <cmath>

#include "estimate/money_words.h"
#include "estimate/proportion.h"
#include "estimate/words.h"
#include "units/number.h"

namespace estimate {

using units::Money;

namespace {

// All its digits: who reckons it again gets the same.
std::string measured(double number, const std::string& unit) {
  if (std::abs(number) < 1e12 && std::round(number * 100) / 100 == number) return counted(number, unit);
  std::string text = units::show_grouped(number, 9);
  while (text.ends_with('0')) text.pop_back();
  if (text.ends_with('.')) text.pop_back();
  return text + " " + unit;
}

struct Pricing {
  const plan::Heading& heading;
  const Change& change;
  LinePrice made;

  std::string shown(Money money) const { return shown_money(money, heading); }

  void is(PricedBy by, Money amount, std::string working) {
    made.line.by = by;
    made.line.amount = amount;
    made.line.working = std::move(working);
  }

  void no_price(std::string working) {
    made.no_price = true;
    is(PricedBy::new_line, {}, std::move(working));
  }

  void too_large() {
    made.too_large = true;
    is(PricedBy::new_line, {}, "past what can be counted, so it counts as 0");
  }

  // Whether the unit price is in a unit of the line; then its quantity is the line's.
  bool has_unit(const std::string& unit) {
    const auto use = [&](std::string KeptLine::* of, double KeptLine::* quantity) {
      for (const auto* side : {&change.before, &change.after})
        if (*side && (**side).*of != unit) return false;
      const double then = change.before ? (*change.before).*quantity : 0;
      const double now = change.after ? (*change.after).*quantity : 0;
      made.line.quantity = more(then, now);
      made.line.unit = unit;
      return true;
    };
    return use(&KeptLine::order_unit, &KeptLine::order_quantity) || use(&KeptLine::unit, &KeptLine::quantity);
  }

  void by_unit_price(const plan::UnitPrice& price) {
    const double quantity = made.line.quantity;
    const auto amount = safe_times(price.price, quantity);
    if (!amount) return too_large();
    is(PricedBy::unit_price, *amount,
       measured(std::abs(quantity), price.unit) + (quantity < 0 ? " less" : " more") +
           " at the quote's unit price of " + shown(price.price) + " (" + price.code + "): " + shown(*amount));
  }

  // The new quantity at the quoted price, less what was quoted.
  void at_the_quoted_price(const KeptLine& before, const KeptLine& after) {
    const auto again = before.unit_price ? safe_times(*before.unit_price, before.order_quantity) : std::nullopt;
    const bool by_price = again == before.amount;
    const auto now = by_price ? safe_times(*before.unit_price, after.order_quantity)
                              : in_proportion(*before.amount, after.order_quantity, before.order_quantity);
    if (!now) return too_large();
    const std::string how =
        by_price ? " at the quoted " + shown(*before.unit_price) + " "
                 : " in proportion to the quoted " + measured(before.order_quantity, before.order_unit) + " ";
    is(PricedBy::quoted, *now - *before.amount,
       measured(after.order_quantity, after.order_unit) + how + "is " + shown(*now) + ", less the quoted " +
           shown(*before.amount) +
           (by_price ? " for " + measured(before.order_quantity, before.order_unit) : std::string()));
  }

  void gone(const KeptLine& before) {
    if (!before.amount) return no_price("the quote has no price for it, so there is no credit");
    is(PricedBy::quoted, -*before.amount,
       "taken out: " + measured(before.order_quantity, before.order_unit) + ", quoted at " + shown(*before.amount));
  }

  void added(const KeptLine& after) {
    if (!after.amount) return no_price("it has no price, so it counts as 0");
    is(PricedBy::new_line, *after.amount,
       (change.before ? "not priced in the quote: " : "new: ") + measured(after.order_quantity, after.order_unit) +
           " for " + shown(*after.amount));
  }

  // Bought in another unit, or by others before or after: what it costs now less what was quoted.
  void anew(const KeptLine& before, const KeptLine& after) {
    if (!after.amount) return no_price("it has no price any more, so nothing is charged or credited");
    is(PricedBy::new_line, *after.amount - *before.amount,
       "now " + measured(after.order_quantity, after.order_unit) + " for " + shown(*after.amount) +
           (after.by_others ? " (by others)" : "") + ", less the quoted " + shown(*before.amount) +
           (before.by_others ? " (by others)" : ""));
  }

  void other(const KeptLine& before, const KeptLine& after) {
    if (!before.amount) return added(after);
    if (before.by_others != after.by_others) return anew(before, after);
    if (change.what == Difference::price)
      return is(PricedBy::not_charged, {}, "its price alone is another: the quote stands");
    if (before.order_unit != after.order_unit || !(before.order_quantity > 0)) return anew(before, after);
    at_the_quoted_price(before, after);
  }
};

}  // namespace

double more(double a, double b) {
  const double by = b - a;
  return std::abs(by) < 1e6 ? std::round(by * 1e9) / 1e9 : by;
}

std::optional<Money> safe_times(Money price, double quantity) {
  if (!std::isfinite(quantity) || !(std::abs(static_cast<double>(price.coins()) * quantity) < 9e15))
    return std::nullopt;
  return units::times(price, quantity);
}

LinePrice price_change(const plan::Heading& heading, const Change& change, const plan::UnitPrice* unit_price) {
  Pricing pricing{heading, change, {}};
  const KeptLine& line = line_of(change);
  OrderedChange& of = pricing.made.line;
  of.stage = line.stage;
  of.item = line.item;
  of.kind = line.kind;
  of.description = line.description;
  const bool in_unit = unit_price && pricing.has_unit(unit_price->unit);
  pricing.made.unit_differs = unit_price && !in_unit;
  const bool other_unit = change.before && change.after && change.before->order_unit != change.after->order_unit;
  if (!in_unit) {
    of.unit = line.order_unit;
    const double then = change.before && !other_unit ? change.before->order_quantity : 0;
    of.quantity = more(then, change.after ? change.after->order_quantity : 0);
  }
  if (in_unit && of.quantity != 0) {
    pricing.by_unit_price(*unit_price);
  } else if (!change.after) {
    pricing.gone(*change.before);
  } else if (!change.before) {
    pricing.added(*change.after);
  } else {
    pricing.other(*change.before, *change.after);
  }
  return std::move(pricing.made);
}

std::optional<OrderedChange> met_line(const plan::Heading& heading, const Met& met, const plan::UnitPrice& price) {
  const double over = more(met.charged, more(price.assumed, met.quantity));
  const auto amount = safe_times(price.price, over);
  if (!(met.quantity >= 0) || !amount) return std::nullopt;
  OrderedChange line;
  line.item = price.code;
  line.description = price.text.empty() ? price.code : price.text;
  line.quantity = over;
  line.unit = price.unit;
  line.by = PricedBy::unit_price;
  line.amount = *amount;
  line.working = measured(met.quantity, price.unit) + " met, " + measured(price.assumed, price.unit) + " in the quote";
  if (met.charged != 0) line.working += ", " + measured(met.charged, price.unit) + " in earlier orders";
  line.working += ": " + measured(std::abs(over), price.unit) + (over < 0 ? " less" : " more") +
                  " at the unit price of " + shown_money(price.price, heading) + " is " + shown_money(*amount, heading);
  if (!met.note.empty()) line.working += "; " + met.note;
  return line;
}

std::optional<OrderedChange> ticket_line(const plan::Heading& heading, const Ticket& ticket, const TicketLine& row) {
  const auto amount = row.quantity >= 0 ? safe_times(row.unit_price, row.quantity) : std::nullopt;
  if (!amount) return std::nullopt;
  OrderedChange line;
  line.stage = ticket.stage;
  line.item = "ticket:" + ticket.number;
  line.kind = row.kind;
  line.description = row.text;
  line.quantity = row.quantity;
  line.unit = row.unit;
  line.by = PricedBy::ticket;
  line.amount = *amount;
  line.working = "ticket " + ticket.number + (ticket.date.empty() ? "" : " of " + ticket.date) + ": " +
                 measured(row.quantity, row.unit) + " at " + shown_money(row.unit_price, heading) + " is " +
                 shown_money(*amount, heading) +
                 (ticket.signed_by.empty() ? ", not signed" : ", signed by " + ticket.signed_by);
  return line;
}

}  // namespace estimate
