// From structs to a tree of JSON values, by the tables of fields.h: fields in their order, those at the struct's
// default left out. Lengths are whole steps of 1/320 mm, money whole coins, other numbers in their shortest form.
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "catalogue/pattern.h"
#include "files/fields.h"
#include "files/json_write.h"
#include "plan/element.h"
#include "units/money.h"

namespace files {

inline Value to_json(const std::string& text) { return text_value(text); }
inline Value to_json(bool truth) { return truth_value(truth); }
inline Value to_json(int number) { return number_value(std::int64_t{number}); }
inline Value to_json(double number) { return number_value(number); }
inline Value to_json(units::Length length) { return number_value(length.steps()); }
inline Value to_json(units::Angle angle) { return number_value(angle.degrees()); }
inline Value to_json(units::Money money) { return number_value(money.coins()); }
Value to_json(geometry::Point point);
Value to_json(const catalogue::CellSide& side);
Value to_json(const plan::DrawnRing& ring);
Value to_json(const plan::DrawnLine& line);
Value to_json(const plan::Element& element);
Value to_json(const std::map<std::string, std::string>& words);

// The templates call each other for what stands inside, so all are declared first.
template <Worded T>
Value to_json(T value);
template <Tabled T>
Value to_json(const T& value);
template <class T>
Value to_json(const std::optional<T>& value);
template <class T>
Value to_json(const std::shared_ptr<const T>& value);
template <class T>
Value to_json(const std::vector<T>& list);
template <class T>
Value to_json(const std::map<std::string, T>& entries);

template <Worded T>
Value to_json(T value) {
  for (const auto& entry : words(Type<T>{})) {
    if (entry.value == value) return text_value(entry.word);
  }
  return null_value();  // no such value: -Wswitch can't see the table, the round trip of every word in the tests does
}

template <class T>
void add_fields(Value& object, const T& value) {
  const T otherwise{};
  const auto one = [&](const auto& field) {
    if (field.need == Need::optional && value.*field.member == otherwise.*field.member) return;
    add(object, field.name, to_json(value.*field.member));
  };
  std::apply([&](const auto&... field) { (one(field), ...); }, fields(Type<T>{}));
}

template <Tabled T>
Value to_json(const T& value) {
  Value object = object_value();
  add_fields(object, value);
  return object;
}

template <class T>
Value to_json(const std::optional<T>& value) {
  return value ? to_json(*value) : null_value();
}

template <class T>
Value to_json(const std::shared_ptr<const T>& value) {
  return to_json(*value);
}

template <class T>
Value to_json(const std::vector<T>& list) {
  Value value = list_value();
  for (const T& child : list) add(value, to_json(child));
  return value;
}

template <class T>
Value to_json(const std::map<std::string, T>& entries) {
  Value value = list_value();
  for (const auto& [id, entry] : entries) add(value, to_json(entry));
  return value;
}

}  // namespace files
