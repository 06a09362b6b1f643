// What was entered for change orders, in JSON (fields.h). Money is whole coins.
#pragma once

#include "estimate/kept_orders.h"
#include "files/job_fields.h"

namespace files {

// The format that this program writes. It reads this one and none newer.
inline constexpr int orders_format = 1;

using estimate::ChangeInput, estimate::Committed, estimate::Earlier, estimate::KeptOrder, estimate::Met,
    estimate::Ticket, estimate::TicketLine;

constexpr auto words(Type<estimate::Reason>) {
  using estimate::Reason;
  return std::array{Word{"owner", Reason::owner}, Word{"hidden-ground", Reason::hidden_ground},
                    Word{"site", Reason::site}, Word{"our-error", Reason::our_error}};
}

constexpr auto fields(Type<Committed>) {
  return std::tuple{Field{"stage", &Committed::stage},
                    Field{"item", &Committed::item},
                    Field{"kind", &Committed::kind, Need::required},
                    Field{"share", &Committed::share},
                    Field{"amount", &Committed::amount},
                    Field{"note", &Committed::note}};
}
constexpr auto fields(Type<Met>) {
  return std::tuple{Field{"code", &Met::code, Need::required}, Field{"quantity", &Met::quantity},
                    Field{"charged", &Met::charged}, Field{"note", &Met::note}};
}
constexpr auto fields(Type<TicketLine>) {
  return std::tuple{Field{"kind", &TicketLine::kind, Need::required}, Field{"text", &TicketLine::text},
                    Field{"quantity", &TicketLine::quantity}, Field{"unit", &TicketLine::unit},
                    Field{"unit_price", &TicketLine::unit_price}};
}
constexpr auto fields(Type<Ticket>) {
  return std::tuple{Field{"number", &Ticket::number}, Field{"date", &Ticket::date},
                    Field{"signed_by", &Ticket::signed_by}, Field{"stage", &Ticket::stage},
                    Field{"lines", &Ticket::lines}};
}
constexpr auto fields(Type<Earlier>) {
  return std::tuple{Field{"number", &Earlier::number}, Field{"amount", &Earlier::amount},
                    Field{"days", &Earlier::days}};
}
constexpr auto fields(Type<ChangeInput>) {
  return std::tuple{Field{"number", &ChangeInput::number},
                    Field{"reason", &ChangeInput::reason, Need::required},
                    Field{"cause", &ChangeInput::cause},
                    Field{"asked_by", &ChangeInput::asked_by},
                    Field{"date", &ChangeInput::date},
                    Field{"days", &ChangeInput::days},
                    Field{"days_cause", &ChangeInput::days_cause},
                    Field{"done", &ChangeInput::done},
                    Field{"committed", &ChangeInput::committed},
                    Field{"met", &ChangeInput::met},
                    Field{"tickets", &ChangeInput::tickets},
                    Field{"contract", &ChangeInput::contract, Need::required},
                    Field{"earlier", &ChangeInput::earlier}};
}
constexpr auto fields(Type<KeptOrder>) {
  return std::tuple{
      Field{"before", &KeptOrder::before, Need::required}, Field{"after", &KeptOrder::after, Need::required},
      Field{"input", &KeptOrder::input, Need::required}, Field{"amount", &KeptOrder::amount, Need::required}};
}

}  // namespace files
