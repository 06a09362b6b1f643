#include <gtest/gtest.h>

#include "takeoff/walls/beside.h"
#include "takeoff/walls/checks.h"
#include "takeoff/walls/kit.h"

using namespace kit;  // NOLINT
using namespace takeoff::walls;
using problem::Severity;

namespace {

Profile standing(int courses, double length_in = 480) {
  Profile made;
  made.length = length_in * in;
  made.legs = {{0, made.length, 0, 0}};
  made.course_height = 8 * in;
  made.columns = {{0, made.length, 0, courses}};
  made.ground = Heights::level(8 * in);
  made.behind = Heights::level((courses * 8 - 1) * in);
  made.courses = courses;
  return made;
}

// A wall of 40 ft along x, 12 in deep, its fill to the north.
plan::Wall wall() { return straight(480, 40); }

takeoff::Share flagged(const plan::Wall& wall, const Profile& profile, std::vector<plan::Element> others = {},
                       units::System system = units::System::us, const WallBook& from = book()) {
  others.insert(others.begin(), plan::Element{"RW", "", wall});
  plan::Job made = job(from, others);
  made.heading.units = system;
  const plan::Site site = plan::site(made);
  const catalogue::Item* item = from.all->item(wall.block);
  const Unit unit{item, 18 * in, 12 * in, 8 * in, 18 * in, 0.75 * in, 0, 38};
  return flags(made, site, *site.find("RW"), profile, {unit, {}, {}, {}, {}});
}

std::vector<std::string> texts(const takeoff::Share& share, const std::string& code) {
  std::vector<std::string> all;
  for (const auto& one : share.problems)
    if (one.code == code) all.push_back(one.text);
  return all;
}

plan::DrawnShape box(double x1, double y1, double x2, double y2) {
  return shape({{x1, y1}, {x2, y1}, {x2, y2}, {x1, y2}});
}
plan::Element drive(double y1, double y2, bool vehicles) {
  plan::PavedArea area;
  area.outline = box(0, y1, 480, y2);
  area.vehicles = vehicles;
  return {"A1", "drive", area};
}
plan::Element swimming(double x1, double y1, double x2, double y2) {
  plan::Pool pool;
  pool.outline = box(x1, y1, x2, y2);
  return {"P", "pool", pool};
}
plan::Element upper(double y, double height_in, bool existing = false) {
  plan::Wall made;
  made.line = line({{0, y}}, 480, y);
  made.block = "wb-8x18";
  made.height = inches(height_in);
  made.existing = existing;
  return {"W2", "", made};
}

plan::WallStone on_base() {
  plan::WallStone made;
  made.build_up = "wall-base-open";
  return made;
}

}  // namespace

// Constructed: six courses of 8 in, 48 in, on a base of 6 in: 54 in from the bottom of the base, over 4 ft. Both
// heights are printed, because places measure differently.
TEST(Flags, HeightFromTheBottomOfTheBase) {
  plan::Wall tall = wall();
  tall.stone = on_base();
  const auto share = flagged(tall, standing(6));
  const auto* told = said(share, "wall-height-limit");
  ASSERT_NE(told, nullptr);
  EXPECT_EQ(told->severity, Severity::flag);
  EXPECT_NE(told->text.find("4' 6\" high from the bottom of its leveling base to the top of its blocks"),
            std::string::npos)
      << told->text;
  EXPECT_NE(told->text.find("4' 0\" from the bottom of the lowest unit"), std::string::npos) << told->text;
  EXPECT_NE(told->text.find("0\" to 40' 0\" from the wall's start"), std::string::npos) << told->text;
  EXPECT_NE(told->mend.find("licensed engineer"), std::string::npos);
  EXPECT_EQ(told->place.element, "RW");
  // 40 + 6 = 46 in.
  EXPECT_EQ(said(flagged(tall, standing(5)), "wall-height-limit"), nullptr);
}

