// The lists of a change order: what was met on site, what was ordered or cut already, tickets, orders on paper.
#include <algorithm>

#include "takeoff/stage.h"
#include "ui/money/offer_making.h"
#include "ui/office/order_making.h"

namespace ui {

namespace {

using estimate::ChangeInput;

// A line of the comparison that is credited: stage, item and kind in one key.
std::string key_of(const std::string& stage, const plan::Id& item, plan::CostKind kind) {
  return stage + "|" + item + "|" + std::to_string(static_cast<int>(kind));
}

struct Credited {
  std::vector<Choice> choices;
  std::map<std::string, estimate::Committed> by_key;
};

Credited credited(const estimate::Comparison& comparison) {
  Credited all;
  for (const estimate::Change& change : comparison.changes) {
    if (!change.before || change.by >= units::Money()) continue;
    const estimate::KeptLine& line = *change.before;
    const std::string key = key_of(line.stage, line.item, line.kind);
    estimate::Committed one;
    one.stage = line.stage;
    one.item = line.item;
    one.kind = line.kind;
    if (all.by_key.emplace(key, one).second) all.choices.push_back({key, QString::fromStdString(line.description)});
  }
  return all;
}

void add_committed(std::vector<OrderField>& all, const ChangeInput& input, const OrderGround& ground) {
  using estimate::Committed;
  const Credited found = credited(ground.comparison);
  for (std::size_t i = 0; i < input.committed.size(); ++i) {
    OrderField what;
    what.shape.id = numbered("committed", i, "what");
    what.shape.label = OrderWords::tr("Of the line");
    what.shape = as_words(std::move(what.shape), found.choices);
    what.get = [i](const ChangeInput& of) -> Value {
      const Committed* one = entry_of(of.committed, i);
      return one ? Value(key_of(one->stage, one->item, one->kind)) : Value{};
    };
    what.set = [i, by_key = found.by_key](ChangeInput& of, const Value& value) {
      const auto* key = std::get_if<std::string>(&value);
      const auto line = key ? by_key.find(*key) : by_key.end();
      Committed* one = entry_of(of.committed, i);
      if (!one || line == by_key.end()) return;
      one->stage = line->second.stage;
      one->item = line->second.item;
      one->kind = line->second.kind;
    };
    add_headed(all, OrderWords::tr("Ordered or cut already %1").arg(i + 1),
               {std::move(what),
                shaped(of_order(numbered("committed", i, "share"), OrderWords::tr("Share of the credit kept back"),
                                of_entry(&ChangeInput::committed, i, &Committed::share)),
                       [](Field field) { return as_percent(std::move(field)); }),
                money_of_order(numbered("committed", i, "amount"), OrderWords::tr("Amount kept back beside it"),
                               ground.quote.heading.decimals, of_entry(&ChangeInput::committed, i, &Committed::amount)),
                of_order(numbered("committed", i, "note"), OrderWords::tr("Note"),
                         of_entry(&ChangeInput::committed, i, &Committed::note)),
                out_of(&ChangeInput::committed, i, numbered("committed", i, "out"))});
  }
  if (found.choices.empty()) return;
  all.push_back(order_action(
      "committed/add", OrderWords::tr("Add what was ordered or cut"),
      [first = found.by_key.at(found.choices.front().key)](ChangeInput& of) { of.committed.push_back(first); }));
}

void add_met(std::vector<OrderField>& all, const ChangeInput& input, const OrderGround& ground) {
  using estimate::Met;
  std::vector<Choice> prices;
  for (const plan::UnitPrice& price : ground.quote.offer.unit_prices)
    prices.push_back(
        {price.code,
         OrderWords::tr("%1, in %2").arg(QString::fromStdString(price.text), QString::fromStdString(price.unit))});
  const auto amount = [](Field field) { return within(std::move(field), 0, 1e9); };
  for (std::size_t i = 0; i < input.met.size(); ++i)
    add_headed(all, OrderWords::tr("Met on site %1").arg(i + 1),
               {shaped(of_order(numbered("met", i, "code"), OrderWords::tr("Of the quote's unit prices"),
                                of_entry(&ChangeInput::met, i, &Met::code)),
                       [&](Field field) { return as_words(std::move(field), prices); }),
                shaped(of_order(numbered("met", i, "quantity"), OrderWords::tr("Measured to date"),
                                of_entry(&ChangeInput::met, i, &Met::quantity)),
                       amount),
                shaped(of_order(numbered("met", i, "charged"), OrderWords::tr("Charged by earlier orders"),
                                of_entry(&ChangeInput::met, i, &Met::charged)),
                       [](Field field) { return within(std::move(field), -1e9, 1e9); }),
                of_order(numbered("met", i, "note"), OrderWords::tr("Who measured, when"),
                         of_entry(&ChangeInput::met, i, &Met::note)),
                out_of(&ChangeInput::met, i, numbered("met", i, "out"))});
  // The first of the unit prices that is not met yet.
  for (const plan::UnitPrice& price : ground.quote.offer.unit_prices) {
    if (std::ranges::find(input.met, price.code, &Met::code) != input.met.end()) continue;
    const double charged = estimate::charged(ground.orders, ground.before, ground.after, price);
    all.push_back(
        order_action("met/add", OrderWords::tr("Add what was met on site"),
                     [code = price.code, charged](ChangeInput& of) { of.met.push_back({code, 0, charged, {}}); }));
    return;
  }
}

// A way to a member of a row of a ticket.
template <class Member>
auto of_row(std::size_t ticket, std::size_t row, Member member) {
  return [=](auto& input) {
    auto* of = entry_of(input.tickets, ticket);
    auto* line = of ? entry_of(of->lines, row) : nullptr;
    return line ? &(line->*member) : nullptr;
  };
}

std::vector<OrderField> ticket_row(std::size_t ticket, std::size_t row, int decimals) {
  using estimate::TicketLine;
  const std::string name = "ticket/" + std::to_string(ticket) + "/row";
  const auto id = [&](const char* field) { return numbered(name.c_str(), row, field); };
  return {shaped(of_order(id("kind"), OrderWords::tr("Row %1").arg(row + 1), of_row(ticket, row, &TicketLine::kind)),
                 [](Field field) { return as_words(std::move(field), kind_choices()); }),
          of_order(id("text"), OrderWords::tr("What"), of_row(ticket, row, &TicketLine::text)),
          shaped(of_order(id("quantity"), OrderWords::tr("Quantity"), of_row(ticket, row, &TicketLine::quantity)),
                 [](Field field) { return within(std::move(field), 0, 1e6); }),
          of_order(id("unit"), OrderWords::tr("Unit"), of_row(ticket, row, &TicketLine::unit)),
          money_of_order(id("price"), OrderWords::tr("Price of one, at cost"), decimals,
                         of_row(ticket, row, &TicketLine::unit_price)),
          order_action(id("out"), OrderWords::tr("Take the row out"), [ticket, row](ChangeInput& of) {
            auto* found = entry_of(of.tickets, ticket);
            if (found && row < found->lines.size())
              found->lines.erase(found->lines.begin() + static_cast<std::ptrdiff_t>(row));
          })};
}

void add_tickets(std::vector<OrderField>& all, const ChangeInput& input, int decimals) {
  using estimate::Ticket;
  for (std::size_t i = 0; i < input.tickets.size(); ++i) {
    const auto way = [i](auto member) { return of_entry(&ChangeInput::tickets, i, member); };
    std::vector<OrderField> one{
        of_order(numbered("ticket", i, "number"), OrderWords::tr("Number"), way(&Ticket::number)),
        of_order(numbered("ticket", i, "date"), OrderWords::tr("Date, as 2026-11-28"), way(&Ticket::date)),
        of_order(numbered("ticket", i, "signed_by"), OrderWords::tr("Signed by"), way(&Ticket::signed_by)),
        shaped(of_order(numbered("ticket", i, "stage"), OrderWords::tr("Stage"), way(&Ticket::stage)),
               [](Field field) { return as_words(std::move(field), stage_choices({})); })};
    for (std::size_t row = 0; row < input.tickets[i].lines.size(); ++row)
      for (OrderField& field : ticket_row(i, row, decimals)) one.push_back(std::move(field));
    one.push_back(order_action(numbered("ticket", i, "add"), OrderWords::tr("Add a row"), [i](ChangeInput& of) {
      if (auto* ticket = entry_of(of.tickets, i)) ticket->lines.emplace_back();
    }));
    one.push_back(out_of(&ChangeInput::tickets, i, numbered("ticket", i, "out")));
    add_headed(all, OrderWords::tr("Ticket %1, time and material").arg(i + 1), std::move(one));
  }
  all.push_back(order_action("ticket/add", OrderWords::tr("Add a ticket"), [](ChangeInput& of) {
    Ticket fresh;
    fresh.number = std::to_string(of.tickets.size() + 1);
    fresh.stage = takeoff::word(takeoff::Stage::dig);
    fresh.lines.emplace_back();
    of.tickets.push_back(std::move(fresh));
  }));
}

// A credit is entered as what it is, with a tick beside it: sums are typed without a sign.
std::vector<OrderField> earlier_fields(std::size_t i, int decimals) {
  using estimate::Earlier;
  OrderField amount;
  amount.shape.id = numbered("earlier", i, "amount");
  amount.shape.label = OrderWords::tr("Amount");
  amount.shape.editor = Editor::money;
  amount.shape.decimals = decimals;
  amount.get = [i](const ChangeInput& input) -> Value {
    const Earlier* one = entry_of(input.earlier, i);
    return one ? Value(std::abs(one->amount.coins())) : Value{};
  };
  amount.set = [i](ChangeInput& input, const Value& value) {
    Earlier* one = entry_of(input.earlier, i);
    const auto* coins = std::get_if<std::int64_t>(&value);
    if (one && coins) one->amount = units::Money::of_coins(one->amount < units::Money() ? -*coins : *coins);
  };
  OrderField credit;
  credit.shape.id = numbered("earlier", i, "credit");
  credit.shape.label = OrderWords::tr("It was a credit");
  credit.shape.editor = Editor::yes_no;
  credit.get = [i](const ChangeInput& input) -> Value {
    const Earlier* one = entry_of(input.earlier, i);
    return one && one->amount < units::Money();
  };
  credit.set = [i](ChangeInput& input, const Value& value) {
    Earlier* one = entry_of(input.earlier, i);
    const bool* on = std::get_if<bool>(&value);
    if (one && on && *on != (one->amount < units::Money())) one->amount = -one->amount;
  };
  return {of_order(numbered("earlier", i, "number"), OrderWords::tr("Number"),
                   of_entry(&ChangeInput::earlier, i, &Earlier::number)),
          std::move(amount), std::move(credit),
          shaped(of_order(numbered("earlier", i, "days"), OrderWords::tr("Days more"),
                          of_entry(&ChangeInput::earlier, i, &Earlier::days)),
                 [](Field field) { return within(std::move(field), -3650, 3650); }),
          out_of(&ChangeInput::earlier, i, numbered("earlier", i, "out"))};
}

}  // namespace

void add_lists(std::vector<OrderField>& all, const ChangeInput& input, const OrderGround& ground) {
  const int decimals = ground.quote.heading.decimals;
  add_met(all, input, ground);
  add_committed(all, input, ground);
  add_tickets(all, input, decimals);
  for (std::size_t i = 0; i < input.earlier.size(); ++i)
    add_headed(all, OrderWords::tr("Earlier order on paper %1").arg(i + 1), earlier_fields(i, decimals));
  all.push_back(order_action("earlier/add", OrderWords::tr("Add an earlier order on paper"),
                             [](ChangeInput& of) { of.earlier.emplace_back(); }));
}

}  // namespace ui
