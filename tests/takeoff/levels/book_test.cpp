#include "takeoff/levels/book.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace {

using plan::LevelBook;
using plan::RodReading;
using takeoff::levels::reduce;
using takeoff::levels::Reduced;
using units::Length;
using Sight = std::optional<Length>;

constexpr double foot = units::metres_per_foot;

// Hundredths of a foot to the nearest step: 0.01 ft is 975.36 steps, so a reading is within half a step, 1.6 um.
Length hundredths(double count) { return Length::nearest(units::Metres(count / 100 * foot)); }
Length ft(double feet) { return Length::nearest(units::Metres(feet * foot)); }

RodReading back(std::string point, double feet) { return {std::move(point), ft(feet), {}, {}, ""}; }
RodReading between(std::string point, double feet) { return {std::move(point), {}, ft(feet), {}, ""}; }
RodReading fore(std::string point, double feet) { return {std::move(point), {}, {}, ft(feet), ""}; }
RodReading turn(std::string point, double fore_feet, double back_feet) {
  return {std::move(point), ft(back_feet), {}, ft(fore_feet), ""};
}

LevelBook book(double start, std::vector<RodReading> readings) {
  LevelBook made;
  made.start = ft(start);
  made.readings = std::move(readings);
  return made;
}

Reduced reduced(const LevelBook& of) {
  auto result = reduce(of, "LB");
  if (result) return std::move(*result);
  ADD_FAILURE() << problem::sentence(result.error());
  return {};
}

std::string fault_of(const LevelBook& of) {
  const auto result = reduce(of, "LB");
  return result ? "reduced" : result.error().code + ": " + problem::sentence(result.error());
}

plan::Job empty_job() {
  plan::Job job;
  job.catalogue = std::make_shared<const catalogue::Catalogue>();
  return job;
}

// Bench mark 100.50; the pool terrace's book as it was read, in feet.
LevelBook terrace() {
  LevelBook made = book(100.50, {back("BM", 3.42), between("coping", 3.92), between("e4", 4.30),
                                 between("outlet", 5.92), turn("TP", 6.08, 5.81), fore("BM", 3.14)});
  made.finish = ft(100.50);
  return made;
}

}  // namespace

// A published level run (a set problem of differential levelling: A 100.00, B known 94.91), feet; tolerance 0.001 ft.
TEST(LevelBook, publishedRunOfFourSetUps) {
  LevelBook run = book(
      100.00, {back("A", 3.10), turn("1", 9.82, 6.44), turn("2", 6.96, 8.76), turn("3", 3.27, 7.12), fore("B", 10.42)});
  run.finish = ft(94.91);
  const Reduced found = reduced(run);
  const double instruments[] = {103.10, 99.72, 101.52, 105.37, 105.37};
  const double heights[] = {100.00, 93.28, 92.76, 98.25, 94.95};
  ASSERT_EQ(found.rows.size(), 5u);
  for (std::size_t i = 0; i < 5; ++i) {
    EXPECT_NEAR(*found.rows[i].instrument / foot, instruments[i], 0.001) << i;
    EXPECT_NEAR(found.rows[i].height / foot, heights[i], 0.001) << i;
    EXPECT_EQ(found.rows[i].correction, 0) << i;
  }
  EXPECT_NEAR(found.sum_back / foot, 25.42, 0.001);
  EXPECT_NEAR(found.sum_fore / foot, 30.47, 0.001);
  EXPECT_NEAR(*found.misclosure / foot, 0.04, 0.001);
  EXPECT_EQ(found.set_ups, 4);
}

// Shared out: 0.04 over 4 set-ups is 0.01 down more at each.
TEST(LevelBook, theMisclosureIsSharedOutEvenlyOverTheSetUps) {
  LevelBook run = book(100.00, {back("A", 3.10), turn("1", 9.82, 6.44), between("x", 5.00), turn("2", 6.96, 8.76),
                                turn("3", 3.27, 7.12), fore("B", 10.42)});
  run.finish = ft(94.91);
  run.share_out = true;
  const Reduced found = reduced(run);
  const double heights[] = {100.00, 93.27, 94.70, 92.74, 98.22, 94.91};  // x: 99.72 - 5.00 - 0.02, of the 2nd set-up
  const double corrections[] = {0, -0.01, -0.02, -0.02, -0.03, -0.04};
  for (std::size_t i = 0; i < 6; ++i) {
    EXPECT_NEAR(found.rows[i].height / foot, heights[i], 0.0001) << i;
    EXPECT_NEAR(found.rows[i].correction / foot, corrections[i], 0.0001) << i;
  }
  EXPECT_EQ(found.rows.back().height, run.finish->metres().si());
  EXPECT_NEAR(*found.misclosure / foot, 0.04, 0.0001);  // as read
}

