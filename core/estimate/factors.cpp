#include "estimate/factors.h"

#include <cmath>

#include "estimate/labour.h"
#include "estimate/words.h"

namespace estimate {

using plan::HoursFactor;
using problem::Severity;
using takeoff::Stage;
using takeoff::Working;

namespace {

bool holds_on(const HoursFactor& factor, Stage stage) {
  return factor.stage.empty() || factor.stage == takeoff::word(stage);
}

std::string named(const HoursFactor& factor) { return factor.name.empty() ? "conditions" : factor.name; }

}  // namespace

std::vector<HoursFactor> hours_factors(const plan::Job& job, std::vector<problem::Problem>& problems) {
  constexpr double least = 0.01, most = 100;  // past these it is a slip of the pen
  std::vector<HoursFactor> good;
  for (const HoursFactor& factor : job.offer.factors) {
    if (!(factor.factor >= least && factor.factor <= most))
      problems.push_back(
          {Severity::problem,
           "offer-factor",
           "the factor on hours for '" + named(factor) + "' is not between 0.01 and 100, so it is left out",
           "write 1.15 for 15 % more hours",
           {}});
    else if (!factor.stage.empty() && !takeoff::stage_of(factor.stage))
      problems.push_back({Severity::problem,
                          "offer-stage",
                          "the factor on hours for '" + named(factor) + "' names the stage '" + factor.stage +
                              "', which there is not, so it is left out",
                          "choose a stage, or none for all of them",
                          {}});
    else
      good.push_back(factor);
  }
  return good;
}

Working under_conditions(Working hours, const std::vector<HoursFactor>& factors, Stage stage) {
  std::vector<Working> all{std::move(hours)};
  for (const HoursFactor& factor : factors)
    if (holds_on(factor, stage))
      all.push_back(takeoff::term("factor for " + named(factor), factor.factor, units::piece, "offer/factors"));
  return all.size() == 1 ? all.front() : Working::product(std::move(all));
}

std::string conditions_in_words(const std::vector<HoursFactor>& factors, Stage stage) {
  std::string text;
  for (const HoursFactor& factor : factors)
    if (holds_on(factor, stage)) text += "; x " + in_words(factor.factor) + " for " + named(factor);
  return text;
}

std::vector<StageWork> stage_work(const plan::Job& job, const Estimate& estimate) {
  std::vector<StageWork> all;
  for (const auto& [stage, total] : estimate.stages) {
    if (!(total.hours > 0)) continue;
    const double days = crew_days(total.hours, job.choices.crew, job.choices.day_hours);
    all.push_back({stage, total.hours, job.choices.crew, days, std::ceil(days * 2 - 1e-9) / 2});
  }
  return all;
}

}  // namespace estimate
