#include "ui/money/money_fields.h"

#include "takeoff/stage.h"
#include "ui/money/offer_making.h"
#include "ui/money/price_rows.h"
#include "ui/words/words.h"

namespace ui {

namespace {

constexpr std::array all_kinds{plan::CostKind::material, plan::CostKind::labour,      plan::CostKind::machine,
                               plan::CostKind::trucking, plan::CostKind::subcontract, plan::CostKind::allowance,
                               plan::CostKind::fee};

Field taxed(plan::CostKind kind) {
  Field field;
  field.id = "taxed/" + std::to_string(static_cast<int>(kind));
  field.label = kind_in_words(kind);
  field.editor = Editor::yes_no;
  field.step = Fields::tr("Change what is taxed");
  field.get = [kind](const plan::Job& job) -> Value {
    return std::ranges::find(job.offer.taxed, kind) != job.offer.taxed.end();
  };
  field.set = [kind](const plan::Job& job, const Value& value) {
    plan::Job after = job;
    std::erase(after.offer.taxed, kind);
    if (const bool* on = std::get_if<bool>(&value); on && *on) after.offer.taxed.push_back(kind);
    std::ranges::sort(after.offer.taxed);
    return after;
  };
  return field;
}

}  // namespace

std::vector<Choice> stage_choices(const QString& none) {
  std::vector<Choice> choices;
  if (!none.isEmpty()) choices.push_back({"", none});
  for (const takeoff::Stage stage : takeoff::all_stages)
    choices.push_back({takeoff::word(stage), said(takeoff::title(stage))});
  return choices;
}

std::vector<Choice> kind_choices() {
  std::vector<Choice> choices;
  for (const plan::CostKind kind : all_kinds) choices.push_back({std::to_string(choices.size()), kind_in_words(kind)});
  return choices;
}

std::vector<Field> price_fields(const plan::Job& job) {
  std::vector<Field> shares{
      as_percent(of_offer("overhead", Fields::tr("Overhead"), [](auto& offer) { return &offer.overhead; }), 0, 5),
      as_percent(of_offer("contingency", Fields::tr("Contingency"), [](auto& offer) { return &offer.contingency; }), 0,
                 5),
      as_percent(of_offer("profit", Fields::tr("Profit"), [](auto& offer) { return &offer.profit; }), 0, 5),
      as_words(of_offer("profit_as", Fields::tr("Profit is"), [](auto& offer) { return &offer.profit_as; }),
               {{"0", Fields::tr("a markup, of the cost")}, {"1", Fields::tr("a margin, of the price")}}),
      of_offer("chained", Fields::tr("Each on the sum before it"), [](auto& offer) { return &offer.chained; }),
      money_of_offer(job, "round_to", Fields::tr("Round up to"), [](auto& offer) { return &offer.round_to; })};
  std::vector<Field> tax{as_percent(of_offer("tax", Fields::tr("Tax"), [](auto& offer) { return &offer.tax; }), 0, 1)};
  for (const plan::CostKind kind : all_kinds) tax.push_back(taxed(kind));
  std::vector<Field> all = headed(Fields::tr("On top of the direct cost"), std::move(shares));
  add(all, headed(Fields::tr("Tax, and what is taxed"), std::move(tax)));
  return all;
}

std::vector<Field> hours_fields(const plan::Job& job) {
  std::vector<Field> all;
  for (std::size_t i = 0; i < job.offer.factors.size(); ++i) {
    const auto at = [i](auto& offer) { return entry(offer.factors, i); };
    std::vector<Field> one{of_offer(numbered("factor", i, "name"), Fields::tr("Condition"),
                                    [at](auto& offer) {
                                      auto* of = at(offer);
                                      return of ? &of->name : nullptr;
                                    }),
                           within(of_offer(numbered("factor", i, "factor"), Fields::tr("Hours times"),
                                           [at](auto& offer) {
                                             auto* of = at(offer);
                                             return of ? &of->factor : nullptr;
                                           }),
                                  0.1, 20),
                           as_words(of_offer(numbered("factor", i, "stage"), Fields::tr("In"),
                                             [at](auto& offer) {
                                               auto* of = at(offer);
                                               return of ? &of->stage : nullptr;
                                             }),
                                    stage_choices(Fields::tr("all stages"))),
                           of_offer(numbered("factor", i, "note"), Fields::tr("Why"),
                                    [at](auto& offer) {
                                      auto* of = at(offer);
                                      return of ? &of->note : nullptr;
                                    }),
                           take_out(numbered("factor", i, "out"), &plan::Offer::factors, i)};
    add(all, headed(Fields::tr("Condition %1").arg(i + 1), std::move(one)));
  }
  all.push_back(action("factor/add", Fields::tr("Add a condition on the hours"), [](plan::Offer& offer) {
    offer.factors.push_back({Fields::tr("Narrow way in").toStdString(), 1, {}, {}});
  }));
  return all;
}

std::vector<Field> added_fields(const plan::Job& job) {
  std::vector<Field> all;
  for (std::size_t i = 0; i < job.offer.lines.size(); ++i) {
    const auto at = [i](auto& offer) { return entry(offer.lines, i); };
    std::vector<Field> one{of_offer(numbered("added", i, "text"), Fields::tr("What"),
                                    [at](auto& offer) {
                                      auto* of = at(offer);
                                      return of ? &of->text : nullptr;
                                    }),
                           as_words(of_offer(numbered("added", i, "stage"), Fields::tr("Stage"),
                                             [at](auto& offer) {
                                               auto* of = at(offer);
                                               return of ? &of->stage : nullptr;
                                             }),
                                    stage_choices({})),
                           as_words(of_offer(numbered("added", i, "kind"), Fields::tr("Kind"),
                                             [at](auto& offer) {
                                               auto* of = at(offer);
                                               return of ? &of->kind : nullptr;
                                             }),
                                    kind_choices()),
                           within(of_offer(numbered("added", i, "quantity"), Fields::tr("How many"),
                                           [at](auto& offer) {
                                             auto* of = at(offer);
                                             return of ? &of->quantity : nullptr;
                                           }),
                                  0, 1e6),
                           of_offer(numbered("added", i, "unit"), Fields::tr("Unit"),
                                    [at](auto& offer) {
                                      auto* of = at(offer);
                                      return of ? &of->unit : nullptr;
                                    }),
                           money_of_offer(job, numbered("added", i, "price"), Fields::tr("Price of one"),
                                          [at](auto& offer) {
                                            auto* of = at(offer);
                                            return of ? &of->unit_price : nullptr;
                                          }),
                           of_offer(numbered("added", i, "nothing"), Fields::tr("Nothing, on purpose"),
                                    [at](auto& offer) {
                                      auto* of = at(offer);
                                      return of ? &of->nothing_on_purpose : nullptr;
                                    }),
                           take_out(numbered("added", i, "out"), &plan::Offer::lines, i)};
    add(all, headed(Fields::tr("Line %1").arg(i + 1), std::move(one)));
  }
  all.push_back(action("added/add", Fields::tr("Add a line"), [](plan::Offer& offer) {
    plan::AddedLine line;
    line.id = free_name(offer.lines, &plan::AddedLine::id, "line-");
    line.stage = takeoff::word(takeoff::Stage::protect);
    offer.lines.push_back(std::move(line));
  }));
  return all;
}

std::vector<Field> payment_fields(const plan::Job& job) {
  std::vector<Field> all = headed(
      Fields::tr("The quote"),
      {of_offer("date", Fields::tr("Date"), [](auto& offer) { return &offer.date; }),
       within(of_offer("valid_days", Fields::tr("Valid for days"), [](auto& offer) { return &offer.valid_days; }), 0,
              3650)});
  for (std::size_t i = 0; i < job.offer.payments.size(); ++i) {
    const auto at = [i](auto& offer) { return entry(offer.payments, i); };
    add(all, headed(Fields::tr("Payment %1").arg(i + 1),
                    {of_offer(numbered("payment", i, "name"), Fields::tr("What for"),
                              [at](auto& offer) {
                                auto* of = at(offer);
                                return of ? &of->name : nullptr;
                              }),
                     as_percent(of_offer(numbered("payment", i, "share"), Fields::tr("Share"),
                                         [at](auto& offer) {
                                           auto* of = at(offer);
                                           return of ? &of->share : nullptr;
                                         }),
                                0, 1),
                     as_words(of_offer(numbered("payment", i, "stage"), Fields::tr("Due with"),
                                       [at](auto& offer) {
                                         auto* of = at(offer);
                                         return of ? &of->stage : nullptr;
                                       }),
                              stage_choices(Fields::tr("signing"))),
                     take_out(numbered("payment", i, "out"), &plan::Offer::payments, i)}));
  }
  all.push_back(action("payment/add", Fields::tr("Add a payment"), [](plan::Offer& offer) {
    double open = 1;
    for (const plan::PaymentStep& step : offer.payments) open -= step.share;
    offer.payments.push_back({Fields::tr("On signing").toStdString(), std::max(0.0, open), {}});
  }));
  for (std::size_t i = 0; i < job.offer.unit_prices.size(); ++i) {
    const auto at = [i](auto& offer) { return entry(offer.unit_prices, i); };
    add(all, headed(Fields::tr("Unit price %1").arg(i + 1),
                    {of_offer(numbered("unit_price", i, "text"), Fields::tr("Of what is not seen"),
                              [at](auto& offer) {
                                auto* of = at(offer);
                                return of ? &of->text : nullptr;
                              }),
                     of_offer(numbered("unit_price", i, "unit"), Fields::tr("Unit"),
                              [at](auto& offer) {
                                auto* of = at(offer);
                                return of ? &of->unit : nullptr;
                              }),
                     within(of_offer(numbered("unit_price", i, "assumed"), Fields::tr("Counted on"),
                                     [at](auto& offer) {
                                       auto* of = at(offer);
                                       return of ? &of->assumed : nullptr;
                                     }),
                            0, 1e6),
                     money_of_offer(job, numbered("unit_price", i, "price"), Fields::tr("Price of one"),
                                    [at](auto& offer) {
                                      auto* of = at(offer);
                                      return of ? &of->price : nullptr;
                                    }),
                     take_out(numbered("unit_price", i, "out"), &plan::Offer::unit_prices, i)}));
  }
  all.push_back(action("unit_price/add", Fields::tr("Add a unit price"), [](plan::Offer& offer) {
    plan::UnitPrice price;
    price.code = free_name(offer.unit_prices, &plan::UnitPrice::code, "unit-");
    price.text = Fields::tr("Rock dug out").toStdString();
    price.unit = "cu yd";
    offer.unit_prices.push_back(std::move(price));
  }));
  return all;
}

std::vector<Field> words_fields(const plan::Job& job) {
  const auto long_text = [](Field field) {
    field.editor = Editor::long_text;
    return field;
  };
  std::vector<Field> all = headed(
      Fields::tr("Words of the quote"),
      {long_text(of_offer("basis", Fields::tr("Basis of the estimate"), [](auto& offer) { return &offer.basis; })),
       long_text(of_offer("terms", Fields::tr("Terms"), [](auto& offer) { return &offer.terms; })),
       long_text(of_offer("cancellation", Fields::tr("Cancellation notice"),
                          [](auto& offer) { return &offer.cancellation; }))});
  for (std::size_t i = 0; i < job.offer.statements.size(); ++i) {
    const auto at = [i](auto& offer) { return entry(offer.statements, i); };
    add(all, headed(Fields::tr("Statement %1").arg(i + 1),
                    {as_words(of_offer(numbered("statement", i, "what"), Fields::tr("It is"),
                                       [at](auto& offer) {
                                         auto* of = at(offer);
                                         return of ? &of->what : nullptr;
                                       }),
                              {{"0", Fields::tr("not in the price")}, {"1", Fields::tr("taken for granted")}}),
                     long_text(of_offer(numbered("statement", i, "text"), Fields::tr("Text"),
                                        [at](auto& offer) {
                                          auto* of = at(offer);
                                          return of ? &of->text : nullptr;
                                        })),
                     of_offer(numbered("statement", i, "struck"), Fields::tr("Struck out"),
                              [at](auto& offer) {
                                auto* of = at(offer);
                                return of ? &of->struck : nullptr;
                              }),
                     of_offer(numbered("statement", i, "why"), Fields::tr("Why"),
                              [at](auto& offer) {
                                auto* of = at(offer);
                                return of ? &of->why : nullptr;
                              }),
                     take_out(numbered("statement", i, "out"), &plan::Offer::statements, i)}));
  }
  all.push_back(action("statement/add", Fields::tr("Add a statement"), [](plan::Offer& offer) {
    plan::Statement own;
    own.code = free_name(offer.statements, &plan::Statement::code, "own-");
    offer.statements.push_back(std::move(own));
  }));
  return all;
}

}  // namespace ui
