// Offset, split, join, hole, edge to arc, trace: by clicks and by typed text.
#include <gtest/gtest.h>

#include <cmath>

#include "bench_of_hands.h"
#include "sketch/edge_tool.h"
#include "sketch/hole_tool.h"
#include "sketch/join_tool.h"
#include "sketch/offset_tool.h"
#include "sketch/split_tool.h"
#include "sketch/trace_tool.h"

namespace {

using hands::Bench;
using hands::feet;
using sketch::Key;
using Names = std::vector<std::string>;

plan::Element area(std::string id, double x0, double y0, double x1, double y1) {
  plan::PavedArea of;
  of.outline = {{{{feet(x0, y0), 0, {}}, {feet(x1, y0), 0, {}}, {feet(x1, y1), 0, {}}, {feet(x0, y1), 0, {}}}, {}}};
  return {std::move(id), "", of};
}

Bench bench(std::unique_ptr<sketch::Tool> tool) {
  Bench made;
  made.job = plan::with(made.job, area("A1", 0, 0, 40, 20));
  made.tool = std::move(tool);
  made.selected = {"A1"};
  return made;
}

double square_feet(const Bench& on, const char* id = "A1") {
  double sum = 0;
  for (const plan::DrawnRing& ring : std::get<plan::PavedArea>(on.job.find(id)->kind).outline)
    sum += (sum == 0 ? 1 : -1) * std::abs(geometry::signed_area(ring.edges).si());  // holes go off
  return sum / units::square_metres_per_square_foot;
}

TEST(OffsetTool, ByATypedLengthAndByAClick) {
  Bench on = bench(sketch::offset_tool());
  on.enter("offset", "-2'");
  EXPECT_EQ(on.names, Names{"Offset area A1"});
  EXPECT_NEAR(square_feet(on), 36 * 16, 1e-6);  // 40 - 4 by 20 - 4
  Bench out = bench(sketch::offset_tool());
  out.click(20, 25);  // 5 ft off the edge y = 20
  EXPECT_NEAR(square_feet(out), 50 * 30, 1e-6);
}

TEST(OffsetTool, TooFarInChangesNothing) {
  Bench on = bench(sketch::offset_tool());
  on.enter("offset", "-10'");
  ASSERT_TRUE(on.last.refused);
  EXPECT_EQ(on.last.refused->code, "offset-parts");
  EXPECT_TRUE(on.names.empty());
}

TEST(SplitTool, MakesTwo) {
  Bench on = bench(sketch::split_tool());
  on.click(15, -5);
  on.click(15, 30);
  EXPECT_EQ(on.names, Names{"Split area A1"});
  EXPECT_EQ(on.selected, (std::vector<plan::ElementId>{"A1", "A2"}));
  EXPECT_NEAR(square_feet(on) + square_feet(on, "A2"), 800, 1e-6);
  EXPECT_NEAR(square_feet(on), 15 * 20, 1e-6);
}

TEST(JoinTool, MakesOne) {
  Bench on = bench(sketch::join_tool());
  on.job = plan::with(on.job, area("A2", 40, 0, 50, 20));
  on.click(46, 10);
  EXPECT_EQ(on.names, Names{"Join area A1"});
  EXPECT_EQ(on.job.elements.size(), 1U);
  EXPECT_NEAR(square_feet(on), 50 * 20, 1e-6);
}

TEST(HoleTool, CutsWhatIsDrawn) {
  Bench on = bench(sketch::hole_tool());
  on.click(10, 5);
  on.click(16, 5);
  on.click(16, 11);
  on.click(10, 11);
  on.key(Key::enter);
  EXPECT_EQ(on.names, Names{"Cut a hole in area A1"});
  EXPECT_NEAR(square_feet(on), 800 - 36, 1e-6);
}

TEST(EdgeTool, BendsThroughAPointOrByARadius) {
  Bench on = bench(sketch::edge_to_arc_tool());
  on.click(10, 0);
  on.click(20, -20);  // half a circle of 40 ft below the edge
  EXPECT_EQ(on.names, Names{"Edge of A1 to arc"});
  const auto& ring = std::get<plan::PavedArea>(on.job.find("A1")->kind).outline[0].edges;
  EXPECT_NEAR(ring[0].bulge, 1, 1e-9);  // tan(180 degrees / 4)
  Bench small = bench(sketch::edge_to_arc_tool());
  small.click(10, 0);
  small.enter("radius", "19'");  // half the chord is 20 ft
  ASSERT_TRUE(small.last.refused);
  EXPECT_EQ(small.last.refused->code, "arc-too-small");
}

TEST(TraceTool, FollowsAnOutline) {
  Bench on = bench(sketch::trace_tool());
  on.click(10, 0.2);
  on.click(40, 10);
  ASSERT_EQ(on.names.size(), 1U);
  EXPECT_EQ(on.names.front(), "Trace edge K1");
  const auto& line = std::get<plan::EdgeRun>(on.newest().kind).line;
  ASSERT_EQ(line.edges.size(), 2U);
  EXPECT_EQ(line.edges[1].from, feet(40, 0));
  EXPECT_EQ(line.end, feet(40, 10));
}

}  // namespace
