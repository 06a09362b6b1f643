// The day at the saw: as many pieces and as much cut as the takeoff has, each setting once.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "office_kit.h"
#include "sheets/saw_cuts.h"
#include "sheets/saw_list.h"
#include "sheets/source.h"
#include "sheets/stock_pieces.h"
#include "takeoff/paving/area.h"

namespace {

using sheets::SawCut;
using sheets::SawList;

double measure(const results::Results& results, const std::string& name) {
  double sum = 0;
  for (const takeoff::Measures& own : results.takeoff.measures) sum += own.get(name).value_or(0);
  return sum;
}

std::vector<SawCut> only(const sheets::Printed& printed, void (*part)(SawList&)) {
  SawList list(printed);
  part(list);
  return std::move(list).sorted();
}

int pieces(const std::vector<SawCut>& cuts) {
  int sum = 0;
  for (const SawCut& cut : cuts) sum += cut.pieces;
  return sum;
}
double metres(const std::vector<SawCut>& cuts) {
  double sum = 0;
  for (const SawCut& cut : cuts) sum += cut.metres;
  return sum;
}

class CutList : public testing::TestWithParam<const char*> {
 protected:
  const results::Results& results() const { return demo::results(GetParam()); }
  sheets::Printed printed() const { return office::printed(results()); }
};

TEST_P(CutList, FieldsHaveThePiecesAndTheMetresOfTheTakeoff) {
  double cut = 0;
  for (const takeoff::Measures& own : results().takeoff.measures)
    if (results().takeoff.layouts.contains(own.element)) cut += own.get("units_cut").value_or(0);
  const std::vector<SawCut> cuts = only(printed(), sheets::add_fields);
  EXPECT_EQ(pieces(cuts), static_cast<int>(cut));
  EXPECT_NEAR(metres(cuts), measure(results(), "cut_length_m"), 1e-6);
}

// What has a fence or an angle is cut once and straight; all else is marked in its place.
TEST_P(CutList, WhatFollowsACurveHasNoFence) {
  for (const SawCut& cut : only(printed(), sheets::add_fields)) {
    const bool by_eye = cut.what == "along a curve" || cut.what == "notched" || cut.what == "cut more than once";
    EXPECT_EQ(by_eye, cut.most == 0) << cut.what;
    EXPECT_TRUE(!by_eye || (cut.marked && cut.angle == 0)) << cut.what;
  }
}

TEST_P(CutList, BordersHaveTheMetresThatWereLaid) {
  double laid = 0, squares = 0;
  for (const auto& ground : results().site.grounds) {
    if (!std::holds_alternative<plan::PavedArea>(ground->element->kind)) continue;
    for (const auto& border : takeoff::paving::lay_area(*results().job, results().site, *ground).borders)
      for (const takeoff::paving::RowMake& run : border.runs) laid += run.cut_length;
  }
  const std::vector<SawCut> cuts = only(printed(), sheets::add_borders);
  for (const SawCut& cut : cuts)
    if (cut.what == "across, square for a corner") squares += cut.metres;
  EXPECT_NEAR(metres(cuts) - squares, laid, 1e-6);
}

TEST_P(CutList, BlocksHaveTheCutsOfTheTakeoff) {
  int cuts = 0;
  double length = 0;
  for (const takeoff::Cut& cut : results().takeoff.cuts) {
    cuts += cut.count;
    length += cut.count * cut.length;
  }
  const std::vector<SawCut> found = only(printed(), sheets::add_blocks);
  EXPECT_EQ(pieces(found), cuts);
  EXPECT_NEAR(metres(found), length, 1e-6);
}

TEST_P(CutList, SettingsOfAnItemDifferAndSquareOnesComeFirst) {
  const std::vector<SawCut> cuts = sheets::saw_cuts(printed());
  for (std::size_t i = 1; i < cuts.size(); ++i) {
    const SawCut &a = cuts[i - 1], &b = cuts[i];
    if (a.item != b.item || std::abs(a.thickness - b.thickness) > 1e-4) continue;
    EXPECT_FALSE(a.what == b.what && a.keep == b.keep && a.marked == b.marked && a.from_offcut == b.from_offcut &&
                 std::abs(a.angle - b.angle) < 1e-6 && std::abs(a.least - b.least) < 1e-4 &&
                 std::abs(a.most - b.most) < 1e-4)
        << a.item << " " << a.what;
    if (!(a.marked && a.angle == 0) && !(b.marked && b.angle == 0)) {
      EXPECT_LE(a.angle, b.angle + 1e-9) << a.item;
    }
  }
}

TEST_P(CutList, RollsAreThoseThatAreBoughtForTheWalls) {
  double ordered = 0;
  for (const takeoff::Line& line : results().takeoff.lines) {
    const catalogue::Item* item = results().job->catalogue->item(line.item);
    if (item && item->kind == "reinforcement") ordered += line.working.amount().value;
  }
  int rolls = 0, in_ways = 0;
  for (const sheets::RollPlan& plan : sheets::roll_plans(printed())) {
    rolls += plan.rolls;
    for (const sheets::RollPlan::Way& way : plan.ways) in_ways += way.rolls;
  }
  EXPECT_EQ(rolls, static_cast<int>(std::lround(ordered)));
  EXPECT_EQ(rolls, in_ways);
}

TEST_P(CutList, EachNumberLeadsToItsWorkingAndNoneIsAPrice) {
  const sheets::Printed made = printed();
  const sheets::Sheet sheet = sheets::cut_list(made);
  EXPECT_FALSE(sheet.money);
  std::set<std::string> asked;
  for (const sheets::Said& said : office::cells(sheet, true)) {
    EXPECT_EQ(said.words.find(made.job().heading.currency), std::string::npos) << said.words;
    if (!office::has_digit(said.words) || !asked.insert(said.from).second) continue;
    const auto working = sheets::working_of(made, said.from);
    EXPECT_TRUE(working && !working->empty()) << said.words << " from " << said.from;
  }
}

INSTANTIATE_TEST_SUITE_P(Demo, CutList, testing::Values("pool-terrace-a", "pool-terrace-b", "bakery-court"));

TEST(SawRow, TapersClosersAndMitres) {
  const sheets::Printed printed = office::printed(demo::results());
  catalogue::Item unit;
  unit.id = "unit";
  unit.length = units::Length::inches(12);
  unit.height = units::Length::inches(2);
  SawList list(printed);
  sheets::RowCuts row{&unit, 0.3048, 0.3048, {}, 0, 0};
  row.make.how = takeoff::paving::RowMake::How::straight_closers;
  row.make.pieces = 10;
  row.make.near_face = row.make.far_face = 0.2286;  // 9 in
  row.corner_after = std::acos(-1.0) / 2;
  sheets::add_row(list, row, "P1");
  row.make.how = takeoff::paving::RowMake::How::straight_even;  // whole ones with their joints opened
  row.make.near_face = 0.3048;
  row.corner_after = 0;
  sheets::add_row(list, row, "P1");
  const std::vector<SawCut> cuts = std::move(list).sorted();
  ASSERT_EQ(cuts.size(), 2u);
  // Two closers of 9 in, cut square across 12 in: 2 x 0.3048 m.
  EXPECT_EQ(cuts[0].pieces, 2);
  EXPECT_NEAR(cuts[0].least, 0.2286, 1e-9);
  EXPECT_NEAR(cuts[0].metres, 0.6096, 1e-9);
  // Half of a square corner: 45 degrees, 0.3048 m x sqrt 2.
  EXPECT_EQ(cuts[1].pieces, 1);
  EXPECT_NEAR(cuts[1].angle, std::acos(-1.0) / 4, 1e-9);
  EXPECT_NEAR(cuts[1].metres, 0.3048 * std::sqrt(2.0), 1e-9);
}

TEST(CutListSheet, OfAnEmptyJobIsOneSentence) {
  plan::Job job;
  job.catalogue = std::make_shared<const catalogue::Catalogue>();
  EXPECT_TRUE(office::says(sheets::cut_list(office::printed(job)), "Nothing is cut on this job."));
}

}  // namespace
