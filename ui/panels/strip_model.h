// What the order of work says of each stage, as plain values.
#pragma once

#include <QString>
#include <array>

#include "results/results.h"

namespace ui {

constexpr std::size_t stage_count = takeoff::all_stages.size();

struct StripCell {
  QString name;       // short: "Under ground"
  QString cost;       // empty before there are results, and of a stage that costs nothing
  QString hours;      // the same
  int problems = 0;   // what stops the total: lines without a price, elements with a problem
  int flags = 0;      // what somebody is to decide
  bool open = false;  // its cost is not final
  bool operator==(const StripCell&) const = default;
};
// `results` may be null.
std::array<StripCell, stage_count> strip_cells(const results::Results* results, const plan::Job& job);

// The stage that an element belongs to: a wall's is Wall, an area's Paving.
takeoff::Stage stage_of_kind(const plan::Kind& kind);

// What of a job of this kind the section shows.
struct StripKinds {
  bool any = false;  // else ground only
  bool pool = false;
  bool wall = false;
  bool pipe = false;
  bool kerb = false;
  bool paving = false;
  bool operator==(const StripKinds&) const = default;
};
StripKinds strip_kinds(const plan::Job& job);

// "3, Under ground: $1,064.80, 9 h, 1 to decide"
QString strip_cell_told(int number, const StripCell& cell);

}  // namespace ui
