// What kinds of work a plan has and what it shows of the site, as words: what the list of the site visit and the
// sentences of the quote go by.
#pragma once

#include <set>
#include <string>
#include <string_view>

#include "plan/job.h"

namespace estimate {

// kinds: paving, pool, wall (holds earth, built here), seat-wall (free-standing), steps, pillar, drain (pipe or
// channel), sleeve, edge,
//   light, feature (spout, basin, boulder ...), removal; building (stands already), at-building (something is built
//   where a building is drawn), digging (anything that goes into the ground), electric (lights, spouts, basins),
//   stays (a slab that is built on), protection, to-measure (a pool not measured again), no-bonding (a pool without a
//   conductor).
// shown: the words of the site marks; gate and path only with their width, tree, house-levels (a sill, weep or siding
//   level for every building), existing (heights of the ground as it lies).
struct Work {
  std::set<std::string, std::less<>> kinds;
  std::set<std::string, std::less<>> shown;
  bool has(std::string_view kind) const { return kinds.contains(kind); }
  bool shows(std::string_view what) const { return shown.contains(what); }
  bool anything() const;  // is built or taken out
};

Work work(const plan::Job& job);

}  // namespace estimate
