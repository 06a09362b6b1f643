// What the office's own closed jobs say against its catalogue. It is offered, never set: a person looks at the jobs and
// takes it or leaves it.
//
// Two kinds of numbers are looked at:
// - the share of an item that is broken or spoilt: what was used over what the job needed of it (stock for cuts counts
//   as needed), less 1, of lines whose use was entered;
// - the hours of a rate: the rate that the job was estimated with, x hours worked / hours that the estimate has for
//   what was done. Factors for conditions that stood in the estimate are in both, so they fall out; they are shown with
//   each job, as are the narrowest way in and how much of the outlines is curved, so that like jobs can be compared.
#pragma once

#include <cstdint>
#include <memory>
#include <set>
#include <string>
#include <vector>

#include "estimate/actual.h"

namespace estimate {

struct JobConditions {
  std::vector<std::string> factors;        // "narrow gate x 1.15", "slope x 1.1 (base)"
  std::optional<units::Length> narrowest;  // of the gates and paths drawn
  double curved = 0;                       // share of the length of areas' and pools' outlines, 0..1
  bool operator==(const JobConditions&) const = default;
};
// A freeform outline counts as curved, by the chords between its points.
JobConditions conditions(const plan::Job& job);

// A closed job: what it was built with and what came out.
struct ClosedRecord {
  std::int64_t job = 0;  // its number in the book
  std::string name;
  JobConditions conditions;
  std::shared_ptr<const catalogue::Catalogue> catalogue;  // that it was estimated with; not null
  Actual actual;
};

// Of n values that rise: by quantile.h.
struct Spread {
  double least = 0, lower = 0, median = 0, upper = 0, most = 0;
  bool operator==(const Spread&) const = default;
};

struct SeenInJob {
  std::int64_t job = 0;
  std::string name;
  JobConditions conditions;
  double value = 0;
  std::string working;  // "used 1,040 pieces, needed 1,000 pieces"
};

enum class Offered { breakage, rate };

struct CatalogueOffer {
  Offered what = Offered::breakage;
  plan::Id id;                    // of the item or the rate
  std::string name;               // in English
  std::string unit;               // of a rate: what it is per
  double now = 0;                 // in the catalogue
  std::optional<double> offered;  // the median to five decimals, a share within 0..1; nothing: fewer than fewest_jobs
  std::optional<Spread> spread;
  std::vector<SeenInJob> jobs;  // by value, then by job
  std::string note;             // "from 5 closed jobs"; "1 closed job: no offer from fewer than 3"
};

inline constexpr std::size_t fewest_jobs = 3;

// One for each item and rate of the catalogue that a closed job says something of, items first, by id. A job counts
// once for each: its lines of several stages together. Hours that were entered for a whole stage speak for every rate
// of it that has none of its own. What a stage has done is by measure; a closed job's stage that nobody measured counts
// as done. A job without a number over 0 to divide by is left out.
std::vector<CatalogueOffer> offers(const catalogue::Catalogue& now, const std::vector<ClosedRecord>& jobs);

// The same from like jobs alone: jobs whose number is in `left_out` stay listed and do not count. No spread where none
// is left.
CatalogueOffer from_like_jobs(CatalogueOffer offer, const std::set<std::int64_t>& left_out);

}  // namespace estimate
