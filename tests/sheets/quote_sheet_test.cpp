// The quote: its parts add up to the coin, it says what is not in it, and nothing of what the job costs the office.
#include <gtest/gtest.h>

#include <algorithm>

#include "estimate/statements.h"
#include "office_kit.h"
#include "results/options.h"
#include "sheets/quote_parts.h"
#include "sheets/source.h"

namespace {

using units::Money;

Money coins(std::int64_t number) { return Money::of_coins(number); }

TEST(Shared, PartsAreAsLargeAsTheirWeightsAndAddUp) {
  // 100.00 in three: boundaries 33.333 and 66.667 rounded to 33.33 and 66.67.
  EXPECT_EQ(sheets::shared(coins(10000), {coins(1), coins(1), coins(1)}),
            (std::vector<Money>{coins(3333), coins(3334), coins(3333)}));
  // 1,000 by 1 to 3; a credit of 1 takes its quarter back.
  EXPECT_EQ(sheets::shared(coins(1000), {coins(1), coins(3)}), (std::vector<Money>{coins(250), coins(750)}));
  EXPECT_EQ(sheets::shared(coins(1000), {coins(5), coins(-1)}), (std::vector<Money>{coins(1250), coins(-250)}));
  EXPECT_TRUE(sheets::shared(coins(1000), {}).empty());
  EXPECT_TRUE(sheets::shared(coins(1000), {coins(0)}).empty());
}

TEST(DaysAfter, GoByTheCalendar) {
  EXPECT_EQ(sheets::days_after("2026-11-28", 30), "2026-12-28");  // 2 days of November, 28 of December
  EXPECT_EQ(sheets::days_after("2026-11-28", 60), "2027-01-27");  // 2 + 31 + 27
  EXPECT_EQ(sheets::days_after("2028-02-28", 1), "2028-02-29");   // a leap year
  EXPECT_EQ(sheets::days_after("2027-02-28", 1), "2027-03-01");
  EXPECT_FALSE(sheets::days_after("2027-02-29", 1));
  EXPECT_FALSE(sheets::days_after("", 30));
  EXPECT_FALSE(sheets::days_after("28.11.2026", 30));
}

plan::Job offered() {
  plan::Job job = demo::job("pool-terrace-a");
  job.offer.overhead = 0.15;
  job.offer.profit = 0.10;
  job.offer.tax = 0.06;
  job.offer.taxed = {plan::CostKind::material};
  job.offer.date = "2026-11-28";
  job.offer.valid_days = 30;
  job.offer.terms = "Weather may move the days.\nWater and power are the owner's.";
  job.offer.cancellation = "You may cancel within three days.";
  job.offer.unit_prices = {{"rock", "Rock, broken and taken away", "cu yd", 2, coins(9500)}};
  job.offer.payments = {{"Deposit", 0.3, ""}, {"Base", 0.4, "base"}, {"Rest", 0.3, "finish"}};
  plan::Option fewer;
  fewer.id = "O1";
  fewer.name = "Engineer's letter";
  plan::AddedLine letter;
  letter.id = "letter";
  letter.stage = "wall";
  letter.text = "Letter";
  letter.unit_price = coins(50000);
  fewer.lines = {letter};
  job.offer.options = {fewer};
  return job;
}

const sheets::Printed& quoted() {
  static const sheets::Printed printed = office::printed(offered());
  return printed;
}

// Coins of the cells that come from such sources.
std::int64_t coins_from(const sheets::Sheet& sheet, const std::string& start, const sheets::Printed& printed) {
  std::int64_t sum = 0;
  for (const sheets::Said& said : office::cells(sheet)) {
    if (!said.from.starts_with(start)) continue;
    std::string plain;
    for (const char letter : said.words)
      if ((letter >= '0' && letter <= '9') || letter == '.' || letter == '-') plain += letter;
    sum += units::read_money(plain, printed.job().heading.decimals).value().coins();
  }
  return sum;
}

TEST(Quote, StagesAddUpToThePriceAndPaymentsToTheTotal) {
  const sheets::Sheet sheet = sheets::quote(quoted());
  EXPECT_EQ(coins_from(sheet, "quoted/", quoted()), quoted().results->priced.price.coins());
  EXPECT_EQ(coins_from(sheet, "payment/", quoted()), quoted().results->priced.total.coins());
}

TEST(Quote, AtTheDetailOfLinesTheyAddUpToo) {
  sheets::Printed by_line = quoted();
  by_line.detail = sheets::Detail::lines;
  EXPECT_EQ(coins_from(sheets::quote(by_line), "quoted-line/", by_line), by_line.results->priced.price.coins());
  by_line.detail = sheets::Detail::total;
  EXPECT_EQ(coins_from(sheets::quote(by_line), "quoted", by_line), 0);
  EXPECT_TRUE(office::says(sheets::quote(by_line), sheets::money_words(by_line, by_line.results->priced.total)));
}

TEST(Quote, WhatItCostsTheOfficeIsNotOnIt) {
  const sheets::Sheet sheet = sheets::quote(quoted());
  for (const auto& [stage, sum] : quoted().results->estimate.stages) {
    if (sum.amount() == Money()) continue;
    EXPECT_FALSE(office::says(sheet, sheets::money_words(quoted(), sum.amount())));
  }
  for (const estimate::PriceStep& step : quoted().results->priced.steps)
    if (step.code == "direct" || step.code == "overhead" || step.code == "profit") {
      EXPECT_FALSE(office::says(sheet, sheets::money_words(quoted(), step.amount))) << step.code;
    }
}

TEST(Quote, SaysWhatIsNotInItUntilWhenItHoldsAndTheOfficesOwnTexts) {
  const sheets::Sheet sheet = sheets::quote(quoted());
  int sentences = 0;
  for (const auto& sentence : estimate::statements(quoted().job(), quoted().results->takeoff)) {
    if (sentence.struck) continue;
    EXPECT_TRUE(office::says(sheet, sentence.text)) << sentence.text;
    EXPECT_TRUE(sentence.caution.empty() || office::says(sheet, sentence.caution)) << sentence.caution;
    ++sentences;
  }
  EXPECT_GT(sentences, 0);
  EXPECT_TRUE(office::says(sheet, "Quoted on 28 Nov 2026. Valid until 28 Dec 2026."));
  EXPECT_TRUE(office::says(sheet, "Weather may move the days."));
  EXPECT_TRUE(office::says(sheet, "You may cancel within three days."));
  EXPECT_TRUE(office::says(sheet, "Rock, broken and taken away"));
  EXPECT_TRUE(office::says(sheet, "This is not an offer."));  // an invented job
  EXPECT_EQ(office::blocks<sheets::Blanks>(sheet).size(), 2u);
}

TEST(Quote, AnOptionStandsWithWhatItChangesTheTotalBy) {
  const auto prices = results::option_prices(*quoted().results);
  ASSERT_EQ(prices.size(), 1u);
  // A fee of 500.00 with 15 % overhead and 10 % profit on top: 632.50, and its part of the taxed price.
  EXPECT_GE(prices[0].total.coins(), 63250);
  const std::string said = prices[0].final ? "+" + sheets::money_words(quoted(), prices[0].total) : "not final";
  EXPECT_TRUE(office::says(sheets::quote(quoted()), said));
}

TEST(Quote, ShowsThePictureWithoutMarksOfFaults) {
  const sheets::Sheet sheet = sheets::quote(quoted());
  const auto drawings = office::blocks<sheets::Drawing>(sheet);
  ASSERT_EQ(drawings.size(), 1u);
  EXPECT_TRUE(drawings[0]->colour);
  for (const sheets::Part& part : drawings[0]->figure->parts)
    if (const auto* mark = std::get_if<sheets::Mark>(&part)) {
      EXPECT_TRUE(mark->sign != sheets::Sign::problem && mark->sign != sheets::Sign::care);
    }
}

TEST(Quote, EachNumberLeadsToItsWorking) {
  for (const sheets::Printed& printed : {quoted(), office::printed(demo::results("bakery-court"))})
    for (const sheets::Said& said : office::cells(sheets::quote(printed), true)) {
      if (!office::has_digit(said.words)) continue;
      const auto working = sheets::working_of(printed, said.from);
      EXPECT_TRUE(working && !working->empty()) << said.words << " from " << said.from;
    }
}

TEST(Quote, OfAnEmptyJobIsOneSentence) {
  plan::Job job;
  job.catalogue = std::make_shared<const catalogue::Catalogue>();
  const sheets::Sheet sheet = sheets::quote(office::printed(job));
  ASSERT_EQ(sheet.passages.size(), 1u);
  EXPECT_TRUE(office::says(sheet, "nothing to quote"));
}

}  // namespace
