#include "takeoff/walls/stone.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include "takeoff/walls/stone_kit.h"

namespace {

using namespace kit;  // NOLINT

plan::Wall with_stone(plan::Wall wall, double soil_cap = 8) {
  plan::WallStone stone;
  stone.build_up = "wall-base-open";
  stone.drain = "agg-no57";
  stone.soil_cap = inches(soil_cap);
  wall.stone = stone;
  return wall;
}

// Constructed example of the reference: 40 ft, 6 courses of 8 in; pad 24 x 6 in x 40 ft = 40 cu ft, stone 12 in x 4 ft
// x 40 ft = 160 cu ft.
TEST(WallStone, PadAndColumnOfAPlainWall) {
  const Share share = stone_of(with_stone(straight(480, 36), 0), profile_of({{0, 480, 0, 6}}));
  EXPECT_NEAR(measure(share, "leveling_base_m3") / yd3, 40.0 / 27, 1e-9);    // 1.48
  EXPECT_NEAR(measure(share, "drainage_stone_m3") / yd3, 160.0 / 27, 1e-9);  // 5.93
  // By placed weight: 1,650 kg/m3 of both.
  EXPECT_NEAR(quantity(share, "agg-no57"), 200 * ft * ft * ft * 1650, 1e-6);
  EXPECT_NEAR(task(share, "wall-base"), 40 * ft, 1e-9);
  EXPECT_FALSE(share.measures.get("soil_cap_m3").has_value());
}

// The demo's wall: base 488 in x (12 + 2 x 6) x 6 in; column 12 in behind the units to 8 in below the top of each
// column, on the drawn line: 144x40 + 114x32 + 66x24 + 54x24 + 36x40 + 36x32 + 38x24 = 15,792 sq in.
TEST(WallStone, BaseAndColumnOfTheDemo) {
  const Share share = stone_of(stone_demo(), demo_profile());
  EXPECT_NEAR(measure(share, "leveling_base_m3"), 488.0 * 24 * 6 * in3, 1e-12);
  EXPECT_NEAR(measure(share, "leveling_base_m3"), 1.15155176, 1e-6);
  EXPECT_NEAR(measure(share, "drainage_stone_m3"), 15792.0 * 12 * in3, 1e-12);
  EXPECT_NEAR(measure(share, "drainage_stone_m3"), 3.10541418, 1e-6);
  // Earth over the column and, where there are layers, over the zone to 60 in: 54 in of wall with 12 in, 434 in with
  // 12 + 36 in behind the blocks, 8 in each; at the corner each leg leaves to the other what lies past the line that
  // halves it, (60^2 - 12^2)/2 = 1,728 sq in.
  EXPECT_NEAR(measure(share, "soil_cap_m3"), (54.0 * 12 + 434.0 * 48 - 2 * 1728) * 8 * in3, 1e-12);
  EXPECT_TRUE(said(share, "soil-cap"));
}

// Zone from 24 to 60 in behind the face. On the drawn line 36 in x (15,792 - 54 x 24) sq in; at the outside corner each
// leg gives up to the other what lies past the line that halves it, (60^2 - 24^2)/2 = 1,512 sq in: of the main run all
// of it at 40 in of height; of the return 24 x 36 - ... on its first 36 in (see below) at 40, the rest on the next 36
// at
// 32. First 36 in: depth 36 lost over 24 in, then 60 - x: 864 + 60 x 12 - (36^2 - 24^2)/2 = 1,224; rest 288.
TEST(WallStone, ReinforcedFillOfTheDemo) {
  const Share share = stone_of(stone_demo(), demo_profile());
  const double drawn = 36.0 * (15792 - 54 * 24);
  const double shared = 1512.0 * 40 + 1224.0 * 40 + 288.0 * 32;
  EXPECT_NEAR(measure(share, "reinforced_fill_m3"), (drawn - shared) * in3, 1e-9);
  EXPECT_TRUE(said(share, "fill-earth"));
  EXPECT_EQ(line_of(share, "fill-sand"), nullptr);
}

TEST(WallStone, BoughtFillIsALineByWeight) {
  plan::Wall wall = stone_demo();
  wall.stone->fill = "fill-sand";
  const Share share = stone_of(wall, demo_profile());
  EXPECT_NEAR(quantity(share, "fill-sand"), measure(share, "reinforced_fill_m3") * 1800, 1e-6);
  EXPECT_FALSE(said(share, "fill-earth"));
}

// Clean stone in the zone swallows the column: what is left of it stands where there are no layers, 54 in x 24 in.
TEST(WallStone, CleanFillSwallowsTheColumn) {
  plan::Wall wall = stone_demo();
  wall.stone->fill = "agg-no57";
  const Share share = stone_of(wall, demo_profile());
  EXPECT_NEAR(measure(share, "drainage_stone_m3"), 54.0 * 24 * 12 * in3, 1e-12);
  // 12 to 60 in behind the face; at the corner (60^2 - 12^2)/2 = 1,728 sq in each. Return's first 36 in: depth 48 lost
  // over 12 in, then 60 - x: 576 + 60 x 24 - (36^2 - 12^2)/2 = 1,440; rest 288.
  const double drawn = 48.0 * (15792 - 54 * 24);
  EXPECT_NEAR(measure(share, "reinforced_fill_m3"), (drawn - 1728.0 * 40 - 1440.0 * 40 - 288.0 * 32) * in3, 1e-9);
}

// Voids of each kind of its own: 118 whole at 691.2 cu in (40 % of 1,728), 6 corner units at 129.6 (10 % of 1,296), cut
// pieces of 6.5 ... 17.75 in, together 144.5 in of 18: 87,888 cu in = 1.44022 m3. The demo's own answer, 1.52942 m3,
// takes the corner units' 27 in of face each as others: 6 x (27/18 x 691.2 - 129.6) = 5,443.2 cu in = 0.08920 m3 more.
TEST(WallStone, CoreOfTheDemoByTheUnitsAsLaid) {
  std::vector<Laid> units(118, Laid{Make::whole, 0, 18 * in, false, 0});
  for (int i = 0; i < 6; ++i) units.push_back({Make::corner, 0, (i % 2 ? 18 : 9) * in, false, 0});
  for (const double cut : {6.5, 6.75, 7.5, 8.0, 8.25, 11.25, 13.5, 15.0, 16.25, 16.5, 17.25, 17.75})
    units.push_back({Make::cut, 0, cut * in, false, 0});
  Laid other_face{Make::corner, 0, 9 * in, false, 0};
  other_face.again = true;  // counted by the leg before
  units.push_back(other_face);
  Blocks blocks = plain_blocks();
  blocks.corner = block_of(18, 9, 8, 18, 0.75, 129.6);
  plan::Wall wall = stone_demo();
  wall.stone->core = "agg-no57";
  const Share share = stone_of(wall, demo_profile(), blocks, one_course({0, 378 * in, 0, 0}, units));
  const double expected = (118 * 691.2 + 6 * 129.6 + 144.5 / 18 * 691.2) * in3;
  EXPECT_NEAR(measure(share, "core_fill_m3"), expected, 1e-12);
  EXPECT_NEAR(expected, 1.44022, 1e-5);
  EXPECT_NEAR(expected + 5443.2 * in3, 1.52942435, 1e-6);
  EXPECT_NEAR(measure(share, "wedges_m3"), 0, 0);
}

// 16 in face, 10 in back, 12 in deep, quarter circle of 10 ft, 188.496 in / 16 = 11.781 units. Derived: outside curve
// T(R^2 - (R-D)^2)/2 - n (F+Bk)/2 D = 2.160 sq ft against n (F-Bk)/2 D = 2.945 sq ft straight.
struct Tapered {
  Blocks blocks{block_of(16, 12, 6, 10, 0, 1), {}, {}, {}, {}};
  std::vector<Laid> units;
  double length = 120 * pi / 2;
  Tapered() {
    units.assign(11, Laid{Make::whole, 0, 16 * in, false, 0});
    units.push_back({Make::cut, 0, (length - 11 * 16) * in, false, 0});
  }
  double wedges(double radius) const {
    Profile profile = profile_of({{0, length, 0, 1}}, 0, 6);
    profile.legs.front().radius = radius * in;
    const Share share =
        stone_of(with_stone(straight(480, 36)), profile, blocks, one_course(profile.legs.front(), units));
    return measure(share, "wedges_m3") / (0.5 * ft * ft * ft);  // sq ft of one course of 6 in
  }
};
TEST(WallStone, WedgesBetweenTaperedUnits) {
  const Tapered tapered;
  EXPECT_NEAR(tapered.wedges(120), 2.160, 5e-4);
  EXPECT_NEAR(tapered.wedges(0), 2.945, 5e-4);
  // Inside curve: pi/2 (132^2 - 120^2)/2 - 11.781 x 13 x 12 = 537.2 sq in = 3.731 sq ft.
  EXPECT_NEAR(tapered.wedges(-120), (pi / 2 * (132.0 * 132 - 120.0 * 120) / 2 - 120 * pi / 2 / 16 * 13 * 12) / 144,
              1e-6);
  EXPECT_NEAR(tapered.wedges(-120), 3.731, 1e-3);
  // Units that can't turn so tightly leave no wedge, not a negative one: R 24 in, under 32.
  EXPECT_EQ(tapered.wedges(24), 0);
}

TEST(WallStone, WedgesOfStraightUnitsGapeBehindOnAnInsideCurveOnly) {
  Tapered square;
  square.blocks.block = block_of(16, 12, 6, 16, 0, 0);
  // T D^2 / 2 = pi/2 x 144 / 2 sq in.
  EXPECT_NEAR(square.wedges(-120), pi / 2 * 144 / 2 / 144, 1e-9);
  const Profile profile = profile_of({{0, square.length, 0, 1}}, 0, 6);
  const Share share =
      stone_of(with_stone(straight(480, 36)), profile, square.blocks, one_course(profile.legs.front(), square.units));
  EXPECT_FALSE(share.measures.get("wedges_m3").has_value());  // no voids and no wedges: nothing to fill
}

// A run over a straight of 48 in and a quarter circle of 72 in that follows it without a corner: each part by its rule.
TEST(WallStone, WedgesOfARunOverTwoLegs) {
  const double arc = 72 * pi / 2;
  Profile profile = profile_of({{0, 48 + arc, 0, 1}}, 0, 6);
  profile.legs = {{0, 48 * in, 0, 0}, {48 * in, (48 + arc) * in, 72 * in, 0}};
  Courses courses = one_course({0, (48 + arc) * in, 0, 0}, {});
  auto bay = std::make_shared<Bay>(*courses.bays.front());
  bay->legs = profile.legs;
  for (int i = 0; i < 3; ++i) bay->runs[0].units.push_back({Make::whole, i * 16 * in, 16 * in, false, 0});
  for (int i = 0; i < 7; ++i) bay->runs[0].units.push_back({Make::whole, (48 + i * 16) * in, 16 * in, false, 0});
  bay->runs[0].units.push_back({Make::cut, (48 + 112) * in, (arc - 112) * in, false, 0});
  bay->runs[0].length = (48 + arc) * in;
  courses.bays = {bay};
  const Blocks blocks{block_of(16, 12, 6, 10, 0, 0), {}, {}, {}, {}};
  const Share share = stone_of(with_stone(straight(480, 36)), profile, blocks, courses);
  const double area = 3 * 3 * 12 + (pi / 2 * (72.0 * 72 - 60.0 * 60) / 2 - arc / 16 * 13 * 12);
  EXPECT_NEAR(measure(share, "wedges_m3"), area * 6 * in3, 1e-9);
}

TEST(WallStone, ColumnNeverLessThanNothingUnderADeepCap) {
  const Share share = stone_of(with_stone(straight(480, 8), 24), profile_of({{0, 480, 0, 2}}));  // 16 in of wall
  EXPECT_EQ(measure(share, "drainage_stone_m3"), 0);
  EXPECT_NEAR(measure(share, "soil_cap_m3"), 480.0 * 12 * 16 * in3, 1e-12);
}

// 40 ft, girth 48 - 8 of back + 12 of top + 12 of return = 64 in; 72 in roll with 12 in laps: (480 - 12)/60 -> 8
// pieces, 7 laps.
TEST(WallStone, FabricHangsInPieces) {
  plan::Wall wall = with_stone(straight(480, 36));
  wall.stone->fabric = "fabric-nw-6";
  const Share share = stone_of(wall, profile_of({{0, 480, 0, 6}}));
  EXPECT_NEAR(quantity(share, "fabric-nw-6"), 8 * 64 * in, 1e-9);
  EXPECT_NEAR(measure(share, "wall_fabric_m2"), (480.0 * 64 + 7 * 12 * 64) * in * in, 1e-9);
}

// Legs that run back on each other leave no room for a zone: none, not a rounding error of it.
TEST(WallStone, NoFillInACornerOfNoRoom) {
  plan::Wall wall = with_stone(straight(480, 36));
  wall.layers = {{1, "grid-6x150", inches(60), {}, {}, 1, false}};
  Profile profile = profile_of({{0, 480, 0, 6}});
  profile.legs = {{0, 240 * in, 0, 172 * pi / 180}, {240 * in, 480 * in, 0, 0}};
  const Share share = stone_of(wall, profile);
  EXPECT_FALSE(share.measures.get("reinforced_fill_m3").has_value());
  EXPECT_FALSE(said(share, "fill-earth"));
}

TEST(WallStone, WhatIsNotChosenIsSaid) {
  const Share bare = stone_of(straight(480, 36), profile_of({{0, 480, 0, 6}}), plain_blocks(),
                              one_course({0, 18 * in, 0, 0}, {{Make::whole, 0, 18 * in, false, 0}}));
  for (const char* code : {"wall-no-base", "wall-no-stone", "wall-no-core"}) {
    ASSERT_TRUE(said(bare, code)) << code;
    EXPECT_EQ(said(bare, code)->severity, problem::Severity::notice);
  }
  EXPECT_TRUE(bare.lines.empty());
  plan::Wall seat = straight(48, 18);
  seat.free_standing = true;
  const Share free = stone_of(seat, profile_of({{0, 48, 0, 4}}));
  EXPECT_FALSE(said(free, "wall-no-stone"));
  const Share chosen =
      stone_of(with_stone(seat), profile_of({{0, 48, 0, 4}}));  // nothing is behind a free-standing wall
  EXPECT_FALSE(chosen.measures.get("drainage_stone_m3").has_value());
  EXPECT_FALSE(chosen.measures.get("soil_cap_m3").has_value());
  EXPECT_TRUE(said(free, "wall-no-base"));
}

TEST(WallStone, UnknownBuildUpAndStoneWithoutDensityLeaveTheRest) {
  plan::Wall wall = with_stone(straight(480, 36));
  wall.stone->build_up = "nowhere";
  wall.stone->core = "nothing";
  const Share share = stone_of(wall, profile_of({{0, 480, 0, 6}}), plain_blocks(),
                               one_course({0, 18 * in, 0, 0}, {{Make::whole, 0, 18 * in, false, 0}}));
  EXPECT_TRUE(said(share, "build-up-unknown"));
  EXPECT_TRUE(said(share, "item-missing"));
  EXPECT_NEAR(measure(share, "drainage_stone_m3"), 480.0 * 12 * 40 * in3, 1e-12);
}

// Pad, column and fill of any stepped wall against a loop over thin slices.
TEST(WallStone, AgreesWithSlices) {
  EXPECT_TRUE(rc::check("column and fill are the sum of their slices", [] {
    const int count = *rc::gen::inRange(1, 12);
    std::vector<Stands> columns;
    double at = 0;
    for (int i = 0; i < count; ++i) {
      const double length = *rc::gen::inRange(9, 200);
      const int base = *rc::gen::inRange(0, 4);
      columns.push_back({at, at + length, base, base + *rc::gen::inRange(1, 9)});
      at += length;
    }
    plan::Wall wall = with_stone(straight(at, 36));
    const int on = *rc::gen::inRange(1, 9);
    const int from = *rc::gen::inRange(0, static_cast<int>(at));
    wall.layers = {{on, "grid-6x150", inches(60), inches(from), {}, 1, false}};
    const Share share = stone_of(wall, profile_of(columns));
    double column = 0, fill = 0;
    for (const Stands& one : columns)
      for (int x = static_cast<int>(one.from); x < static_cast<int>(one.to); ++x) {  // an inch each
        const double height = std::max(0, (one.top - one.base) * 8 - 8);
        column += 12 * height;
        if (x >= from && on - 1 >= one.base && on - 1 < one.top) fill += 36 * height;
      }
    RC_ASSERT(std::abs(measure(share, "drainage_stone_m3") - column * in3) < 1e-9);
    RC_ASSERT(std::abs(share.measures.get("reinforced_fill_m3").value_or(0) - fill * in3) < 1e-9);
  }));
}

// What stands behind a wall fills its section once: at stations in no order, points a finger apart are counted that lie
// behind the blocks, over their base, under their top and within the column or the layer that reaches there.
TEST(WallStone, NothingBehindAWallIsCountedTwice) {
  EXPECT_TRUE(rc::check("column, fill and cap together are the section behind the blocks", [] {
    std::vector<Stands> columns;
    double at = 0;
    const int count = *rc::gen::inRange(1, 6);
    for (int i = 0; i < count; ++i) {
      const int base = *rc::gen::inRange(0, 3);
      columns.push_back({at, at + 24, base, base + *rc::gen::inRange(1, 7)});
      at += 24;
    }
    plan::Wall wall = with_stone(straight(at, 36));
    const int stone = *rc::gen::inRange(1, 30), reach = *rc::gen::inRange(13, 80), on = *rc::gen::inRange(1, 8);
    wall.stone->drain_depth = inches(stone);
    if (*rc::gen::arbitrary<bool>()) wall.stone->fill = *rc::gen::element<std::string>("agg-no57", "fill-sand");
    wall.layers = {{on, "grid-6x150", inches(reach), {}, {}, 1, false}};
    const Share share = stone_of(wall, profile_of(columns));
    double cells = 0;
    for (const Stands& one : columns)
      for (int y = 12; y < 100; ++y)
        for (int z = one.base * 8; z < one.top * 8; ++z) {
          const bool layer_here = on > one.base && on <= one.top && y < reach;
          if (y < 12 + stone || layer_here) cells += 24;
        }
    double sum = 0;
    for (const char* part : {"drainage_stone_m3", "reinforced_fill_m3", "soil_cap_m3"})
      sum += share.measures.get(part).value_or(0);
    RC_ASSERT(std::abs(sum - cells * in3) < 1e-9);
  }));
}

TEST(WallStone, ManyColumnsAlikeAreOneTerm) {
  std::vector<Stands> columns;
  for (int i = 0; i < 40; ++i) columns.push_back({i * 100.0, (i + 1) * 100.0, i % 2, i % 2 + 5});
  const Share share = stone_of(with_stone(straight(4000, 36)), profile_of(columns));
  for (const takeoff::Line& line : share.lines) EXPECT_LT(line.working.terms().size(), 12U) << line.text;
  EXPECT_NEAR(measure(share, "drainage_stone_m3"), 4000.0 * 12 * 32 * in3, 1e-9);
}

// ---- from the person's heights to the stone, with the courses as the program lays them

// Core by what was laid: every unit whole, cut or corner by its own voids, 40 % and 10 %.
TEST(WallStone, DemoFromItsHeights) {
  Laying laid(stone_book(), stone_demo());
  ASSERT_TRUE(laid.profile.has_value()) << all_said(laid.share);
  laid.lay();
  const Share share = takeoff::walls::stone(laid.job, laid.ground, *laid.profile, *laid.blocks, laid.courses);
  EXPECT_NEAR(measure(share, "leveling_base_m3"), 1.15155176, 1e-6);
  EXPECT_NEAR(measure(share, "drainage_stone_m3"), 3.10541418, 1e-6);
  double voids = 0;
  int corners = 0;
  for (const auto& bay : laid.courses.bays)
    for (const auto& run : bay->runs)
      for (const Laid& one : run.units) {
        if (one.again) continue;
        corners += one.make == Make::corner ? 1 : 0;
        voids += one.make == Make::corner ? 0.10 * 18 * 9 * 8 : 0.40 * 12 * 8 * one.length / in;
      }
  EXPECT_EQ(corners, 6);
  EXPECT_NEAR(measure(share, "core_fill_m3"), voids * in3, 1e-9);
  // The demo's answer takes the corner units' 27 in of face each as others (the voids of the units as laid do not):
  // 5,443.2 cu in more.
  EXPECT_NEAR(measure(share, "core_fill_m3") + 5443.2 * in3, 1.52942435, 1e-6);
}

// Seat wall: four courses of 6 in, 6 ft quarter circle, 12 in deep, outer face 7 ft. 48 + 42 pi in of longer face less
// two end blocks of 12 in are 13 units of 11.9959 in (the joints take 0.004 in up); 10 of them, tapered from 12 to 10
// in, and an end block that is square behind it lie on the curve: pi/2 (84^2 - 72^2)/2 - 10 x 11.9959 x 11/12 x 12 - 12
// x 12 = 6.72 sq in, four times.
TEST(WallStone, SeatWallFromItsHeights) {
  plan::Wall wall = demo_seat_wall();
  plan::WallStone chosen;
  chosen.build_up = "wall-base-dense";
  chosen.core = "agg-no57";
  wall.stone = chosen;
  Laying laid(stone_book(), wall);
  ASSERT_TRUE(laid.profile.has_value()) << all_said(laid.share);
  laid.lay();
  const Share share = takeoff::walls::stone(laid.job, laid.ground, *laid.profile, *laid.blocks, laid.courses);
  const double unit = (48 + 42 * pi - 24) / 13;
  const double area = pi / 2 * (84.0 * 84 - 72.0 * 72) / 2 - 10 * unit * 11 - 12 * 12;
  EXPECT_NEAR(area, 6.715, 5e-4);
  EXPECT_NEAR(measure(share, "wedges_m3"), area * 24 * in3, 1e-6);  // the drawn arc lies on the grid
  EXPECT_NEAR(measure(share, "leveling_base_m3"), (48 + 36 * pi) * 24 * 6 * in3, 1e-6);
  EXPECT_FALSE(share.measures.get("drainage_stone_m3").has_value());
}

}  // namespace
