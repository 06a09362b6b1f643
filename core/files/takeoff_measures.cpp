#include "files/takeoff_measures.h"

#include <array>
#include <cmath>

#include "units/number.h"
#include "units/quantity.h"

namespace files {

namespace {

// An SI unit and what it is shown in: multiplied by `times`, to so many decimals.
struct Shown {
  std::string_view si;
  double us_per_si;
  std::string_view us;
  double metric_per_si;
  std::string_view metric;
  int decimals;
};
constexpr std::array shown_units{
    Shown{"m2", 1 / units::square_metres_per_square_foot, "sq ft", 1, "m2", 1},
    Shown{"m3", 1 / units::cubic_metres_per_cubic_yard, "cu yd", 1, "m3", 2},
    Shown{"kg", 1 / units::kilograms_per_short_ton, "ton", 0.001, "t", 2},
    Shown{"m", 1 / units::metres_per_foot, "ft", 1, "m", 2},
};

const Shown* shown(std::string_view unit) {
  for (const Shown& known : shown_units)
    if (known.si == unit) return &known;
  return nullptr;
}

// To the decimals asked, and to three digits of what is smaller than those show; no 0 at the end.
std::string number(double value, int decimals) {
  while (decimals < 9 && value != 0 && std::abs(value) < 10 * std::pow(10.0, -decimals)) ++decimals;
  std::string text = units::show_grouped(value, decimals);
  if (text.find('.') == std::string::npos) return text;
  while (text.ends_with('0')) text.pop_back();
  if (text.ends_with('.')) text.pop_back();
  return text;
}

std::string in_unit(double value, const Shown& how, units::System system) {
  const bool us = system == units::System::us;
  const std::string text = number(value * (us ? how.us_per_si : how.metric_per_si), how.decimals);
  const std::string unit(us ? how.us : how.metric);
  return text + " " + unit + (unit == "ton" && text != "1" ? "s" : "");
}

}  // namespace

std::string quantity_in_words(double value, std::string_view unit, units::System system) {
  if (const Shown* how = shown(unit)) return in_unit(value, *how, system);
  return number(value, 2) + (unit.empty() || unit == "piece" ? "" : " " + std::string(unit));
}

std::string measure_in_words(std::string_view name, double value, units::System system) {
  const std::size_t colon = name.find(':');
  std::string of = colon == std::string_view::npos ? "" : " (" + std::string(name.substr(colon + 1)) + ")";
  std::string_view base = name.substr(0, colon);
  const std::size_t last = base.rfind('_');
  const Shown* how = last == std::string_view::npos ? nullptr : shown(base.substr(last + 1));
  if (how) base = base.substr(0, last);
  std::string words(base);
  for (char& letter : words)
    if (letter == '_') letter = ' ';
  return words + of + " " + (how ? in_unit(value, *how, system) : number(value, 2));
}

}  // namespace files
