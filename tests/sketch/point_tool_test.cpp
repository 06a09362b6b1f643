// Levels, features and notes; steps; the site plan.
#include "sketch/point_tool.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cmath>

#include "bench_of_hands.h"
#include "sketch/site_plan_numbers.h"
#include "sketch/site_plan_tool.h"
#include "sketch/steps_tool.h"

namespace {

using hands::Bench;
using hands::feet;
using sketch::Hand;
using sketch::Key;
using units::Length;

TEST(PointTool, ALevelWithItsHeight) {
  Bench bench;
  bench.tool = sketch::point_tool(Hand::level);
  bench.choose("bench-mark");
  bench.click(3, 4);
  EXPECT_TRUE(bench.job.elements.empty());
  EXPECT_TRUE(bench.view().busy);
  bench.enter("height", "-1' 6\"");
  ASSERT_EQ(bench.job.elements.size(), 1U);
  EXPECT_EQ(bench.newest().id, "L1");
  EXPECT_EQ(bench.newest_of<plan::Level>().at, feet(3, 4));
  EXPECT_EQ(bench.newest_of<plan::Level>().height, -Length::inches(18));
  EXPECT_EQ(bench.newest_of<plan::Level>().what, "bench-mark");
}

TEST(PointTool, AClickElsewherePutsInTheOneInHand) {
  Bench bench;
  bench.tool = sketch::point_tool(Hand::level);
  bench.click(3, 4);
  bench.type("height", "2'", false);
  bench.click(9, 4);
  ASSERT_EQ(bench.job.elements.size(), 1U);
  EXPECT_EQ(bench.newest_of<plan::Level>().height, Length::feet(2));
  bench.key(Key::enter);  // without a height: the level book may have it
  ASSERT_EQ(bench.job.elements.size(), 2U);
  EXPECT_FALSE(bench.newest_of<plan::Level>().height);
}

TEST(PointTool, AHeightThatIsNotUnderstoodIsRefusedAndNothingIsLost) {
  Bench bench;
  bench.tool = sketch::point_tool(Hand::level);
  bench.click(3, 4);
  bench.enter("height", "two");
  ASSERT_TRUE(bench.last.refused);
  EXPECT_TRUE(bench.view().busy);
  bench.click(9, 4);
  ASSERT_TRUE(bench.last.refused);
  EXPECT_TRUE(bench.job.elements.empty());
  bench.enter("height", "2");
  EXPECT_EQ(bench.newest_of<plan::Level>().at, feet(3, 4));
}

TEST(PointTool, ANoteNeedsItsText) {
  Bench bench;
  bench.tool = sketch::point_tool(Hand::note);
  bench.click(1, 1);
  bench.key(Key::enter);
  EXPECT_TRUE(bench.last.refused);
  bench.enter("text", "Gate opens inwards");
  ASSERT_EQ(bench.job.elements.size(), 1U);
  EXPECT_EQ(bench.newest_of<plan::Note>().text, "Gate opens inwards");
}

TEST(PointTool, AFeatureIsOneClickAndGoesOnWithItsItem) {
  Bench bench;
  bench.tool = sketch::point_tool(Hand::feature);
  bench.click(1, 1);
  plan::Element first = bench.newest();
  std::get<plan::Feature>(first.kind).item = "light";
  std::get<plan::Feature>(first.kind).count = 4;
  bench.job = plan::with(bench.job, first);
  bench.type("x", "10'");
  bench.enter("y", "-2'");
  ASSERT_EQ(bench.job.elements.size(), 2U);
  EXPECT_EQ(bench.newest_of<plan::Feature>().at, feet(10, -2));
  EXPECT_EQ(bench.newest_of<plan::Feature>().item, "light");
  EXPECT_EQ(bench.newest_of<plan::Feature>().count, 1);
}

TEST(PointTool, EscapeDropsThePointThenLeaves) {
  Bench bench;
  bench.tool = sketch::point_tool(Hand::level);
  bench.click(3, 4);
  bench.key(Key::escape);
  EXPECT_FALSE(bench.last.leave);
  bench.key(Key::escape);
  EXPECT_TRUE(bench.last.leave);
  EXPECT_TRUE(bench.job.elements.empty());
}

TEST(Steps, ARectangleTheWayUpAndTheRise) {
  Bench bench;
  bench.tool = sketch::steps_tool();
  bench.click(0, 0);
  bench.type("width", "5'");
  bench.enter("depth", "4'");
  EXPECT_TRUE(bench.job.elements.empty());
  bench.type("rise", "21\"");
  bench.point(2, 30);
  bench.click(2, 30);
  ASSERT_EQ(bench.job.elements.size(), 1U);
  EXPECT_EQ(bench.newest().id, "S1");
  EXPECT_EQ(bench.newest_of<plan::Steps>().up.degrees(), 90);
  EXPECT_EQ(bench.newest_of<plan::Steps>().rise, Length::inches(21));
  bench.click(20, 0);
  bench.type("width", "5'");
  bench.enter("depth", "4'");
  bench.type("angle", "180");
  bench.key(Key::enter);
  EXPECT_EQ(bench.newest_of<plan::Steps>().up.degrees(), 180);
}

TEST(Steps, OfAnyOutlineAreShown) {
  Bench bench;
  bench.tool = sketch::steps_tool();
  bench.choose("freeform");
  bench.click(0, 0);
  bench.click(10, 0);
  bench.click(5, 8);
  bench.key(Key::enter);
  EXPECT_EQ(bench.view().wants, "Click towards the landing, or type the way up. Type the rise.");
  EXPECT_FALSE(bench.view().strokes.front().line.edges.empty());
  bench.key(Key::enter);
  EXPECT_EQ(bench.newest_of<plan::Steps>().outline.front().through.size(), 3U);
}

// --- the site plan
Bench with_site_plan() {
  Bench bench;
  plan::SitePlan plan;
  plan.file = "survey.png";
  plan.at = feet(1, 2);
  plan.metres_per_pixel = 0.05;
  bench.job = plan::with(bench.job, {"X1", "", plan});
  bench.tool = sketch::site_plan_tool();
  return bench;
}

// Drawn 10 ft apart, known to be 25 ft: everything grows 2.5 times about the first point. (1,2) seen from (11,2) lies
// 10 ft west, then 25 ft: (-14,2). 0.05 x 2.5 = 0.125 m a pixel.
TEST(SitePlan, ScaledByTwoPointsAndATypedLength) {
  Bench bench = with_site_plan();
  bench.choose("scale");
  bench.click(11, 2);
  bench.click(21, 2);
  bench.enter("length", "25'");
  ASSERT_FALSE(bench.last.refused);
  const auto& made = bench.newest_of<plan::SitePlan>();
  EXPECT_NEAR(made.metres_per_pixel, 0.125, 1e-12);
  EXPECT_EQ(made.at, feet(-14, 2));
  EXPECT_TRUE(made.locked);
  ASSERT_TRUE(made.scale);
  EXPECT_EQ(made.scale->length, Length::feet(25));
  EXPECT_EQ(made.scale->to, feet(36, 2));
  EXPECT_EQ(bench.names, std::vector<std::string>{"Scale site plan X1"});
  bench.point(0, 0);
  bench.click(0, 0);
  EXPECT_TRUE(bench.last.refused);  // locked
}

// Drawn 20 ft, typed 20.5 ft: (20 - 20.5) / 20.5 = -2.439 %.
TEST(SitePlan, ASecondLengthShowsTheErrorAndMovesNothing) {
  Bench bench = with_site_plan();
  bench.choose("lock");
  bench.choose("check");
  bench.click(0, 0);
  bench.click(0, 20);
  bench.enter("length", "20.5'");
  ASSERT_FALSE(bench.last.refused);
  const auto& made = bench.newest_of<plan::SitePlan>();
  ASSERT_TRUE(made.check);
  EXPECT_EQ(made.at, feet(1, 2));
  EXPECT_NEAR(sketch::error_percent(*made.check), -100 * 0.5 / 20.5, 1e-9);
  EXPECT_EQ(bench.field("error")->text, "-2.44 %");
}

TEST(SitePlan, DraggedTypedAndNudged) {
  Bench bench = with_site_plan();
  bench.feed(sketch::Pressed{feet(5, 5), {}, false});
  bench.feed(sketch::Moved{feet(9, 6), {}});
  bench.feed(sketch::Released{feet(9, 6), {}});
  EXPECT_EQ(bench.newest_of<plan::SitePlan>().at, feet(5, 3));
  bench.type("x", "-5'");
  bench.enter("y", "1'");
  EXPECT_EQ(bench.newest_of<plan::SitePlan>().at, feet(0, 4));
  bench.grid = 12.0 * Length::steps_per_inch;
  bench.feed(sketch::Nudged{{2, 0}});
  EXPECT_EQ(bench.newest_of<plan::SitePlan>().at, feet(2, 4));
  EXPECT_EQ(bench.names.size(), 3U);
}

TEST(SitePlan, TurnedByThreeClicksOrByATypedAngle) {
  Bench bench = with_site_plan();
  bench.choose("turn");
  bench.click(0, 0);
  bench.click(10, 0);
  bench.click(0, 30);
  const auto& made = bench.newest_of<plan::SitePlan>();
  EXPECT_NEAR(made.turn.degrees(), 90, 1e-9);
  EXPECT_EQ(made.at, feet(-2, 1));  // (1,2) a quarter turn left about the origin
  bench.enter("angle", "-90");      // about its own corner
  EXPECT_EQ(bench.newest_of<plan::SitePlan>().at, feet(-2, 1));
  EXPECT_NEAR(bench.newest_of<plan::SitePlan>().turn.degrees(), 0, 1e-9);
}

TEST(SitePlan, OpacityAndLockAtAnyTime) {
  Bench bench = with_site_plan();
  bench.choose("lock");
  bench.enter("opacity", "35");
  EXPECT_NEAR(bench.newest_of<plan::SitePlan>().opacity, 0.35, 1e-12);
  bench.enter("opacity", "135");
  EXPECT_TRUE(bench.last.refused);
  bench.type("opacity", "");
  bench.choose("unlock");
  EXPECT_FALSE(bench.newest_of<plan::SitePlan>().locked);
}

TEST(SitePlan, WithoutOneItSaysSo) {
  Bench bench;
  bench.tool = sketch::site_plan_tool();
  bench.click(0, 0);
  EXPECT_FALSE(bench.last.edit);
  EXPECT_EQ(bench.view().wants, "Bring in a site plan, or select one of them.");
  bench.key(Key::escape);
  EXPECT_TRUE(bench.last.leave);
}

TEST(SitePlan, BadLengthsAreRefused) {
  const plan::SitePlan plan;
  const auto code = [&](const plan::KnownLength& known) {
    const auto made = sketch::scaled(plan, known);
    return made ? std::string() : made.error().code;
  };
  EXPECT_EQ(code({feet(0, 0), feet(1, 0), Length()}), "scale-length");
  EXPECT_EQ(code({feet(0, 0), feet(1, 0), -Length::feet(1)}), "scale-length");
  EXPECT_EQ(code({feet(1, 1), feet(1, 1), Length::feet(1)}), "scale-points");
  EXPECT_EQ(code({feet(0, 0), feet(0.01, 0), Length::millimetres(900'000'000)}), "scale-size");
}

TEST(SitePlan, ScalingIsByTheTypedLengthWhereverThePointsAre) {
  EXPECT_TRUE(rc::check("afterwards the second point lies the typed length from the first", [] {
    plan::SitePlan plan;
    plan.metres_per_pixel = *rc::gen::inRange(1, 1000) / 1000.0;
    const auto any = [] { return feet(*rc::gen::inRange(-500, 500), *rc::gen::inRange(-500, 500)); };
    const plan::KnownLength known{any(), any(), Length::inches(*rc::gen::inRange(1, 5000))};
    RC_PRE(known.from != known.to);
    const auto made = sketch::scaled(plan, known);
    RC_ASSERT(made.has_value());
    RC_ASSERT(std::abs(length(made->scale->to - made->scale->from) - static_cast<double>(known.length.steps())) <= 1);
    RC_ASSERT(made->scale->from == known.from);
    const double times = made->metres_per_pixel / plan.metres_per_pixel;
    RC_ASSERT(std::abs(length(made->at - known.from) - times * length(plan.at - known.from)) <= 1);
  }));
}

}  // namespace
