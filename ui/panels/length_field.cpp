#include "ui/panels/length_field.h"

#include <QRegularExpression>
#include <array>
#include <cmath>
#include <string_view>

#include "ui/panels/panel_words.h"
#include "ui/words/words.h"
#include "units/number.h"

namespace ui {

namespace {

constexpr std::int64_t most_typed_coins = 1'000'000'000;  // as a file reads them

using units::Length;
using units::System;

units::Bare bare(System system, Measure measure) {
  if (system == System::metric) return measure == Measure::part ? units::Bare::millimetres : units::Bare::metres;
  return measure == Measure::part ? units::Bare::inches : units::Bare::feet;
}

QString with_primes(std::string text) {
  QString shown = QString::fromStdString(text);
  return shown.replace(QLatin1Char('\''), QChar(0x2032)).replace(QLatin1Char('"'), QChar(0x2033));
}

QString told(const problem::Problem& problem) {
  const QString text = said(problem.text);
  const QString whole = text.left(1).toUpper() + text.mid(1);
  return problem.mend.empty() ? whole : whole + QStringLiteral(": ") + said(problem.mend);
}

QString decimal_height(Length height, System system) {
  const double metres = height.metres().si();
  if (system == System::metric) return QString::fromStdString(units::show_number(metres, 3)) + QStringLiteral(" m");
  return QString::fromStdString(units::show_number(metres / units::metres_per_foot, 2)) + QStringLiteral(" ft");
}

// A field with what one of its figures is worth: a per cent is 0.01 of a share, a square foot so many square metres.
struct Figure {
  Field field;
  System system;
  double worth() const {
    if (field.editor == Editor::percent) return 0.01;
    return field.editor == Editor::area && system == System::us ? units::square_metres_per_square_foot : 1;
  }
};

QString suffix(const Figure& figure) {
  const Field& field = figure.field;
  if (field.editor == Editor::percent) return QStringLiteral(" %");
  if (field.editor == Editor::area) return figure.system == System::us ? QStringLiteral(" ft²") : QStringLiteral(" m²");
  return field.editor == Editor::degrees ? QStringLiteral("°") : QString();
}

QString number_text(const Figure& figure, const Value& value) {
  if (const auto* whole = std::get_if<std::int64_t>(&value)) return QString::number(*whole);
  const auto* number = std::get_if<double>(&value);
  if (!number) return {};
  // Ten digits: 0.021 over 0.01 is 2.1 to whoever reads it.
  return QString::number(*number / figure.worth(), 'g', 10) + suffix(figure);
}

std::expected<Value, QString> read_figure(const Figure& figure, QString text) {
  const Field& field = figure.field;
  text = text.trimmed();
  const QString unit = suffix(figure).trimmed();
  if (!unit.isEmpty() && text.endsWith(unit)) text.chop(unit.size());
  const auto number = units::read_number(text.trimmed().toStdString());
  if (!number) return std::unexpected(Fields::tr("This is no number: write it with figures, and a dot for decimals"));
  if (field.editor == Editor::whole && *number != std::floor(*number))
    return std::unexpected(Fields::tr("Only whole numbers can stand here"));
  const double value = figure.worth() == 0.01 ? *number / 100 : *number * figure.worth();
  if (value < field.least || value > field.greatest)
    return std::unexpected(Fields::tr("It must lie between %1 and %2")
                               .arg(field.least / figure.worth())
                               .arg(field.greatest / figure.worth()));
  if (field.editor == Editor::whole) return Value(static_cast<std::int64_t>(*number));
  return Value(value);
}

}  // namespace

QString shown_length(Length length, System system, Measure measure) {
  if (measure == Measure::height) return decimal_height(length, system);
  return with_primes(units::show_length(length, system));
}

QString full_length(Length length, System system, Measure measure) {
  if (measure == Measure::height) {
    const QString decimal = decimal_height(length, system);
    const auto back = units::read_length(decimal.toStdString(), units::Bare::feet);
    if (back && *back == length) return decimal;
  }
  return with_primes(units::write_length(length, system));
}

Typing length_typing(System system, Measure measure, bool may_be_empty, bool never_below_0) {
  const auto of = [](const Value& value) { return std::get_if<Length>(&value); };
  Typing typing;
  typing.may_be_empty = may_be_empty;
  typing.read = [=](const QString& text) -> std::expected<Value, QString> {
    const auto length = units::read_length(text.toStdString(), bare(system, measure));
    if (!length) return std::unexpected(told(length.error()));
    if (never_below_0 && *length < Length()) return std::unexpected(Fields::tr("This can’t be below 0"));
    return Value(*length);
  };
  typing.show = [=](const Value& value) { return of(value) ? shown_length(*of(value), system, measure) : QString(); };
  typing.full = [=](const Value& value) { return of(value) ? full_length(*of(value), system, measure) : QString(); };
  typing.step = [=](const Value& value, int steps) -> Value {
    const Length one = system == System::us ? Length::inch_64ths(4) : Length::millimetres(1);
    const Length stepped = (of(value) ? *of(value) : Length()) + one * steps;
    return never_below_0 && stepped < Length() ? Length() : stepped;
  };
  return typing;
}

Typing number_typing(const Field& field, System system) {
  const Figure figure{field, system};
  Typing typing;
  typing.may_be_empty = field.may_be_empty;
  typing.read = [figure](const QString& text) { return read_figure(figure, text); };
  typing.show = [figure](const Value& value) { return number_text(figure, value); };
  typing.full = typing.show;
  typing.step = [field](const Value& value, int steps) -> Value {
    if (field.editor == Editor::whole) {
      const auto* whole = std::get_if<std::int64_t>(&value);
      const double stepped = static_cast<double>((whole ? *whole : 0) + steps);
      return static_cast<std::int64_t>(std::clamp(stepped, field.least, field.greatest));
    }
    const auto* number = std::get_if<double>(&value);
    const double one = field.editor == Editor::percent ? 0.001 : field.editor == Editor::degrees ? 1 : 0.1;
    // On the tenth, degree or tenth of a per cent, so that steps don't gather dust.
    const double stepped = std::round(((number ? *number : 0) + one * steps) / one) * one;
    return std::clamp(stepped, field.least, field.greatest);
  };
  return typing;
}

Typing text_typing() {
  Typing typing;
  typing.may_be_empty = false;
  typing.read = [](const QString& text) -> std::expected<Value, QString> {
    return Value(text.trimmed().toStdString());
  };
  typing.show = [](const Value& value) {
    const auto* text = std::get_if<std::string>(&value);
    return text ? QString::fromStdString(*text) : QString();
  };
  typing.full = typing.show;
  return typing;
}

namespace {

// Commas stand between thousands or not at all: 12,50 is no amount, lest it be read as 1,250.
std::expected<Value, QString> read_coins(const QString& text, int decimals) {
  static const QRegularExpression grouped(QStringLiteral("^[^0-9.,-]*([0-9]{1,3}(,[0-9]{3})+|[0-9]+)(\\.[0-9]*)?$"));
  const QString trimmed = text.trimmed();
  if (!grouped.match(trimmed).hasMatch())
    return std::unexpected(Fields::tr("This takes an amount of money, such as 12.50"));
  QString bare;
  for (const QChar letter : trimmed)
    if (letter.isDigit() || letter == QLatin1Char('.')) bare += letter;
  if (bare.endsWith(QLatin1Char('.'))) bare.chop(1);
  const auto money = units::read_money(bare.toStdString(), decimals);
  if (!money || money->coins() > most_typed_coins)
    return std::unexpected(Fields::tr("This takes an amount with at most %1 decimals, up to 10 million").arg(decimals));
  return Value(money->coins());
}

}  // namespace

Typing money_typing(int decimals, bool may_be_empty) {
  Typing typing;
  typing.may_be_empty = may_be_empty;
  typing.read = [decimals](const QString& text) { return read_coins(text, decimals); };
  typing.show = [decimals](const Value& value) {
    const auto* coins = std::get_if<std::int64_t>(&value);
    return coins ? QString::fromStdString(units::write_money(units::Money::of_coins(*coins), decimals)) : QString();
  };
  typing.full = typing.show;
  return typing;
}

Measure measure_of(const std::string& field_id) {
  using Names = std::array<std::string_view, 12>;
  constexpr Names heights{"finish/height", "finish/height_end", "floor",        "sill", "weep", "siding", "vent",
                          "start",         "outlet_ground",     "coping/level", "top",  "level"};
  const std::string_view id = field_id;
  const std::string_view last = id.substr(id.rfind('/') == std::string_view::npos ? 0 : id.rfind('/') + 1);
  if (std::ranges::find(heights, id) != heights.end()) return Measure::height;
  const bool listed = id.find("/from/") != std::string_view::npos || id.find("heights/") != std::string_view::npos ||
                      id.starts_with("top/") || id.starts_with("ground/") || id.starts_with("ground_behind/");
  if (listed && last.starts_with("height")) return Measure::height;
  if (last == "x" || last == "y" || last == "at" || last == "height") return Measure::distance;
  return Measure::part;
}

Typing typing_of(const Field& field, System system) {
  if (field.editor == Editor::length)
    return length_typing(system, measure_of(field.id), field.may_be_empty, field.never_below_0);
  if (field.editor == Editor::text) return text_typing();
  if (field.editor == Editor::money) return money_typing(field.decimals, field.may_be_empty);
  return number_typing(field, system);
}

}  // namespace ui
