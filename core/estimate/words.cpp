#include "estimate/words.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "units/number.h"

namespace estimate {

std::string in_words(double number) {
  int decimals = 2;
  while (decimals < 9 && number != 0 && std::abs(number) < 0.5 * std::pow(10.0, -decimals)) ++decimals;
  std::string text = units::show_grouped(number, decimals);
  while (text.ends_with('0')) text.pop_back();
  if (text.ends_with('.')) text.pop_back();
  return text;
}

std::string counted(double number, std::string_view unit) {
  constexpr std::array<std::string_view, 13> measures{"cu yd", "sq ft", "cu ft", "sq yd", "ft", "m", "m2",
                                                      "m3",    "kg",    "t",     "lb",    "h",  "l"};
  std::string text = in_words(number) + " " + std::string(unit);
  if (number == 1 || std::ranges::find(measures, unit) != measures.end()) return text;
  return text + (unit.ends_with('x') || unit.ends_with("ch") ? "es" : "s");
}

std::string percent(double share) { return in_words(share * 100) + " %"; }

std::string name_of(const catalogue::Catalogue& catalogue, const catalogue::Id& item) {
  const catalogue::Item* found = catalogue.item(item);
  return found && !found->name.en.empty() ? found->name.en : item;
}

std::string with_short_tons(std::string text) {
  constexpr std::string_view ton = " ton";
  for (std::size_t at = text.find(ton); at != std::string::npos; at = text.find(ton, at + 10)) {
    const std::size_t end = at + ton.size();
    if (end == text.size() || text[end] == 's' || text[end] == ':' || text[end] == ' ' || text[end] == ',')
      text.insert(at, " short");
  }
  return text;
}

std::string joined(const std::vector<std::string>& parts, std::string_view between) {
  std::string text;
  for (const std::string& part : parts) text += (text.empty() ? "" : std::string(between)) + part;
  return text;
}

}  // namespace estimate