// The demo's wall: six courses at the highest column, then a 3 in cap: 54 in, 57 with it. Metric jobs read metres.
TEST(Flags, HeightNamesTheCapAndTheUnitsOfTheJob) {
  plan::Wall tall = wall();
  tall.stone = on_base();
  Profile profile = standing(6);
  profile.cap_height = 3 * in;
  EXPECT_NE(said(flagged(tall, profile), "wall-height-limit")->text.find("with its cap 4' 9\""), std::string::npos);
  const auto metric = flagged(tall, profile, {}, units::System::metric);
  EXPECT_NE(said(metric, "wall-height-limit")->text.find("1.372 m"), std::string::npos);
  // 40 + 6 + 3 = 49 in: the cap alone takes it over.
  profile = standing(5);
  profile.cap_height = 3 * in;
  EXPECT_NE(said(flagged(tall, profile), "wall-height-limit"), nullptr);
}

TEST(Flags, WithoutABaseTheLimitsThicknessIsTakenAndSaid) {
  const auto share = flagged(wall(), standing(6));
  ASSERT_NE(said(share, "wall-height-limit"), nullptr);
  EXPECT_NE(said(share, "wall-height-limit")->text.find("6\" taken, none is chosen"), std::string::npos);
}

TEST(Flags, TheLimitIsSetForThePlace) {
  WallBook made = book();
  made.limit("wall-permit", {}, 2, 2, "ft");
  const auto share = flagged(wall(), standing(3), {}, units::System::us, made);
  ASSERT_NE(said(share, "wall-height-limit"), nullptr);  // 24 + 6 = 30 in
  EXPECT_NE(said(share, "wall-height-limit")->text.find("over 2' 0\", from where a permit may be wanted"),
            std::string::npos)
      << said(share, "wall-height-limit")->text;
}

// 5 courses are 40 in: twice that is 80 in behind the back, which lies 12 in behind the face: y 92.
TEST(Flags, WhatLoadsTheGroundBehind) {
  EXPECT_EQ(texts(flagged(wall(), standing(5), {drive(91, 300, true)}), "wall-loaded").size(), 1U);
  EXPECT_TRUE(texts(flagged(wall(), standing(5), {drive(93, 300, true)}), "wall-loaded").empty());
  EXPECT_TRUE(texts(flagged(wall(), standing(5), {drive(40, 300, false)}), "wall-loaded").empty());
  EXPECT_TRUE(texts(flagged(wall(), standing(5), {drive(-300, -20, true)}), "wall-loaded").empty());  // in front
  plan::Building house;
  house.outline = box(100, 60, 300, 200);
  const auto share = flagged(wall(), standing(5), {{"B", "house", house}});
  const auto told = texts(share, "wall-loaded");
  ASSERT_EQ(told.size(), 1U);
  EXPECT_EQ(told[0].find("the building B house lies 4' 0\" behind the wall, within twice its height"), 0U) << told[0];
}

// The same with the fill to the right of the line, on a wall drawn the other way round.
TEST(Flags, BehindIsTheSideOfTheBody) {
  plan::Wall turned = wall();
  turned.line = line({{480, 0}}, 0, 0);
  turned.behind = geometry::Side::right;
  EXPECT_EQ(texts(flagged(turned, standing(5), {drive(91, 300, true)}), "wall-loaded").size(), 1U);
  EXPECT_TRUE(texts(flagged(turned, standing(5), {drive(-300, 0, true)}), "wall-loaded").empty());
}

// A quarter circle of 120 in round its fill: a corner at (60, 60) is 120 - 84.853 = 35.147 in from the face, 23.147
// from the back, half way along the wall's 188.496 in.
TEST(Flags, MeasuredFromTrueArcs) {
  plan::Wall round = wall();
  round.line = line({{120, 0, bulge(pi / 2)}}, 0, 120);
  plan::Building house;
  house.outline = box(40, 40, 60, 60);
  const auto told = texts(flagged(round, standing(5, 60 * pi), {{"B", "house", house}}), "wall-loaded");
  ASSERT_EQ(told.size(), 1U);
  EXPECT_EQ(told[0],
            "the building B house lies 1' 11 1/8\" behind the wall, within twice its height, at 7' 10 1/4\" from the "
            "wall's start");
}

