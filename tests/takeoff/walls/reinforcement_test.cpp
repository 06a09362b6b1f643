#include "takeoff/walls/reinforcement.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include "takeoff/walls/meets.h"
#include "takeoff/walls/stone_kit.h"

namespace {

using namespace kit;  // NOLINT

plan::Wall layered(double wall_in, double length_in, const std::vector<int>& courses) {
  plan::Wall wall = straight(wall_in, 36);
  for (const int course : courses) wall.layers.push_back({course, "grid-6x150", inches(length_in), {}, {}, 1, false});
  return wall;
}
int strips(const std::vector<LayerPart>& parts) {
  int sum = 0;
  for (const LayerPart& part : parts) sum += part.strips;
  return sum;
}

// Constructed example of the reference: 4 layers of 7 ft along 40 ft, roll 6 x 150 ft: 40/6 -> 7 strips a layer, 28 in
// all, 150/7 -> 21 from a roll, 2 rolls; 196 ft of roll = 130.7 sq yd; design area 4 x 40 x 7 / 9 = 124.4 sq yd.
TEST(Reinforcement, PlainWall) {
  const Share share = reinforcement_of(layered(480, 84, {1, 2, 4, 6}), profile_of({{0, 480, 0, 6}}));
  EXPECT_EQ(measure(share, "grid_strips"), 28);
  EXPECT_EQ(measure(share, "grid_strips_saved"), 0);  // each layer's last strip is 4 ft of 6
  EXPECT_EQ(measure(share, "grid_rolls"), 2);
  EXPECT_NEAR(measure(share, "grid_roll_length_m"), 196 * ft, 1e-9);
  EXPECT_NEAR(measure(share, "grid_design_area_m2"), 4 * 40 * 7 * ft * ft, 1e-9);
  const takeoff::Line* line = line_of(share, "grid-6x150");
  ASSERT_TRUE(line);
  EXPECT_EQ(line->working.amount().value, 2);
  EXPECT_NE(line->text.find("1 roll: 21 x 7'"), std::string::npos) << line->text;
  EXPECT_NE(line->text.find("1 roll: 7 x 7'"), std::string::npos) << line->text;
  EXPECT_NEAR(task(share, "wall-grid") / (9 * ft * ft), 196.0 * 6 / 9, 1e-9);  // 130.7 sq yd
}

// The demo's wall: layer 1 main 27 ft and return 6 ft, layer 2 main 21.5 ft and return 9 ft 2 in, roll 6 ft wide, 5 ft
// pieces: 5 + 1 + 4 + 2 = 12 strips, 60 ft of one roll; 63.667 ft x 5 ft = 29.574 m2.
TEST(Reinforcement, DemoWall) {
  const Share share = reinforcement_of(stone_demo(), demo_profile());
  EXPECT_EQ(measure(share, "grid_strips"), 12);
  EXPECT_NEAR(measure(share, "grid_roll_length_m"), 18.288, 1e-9);
  EXPECT_EQ(measure(share, "grid_rolls"), 1);
  EXPECT_NEAR(measure(share, "grid_design_area_m2"), 29.5741344, 1e-6);
  EXPECT_EQ(times(share, "layer-corner"), 1);
  for (const char* code : {"layer-length", "layer-spacing", "layer-course", "layer-along", "layer-strong"})
    EXPECT_FALSE(said(share, code)) << code;
}

TEST(Reinforcement, DemoPartsByLeg) {
  const plan::Wall wall = stone_demo();
  const auto first = layer_parts(demo_profile(), wall, 0, 6 * ft);
  ASSERT_EQ(first.size(), 2U);
  EXPECT_NEAR(first[0].face, 27 * ft, 1e-12);
  EXPECT_EQ(first[0].strips, 5);
  EXPECT_NEAR(first[0].last, 3 * ft, 1e-9);
  EXPECT_NEAR(first[1].face, 6 * ft, 1e-9);
  EXPECT_EQ(first[1].strips, 1);
  EXPECT_NEAR(first[1].last, 6 * ft, 1e-9);
  const auto second = layer_parts(demo_profile(), wall, 1, 6 * ft);
  ASSERT_EQ(second.size(), 2U);
  EXPECT_EQ(second[0].strips, 4);
  EXPECT_EQ(second[1].strips, 2);
  EXPECT_NEAR(second[1].last, (110.0 - 72) * in, 1e-9);
}

// Two layers of 27 ft end in 3 ft each, half a roll: one strip gives both. Strips stay counted; what is bought is less.
TEST(Reinforcement, TwoHalvesComeOutOfOneStrip) {
  const Share share = reinforcement_of(layered(324, 60, {1, 3}), profile_of({{0, 324, 0, 5}}));
  EXPECT_EQ(measure(share, "grid_strips"), 10);
  EXPECT_EQ(measure(share, "grid_strips_saved"), 1);
  EXPECT_NEAR(measure(share, "grid_roll_length_m"), 45 * ft, 1e-9);
}

// Derived: roll 6 ft, length 6 ft, radius 20 ft: 1.80 ft of gap inside, of overlap outside.
TEST(Reinforcement, TailsOnACurve) {
  EXPECT_NEAR(tail(6 * ft, 6 * ft, 20 * ft) / ft, 1.8, 1e-12);
  EXPECT_NEAR(tail(6 * ft, 6 * ft, -20 * ft) / ft, 1.8, 1e-12);
  EXPECT_EQ(tail(6 * ft, 6 * ft, 0), 0);
}

// Quarter of 20 ft: 31.416 ft of face, 6 strips; on the inside curve 5 gaps, a piece more for each.
TEST(Reinforcement, GapsOfAnInsideCurveAreCovered) {
  const double arc = 240 * pi / 2;
  Profile inside = profile_of({{0, arc, 0, 6}});
  inside.legs.front().radius = -240 * in;
  const plan::Wall wall = layered(arc, 72, {3});
  const auto parts = layer_parts(inside, wall, 0, 6 * ft);
  ASSERT_EQ(parts.size(), 1U);
  EXPECT_EQ(parts[0].strips, 6);
  EXPECT_EQ(parts[0].gaps, 5);
  const Share share = reinforcement_of(wall, inside);
  EXPECT_EQ(measure(share, "grid_strips"), 11);
  EXPECT_TRUE(said(share, "layer-gap"));
  Profile outside = inside;
  outside.legs.front().radius = 240 * in;
  const Share over = reinforcement_of(wall, outside);
  EXPECT_EQ(measure(over, "grid_strips"), 6);
  EXPECT_TRUE(said(over, "layer-overlap"));
  EXPECT_FALSE(said(over, "layer-gap"));
}

// Legs that run into each other share their strips: 9 ft + 9 ft is 3 of 6 ft, not 2 + 2.
TEST(Reinforcement, LegsWithoutACornerShareStrips) {
  Profile profile = profile_of({{0, 216, 0, 6}});
  profile.legs = {{0, 108 * in, 0, 0}, {108 * in, 216 * in, 400 * in, 0}};
  const auto parts = layer_parts(profile, layered(216, 60, {3}), 0, 6 * ft);
  ASSERT_EQ(parts.size(), 2U);
  EXPECT_EQ(parts[0].strips, 2);
  EXPECT_EQ(parts[1].strips, 1);
  profile.legs[0].corner = pi / 4;
  EXPECT_EQ(strips(layer_parts(profile, layered(216, 60, {3}), 0, 6 * ft)), 4);
}

// Inside corner of a wall 48 in high: one leg runs on 12 in, by turns; 12 ft + 1 ft is 3 strips, 12 ft alone 2.
TEST(Reinforcement, RunsPastAnInsideCornerByTurns) {
  Profile profile = profile_of({{0, 288, 0, 6}});
  profile.legs = {{0, 144 * in, 0, -pi / 2}, {144 * in, 288 * in, 0, 0}};
  const plan::Wall wall = layered(288, 60, {2, 4});
  const auto even = layer_parts(profile, wall, 0, 6 * ft), odd = layer_parts(profile, wall, 1, 6 * ft);
  EXPECT_NEAR(even[0].past, 12 * in, 1e-12);
  EXPECT_EQ(even[1].past, 0);
  EXPECT_EQ(odd[0].past, 0);
  EXPECT_NEAR(odd[1].past, 12 * in, 1e-12);
  EXPECT_EQ(even[0].strips, 3);
  EXPECT_EQ(even[1].strips, 2);
  // The design asks for the face alone: 2 layers x 24 ft x 5 ft.
  EXPECT_NEAR(measure(reinforcement_of(wall, profile), "grid_design_area_m2"), 2 * 24 * 5 * ft * ft, 1e-9);
}

TEST(Reinforcement, StatedCoverage) {
  plan::Wall wall = layered(480, 84, {3});
  wall.layers[0].coverage = 0.75;  // 30 of 40 ft: 5 strips
  const Share share = reinforcement_of(wall, profile_of({{0, 480, 0, 6}}));
  EXPECT_EQ(measure(share, "grid_strips"), 5);
  EXPECT_NEAR(measure(share, "grid_design_area_m2"), 30 * 7 * ft * ft, 1e-9);
  wall.layers[0].coverage = 1.5;
  EXPECT_TRUE(said(reinforcement_of(wall, profile_of({{0, 480, 0, 6}})), "layer-coverage"));
}

TEST(Reinforcement, LongerThanTheRollIsAProblemAndTheRestIsComputed) {
  plan::Wall wall = layered(480, 84, {2, 4});
  wall.layers[1].length = inches(151 * 12);
  const Share share = reinforcement_of(wall, profile_of({{0, 480, 0, 6}}));
  ASSERT_TRUE(said(share, "layer-roll"));
  EXPECT_EQ(said(share, "layer-roll")->severity, problem::Severity::problem);
  EXPECT_EQ(measure(share, "grid_strips"), 7);
}

TEST(Reinforcement, RolledOutAlongTheWallHoldsNothing) {
  plan::Wall wall = layered(480, 60, {3});
  wall.layers[0].along = true;
  ASSERT_TRUE(said(reinforcement_of(wall, profile_of({{0, 480, 0, 6}})), "layer-along"));
  WallBook both = stone_book();
  auto grid = std::make_shared<catalogue::Item>(*both.all->items["grid-6x150"]);
  grid->details["strong_direction"] = "both ways";
  both.all->items["grid-6x150"] = grid;
  const Share allowed = reinforcement_of(wall, profile_of({{0, 480, 0, 6}}), both);
  EXPECT_FALSE(said(allowed, "layer-along"));
  EXPECT_NEAR(measure(allowed, "grid_roll_length_m"), 40 * ft, 1e-9);
  wall.layers[0].length = inches(73);  // wider than the roll
  EXPECT_TRUE(said(reinforcement_of(wall, profile_of({{0, 480, 0, 6}}), both), "layer-along"));
}

TEST(Reinforcement, ARollThatNamesNoStrongWayIsFlagged) {
  WallBook silent = stone_book();
  auto grid = std::make_shared<catalogue::Item>(*silent.all->items["grid-6x150"]);
  grid->details.erase("strong_direction");
  silent.all->items["grid-6x150"] = grid;
  const Share share = reinforcement_of(layered(480, 84, {3}), profile_of({{0, 480, 0, 6}}), silent);
  ASSERT_TRUE(said(share, "layer-strong"));
  EXPECT_EQ(measure(share, "grid_strips"), 7);
}

// 12 courses are 96 in: 0.6 of them 57.6 in; under 80 in of wall it is 4 ft that rules.
TEST(Reinforcement, LengthRule) {
  EXPECT_TRUE(said(reinforcement_of(layered(480, 57, {3}), profile_of({{0, 480, 0, 12}})), "layer-length"));
  EXPECT_FALSE(said(reinforcement_of(layered(480, 58, {3}), profile_of({{0, 480, 0, 12}})), "layer-length"));
  EXPECT_TRUE(said(reinforcement_of(layered(480, 47, {3}), profile_of({{0, 480, 0, 6}})), "layer-length"));
  EXPECT_FALSE(said(reinforcement_of(layered(480, 48, {3}), profile_of({{0, 480, 0, 6}})), "layer-length"));
  // By its own place: a layer that lies only where the wall is low.
  plan::Wall wall = layered(480, 48, {3});
  wall.layers[0].from = inches(240);
  const Profile falling = profile_of({{0, 240, 0, 12}, {240, 480, 0, 6}});
  EXPECT_FALSE(said(reinforcement_of(wall, falling), "layer-length"));
}

// 8 in courses: on courses 1 and 5 are 32 in apart, over 24; on 1 and 4 24 in.
TEST(Reinforcement, SpacingRule) {
  const Profile six = profile_of({{0, 480, 0, 6}});
  ASSERT_TRUE(said(reinforcement_of(layered(480, 60, {1, 5}), six), "layer-spacing"));
  EXPECT_FALSE(said(reinforcement_of(layered(480, 60, {1, 4}), six), "layer-spacing"));
  EXPECT_TRUE(said(reinforcement_of(layered(480, 60, {1, 3}), profile_of({{0, 480, 0, 7}})), "layer-spacing"));  // top
  // Twice the depth: blocks of 9 in allow 18.
  Blocks shallow = plain_blocks();
  shallow.block.depth = 9 * in;
  const plan::Element one = element(layered(480, 60, {1, 4}));
  EXPECT_TRUE(
      said(takeoff::walls::reinforcement(job(stone_book(), {one}), {}, ground_of(one), six, shallow), "layer-spacing"));
}

TEST(Reinforcement, WhereTheCourseIsNotThere) {
  const Profile falling = profile_of({{0, 240, 0, 6}, {240, 480, 0, 3}});
  const Share part = reinforcement_of(layered(480, 60, {2, 4}), falling);
  ASSERT_EQ(times(part, "layer-course"), 1);
  EXPECT_EQ(said(part, "layer-course")->severity, problem::Severity::flag);
  EXPECT_NE(said(part, "layer-course")->text.find("20' 0\" to 40' 0\""), std::string::npos) << all_said(part);
  EXPECT_EQ(measure(part, "grid_strips"), 7 + 4);  // 40 ft, and 20 ft of the upper one
  const Share none = reinforcement_of(layered(480, 60, {9}), falling);
  ASSERT_TRUE(said(none, "layer-course"));
  EXPECT_EQ(said(none, "layer-course")->severity, problem::Severity::problem);
}

// ---- what stands in the zone

plan::Site site_of(std::vector<plan::Ground> grounds) {
  plan::Site site;
  for (plan::Ground& one : grounds) site.grounds.push_back(std::make_shared<const plan::Ground>(std::move(one)));
  return site;
}
plan::Ground run_of(const std::string& id, plan::DrawnLine drawn) {
  plan::DrainRun run;
  run.what = "pipe";
  run.line = drawn;
  plan::Ground made;
  made.element = std::make_shared<const plan::Element>(plan::Element{id, "", run});
  made.path = *geometry::Path::make(drawn.edges, drawn.end);
  return made;
}

// The pool's water begins 72 in behind the face.
TEST(Reinforcement, MeetsAPool) {
  const plan::Site site = site_of({ground(pool())});
  const Profile six = profile_of({{0, 480, 0, 6}});
  EXPECT_FALSE(said(reinforcement_of(layered(480, 60, {3}), six, stone_book(), site), "layer-meets"));
  const Share meets = reinforcement_of(layered(480, 84, {3}), six, stone_book(), site);
  ASSERT_TRUE(said(meets, "layer-meets"));
  EXPECT_EQ(said(meets, "layer-meets")->severity, problem::Severity::flag);
  EXPECT_NE(said(meets, "layer-meets")->text.find("pool P"), std::string::npos);
  EXPECT_TRUE(said(meets, "layer-meets")->place.at.has_value());
  plan::Wall short_one = layered(480, 84, {3});
  short_one.layers[0].to = inches(60);  // the pool begins further on
  EXPECT_FALSE(said(reinforcement_of(short_one, six, stone_book(), site), "layer-meets"));
  plan::Wall other_side = layered(480, 84, {3});
  other_side.behind = geometry::Side::right;
  EXPECT_FALSE(said(reinforcement_of(other_side, six, stone_book(), site), "layer-meets"));
}

TEST(Reinforcement, MeetsAPipeButNotItsOwnDrain) {
  const plan::Site site = site_of({run_of("D2", line({{0, 24}}, 480, 24))});
  plan::Wall wall = layered(480, 60, {3});
  const Profile six = profile_of({{0, 480, 0, 6}});
  EXPECT_TRUE(said(reinforcement_of(wall, six, stone_book(), site), "layer-meets"));
  wall.drained_by = "D2";
  EXPECT_FALSE(said(reinforcement_of(wall, six, stone_book(), site), "layer-meets"));
}

// A second wall that faces away, 96 in behind this one, with layers of 60 in towards it: zones meet over 24 in.
TEST(Reinforcement, MeetsAnotherWallsZone) {
  plan::Wall other = layered(480, 60, {2});
  other.line = line({{0, 96}}, 480, 96);
  other.behind = geometry::Side::right;
  const plan::Site site = site_of({ground_of({"W2", "", other})});
  const Profile six = profile_of({{0, 480, 0, 6}});
  EXPECT_TRUE(said(reinforcement_of(layered(480, 60, {3}), six, stone_book(), site), "layer-meets"));
  other.layers.clear();  // 12 in of blocks alone, from 84 in
  const plan::Site thin = site_of({ground_of({"W2", "", other})});
  EXPECT_FALSE(said(reinforcement_of(layered(480, 60, {3}), six, stone_book(), thin), "layer-meets"));
}

TEST(Reinforcement, PieceOfAPath) {
  const plan::DrawnLine drawn = line({{0, 0}, {100, 0, bulge(pi / 2)}}, 160, 60);
  const auto path = geometry::Path::make(drawn.edges, drawn.end);
  ASSERT_TRUE(path.has_value());
  const auto piece = piece_of(*path, 50 * in, (100 + 60 * pi / 4) * in);
  ASSERT_TRUE(piece.has_value());
  EXPECT_NEAR(piece->length().si(), (50 + 60 * pi / 4) * in, 1e-5);
  EXPECT_EQ(piece->edges().front().from, at(50, 0));
  EXPECT_FALSE(piece_of(*path, 300 * in, 400 * in).has_value());
}

// Strips of any straight layer against a loop that lays them one by one.
TEST(Reinforcement, AgreesWithLayingThemOneByOne) {
  EXPECT_TRUE(rc::check("as many strips as it takes to cover the face", [] {
    const int length = *rc::gen::inRange(24, 2000), from = *rc::gen::inRange(0, 20), roll = *rc::gen::inRange(20, 160);
    plan::Wall wall = layered(length, 60, {2});
    wall.layers[0].from = inches(from);
    const auto parts = layer_parts(profile_of({{0, static_cast<double>(length), 0, 4}}), wall, 0, roll * in);
    int laid = 0;
    for (int at = from; at < length; at += roll) ++laid;
    RC_ASSERT(strips(parts) == laid);
  }));
}

TEST(Reinforcement, DemoFromItsHeights) {
  const Laying laid(stone_book(), stone_demo());
  ASSERT_TRUE(laid.profile.has_value()) << all_said(laid.share);
  const Share share = takeoff::walls::reinforcement(laid.job, {}, laid.ground, *laid.profile, *laid.blocks);
  EXPECT_EQ(measure(share, "grid_strips"), 12);
  EXPECT_NEAR(measure(share, "grid_design_area_m2"), 29.5741344, 1e-6);
  EXPECT_EQ(times(share, "layer-corner"), 1);
}

// A layer on the highest course lies under nothing but the cap: it is bought as given, and said.
TEST(Reinforcement, OnTheHighestCourse) {
  const Share share = reinforcement_of(layered(480, 84, {2, 6}), profile_of({{0, 480, 0, 6}}));
  ASSERT_EQ(times(share, "layer-top"), 1);
  EXPECT_EQ(said(share, "layer-top")->severity, problem::Severity::flag);
  EXPECT_EQ(times(reinforcement_of(layered(480, 84, {2, 5}), profile_of({{0, 480, 0, 6}})), "layer-top"), 0);
}

TEST(Reinforcement, EndsBeforeItStarts) {
  plan::Wall wall = layered(480, 84, {2});
  wall.layers[0].from = inches(200);
  wall.layers[0].to = inches(100);
  const Share share = reinforcement_of(wall, profile_of({{0, 480, 0, 6}}));
  ASSERT_EQ(times(share, "layer-course"), 1);
  EXPECT_NE(said(share, "layer-course")->text.find("ends where it starts or before"), std::string::npos);
  EXPECT_EQ(measure(share, "grid_strips"), 0);
}

// A roll of one grid step, across or along, would be millions of pieces: refused before any is counted.
TEST(Reinforcement, RollsOfNoSize) {
  for (const bool along : {false, true}) {
    WallBook made = stone_book();
    auto roll = std::make_shared<catalogue::Item>(*made.all->item("grid-6x150"));
    (along ? roll->length : roll->width) = units::Length::of_steps(1);
    roll->details["strong_direction"] = "both";
    made.all->items["grid-6x150"] = roll;
    plan::Wall wall = layered(480, 60, {2});
    wall.layers[0].along = along;
    const Share share = reinforcement_of(wall, profile_of({{0, 480, 0, 6}}), made);
    EXPECT_EQ(times(share, "layer-item"), 1);
    EXPECT_EQ(measure(share, "grid_rolls"), 0);
  }
}

}  // namespace
