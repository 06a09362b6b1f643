// DXF in: ellipses, splines, placed blocks, gaps, sizes, and what is refused.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "files/dxf_curves.h"
#include "files/dxf_text.h"
#include "files/files.h"
#include "geometry/edge.h"

namespace {

using dxf::line, dxf::lwpolyline, dxf::number, dxf::Pairs, dxf::text;
using std::numbers::pi;
using Layers = std::map<std::string, std::string>;
const Layers deck{{"deck", "paved-area"}};

files::Import import(const std::string& drawing, const Layers& layers = deck, std::string_view units = "") {
  const auto made = files::import_dxf(drawing, "site.dxf", units, layers);
  if (!made) ADD_FAILURE() << problem::sentence(made.error());
  return made ? *made : files::Import{};
}

problem::Problem fault(const std::string& drawing) {
  const auto made = files::import_dxf(drawing, "site.dxf", "", deck);
  return made ? problem::Problem{} : made.error();
}

const geometry::Ring& outline(const files::Import& made, std::size_t number = 0) {
  return std::get<plan::PavedArea>(made.job.elements.at(number)->kind).outline.at(0).edges;
}
double area(const geometry::Ring& ring) { return std::abs(geometry::signed_area(ring).si()); }

struct Box {
  double low_x = 1e9, low_y = 1e9, high_x = -1e9, high_y = -1e9;
};
Box box(const geometry::Ring& ring) {
  Box made;
  for (const geometry::Edge& edge : ring) {
    const problem::Xy at = geometry::xy(edge.from);
    made = {std::min(made.low_x, at.x), std::min(made.low_y, at.y), std::max(made.high_x, at.x),
            std::max(made.high_y, at.y)};
  }
  return made;
}

std::string section(const std::string& name, const std::string& what) {
  return text({{0, "SECTION"}, {2, name}}) + what + text({{0, "ENDSEC"}});
}
std::string block(const std::string& name, double x, double y, const std::string& what) {
  return text({{0, "BLOCK"}, {8, "0"}, {2, name}, {70, "0"}, {10, number(x)}, {20, number(y)}, {30, "0.0"}}) + what +
         text({{0, "ENDBLK"}, {8, "0"}});
}
std::string insert(const std::string& name, double x, double y, const Pairs& more = {}) {
  return text({{0, "INSERT"}, {8, "deck"}, {2, name}, {10, number(x)}, {20, number(y)}}) + text(more);
}
std::string drawing(const std::string& blocks, const std::string& entities, int unit = 6) {
  return section("HEADER", text({{9, "$INSUNITS"}, {70, std::to_string(unit)}})) + section("BLOCKS", blocks) +
         section("ENTITIES", entities) + text({{0, "EOF"}});
}
std::string plain(const std::string& entities, int unit = 6) { return drawing("", entities, unit); }

// 4 m x 2 m with its corner at 0, 0.
const std::string slab = lwpolyline("0", {{0, 0}, {4, 0}, {4, 2}, {0, 2}}, true);

// ---- curves

std::string ellipse(double x, double y, double ax, double ay, double ratio, double from, double to) {
  return text({{0, "ELLIPSE"},
               {8, "deck"},
               {10, number(x)},
               {20, number(y)},
               {11, number(ax)},
               {21, number(ay)},
               {40, number(ratio)},
               {41, std::to_string(from)},
               {42, std::to_string(to)}});
}

TEST(DxfCurves, AnEllipseHasItsAreaAndItsEdge) {
  const auto made = import(plain(ellipse(10, 5, 6, 0, 0.5, 0, 2 * pi)));
  // Half axes 6 and 3: area pi x 6 x 3. Arcs within 0.06 mm (1/100,000 of 6 m) along 29 m of edge.
  EXPECT_NEAR(area(outline(made)), 18 * pi, 29.1 * 0.00006);
  for (const geometry::Edge& edge : outline(made)) {
    const problem::Xy at = geometry::xy(edge.from);
    EXPECT_NEAR(std::hypot((at.x - 10) / 6, (at.y - 5) / 3), 1, 1e-5);
  }
  EXPECT_LT(outline(made).size(), 200u) << "arcs, not chords";
}

TEST(DxfCurves, APartOfATurnedEllipseIsALine) {
  // A quarter, half axes 5 and 2, turned by 90 degrees: from (0, 5) to (-2, 0).
  const auto made = import(plain(ellipse(0, 0, 0, 5, 0.4, 0, pi / 2)), {{"deck", "wall"}});
  const auto& wall = std::get<plan::Wall>(made.job.elements.at(0)->kind).line;
  EXPECT_NEAR(geometry::xy(wall.edges.front().from).y, 5, 1e-5);
  EXPECT_NEAR(geometry::xy(wall.end).x, -2, 1e-5);
  EXPECT_NEAR(geometry::xy(wall.end).y, 0, 1e-5);
}

std::string spline(int degree, const std::vector<double>& knots, const std::vector<std::pair<double, double>>& points,
                   const std::vector<double>& weights = {}) {
  std::string made = text({{0, "SPLINE"},
                           {8, "deck"},
                           {210, "0.0"},
                           {220, "0.0"},
                           {230, "1.0"},
                           {70, "8"},
                           {71, std::to_string(degree)},
                           {72, std::to_string(knots.size())},
                           {73, std::to_string(points.size())},
                           {74, "0"}});
  for (const double knot : knots) made += text({{40, number(knot)}});
  for (const double weight : weights) made += text({{41, std::to_string(weight)}});
  for (const auto& [x, y] : points) made += text({{10, number(x)}, {20, number(y)}});
  return made;
}

// A cubic with corners (0,0) (0,4) (6,4) (6,0) over one span is a Bezier curve: at its middle (3, 3), and with the
// chord it has the area 3/20 of the sum of cross products of its corners, here 3/20 x (0x4 ... ) worked below.
TEST(DxfCurves, ACubicSplineIsItsBezierCurve) {
  const auto made =
      import(plain(spline(3, {0, 0, 0, 0, 1, 1, 1, 1}, {{0, 0}, {0, 4}, {6, 4}, {6, 0}}) + line("deck", 6, 0, 0, 0)));
  ASSERT_EQ(made.job.elements.size(), 1u) << "the chord closes it";
  // y = 12 t (1 - t), x = 18 t^2 - 12 t^3, dx = 36 t (1 - t): the integral of y dx is 432 x 1/30.
  EXPECT_NEAR(area(outline(made)), 432.0 / 30, 0.001);
}

// Nine weighted points of degree 2 are a whole circle (the standard way to write one): radius 2 m.
TEST(DxfCurves, ARationalSplineCanBeACircle) {
  const double w = std::numbers::sqrt2 / 2;
  const auto made = import(plain(spline(2, {0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 4},
                                        {{2, 0}, {2, 2}, {0, 2}, {-2, 2}, {-2, 0}, {-2, -2}, {0, -2}, {2, -2}, {2, 0}},
                                        {1, w, 1, w, 1, w, 1, w, 1})));
  EXPECT_NEAR(area(outline(made)), 4 * pi, 0.001);
}

TEST(DxfCurves, NumbersThatMakeNoCurveAreCounted) {
  const std::vector<std::string> odd{spline(3, {0, 0, 1, 1}, {{0, 0}, {1, 1}}),  // too few points for its degree
                                     spline(1, {0, 0, 1}, {{0, 0}, {1, 1}}),     // a knot too few
                                     spline(1, {0, 1, 0, 1}, {{0, 0}, {1, 1}}),  // knots fall
                                     spline(1, {0, 0, 1, 1}, {{0, 0}, {1, 1}}, {1, -1}),  // a weight below 0
                                     spline(0, {}, {}),
                                     ellipse(0, 0, 0, 0, 0.5, 0, 6),
                                     ellipse(0, 0, 1, 0, 0, 0, 6),
                                     ellipse(0, 0, 1, 0, 7, 0, 6)};
  for (const std::string& one : odd) {
    const auto made = import(plain(one));
    EXPECT_TRUE(made.job.elements.empty()) << one;
    ASSERT_EQ(made.not_mapped.size(), 1u) << one;
    EXPECT_NE(made.not_mapped.begin()->first.find("make no curve"), std::string::npos) << one;
  }
}

TEST(DxfCurves, ArcsLieAsNearAsTheyShould) {
  // A parabola from (0, 0) to (10, 0) that rises to 5.
  const files::CurveAt parabola = [](double t) { return files::Spot2{10 * t, 20 * t * (1 - t)}; };
  std::vector<files::Position> arcs;
  files::arcs_along(parabola, 0, 1, 0.001, arcs);
  arcs.push_back({.x = 10, .y = 0, .z = {}, .spot = {}});
  double furthest = 0;
  for (std::size_t i = 0; i + 1 < arcs.size(); ++i)
    for (int k = 0; k <= 50; ++k) {
      const files::Spot2 on = files::on_edge(arcs[i], arcs[i + 1], k / 50.0);
      // The slope of the parabola is at most 2, so the height above it over the square root of 5 is no more than the
      // distance; the height itself is no less.
      furthest = std::max(furthest, std::abs(on.y - 2 * on.x * (1 - on.x / 10)) / std::sqrt(5.0));
    }
  EXPECT_LT(furthest, 0.001 * std::sqrt(5.0));
  EXPECT_LT(arcs.size(), 40u);
}

// ---- blocks

TEST(DxfBlocks, APlacedBlockIsMovedTurnedAndScaled) {
  // Base point (1, 1), twice as large, turned by 90 degrees, at (100, 50): the corner (0, 0) goes to
  // (100, 50) + 2 x turned (-1, -1) = (102, 48); (4, 2) to (100, 50) + 2 x turned (3, 1) = (98, 56).
  const auto made =
      import(drawing(block("slab", 1, 1, slab), insert("SLAB", 100, 50, {{41, "2.0"}, {42, "2.0"}, {50, "90.0"}})));
  ASSERT_EQ(made.job.elements.size(), 1u);
  EXPECT_EQ(made.job.elements[0]->id, "deck-1.1");
  EXPECT_NEAR(area(outline(made)), 32, 1e-4);  // 8 m2 x 4
  const Box is = box(outline(made));
  EXPECT_NEAR(is.low_x, 98, 1e-5);
  EXPECT_NEAR(is.high_x, 102, 1e-5);
  EXPECT_NEAR(is.low_y, 48, 1e-5);
  EXPECT_NEAR(is.high_y, 56, 1e-5);
}

TEST(DxfBlocks, BlocksInsideBlocksAndRowsOfThem) {
  // Two by three slabs, 5 m and 3 m apart, inside a block that is placed twice, once from below (x the other way).
  const std::string inner = block("slab", 0, 0, slab);
  const std::string outer =
      block("yard", 0, 0, insert("slab", 10, 0, {{70, "3"}, {71, "2"}, {44, "5.0"}, {45, "3.0"}}));
  const auto made = import(drawing(inner + outer, insert("yard", 0, 0) + insert("yard", 0, 0, {{230, "-1.0"}})));
  ASSERT_EQ(made.job.elements.size(), 12u);
  double sum = 0, low = 0, high = 0;
  for (std::size_t i = 0; i < 12; ++i) {
    sum += area(outline(made, i));
    low = std::min(low, box(outline(made, i)).low_x);
    high = std::max(high, box(outline(made, i)).high_x);
  }
  EXPECT_NEAR(sum, 12 * 8, 1e-4);
  EXPECT_NEAR(high, 24, 1e-5);  // 10 + 2 x 5 + 4
  EXPECT_NEAR(low, -24, 1e-5);
  EXPECT_EQ(made.job.elements[6]->id, "deck-2.1");
}

// A circle of radius 1 stretched to 3 by 2 is an ellipse; mirrored, its edges turn the other way, its ground stays.
TEST(DxfBlocks, AStretchedCircleIsAnEllipse) {
  const std::string round = block("round", 0, 0, dxf::circle("0", 0, 0, 1));
  const auto made = import(drawing(round, insert("round", 5, 5, {{41, "3.0"}, {42, "-2.0"}})));
  EXPECT_NEAR(area(outline(made)), 6 * pi, 0.001);
  for (const geometry::Edge& edge : outline(made)) {
    const problem::Xy at = geometry::xy(edge.from);
    EXPECT_NEAR(std::hypot((at.x - 5) / 3, (at.y - 5) / 2), 1, 1e-4);
  }
  const auto mirrored = import(drawing(round, insert("round", 5, 5, {{41, "-2.0"}, {42, "2.0"}})));
  EXPECT_EQ(outline(mirrored).size(), 2u);
  EXPECT_NEAR(area(outline(mirrored)), 4 * pi, 1e-6);
}

TEST(DxfBlocks, LayerZeroComesOntoTheLayerOfTheInsertAndOtherLayersStay) {
  const std::string both = block("both", 0, 0, slab + lwpolyline("pool", {{0, 5}, {3, 5}, {3, 8}}, true));
  const auto made = import(drawing(both, insert("both", 0, 0)), {{"deck", "paved-area"}, {"pool", "pool"}});
  ASSERT_EQ(made.job.elements.size(), 2u);
  EXPECT_EQ(plan::kind_name(made.job.elements[0]->kind), "paved-area");
  EXPECT_EQ(plan::kind_name(made.job.elements[1]->kind), "pool");
}

TEST(DxfBlocks, WhatCanNotBePlacedIsCounted) {
  const auto made = import(drawing(block("slab", 0, 0, slab + text({{0, "TEXT"}, {8, "0"}, {1, "hello"}})),
                                   insert("gone", 0, 0) + insert("slab", 0, 0, {{41, "0.0"}}) +
                                       insert("slab", 0, 0, {{210, "1.0"}, {230, "0.0"}}) + insert("slab", 0, 0)));
  EXPECT_EQ(made.job.elements.size(), 1u);
  const std::map<std::string, int> expected{{"deck (INSERT of \"GONE\", a block that is not in the file)", 1},
                                            {"deck (INSERT, of no size)", 1},
                                            {"deck (INSERT, turned out of the plan)", 1},
                                            {"deck (TEXT)", 1}};
  EXPECT_EQ(made.not_mapped, expected);
}

TEST(DxfBlocks, ABlockInsideItselfIsRefused) {
  const std::string circle = block("a", 0, 0, insert("b", 0, 0)) + block("b", 0, 0, slab + insert("a", 1, 1));
  const problem::Problem said = fault(drawing(circle, insert("a", 0, 0)));
  EXPECT_EQ(said.code, "dxf-cycle");
  EXPECT_GT(said.place.line, 1);
  // One that nothing places does no harm.
  EXPECT_EQ(import(drawing(circle, slab), {{"0", "paved-area"}}).job.elements.size(), 1u);
}

std::string nested(int depth, const Pairs& each = {}) {
  std::string blocks = block("n0", 0, 0, slab);
  for (int i = 1; i < depth; ++i)
    blocks += block("n" + std::to_string(i), 0, 0, insert("n" + std::to_string(i - 1), 0, 0, each));
  return drawing(blocks, insert("n" + std::to_string(depth - 1), 0, 0));
}

TEST(DxfBlocks, SixteenDeepIsTheLimit) {
  EXPECT_EQ(import(nested(16)).job.elements.size(), 1u);
  EXPECT_EQ(fault(nested(17)).code, "dxf-deep");
}

// 400 columns, fifteen deep: 400^14 slabs. Refused before the 160,000 of the second depth are made.
TEST(DxfBlocks, BlocksThatMultiplyAreRefused) {
  const problem::Problem said = fault(nested(15, {{70, "400"}, {44, "1.0"}}));
  EXPECT_EQ(said.code, "dxf-many");
  EXPECT_FALSE(said.mend.empty());
  // The same of a block that holds only what is left out: the count stays a number.
  std::string blocks = block("n0", 0, 0, text({{0, "TEXT"}, {8, "0"}, {1, "x"}}));
  for (int i = 1; i < 16; ++i) {
    std::string ten;
    for (int k = 0; k < 10; ++k) ten += insert("n" + std::to_string(i - 1), k, 0);
    blocks += block("n" + std::to_string(i), 0, 0, ten);
  }
  const auto made = import(drawing(blocks, insert("n15", 0, 0)));
  EXPECT_GE(made.not_mapped.at("deck (TEXT)"), 1'000'000'000);
}

TEST(DxfBlocks, NumbersThatAreNoneAreRefused) {
  for (const char* bad : {"nan", "inf", "-inf", "1e999", "0x10", "1,5"}) {
    EXPECT_EQ(fault(drawing(block("slab", 0, 0, slab), insert("slab", 0, 0, {{41, bad}}))).code, "dxf-number") << bad;
    EXPECT_EQ(fault(plain(text({{0, "ELLIPSE"}, {8, "deck"}, {11, bad}}))).code, "dxf-number") << bad;
  }
  // Finite numbers whose product is not.
  const problem::Problem said =
      fault(drawing(block("slab", 0, 0, slab), insert("slab", 0, 0, {{41, "1e308"}, {42, "1e308"}})));
  EXPECT_EQ(said.code, "dxf-range");
}

// ---- gaps and sizes

TEST(DxfGaps, EndsThatAllButMeetAreJoined) {
  // Three sides with gaps of 0.8 mm and 0.6 mm, then one of 3 mm.
  const std::string sides = line("deck", 0, 0, 4, 0) + line("deck", 4.0008, 0, 4, 2) + line("deck", 4, 2.0006, 0, 2);
  EXPECT_EQ(import(plain(sides + line("deck", 0, 2, 0, 0))).job.elements.size(), 1u);
  const auto open = import(plain(sides + line("deck", 0, 2.003, 0, 0)), {{"deck", "wall"}});
  EXPECT_EQ(open.job.elements.size(), 1u) << "one wall round from the gap to the gap";
  const auto& wall = std::get<plan::Wall>(open.job.elements[0]->kind).line;
  EXPECT_EQ(wall.edges.size(), 4u);
  EXPECT_NE(wall.edges.front().from, wall.end);
}

TEST(DxfGaps, WhereThereIsAChoiceNothingIsBridged) {
  const auto made =
      import(plain(line("deck", 0, 0, 4, 0) + line("deck", 4.0005, 0, 8, 0) + line("deck", 4, 0.0005, 4, 3)),
             {{"deck", "wall"}});
  EXPECT_EQ(made.job.elements.size(), 3u);
}

// A curve drawn as lines of 0.5 mm keeps all of them: its ends lie nearer to each other than the tolerance.
TEST(DxfGaps, ShortLinesStayThemselves) {
  std::string steps;
  for (int i = 0; i < 20; ++i) steps += line("deck", i * 0.0005, 0, (i + 1) * 0.0005, 0);
  const auto made = import(plain(line("deck", -5, 0, 0, 0) + steps + line("deck", 0.01, 0, 5, 0)), {{"deck", "wall"}});
  ASSERT_EQ(made.job.elements.size(), 1u);
  EXPECT_EQ(std::get<plan::Wall>(made.job.elements[0]->kind).line.edges.size(), 22u);
}

TEST(DxfSize, AYardInTheWrongUnitIsNoticed) {
  // 24 m x 12 m drawn in millimetres and read as inches: 610 m, which may be; as metres: refused, with a hint; drawn in
  // metres and read as millimetres: 24 mm.
  const std::string yard = lwpolyline("deck", {{0, 0}, {2400, 0}, {2400, 1200}, {0, 1200}}, true);
  EXPECT_TRUE(import(plain(yard, 5)).notices.empty()) << "in centimetres it is a yard";
  const auto far = import(plain(yard, 6));
  ASSERT_EQ(far.notices.size(), 1u);
  EXPECT_EQ(far.notices[0].code, "dxf-size");
  EXPECT_NE(far.notices[0].mend.find("--units in"), std::string::npos) << "61 m; " << far.notices[0].mend;
  const auto small = import(plain(lwpolyline("deck", {{0, 0}, {24, 0}, {24, 12}, {0, 12}}, true), 4));
  ASSERT_EQ(small.notices.size(), 1u);
  EXPECT_NE(small.notices[0].mend.find("--units m"), std::string::npos);
  const problem::Problem said =
      fault(plain(lwpolyline("deck", {{0, 0}, {24000, 0}, {24000, 12000}, {0, 12000}}, true)));
  EXPECT_EQ(said.code, "dxf-far");
  EXPECT_NE(said.mend.find("--units mm"), std::string::npos) << said.mend;
}

}  // namespace
