// Limits and sentences of the levels.
#pragma once

#include <string>

#include "plan/job.h"

namespace takeoff::levels {

enum class Bound { least, greatest, usual };
// A limit of the catalogue in metres, or as a share where it is a fall (%, in per ft); `otherwise` where the catalogue
// has no such row or that side of it is empty.
double limit(const plan::Job& job, const catalogue::Id& id, Bound bound, double otherwise);

std::string shown(const plan::Job& job, double metres);  // 3/16 in, 12 ft 6 in; in the job's own system
std::string shown_area(const plan::Job& job, double square_metres);
std::string percent(double share);  // "2.02 %"
// "the kitchen wall" or, where it has no name, its id.
std::string name_of(const plan::Job& job, const plan::ElementId& id);

problem::Problem said(problem::Severity severity, std::string code, std::string text, std::string mend,
                      const plan::ElementId& element, std::optional<geometry::Point> at = {});

}  // namespace takeoff::levels
