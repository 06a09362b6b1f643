#include <algorithm>
#include <cmath>

#include "estimate/money_words.h"
#include "results/options.h"
#include "sheets/quote_parts.h"
#include "sheets/source.h"
#include "units/number.h"

namespace sheets {

namespace {

using takeoff::Stage;
using units::Money;

// What each stage comes to of the price before tax.
struct Parts {
  std::vector<Stage> stages;
  std::vector<Money> prices;
};
Parts by_stage(const Printed& printed) {
  Parts parts;
  std::vector<Money> weights;
  for (const auto& [stage, sum] : printed.results->estimate.stages) {
    if (sum.amount() == Money()) continue;
    parts.stages.push_back(stage);
    weights.push_back(sum.amount());
  }
  parts.prices = shared(printed.results->priced.price, weights);
  return parts;
}

std::vector<Money> by_line(const Printed& printed) {
  std::vector<Money> weights;
  for (const estimate::OrderLine& line : printed.results->estimate.lines)
    weights.push_back(line.amount.value_or(Money()));
  return shared(printed.results->priced.price, weights);
}

void add_stage_rows(const Printed& printed, Table& table) {
  const Parts parts = by_stage(printed);
  for (std::size_t i = 0; i < parts.prices.size(); ++i)
    table.rows.push_back({{Said(printed.say(takeoff::title(parts.stages[i]))),
                           {},
                           Said(money_words(printed, parts.prices[i]), "quoted/" + takeoff::word(parts.stages[i]))}});
}

void add_line_rows(const Printed& printed, Table& table) {
  const std::vector<Money> prices = by_line(printed);
  const auto& lines = printed.results->estimate.lines;
  std::optional<Stage> stage;
  for (std::size_t i = 0; i < prices.size(); ++i) {
    const estimate::OrderLine& line = lines[i];
    if (stage != line.stage) table.rows.push_back({{Said(printed.say(takeoff::title(line.stage)))}, Row::Kind::group});
    stage = line.stage;
    std::string name = name_of(printed, line.item);
    if (name == line.item) name = printed.say(line.description);
    table.rows.push_back(
        {{Said(name),
          Said(number_words(printed, line.order_quantity) + " " +
                   unit_words(printed, line.order_quantity, line.order_unit),
               of_line(printed, line)),
          line.by_others ? Said(printed.say("by others"))
                         : Said(money_words(printed, prices[i]), "quoted-line/" + std::to_string(i))}});
  }
}

void add_sum_rows(const Printed& printed, Table& table) {
  const estimate::Priced& priced = printed.results->priced;
  if (priced.total != priced.price) {
    table.rows.push_back(
        {{Said(printed.say("Price before tax")), {}, Said(money_words(printed, priced.price), "price")},
         Row::Kind::sum});
    table.rows.push_back(
        {{Said(printed.say("Tax")), {}, Said(money_words(printed, priced.total - priced.price), of_step("tax"))}});
  }
  table.rows.push_back({{Said(printed.say(printed.results->final() ? "Price" : "Price so far, not final")),
                         {},
                         Said(money_words(printed, priced.total), "total")},
                        Row::Kind::total});
}

// More has its sign, so that a difference is never taken for a price.
std::string difference_words(const Printed& printed, Money by) {
  return (by > Money() ? "+" : "") + money_words(printed, by);
}

std::string working_of_part(const Printed& printed, Money part, Money whole) {
  const plan::Heading& heading = printed.job().heading;
  return estimate::shown_money(printed.results->priced.price, heading) + " x " + estimate::shown_money(part, heading) +
         " of " + estimate::shown_money(whole, heading) + " direct cost";
}

}  // namespace

std::vector<Money> shared(Money whole, const std::vector<Money>& weights) {
  Money sum;
  for (const Money weight : weights) sum += weight;
  if (sum <= Money()) return {};
  std::vector<Money> parts;
  Money so_far, told;
  for (const Money weight : weights) {
    so_far += weight;
    const long double share = static_cast<long double>(so_far.coins()) / static_cast<long double>(sum.coins());
    const Money upto = Money::of_coins(std::llround(static_cast<long double>(whole.coins()) * share));
    parts.push_back(upto - told);
    told = upto;
  }
  return parts;
}

void add_price_of(const Printed& printed, Sheet& sheet) {
  Table table{{{printed.say("What"), Align::left, 0.56},
               {printed.detail == Detail::lines ? printed.say("How much") : "", Align::right, 0.2},
               {printed.say("Price"), Align::right, 0.24}},
              {}};
  if (printed.detail == Detail::stages) add_stage_rows(printed, table);
  if (printed.detail == Detail::lines) add_line_rows(printed, table);
  add_sum_rows(printed, table);
  Passage passage;
  passage.whole = printed.detail != Detail::lines;
  passage.blocks.emplace_back(
      Heading{printed.say("Price"), {money_words(printed, printed.results->priced.total), "total"}});
  passage.blocks.emplace_back(std::move(table));
  sheet.passages.push_back(std::move(passage));
}

void add_options(const Printed& printed, Sheet& sheet) {
  const std::vector<plan::Option>& options = printed.job().offer.options;
  if (options.empty()) return;
  const std::vector<results::OptionPrice> prices = results::option_prices(*printed.results);
  Table table{{{"", Align::left, 0, true},
               {printed.say("Option"), Align::left, 0.66},
               {printed.say("Changes the price by"), Align::right, 0.28}},
              {}};
  for (std::size_t i = 0; i < std::min(options.size(), prices.size()); ++i) {
    const std::string name =
        options[i].alternate ? filled(printed, "%1 (in place of what is above)", {options[i].name}) : options[i].name;
    table.rows.push_back({{{},
                           Said(name),
                           prices[i].final ? Said(difference_words(printed, prices[i].total), of_option(options[i].id))
                                           : Said(printed.say("not final"))}});
    if (!options[i].text.empty()) table.rows.push_back({{Said(options[i].text)}, Row::Kind::note});
  }
  Passage passage;
  passage.blocks.emplace_back(Heading{printed.say("Options: tick what is wanted"), {}});
  passage.blocks.emplace_back(std::move(table));
  passage.blocks.emplace_back(
      Paragraph{Said(printed.say("Each by itself, with tax; several together may come to a little more or less.")),
                Paragraph::Kind::note});
  sheet.passages.push_back(std::move(passage));
}

void add_unit_prices(const Printed& printed, Sheet& sheet) {
  const std::vector<plan::UnitPrice>& prices = printed.job().offer.unit_prices;
  if (prices.empty()) return;
  Table table{{{printed.say("What"), Align::left, 0.44},
               {printed.say("Unit"), Align::left, 0.12},
               {printed.say("In the price"), Align::right, 0.18},
               {printed.say("More or less, for each"), Align::right, 0.26}},
              {}};
  for (const plan::UnitPrice& price : prices)
    table.rows.push_back({{Said(printed.say(price.text)), Said(unit_words(printed, 1, price.unit)),
                           Said(number_words(printed, price.assumed), of_unit_price(price.code)),
                           Said(money_words(printed, price.price), of_unit_price(price.code))}});
  Passage passage;
  passage.blocks.emplace_back(Heading{printed.say("What can't be seen before the dig"), {}});
  passage.blocks.emplace_back(std::move(table));
  sheet.passages.push_back(std::move(passage));
}

void add_payments(const Printed& printed, Sheet& sheet) {
  const std::vector<estimate::Due>& payments = printed.results->priced.payments;
  if (payments.empty()) return;
  Table table{{{printed.say("Payment"), Align::left, 0.4},
               {printed.say("Due"), Align::left, 0.36},
               {printed.say("Amount"), Align::right, 0.24}},
              {}};
  for (std::size_t i = 0; i < payments.size(); ++i) {
    const auto stage = takeoff::stage_of(payments[i].stage);
    const std::string due =
        stage ? filled(printed, "with: %1", {printed.say(takeoff::title(*stage))}) : printed.say("on signing");
    table.rows.push_back({{Said(printed.say(payments[i].name)), Said(due),
                           Said(money_words(printed, payments[i].amount), of_payment(i))}});
  }
  Passage passage;
  passage.whole = true;
  passage.blocks.emplace_back(Heading{printed.say("Payments"), {}});
  passage.blocks.emplace_back(std::move(table));
  sheet.passages.push_back(std::move(passage));
}

std::optional<std::string> working_of_quote(const Printed& printed, const std::string& list,
                                            const std::string& number) {
  const estimate::Estimate& made = printed.results->estimate;
  if (list == "quoted") {
    const auto stage = takeoff::stage_of(number);
    if (!stage || !made.stages.contains(*stage)) return std::nullopt;
    return working_of_part(printed, made.stages.at(*stage).amount(), made.total.amount());
  }
  if (list != "quoted-line") return std::nullopt;
  const auto at = units::read_number(number);
  if (!at || *at < 0 || *at >= static_cast<double>(made.lines.size())) return std::nullopt;
  const estimate::OrderLine& line = made.lines[static_cast<std::size_t>(*at)];
  return working_of_part(printed, line.amount.value_or(Money()), made.total.amount());
}

}  // namespace sheets
