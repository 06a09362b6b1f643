// Move, copy, turn, mirror, start point: by clicks and by typed text.
#include <gtest/gtest.h>

#include "bench_of_hands.h"
#include "sketch/mirror_tool.h"
#include "sketch/move_tool.h"
#include "sketch/start_tool.h"
#include "sketch/turn_tool.h"

namespace {

using hands::Bench;
using hands::feet;
using sketch::Key;
using Names = std::vector<std::string>;

plan::Element area() {
  plan::PavedArea of;
  of.outline = {{{{feet(0, 0), 0, {}}, {feet(20, 0), 0, {}}, {feet(20, 10), 0, {}}, {feet(0, 10), 0, {}}}, {}}};
  of.laying = plan::Laying{"p", {}, feet(3, 3), units::Angle::degrees(90), {}};
  return {"A1", "", of};
}

Bench bench(std::unique_ptr<sketch::Tool> tool) {
  Bench made;
  made.job = plan::with(made.job, area());
  made.tool = std::move(tool);
  made.selected = {"A1"};
  return made;
}
const plan::PavedArea& area_of(const Bench& on, const char* id = "A1") {
  return std::get<plan::PavedArea>(on.job.find(id)->kind);
}
geometry::Point corner(const Bench& on, std::size_t i, const char* id = "A1") {
  return area_of(on, id).outline[0].edges[i].from;
}

TEST(MoveTool, ByTwoClicks) {
  Bench on = bench(sketch::move_tool());
  on.click(0, 0);
  EXPECT_TRUE(on.view().busy);
  on.click(30, 40);
  EXPECT_EQ(on.names, Names{"Move area A1"});
  EXPECT_EQ(corner(on, 2), feet(50, 50));  // 20 + 30, 10 + 40
  EXPECT_EQ(area_of(on).laying->start, feet(33, 43));
}

TEST(MoveTool, ByTypedLengths) {
  Bench on = bench(sketch::move_tool());
  on.type("x", "12' 6\"", false);
  ASSERT_NE(on.field("x"), nullptr);
  EXPECT_EQ(on.field("x")->understood, "12' 6\"");
  on.key(Key::enter);
  EXPECT_EQ(corner(on, 0), feet(12.5, 0));
}

TEST(MoveTool, TextThatIsNotUnderstoodMovesNothing) {
  Bench on = bench(sketch::move_tool());
  on.type("x", "5 apples");
  EXPECT_TRUE(on.names.empty());
  ASSERT_NE(on.field("x"), nullptr);
  EXPECT_TRUE(on.field("x")->wrong);
}

TEST(MoveTool, PastTheReachOfThePlanIsRefused) {
  Bench on = bench(sketch::make_tool(sketch::Hand::move));
  on.type("x", "30000 ft", false);  // 9.1 km
  on.key(Key::enter);
  ASSERT_TRUE(on.last.refused);
  EXPECT_EQ(on.last.refused->code, "place-too-far");
  EXPECT_TRUE(on.names.empty());
  EXPECT_EQ(corner(on, 0), feet(0, 0));
}

TEST(MoveTool, EscapeDropsThenLeaves) {
  Bench on = bench(sketch::move_tool());
  on.click(0, 0);
  on.key(Key::escape);
  EXPECT_FALSE(on.last.leave);
  EXPECT_FALSE(on.view().busy);
  on.key(Key::escape);
  EXPECT_TRUE(on.last.leave);
}

TEST(MoveTool, WithNothingSelectedAClickSelects) {
  Bench on = bench(sketch::move_tool());
  on.selected.clear();
  on.click(50, 50);
  ASSERT_TRUE(on.last.refused);
  EXPECT_EQ(on.last.refused->code, "nothing-selected");
  on.click(10, 5);
  EXPECT_EQ(on.selected, std::vector<plan::ElementId>{"A1"});
  EXPECT_TRUE(on.names.empty());
}

TEST(CopyTool, LeavesTheFirst) {
  Bench on = bench(sketch::copy_tool());
  on.click(0, 0);
  on.click(0, 30);
  EXPECT_EQ(on.names, Names{"Copy area A1"});
  EXPECT_EQ(on.selected, std::vector<plan::ElementId>{"A2"});
  EXPECT_EQ(corner(on, 0), feet(0, 0));
  EXPECT_EQ(corner(on, 0, "A2"), feet(0, 30));
}

TEST(TurnTool, ByATypedAngle) {
  Bench on = bench(sketch::turn_tool());
  on.click(0, 0);
  on.enter("angle", "90");
  EXPECT_EQ(on.names, Names{"Turn area A1"});
  EXPECT_EQ(corner(on, 2), feet(-10, 20));  // (20, 10) -> (-10, 20)
  EXPECT_EQ(area_of(on).laying->direction, units::Angle::degrees(180));
}

TEST(TurnTool, ByThreeClicks) {
  Bench on = bench(sketch::turn_tool());
  on.click(0, 0);
  on.click(20, 0);
  on.click(0, 30);
  ASSERT_EQ(on.names.size(), 1U);
  EXPECT_EQ(corner(on, 1), feet(0, 20));
}

TEST(MirrorTool, AcrossALineAndKeepingTheFirst) {
  Bench on = bench(sketch::mirror_tool());
  on.choose("keep");
  on.click(40, 0);
  on.click(40, 30);
  EXPECT_EQ(on.names, Names{"Mirror area A1"});
  EXPECT_EQ(on.job.elements.size(), 2U);
  EXPECT_EQ(corner(on, 0), feet(0, 0));
  EXPECT_EQ(corner(on, 0, "A2"), feet(80, 0));  // 2 x 40 - 0
}

TEST(StartTool, AlongAndAcrossThePatternsOwnDirection) {
  Bench on = bench(sketch::start_point_tool());
  on.enter("along", "2'");  // the pattern runs north: two feet along it
  EXPECT_EQ(area_of(on).laying->start, feet(3, 5));
  on.enter("angle", "45");
  EXPECT_EQ(area_of(on).laying->direction, units::Angle::degrees(45));
  EXPECT_EQ(on.names, (Names{"Move start point of A1", "Direction of A1"}));
}

TEST(StartTool, ByAClick) {
  Bench on = bench(sketch::start_point_tool());
  on.click(20.4, 0.3);  // within a foot of the corner
  EXPECT_EQ(area_of(on).laying->start, feet(20, 0));
}

}  // namespace
