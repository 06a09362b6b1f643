#include "ui/panels/panel_words.h"

#include "estimate/words.h"
#include "units/number.h"

namespace ui {

namespace {

QString without_zeros(std::string text) {
  if (text.find('.') != std::string::npos) {
    while (text.ends_with('0')) text.pop_back();
    if (text.ends_with('.')) text.pop_back();
  }
  return QString::fromStdString(text);
}

}  // namespace

QString own_name(const catalogue::Words& name, const catalogue::Id& otherwise) {
  const bool spanish = language() == QLatin1String("es") && !name.es.empty();
  const std::string& own = spanish ? name.es : name.en;
  return QString::fromStdString(own.empty() ? otherwise : own);
}

QString shown_money(units::Money amount, const plan::Heading& heading) {
  const bool below = amount < units::Money();
  std::string text = units::write_money(below ? -amount : amount, heading.decimals);
  const std::size_t dot = text.find('.');
  for (std::size_t at = dot == std::string::npos ? text.size() : dot; at > 3; at -= 3) text.insert(at - 3, ",");
  const QString minus = below ? QStringLiteral("−") : QString();
  const QString figure = QString::fromStdString(text);
  if (heading.currency == "USD") return minus + QLatin1Char('$') + figure;
  return minus + figure + QLatin1Char(' ') + QString::fromStdString(heading.currency);
}

QString shown_number(double number) {
  const QString text = without_zeros(units::show_grouped(number, 2));
  return text == QLatin1String("0") && number != 0 ? QString::fromStdString(estimate::in_words(number)) : text;
}

QString shown_count(double number, const std::string& unit) {
  const std::string words = estimate::counted(number, unit.empty() ? "piece" : unit);
  return shown_number(number) + QLatin1Char(' ') + said(words.substr(words.find(' ') + 1));
}

QString shown_hours(double hours) { return without_zeros(units::show_grouped(hours, 1)) + QStringLiteral(" h"); }

}  // namespace ui
