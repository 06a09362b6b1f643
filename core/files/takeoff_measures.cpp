#include "files/takeoff_measures.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "units/length.h"
#include "units/number.h"
#include "units/quantity.h"
#include "units/read_length.h"

namespace files {

namespace {

// An SI unit and what it is shown in: multiplied by `times`, to so many decimals, where the result is at least `from`.
// Of several of one unit and system the first that fits holds; the last of them fits all.
struct Shown {
  std::string_view si;
  units::System system;
  std::string_view unit;
  double times;
  double from;
  int decimals;
};
constexpr auto us = units::System::us, metric = units::System::metric;
constexpr std::array shown_units{
    Shown{"m2", us, "sq ft", 1 / units::square_metres_per_square_foot, 0, 1},
    Shown{"m3", us, "cu yd", 1 / units::cubic_metres_per_cubic_yard, 0.05, 2},
    Shown{"m3", us, "fl oz", 1 / units::cubic_metres_per_fluid_ounce, 0, 1},
    Shown{"kg", us, "ton", 1 / units::kilograms_per_short_ton, 0.05, 2},
    Shown{"kg", us, "lb", 1 / units::kilograms_per_pound, 0, 1},
    Shown{"m", us, "ft", 1 / units::metres_per_foot, 0, 2},
    Shown{"l_s", us, "gpm", 60.0 / 1000 / units::cubic_metres_per_gallon, 0, 1},
    Shown{"m_s", us, "ft/s", 1 / units::metres_per_foot, 0, 2},
    Shown{"pct", us, "%", 1, 0, 2},
    Shown{"pct", metric, "%", 1, 0, 2},
    Shown{"l_s", metric, "l/s", 1, 0, 2},
    Shown{"m_s", metric, "m/s", 1, 0, 2},
    Shown{"m2", metric, "m2", 1, 0, 1},
    Shown{"m3", metric, "m3", 1, 0.05, 2},
    Shown{"m3", metric, "l", 1000, 0, 1},
    Shown{"kg", metric, "t", 0.001, 0.05, 2},
    Shown{"kg", metric, "kg", 1, 0, 1},
    Shown{"m", metric, "m", 1, 1, 2},
    Shown{"m", metric, "mm", 1000, 0, 1},
};

// Stone, earth and mortar too little for a cubic yard are reckoned in cubic feet; only what comes in tubes and bottles
// is reckoned in fluid ounces, and that is ordered, not measured.
constexpr Shown cubic_feet{"m3", us, "cu ft", 1 / units::cubic_metres_per_cubic_foot, 0, 2};

// What is held against a rule or a spirit level on site is read as it is typed: 8 3/8", not 0.7 ft.
bool read_off_a_rule(std::string_view name) {
  static constexpr std::string_view starts[] = {
      "height",        "buried",      "riser",    "tread", "stride", "cap_top",    "cap_overhang", "steps_run",
      "pillar_height", "dig_deepest", "dig_mean", "cover", "lip",    "coping_lip", "storage_rain"};
  return name.ends_with("_m") &&
         std::ranges::any_of(starts, [name](std::string_view start) { return name.starts_with(start); });
}

// Nothing where the unit stays as it is. What is nothing at all is nothing of the large unit.
const Shown* shown(std::string_view unit, double value, units::System system) {
  for (const Shown& known : shown_units)
    if (known.si == unit && known.system == system &&
        (value == 0 || std::abs(value * known.times) >= known.from - 1e-12))
      return &known;
  return nullptr;
}

// The unit at the end of a measure's name: "l_s" of flow_l_s, "m2" of net_area_m2; empty where there is none.
std::string_view unit_of(std::string_view name) {
  std::string_view found;
  for (const Shown& known : shown_units) {
    const std::string_view unit = known.si;
    const bool ends =
        name.size() > unit.size() + 1 && name.ends_with(unit) && name[name.size() - unit.size() - 1] == '_';
    if (ends && unit.size() > found.size()) found = unit;
  }
  return found;
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

std::string in_unit(double value, const Shown& how) {
  const std::string text = number(value * how.times, how.decimals);
  return text + " " + std::string(how.unit) + (how.unit == "ton" && text != "1" ? "s" : "");
}

}  // namespace

std::string quantity_in_words(double value, std::string_view unit, units::System system) {
  if (const Shown* how = shown(unit, value, system)) return in_unit(value, *how);
  return number(value, 2) + (unit.empty() || unit == "piece" ? "" : " " + std::string(unit));
}

std::string measure_in_words(std::string_view name, double value, units::System system) {
  const std::size_t colon = name.find(':');
  std::string of = colon == std::string_view::npos ? "" : " (" + std::string(name.substr(colon + 1)) + ")";
  std::string_view base = name.substr(0, colon);
  const Shown* how = shown(unit_of(base), value, system);
  if (how && how->unit == "fl oz") how = &cubic_feet;
  if (how) base = base.substr(0, base.size() - how->si.size() - 1);
  std::string words(base);
  for (char& letter : words)
    if (letter == '_') letter = ' ';
  if (system == us && read_off_a_rule(name.substr(0, colon)))
    return words + of + " " + units::show_length(units::Length::nearest(units::Metres(value)), system);
  return words + of + " " + (how ? in_unit(value, *how) : number(value, 2));
}

bool has_part_coins(const estimate::OrderLine& line) {
  return std::abs(line.exact_coins - std::round(line.exact_coins)) > 1e-6;
}

}  // namespace files
