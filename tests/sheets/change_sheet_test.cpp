// A change order and the estimate against actual, on paper.
#include "sheets/change_sheet.h"

#include <gtest/gtest.h>

#include "office_kit.h"
#include "sheets/actual_sheet.h"

namespace {

using units::Money;

Money coins(std::int64_t number) { return Money::of_coins(number); }

sheets::Printed small_job() {
  plan::Job job;
  job.heading.name = "Terrace";
  job.heading.customer = "R. Example";
  job.catalogue = std::make_shared<const catalogue::Catalogue>();
  return office::printed(job);
}

// 42,000.00 as signed, 1,200.00 and 2 days by an order before; this one 632.50 more and 3 days.
estimate::ChangeOrder order() {
  estimate::ChangeOrder made;
  made.input.number = "2";
  made.input.reason = estimate::Reason::hidden_ground;
  made.input.cause = "Rock under the deck";
  made.input.asked_by = "R. Example";
  made.input.date = "2026-11-28";
  made.input.days = 3;
  made.input.days_cause = "the rock has to be broken";
  made.input.contract = coins(4200000);
  made.input.earlier = {{"1", coins(120000), 2}};
  estimate::OrderedChange rock;
  rock.item = "rock";
  rock.description = "Rock, broken and taken away";
  rock.quantity = 5;
  rock.unit = "cu yd";
  rock.by = estimate::PricedBy::unit_price;
  rock.amount = coins(47500);
  rock.working = "5 cu yd at 95.00";
  estimate::OrderedChange ticket;
  ticket.stage = "dig";
  ticket.item = "ticket:7";
  ticket.description = "Hours of the ticket";
  ticket.quantity = 2;
  ticket.unit = "h";
  ticket.by = estimate::PricedBy::ticket;
  ticket.amount = coins(13000);
  made.lines = {rock, ticket};
  made.on_top = {{"overhead", "Overhead", coins(2750), "of the ticket"}};
  made.amount = coins(63250);  // 475.00 + 130.00 + 27.50
  made.before = coins(4320000);
  made.after = coins(4383250);
  made.days = 5;
  made.running = "42,000.00 as signed, 1,200.00 by 1 earlier order, 632.50 by this one";
  return made;
}

TEST(ChangeSheet, SaysWhyWhoHowManyDaysAndTheRunningSum) {
  const sheets::Printed printed = small_job();
  const sheets::Sheet sheet = sheets::change_sheet(order(), printed);
  EXPECT_TRUE(sheet.money);
  for (const char* said : {"Rock under the deck", "R. Example", "28 Nov 2026", "hidden ground", "3 days",
                           "the rock has to be broken", "Dig, time and material", "Rock, broken and taken away",
                           "5 cu yd at 95.00", "Both sign before the work of this order begins."})
    EXPECT_TRUE(office::says(sheet, said)) << said;
  for (const Money sum : {coins(47500), coins(13000), coins(63250)})
    EXPECT_TRUE(office::says(sheet, "+" + sheets::money_words(printed, sum)));
  for (const Money sum : {coins(4200000), coins(4320000), coins(4383250)})
    EXPECT_TRUE(office::says(sheet, sheets::money_words(printed, sum)));
  EXPECT_EQ(office::blocks<sheets::Blanks>(sheet).size(), 2u);
  // Hidden ground: work stops until a competent person has looked.
  ASSERT_EQ(office::blocks<sheets::Caution>(sheet).size(), 1u);
  EXPECT_NE(office::blocks<sheets::Caution>(sheet)[0]->words.find("competent person"), std::string::npos);
}

TEST(ChangeSheet, SignaturesStandOnThePageOfTheRunningSum) {
  const sheets::Sheet sheet = sheets::change_sheet(order(), small_job());
  EXPECT_TRUE(sheet.passages.back().whole);
  EXPECT_TRUE(std::holds_alternative<sheets::Blanks>(sheet.passages.back().blocks.back()));
}

TEST(ChangeSheet, OneThatIsNotFinalSaysSo) {
  estimate::ChangeOrder bad = order();
  bad.final = false;
  bad.problems = {
      {problem::Severity::problem, "change-asked", "nobody is named who asked for it", "enter who asked", {}}};
  const sheets::Sheet sheet = sheets::change_sheet(bad, small_job());
  EXPECT_TRUE(office::says(sheet, "can't be signed yet"));
  EXPECT_TRUE(office::says(sheet, "nobody is named who asked for it"));
}

TEST(ChangeSheet, EachNumberLeadsToItsWorking) {
  const estimate::ChangeOrder made = order();
  for (const sheets::Said& said : office::cells(sheets::change_sheet(made, small_job()), true)) {
    if (!office::has_digit(said.words)) continue;
    const auto working = sheets::working_of_change(made, said.from);
    EXPECT_TRUE(working && !working->empty()) << said.words << " from " << said.from;
  }
  EXPECT_FALSE(sheets::working_of_change(made, "change/2"));
  EXPECT_FALSE(sheets::working_of_change(made, "nothing"));
}

// 10 tons at 50.00 estimated, 12 delivered of which 11 used; 8 hours for 480.00 estimated, 10 worked for 600.00.
estimate::Actual actual() {
  estimate::Actual made;
  made.currency = "USD";
  estimate::LineActual stone;
  stone.key = {"base", "stone", plan::CostKind::material};
  stone.description = "Base stone";
  stone.unit = "ton";
  stone.estimated = stone.ordered = 10;
  stone.estimate = coins(50000);
  stone.state = estimate::Act::used;
  stone.delivered = 12;
  stone.used = 11;
  stone.use_entered = true;
  stone.delivered_money = stone.spent = coins(60000);
  stone.used_money = coins(55000);
  made.lines = {stone};
  estimate::StageActual base;
  base.stage = "base";
  base.estimate_stuff = coins(50000);
  base.spent_stuff = coins(60000);
  base.estimate_work = coins(48000);
  base.spent_work = coins(60000);
  base.estimate_hours = 8;
  base.hours = 10;
  base.done = 0.5;
  base.finish_at_estimate = coins(49000);
  base.finish_at_own = coins(60000);
  estimate::MeasureActual half;
  half.date = "2026-11-28";
  half.done = 50;
  half.whole = 100;
  half.unit = "m2";
  half.estimate_hours = 8;
  half.hours = 10;
  base.measures = {half};
  made.stages = {base};
  made.total = base;
  made.total.stage = "";
  made.total.measures.clear();
  made.unmeasured = {"paving"};
  return made;
}

TEST(ActualSheet, SaysWhatWasEstimatedSpentAndIsLeftToDo) {
  const sheets::Printed printed = small_job();
  const sheets::Sheet sheet = sheets::actual_sheet(actual(), printed);
  EXPECT_TRUE(sheet.money);
  EXPECT_TRUE(office::says(sheet, "Base stone"));
  EXPECT_TRUE(office::says(sheet, "+" + sheets::money_words(printed, coins(10000))));  // 600.00 - 500.00
  EXPECT_TRUE(office::says(sheet, "+" + sheets::money_words(printed, coins(12000))));  // 600.00 - 480.00
  EXPECT_TRUE(office::says(sheet, "+" + sheets::money_words(printed, coins(22000))));  // both
  EXPECT_TRUE(office::says(sheet, "50 %"));
  // 8 h for 100 m2, and 10 h for the 50 that are done.
  EXPECT_TRUE(
      office::says(sheet, "50 of 100 m2 done on 28 Nov 2026; estimated 0.080 h for one m2; own so far 0.200 h"));
  EXPECT_TRUE(office::says(sheet, "nobody measured: Bedding and paving."));
}

TEST(ActualSheet, EachNumberLeadsToItsWorking) {
  const sheets::Printed printed = small_job();
  const estimate::Actual made = actual();
  for (const sheets::Said& said : office::cells(sheets::actual_sheet(made, printed), true)) {
    if (!office::has_digit(said.words)) continue;
    const auto working = sheets::working_of_actual(made, printed, said.from);
    EXPECT_TRUE(working && !working->empty()) << said.words << " from " << said.from;
  }
  EXPECT_FALSE(sheets::working_of_actual(made, printed, "actual/1"));
  EXPECT_FALSE(sheets::working_of_actual(made, printed, "actual-stage/wall"));
}

TEST(ActualSheet, OfNothingIsOneSentence) {
  EXPECT_TRUE(office::says(sheets::actual_sheet({}, small_job()), "nothing to compare"));
}

}  // namespace