// High where nothing is near, low where the drive is: 3 courses reach 48 in behind the back, 6 reach 96.
TEST(Flags, EachColumnHasItsOwnReach) {
  Profile profile = standing(6);
  profile.columns = {{0, 240 * in, 0, 6}, {240 * in, 480 * in, 0, 3}};
  profile.behind = Heights::level(20 * in);
  plan::PavedArea area;
  area.vehicles = true;
  area.outline = box(400, 70, 480, 200);  // 58 in behind the back; 160 in from the high part
  EXPECT_TRUE(texts(flagged(wall(), profile, {{"A1", "", area}}), "wall-loaded").empty());
  area.outline = box(100, 70, 180, 200);
  EXPECT_EQ(texts(flagged(wall(), profile, {{"A1", "", area}}), "wall-loaded").size(), 1U);
}

TEST(Flags, Pools) {
  const auto behind = flagged(wall(), standing(5), {swimming(100, 72, 300, 200)});
  ASSERT_EQ(texts(behind, "wall-loaded").size(), 1U);
  const auto line = texts(behind, "wall-pool-line");
  ASSERT_EQ(line.size(), 1U);
  EXPECT_NE(line[0].find("5' 0\" behind the wall and the depth of its shell is not known"), std::string::npos)
      << line[0];
  const auto front = flagged(wall(), standing(5), {swimming(100, -200, 300, -60)});
  EXPECT_TRUE(texts(front, "wall-loaded").empty());
  ASSERT_EQ(texts(front, "wall-pool-line").size(), 1U);
  EXPECT_NE(texts(front, "wall-pool-line")[0].find("5' 0\" in front of the wall"), std::string::npos);
  EXPECT_TRUE(flagged(wall(), standing(5), {swimming(100, -400, 300, -90)}).problems.empty());
}

// What lies past a free end counts up to 45 degrees from it.
TEST(Flags, PastTheEnd) {
  EXPECT_EQ(texts(flagged(wall(), standing(5), {swimming(500, 60, 700, 200)}), "wall-loaded").size(), 1U);
  EXPECT_TRUE(texts(flagged(wall(), standing(5), {swimming(520, 10, 700, 30)}), "wall-loaded").empty());
}

// Lower wall 40 in over its lowest unit: an upper wall nearer than 80 in behind its back adds its height: 46 + 20 in.
TEST(Flags, Tiers) {
  const auto share = flagged(wall(), standing(5), {upper(90, 20)});
  ASSERT_EQ(texts(share, "wall-tiers").size(), 1U);
  EXPECT_NE(texts(share, "wall-tiers")[0].find("stands 6' 6\" behind this one, nearer than 2.0 times"),
            std::string::npos)
      << texts(share, "wall-tiers")[0];
  const auto total = texts(share, "wall-height-limit");
  ASSERT_EQ(total.size(), 1U);
  EXPECT_NE(total[0].find("W2 above it 1' 8\", 5' 6\" in all"), std::string::npos) << total[0];
  EXPECT_TRUE(flagged(wall(), standing(5), {upper(93, 20)}).problems.empty());
  // One that stands already below this has nobody else to name it: 2 x 50 in reach, from the back of its 12 in.
  EXPECT_EQ(texts(flagged(wall(), standing(5), {upper(-111, 50, true)}), "wall-tiers").size(), 1U);
  EXPECT_TRUE(flagged(wall(), standing(5), {upper(-113, 50, true)}).problems.empty());
  EXPECT_TRUE(texts(flagged(wall(), standing(5), {upper(-111, 50, false)}), "wall-tiers").empty());
}

