// What each hand draws, its words, and what a new element starts with.
#include "sketch/draw_tool.h"

#include <gtest/gtest.h>

#include "bench_of_hands.h"
#include "sketch/kinds.h"

namespace {

using hands::Bench;
using hands::feet;
using sketch::Hand;
using sketch::Key;
using units::Length;

Bench with(Hand hand) {
  Bench bench;
  bench.tool = sketch::draw_tool(hand);
  return bench;
}

void draw_triangle(Bench& bench, double x) {
  bench.click(x, 0);
  bench.click(x + 10, 0);
  bench.click(x + 10, 10);
  bench.key(Key::enter);
}

TEST(DrawTool, EachHandDrawsItsKind) {
  const std::vector<std::tuple<Hand, std::string, std::string>> expected{
      {Hand::area, "paved-area", "A1"},    {Hand::pool, "pool", "P1"},         {Hand::wall, "wall", "W1"},
      {Hand::building, "building", "B1"},  {Hand::keep_out, "keep-out", "N1"}, {Hand::edge, "edge-run", "K1"},
      {Hand::drain, "drain-run", "D1"},    {Hand::removal, "removal", "R1"},   {Hand::protection, "protection", "T1"},
      {Hand::site_mark, "site-mark", "M1"}};
  for (const auto& [hand, kind, id] : expected) {
    Bench bench = with(hand);
    draw_triangle(bench, 0);
    ASSERT_EQ(bench.job.elements.size(), 1U) << kind;
    EXPECT_EQ(plan::kind_name(bench.newest().kind), kind);
    EXPECT_EQ(bench.newest().id, id);
    EXPECT_EQ(bench.names.front(), "Draw " + sketch::drawn_noun(hand) + " " + id);
    EXPECT_EQ(bench.selected, std::vector<plan::ElementId>{id});
    draw_triangle(bench, 40);
    EXPECT_EQ(bench.newest().id, id.substr(0, 1) + "2");
  }
}

TEST(DrawTool, AFirstElementHasNothingChosenThatCostsMoney) {
  Bench bench = with(Hand::area);
  draw_triangle(bench, 0);
  plan::PavedArea bare;
  bare.outline = bench.newest_of<plan::PavedArea>().outline;
  EXPECT_EQ(bench.newest_of<plan::PavedArea>(), bare);
  bench = with(Hand::wall);
  draw_triangle(bench, 0);
  plan::Wall wall;
  wall.line = bench.newest_of<plan::Wall>().line;
  EXPECT_EQ(bench.newest_of<plan::Wall>(), wall);
}

// The second walk is built like the first, its pattern starts at its own first corner along its own first edge: from
// (40,3) to (43,7) is a 3-4-5, atan(4/3) = 53.130102 degrees.
TEST(DrawTool, ASecondWalkNeedsNoChoices) {
  Bench bench = with(Hand::area);
  draw_triangle(bench, 0);
  plan::Element first = bench.newest();
  auto& area = std::get<plan::PavedArea>(first.kind);
  area.build_up = "walk";
  area.laying =
      plan::Laying{"running-half", {{"a", "brick"}}, feet(1, 1), units::Angle::degrees(10), Length::millimetres(3)};
  area.borders = {{}};
  area.borders.front().item = "soldier";
  area.joint_fill = {{"sand", {}}};
  area.taped_area_m2 = 12;
  area.water_to = "D1";
  area.edges = {{0, "none"}};
  bench.job = plan::with(bench.job, first);
  bench.click(40, 3);
  bench.click(43, 7);
  bench.click(30, 9);
  bench.key(Key::enter);
  const auto& second = bench.newest_of<plan::PavedArea>();
  EXPECT_EQ(second.build_up, "walk");
  ASSERT_TRUE(second.laying);
  EXPECT_EQ(second.laying->pattern, "running-half");
  EXPECT_EQ(second.laying->units.at("a"), "brick");
  EXPECT_EQ(second.laying->joint, Length::millimetres(3));
  EXPECT_EQ(second.laying->start, feet(40, 3));
  EXPECT_NEAR(second.laying->direction.degrees(), 53.130102, 1e-4);
  EXPECT_EQ(second.borders, area.borders);
  EXPECT_EQ(second.joint_fill, area.joint_fill);
  // What a person corrected or decided for the first stays with the first.
  EXPECT_FALSE(second.taped_area_m2);
  EXPECT_TRUE(second.water_to.empty());
  EXPECT_TRUE(second.edges.empty());
}

TEST(DrawTool, ASecondWallHasItsBlocksButNotItsHeights) {
  Bench bench = with(Hand::wall);
  draw_triangle(bench, 0);
  plan::Element first = bench.newest();
  auto& wall = std::get<plan::Wall>(first.kind);
  wall.block = "block";
  wall.cap = "cap";
  wall.height = Length::feet(3);
  wall.top = {{Length(), Length::feet(3)}};
  wall.pipe = plan::WallPipe{"pipe", "", 0.01, {{Length(), Length()}}, {}};
  wall.layers = {{1, "grid", Length::feet(4), {}, {}, 1, false}};
  wall.loads = plan::WallLoads{};
  bench.job = plan::with(bench.job, first);
  draw_triangle(bench, 40);
  const auto& second = bench.newest_of<plan::Wall>();
  EXPECT_EQ(second.block, "block");
  EXPECT_EQ(second.cap, "cap");
  ASSERT_TRUE(second.pipe);
  EXPECT_EQ(second.pipe->item, "pipe");
  EXPECT_TRUE(second.pipe->outlets.empty());
  EXPECT_FALSE(second.height);
  EXPECT_TRUE(second.top.empty());
  EXPECT_TRUE(second.layers.empty());
  EXPECT_FALSE(second.loads);
}

TEST(DrawTool, WordsAreChosenAndThoseOfTheLastGoOn) {
  Bench bench = with(Hand::edge);
  bench.choose("kerb");
  draw_triangle(bench, 0);
  EXPECT_EQ(bench.newest_of<plan::EdgeRun>().what, "kerb");
  plan::Element first = bench.newest();
  std::get<plan::EdgeRun>(first.kind).item = "granite";
  bench.job = plan::with(bench.job, first);
  bench.tool = sketch::draw_tool(Hand::edge);
  draw_triangle(bench, 40);
  EXPECT_EQ(bench.newest_of<plan::EdgeRun>().what, "kerb");
  EXPECT_EQ(bench.newest_of<plan::EdgeRun>().item, "granite");
  bench.choose("restraint");
  draw_triangle(bench, 80);
  EXPECT_EQ(bench.newest_of<plan::EdgeRun>().what, "restraint");
  EXPECT_EQ(bench.newest_of<plan::EdgeRun>().item, "");
}

TEST(DrawTool, AMarkIsALineAnOutlineOrAPoint) {
  Bench bench = with(Hand::site_mark);
  bench.choose("well");
  bench.choose("as-point");
  bench.click(7, 8);
  ASSERT_EQ(bench.job.elements.size(), 1U);
  EXPECT_EQ(bench.newest_of<plan::SiteMark>().points, std::vector{feet(7, 8)});
  EXPECT_EQ(bench.newest_of<plan::SiteMark>().what, "well");
  bench.choose("septic");
  bench.choose("as-outline");
  draw_triangle(bench, 20);
  EXPECT_EQ(bench.newest_of<plan::SiteMark>().outline.size(), 1U);
  EXPECT_FALSE(bench.newest_of<plan::SiteMark>().line);
  bench.choose("as-line");
  draw_triangle(bench, 50);
  ASSERT_TRUE(bench.newest_of<plan::SiteMark>().line);
  EXPECT_EQ(bench.newest_of<plan::SiteMark>().line->edges.size(), 2U);
  bench.click(90, 0);
  bench.choose("as-point");
  ASSERT_TRUE(bench.last.refused);  // a line is in hand
  EXPECT_EQ(bench.last.refused->code, "shape-unfinished");
}

TEST(DrawTool, SaysWhatItWants) {
  Bench bench = with(Hand::pool);
  EXPECT_EQ(bench.view().hand, "Pool");
  EXPECT_EQ(bench.view().wants, "Click the first corner of the water's edge.");
  bench.click(0, 0);
  EXPECT_EQ(bench.view().wants, "Click the next corner, or type a length.");
  bench.click(10, 0);
  bench.click(10, 10);
  EXPECT_EQ(bench.view().wants, "Click the next corner, or type a length. Enter closes it.");
}

TEST(DrawTool, ANewShapeTakesHoldOfWhatIsDrawn) {
  Bench bench = with(Hand::building);
  draw_triangle(bench, 0);
  bench.tool = sketch::draw_tool(Hand::area);
  bench.click(10.3, 9.8);  // the building's corner at (10,10)
  bench.click(20, 10);
  bench.click(20, 20);
  bench.key(Key::enter);
  EXPECT_EQ(bench.newest_of<plan::PavedArea>().outline.front().edges.front().from, feet(10, 10));
}

}  // namespace
