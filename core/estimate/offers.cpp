#include "estimate/offers.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "estimate/quantile.h"
#include "estimate/words.h"
#include "units/number.h"

namespace estimate {

namespace {

// Of one item or rate in one job.
struct Sum {
  double really = 0;  // used, worked
  double meant = 0;   // needed, hours of the estimate for what was done
  std::string unit;
};
using Sums = std::map<plan::Id, Sum>;

Sums used_of(const ClosedRecord& record) {
  Sums sums;
  for (const LineActual& line : record.actual.lines) {
    if (!line.use_entered || line.key.kind != plan::CostKind::material || !line.needed || !(*line.needed > 0)) continue;
    Sum& sum = sums[line.key.item];
    sum.really += line.used;
    sum.meant += *line.needed;
    sum.unit = line.unit;
  }
  return sums;
}

double earned(const WorkActual& work) { return work.estimate_hours * work.done.value_or(1); }

void add_hours(const StageActual& stage, Sums& sums) {
  double named = 0, others = 0;
  for (const WorkActual& work : stage.work) {
    named += work.hours.value_or(0);
    others += work.hours ? 0 : earned(work);
  }
  // What was entered for the stage alone, for each hour that its other rates were to take.
  const double each = others > 0 ? std::max(0.0, stage.hours - named) / others : 0;
  for (const WorkActual& work : stage.work) {
    const double worked = work.hours ? *work.hours : each * earned(work);
    if (!(worked > 0) || !(earned(work) > 0)) continue;
    Sum& sum = sums[work.item];
    sum.really += worked;
    sum.meant += earned(work);
    sum.unit = "h";
  }
}

Sums worked_of(const ClosedRecord& record) {
  Sums sums;
  for (const StageActual& stage : record.actual.stages) add_hours(stage, sums);
  return sums;
}

// "1,010 pieces"
std::string shown(double number, const std::string& unit) {
  std::string text = units::show_grouped(number, 2);
  while (text.ends_with('0')) text.pop_back();
  if (text.ends_with('.')) text.pop_back();
  const std::string words = counted(number, unit);
  return text + words.substr(words.find(' '));
}

// `values` rise.
std::optional<Spread> spread_of(const std::vector<double>& values) {
  if (values.empty()) return std::nullopt;
  return Spread{values.front(), quantile(values, 0.25), quantile(values, 0.5), quantile(values, 0.75), values.back()};
}

void finish(CatalogueOffer& offer, const std::set<std::int64_t>& left_out) {
  std::ranges::sort(offer.jobs, {}, [](const SeenInJob& one) { return std::pair(one.value, one.job); });
  std::vector<double> values;
  for (const SeenInJob& job : offer.jobs)
    if (!left_out.contains(job.job)) values.push_back(job.value);
  const std::string count = std::to_string(values.size()) + (values.size() == 1 ? " closed job" : " closed jobs");
  const std::size_t others = offer.jobs.size() - values.size();
  const std::string without = others == 0 ? "" : ", " + std::to_string(others) + " left out";
  offer.spread = spread_of(values);
  offer.offered.reset();
  if (values.size() < fewest_jobs) {
    offer.note = count + without + ": no offer from fewer than " + std::to_string(fewest_jobs);
    return;
  }
  offer.note = "from " + count + without;
  const double median = std::round(offer.spread->median * 1e5) / 1e5;
  offer.offered = offer.what == Offered::breakage ? std::clamp(median, 0.0, 1.0) : median;
}

using Offers = std::map<plan::Id, CatalogueOffer>;

void look_at_use(const catalogue::Catalogue& now, const ClosedRecord& record, Offers& items) {
  for (const auto& [id, sum] : used_of(record)) {
    const catalogue::Item* item = now.item(id);
    if (!item) continue;
    CatalogueOffer& offer = items[id];
    offer = {Offered::breakage, id, item->name.en, "", item->breakage, {}, {}, std::move(offer.jobs), ""};
    offer.jobs.push_back({record.job, record.name, record.conditions, sum.really / sum.meant - 1,
                          "used " + shown(sum.really, sum.unit) + ", needed " + shown(sum.meant, sum.unit)});
  }
}

void look_at_hours(const catalogue::Catalogue& now, const ClosedRecord& record, Offers& rates) {
  for (const auto& [id, sum] : worked_of(record)) {
    const catalogue::Rate* rate = now.rate(id);
    const catalogue::Rate* then = record.catalogue->rate(id);
    if (!rate || !then || then->si_unit != rate->si_unit || !(then->hours_per_si_unit > 0)) continue;
    CatalogueOffer& offer = rates[id];
    offer = {Offered::rate,         id, rate->name.en, rate->si_unit, rate->hours_per_si_unit, {}, {},
             std::move(offer.jobs), ""};
    offer.jobs.push_back({record.job, record.name, record.conditions, then->hours_per_si_unit * sum.really / sum.meant,
                          "worked " + shown(sum.really, "h") + ", estimated " + shown(sum.meant, "h") + " at " +
                              units::write_number(then->hours_per_si_unit) + " h per " + then->si_unit});
  }
}

}  // namespace

std::vector<CatalogueOffer> offers(const catalogue::Catalogue& now, const std::vector<ClosedRecord>& jobs) {
  Offers items, rates;
  for (const ClosedRecord& record : jobs) {
    look_at_use(now, record, items);
    look_at_hours(now, record, rates);
  }
  std::vector<CatalogueOffer> all;
  for (Offers* of : {&items, &rates})
    for (auto& [id, offer] : *of) {
      finish(offer, {});
      all.push_back(std::move(offer));
    }
  return all;
}

CatalogueOffer from_like_jobs(CatalogueOffer offer, const std::set<std::int64_t>& left_out) {
  finish(offer, left_out);
  return offer;
}

}  // namespace estimate
