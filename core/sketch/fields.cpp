#include "sketch/fields.h"

#include <algorithm>
#include <cmath>

#include "sketch/words.h"
#include "units/number.h"

namespace sketch {

using units::Length;

namespace field {
FieldKind length() { return {"length", words::f_length, Reads::length}; }
FieldKind direction() { return {"angle", words::f_direction, Reads::angle}; }
FieldKind sweep() { return {"angle", words::f_sweep, Reads::angle}; }
FieldKind turn() { return {"angle", words::f_turn, Reads::angle}; }
FieldKind x() { return {"x", words::f_east, Reads::length}; }
FieldKind y() { return {"y", words::f_north, Reads::length}; }
FieldKind radius() { return {"radius", words::f_radius, Reads::length}; }
FieldKind width() { return {"width", words::f_width, Reads::length}; }
FieldKind diameter() { return {"width", words::f_diameter, Reads::length}; }
FieldKind depth() { return {"depth", words::f_depth, Reads::length}; }
FieldKind up() { return {"angle", words::f_up, Reads::angle}; }
FieldKind rise() { return {"rise", words::f_rise, Reads::length}; }
FieldKind opacity() { return {"opacity", words::f_opacity, Reads::number}; }
FieldKind height() { return {"height", words::f_height, Reads::length}; }
FieldKind text() { return {"text", words::f_text, Reads::words}; }
}  // namespace field

namespace {

constexpr double most_degrees = 360;

bool ends_with_taken(std::string& text, const std::string& ending) {
  if (!text.ends_with(ending)) return false;
  text.resize(text.size() - ending.size());
  return true;
}

std::string trimmed(std::string text) {
  const auto blank = [](char letter) { return letter == ' ' || letter == '\t'; };
  text.erase(text.begin(), std::ranges::find_if_not(text, blank));
  while (!text.empty() && blank(text.back())) text.pop_back();
  return text;
}

std::optional<double> read_degrees(std::string text) {
  text = trimmed(std::move(text));
  if (ends_with_taken(text, "°") || ends_with_taken(text, "degrees") || ends_with_taken(text, "deg"))
    text = trimmed(std::move(text));
  const auto number = units::read_number(text);
  if (!number || std::abs(*number) > most_degrees) return {};
  return number;
}

}  // namespace

units::Bare bare(units::System system) {
  return system == units::System::us ? units::Bare::feet_and_inches : units::Bare::metres;
}

std::string show_angle(double degrees) {
  return units::write_number(units::read_number(units::show_number(degrees, 1)).value_or(degrees)) + "°";
}

Fields::Fields(std::vector<FieldKind> kinds) { become(std::move(kinds)); }

void Fields::become(std::vector<FieldKind> kinds) {
  std::vector<Field> fields;
  std::vector<Value> values;
  for (FieldKind& kind : kinds) {
    const auto old = find(kind.id);
    const bool stays = old && values_[*old].reads == kind.reads;
    fields.push_back(stays ? fields_[*old] : Field{});
    values.push_back(stays ? values_[*old] : Value{});
    fields.back().id = std::move(kind.id);
    fields.back().label = std::move(kind.label);
    values.back().reads = kind.reads;
  }
  fields_ = std::move(fields);
  values_ = std::move(values);
}

std::optional<std::size_t> Fields::find(const std::string& id) const {
  const auto found = std::ranges::find(fields_, id, &Field::id);
  if (found == fields_.end()) return {};
  return static_cast<std::size_t>(found - fields_.begin());
}

void Fields::clear() {
  for (std::size_t i = 0; i < fields_.size(); ++i) clear(fields_[i].id);
}

void Fields::clear(const std::string& id) {
  const auto i = find(id);
  if (!i) return;
  fields_[*i] = {fields_[*i].id, fields_[*i].label, {}, {}, false, false};
  values_[*i] = {values_[*i].reads, false, {}, {}};
}

bool Fields::take(const Typed& typed, units::System system) {
  const auto i = find(typed.field);
  if (!i) return false;
  clear(typed.field);
  if (trimmed(typed.text).empty()) return true;
  fields_[*i].text = typed.text;
  values_[*i].typed = true;
  read(*i, system);
  fields_[*i].locked = typed.locked && !fields_[*i].wrong;
  return true;
}

void Fields::read(std::size_t i, units::System system) {
  Field& field = fields_[i];
  Value& value = values_[i];
  switch (value.reads) {
    case Reads::words: return;
    case Reads::length: {
      const auto length = units::read_length(field.text, bare(system));
      field.wrong = !length;
      field.understood =
          length ? units::show_length(*length, system) : length.error().text + "; " + length.error().mend;
      if (length) value.length = *length;
      return;
    }
    case Reads::angle:
      value.number = read_degrees(field.text);
      field.wrong = !value.number;
      field.understood = value.number ? show_angle(*value.number) : words::angle_refused;
      return;
    case Reads::number:
      value.number = units::read_number(trimmed(field.text));
      field.wrong = !value.number;
      field.understood = value.number ? units::write_number(*value.number) : words::number_refused;
      return;
  }
}

std::optional<Length> Fields::length(const std::string& id) const {
  const auto i = find(id);
  return i && values_[*i].typed ? values_[*i].length : std::nullopt;
}

std::optional<double> Fields::number(const std::string& id) const {
  const auto i = find(id);
  return i && values_[*i].typed ? values_[*i].number : std::nullopt;
}

std::string Fields::words(const std::string& id) const {
  const auto i = find(id);
  return i && values_[*i].typed ? fields_[*i].text : std::string();
}

bool Fields::has(const std::string& id) const {
  const auto i = find(id);
  return i && values_[*i].typed && !fields_[*i].wrong;
}

bool Fields::locked(const std::string& id) const {
  const auto i = find(id);
  return i && fields_[*i].locked;
}

bool Fields::typed() const {
  return std::ranges::any_of(fields_, [this](const Field& field) { return has(field.id); });
}

const std::string* Fields::wrong() const {
  const auto found = std::ranges::find(fields_, true, &Field::wrong);
  return found == fields_.end() ? nullptr : &found->understood;
}

void Fields::point(const std::string& id, Length value, units::System system) {
  const auto i = find(id);
  if (i && !values_[*i].typed) fields_[*i].text = units::show_length(value, system);
}

void Fields::point(const std::string& id, double value) {
  const auto i = find(id);
  if (!i || values_[*i].typed) return;
  fields_[*i].text = values_[*i].reads == Reads::angle ? show_angle(value) : units::write_number(value);
}

}  // namespace sketch
