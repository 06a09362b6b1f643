// A change of the contract after it was agreed: what comes, what goes, why, who asked, how many days, and what the
// contract comes to with it. Made out of the comparison of two kept estimates, of what was met in the ground and of
// tickets for time and material.
//
// A line of the comparison is priced by the first of these that there is:
//   1. the quote's unit price whose code is the line's item (or the added line's id), times the change of the quantity
//      in the unit price's unit. It is what the customer agreed to pay: nothing comes on top.
//   2. the quoted line itself, its new quantity at the quoted price less its quoted amount. A line that is gone is
//      credited at its whole amount.
//   3. the new line's amount, where the quote has no such line or none of its price.
// A price that changed while the quantity did not is not charged: the quote stands. A credit is less what of it was
// ordered or cut already, and there is none in a stage that is done.
//
// Overhead, profit and tax of the quote come on top of 2, 3 and the tickets (estimate/priced.h), of what is added and
// of what is credited each on its own: a small difference of two large sums would blow up the odd coins of its tax. No
// contingency (it is for what was in the scope), no rounding of the price. After an error of one's own nothing is
// charged; where the order comes to a credit, the customer has it.
//
// Each product is rounded once to the coin, half away from zero; sums are exact. Customer and contractor sign before
// the work begins: nothing here is agreed because it was reckoned.
#pragma once

#include <string>
#include <vector>

#include "estimate/compare.h"
#include "plan/job.h"

namespace estimate {

enum class Reason { owner, hidden_ground, site, our_error };
std::string words(Reason reason);  // "the owner's wish", "hidden ground", "the site", "an error of ours"

// What of a quoted line was ordered or cut before it was taken out: a share of its credit (0..1) and an amount beside
// it. Of several lines alike the share is of each, the amount of all together.
struct Committed {
  std::string stage;
  plan::Id item;
  plan::CostKind kind = plan::CostKind::material;
  double share = 0;
  units::Money amount;
  std::string note;  // "30 units cut, not taken back"
  bool operator==(const Committed&) const = default;
};

// What was met of something that the quote has a unit price for: measured on site to date, from 0 up, in the unit
// price's unit. Charged is what goes past the quantity that the quote assumed and what earlier orders charged; what
// stays under it is credited.
struct Met {
  std::string code;
  double quantity = 0;
  double charged = 0;  // by earlier orders, over the assumed quantity; a credit is negative
  std::string note;    // who measured, when
  bool operator==(const Met&) const = default;
};

// Time and material: one row of a ticket, at a price agreed for it. A quantity is from 0 up: days of a machine, hours
// of a person, tons of stone.
struct TicketLine {
  plan::CostKind kind = plan::CostKind::labour;
  std::string text;
  double quantity = 0;
  std::string unit = "h";
  units::Money unit_price;  // at cost: overhead, profit and tax come on top
  bool operator==(const TicketLine&) const = default;
};

struct Ticket {
  std::string number;
  std::string date;  // 2026-11-28
  std::string signed_by;
  std::string stage;  // a stage's word
  std::vector<TicketLine> lines;
  bool operator==(const Ticket&) const = default;
};

struct Earlier {
  std::string number;
  units::Money amount;
  int days = 0;
  bool operator==(const Earlier&) const = default;
};

struct ChangeInput {
  std::string number;
  Reason reason = Reason::owner;
  std::string cause;  // in a person's words
  std::string asked_by;
  std::string date;  // 2026-11-28
  int days = 0;      // added to the time agreed, negative: taken off
  std::string days_cause;
  std::vector<std::string> done;  // words of the stages that are finished
  std::vector<Committed> committed;
  std::vector<Met> met;
  std::vector<Ticket> tickets;
  units::Money contract;  // as it was signed, with tax
  std::vector<Earlier> earlier;
  bool operator==(const ChangeInput&) const = default;
};

enum class PricedBy { unit_price, quoted, new_line, ticket, not_charged };

struct OrderedChange {
  std::string stage;  // empty: of what was met
  plan::Id item;      // of what was met: the unit price's code; of a ticket: "ticket:" and its number
  plan::CostKind kind = plan::CostKind::material;
  std::string description;
  double quantity = 0;  // more (less: negative), in `unit`
  std::string unit;
  PricedBy by = PricedBy::quoted;
  units::Money amount;  // a credit is negative
  units::Money kept;    // from 0 up: what of the credit is not given (stage done, ordered, cut)
  std::string working;  // how the amount came about, and what it leaves out, in words
};

struct ChangeOrder {
  ChangeInput input;
  std::vector<OrderedChange> lines;
  std::vector<KeptStep> on_top;  // overhead, profit and tax of additions and of credits; "our-error" takes off a charge
  units::Money amount;           // what the contract changes by: the lines and the steps on top, to the coin
  units::Money before;           // the contract with the earlier orders
  units::Money after;
  int days = 0;  // with those of the earlier orders
  std::vector<problem::Problem> problems;
  bool final = true;  // no problem among them
  // Before and after in one sentence: "42,000.00 USD as signed, 1,200.00 USD by 1 earlier order, ..."
  std::string running;
};

// `quote` is the job that was agreed: its offer has unit prices, shares and tax. What is not valid counts as not there.
// Problems: change-currency (the two are not comparable: no lines of theirs), change-no-price (a line without an
// amount), change-unit-price (something met that has no unit price, or twice), change-quantity, change-share (no part
// of a credit), change-stage (a stage that there is not), change-date, change-asked, change-cause (none; days without
// theirs), change-too-large (past 9e15 coins), and those of priced(). Flags: change-unit (a unit price in another unit
// than its line: priced by 2 or 3), change-done (a credit that a finished stage does not give), change-stock (more
// ordered or cut than is credited), change-twice (met and in the lines too), change-ticket (not signed).
ChangeOrder change_order(const plan::Job& quote, const Comparison& comparison, ChangeInput input);

}  // namespace estimate
