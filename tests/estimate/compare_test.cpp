// Two kept estimates side by side: every coin of the difference is in exactly one change.
#include "estimate/compare.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

namespace {

using estimate::Difference;
using estimate::Kept;
using estimate::KeptLine;
using units::Money;

KeptLine line(const std::string& stage, const std::string& item, double quantity, std::int64_t coins) {
  KeptLine made;
  made.stage = stage;
  made.item = item;
  made.description = item;
  made.of = {"A1"};
  made.quantity = made.order_quantity = quantity;
  made.unit = made.order_unit = "piece";
  made.unit_price = Money::of_coins(100);
  made.amount = Money::of_coins(coins);
  return made;
}

Kept kept(std::vector<KeptLine> lines, std::int64_t overhead = 0) {
  Kept made;
  made.currency = "USD";
  for (const KeptLine& line : lines)
    if (line.amount) made.direct += *line.amount;
  made.lines = std::move(lines);
  made.steps = {{"direct", "Direct cost", made.direct, ""}};
  if (overhead != 0) made.steps.push_back({"overhead", "Overhead", Money::of_coins(overhead), ""});
  made.price = made.total = made.direct + Money::of_coins(overhead);
  return made;
}

TEST(Compare, namesWhatCameWentAndChanged) {
  KeptLine dearer = line("paving", "sand", 10, 1500);
  dearer.unit_price = Money::of_coins(150);
  KeptLine told = line("finish", "broom", 1, 100);
  told.sentence = "1 broom";
  const auto made = estimate::compare(
      kept({line("dig", "truck", 3, 300), line("paving", "unit", 100, 10000), line("paving", "sand", 10, 1000),
            line("finish", "broom", 1, 100)},
           1140),
      kept({line("paving", "unit", 120, 12000), dearer, line("joints", "filler", 4, 400), told}, 1400));
  ASSERT_EQ(made.changes.size(), 5u);
  // In the order of building: dig, paving, joints, finish.
  EXPECT_EQ(made.changes[0].what, Difference::gone);
  EXPECT_EQ(made.changes[0].by.coins(), -300);
  EXPECT_EQ(made.changes[1].what, Difference::quantity);
  EXPECT_EQ(made.changes[1].by.coins(), 2000);
  EXPECT_EQ(made.changes[2].what, Difference::price);
  EXPECT_EQ(made.changes[2].by.coins(), 500);
  EXPECT_EQ(made.changes[3].what, Difference::added);
  EXPECT_EQ(made.changes[3].by.coins(), 400);
  EXPECT_EQ(made.changes[4].what, Difference::words);
  EXPECT_EQ(made.changes[4].by.coins(), 0);
  EXPECT_EQ(made.direct_by.coins(), 2600);  // -300 + 2000 + 500 + 400
  EXPECT_EQ(made.total_by.coins(), 2860);   // and 1400 - 1140 of overhead
  EXPECT_EQ(made.price_by.coins(), 2860);
  EXPECT_EQ(made.touched, std::vector<plan::ElementId>{"A1"});
}

TEST(Compare, aStepThatIsGoneStandsWhereItStood) {
  Kept before = kept({}, 10), after = kept({});
  before.steps.push_back({"tax", "Tax", Money::of_coins(5), ""});
  after.steps.push_back({"tax", "Tax", Money::of_coins(4), ""});
  const auto made = estimate::compare(before, after);
  ASSERT_EQ(made.steps.size(), 3u);
  EXPECT_EQ(made.steps[1].code, "overhead");
  EXPECT_EQ(made.steps[1].after.coins(), 0);
  EXPECT_EQ(made.total_by.coins(), -11);  // 0 - 10 and 4 - 5
}

TEST(Compare, twoCurrenciesAreNotComparable) {
  Kept other = kept({line("dig", "truck", 1, 100)});
  other.currency = "EUR";
  const auto made = estimate::compare(kept({}), other);
  EXPECT_FALSE(made.comparable);
  EXPECT_TRUE(made.changes.empty());
  other.currency = "USD";
  other.decimals = 0;
  EXPECT_FALSE(estimate::compare(kept({}), other).comparable);
}

TEST(Compare, aSupplierThatIsLeftOutIsOneChange) {
  // Three deliveries alike but for their words; the first goes. By number alone three lines would seem to differ.
  std::vector<KeptLine> all(3, line("base", "delivery", 1, 500));
  for (std::size_t i = 0; i < all.size(); ++i) all[i].description = std::string("from yard ") + "abc"[i];
  const auto made = estimate::compare(kept(all), kept({all[1], all[2]}));
  ASSERT_EQ(made.changes.size(), 1u);
  EXPECT_EQ(made.changes[0].before->description, "from yard a");
}

// Few stages, items and words, so that lines meet, double and differ in all ways.
Kept random_kept() {
  std::vector<KeptLine> lines;
  for (int count = *rc::gen::inRange(0, 12); count > 0; --count) {
    static const std::vector<std::string> stages{"dig", "paving", "nowhere"}, items{"a", "b"};
    KeptLine made = line(*rc::gen::elementOf(stages), *rc::gen::elementOf(items), *rc::gen::inRange(0, 3),
                         *rc::gen::inRange(-5000, 5000));
    if (*rc::gen::inRange(0, 4) == 0) made.amount.reset();
    if (*rc::gen::inRange(0, 3) == 0) made.kind = plan::CostKind::labour;
    if (*rc::gen::inRange(0, 2) == 0) made.description = "other";
    lines.push_back(std::move(made));
  }
  return kept(std::move(lines), *rc::gen::inRange(-300, 300));
}

RC_GTEST_PROP(CompareRandom, everyCoinIsInOneChangeAndTheWayBackIsTheNegative, ()) {
  const Kept a = random_kept(), b = random_kept();
  const auto there = estimate::compare(a, b), back = estimate::compare(b, a);
  Money sum;
  std::size_t before = 0, after = 0;
  for (const auto& change : there.changes) {
    sum += change.by;
    before += change.before.has_value();
    after += change.after.has_value();
    RC_ASSERT(!(change.before && change.after && *change.before == *change.after));
  }
  RC_ASSERT(sum == b.direct - a.direct);
  RC_ASSERT(there.direct_by == sum);
  RC_ASSERT(there.total_by == b.total - a.total);
  RC_ASSERT(before <= a.lines.size() && after <= b.lines.size());
  RC_ASSERT(a.lines.size() - before == b.lines.size() - after);  // what is left is equal, pair by pair
  RC_ASSERT(back.direct_by == -there.direct_by && back.total_by == -there.total_by);
  RC_ASSERT(back.changes.size() == there.changes.size());
  RC_ASSERT(back.touched == there.touched);
}

RC_GTEST_PROP(CompareRandom, ofAJobWithItselfIsEmpty, ()) {
  Kept a = random_kept();
  const auto same = estimate::compare(a, a);
  RC_ASSERT(same.changes.empty() && same.touched.empty() && same.total_by == Money());
}

RC_GTEST_PROP(CompareRandom, orderAndDoublingLoseNoCoin, ()) {
  const Kept a = random_kept();
  Kept b = a;
  std::ranges::reverse(b.lines);
  RC_ASSERT(estimate::compare(a, b).direct_by == Money());
  b.lines.insert(b.lines.end(), a.lines.begin(), a.lines.end());
  RC_ASSERT(estimate::compare(a, b).direct_by == a.direct);
}

}  // namespace
