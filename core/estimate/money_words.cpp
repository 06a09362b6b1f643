#include "estimate/money_words.h"

#include <algorithm>

#include "units/number.h"

namespace estimate {

std::string shown_money(units::Money money, const plan::Heading& heading) {
  const std::string plain = units::write_money(money, heading.decimals);
  const std::size_t from = plain.starts_with('-') ? 1 : 0;
  const std::size_t dot = std::min(plain.find('.'), plain.size());
  std::string text;
  for (std::size_t i = 0; i < plain.size(); ++i) {
    if (i > from && i < dot && (dot - i) % 3 == 0) text += ',';
    text += plain[i];
  }
  if (!heading.currency.empty()) text.append(" ").append(heading.currency);
  return text;
}

std::string exact_percent(double share) {
  std::string text = units::show_number(share * 100, 9);  // past 9 digits is dust of the reckoning
  while (text.ends_with('0')) text.pop_back();
  if (text.ends_with('.')) text.pop_back();
  return text + " %";
}

}  // namespace estimate
