// What was entered against the lines of a kept version while it was built: orders, deliveries, use, hours, how much is
// done. Entries are plain values and never changed in place: a correction is an entry of its own that names the one
// whose place it takes. One that never was is corrected to the quantity 0.
//
// An order stands as it was given. After the drawing changed, more is ordered or some is returned by entries of their
// own; a correction of an order may mend its date and its words, never its line, quantity or unit.
#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "estimate/kept.h"

namespace estimate {

// What makes lines one and the same, as compare.h has it.
struct LineKey {
  std::string stage;  // the stage's word
  plan::Id item;      // an item, a rate, an added line
  plan::CostKind kind = plan::CostKind::material;
  auto operator<=>(const LineKey&) const = default;
};
LineKey key_of(const KeptLine& line);

// planned to returned are the states of an order line, in the order in which it goes through them. hours: worked in a
// stage. measured: how much of a stage is done.
enum class Act { planned, asked, ordered, confirmed, delivered, used, returned, hours, measured };
inline constexpr Act all_acts[] = {Act::planned, Act::asked,    Act::ordered, Act::confirmed, Act::delivered,
                                   Act::used,    Act::returned, Act::hours,   Act::measured};
std::string word(Act act);                        // "planned", "delivered" ...
std::optional<Act> act_of(std::string_view its);  // nothing where there is no such word

struct Entry {
  std::int64_t number = 0;    // of the version's entries, from 1; 0: not entered yet
  std::int64_t corrects = 0;  // the number of the entry whose place it takes; 0: none
  Act act = Act::delivered;
  // Of hours and measured the stage is enough; with an item it is the work of that rate. Their kind is labour.
  LineKey line;
  std::string date;                   // 2026-11-28
  double quantity = 0;                // from 0 up, in `unit`; measured: done to date, from the first day
  double whole = 0;                   // measured: all that there is to do, over 0, in `unit`
  std::string unit;                   // the line's order_unit; hours: h; measured: as it was taped
  std::optional<units::Money> price;  // of one `unit`, from 0 up: confirmed, billed or credited, or of an hour
  std::string who;                    // hours: person or crew; else who says so
  std::string ticket;                 // number of the delivery ticket, the order, the bill
  std::string note;
  std::string entered;  // 2026-11-28T21:47:26Z, by the book
  bool operator==(const Entry&) const = default;
};

// A line that is work by the hour: hours go to its stage, nothing is delivered of it.
bool is_work(const KeptLine& line);

// Those that no later entry corrects; a correction stands in the place of what it corrects. Numbers differ.
std::vector<Entry> in_force(const std::vector<Entry>& entries);

// Whether the entry can follow those `before` it. Refused by one sentence, with nothing lost: ledger-line (the version
// has no such line), ledger-stage (nor such a stage), ledger-unit (entered in another unit than the line's),
// ledger-quantity (below 0 or no number), ledger-whole (measured without what there is to do), ledger-date (not a day),
// ledger-price (below 0), ledger-corrects (corrects what is not there, is corrected already, or is of another sort),
// ledger-ordered (would change an order), ledger-large (past 1e9 of a unit, or all priced entries together past 9e15
// coins).
problem::Result<void> check(const Kept& kept, const std::vector<Entry>& before, const Entry& entry);

}  // namespace estimate
