// Pick: what is selected and changed by clicks, drags and keys.
#include "sketch/pick_tool.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "bench_of_hands.h"

namespace {

using hands::Bench;
using hands::feet;
using sketch::Key;
using Ids = std::vector<plan::ElementId>;

plan::Element area(std::string id, double x0, double y0, double x1, double y1) {
  plan::PavedArea of;
  of.outline = {{{{feet(x0, y0), 0, {}}, {feet(x1, y0), 0, {}}, {feet(x1, y1), 0, {}}, {feet(x0, y1), 0, {}}}, {}}};
  return {std::move(id), "", of};
}

Bench bench(const std::vector<plan::Element>& elements, Ids selected = {}) {
  Bench made;
  for (const plan::Element& element : elements) made.job = plan::with(made.job, element);
  made.tool = sketch::pick_tool();
  made.selected = std::move(selected);
  return made;
}

void drag(Bench& on, double x0, double y0, double x1, double y1, sketch::Hold hold = {}) {
  on.feed(sketch::Moved{feet(x0, y0), hold});
  on.feed(sketch::Pressed{feet(x0, y0), hold, false});
  on.feed(sketch::Moved{feet(x1, y1), hold});
  on.feed(sketch::Released{feet(x1, y1), hold});
}

const geometry::Ring& ring(const Bench& on, const plan::ElementId& id) {
  return std::get<plan::PavedArea>(on.job.find(id)->kind).outline[0].edges;
}

TEST(PickTool, AClickSelectsTheTopAndMoreAdds) {
  Bench on = bench({area("A1", 0, 0, 40, 40), area("A2", 10, 10, 30, 30), area("A3", 60, 0, 80, 40)});
  on.click(20, 20);
  EXPECT_EQ(on.selected, Ids{"A2"});
  on.click(70, 20, {false, false, true});
  EXPECT_EQ(on.selected, (Ids{"A2", "A3"}));
  on.click(70, 20, {false, false, true});  // once more takes it out
  on.feed(sketch::Moved{feet(70, 20), {}});
  on.click(50, 60);  // on nothing: pressed, and let go without a drag
  EXPECT_TRUE(on.selected.empty());
  EXPECT_TRUE(on.names.empty());
}

TEST(PickTool, AClickOnceMoreGoesBelow) {
  Bench on = bench({area("A1", 0, 0, 40, 40), area("A2", 10, 10, 30, 30)});
  on.click(22, 20);
  on.click(22, 20);
  EXPECT_EQ(on.selected, Ids{"A1"});
  on.key(Key::next_below);  // and round again
  EXPECT_EQ(on.selected, Ids{"A2"});
}

TEST(PickTool, ABoxToTheRightHoldsToTheLeftTouches) {
  const std::vector<plan::Element> two{area("A1", 0, 0, 10, 10), area("A2", 20, 0, 40, 10)};
  Bench on = bench(two);
  drag(on, -5, -5, 25, 15);
  EXPECT_EQ(on.selected, Ids{"A1"});
  Bench left = bench(two);
  drag(left, 25, 15, -5, -5);
  EXPECT_EQ(left.selected.size(), 2U);
}

TEST(PickTool, DragsWhatIsSelectedInOneStep) {
  Bench on = bench({area("A1", 0, 0, 40, 40)}, {"A1"});
  drag(on, 15, 15, 35, 18, {false, true, false});  // free: nothing takes hold
  EXPECT_EQ(on.names, (std::vector<std::string>{"Move area A1"}));
  EXPECT_EQ(ring(on, "A1")[0].from, feet(20, 3));  // 35 - 15, 18 - 15
  EXPECT_EQ(ring(on, "A1")[2].from, feet(60, 43));
}

TEST(PickTool, ADraggedCornerTakesHoldOfAnother) {
  Bench on = bench({area("A1", 0, 0, 40, 40), area("A2", 60, 0, 90, 40)}, {"A1"});
  drag(on, 40, 40, 59.5, 39.6);  // within a foot of A2's corner at (60, 40)
  EXPECT_EQ(on.names, (std::vector<std::string>{"Move corner of A1"}));
  EXPECT_EQ(ring(on, "A1")[2].from, feet(60, 40));
  EXPECT_EQ(ring(on, "A1")[1].from, feet(40, 0));
}

TEST(PickTool, TheMiddleOfAnEdgeMovesItSquareToItself) {
  Bench on = bench({area("A1", 0, 0, 40, 30)}, {"A1"});
  drag(on, 40, 15, 47, 21, {false, true, false});  // sideways only: 7 ft
  EXPECT_EQ(on.names, (std::vector<std::string>{"Move edge of A1"}));
  EXPECT_EQ(ring(on, "A1")[1].from, feet(47, 0));
  EXPECT_EQ(ring(on, "A1")[2].from, feet(47, 30));
}

TEST(PickTool, ShowsTheLengthsThatADragChanges) {
  Bench on = bench({area("A1", 0, 0, 40, 30)}, {"A1"});
  on.feed(sketch::Pressed{feet(40, 30), {}, false});
  on.feed(sketch::Moved{feet(40, 36), {false, true, false}});
  const sketch::View view = on.view();
  EXPECT_TRUE(view.busy);
  ASSERT_FALSE(view.strokes.empty());
  EXPECT_TRUE(std::ranges::any_of(view.chips, [](const sketch::Chip& chip) { return chip.text == "36' 0\""; }))
      << (view.chips.empty() ? "none" : view.chips.front().text);
}

TEST(PickTool, EscapeDropsTheDrag) {
  Bench on = bench({area("A1", 0, 0, 40, 30)}, {"A1"});
  const plan::Job before = on.job;
  on.feed(sketch::Pressed{feet(40, 30), {}, false});
  on.feed(sketch::Moved{feet(50, 36), {}});
  on.key(Key::escape);
  on.feed(sketch::Released{feet(50, 36), {}});
  EXPECT_TRUE(plan::same(on.job, before));
  EXPECT_EQ(on.selected, Ids{"A1"});
  EXPECT_FALSE(on.view().busy);
  on.key(Key::escape);
  EXPECT_TRUE(on.selected.empty());
}

TEST(PickTool, ADoubleClickAddsACornerAndEraseTakesIt) {
  Bench on = bench({area("A1", 0, 0, 40, 30)}, {"A1"});
  on.click_twice(10, 0);
  ASSERT_EQ(ring(on, "A1").size(), 5U);
  EXPECT_EQ(ring(on, "A1")[1].from, feet(10, 0));
  on.point(10, 0);
  on.key(Key::erase);
  EXPECT_EQ(ring(on, "A1").size(), 4U);
  on.point(20, 15);
  on.key(Key::erase);
  EXPECT_TRUE(on.job.elements.empty());
  EXPECT_EQ(on.names, (std::vector<std::string>{"Add a corner to A1", "Take a corner from A1", "Remove area A1"}));
}

TEST(PickTool, APickedEdgeBendsAndTakesALength) {
  Bench on = bench({area("A1", 0, 0, 40, 30)}, {"A1"});
  on.click(10, 0);
  on.enter("length", "44'");
  EXPECT_EQ(ring(on, "A1")[1].from, feet(44, 0));
  on.click(30, 0);
  on.key(Key::line_or_arc);
  EXPECT_NE(ring(on, "A1")[0].bulge, 0);
  EXPECT_EQ(on.names.back(), "Edge of A1 to arc");
}

TEST(PickTool, ArrowsMoveWhatIsSelected) {
  Bench on = bench({area("A1", 0, 0, 40, 30), area("A2", 50, 0, 60, 9)}, {"A1", "A2"});
  on.feed(sketch::Nudged{{8128, 0}});  // an inch
  EXPECT_EQ(on.names, (std::vector<std::string>{"Move 2 elements"}));
  EXPECT_EQ(ring(on, "A2")[0].from, feet(50 + 1.0 / 12, 0));
}

TEST(PickTool, ALockedSitePlanStays) {
  plan::SitePlan picture;
  picture.at = feet(0, 0);
  picture.locked = true;
  Bench on = bench({{"plan1", "", picture}}, {"plan1"});
  drag(on, 0, 0, 20, 20);
  on.feed(sketch::Nudged{{8128, 0}});
  on.key(Key::erase);
  ASSERT_EQ(on.job.elements.size(), 1U);
  EXPECT_EQ(std::get<plan::SitePlan>(on.job.find("plan1")->kind), picture);
  EXPECT_TRUE(on.names.empty());
}

}  // namespace
