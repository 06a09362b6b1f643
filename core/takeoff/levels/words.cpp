#include "takeoff/levels/words.h"

#include <cmath>
#include <cstdio>

namespace takeoff::levels {

double limit(const plan::Job& job, const catalogue::Id& id, Bound bound, double otherwise) {
  const auto found = job.catalogue->limits.find(id);
  if (found == job.catalogue->limits.end()) return otherwise;
  const catalogue::Limit& row = found->second;
  const std::optional<double>& value =
      bound == Bound::least ? row.least : (bound == Bound::greatest ? row.greatest : row.usual);
  if (!value) return otherwise;
  if (row.unit == "%") return *value / 100;
  if (row.unit == "in per ft") return *value / 12;
  if (row.unit == "in") return *value * units::metres_per_inch;
  if (row.unit == "ft") return *value * units::metres_per_foot;
  if (row.unit == "mm") return *value / 1000;
  return otherwise;
}

std::string shown(const plan::Job& job, double metres) {
  return units::show_length(units::Length::nearest(units::Metres(metres)), job.heading.units);
}

namespace {

std::string number(double value, const char* form) {
  char text[40];
  std::snprintf(text, sizeof text, form, value);
  return text;
}

}  // namespace

std::string shown_area(const plan::Job& job, double square_metres) {
  constexpr double square_foot = units::metres_per_foot * units::metres_per_foot;
  if (job.heading.units == units::System::us) return number(square_metres / square_foot, "%.3g sq ft");
  return number(square_metres, "%.3g m2");
}

std::string percent(double share) { return number(share * 100, "%.2f %%"); }

std::string name_of(const plan::Job& job, const plan::ElementId& id) {
  const plan::Element* element = job.find(id);
  return element != nullptr && !element->name.empty() ? element->name : id;
}

problem::Problem said(problem::Severity severity, std::string code, std::string text, std::string mend,
                      const plan::ElementId& element, std::optional<geometry::Point> at) {
  problem::Problem made{
      severity, std::move(code), std::move(text), std::move(mend), {.element = element, .file = {}, .at = {}}};
  if (at) made.place.at = geometry::xy(*at);
  return made;
}

}  // namespace takeoff::levels
