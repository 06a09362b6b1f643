// Where a check that passes would have misled an engineer: water, weak stone under the blocks, ground that falls away,
// layers that hold nothing, blocks over the top layer.
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <functional>

#include "takeoff/walls/checks_kit.h"
#include "takeoff/walls/pressure.h"
#include "takeoff/walls/reinforcement.h"

using namespace kit;  // NOLINT
using problem::Severity;

namespace {

constexpr double degree = pi / 180;
constexpr double water_pcf = 1000 * 9.80665 / (0.45359237 * 9.80665 / (0.3048 * 0.3048 * 0.3048));  // 62.43

plan::Wall on_stone(plan::Wall wall) {
  wall.stone = plan::WallStone{};
  wall.stone->build_up = "wall-base-open";
  return wall;
}

}  // namespace

// GW8 with water to its top: 62.43 x 3.333^2 / 2 = 346.8 lb/ft more push, 62.43 x 3.333 / 2 = 104.05 lb/ft of uplift at
// 2/3 ft: (433.33 - 104.05) x 0.57735 / (162.16 + 346.8) = 0.3735; moments 433.33 x 0.6667 - 104.05 x 0.6667 = 219.5
// over (162.16 + 346.8) x 1.1111 = 565.5: 0.388. Ground under water bears as 120 - 62.43 pcf.
TEST(Holding, WaterPushesAndLifts) {
  plan::WallLoads with = loads(30, 30, 120, 0);
  with.water_behind = true;
  const auto share = checked(stacked(), dry_wall(with), standing({ten_feet_of_five}));
  const double high = 10.0 / 3;
  const double push = 162.16 + water_pcf * high * high / 2;
  const double up = water_pcf * high / 2;
  EXPECT_NEAR(value(share, "sliding"), (433.33 - up) * std::tan(30 * degree) / push, 1e-3);
  EXPECT_NEAR(value(share, "overturning"), (433.33 - up) * 2 / 3 / (push * high / 3), 1e-3);
  EXPECT_EQ(value(share, "bearing"), 0);  // it tips
  // No base can carry what floats: nothing is divided by its weight.
  WallBook light = stacked();
  auto foam = std::make_shared<catalogue::Item>(*light.all->item("dry-8x18"));
  foam->mass_kg = 1;
  light.all->items["dry-8x18"] = foam;
  EXPECT_LT(value(checked(light, dry_wall(with), standing({ten_feet_of_five})), "sliding"), 0.01);
}

// RW5's layer on course 1: 389.2 + 62.43 x 7.167 x 1.667 lb/ft of tension, and it is held by 120 - 62.43 pcf.
TEST(Holding, WaterPullsAtLayers) {
  WallBook made = stacked();
  auto grid = std::make_shared<catalogue::Item>(*made.all->item("grid-6x150"));
  grid->details["interaction"] = "0.8";
  made.all->items["grid-6x150"] = grid;
  plan::Wall wall = layered(5);
  const auto dry = checked(made, wall, standing({{0, 120 * in, 0, 12}}, 8));
  wall.loads->water_behind = true;
  const auto wet = checked(made, wall, standing({{0, 120 * in, 0, 12}}, 8));
  const double force = 389.2 + water_pcf * 43.0 / 6 * 5.0 / 3;
  EXPECT_NEAR(value(wet, "layer on course 1, pullout"),
              value(dry, "layer on course 1, pullout") * 389.2 / force * (120 - water_pcf) / 120, 2e-3);
  const double push = 920.7 + 200.1 + water_pcf * 64 / 2;
  EXPECT_NEAR(value(wet, "sliding of the reinforced mass"),
              (4800 - water_pcf * 8 * 5 / 2) * std::tan(30 * degree) / push, 2e-3);
}

// On ground of 45 degrees the blocks slide on their base first: 30 degrees of the limit, or what the stone's maker
// says.
TEST(Holding, TheBaseUnderTheBlocksMayBeWeakerThanTheGround) {
  plan::WallLoads with = loads(30, 30, 120, 0);
  with.foundation.friction_deg = 45;
  const Profile profile = standing({ten_feet_of_five});
  EXPECT_NEAR(value(checked(stacked(), dry_wall(with), profile), "sliding"), 433.33 / 162.16, 2e-3);
  EXPECT_NEAR(value(checked(stacked(), on_stone(dry_wall(with)), profile), "sliding"), 1.543, 1e-3);
  WallBook known = stacked();
  auto stone = std::make_shared<catalogue::Item>(*known.all->item("agg-no57"));
  stone->details["friction_deg"] = "36";
  known.all->items["agg-no57"] = stone;
  EXPECT_NEAR(value(checked(known, on_stone(dry_wall(with)), profile), "sliding"),
              433.33 * std::tan(36 * degree) / 162.16, 2e-3);
  // Clay's cohesion holds no block that stands on stone.
  with.foundation = {0, 120 * pcf, 1000 * psf};
  EXPECT_NEAR(value(checked(stacked(), on_stone(dry_wall(with)), profile), "sliding"), 1.543, 1e-3);
}

