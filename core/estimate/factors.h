// Conditions of the site that make all work of a stage, or of the job, longer or shorter: access, slope, heat.
#pragma once

#include <vector>

#include "estimate/estimate.h"

namespace estimate {

// The factors of the offer that can be used. Problems: offer-factor (not between 0.01 and 100), offer-stage
// (a stage that there is not): those are left out.
std::vector<plan::HoursFactor> hours_factors(const plan::Job& job, std::vector<problem::Problem>& problems);

// `hours` x each factor of that stage, by name; `hours` itself where there is none.
takeoff::Working under_conditions(takeoff::Working hours, const std::vector<plan::HoursFactor>& factors,
                                  takeoff::Stage stage);
// "; x 1.15 for narrow gate"
std::string conditions_in_words(const std::vector<plan::HoursFactor>& factors, takeoff::Stage stage);

// Hours of one stage as the calendar sees them, for the job's crew: hours / (people x hours a day). Days go up to half
// days for the calendar.
struct StageWork {
  takeoff::Stage stage = takeoff::Stage::protect;
  double hours = 0;
  double people = 0;
  double days = 0;
  double calendar_days = 0;
};
std::vector<StageWork> stage_work(const plan::Job& job, const Estimate& estimate);

}  // namespace estimate
