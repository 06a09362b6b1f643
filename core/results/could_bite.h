// What the price hangs on before the ground is open: each assumption at its low and at its high, the rest as it is.
#pragma once

#include <vector>

#include "results/results.h"

namespace results {

// One assumption. `low` and `high` are what the total would be more (or less, below 0) there; either may be the dearer.
struct Bite {
  std::string code;  // bite-swell, bite-reuse, bite-base-depth, bite-haul, bite-gate, bite-breakage, bite-hours
  std::string name;
  std::string at_low;  // "swell 15 %"
  std::string at_high;
  units::Money low;
  units::Money high;
  units::Money width() const;  // from the cheapest to the dearest of low, high and as it is
};

struct CouldBite {
  units::Money total;      // as it is
  units::Money least;      // if each turned out for the best: the sum over the bars, each by itself
  units::Money most;       // and for the worst
  std::vector<Bite> bars;  // widest first; those that change nothing are left out
  bool final = true;       // the total as it is was final
};

// How far each may be off is a limit of the catalogue (same id, from least to greatest), with common practice where the
// job's catalogue has none:
// - swell of the soil, and the share of it that can be placed again: added to the job's own, kept within 0 and 1;
// - depth of every base and sub-base of the build-ups, added in inches, at least 1 in;
// - the way onto the site: for machines, or (over 0) one step narrower than the job has;
// - price of a load and of disposal, breakage of all items, hours of all work: times.
// Each takes two takeoffs.
CouldBite could_bite(const Results& base);

// Hours and money under each way onto the site: "machine", "tight", "hand", in this order.
struct Access {
  std::string access;
  double hours = 0;
  units::Money work;   // of the hours
  units::Money total;  // of the price
  bool chosen = false;
  bool final = true;
};
std::vector<Access> by_access(const Results& base);

}  // namespace results
