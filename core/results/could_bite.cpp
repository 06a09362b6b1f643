#include "results/could_bite.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>

#include "estimate/money_words.h"
#include "problem/ensure.h"

namespace results {

namespace {

using Edit = std::function<plan::Job(plan::Job, double)>;

// Copies of the catalogue with some of its rows changed.
plan::Job with_catalogue(plan::Job job, const std::function<void(catalogue::Catalogue&)>& change) {
  catalogue::Catalogue own = *job.catalogue;
  change(own);
  job.catalogue = std::make_shared<const catalogue::Catalogue>(std::move(own));
  return job;
}

plan::Job with_items(plan::Job job, const std::function<bool(catalogue::Item&)>& change) {
  return with_catalogue(std::move(job), [&change](catalogue::Catalogue& own) {
    for (auto& [id, item] : own.items) {
      if (!item) continue;
      catalogue::Item changed = *item;
      if (change(changed)) item = std::make_shared<const catalogue::Item>(std::move(changed));
    }
  });
}

double as_share(double value) { return std::clamp(value, 0.0, 1.0); }

plan::Job swell(plan::Job job, double more) {
  job.choices.soil.swell = as_share(job.choices.soil.swell + more);
  return job;
}

plan::Job reuse(plan::Job job, double more) {
  job.choices.soil.reusable = as_share(job.choices.soil.reusable + more);
  return job;
}

plan::Job base_depth(plan::Job job, double inches) {
  return with_catalogue(std::move(job), [inches](catalogue::Catalogue& own) {
    const auto least = units::Length::inches(1);
    const auto more = units::Length::inch_64ths(static_cast<std::int64_t>(inches * 64));
    for (auto& [id, build_up] : own.build_ups)
      for (catalogue::Layer& layer : build_up.layers)
        if (layer.thickness && (layer.role == "base" || layer.role == "sub-base"))
          layer.thickness = std::max(std::min(least, *layer.thickness), *layer.thickness + more);
  });
}

plan::Job haul(plan::Job job, double times) {
  return with_items(std::move(job), [times](catalogue::Item& item) {
    if (!item.price || (item.kind != "truck" && item.kind != "disposal")) return false;
    item.price->amount = units::times(item.price->amount, std::max(0.0, times));
    return true;
  });
}

plan::Job breakage(plan::Job job, double times) {
  return with_items(std::move(job), [times](catalogue::Item& item) {
    if (item.breakage == 0) return false;
    item.breakage = as_share(item.breakage * times);
    return true;
  });
}

plan::Job hours(plan::Job job, double times) {
  job.offer.factors.push_back({"all work", times, "", ""});
  return job;
}

// 0: the widest way onto the site; 1: one step narrower than the job has.
constexpr std::array ways{"machine", "tight", "hand"};
plan::Job gate(plan::Job job, double narrower) {
  const auto now = std::ranges::find(ways, job.choices.access, [](const char* way) { return std::string_view(way); });
  const std::size_t at = now == ways.end() ? 0 : static_cast<std::size_t>(now - ways.begin());
  job.choices.access = narrower > 0 ? ways[std::min(at + 1, ways.size() - 1)] : ways.front();
  return job;
}

std::string in_percent(const char* what, double value) { return what + (" " + estimate::exact_percent(value)); }
std::string at_swell(const plan::Job& job, double more) {
  return in_percent("swell", as_share(job.choices.soil.swell + more));
}
std::string at_reuse(const plan::Job& job, double more) {
  return in_percent("placed again", as_share(job.choices.soil.reusable + more));
}
std::string at_depth(const plan::Job& job, double inches) {
  const auto more = units::Length::inch_64ths(static_cast<std::int64_t>(std::abs(inches) * 64));
  return (inches < 0 ? "base thinner by " : "base deeper by ") + units::show_length(more, job.heading.units);
}
std::string at_gate(const plan::Job& job, double narrower) { return "access: " + gate(job, narrower).choices.access; }
std::string at_times(const plan::Job&, double times) { return in_percent("at", times); }

struct Row {
  const char* id;
  const char* name;
  double low;  // common practice, where the catalogue has no such limit
  double high;
  plan::Job (*edit)(plan::Job, double);
  std::string (*said)(const plan::Job&, double);
};
constexpr std::array rows{
    Row{"bite-swell", "Swell of the soil", -0.10, 0.15, swell, at_swell},
    Row{"bite-reuse", "Soil that can be placed again", -0.25, 0.25, reuse, at_reuse},
    Row{"bite-base-depth", "Depth of the base", -1, 2, base_depth, at_depth},
    Row{"bite-haul", "Price of haul and disposal", 0.9, 1.3, haul, at_times},
    Row{"bite-gate", "Width of the gate and the path", 0, 1, gate, at_gate},
    Row{"bite-breakage", "Breakage", 0.5, 2, breakage, at_times},
    Row{"bite-hours", "Hours of work", 0.9, 1.2, hours, at_times},
};

}  // namespace

units::Money Bite::width() const {
  return std::max({low, high, units::Money()}) - std::min({low, high, units::Money()});
}

CouldBite could_bite(const Results& base) {
  problem::ensure(base.job != nullptr, "what could bite is asked of a job that was worked out");
  const plan::Job& job = *base.job;
  const units::Money total = base.priced.total;
  CouldBite made{total, total, total, {}, base.final()};
  Memory memory;
  const auto off = [&](const Row& row, double by) {
    return compute(std::make_shared<const plan::Job>(row.edit(job, by)), memory).priced.total - total;
  };
  for (const Row& row : rows) {
    const auto found = job.catalogue->limits.find(row.id);
    const bool given = found != job.catalogue->limits.end() && found->second.least && found->second.greatest;
    const auto typed = [](double value) { return std::clamp(value, -100.0, 100.0); };  // past that nothing is a price
    const double low = typed(given ? *found->second.least : row.low);
    const double high = typed(given ? *found->second.greatest : row.high);
    Bite bite{row.id, row.name, row.said(job, low), row.said(job, high), off(row, low), off(row, high)};
    if (bite.width() == units::Money()) continue;
    made.least += std::min({bite.low, bite.high, units::Money()});
    made.most += std::max({bite.low, bite.high, units::Money()});
    made.bars.push_back(std::move(bite));
  }
  std::ranges::stable_sort(made.bars, std::greater{}, &Bite::width);
  return made;
}

std::vector<Access> by_access(const Results& base) {
  problem::ensure(base.job != nullptr, "ways onto the site are asked of a job that was worked out");
  std::vector<Access> all;
  Memory memory;
  for (const char* access : {"machine", "tight", "hand"}) {
    plan::Job job = *base.job;
    job.choices.access = access;
    const Results made = compute(std::make_shared<const plan::Job>(std::move(job)), memory);
    all.push_back({access, made.estimate.total.hours, made.estimate.total.work, made.priced.total,
                   base.job->choices.access == access, made.final()});
  }
  return all;
}

}  // namespace results
