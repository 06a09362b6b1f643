// How descriptors of fields are made from a way to the member that they show. A way is a generic function from an
// element's kind to a pointer to the member, null where the element has no such part now:
//   made<plan::Pool>(id, "shell", Fields::tr("Shell"), [](auto& pool) { return &pool.shell; })
// The editor follows from the member's type; what is not usual is set on the field that comes back.
#pragma once

#include <type_traits>

#include "ui/panels/fields.h"

namespace ui {

template <class T>
struct IsOptional : std::false_type {};
template <class T>
struct IsOptional<std::optional<T>> : std::true_type {};

template <class T>
Value value_of(const T& member) {
  if constexpr (IsOptional<T>::value)
    return member ? value_of(*member) : Value{};
  else if constexpr (std::is_same_v<T, units::Angle>)
    return member.degrees();
  else if constexpr (std::is_same_v<T, bool> || std::is_same_v<T, double> || std::is_same_v<T, units::Length> ||
                     std::is_same_v<T, std::string>)
    return member;
  else
    return static_cast<std::int64_t>(member);  // whole numbers, and words by their order
}

// What does not fit the member changes nothing.
template <class T>
void take(T& member, const Value& value) {
  if constexpr (IsOptional<T>::value) {
    if (std::holds_alternative<std::monostate>(value)) return member.reset();
    typename T::value_type inner{};
    take(inner, value);
    member = inner;
  } else if constexpr (std::is_same_v<T, units::Angle>) {
    if (const auto* degrees = std::get_if<double>(&value)) member = units::Angle::degrees(*degrees);
  } else if constexpr (std::is_same_v<T, std::string>) {
    if (std::holds_alternative<std::monostate>(value)) member.clear();
    if (const auto* text = std::get_if<std::string>(&value)) member = *text;
  } else if constexpr (std::is_same_v<T, bool> || std::is_same_v<T, double> || std::is_same_v<T, units::Length>) {
    if (const auto* same = std::get_if<T>(&value)) member = *same;
  } else if (const auto* whole = std::get_if<std::int64_t>(&value)) {
    member = static_cast<T>(*whole);
  }
}

template <class T>
constexpr Editor editor_of() {
  if constexpr (IsOptional<T>::value)
    return editor_of<typename T::value_type>();
  else if constexpr (std::is_same_v<T, units::Length>)
    return Editor::length;
  else if constexpr (std::is_same_v<T, bool>)
    return Editor::yes_no;
  else if constexpr (std::is_same_v<T, double>)
    return Editor::number;
  else if constexpr (std::is_same_v<T, units::Angle>)
    return Editor::degrees;
  else if constexpr (std::is_same_v<T, std::string>)
    return Editor::text;
  else if constexpr (std::is_enum_v<T>)
    return Editor::words;
  else
    return Editor::whole;
}

// `change` gives the kind as it shall be; nothing happens where the element is gone or of another kind.
template <class Kind>
plan::Job changed(const plan::Job& job, const plan::ElementId& id, const std::function<void(Kind&)>& change) {
  const plan::Element* now = job.find(id);
  if (!now || !std::holds_alternative<Kind>(now->kind)) return job;
  plan::Element after = *now;
  change(std::get<Kind>(after.kind));
  return plan::with(job, std::move(after));
}

QString step_name(const QString& label, const plan::ElementId& id);  // "Change overhang of P1"

template <class Kind, class Way>
Field made(const plan::ElementId& id, std::string name, const QString& label, Way way) {
  using Member = std::remove_pointer_t<decltype(way(std::declval<Kind&>()))>;
  Field field;
  field.id = std::move(name);
  field.label = label;
  field.editor = editor_of<Member>();
  field.may_be_empty = IsOptional<Member>::value;
  field.by_order = std::is_enum_v<Member>;
  field.step = step_name(label, id);
  field.get = [id, way](const plan::Job& job) -> Value {
    const plan::Element* element = job.find(id);
    const Kind* kind = element ? std::get_if<Kind>(&element->kind) : nullptr;
    if (!kind) return {};
    const auto* member = way(*kind);
    return member ? value_of(*member) : Value{};
  };
  field.set = [id, way](const plan::Job& job, const Value& value) {
    return changed<Kind>(job, id, [&](Kind& kind) {
      if (auto* member = way(kind)) take(*member, value);
    });
  };
  return field;
}

// Whether a part is there: `fresh` is what it starts with.
template <class Kind, class Way, class Part>
Field part(const plan::ElementId& id, std::string name, const QString& label, Way way, Part fresh) {
  Field field;
  field.id = std::move(name);
  field.label = label;
  field.editor = Editor::yes_no;
  field.step = step_name(label, id);
  field.get = [id, way](const plan::Job& job) -> Value {
    const plan::Element* element = job.find(id);
    const Kind* kind = element ? std::get_if<Kind>(&element->kind) : nullptr;
    return kind && way(*kind)->has_value();
  };
  field.set = [id, way, fresh](const plan::Job& job, const Value& value) {
    const bool* there = std::get_if<bool>(&value);
    return changed<Kind>(job, id, [&](Kind& kind) {
      auto& member = *way(kind);
      if (!there || *there == member.has_value()) return;
      if (*there)
        member = fresh;
      else
        member.reset();
    });
  };
  return field;
}

template <class Kind>
Field action(const plan::ElementId& id, std::string name, const QString& label, const QString& step,
             std::function<void(Kind&)> change) {
  Field field;
  field.id = std::move(name);
  field.label = label;
  field.editor = Editor::action;
  field.step = step;
  field.get = [](const plan::Job&) -> Value { return {}; };
  field.set = [id, change](const plan::Job& job, const Value&) { return changed<Kind>(job, id, change); };
  return field;
}

// What is added to a field that was made.
inline Field as_item(Field field, std::vector<std::string> kinds) {
  field.editor = Editor::item;
  field.fits = std::move(kinds);
  return field;
}
inline Field as_build_up(Field field, std::string use) {
  field.editor = Editor::build_up;
  field.fits = {std::move(use)};
  field.may_be_empty = true;
  return field;
}
inline Field as_words(Field field, std::vector<Choice> choices) {
  field.editor = Editor::words;
  field.choices = std::move(choices);
  return field;
}
inline Field as_percent(Field field, double least = 0, double greatest = 1) {
  field.editor = Editor::percent;
  field.least = least;
  field.greatest = greatest;
  return field;
}
inline Field as_area(Field field) {
  field.editor = Editor::area;
  field.least = 0;
  field.greatest = 1e7;
  return field;
}
inline Field within(Field field, double least, double greatest) {
  field.least = least;
  field.greatest = greatest;
  return field;
}
inline Field or_none(Field field) {
  field.may_be_empty = true;
  return field;
}
inline Field not_below_0(Field field) {
  field.never_below_0 = true;
  return field;
}
// The fields with a heading above the first of them.
std::vector<Field> headed(const QString& heading, std::vector<Field> fields);
void add(std::vector<Field>& to, std::vector<Field> more);

}  // namespace ui
