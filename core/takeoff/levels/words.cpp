#include "takeoff/levels/words.h"

#include <charconv>
#include <cmath>

#include "units/number.h"

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

// To three figures, whatever the machine's locale says.
std::string three_figures(double value) {
  char text[40];
  const auto end = std::to_chars(text, text + sizeof text, value, std::chars_format::general, 3);
  return {text, end.ptr};
}

}  // namespace

std::string shown_area(const plan::Job& job, double square_metres) {
  constexpr double square_foot = units::metres_per_foot * units::metres_per_foot;
  if (job.heading.units == units::System::us) return three_figures(square_metres / square_foot) + " sq ft";
  return three_figures(square_metres) + " m2";
}

std::string percent(double share) { return units::show_number(share * 100, 2) + " %"; }

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
