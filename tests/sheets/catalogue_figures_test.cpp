// Patterns and build-ups as the catalogue shows them: pieces of the sizes that the cells say, layers as thick as they
// are.
#include "sheets/catalogue_figures.h"

#include <gtest/gtest.h>

#include <cmath>

#include "demo.h"
#include "sheets/parts.h"

namespace {

using sheets::Material;
using units::Length;

const catalogue::Catalogue& shown() { return *demo::results("pool-terrace-a").job->catalogue; }

std::vector<sheets::Area> pieces(const sheets::Figure& figure) {
  std::vector<sheets::Area> found;
  for (const sheets::Part& part : figure.parts)
    if (const auto* area = std::get_if<sheets::Area>(&part); area && area->material == Material::paving)
      found.push_back(*area);
  return found;
}

catalogue::Pattern running() {
  catalogue::Pattern pattern;
  pattern.id = "half";
  pattern.cell_x = {catalogue::CellSide::Of::module_length, 2, {}};
  pattern.cell_y = {catalogue::CellSide::Of::module_width, 1, {}};
  pattern.along = 2;
  pattern.across_x = 1;
  pattern.across_y = 1;
  pattern.pieces = {{"unit", 0, 0, 2, 1}};
  return pattern;
}

TEST(CatalogueFigures, APatternIsDrawnInItsSizesAndCoversItsRoom) {
  const auto figure = sheets::pattern_figure(running(), {Length::inches(8), Length::inches(4)}, 1.0, 0.5);
  ASSERT_TRUE(figure);
  EXPECT_DOUBLE_EQ(figure->high.x - figure->low.x, 1.0);
  double inside = 0;
  for (const sheets::Area& piece : pieces(*figure)) {
    sheets::Extent extent;
    extent.take(piece.contours[0]);
    // 8 x 4 in less a joint of 3 % of the smaller cell (4 in) on each side: 8 - 0.24 and 4 - 0.24 in.
    EXPECT_NEAR(extent.high().x - extent.low().x, 7.76 * 0.0254, 1e-9);
    EXPECT_NEAR(extent.high().y - extent.low().y, 3.76 * 0.0254, 1e-9);
    const auto within = [](double low, double high, double side) {
      return std::max(0.0, std::min(high, side / 2) - std::max(low, -side / 2));
    };
    inside += within(extent.low().x, extent.high().x, 1.0) * within(extent.low().y, extent.high().y, 0.5);
  }
  // Joints take 1 - 7.76 x 3.76 / 32 = 8.8 % of it; at the edges a little more or less.
  EXPECT_NEAR(inside / 0.5, 7.76 * 3.76 / 32, 0.02);
}

TEST(CatalogueFigures, APatternTurnedIsDrawnTurned) {
  catalogue::Pattern pattern = running();
  pattern.direction = units::Angle::degrees(45);
  const auto figure = sheets::pattern_figure(pattern, {}, 1, 1);
  ASSERT_TRUE(figure);
  for (const sheets::Area& piece : pieces(*figure)) {
    const auto along = piece.contours[0].turns[1].at - piece.contours[0].turns[0].at;
    EXPECT_NEAR(along.x, along.y, 1e-9);
  }
}

TEST(CatalogueFigures, APatternThatCannotBeIsNotDrawn) {
  catalogue::Pattern pattern = running();
  pattern.along = 0;
  EXPECT_FALSE(sheets::pattern_figure(pattern, {}, 1, 1));
  EXPECT_FALSE(sheets::pattern_figure(running(), {Length(), Length()}, 1, 1));
}

TEST(CatalogueFigures, LayersOfABuildUpAreAsThickAsTheySay) {
  catalogue::BuildUp build_up;
  build_up.id = "own";
  catalogue::Layer base;
  base.role = "base";
  base.item = "agg-dense";
  base.thickness = Length::inches(6);
  catalogue::Layer sand = base;
  sand.role = "bedding";
  sand.item = "agg-sand-c33";
  sand.thickness = Length::inches(1);
  build_up.layers = {sand, base};
  const auto section = sheets::build_up_figure(shown(), build_up, units::System::us);
  ASSERT_TRUE(section);
  ASSERT_EQ(section->leaders.size(), 2U);
  EXPECT_EQ(section->leaders[0].value, "1\"");
  EXPECT_EQ(section->leaders[1].value, "6\"");
  EXPECT_EQ(section->leaders[1].field, "layer/1/thickness");
  // 1 + 6 in of layers on 4 in of ground
  EXPECT_NEAR(section->figure.high.y - section->figure.low.y, 11 * 0.0254, 1e-9);
  EXPECT_FALSE(sheets::build_up_figure(shown(), {}, units::System::us));
}

TEST(CatalogueFigures, EveryPatternAndBuildUpOfTheDemoIsDrawn) {
  for (const auto& [id, pattern] : shown().patterns) EXPECT_TRUE(sheets::pattern_figure(pattern, {}, 1, 1)) << id;
  for (const auto& [id, build_up] : shown().build_ups)
    EXPECT_TRUE(sheets::build_up_figure(shown(), build_up, units::System::metric)) << id;
}

}  // namespace