// 100.50 + 3.42 = 103.92; 103.92 - 6.08 = 97.84; 97.84 + 5.81 = 103.65; - 3.14 = 100.51. All sights are hundredths of a
// foot, which the grid holds to half a step each; four of them carry the misclosure.
TEST(LevelBook, theTerraceIsReducedAndCloses) {
  const Reduced found = reduced(terrace());
  const double heights[] = {100.50, 100.00, 99.62, 98.00, 97.84, 100.51};
  for (std::size_t i = 0; i < 6; ++i) EXPECT_NEAR(found.rows[i].height / foot, heights[i], 3 * 1.6e-6 / foot) << i;
  EXPECT_NEAR(*found.rows[0].instrument / foot, 103.92, 2 * 1.6e-6 / foot);
  EXPECT_NEAR(*found.rows[4].instrument / foot, 103.65, 4 * 1.6e-6 / foot);
  EXPECT_NEAR(*found.misclosure, 0.01 * foot, 4 * 1.6e-6);
  EXPECT_NEAR(found.sum_back - found.sum_fore, *found.misclosure, 1e-12);
  EXPECT_EQ(found.set_ups, 2);
}

// The two-peg test of Basak, Surveying and Levelling, metres: midway 1.585 and 1.225, beside A 1.425 and 1.150, pegs
// 100 m apart: the far rod should read 1.065, the level reads 0.085 too high in 100 m.
TEST(LevelBook, twoPegTest) {
  const auto found = takeoff::levels::two_peg(1.585, 1.225, 1.425, 1.150);
  EXPECT_NEAR(found.difference, -0.360, 1e-9);
  EXPECT_NEAR(found.far_should, 1.065, 1e-9);
  EXPECT_NEAR(found.error, 0.085, 1e-9);
}

TEST(LevelBook, everyFaultNamesItsRow) {
  EXPECT_EQ(fault_of(book(100, {})).substr(0, 17), "level-book-empty:");
  EXPECT_EQ(fault_of(book(100, {back("A", 3)})).substr(0, 17), "level-book-empty:");
  const auto expect = [](LevelBook of, const std::string& code, const std::string& row) {
    const std::string said = fault_of(of);
    EXPECT_TRUE(said.starts_with("level-book-" + code + ":")) << said;
    EXPECT_NE(said.find(row), std::string::npos) << said;
    EXPECT_NE(said.find("; "), std::string::npos) << "no mend: " << said;
  };
  expect(book(100, {between("A", 3), fore("B", 2)}), "start", "row 1 (A)");
  expect(book(100, {turn("A", 3, 4), fore("B", 2)}), "start", "row 1 (A)");
  expect(book(100, {back("A", 3), {"x", {}, {}, {}, ""}, fore("B", 2)}), "no-sight", "row 2 (x)");
  RodReading both = fore("x", 2);
  both.between = ft(1);
  expect(book(100, {back("A", 3), both}), "between", "row 2 (x)");
  expect(book(100, {back("A", 3), back("x", 2), fore("B", 2)}), "back", "row 2 (x)");
  expect(book(100, {back("A", 3), fore("x", 2), between("B", 2)}), "turn", "row 2 (x)");
  LevelBook open = book(100, {back("A", 3), between("x", 2)});
  EXPECT_EQ(fault_of(open), "reduced");
  open.finish = ft(101);
  expect(open, "open", "row 2 (x)");
  expect(book(40000, {back("A", 3), between("x", 2)}), "range", "row 1 (A)");  // 40,000 ft are 12.2 km
  expect(book(0, {back("A", 3), between("x", 40000)}), "range", "row 2 (x)");
}

// A book is good at every row while it is written: closed 3 + 2 back, 4 + 1 fore; open 3 back, 4 fore.
TEST(LevelBook, aBacksightCountsOnceAForesightHasFollowed) {
  const Reduced found = reduced(book(100, {back("A", 3), turn("T", 4, 2), fore("U", 1)}));
  EXPECT_NEAR(found.sum_back / foot, 5, 1e-9);
  EXPECT_NEAR(found.sum_fore / foot, 5, 1e-9);
  const Reduced open = reduced(book(100, {back("A", 3), turn("T", 4, 2), between("x", 1)}));
  EXPECT_NEAR(open.sum_back / foot, 3, 1e-9);
  EXPECT_NEAR(open.sum_fore / foot, 4, 1e-9);
  EXPECT_NEAR(open.rows.back().height / foot, 100, 1e-9);  // 99 + 2 - 1
}

