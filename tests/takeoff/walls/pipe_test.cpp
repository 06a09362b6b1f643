#include <gtest/gtest.h>

#include "takeoff/walls/pipe_line.h"
#include "takeoff/walls/stone_kit.h"

namespace {

using namespace kit;  // NOLINT

plan::Wall piped(double length, const std::vector<plan::HeightAt>& outlets, const std::string& base = "wall-base-open",
                 double fall = 0.01) {
  plan::Wall wall = straight(length, 36);
  plan::WallStone stone;
  stone.build_up = base;
  stone.drain = "agg-no57";
  wall.stone = stone;
  plan::WallPipe pipe;
  pipe.item = "pipe-smooth-perf-4";
  pipe.fall = fall;
  pipe.outlets = outlets;
  wall.pipe = pipe;
  return wall;
}
const Profile forty = profile_of({{0, 480, 0, 6}});  // base at 0, pad from -6 to 0 in

// Outlet at the bottom of the open pad: 480 in at 1 % brings the far end to -6 + 4.8 in, still in the pad.
TEST(WallPipe, GoesUpFromItsOutlet) {
  const Share share = pipe_of(piped(480, {level(0, -6)}), forty);
  EXPECT_NEAR(measure(share, "pipe_m"), 40 * ft, 1e-12);
  EXPECT_NEAR(measure(share, "pipe_invert_high_m"), -1.2 * in, 1e-7);
  EXPECT_EQ(measure(share, "outlets"), 1);
  EXPECT_TRUE(share.problems.empty()) << all_said(share);
  EXPECT_NEAR(quantity(share, "pipe-smooth-perf-4"), 40 * ft, 1e-12);
  EXPECT_TRUE(fact(share, "pipe"));
}

TEST(WallPipe, TwoOutletsMeetAtARidge) {
  const Share share = pipe_of(piped(480, {level(480, -6), level(0, -6)}), forty);
  EXPECT_NEAR(measure(share, "pipe_invert_high_m"), (-6 + 2.4) * in, 1e-7);
  EXPECT_EQ(measure(share, "outlets"), 2);
  // Unlike ones: they meet where -6 + x/100 = -5 + (480 - x)/100, at 290 in.
  const Share unlike = pipe_of(piped(480, {level(0, -6), level(480, -5)}, "wall-base-dense"), forty);
  EXPECT_NEAR(measure(unlike, "pipe_invert_high_m"), (-6 + 2.9) * in, 1e-7);
}

TEST(WallPipe, TooHighIsAFlagWithItsPlace) {
  const Share share = pipe_of(piped(480, {level(0, -6)}, "wall-base-open", 0.02), forty);  // to 3.6 in over the pad
  const auto* high = said(share, "pipe-high");
  ASSERT_TRUE(high);
  EXPECT_EQ(high->severity, problem::Severity::flag);
  EXPECT_NE(high->text.find("3 5/8\""), std::string::npos) << high->text;  // 3.6 to the nearest 1/16
  EXPECT_NE(high->text.find("0\" to 40'"), std::string::npos) << high->text;
}

TEST(WallPipe, BelowItsStoneIsAProblem) {
  const Share share = pipe_of(piped(480, {level(0, -8)}), forty);
  ASSERT_TRUE(said(share, "pipe-low"));
  EXPECT_NE(said(share, "pipe-low")->text.find("2\" below"), std::string::npos) << said(share, "pipe-low")->text;
}

// An open pad keeps the 2 in below the outlet; a dense one sheds.
TEST(WallPipe, DeadDepthInAnOpenPad) {
  const Share open = pipe_of(piped(480, {level(0, -4)}), forty);
  ASSERT_TRUE(said(open, "pipe-dead-depth"));
  EXPECT_EQ(said(open, "pipe-dead-depth")->severity, problem::Severity::problem);
  const Share dense = pipe_of(piped(480, {level(0, -4)}, "wall-base-dense"), forty);
  EXPECT_FALSE(said(dense, "pipe-dead-depth"));
}

// 2 in of water in stone of 38 % porosity: 0.10 in/h takes 7.6 h, 0.01 in/h 76 h, over 48.
TEST(WallPipe, DeadDepthThatSoaksAway) {
  const plan::Element one = element(piped(480, {level(0, -4)}));
  plan::Job slow = job(stone_book(), {one});
  slow.choices.infiltration_counts = true;
  slow.choices.infiltration_m_s = 0.01 * in / 3600;
  plan::Job fast = slow;
  fast.choices.infiltration_m_s = 0.10 * in / 3600;
  const auto on = [&](const plan::Job& job_of) {
    return takeoff::walls::pipe(job_of, ground_of(one), forty, plain_blocks());
  };
  ASSERT_TRUE(said(on(slow), "pipe-dead-depth"));
  EXPECT_NE(said(on(slow), "pipe-dead-depth")->text.find("76 h"), std::string::npos);
  EXPECT_FALSE(said(on(fast), "pipe-dead-depth"));
}

// The demo's stepped wall with one outlet at its low end: the pipe steps up with the bottom of the pad, and stands at
// 98.25 ft x 12 + 3 x 8 - 6 in, and 38 in further at 1 %, at the top end.
TEST(WallPipe, StepsUpWithTheBase) {
  plan::Wall wall = stone_demo();
  wall.pipe = piped(488, {level(0, 98.25 * 12 - 6)}).pipe;
  const Share share = pipe_of(wall, demo_profile());
  EXPECT_NEAR(measure(share, "pipe_invert_high_m"), (98.25 * 12 + 24 - 6 + 0.38) * in, 1e-7);
  EXPECT_TRUE(share.problems.empty()) << all_said(share);
}

TEST(WallPipe, AnOutletAtTheHighEndLeavesTheLowPointFull) {
  plan::Wall wall = stone_demo();
  wall.pipe = piped(488, {level(488, 98.25 * 12 + 24 - 6)}).pipe;
  const Share share = pipe_of(wall, demo_profile());
  EXPECT_TRUE(said(share, "outlet-low"));
  EXPECT_TRUE(said(share, "pipe-high"));
  EXPECT_TRUE(said(share, "pipe-dead-depth"));
}

// Low at both ends of a wall whose middle stands higher: each needs its own.
TEST(WallPipe, EachLowPointWantsAnOutlet) {
  const Profile hump = profile_of({{0, 200, 0, 6}, {200, 300, 1, 6}, {300, 480, 0, 6}});
  EXPECT_EQ(times(pipe_of(piped(480, {level(0, -6)}, "wall-base-dense"), hump), "outlet-low"), 1);
  EXPECT_EQ(times(pipe_of(piped(480, {level(0, -6), level(480, -6)}, "wall-base-dense"), hump), "outlet-low"), 0);
}

TEST(WallPipe, OutletSpacing) {
  const Profile long_wall = profile_of({{0, 1200, 0, 6}});  // 100 ft
  const auto spaced = [&](const std::vector<plan::HeightAt>& outlets) {
    return times(pipe_of(piped(1200, outlets, "wall-base-dense"), long_wall), "outlet-spacing");
  };
  EXPECT_EQ(spaced({level(0, -6)}), 1);                   // 100 ft from one
  EXPECT_EQ(spaced({level(600, -6)}), 0);                 // 50 ft either way
  EXPECT_EQ(spaced({level(0, -6), level(1200, -6)}), 1);  // 100 ft apart
  EXPECT_EQ(spaced({level(300, -6), level(900, -6)}), 0);
}

TEST(WallPipe, AnOutletAboveThePipeIsIdle) {
  const Share share = pipe_of(piped(480, {level(0, -6), level(480, 0)}), forty);  // the pipe is at -1.2 in there
  ASSERT_TRUE(said(share, "outlet-idle"));
  EXPECT_EQ(measure(share, "outlets"), 1);
}

// Round a closed wall of 400 in the far side is 200 in away either way.
TEST(WallPipe, ClosedWallDrainsBothWays) {
  Profile ring = profile_of({{0, 400, 0, 3}});
  ring.closed = true;
  const Share share = pipe_of(piped(400, {level(0, -6)}), ring);
  EXPECT_NEAR(measure(share, "pipe_invert_high_m"), (-6 + 2) * in, 1e-7);
  EXPECT_FALSE(said(share, "outlet-spacing"));
}

// Behind a dense pad: 12 in of column less 6 in of pad is less than pipe + 3 in on both sides, 10 in; x 6 in x 480 in.
TEST(WallPipe, DensePadGivesThePipeStoneOfItsOwn) {
  const Share dense = pipe_of(piped(480, {level(0, -6)}, "wall-base-dense"), forty);
  EXPECT_NEAR(measure(dense, "pipe_stone_m3"), 480.0 * 10 * 6 * in3, 1e-12);
  EXPECT_NEAR(quantity(dense, "agg-no57"), 480.0 * 10 * 6 * in3 * 1650, 1e-9);
  EXPECT_FALSE(pipe_of(piped(480, {level(0, -6)}), forty).measures.get("pipe_stone_m3").has_value());
}

TEST(WallPipe, SolidOutletPipes) {
  WallBook with = stone_book();
  catalogue::Item& solid = with.add("pipe-smooth-4", "pipe");
  solid.details["perforated"] = "no";
  plan::Wall wall = piped(480, {level(0, -6), level(480, -6)});
  wall.pipe->outlet_item = "pipe-smooth-4";
  wall.pipe->outlet_length = inches(60);
  const plan::Element one = element(wall);
  const Share share = takeoff::walls::pipe(job(with, {one}), ground_of(one), forty, plain_blocks());
  EXPECT_NEAR(quantity(share, "pipe-smooth-4"), 120 * in, 1e-12);
  EXPECT_NEAR(task(share, "pipe-lay"), 600 * in, 1e-12);
  wall.pipe->outlet_item = "pipe-smooth-perf-4";
  EXPECT_TRUE(said(pipe_of(wall, forty), "outlet-perforated"));
}

TEST(WallPipe, BadPipesAreSaidAndStillCounted) {
  const Share none = pipe_of(piped(480, {}), forty);
  EXPECT_TRUE(said(none, "pipe-outlets"));
  EXPECT_NEAR(measure(none, "pipe_m"), 40 * ft, 1e-12);
  EXPECT_TRUE(said(pipe_of(piped(480, {level(500, -6)}), forty), "pipe-outlets"));
  const Share flat = pipe_of(piped(480, {level(0, -6)}, "wall-base-open", 0), forty);
  ASSERT_TRUE(said(flat, "pipe-fall"));
  EXPECT_EQ(said(flat, "pipe-fall")->severity, problem::Severity::problem);
  const Share steep = pipe_of(piped(480, {level(0, -6)}, "wall-base-open", 1e300), forty);  // once ended the program
  ASSERT_TRUE(said(steep, "pipe-fall"));
  EXPECT_EQ(said(steep, "pipe-fall")->severity, problem::Severity::problem);
  const Share slow = pipe_of(piped(480, {level(0, -6)}, "wall-base-open", 0.004), forty);
  ASSERT_TRUE(said(slow, "pipe-fall"));
  EXPECT_EQ(said(slow, "pipe-fall")->severity, problem::Severity::flag);
}

TEST(WallPipe, ARetainingWallWithoutADrainIsFlagged) {
  const Share share = pipe_of(straight(480, 36), forty);
  ASSERT_TRUE(said(share, "no-outlet"));
  EXPECT_EQ(said(share, "no-outlet")->severity, problem::Severity::flag);
  plan::Wall seat = straight(480, 18);
  seat.free_standing = true;
  EXPECT_TRUE(pipe_of(seat, forty).problems.empty());
}

TEST(WallPipe, ADrainRunDrawnForTheWall) {
  plan::Wall wall = straight(480, 36);
  wall.drained_by = "D2";
  EXPECT_TRUE(said(pipe_of(wall, forty), "drained-by"));
  plan::DrainRun run;
  run.what = "pipe";
  run.item = "pipe-smooth-perf-4";
  const Share drained = pipe_of(wall, forty, {{"D2", "", run}});
  EXPECT_FALSE(said(drained, "drained-by"));
  EXPECT_FALSE(said(drained, "no-outlet"));
  run.what = "channel";
  EXPECT_TRUE(said(pipe_of(wall, forty, {{"D2", "", run}}), "drained-by"));
}

TEST(WallPipe, PlateausOfABaseThatStepsBothWays) {
  const auto found =
      plateaus(profile_of({{0, 10, 1, 6}, {10, 20, 0, 6}, {20, 30, 0, 5}, {30, 40, 2, 6}, {40, 50, 1, 6}}));
  ASSERT_EQ(found.size(), 4U);
  EXPECT_FALSE(found[0].low);
  EXPECT_TRUE(found[1].low);
  EXPECT_NEAR(found[1].to, 30 * in, 1e-12);
  EXPECT_FALSE(found[2].low);
  EXPECT_TRUE(found[3].low);
}

}  // namespace