TEST(Flags, SlopeLoadWaterToe) {
  plan::Wall loaded = wall();
  loaded.loads = plan::WallLoads{};
  loaded.toe_slope = 3;
  loaded.loads->back_slope_deg = 14.04;
  loaded.loads->live_pa = 100 * 47.880259;  // 100 psf
  loaded.loads->water_behind = true;
  const auto share = flagged(loaded, standing(5));
  const auto told = texts(share, "wall-loaded");
  ASSERT_EQ(told.size(), 2U);
  EXPECT_NE(told[0].find("rises at 14.0 degrees"), std::string::npos);
  EXPECT_NE(told[1].find("100 lb/sq ft"), std::string::npos);
  EXPECT_NE(texts(share, "wall-toe").at(0).find("falls 1 in 3.0"), std::string::npos);
  // 62.43 x 3.333^2 / 2 = 347 lb/ft
  EXPECT_NE(texts(share, "wall-water").at(0).find("347 lb/ft"), std::string::npos) << texts(share, "wall-water").at(0);
  for (const auto& one : share.problems) {
    EXPECT_EQ(one.severity, Severity::flag);
    EXPECT_NE(one.mend.find("licensed engineer"), std::string::npos) << one.code;
  }
}

TEST(Flags, GroundOverTheTop) {
  Profile profile = standing(5);
  profile.behind = Heights::level(46 * in);
  EXPECT_NE(texts(flagged(wall(), profile), "wall-loaded").at(0).find("6\" over the top"), std::string::npos);
}

// Ground in front 8 in, behind 39 in over the base: a drop of 31 in, over 30; 20 ft of deck behind, 12 in from the
// back.
TEST(Flags, Guard) {
  plan::PavedArea deck;
  deck.outline = box(120, 24, 360, 200);
  const plan::Element area{"A2", "deck", deck};
  const auto share = flagged(wall(), standing(5), {area});
  const auto told = texts(share, "wall-guard");
  ASSERT_EQ(told.size(), 1U);
  // 36 in from the deck's corners reaches past its ends by sqrt(48^2 - 24^2) in = 41.57 in of the face on both sides:
  // 240 + 2 x 41.57 = 323.1 in; the ends are found to a centimetre.
  EXPECT_NE(told[0].find("drop of up to 2' 7\", over 2' 6\""), std::string::npos) << told[0];
  const double from = 120 - std::sqrt(48.0 * 48 - 24 * 24);
  const auto at = told[0].find("for ");
  ASSERT_NE(at, std::string::npos);
  const auto feet =
      units::read_length(told[0].substr(at + 4, told[0].find(" of the wall") - at - 4), units::Bare::feet_and_inches);
  ASSERT_TRUE(feet.has_value()) << told[0];
  EXPECT_NEAR(feet->inches(), 480 - 2 * from, 1);
  // 29 in of drop want none; nor does a deck 40 in away, or a wall that stands 36 in over the deck.
  Profile low = standing(5);
  low.behind = Heights::level(37 * in);
  EXPECT_TRUE(texts(flagged(wall(), low, {area}), "wall-guard").empty());
  deck.outline = box(120, 52, 360, 200);
  EXPECT_TRUE(texts(flagged(wall(), standing(5), {{"A2", "", deck}}), "wall-guard").empty());
  deck.outline = box(120, 24, 360, 200);
  Profile parapet = standing(10);
  parapet.behind = Heights::level(43 * in);
  EXPECT_TRUE(texts(flagged(wall(), parapet, {{"A2", "", deck}}), "wall-guard").empty());
  // A deck in front, at the foot of the wall, is no walk beside a drop.
  deck.outline = box(0, -100, 480, 0);
  EXPECT_TRUE(texts(flagged(wall(), standing(5), {{"A2", "", deck}}), "wall-guard").empty());
}

