// Two kept estimates side by side. Every coin of the difference is in exactly one change.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "estimate/kept.h"

namespace estimate {

enum class Difference { added, gone, quantity, price, words };

// A line that one of the two lacks, or that differs: first by what is ordered or needed, then by its price or amount.
// `words`: the same money for the same quantity, told otherwise.
struct Change {
  Difference what = Difference::words;
  std::optional<KeptLine> before;
  std::optional<KeptLine> after;
  units::Money by;  // after less before; a line without an amount counts 0
};

const KeptLine& line_of(const Change& change);  // the line as it is after, of what is gone as it was before

struct StepChange {
  std::string code;
  std::string name;
  units::Money before;
  units::Money after;
};

struct Comparison {
  std::vector<Change> changes;    // in the order of building, material before work
  std::vector<StepChange> steps;  // all steps of either, equal ones too
  units::Money direct_by;         // sum of the changes
  units::Money price_by;
  units::Money total_by;                 // sum over the steps
  std::vector<plan::ElementId> touched;  // elements that a changed line was measured from
  bool comparable = true;                // false: two currencies; then there are no changes
};

// Lines are the same by stage, item and kind. Of several alike those of the same description and units go together
// first, what is left the n-th by the n-th. In each stage what is gone comes after what is there, in its own order; a
// stage that there is not comes last. Steps are the same by their code (of several alike the n-th by the n-th).
Comparison compare(const Kept& before, const Kept& after);

}  // namespace estimate
