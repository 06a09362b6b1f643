// What may be entered against a kept estimate, and what is refused, in which words.
#include "estimate/ledger.h"

#include <gtest/gtest.h>

#include <limits>

#include "ledger_kit.h"

namespace {

using namespace ledger_kit;

std::string code(const std::vector<Entry>& before, const Entry& entry) {
  const auto said = estimate::check(kept(), before, entry);
  if (said) return "";
  EXPECT_FALSE(said.error().text.empty());
  EXPECT_FALSE(said.error().mend.empty());
  return said.error().code;
}

TEST(Ledger, ActsHaveWordsThatReadBack) {
  for (const Act act : estimate::all_acts) EXPECT_EQ(estimate::act_of(estimate::word(act)), act);
  EXPECT_FALSE(estimate::act_of("eaten"));
}

TEST(Ledger, WhatFitsALineIsTaken) {
  for (const Act act :
       {Act::planned, Act::asked, Act::ordered, Act::confirmed, Act::delivered, Act::used, Act::returned})
    EXPECT_EQ(code({}, entry(act, stone, 2.5, "ton", 3000)), "");
  EXPECT_EQ(code({}, hours("base", 7.5)), "");
  EXPECT_EQ(code({}, hours("paving", 7.5, "cut")), "");
  EXPECT_EQ(code({}, hours("finish", 1)), "") << "work in a stage that nobody thought of";
  EXPECT_EQ(code({}, measured("paving", 30, 100, "lay")), "");
}

TEST(Ledger, WhatDoesNotFitIsRefused) {
  EXPECT_EQ(code({}, entry(Act::used, {"base", "sand", CostKind::material}, 1, "ton")), "ledger-line");
  EXPECT_EQ(code({}, entry(Act::used, {"paving", "stone", CostKind::material}, 1, "ton")), "ledger-line");
  EXPECT_EQ(code({}, entry(Act::used, {"base", "spread", CostKind::labour}, 1, "h")), "ledger-line")
      << "work is entered as hours";
  EXPECT_EQ(code({}, hours("bar", 1)), "ledger-stage");
  EXPECT_EQ(code({}, hours("base", 1, "lay")), "ledger-line") << "laying is not work of the base";
  EXPECT_EQ(code({}, entry(Act::used, stone, 1, "cu yd")), "ledger-unit");
  Entry in_days = hours("base", 1);
  in_days.unit = "day";
  EXPECT_EQ(code({}, in_days), "ledger-unit");
  const double none = std::numeric_limits<double>::quiet_NaN(), endless = std::numeric_limits<double>::infinity();
  for (const double bad : {-0.001, none, endless})
    EXPECT_EQ(code({}, entry(Act::used, stone, bad, "ton")), "ledger-quantity");
  EXPECT_EQ(code({}, entry(Act::used, stone, 1'000'000'001, "ton")), "ledger-large");
  EXPECT_EQ(code({}, measured("base", 1, 0)), "ledger-whole");
  EXPECT_EQ(code({}, measured("base", 1, none)), "ledger-whole");
  EXPECT_EQ(code({}, entry(Act::delivered, stone, 1, "ton", -1)), "ledger-price");
  for (const char* day : {"", "28.11.2026", "2026-02-29", "2026-13-01", "2026-11-28 "})
    EXPECT_EQ(code({}, entry(Act::used, stone, 1, "ton", {}, day)), "ledger-date") << day;
}

TEST(Ledger, MoneyPastCountingIsRefusedOverAllEntries) {
  // Two of 5e15 coins each: 1e16 is past 9e15.
  const Entry half = entry(Act::delivered, stone, 1, "ton", 5'000'000'000'000'000);
  EXPECT_EQ(code({}, half), "");
  const auto before = numbered({half});
  EXPECT_EQ(code(before, half), "ledger-large");
  Entry instead = half;
  instead.corrects = 1;
  EXPECT_EQ(code(before, instead), "") << "in the place of the first it is not too much";
}

TEST(Ledger, ACorrectionTakesThePlaceOfOneEntry) {
  auto entries = numbered({entry(Act::delivered, stone, 6, "ton"), entry(Act::delivered, stone, 5, "ton")});
  Entry mend = entry(Act::delivered, stone, 7, "ton");
  mend.corrects = 1;
  EXPECT_EQ(code(entries, mend), "");
  entries.push_back(mend);
  entries = numbered(entries);
  const auto standing = estimate::in_force(entries);
  ASSERT_EQ(standing.size(), 2U);
  EXPECT_EQ(standing[0].quantity, 7) << "in the place of the first";
  EXPECT_EQ(standing[1].quantity, 5);
  EXPECT_EQ(code(entries, mend), "ledger-corrects") << "the first was corrected already";
  mend.corrects = 3;
  mend.quantity = 0;
  EXPECT_EQ(code(entries, mend), "") << "a correction can be corrected, and taken back";
  entries.push_back(mend);
  EXPECT_EQ(estimate::in_force(numbered(entries))[0].quantity, 0);
  mend.corrects = 9;
  EXPECT_EQ(code(entries, mend), "ledger-corrects") << "there is none";
  Entry other = entry(Act::used, stone, 1, "ton");
  other.corrects = 2;
  EXPECT_EQ(code(entries, other), "ledger-corrects") << "a delivery does not turn into use";
}

TEST(Ledger, AnOrderStandsButForItsWords) {
  const auto entries = numbered({entry(Act::ordered, stone, 10, "ton")});
  Entry mend = entries[0];
  mend.corrects = 1;
  mend.date = "2026-11-27";
  mend.ticket = "PO 12";
  EXPECT_EQ(code(entries, mend), "");
  mend.quantity = 12;
  EXPECT_EQ(code(entries, mend), "ledger-ordered");
  mend.quantity = 0;
  EXPECT_EQ(code(entries, mend), "ledger-ordered") << "nor is it taken back in silence";
  EXPECT_EQ(code(entries, entry(Act::ordered, stone, 2, "ton")), "") << "more is ordered by an order";
  EXPECT_EQ(code(entries, entry(Act::returned, stone, 2, "ton")), "");
}

}  // namespace
