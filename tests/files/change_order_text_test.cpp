// The change order for printing: what stands in its last column adds up to its sum.
#include "files/change_order_text.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <sstream>

#include "files/sheet_text.h"

namespace {

using units::Money;

Money coins(std::int64_t number) { return Money::of_coins(number); }

estimate::KeptLine line(const std::string& stage, const std::string& item, int quantity, std::int64_t price) {
  estimate::KeptLine made;
  made.stage = stage;
  made.item = made.description = item;
  made.quantity = made.order_quantity = quantity;
  made.unit = made.order_unit = "piece";
  made.unit_price = coins(price);
  made.amount = units::times(coins(price), quantity);
  return made;
}

estimate::Kept kept(std::vector<estimate::KeptLine> lines) {
  estimate::Kept made;
  made.currency = "USD";
  made.lines = std::move(lines);
  return made;
}

plan::Job quote() {
  plan::Job job;
  job.heading.name = "Court";
  job.heading.currency = "USD";
  job.offer.overhead = 0.125;
  job.offer.profit = 0.2;
  job.offer.profit_as = plan::ProfitAs::margin;
  job.offer.tax = 0.0625;
  job.offer.taxed = {plan::CostKind::material};
  job.offer.unit_prices = {{"rock", "Rock", "cu yd", 2, coins(9500)}};
  return job;
}

estimate::ChangeInput asked() {
  estimate::ChangeInput input;
  input.number = "2";
  input.reason = estimate::Reason::hidden_ground;
  input.cause = "rock under the walk";
  input.asked_by = "the foreman";
  input.date = "2026-11-28";
  return input;
}

// "+1,234.50" at the end of a row as coins; nothing where there is no money.
std::optional<Money> last_money(const std::string& row) {
  std::string word = row.substr(row.rfind(' ') + 1);
  std::erase(word, ',');
  std::erase(word, '+');
  const auto read = units::read_money(word, 2);
  return read ? std::optional(*read) : std::nullopt;
}

struct Printed {
  Money lines, steps, lines_above, order;
};

// As a person adds it up who has only the paper.
Printed added_up(const std::string& text) {
  Printed made;
  std::istringstream all(text);
  enum class Part { head, lines, sum, rest } part = Part::head;
  for (std::string row; std::getline(all, row);) {
    if (row.starts_with("  more, less")) part = Part::lines;
    if (row.starts_with("Sum of the order")) part = Part::sum;
    const auto money = row.starts_with("    ") && row.substr(0, 12).find_first_not_of(' ') == std::string::npos
                           ? std::nullopt
                           : last_money(row);
    if (!money) continue;
    if (part == Part::lines) {
      made.lines += *money;
    } else if (part == Part::sum && row.starts_with("The lines above")) {
      made.lines_above = *money;
    } else if (part == Part::sum && row.starts_with("This order")) {
      made.order = *money;
      part = Part::rest;
    } else if (part == Part::sum && row.starts_with("On what is")) {
      made.steps += *money;
    }
  }
  return made;
}

TEST(ChangeOrderText, saysWhoWhyAndWhatItComesTo) {
  estimate::ChangeInput input = asked();
  input.days = 1;
  input.days_cause = "the rock is broken by hand";
  input.met = {{"rock", 4, 0, "measured in the truck"}};
  input.contract = coins(4200000);
  input.earlier = {{"1", coins(120000), 2}};
  const auto order =
      estimate::change_order(quote(), estimate::compare(kept({}), kept({line("paving", "Unit", 100, 250)})), input);
  const std::string text = files::change_order_text(quote(), order);
  // 100 x 2.50 = 250.00; 12.5 % 31.25; 281.25 / 0.8 - 281.25 = 70.3125; 6.25 % of 351.56 = 21.9725; rock 2 x 95.00.
  // 250.00 + 31.25 + 70.31 + 21.97 + 190.00 = 563.53.
  for (const char* part :
       {"Change order 2: Court", "hidden ground", "rock under the walk", "the foreman", "Bedding and paving",
        "new: 100 pieces for 250.00 USD", "+250.00", "+31.25", "+70.31", "+21.97", "+190.00",
        "The contract changes by +563.53 USD", "43,200.00", "43,763.53", "because the rock is broken by hand",
        "Days added by all orders: 3", "competent person", "Both sign before the work"})
    EXPECT_NE(text.find(part), std::string::npos) << part << "\n" << text;
  EXPECT_EQ(text.find("NOT FINAL"), std::string::npos);
}

TEST(ChangeOrderText, whatIsAmissStandsOnThePaper) {
  estimate::ChangeInput input = asked();
  input.asked_by.clear();
  const auto order = estimate::change_order(quote(), estimate::compare(kept({}), kept({})), input);
  const std::string text = files::change_order_text(quote(), order);
  for (const char* part : {"NOT FINAL", "nobody asked for the change", "Nothing comes and nothing goes"})
    EXPECT_NE(text.find(part), std::string::npos) << part << "\n" << text;
}

estimate::Kept random_kept() {
  std::vector<estimate::KeptLine> lines;
  for (int count = *rc::gen::inRange(0, 8); count > 0; --count) {
    static const std::vector<std::string> stages{"dig", "paving", "nowhere"}, items{"rock", "pipe", "unit"};
    lines.push_back(line(*rc::gen::elementOf(stages), *rc::gen::elementOf(items), *rc::gen::inRange(0, 5000),
                         *rc::gen::inRange(1, 90000)));
  }
  return kept(std::move(lines));
}

RC_GTEST_PROP(ChangeOrderText, whatIsPrintedAddsUpToTheOrder, ()) {
  const auto order = estimate::change_order(quote(), estimate::compare(random_kept(), random_kept()), asked());
  const std::string text = files::change_order_text(quote(), order);
  const Printed printed = added_up(text);
  RC_ASSERT(printed.lines == printed.lines_above);
  RC_ASSERT(printed.lines + printed.steps == printed.order);
  RC_ASSERT(printed.order == order.amount);
  std::istringstream all(text);
  for (std::string row; std::getline(all, row);) RC_ASSERT(files::columns_of(row) <= files::sheet_width);
}

}  // namespace