// Derived by Vesic's ground factors, from memory: 1 in 2 at 30 degrees leaves a quarter of 18.40 and 22.40; Nc 30.14
// becomes 30.14/4 - 0.75/tan 30 = 6.236. Clay on 1 in 2: 5.142 - 2 x 0.46365 = 4.2143, Ng = -2 sin = -0.89443.
TEST(Holding, GroundThatFallsAwayBearsLess) {
  const double half = std::atan(0.5);
  const Bearing sand = bearing_factors_on_slope(30 * degree, half);
  EXPECT_NEAR(sand.q, 18.401 / 4, 1e-3);
  EXPECT_NEAR(sand.g, 22.402 / 4, 1e-3);
  EXPECT_NEAR(sand.c, 6.236, 1e-3);
  const Bearing clay = bearing_factors_on_slope(0, half);
  EXPECT_NEAR(clay.c, 4.2143, 1e-4);
  EXPECT_NEAR(clay.g, -0.89443, 1e-5);
  EXPECT_EQ(bearing_factors_on_slope(30 * degree, 31 * degree).g, 0);  // it would not stand
  EXPECT_TRUE(rc::check("a steeper fall never bears more", [] {
    const double phi = *rc::gen::inRange(0, 46) * degree;
    const double beta = *rc::gen::inRange(0, 450) / 10.0 * degree, more = beta + 1 * degree;
    const Bearing a = bearing_factors_on_slope(phi, beta), b = bearing_factors_on_slope(phi, more);
    RC_ASSERT(b.c <= a.c && b.q <= a.q && b.g <= a.g);
    RC_ASSERT(a.c >= 0 && a.c <= bearing_factors(phi).c + 1e-12);
  }));
}

// What the takeoff refuses holds nothing: the wall is checked as it then stands, by its weight. Six courses fail.
TEST(Holding, RefusedLayersHoldNothing) {
  int number = 0;
  const auto refused = [&number](const std::function<void(plan::Reinforcement&)>& spoil) {
    SCOPED_TRACE(++number);
    plan::Wall wall = dry_wall(loads(30, 30, 120, 0));
    wall.layers = {layer(2, 5), layer(4, 5)};
    for (plan::Reinforcement& one : wall.layers) spoil(one);
    const auto share = checked(stacked(), wall, standing({ten_feet_of_six}));
    EXPECT_EQ(find(share, "sliding of the reinforced mass"), nullptr);
    ASSERT_NE(find(share, "sliding"), nullptr);
    EXPECT_NEAR(value(share, "sliding"), 1.286, 1e-3);
  };
  refused([](auto& l) { l.item = "nothing"; });
  refused([](auto& l) { l.along = true; });               // strong along the roll only
  refused([](auto& l) { l.length = {}; });                // and once ended the program
  refused([](auto& l) { l.length = inches(12); });        // no longer than the block is deep
  refused([](auto& l) { l.length = inches(151 * 12); });  // longer than the roll
  refused([](auto& l) { l.coverage = 0; });
  refused([](auto& l) { l.coverage = 2; });
  refused([](auto& l) { l.on_course = 6; });  // nothing over it
  refused([](auto& l) { l.on_course = -3; });
  refused([](auto& l) { l.from = inches(90), l.to = inches(30); });
}

// GW8's five courses over a layer are the same five courses: 1.603. One layer alone holds no tall wall.
TEST(Holding, BlocksOverTheTopLayerStandByThemselves) {
  plan::Wall wall = dry_wall(loads(30, 30, 120, 0));
  wall.layers = {layer(3, 8)};
  const std::string name = "overturning of the blocks over the top layer";
  const auto five = checked(stacked(), wall, standing({{0, 120 * in, 0, 8}}));
  EXPECT_NEAR(value(five, name), 1.603, 1e-3);
  const auto six = checked(stacked(), wall, standing({{0, 120 * in, 0, 9}}));
  EXPECT_NEAR(value(six, name), 1.183, 1e-3);
  EXPECT_FALSE(find(six, name)->passes());
  EXPECT_EQ(find(six, name)->limit, 1.5);
}

