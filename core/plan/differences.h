// What differs between two values of a job: what was drawn, and what was chosen for the whole of it, in words of the
// trade. For whoever asks what happened between two versions; nothing is computed from it.
#pragma once

#include <string>
#include <vector>

#include "plan/job.h"

namespace plan {

enum class Differs { added, gone, changed };

struct ElementDifference {
  Differs how = Differs::changed;
  ElementId id;
  std::string name;               // as it is after; of what is gone as it was
  std::string kind;               // the word of the files
  std::vector<std::string> what;  // of what changed: "outline", "pattern", "build-up" ...; never empty then
  bool operator==(const ElementDifference&) const = default;
};

struct Differences {
  std::vector<ElementDifference> elements;  // in the order of the job after, then what is gone in its own
  std::vector<std::string> job;             // "currency", "soil", "crew", "overhead", "order of drawing" ...
  std::vector<Id> prices;                   // items that both catalogues have, at another price
  std::vector<std::string> catalogue;       // "item x", "build-up y", "pattern z", "rate r", "limit l": otherwise
                                            // different, or in one of the two only
  bool none() const { return elements.empty() && job.empty() && prices.empty() && catalogue.empty(); }
  bool operator==(const Differences&) const = default;
};

// Elements are the same by id; one of another kind under the same id is changed in its "kind". There are none exactly
// where the two jobs are the same by value.
Differences differences(const Job& before, const Job& after);

// Of one element, both ways the same; empty where they are equal.
std::vector<std::string> what_differs(const Element& before, const Element& after);

}  // namespace plan
