// Measuring makes no element; a dimension does.
#include "sketch/measure_tool.h"

#include <gtest/gtest.h>

#include "bench_of_hands.h"
#include "sketch/dimension_tool.h"

namespace {

using hands::Bench;
using hands::feet;
using sketch::Key;

std::string text(const Bench& bench, const std::string& id) {
  const sketch::Field* field = bench.field(id);
  return field ? field->text : std::string();
}

// 3 + 4 ft round a right angle: 7 ft, and half of 3 x 4 is 6 square feet.
TEST(Measure, LengthTotalAngleAndArea) {
  Bench bench;
  bench.tool = sketch::measure_tool();
  bench.click(0, 0);
  bench.click(3, 0);
  bench.point(3, 4);
  EXPECT_EQ(text(bench, "length"), "4' 0\"");
  EXPECT_EQ(text(bench, "total"), "7' 0\"");
  EXPECT_EQ(text(bench, "angle"), "90°");
  EXPECT_EQ(text(bench, "area"), "6.0 ft²");
  EXPECT_EQ(bench.view().strokes.front().pen, sketch::Pen::tape);
  EXPECT_TRUE(bench.job.elements.empty());
}

TEST(Measure, EnterEndsItAndTheNextClickBeginsAnew) {
  Bench bench;
  bench.tool = sketch::measure_tool();
  bench.click(0, 0);
  bench.click(3, 0);
  bench.key(Key::enter);
  EXPECT_FALSE(bench.view().busy);
  bench.point(50, 50);
  EXPECT_EQ(text(bench, "total"), "3' 0\"");  // it stays to be read
  bench.click(10, 10);
  bench.point(10, 12);
  EXPECT_EQ(text(bench, "total"), "2' 0\"");
}

TEST(Measure, UndoTakesAPointBackEscapeDropsThenLeaves) {
  Bench bench;
  bench.tool = sketch::measure_tool();
  bench.click(0, 0);
  bench.click(3, 0);
  bench.click(3, 30);
  bench.key(Key::undo);
  bench.point(3, 4);
  EXPECT_EQ(text(bench, "total"), "7' 0\"");
  bench.key(Key::escape);
  EXPECT_FALSE(bench.last.leave);
  EXPECT_FALSE(bench.view().busy);
  bench.key(Key::escape);
  EXPECT_TRUE(bench.last.leave);
}

TEST(Dimension, TwoClicks) {
  Bench bench;
  bench.tool = sketch::dimension_tool();
  bench.click(0, 0);
  bench.point(3, 4);
  ASSERT_EQ(bench.view().chips.size(), 1U);
  EXPECT_EQ(bench.view().chips.front().text, "5' 0\"");
  bench.click(3, 4);
  ASSERT_EQ(bench.job.elements.size(), 1U);
  EXPECT_EQ(bench.newest_of<plan::Dimension>(), (plan::Dimension{feet(0, 0), feet(3, 4)}));
  EXPECT_EQ(bench.names.front(), "Draw dimension " + bench.newest().id);
  bench.click(9, 9);
  bench.click(9, 9);
  EXPECT_TRUE(bench.last.refused);
}

}  // namespace