// Of two layers of 4 and 6 ft the lower one's slide takes no more earth than the shorter holds.
TEST(Holding, AShorterLayerAboveHoldsNoMoreThanItself) {
  WallBook made = stacked();
  auto grid = std::make_shared<catalogue::Item>(*made.all->item("grid-6x150"));
  grid->details["direct_sliding"] = "0.9";
  made.all->items["grid-6x150"] = grid;
  plan::Wall wall = dry_wall(loads(30, 30, 120, 0));
  wall.layers = {layer(1, 6), layer(4, 4)};
  const Profile profile = standing({{0, 120 * in, 0, 6}});
  const double mixed = value(checked(made, wall, profile), "layer on course 1, internal sliding");
  wall.layers[0] = layer(1, 4);
  EXPECT_EQ(mixed, value(checked(made, wall, profile), "layer on course 1, internal sliding"));
}

TEST(Holding, SharesOfFrictionAreNoMoreThanAll) {
  WallBook made = stacked();
  auto grid = std::make_shared<catalogue::Item>(*made.all->item("grid-6x150"));
  grid->details["interaction"] = "8";
  grid->details["direct_sliding"] = "1.2";
  made.all->items["grid-6x150"] = grid;
  const auto share = checked(made, layered(5), standing({{0, 120 * in, 0, 12}}, 8));
  EXPECT_EQ(find(share, "layer on course 1, pullout"), nullptr);
  ASSERT_NE(said(share, "strength-missing"), nullptr);
  EXPECT_NE(said(share, "strength-missing")->text.find("interaction (pullout), direct_sliding"), std::string::npos);
}

TEST(Holding, EarthBehindThatNobodyEnteredIsSaid) {
  plan::WallLoads with = loads(40, 0, 0, 0);
  with.retained = {};
  const auto share = checked(stacked(), dry_wall(with), standing({ten_feet_of_five}));
  ASSERT_NE(said(share, "retained-assumed"), nullptr);
  EXPECT_EQ(said(share, "retained-assumed")->severity, Severity::notice);
  EXPECT_EQ(said(checked(stacked(), dry_wall(loads(40, 30, 120, 0)), standing({ten_feet_of_five})), "retained-assumed"),
            nullptr);
}

// A face that lies back as far as its fill would stand by itself: the formula has no value, and that is said.
TEST(Holding, WithoutAPressureItSaysThatNothingWasChecked) {
  plan::Wall wall = dry_wall(loads(45, 45, 120, 0));
  const plan::Element element{"RW", "", wall};
  const WallBook from = stacked();
  Unit unit = dry(from);
  unit.setback = 9 * in;  // 48 degrees
  const auto share =
      checks(job(from, {element}), ground_of(element), standing({ten_feet_of_five}), {unit, {}, {}, {}, {}});
  EXPECT_TRUE(share.checks.empty());
  ASSERT_NE(said(share, "checks-not-made"), nullptr);
  EXPECT_EQ(said(share, "checks-not-made")->severity, Severity::problem);
}

// No number that a person can enter ends the program or passes by overflow.
TEST(Holding, AnyNumbers) {
  EXPECT_TRUE(rc::check("checks of any entries are finite or left out", [] {
    const auto any = [] {
      const double odd[] = {0, -1, 1e-320, 1e-9, 0.5, 1, 20, 30, 45, 49.9, 90, 1000, 2000, 1e6, 1e9, 1e300, -1e300};
      return odd[*rc::gen::inRange<std::size_t>(0, std::size(odd))];
    };
    plan::WallLoads with;
    with.infill = {any(), any(), any()};
    with.retained = {any(), any(), any()};
    with.foundation = {any(), any(), any()};
    with.back_slope_deg = any(), with.live_pa = any(), with.dead_pa = any();
    with.water_behind = *rc::gen::arbitrary<bool>();
    plan::Wall wall = dry_wall(with);
    wall.toe_slope = any();
    if (*rc::gen::arbitrary<bool>()) {
      // A length is as far as the readers let one go.
      const double feet = std::clamp(any() / 10, -3e9, 3e9);
      wall.layers = {layer(*rc::gen::inRange(-1, 9), feet), layer(3, 5)};
      wall.layers[0].coverage = any();
    }
    const auto share = checked(stacked(), wall, standing({{0, 3, 0, *rc::gen::inRange(1, 9)}}, 8));
    for (const takeoff::Check& one : share.checks) RC_ASSERT(std::isfinite(one.working.amount().value));
    for (const auto& one : share.problems) RC_ASSERT(one.text.size() < 400);
  }));
}
