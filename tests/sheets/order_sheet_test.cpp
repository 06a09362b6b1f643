// What is ordered of whom: every line that is bought stands once, as heavy as its pieces, and nobody's price but the
// supplier's own.
#include <gtest/gtest.h>

#include <algorithm>

#include "office_kit.h"
#include "sheets/order_parts.h"
#include "sheets/source.h"

namespace {

using estimate::OrderLine;

bool bought(const plan::Job& job, const OrderLine& line) {
  const catalogue::Item* item = job.catalogue->item(line.item);
  return item && !line.work && !line.by_others && line.order_quantity > 0 && item->kind != "deposit" &&
         item->kind != "credit" && item->kind != "labour";
}

class Orders : public testing::TestWithParam<const char*> {};

TEST_P(Orders, EachLineThatIsBoughtStandsOnceWithItsQuantity) {
  const results::Results& results = demo::results(GetParam());
  const sheets::Printed printed = office::printed(results);
  const sheets::Sheet sheet = sheets::order(printed);
  std::multiset<std::string> wanted, found;
  for (const OrderLine& line : results.estimate.lines)
    if (bought(*results.job, line))
      wanted.insert(sheets::of_line(printed, line) + " " + sheets::number_words(printed, line.order_quantity));
  for (const sheets::Table* table : office::blocks<sheets::Table>(sheet)) {
    if (table->columns.size() != 8) continue;  // goods; deliveries have seven
    for (const sheets::Row& row : table->rows)
      if (row.kind == sheets::Row::Kind::plain) found.insert(row.cells[2].from + " " + row.cells[2].words);
  }
  EXPECT_FALSE(wanted.empty());
  EXPECT_EQ(wanted, found);
}

TEST_P(Orders, NoLoadIsHeavierThanItsTruckCarries) {
  const results::Results& results = demo::results(GetParam());
  for (const estimate::Visit& visit : estimate::visits(*results.job, results.estimate.lines)) {
    const catalogue::Item* truck = results.job->catalogue->item(visit.truck);
    if (!truck || !visit.weight || visit.rides) continue;
    const double loads = visit.loads.amount().value;
    ASSERT_GT(loads, 0);
    // A short ton is 2,000 lb of 0.45359237 kg.
    EXPECT_LE(visit.weight->amount().value / loads,
              truck->number("weight_limit_ton").value() * 2000 * 0.45359237 + 1e-6)
        << visit.what;
  }
}

TEST_P(Orders, WhatTheCustomerPaysIsNotOnIt) {
  const results::Results& results = demo::results(GetParam());
  const sheets::Printed printed = office::printed(results);
  const sheets::Sheet sheet = sheets::order(printed);
  EXPECT_FALSE(sheet.money);
  EXPECT_FALSE(office::says(sheet, sheets::money_words(printed, results.priced.total)));
  EXPECT_FALSE(office::says(sheet, sheets::money_words(printed, results.priced.direct)));
  for (const auto& [stage, sum] : results.estimate.stages)
    EXPECT_FALSE(office::says(sheet, sheets::money_words(printed, sum.amount())));
}

TEST_P(Orders, EachNumberLeadsToItsWorking) {
  const sheets::Printed printed = office::printed(demo::results(GetParam()));
  for (const sheets::Said& said : office::cells(sheets::order(printed), true)) {
    if (!office::has_digit(said.words)) continue;
    const auto working = sheets::working_of(printed, said.from);
    EXPECT_TRUE(working && !working->empty()) << said.words << " from " << said.from;
  }
}

INSTANTIATE_TEST_SUITE_P(Demo, Orders, testing::Values("pool-terrace-a", "pool-terrace-b", "bakery-court"));

OrderLine line(const std::string& item, double quantity, const std::string& unit) {
  OrderLine made{takeoff::Stage::base,
                 item,
                 item,
                 {},
                 quantity,
                 "piece",
                 quantity,
                 unit,
                 {},
                 {},
                 false,
                 false,
                 false,
                 takeoff::term("needed", quantity, units::piece),
                 {}};
  return made;
}

plan::Job with_items(const std::vector<catalogue::Item>& items) {
  auto all = std::make_shared<catalogue::Catalogue>();
  for (const catalogue::Item& item : items) all->items[item.id] = std::make_shared<const catalogue::Item>(item);
  plan::Job job;
  job.catalogue = all;
  return job;
}

TEST(OrderWeight, OfTonsOfMixedPacksAndOfWhatHasNone) {
  catalogue::Item stone, small, large, pack, bare;
  stone.id = "stone";
  stone.unit = "ton";
  small.id = "small";
  small.unit = "piece";
  small.mass_kg = 5;
  large = small;
  large.id = "large";
  large.mass_kg = 8;
  pack.id = "pack";
  pack.unit = "pack";
  pack.contents = {{"small", 20}, {"large", 30}};
  bare.id = "bare";
  bare.unit = "piece";
  const plan::Job job = with_items({stone, small, large, pack, bare});
  // 12 short tons of 907.18474 kg
  EXPECT_NEAR(sheets::weight_of(job, line("stone", 12, "ton"))->amount().value, 12 * 907.18474, 1e-9);
  // 3 packs of 20 x 5 kg + 30 x 8 kg = 340 kg
  EXPECT_NEAR(sheets::weight_of(job, line("pack", 3, "pack"))->amount().value, 1020, 1e-9);
  EXPECT_FALSE(sheets::weight_of(job, line("bare", 3, "piece")));
}

TEST(Order, OfAnEmptyJobIsOneSentence) {
  plan::Job job;
  job.catalogue = std::make_shared<const catalogue::Catalogue>();
  const sheets::Sheet sheet = sheets::order(office::printed(job));
  ASSERT_EQ(sheet.passages.size(), 1u);
  EXPECT_TRUE(office::says(sheet, "Nothing is to be ordered yet."));
}

}  // namespace