TEST(Flags, SomethingToStandOnByTheBarrier) {
  plan::SiteMark fence;
  fence.what = "barrier";
  fence.line = line({{0, 40}}, 480, 40);
  plan::Wall seat = wall();
  seat.block = "sw-6x12";
  seat.free_standing = true;
  const auto share = flagged(seat, standing(3), {{"F", "fence", fence}});
  ASSERT_EQ(texts(share, "wall-barrier").size(), 1U);  // 40 - 12 = 28 in from its back
  EXPECT_NE(texts(share, "wall-barrier")[0].find("within 2' 4\" of the barrier F fence, nearer than 3' 0\""),
            std::string::npos)
      << texts(share, "wall-barrier")[0];
  fence.line = line({{0, 50}}, 480, 50);
  EXPECT_TRUE(texts(flagged(seat, standing(3), {{"F", "fence", fence}}), "wall-barrier").empty());
}

TEST(Flags, FreeStandingHeight) {
  WallBook made = book();
  auto block = std::make_shared<catalogue::Item>(*made.all->item("sw-6x12"));
  block->details["free_standing_limit_mm"] = "609.6";
  made.all->items["sw-6x12"] = block;
  plan::Wall seat = wall();
  seat.block = "sw-6x12";
  seat.free_standing = true;
  Profile profile = standing(4);  // 32 in, 8 of them buried: 24
  EXPECT_TRUE(flagged(seat, profile, {}, units::System::us, made).problems.empty());
  profile.cap_height = 2.25 * in;
  const auto share = flagged(seat, profile, {}, units::System::us, made);
  ASSERT_EQ(texts(share, "wall-free-height").size(), 1U);
  EXPECT_NE(texts(share, "wall-free-height")[0].find("2' 2 1/4\" high over the ground with its cap, over 2' 0\""),
            std::string::npos)
      << texts(share, "wall-free-height")[0];
}

// Low, on level ground, with nothing near: nobody is troubled.
TEST(Flags, NothingToRaise) { EXPECT_TRUE(flagged(wall(), standing(5)).problems.empty()); }
TEST(Flags, WhatStandsAlreadyIsNotJudged) {
  plan::Wall old = wall();
  old.existing = true;
  EXPECT_TRUE(flagged(old, standing(12)).problems.empty());
}

// A wall with a return round its fill: the deck lies in front of the main leg, and from the return it is reached only
// through the fill and the main leg. No guard for it; a deck in the fill's own corner wants one.
TEST(Flags, WhatLiesInFrontOfOneLegIsNotBehindTheOther) {
  plan::Wall returned = wall();
  returned.line = line({{0, 0}, {240, 0}}, 240, 240);  // along x, then north; the fill lies north and west
  Profile profile = standing(5, 480);
  profile.legs = {{0, 240 * in, 0, pi / 2}, {240 * in, 480 * in, 0, 0}};
  plan::PavedArea deck;
  deck.outline = box(0, -100, 240, 0);
  EXPECT_TRUE(texts(flagged(returned, profile, {{"A1", "", deck}}), "wall-guard").empty());
  deck.outline = box(150, 24, 216, 90);
  EXPECT_EQ(texts(flagged(returned, profile, {{"A1", "", deck}}), "wall-guard").size(), 1U);
}

// With entries that hold no load, what stands behind says that none is counted for it.
TEST(Flags, LoadsThatTheChecksDoNotCount) {
  plan::Wall loaded = wall();
  loaded.loads = plan::WallLoads{};
  const auto share = flagged(loaded, standing(5), {drive(91, 300, true)});
  EXPECT_NE(texts(share, "wall-loaded").at(0).find("and the checks count no load for it"), std::string::npos);
  EXPECT_NE(texts(flagged(loaded, standing(5), {upper(90, 20)}), "wall-tiers").at(0).find("count no load for it"),
            std::string::npos);
  loaded.loads->live_pa = 12000;
  EXPECT_EQ(texts(flagged(loaded, standing(5), {drive(91, 300, true)}), "wall-loaded").at(0).find("count no load"),
            std::string::npos);
}
