// The lines of a change order, each on its own: what a change of a line of the estimate is charged at before anything
// is kept back of a credit, what was met in the ground, a row of a ticket.
#pragma once

#include <optional>

#include "estimate/change_order.h"

namespace estimate {

struct LinePrice {
  OrderedChange line;
  bool no_price = false;      // its amount is missing: it counts 0
  bool unit_differs = false;  // there is a unit price in another unit
  bool too_large = false;     // past 9e15 coins: it counts 0
};

// `unit_price` may be nothing. The difference is not one of words alone.
LinePrice price_change(const plan::Heading& heading, const Change& change, const plan::UnitPrice* unit_price);

// Nothing where the quantity is none (below 0, not a number, past 9e15 coins).
std::optional<OrderedChange> met_line(const plan::Heading& heading, const Met& met, const plan::UnitPrice& price);
std::optional<OrderedChange> ticket_line(const plan::Heading& heading, const Ticket& ticket, const TicketLine& row);

// What the input lacks: date, who asked, why, why the days; stages that there are not.
std::vector<problem::Problem> missing(const ChangeInput& input);

// A unit price or a row of a ticket; nothing past 9e15 coins.
std::optional<units::Money> safe_times(units::Money price, double quantity);

// b - a without the dust of the reckoning: nine decimals.
double more(double a, double b);

}  // namespace estimate
