#include "ui/office/order_fields.h"

#include <algorithm>

#include "ui/money/offer_making.h"
#include "ui/office/order_making.h"

namespace ui {

namespace {

using estimate::ChangeInput;

Field as_long_text(Field field) {
  field.editor = Editor::long_text;
  return field;
}

std::vector<OrderField> of_the_order(const plan::Heading& heading) {
  const auto whole = [](Field field) { return within(std::move(field), -3650, 3650); };
  const auto dated = [](Field field) {
    field.otherwise = QStringLiteral("2026-11-28");
    return field;
  };
  const std::vector<Choice> reasons{{"0", OrderWords::tr("the owner's wish")},
                                    {"1", OrderWords::tr("hidden ground")},
                                    {"2", OrderWords::tr("the site")},
                                    {"3", OrderWords::tr("an error of ours")}};
  return {
      of_order("number", OrderWords::tr("Number"), [](auto& input) { return &input.number; }),
      shaped(of_order("reason", OrderWords::tr("Reason"), [](auto& input) { return &input.reason; }),
             [&](Field field) { return as_words(std::move(field), reasons); }),
      shaped(of_order("cause", OrderWords::tr("Why, in your words"), [](auto& input) { return &input.cause; }),
             as_long_text),
      of_order("asked_by", OrderWords::tr("Asked for by"), [](auto& input) { return &input.asked_by; }),
      shaped(of_order("date", OrderWords::tr("Date, as 2026-11-28"), [](auto& input) { return &input.date; }), dated),
      shaped(of_order("days", OrderWords::tr("Days more"), [](auto& input) { return &input.days; }), whole),
      of_order("days_cause", OrderWords::tr("What takes them"), [](auto& input) { return &input.days_cause; }),
      money_of_order("contract", OrderWords::tr("Contract as signed, with tax"), heading.decimals,
                     [](auto& input) { return &input.contract; })};
}

OrderField done(const Choice& stage) {
  OrderField field;
  field.shape.id = "done/" + stage.key;
  field.shape.label = stage.label;
  field.shape.editor = Editor::yes_no;
  field.get = [key = stage.key](const ChangeInput& input) -> Value {
    return std::ranges::find(input.done, key) != input.done.end();
  };
  field.set = [key = stage.key](ChangeInput& input, const Value& value) {
    std::erase(input.done, key);
    if (const bool* on = std::get_if<bool>(&value); on && *on) input.done.push_back(key);
  };
  return field;
}

}  // namespace

std::vector<OrderField> order_fields(const ChangeInput& input, const OrderGround& ground) {
  std::vector<OrderField> all;
  add_headed(all, OrderWords::tr("The order"), of_the_order(ground.quote.heading));
  std::vector<OrderField> finished;
  for (const Choice& stage : stage_choices({})) finished.push_back(done(stage));
  add_headed(all, OrderWords::tr("Stages that are done: no credit"), std::move(finished));
  add_lists(all, input, ground);
  return all;
}

std::string field_of(const problem::Problem& problem, const ChangeInput& input) {
  if (problem.code == "change-date") return "date";
  if (problem.code == "change-asked") return "asked_by";
  if (problem.code == "change-cause") return input.cause.empty() ? "cause" : "days_cause";
  return {};
}

}  // namespace ui
