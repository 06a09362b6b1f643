// The comparison for paper and for a spreadsheet.
#include "files/compare_text.h"

#include <gtest/gtest.h>

#include "files/csv.h"

namespace {

estimate::Kept kept(double quantity, std::int64_t coins, const std::string& description) {
  estimate::Kept made;
  made.currency = "USD";
  estimate::KeptLine line;
  line.stage = "paving";
  line.item = "unit";
  line.description = description;
  line.order_quantity = quantity;
  line.order_unit = "piece";
  line.unit_price = units::Money::of_coins(250);
  line.amount = units::Money::of_coins(coins);
  made.lines = {line};
  made.direct = made.price = made.total = *line.amount;
  made.steps = {{"direct", "Direct cost", made.direct, ""}};
  return made;
}

const files::Compared court{"Court", "first", "third", "USD", 2};

TEST(CompareText, showsBothSidesAndTheDifference) {
  // 1,000 and 1,200 pieces at 2.50: 2,500.00 and 3,000.00, 500.00 more.
  const auto made = estimate::compare(kept(1000, 250000, "Unit"), kept(1200, 300000, "Unit"));
  plan::Differences differences;
  differences.elements.push_back({plan::Differs::changed, "A1", "Deck", "paved-area", {"outline"}});
  const std::string text = files::comparison_text(court, made, differences);
  for (const char* part : {"A1 paved-area, Deck: other outline", "Bedding and paving", "Unit (quantity)",
                           "1,000.00 piece", "1,200.00 piece", "2,500.00", "3,000.00", "+500.00"})
    EXPECT_NE(text.find(part), std::string::npos) << part << "\n" << text;
}

TEST(CompareText, csvReadsBackAndRunsNothing) {
  const auto made = estimate::compare(kept(1, 250, "=SUM(A1), \"quoted\""), kept(2, 500, "=SUM(A1), \"quoted\""));
  const auto table = files::read_csv(files::comparison_csv(court, made), "compare.csv");
  ASSERT_TRUE(table.has_value());
  ASSERT_EQ(table->rows.size(), 1u);
  const auto cell = [&](const char* name) { return table->rows[0].cells[*table->column(name)]; };
  EXPECT_EQ(cell("description"), "'=SUM(A1), \"quoted\"");
  EXPECT_EQ(cell("change"), "quantity");
  EXPECT_EQ(cell("amount_before"), "2.50");
  EXPECT_EQ(cell("amount_after"), "5.00");
  EXPECT_EQ(cell("by"), "2.50");
}

}  // namespace
