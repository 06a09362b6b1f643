#include "sheets/printed.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

#include "estimate/money_words.h"
#include "estimate/words.h"
#include "units/number.h"
#include "units/quantity.h"
#include "units/read_length.h"

namespace sheets {

namespace {

constexpr double square_foot = 0.3048 * 0.3048;          // m², exact
constexpr double cubic_yard = 0.9144 * 0.9144 * 0.9144;  // m³, exact
constexpr double pound = 0.45359237;                     // kg, exact

bool us(const Printed& printed) { return printed.job().heading.units == units::System::us; }

std::string replaced(std::string text, const std::string& what, const std::string& with) {
  for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + with.size()))
    text.replace(at, what.size(), with);
  return text;
}

// Three figures that matter, none for show: 846, 78.6, 9.25.
std::string about(double value) {
  const double size = std::abs(value);
  std::string text = units::show_grouped(value, size >= 100 ? 0 : size >= 10 ? 1 : 2);
  if (text.find('.') == std::string::npos) return text;
  while (text.ends_with('0')) text.pop_back();
  if (text.ends_with('.')) text.pop_back();
  return text;
}

}  // namespace

std::string filled(std::string sentence, std::initializer_list<std::string> values) {
  std::string made;
  for (std::size_t at = 0; at < sentence.size(); ++at) {
    const bool place = sentence[at] == '%' && at + 1 < sentence.size() && sentence[at + 1] >= '1' &&
                       static_cast<std::size_t>(sentence[at + 1] - '0') <= values.size();
    if (place)
      made += *(values.begin() + (sentence[++at] - '1'));
    else
      made += sentence[at];
  }
  return made;
}

std::string filled(const Printed& printed, const std::string& english, std::initializer_list<std::string> values) {
  return filled(printed.say(english), values);
}

std::string name_in(const Printed& printed, const catalogue::Words& words) {
  return printed.language == "es" && !words.es.empty() ? words.es : words.en;
}

std::string name_of(const Printed& printed, const catalogue::Id& id) {
  const catalogue::Catalogue& all = *printed.job().catalogue;
  const auto said = [&](const catalogue::Words& words) {
    const std::string name = name_in(printed, words);
    return name.empty() ? id : name;
  };
  if (const auto* item = all.item(id)) return said(item->name);
  if (const auto* rate = all.rate(id)) return said(rate->name);
  if (const auto* build_up = all.build_up(id)) return said(build_up->name);
  if (const auto* pattern = all.pattern(id)) return said(pattern->name);
  if (const auto supplier = all.suppliers.find(id); supplier != all.suppliers.end()) return said(supplier->second.name);
  return id;
}

std::string length_words(const Printed& printed, double metres) {
  const std::string plain =
      units::show_length(units::Length::nearest(units::Metres(metres)), printed.job().heading.units);
  return replaced(replaced(plain, "'", "′"), "\"", "″");
}

std::string area_words(const Printed& printed, double square_metres) {
  return us(printed) ? about(square_metres / square_foot) + " " + printed.say("sq ft") : about(square_metres) + " m²";
}

std::string volume_words(const Printed& printed, double cubic_metres) {
  return us(printed) ? about(cubic_metres / cubic_yard) + " " + printed.say("cu yd") : about(cubic_metres) + " m³";
}

std::string weight_words(const Printed& printed, double kilograms) {
  if (us(printed)) return about(kilograms / pound) + " lb";
  return std::abs(kilograms) < 1000 ? about(kilograms) + " kg" : about(kilograms / 1000) + " t";
}

std::string number_words(const Printed&, double number) { return estimate::in_words(number); }

std::string unit_words(const Printed& printed, double number, const std::string& unit) {
  if (unit == "m2") return "m²";
  if (unit == "m3") return "m³";
  const std::string counted = estimate::counted(number, unit);
  return printed.say(counted.substr(counted.find(' ') + 1));
}

std::string money_words(const Printed& printed, units::Money money) {
  return estimate::shown_money(money, printed.job().heading);
}

std::string date_words(const Printed& printed, const std::string& date) {
  static constexpr std::array months{"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                     "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};
  const bool whole = date.size() == 10 && date[4] == '-' && date[7] == '-';
  const auto month = whole ? units::read_number(date.substr(5, 2)) : std::nullopt;
  const auto day = whole ? units::read_number(date.substr(8, 2)) : std::nullopt;
  if (!month || !day || *month < 1 || *month > 12) return date;
  return units::write_number(*day) + " " + printed.say(months.at(static_cast<std::size_t>(*month) - 1)) + " " +
         date.substr(0, 4);
}

std::vector<std::string> tags(const Printed& printed, const std::vector<plan::ElementId>& of) {
  const std::set<plan::ElementId> wanted(of.begin(), of.end());
  std::vector<std::string> made;
  for (const plan::ElementPtr& element : printed.job().elements)
    if (wanted.contains(element->id)) made.push_back(element->id);
  return made;
}

}  // namespace sheets
