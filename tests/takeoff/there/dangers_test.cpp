// What can hurt people: guards, digs by footings and shells, paving on backfill, by closed form.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <numbers>

#include "takeoff/there/kit.h"
#include "units/number.h"

namespace {

using namespace kit;  // NOLINT(google-build-using-namespace): the words of these tests
using takeoff::Share;
using takeoff::levels::Terrain;
using yard::at;
using yard::paved;
using yard::rectangle;

std::string one(const Share& share, const std::string& code) {
  const auto all = texts(share, code);
  EXPECT_LE(all.size(), 1u);
  return all.empty() ? "" : all.front();
}
std::string square_feet(double value) { return units::show_number(value, 1) + " sq ft"; }

// A deck of 20 x 20 ft with its base of dense stone, 7 3/8 in deep in all, and `gap` inches north of it a house.
plan::Job by_house(long gap, std::optional<long> footing) {
  return yard::job(
      {paved("A1", rectangle(0, 0, 240, 240), "dense"), building("H1", rectangle(-600, 240 + gap, 900, 600), footing)});
}

TEST(Trench, BelowTheLineOfAFooting) {
  // 7.375 in deep against the wall, footing 4 in down: 3.375 in of the deck break the line, 20 ft long, and as much of
  // the 6 in of base past its ends.
  const std::string text = one(dangers(by_house(0, 4)), "trench-by-footing");
  EXPECT_TRUE(has(text, "A1 " + square_feet(21 * 3.375 / 12))) << text;
  EXPECT_TRUE(has(text, "up to 7 3/8\" deep")) << text;
  // As deep as the footing: no.
  EXPECT_TRUE(dangers(by_house(0, 8)).problems.empty());
  // A footing 1 in down, the base of the deck ending 4 in from the house (10 less 6): 6.375 less 4 in are left.
  EXPECT_TRUE(has(one(dangers(by_house(10, 1)), "trench-by-footing"), square_feet(21 * 2.375 / 12)));
  // 13 in away the base ends at 7 in: no.
  EXPECT_TRUE(dangers(by_house(13, 1)).problems.empty());
}

TEST(Trench, AFootingOfUnknownDepth) {
  EXPECT_TRUE(has(one(dangers(by_house(0, {})), "footing-unknown"), "not known"));
  EXPECT_TRUE(dangers(by_house(36, {})).problems.empty());  // further than the dig is deep
}

TEST(Trench, TheGroundAsItLiesCounts) {
  // The deck is finished 6 in under the ground: 13.375 in deep, footing 12 in down.
  Terrain terrain;
  terrain.existing = slope(0, 0, 0, -1000, -1000, 1000, 1000);
  terrain.finished["A1"] = slope(-6 * in, 0, 0, 0, 0, 240, 240);
  EXPECT_TRUE(has(one(dangers(by_house(0, 12), terrain), "trench-by-footing"), square_feet(21 * 1.375 / 12)));
  terrain.finished["A1"] = slope(0, 0, 0, 0, 0, 240, 240);
  EXPECT_TRUE(dangers(by_house(0, 12), terrain).problems.empty());
}

TEST(Trench, APipeByAFooting) {
  // Ground level at 0; a pipe towards the house, invert 24 in down at its start, falling 1 in 10 away from it. Footing
  // 12 in down. Depth with 3 in of bed at x from the house: 27 + x / 10; it breaks the line where 27 + x / 10 - 12 > x:
  // x < 15 / 0.9 = 16.667 in.
  plan::DrainRun pipe;
  pipe.what = "pipe";
  pipe.line = line({at(120, 240), at(120, 0)});
  pipe.start = Length::inches(-24);
  pipe.fall = 0.1;
  const auto job = yard::job({{"D1", "", pipe}, building("H1", rectangle(0, 240, 240, 480), 12)});
  Terrain terrain;
  terrain.existing = slope(0, 0, 0, -1000, -1000, 1000, 1000);
  const std::string text = one(dangers(job, terrain), "trench-by-footing");
  EXPECT_TRUE(has(text, "D1 for 1' 4 11/16\"")) << text;  // 16.667
  EXPECT_TRUE(dangers(job).problems.empty());             // no levels: the run itself says so
  pipe.start = Length::inches(-8);                        // 11 + x / 10 under 12 + x
  EXPECT_TRUE(dangers(yard::job({{"D1", "", pipe}, building("H1", rectangle(0, 240, 240, 480), 12)}), terrain)
                  .problems.empty());
}

plan::Element pool(std::optional<long> depth, long clearance = 24) {
  plan::Pool made;
  made.outline = shape(rectangle(0, 0, 384, 192));
  made.shell = Length::inches(8);
  if (depth) made.surround = plan::Surround{"", Length::inches(clearance), Length::inches(*depth)};
  return {"P1", "", made};
}

TEST(Trench, ByAShell) {
  const auto yard = [](std::optional<long> depth) {
    return yard::job({paved("A1", rectangle(-120, -120, 504, 312), "dense"), pool(depth)});
  };
  EXPECT_EQ(one(dangers(yard(96)), "dig-by-shell"), "");
  EXPECT_NE(one(dangers(yard(4)), "dig-by-shell"), "");  // 7 3/8 in are deeper than a basin of 4 in
  EXPECT_NE(one(dangers(yard({})), "shell-unknown"), "");
}

TEST(Backfill, PavingOverTheRingThatWasDug) {
  // Out by 8 + 24 in = 2 2/3 ft all round the water of 32 x 16 ft, round at the corners: 96 x 8/3 + pi (8/3)^2.
  const auto job = yard::job({paved("A1", rectangle(-120, -120, 504, 312), ""), pool(96)});
  const double ring = 96 * 8.0 / 3 + std::numbers::pi * 64 / 9;
  EXPECT_TRUE(has(one(dangers(job), "deck-on-backfill"), square_feet(ring))) << one(dangers(job), "deck-on-backfill");
  // On one side only, 3 ft off: none of it.
  const auto away = yard::job({paved("A1", rectangle(0, 228, 384, 400), ""), pool(96)});
  EXPECT_EQ(one(dangers(away), "deck-on-backfill"), "");
}

plan::Element flight(long rise, std::optional<plan::Cheeks> cheeks = {}, long turn = 90) {
  plan::Steps steps;
  steps.outline = shape(rectangle(0, 0, 60, 80));
  steps.rise = Length::inches(rise);
  steps.up = units::Angle::degrees(static_cast<double>(turn));
  steps.cheeks = std::move(cheeks);
  return {"S1", "", steps};
}

TEST(Guard, TheSidesOfSteps) {
  // 48 in over a run of 80: over 30 in from 50 in on, 30 in on each side.
  EXPECT_TRUE(has(one(dangers(yard::job({flight(48)})), "steps-guard"), "for 5' 0\""))
      << one(dangers(yard::job({flight(48)})), "steps-guard");
  EXPECT_EQ(one(dangers(yard::job({flight(30)})), "steps-guard"), "");
  // Climbing east the run is 60 in: over 30 in from 37.5 in on, 22.5 in on each side.
  EXPECT_TRUE(has(one(dangers(yard::job({flight(48, {}, 0)})), "steps-guard"), "for 3' 9\""));
  // A wall on the left leaves the right; walls on both leave nothing.
  EXPECT_TRUE(
      has(one(dangers(yard::job({flight(48, plan::Cheeks{"", "", true, false, {}})})), "steps-guard"), "for 2' 6\""));
  EXPECT_EQ(one(dangers(yard::job({flight(48, plan::Cheeks{"", "", true, true, {}})})), "steps-guard"), "");
}

TEST(Guard, TheEdgeOfARaisedDeck) {
  const auto job = yard::job({paved("A1", rectangle(0, 0, 240, 120), "")});
  Terrain terrain;
  terrain.finished["A1"] = slope(0, 0, 0, 0, 0, 240, 120);
  terrain.existing = slope(-36 * in, 0, 0, -1000, -1000, 1000, 1000);
  EXPECT_TRUE(has(one(dangers(job, terrain), "edge-guard"), "for 60' 0\"")) << one(dangers(job, terrain), "edge-guard");
  terrain.existing = slope(-30 * in, 0, 0, -1000, -1000, 1000, 1000);
  EXPECT_EQ(one(dangers(job, terrain), "edge-guard"), "");
  // Ground that falls 1 in 10 to the east from 18 in below: a foot outside the north and the south edge it is 30 in
  // below from 120 in on, so 120 in each; along the whole east edge of 120 in. 30 ft.
  terrain.existing = slope(-18 * in, -0.1, 0, -1000, -1000, 1000, 1000);
  EXPECT_TRUE(has(one(dangers(job, terrain), "edge-guard"), "for 30' 0\"")) << one(dangers(job, terrain), "edge-guard");
}

TEST(Guard, AWallThatStandsAlready) {
  const auto yard = [](long high, long off) {
    plan::Wall wall;
    wall.line = line({at(0, 0), at(240, 0)});
    wall.thickness = Length::inches(12);
    wall.existing = true;
    wall.height = Length::inches(high);
    return yard::job({{"W1", "", wall}, paved("A1", rectangle(0, 12 + off, 240, 240), "")});
  };
  EXPECT_TRUE(has(one(dangers(yard(36, 0)), "wall-guard"), "for 20' 0\"")) << one(dangers(yard(36, 0)), "wall-guard");
  EXPECT_NE(one(dangers(yard(36, 35)), "wall-guard"), "");
  EXPECT_EQ(one(dangers(yard(36, 37)), "wall-guard"), "");
  EXPECT_EQ(one(dangers(yard(30, 0)), "wall-guard"), "");
}

// Raised where the dig, by its depth and distance, is below the line, never where it is above it. The deck's own base
// reaches 6 in towards the house, no further than the house.
RC_GTEST_PROP(Trench, RaisedOnlyBelowTheLine, ()) {
  const long gap = *rc::gen::inRange(0, 30), footing = *rc::gen::inRange(0, 12);
  const double base_from_house = static_cast<double>(std::max(0L, gap - 6));
  const double over = 7.375 - static_cast<double>(footing) - base_from_house;  // never 0: whole inches and 3/8
  RC_ASSERT(!texts(dangers(by_house(gap, footing)), "trench-by-footing").empty() == (over > 0));
}

RC_GTEST_PROP(Guard, FlightsByTheirRise, ()) {
  const long rise = *rc::gen::inRange(1, 120);
  const std::string text = one(dangers(yard::job({flight(rise)})), "steps-guard");
  RC_ASSERT(text.empty() == (rise <= 30));
  if (rise <= 30) return;
  const double inches = 2 * 80.0 * static_cast<double>(rise - 30) / static_cast<double>(rise);
  const auto shown = units::show_length(Length::nearest(units::Metres(inches * in)), units::System::us);
  RC_ASSERT(has(text, "for " + shown));
}

}  // namespace