// The allowance is 0.02 ft for one set-up, times sqrt(2) here: 0.028 ft. The terrace closes within it; a foresight of
// 3.10 in place of 3.14 leaves 0.05 ft.
TEST(LevelBook, aMisreadRodIsFlaggedSharedOutOrNot) {
  const plan::Job job = empty_job();
  const auto judged = [&](const LevelBook& of) { return takeoff::levels::judged(reduced(of), of, job, "LB"); };
  LevelBook run = terrace();
  EXPECT_TRUE(judged(run).empty());
  run.share_out = true;
  ASSERT_EQ(judged(run).size(), 1u);
  EXPECT_EQ(judged(run).front().code, "level-book-shared");
  run.readings.back().fore = ft(3.10);
  for (const bool shared : {false, true}) {
    run.share_out = shared;
    ASSERT_EQ(judged(run).size(), 1u);
    EXPECT_EQ(judged(run).front().code, "level-book-misclosure");
    EXPECT_EQ(judged(run).front().severity, problem::Severity::flag);
    EXPECT_EQ(judged(run).front().place.element, "LB");
  }
  run.finish.reset();
  ASSERT_EQ(judged(run).size(), 1u);
  EXPECT_EQ(judged(run).front().code, "level-book-not-closed");
  EXPECT_EQ(judged(run).front().severity, problem::Severity::notice);
}

namespace {

Length drawn_sight() { return hundredths(*rc::gen::inRange(0, 1500)); }

// A closed run of 1 to 8 set-ups with up to three intermediate sights at each; closes within a foot.
LevelBook drawn_book() {
  LevelBook made;
  made.start = hundredths(*rc::gen::inRange(-20000, 20000));
  made.readings.push_back({"start", drawn_sight(), {}, {}, ""});
  const int set_ups = *rc::gen::inRange(1, 9);
  Length height = made.start + *made.readings.front().back;
  for (int n = 1; n <= set_ups; ++n) {
    for (int i = *rc::gen::inRange(0, 4); i > 0; --i) made.readings.push_back({"i", {}, drawn_sight(), {}, ""});
    const Length fore_sight = drawn_sight();
    const Sight back_sight = n < set_ups ? Sight(drawn_sight()) : std::nullopt;
    made.readings.push_back({"t", back_sight, {}, fore_sight, ""});
    height += back_sight.value_or(Length{}) - fore_sight;
  }
  made.finish = height + hundredths(*rc::gen::inRange(-100, 101));
  return made;
}

}  // namespace

RC_GTEST_PROP(LevelBookProperties, backsightsLessForesightsCarryTheRun, ()) {
  const LevelBook run = drawn_book();
  const Reduced found = *reduce(run, "LB");
  RC_ASSERT(std::abs((found.sum_back - found.sum_fore) - (found.rows.back().height - found.rows.front().height)) <
            1e-9);
  double back_read = 0;
  for (const RodReading& row : run.readings) back_read += row.back.value_or(Length{}).metres().si();
  RC_ASSERT(std::abs(found.sum_back - back_read) < 1e-9);  // a closed run: all of them
}

// Rise and fall, row by row, is the other way to book the same readings: each height from the one before it.
RC_GTEST_PROP(LevelBookProperties, riseAndFallGivesTheSameHeights, ()) {
  const LevelBook run = drawn_book();
  const Reduced found = *reduce(run, "LB");
  double height = run.start.metres().si();
  double before = run.readings.front().back->metres().si();
  for (std::size_t i = 1; i < run.readings.size(); ++i) {
    const RodReading& row = run.readings[i];
    const double here = (row.between ? *row.between : *row.fore).metres().si();
    height += before - here;
    RC_ASSERT(std::abs(found.rows[i].height - height) < 1e-9);
    before = row.back ? row.back->metres().si() : here;
  }
}

RC_GTEST_PROP(LevelBookProperties, sharedOutTheRunClosesAndTheFirstHeightStays, ()) {
  LevelBook run = drawn_book();
  const Reduced read = *reduce(run, "LB");
  run.share_out = true;
  const Reduced found = *reduce(run, "LB");
  RC_ASSERT(found.rows.front().height == run.start.metres().si());
  RC_ASSERT(found.rows.back().height == run.finish->metres().si());
  RC_ASSERT(found.misclosure == read.misclosure);
  double most = 0;
  for (std::size_t i = 0; i < found.rows.size(); ++i) {
    RC_ASSERT(std::abs(found.rows[i].height - read.rows[i].height - found.rows[i].correction) < 1e-9);
    RC_ASSERT(std::abs(found.rows[i].correction) >= most - 1e-12);  // it grows along the run
    most = std::abs(found.rows[i].correction);
  }
}

RC_GTEST_PROP(LevelBookProperties, aHeightNeverDependsOnLaterRows, ()) {
  LevelBook run = drawn_book();
  run.finish.reset();
  const Reduced whole = *reduce(run, "LB");
  while (run.readings.size() > 2) {
    run.readings.pop_back();
    const Reduced shorter = *reduce(run, "LB");
    for (std::size_t i = 0; i < shorter.rows.size(); ++i) RC_ASSERT(shorter.rows[i].height == whole.rows[i].height);
  }
}
