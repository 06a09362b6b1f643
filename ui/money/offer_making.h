// How fields of the offer are made from a way to the member that they show; see panels/fields_making.h.
#pragma once

#include <set>

#include "ui/money/money_fields.h"
#include "ui/panels/fields_making.h"

namespace ui {

std::vector<Choice> stage_choices(const QString& none);  // `none` empty: a stage must be chosen
std::vector<Choice> kind_choices();

inline QString step_of(const QString& label) { return Fields::tr("Change %1").arg(label.toLower()); }

// `way` gives a pointer to the member; null where the list has no such entry now.
template <class Way>
Field of_offer(std::string id, const QString& label, Way way) {
  using Member = std::remove_pointer_t<decltype(way(std::declval<plan::Offer&>()))>;
  Field field;
  field.id = std::move(id);
  field.label = label;
  field.editor = editor_of<Member>();
  field.by_order = std::is_enum_v<Member>;
  field.step = step_of(label);
  field.get = [way](const plan::Job& job) -> Value {
    const auto* member = way(job.offer);
    return member ? value_of(*member) : Value{};
  };
  field.set = [way](const plan::Job& job, const Value& value) {
    plan::Job after = job;
    if (auto* member = way(after.offer)) take(*member, value);
    return after;
  };
  return field;
}

template <class Way>
Field money_of_offer(const plan::Job& job, std::string id, const QString& label, Way way) {
  Field field;
  field.id = std::move(id);
  field.label = label;
  field.editor = Editor::money;
  field.decimals = job.heading.decimals;
  field.step = step_of(label);
  field.get = [way](const plan::Job& of) -> Value {
    const units::Money* money = way(of.offer);
    return money ? Value(money->coins()) : Value{};
  };
  field.set = [way](const plan::Job& of, const Value& value) {
    plan::Job after = of;
    units::Money* money = way(after.offer);
    const auto* coins = std::get_if<std::int64_t>(&value);
    if (money && coins) *money = units::Money::of_coins(*coins);
    return after;
  };
  return field;
}

// The entry of a list, null past its end; works for the list itself and for a constant one.
template <class List>
auto* entry(List& list, std::size_t i) {
  return i < list.size() ? &list[i] : nullptr;
}

inline Field action(std::string id, const QString& label, std::function<void(plan::Offer&)> change) {
  Field field;
  field.id = std::move(id);
  field.label = label;
  field.editor = Editor::action;
  field.step = label;
  field.get = [](const plan::Job&) -> Value { return {}; };
  field.set = [change = std::move(change)](const plan::Job& job, const Value&) {
    plan::Job after = job;
    change(after.offer);
    return after;
  };
  return field;
}

template <class List>
Field take_out(std::string id, List plan::Offer::* list, std::size_t i) {
  return action(std::move(id), Fields::tr("Take it out"), [list, i](plan::Offer& offer) {
    if (i < (offer.*list).size()) (offer.*list).erase((offer.*list).begin() + static_cast<std::ptrdiff_t>(i));
  });
}

// "prefix-1", "prefix-2" ...: the first that no entry has.
template <class List, class Id>
std::string free_name(const List& list, Id id, const std::string& prefix) {
  std::set<std::string> used;
  for (const auto& one : list) used.insert(one.*id);
  int number = 1;
  while (used.contains(prefix + std::to_string(number))) ++number;
  return prefix + std::to_string(number);
}

inline std::string numbered(const char* list, std::size_t i, const char* field) {
  return std::string(list) + "/" + std::to_string(i) + "/" + field;
}

}  // namespace ui
