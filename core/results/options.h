// What the customer may take beside the base, or in its place, and what difference that makes.
#pragma once

#include <memory>
#include <vector>

#include "results/results.h"

namespace results {

// The job as if the option were taken: its elements come or take the place of those with their id, those `without` go,
// its lines come or take the place of added lines with their id. The options of the offer stay what they are.
plan::Job with_option(const plan::Job& job, const plan::Option& option);

// The difference that an option makes to the base; below 0: it costs less.
struct OptionPrice {
  plan::ElementId id;
  units::Money direct;
  units::Money price;  // before tax
  units::Money total;
  double hours = 0;
  bool final = true;                       // both have a final total
  std::vector<problem::Problem> problems;  // option-element: it takes away an element that there is not
};

// In the order of the offer, each by itself against the base. Every one is worked out anew: as long as a takeoff each.
std::vector<OptionPrice> option_prices(const Results& base);

}  // namespace results
