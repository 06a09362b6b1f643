// What the total says, as plain values.
#pragma once

#include <QString>
#include <optional>

#include "results/results.h"

namespace ui {

// Every line of the estimate counts in exactly one, so that they add up to the total.
struct Split {
  units::Money material;
  units::Money labour;
  units::Money machines;  // hired, and trucking
  units::Money fees;      // and subcontracts and allowances
  units::Money all() const { return material + labour + machines + fees; }
};
Split split(const results::Results& results);

// Why a total is not final, and where to go first. All 0: it is final.
struct Open {
  int without_price = 0;
  int problems = 0;                         // others than a missing price
  int first_line = -1;                      // the first without a price, as numbered in the estimate
  std::optional<problem::Problem> problem;  // the first
};
Open open_of(const results::Results& results);
QString open_in_words(const Open& open);  // "Not final: 1 line has no price, 2 problems to solve."

// "392.2 h · crew of 3 · 16.3 days"
QString hours_in_words(double hours, const plan::Choices& choices);

}  // namespace ui
