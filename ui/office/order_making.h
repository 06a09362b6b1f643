// How fields of a change order are made from a way to the member that they show, null where the list has no such entry
// now; see panels/fields_making.h.
#pragma once

#include "ui/office/order_fields.h"
#include "ui/panels/fields_making.h"

namespace ui {

class OrderWords {
  Q_DECLARE_TR_FUNCTIONS(OrderWords)
};

// The fields of the order's lists, with what adds to them and takes out of them.
void add_lists(std::vector<OrderField>& all, const estimate::ChangeInput& input, const OrderGround& ground);

template <class Way>
OrderField of_order(std::string id, const QString& label, Way way) {
  using Member = std::remove_pointer_t<decltype(way(std::declval<estimate::ChangeInput&>()))>;
  OrderField field;
  field.shape.id = std::move(id);
  field.shape.label = label;
  field.shape.editor = editor_of<Member>();
  field.shape.by_order = std::is_enum_v<Member>;
  field.get = [way](const estimate::ChangeInput& input) -> Value {
    const auto* member = way(input);
    return member ? value_of(*member) : Value{};
  };
  field.set = [way](estimate::ChangeInput& input, const Value& value) {
    if (auto* member = way(input)) take(*member, value);
  };
  return field;
}

// The way gives a sum of money.
template <class Way>
OrderField money_of_order(std::string id, const QString& label, int decimals, Way way) {
  OrderField field;
  field.shape.id = std::move(id);
  field.shape.label = label;
  field.shape.editor = Editor::money;
  field.shape.decimals = decimals;
  field.get = [way](const estimate::ChangeInput& input) -> Value {
    const units::Money* money = way(input);
    return money ? Value(money->coins()) : Value{};
  };
  field.set = [way](estimate::ChangeInput& input, const Value& value) {
    units::Money* money = way(input);
    const auto* coins = std::get_if<std::int64_t>(&value);
    if (money && coins) *money = units::Money::of_coins(*coins);
  };
  return field;
}

inline OrderField order_action(std::string id, const QString& label,
                               std::function<void(estimate::ChangeInput&)> change) {
  OrderField field;
  field.shape.id = std::move(id);
  field.shape.label = label;
  field.shape.editor = Editor::action;
  field.get = [](const estimate::ChangeInput&) -> Value { return {}; };
  field.set = [change = std::move(change)](estimate::ChangeInput& input, const Value&) { change(input); };
  return field;
}

// The entry of a list, null past its end; works for the list itself and for a constant one.
template <class List>
auto* entry_of(List& list, std::size_t i) {
  return i < list.size() ? &list[i] : nullptr;
}

// Gives a way to a member of the i-th entry of a list.
template <class List, class Member>
auto of_entry(List estimate::ChangeInput::* list, std::size_t i, Member member) {
  return [=](auto& input) {
    auto* entry = entry_of(input.*list, i);
    return entry ? &(entry->*member) : nullptr;
  };
}

template <class List>
OrderField out_of(List estimate::ChangeInput::* list, std::size_t i, std::string id) {
  return order_action(std::move(id), Fields::tr("Take it out"), [list, i](estimate::ChangeInput& input) {
    if (i < (input.*list).size()) (input.*list).erase((input.*list).begin() + static_cast<std::ptrdiff_t>(i));
  });
}

inline OrderField shaped(OrderField field, const std::function<Field(Field)>& shape) {
  field.shape = shape(std::move(field.shape));
  return field;
}

inline void add_headed(std::vector<OrderField>& to, const QString& heading, std::vector<OrderField> fields) {
  if (!fields.empty()) fields.front().shape.group = heading;
  for (OrderField& field : fields) to.push_back(std::move(field));
}

}  // namespace ui
