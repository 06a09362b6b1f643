// What is entered for a change order, as fields: the form's shape is the panels' own (panels/fields.h), the value is
// the order's. Made anew after each edit, since lists grow and shrink.
#pragma once

#include <map>

#include "estimate/kept_orders.h"
#include "ui/panels/fields.h"

namespace ui {

struct OrderField {
  Field shape;  // id, label, group, editor, choices, limits; its own `get` and `set` are of a job and stay empty
  std::function<Value(const estimate::ChangeInput&)> get;
  std::function<void(estimate::ChangeInput&, const Value&)> set;
};

// What the choices are made of.
struct OrderGround {
  const plan::Job& quote;
  const estimate::Comparison& comparison;
  const std::vector<estimate::KeptOrder>& orders;
  int before = 0;
  int after = 0;
};
std::vector<OrderField> order_fields(const estimate::ChangeInput& input, const OrderGround& ground);

// The field that a problem is about; empty: none of them.
std::string field_of(const problem::Problem& problem, const estimate::ChangeInput& input);

}  // namespace ui
