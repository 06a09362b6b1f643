#include "estimate/estimate.h"

#include <rapidcheck.h>

#include "estimate/estimate_kit.h"
#include "estimate/totals.h"

namespace {

using namespace estimate_kit;
using takeoff::Stage;

TEST(Estimate, LinesOfOneItemAndStageAreRoundedOnce) {
  auto first = line(Stage::paving, "spike-10", amount(0.4, units::piece), {"A1"});
  auto second = line(Stage::paving, "spike-10", amount(0.4, units::piece), {"A2"});
  const auto other = line(Stage::joints, "spike-10", amount(0.4, units::piece), {"A2"});
  const auto made = estimate::estimate(starter_job(), takeoff_of({first, second, other}));
  int lines = 0;
  for (const auto& one : made.lines) {
    if (one.item != "spike-10") continue;
    ++lines;
    EXPECT_EQ(one.order_quantity, 1);
    if (one.stage == Stage::paving) {
      EXPECT_EQ(one.of, (std::vector<std::string>{"A1", "A2"}));
    }
  }
  EXPECT_EQ(lines, 2);
}

TEST(Estimate, UnlikeUnitsOfOneItemStandApart) {
  const auto made = estimate::estimate(
      starter_job(), takeoff_of({line(Stage::joints, "joint-sand", amount(100, units::kilogram)),
                                 line(Stage::joints, "joint-sand", amount(0.1, units::cubic_metre))}));
  int lines = 0;
  for (const auto& one : made.lines) lines += one.item == "joint-sand" ? 1 : 0;
  EXPECT_EQ(lines, 2);
  EXPECT_TRUE(made.final);
}

TEST(Estimate, TheAllowanceOfALineStandsInPlaceOfBreakage) {
  auto with = line(Stage::paving, "spike-10", amount(100, units::piece));
  EXPECT_EQ(line_of(estimate::estimate(starter_job(), takeoff_of({with})), "spike-10").order_quantity, 103);
  with.allowance = 0;
  EXPECT_EQ(line_of(estimate::estimate(starter_job(), takeoff_of({with})), "spike-10").order_quantity, 100);
  with.allowance = 0.1;
  EXPECT_EQ(line_of(estimate::estimate(starter_job(), takeoff_of({with})), "spike-10").order_quantity, 110);
}

TEST(Estimate, AnUnknownItemIsNamedAndTheRestIsPriced) {
  const auto made =
      estimate::estimate(starter_job(), takeoff_of({line(Stage::paving, "no-such-item", amount(3, units::piece)),
                                                    line(Stage::paving, "spike-10", amount(100, units::piece))}));
  const auto* problem = said(made, "item-unknown");
  ASSERT_NE(problem, nullptr);
  EXPECT_EQ(problem->place.element, "A1");
  EXPECT_NE(problem->text.find("no-such-item"), std::string::npos);
  EXPECT_FALSE(problem->mend.empty());
  EXPECT_FALSE(made.final);
  EXPECT_EQ(coins(line_of(made, "spike-10")), 103 * 95);
}

TEST(Estimate, ALineWithoutAPriceKeepsTheTotalOpen) {
  catalogue::Catalogue book = starter();
  auto item = std::make_shared<catalogue::Item>(*book.item("spike-10"));
  item->price.reset();
  book.items[item->id] = item;
  const auto made = estimate::estimate(job_with(std::move(book)),
                                       takeoff_of({line(Stage::joints, "spike-10", amount(10, units::piece))}));
  ASSERT_NE(said(made, "no-price"), nullptr);
  EXPECT_EQ(line_of(made, "spike-10").order_quantity, 11);
  EXPECT_FALSE(line_of(made, "spike-10").amount.has_value());
  EXPECT_FALSE(made.final);
}

TEST(Estimate, AProblemOfTheTakeoffKeepsTheTotalOpenAndAFlagDoesNot) {
  takeoff::Takeoff taken = takeoff_of({line(Stage::joints, "spike-10", amount(10, units::piece))});
  taken.problems.push_back({problem::Severity::flag, "slope", "to be decided", "ask", {}});
  EXPECT_TRUE(estimate::estimate(starter_job(), taken).final);
  taken.problems.push_back({problem::Severity::problem, "shape", "it crosses itself", "redraw it", {}});
  EXPECT_FALSE(estimate::estimate(starter_job(), taken).final);
}

// 28 short tons are said so where the job is read in metres; the order unit itself stays the catalogue's.
TEST(Estimate, TonsOfTwoThousandPoundsAreNamedInMetricJobs) {
  plan::Job job = starter_job();
  const auto wanted = takeoff_of({line(Stage::base, "agg-no57", amount(25000, units::kilogram))});
  EXPECT_TRUE(line_of(estimate::estimate(job, wanted), "agg-no57").sentence.starts_with("28 tons: 27.56 needed"));
  job.heading.units = units::System::metric;
  const auto made = estimate::estimate(job, wanted);
  EXPECT_TRUE(line_of(made, "agg-no57").sentence.starts_with("28 short tons: 27.56 needed"));
  EXPECT_EQ(line_of(made, "agg-no57").order_unit, "ton");
}

TEST(Estimate, RulesOfThumbAndSumsAreMarked) {
  auto thumb = line(Stage::joints, "joint-sand", amount(10, units::kilogram));
  thumb.approximate = true;
  const auto made = estimate::estimate(starter_job(),
                                       takeoff_of({thumb, line(Stage::coping, "bond-allow", amount(1, units::piece))}));
  EXPECT_TRUE(line_of(made, "joint-sand").allowance);
  EXPECT_TRUE(line_of(made, "bond-allow").allowance);
  EXPECT_NE(line_of(made, "bond-allow").sentence.find("an allowance"), std::string::npos);
}

TEST(Estimate, ByStageMaterialBeforeWork) {
  const takeoff::Task work{Stage::dig, "dig-open", "dig", {"A1"}, amount(10, units::cubic_metre), 1, {}};
  const auto made =
      estimate::estimate(starter_job(), takeoff_of({line(Stage::dig, "truck-tandem", amount(3, units::piece)),
                                                    line(Stage::joints, "spike-10", amount(10, units::piece))},
                                                   {work}));
  for (std::size_t i = 1; i < made.lines.size(); ++i) {
    const auto& before = made.lines[i - 1];
    const auto& after = made.lines[i];
    EXPECT_TRUE(before.stage < after.stage || (before.stage == after.stage && before.work <= after.work));
  }
  // 10 m3 x 0.19619 h / 1.5 people = 1.31 h of the excavator: half a day, and its hire stands with the work's stage.
  EXPECT_EQ(line_of(made, "excavator-mini").order_quantity, 0.5);
  EXPECT_EQ(line_of(made, "excavator-mini").stage, Stage::dig);
  EXPECT_TRUE(made.final);
}

// A bill of 1908 for kerb and gutter: eight supplies 41.17, labour 304.33, material 367.56, in all 713.06 (a
// contractors' cost book, p. 129).
TEST(Estimate, LinesAddUpToTheBill) {
  estimate::Estimate bill;
  const auto add = [&bill](std::int64_t coins, bool work) {
    bill.lines.push_back({Stage::coping,
                          "i",
                          "",
                          {},
                          1,
                          "piece",
                          1,
                          "piece",
                          {},
                          units::Money::of_coins(coins),
                          false,
                          work,
                          false,
                          amount(1, units::piece),
                          {}});
  };
  for (const std::int64_t supply : {925, 412, 1425, 430, 142, 143, 325, 315}) add(supply, false);
  estimate::add_up(bill);
  EXPECT_EQ(bill.total.amount().coins(), 4117);
  add(30433, true);
  add(36756, false);
  estimate::add_up(bill);
  EXPECT_EQ(bill.total.amount().coins(), 71306);
  EXPECT_EQ(bill.total.work.coins(), 30433);
  EXPECT_EQ(bill.stages.at(Stage::coping).amount().coins(), 71306);
}

TEST(Estimate, RandomTakeoffsAddUpAndKeepTheirWorking) {
  const std::vector<std::pair<std::string, units::Unit>> kinds{
      {"unit-4x8-60", units::piece},        {"agg-no57", units::kilogram},
      {"agg-no8", units::cubic_metre},      {"rod-5_8", units::metre},
      {"joint-polymer", units::kilogram},   {"conc-ready", units::cubic_metre},
      {"seal-tube-29", units::cubic_metre}, {"mesh-5x10", units::square_metre},
      {"fabric-nw-12", units::metre}};
  EXPECT_TRUE(rc::check("every order line", [&kinds] {
    std::vector<takeoff::Line> lines;
    const int count = *rc::gen::inRange(0, 12);
    for (int i = 0; i < count; ++i) {
      const auto& [item, unit] = kinds[static_cast<std::size_t>(*rc::gen::inRange(0, static_cast<int>(kinds.size())))];
      lines.push_back(line(takeoff::all_stages[static_cast<std::size_t>(*rc::gen::inRange(0, 9))], item,
                           amount(*rc::gen::inRange(1, 100000) / 16.0, unit)));
    }
    const auto taken = takeoff_of(lines);
    const auto made = estimate::estimate(starter_job(), taken);
    RC_ASSERT(made.final);
    units::Money sum;
    for (const auto& one : made.lines) {
      sum += *one.amount;
      RC_ASSERT(one.working.amount().value == one.order_quantity);
      RC_ASSERT(one.working.amount().unit == units::piece);
    }
    RC_ASSERT(sum == made.total.amount());
    units::Money stages;
    for (const auto& [stage, total] : made.stages) stages += total.amount();
    RC_ASSERT(stages == sum);
  }));
}

}  // namespace
