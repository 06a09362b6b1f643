// DXF in: shapes, units, layers and what is left out.
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <locale>
#include <numbers>
#include <random>

#include "files/dxf_text.h"
#include "files/files.h"
#include "files/outlines_under.h"
#include "geometry/edge.h"

namespace {

using dxf::arc, dxf::circle, dxf::drawing, dxf::line, dxf::lwpolyline, dxf::point, dxf::polyline, dxf::text;
using Layers = std::map<std::string, std::string>;

files::Import import(const std::string& text, const Layers& layers, std::string_view units = "") {
  const auto made = files::import_dxf(text, "site.dxf", units, layers);
  if (!made) ADD_FAILURE() << problem::sentence(made.error()) << "\n" << text;
  return made ? *made : files::Import{};
}

problem::Problem fault(const std::string& text, const Layers& layers = {{"*", "paved-area"}},
                       std::string_view units = "") {
  const auto made = files::import_dxf(text, "site.dxf", units, layers);
  return made ? problem::Problem{} : made.error();
}

const geometry::Ring& outline(const files::Import& made, std::size_t number = 0) {
  return std::get<plan::PavedArea>(made.job.elements.at(number)->kind).outline.at(0).edges;
}

std::vector<std::string> ids(const files::Import& made) {
  std::vector<std::string> all;
  for (const auto& element : made.job.elements) all.push_back(element->id);
  return all;
}

geometry::Point metres(double x, double y) {
  return {units::Length::nearest(units::Metres(x)), units::Length::nearest(units::Metres(y))};
}

double area(const geometry::Ring& ring) { return geometry::signed_area(ring).si(); }

const Layers deck{{"deck", "paved-area"}};

TEST(Dxf, AClosedPolylineBecomesAnOutlineWithItsArcs) {
  const auto made = import(drawing(lwpolyline("deck", {{0, 0}, {10, 0, 1}, {10, 4}, {0, 4}}, true)), deck);
  ASSERT_EQ(ids(made), std::vector<std::string>{"deck-1"});
  plan::PavedArea expected;
  const geometry::Origin nobody;
  expected.outline = {
      {{{metres(0, 0), 0, nobody}, {metres(10, 0), 1, nobody}, {metres(10, 4), 0, nobody}, {metres(0, 4), 0, nobody}},
       {}}};
  EXPECT_EQ(std::get<plan::PavedArea>(made.job.elements[0]->kind), expected) << "nothing but the outline is chosen";
  // A rectangle of 10 x 4 and half a disc of radius 2, turning left as the outline does.
  EXPECT_NEAR(area(outline(made)), 40 + 2 * std::numbers::pi, 1e-9);
  EXPECT_EQ(made.job.datum.what, "local");
  EXPECT_EQ(made.job.heading.name, "site");
  EXPECT_EQ(made.job.heading.units, units::System::metric);
}

TEST(Dxf, TheFormOfR12IsTheSame) {
  const std::vector<dxf::Corner> corners{{0, 0}, {10, 0, 1}, {10, 4}, {0, 4, -0.25}};
  const auto old = import(drawing(polyline("deck", corners, true), -1), deck, "m");
  const auto later = import(drawing(lwpolyline("deck", corners, true)), deck);
  EXPECT_TRUE(plan::same(old.job, later.job));
  ASSERT_EQ(outline(old).size(), 4u);
  EXPECT_EQ(outline(old)[3].bulge, -0.25);
}

TEST(Dxf, AnOpenPolylineIsALine) {
  const auto made = import(drawing(lwpolyline("w", {{0, 0, 0.5}, {3, 0}, {3, 5}}, false)), {{"w", "wall"}});
  const auto& wall = std::get<plan::Wall>(made.job.elements.at(0)->kind).line;
  ASSERT_EQ(wall.edges.size(), 2u);
  EXPECT_EQ(wall.edges[0].bulge, 0.5);
  EXPECT_EQ(wall.edges[1].from, metres(3, 0));
  EXPECT_EQ(wall.end, metres(3, 5));
}

TEST(Dxf, AClosedPolylineOnAWallsLayerRunsRoundToItsStart) {
  const auto made = import(drawing(lwpolyline("w", {{0, 0}, {3, 0}, {3, 5}}, true)), {{"w", "wall"}});
  const auto& wall = std::get<plan::Wall>(made.job.elements.at(0)->kind).line;
  EXPECT_EQ(wall.edges.size(), 3u);
  EXPECT_EQ(wall.end, metres(0, 0));
}

TEST(Dxf, ACircleIsTwoHalves) {
  const auto made = import(drawing(circle("deck", 2, 3, 1.5)), deck);
  ASSERT_EQ(outline(made).size(), 2u);
  EXPECT_NEAR(area(outline(made)), std::numbers::pi * 1.5 * 1.5, 1e-9);
}

// Counter-clockwise from the first angle to the second, over 0 and past a half circle too.
TEST(Dxf, ArcsRunCounterClockwise) {
  struct Case {
    double from, to, sweep;
    geometry::Point start, end;
  };
  const std::vector<Case> cases{{0, 90, 90, metres(7, 3), metres(5, 5)},
                                {270, 90, 180, metres(5, 1), metres(5, 5)},
                                {90, 0, 270, metres(5, 5), metres(7, 3)},
                                {350, 10, 20, {}, {}},
                                {-90, 0, 90, metres(5, 1), metres(7, 3)}};
  for (const Case& one : cases) {
    const auto made = import(drawing(arc("r", 5, 3, 2, one.from, one.to)), {{"r", "edge-run"}});
    const auto& run = std::get<plan::EdgeRun>(made.job.elements.at(0)->kind).line;
    double length = 0;
    for (std::size_t i = 0; i < run.edges.size(); ++i) {
      const auto end = i + 1 < run.edges.size() ? run.edges[i + 1].from : run.end;
      EXPECT_GT(run.edges[i].bulge, 0);
      EXPECT_LE(run.edges[i].bulge, 1 + 1e-12);
      length += geometry::Curve{run.edges[i].from, end, run.edges[i].bulge}.length();
    }
    // 2 m x sweep; ends lie on the grid of 1/320 mm, which is 320,000 steps to the metre.
    EXPECT_NEAR(length / 320'000, 2 * one.sweep * std::numbers::pi / 180, 1e-5) << one.from << " to " << one.to;
    if (one.sweep == 20) continue;
    EXPECT_EQ(run.edges.front().from, one.start) << one.from;
    EXPECT_EQ(run.end, one.end) << one.from;
  }
}

TEST(Dxf, WhatIsSeenFromBelowIsTurnedOver) {
  // Extrusion (0, 0, -1): x runs to the left, turning left becomes turning right.
  const auto made = import(
      drawing(lwpolyline("deck", {{0, 0}, {-10, 0, 1}, {-10, 4}, {0, 4}}, true, {{210, "0"}, {220, "0"}, {230, "-1"}})),
      deck);
  EXPECT_EQ(outline(made)[1].from, metres(10, 0));
  EXPECT_EQ(outline(made)[1].bulge, -1);
  const auto round = import(
      drawing(text({{0, "ARC"}, {8, "r"}, {10, "-5"}, {20, "3"}, {40, "2"}, {50, "0"}, {51, "90"}, {230, "-1"}})),
      {{"r", "edge-run"}});
  const auto& run = std::get<plan::EdgeRun>(round.job.elements.at(0)->kind).line;
  EXPECT_EQ(run.edges.front().from, metres(3, 3));
  EXPECT_EQ(run.end, metres(5, 5));
  EXPECT_LT(run.edges.front().bulge, 0);
}

TEST(Dxf, PointsBecomeLevels) {
  const auto made = import(drawing(point("spot", 1, 2, 0.75) + text({{0, "POINT"}, {8, "spot"}, {10, "1"}, {20, "2"}})),
                           {{"spot", "level"}});
  ASSERT_EQ(made.job.elements.size(), 1u);
  const auto& level = std::get<plan::Level>(made.job.elements[0]->kind);
  EXPECT_EQ(level.at, metres(1, 2));
  EXPECT_EQ(level.height, units::Length::millimetres(750));
  EXPECT_EQ(made.not_mapped, (std::map<std::string, int>{{"spot (a point without height)", 1}}));
}

TEST(Dxf, UnitsAreExact) {
  // Steps of 1,000 units of the file: 1 in = 25.4 mm, 1 ft = 304.8 mm, 1 US survey foot = 1200/3937 m, 320 steps a mm.
  const std::vector<std::pair<int, std::int64_t>> steps{{1, 8'128'000},   {2, 97'536'000},  {4, 320'000},
                                                        {5, 3'200'000},   {6, 320'000'000}, {10, 292'608'000},
                                                        {14, 32'000'000}, {21, 97'536'195}};
  for (const auto& [unit, wanted] : steps) {
    const auto made = import(drawing(line("w", 0, 0, 1000, 0), unit), {{"w", "wall"}});
    EXPECT_EQ(std::get<plan::Wall>(made.job.elements.at(0)->kind).line.end.x.steps(), wanted) << unit;
    const bool metric = unit == 4 || unit == 5 || unit == 6 || unit == 14;
    EXPECT_EQ(made.job.heading.units, metric ? units::System::metric : units::System::us) << unit;
  }
  const auto said = import(drawing(line("w", 0, 0, 1000, 0), 6), {{"w", "wall"}}, "ft");  // who imports knows better
  EXPECT_EQ(std::get<plan::Wall>(said.job.elements.at(0)->kind).line.end.x.steps(), 97'536'000);
}

TEST(Dxf, LinesAndArcsThatMeetBecomeOneOutline) {
  const auto made =
      import(drawing(line("deck", 0, 4, 0, 0) + line("other", 0, 0, 9, 9) + arc("deck", 10, 2, 2, 270, 90) +
                     line("deck", 10, 4, 0, 4) + line("deck", 10, 0, 0, 0)),
             {{"deck", "paved-area"}, {"other", "wall"}});
  EXPECT_EQ(ids(made), (std::vector<std::string>{"deck-1", "other-2"}));
  EXPECT_NEAR(std::abs(area(outline(made))), 40 + 2 * std::numbers::pi, 1e-5);
  EXPECT_TRUE(made.not_mapped.empty());
}

TEST(Dxf, LinesOfALayerThatMeetBecomeOneWall) {
  const auto made =
      import(drawing(line("w", 5, 0, 5, 3) + line("w", 0, 0, 5, 0) + line("w", 9, 3, 5, 3) + line("w", 20, 0, 21, 0)),
             {{"w", "wall"}});
  EXPECT_EQ(ids(made), (std::vector<std::string>{"w-1", "w-4"}));
  EXPECT_EQ(std::get<plan::Wall>(made.job.elements[0]->kind).line.edges.size(), 3u);
}

TEST(Dxf, WhereThreeMeetNothingIsJoinedAndALineDrawnTwiceCountsOnce) {
  const auto star =
      import(drawing(line("w", 0, 0, 1, 0) + line("w", 0, 0, 0, 1) + line("w", 0, 0, -1, 0)), {{"w", "wall"}});
  EXPECT_EQ(star.job.elements.size(), 3u);
  const auto twice =
      import(drawing(line("w", 0, 0, 1, 0) + line("w", 1, 0, 0, 0) + line("w", 1, 0, 1, 1)), {{"w", "wall"}});
  EXPECT_EQ(twice.job.elements.size(), 1u);
  EXPECT_EQ(twice.not_mapped, (std::map<std::string, int>{{"w (drawn twice)", 1}}));
}

// Outlines cut into lines, which are shuffled and turned round, come back as what they were.
TEST(Dxf, ShuffledLinesGiveTheOutlinesBack) {
  EXPECT_TRUE(rc::check("joined in any order", [] {
    const int count = *rc::gen::inRange(1, 6);
    std::vector<std::string> lines;
    std::vector<double> wanted;
    for (int i = 0; i < count; ++i) {
      const int corners = *rc::gen::inRange(3, 9);
      const double radius = *rc::gen::inRange(1, 40);
      std::vector<dxf::Corner> ring;
      for (int k = 0; k < corners; ++k) {
        const double turn = 2 * std::numbers::pi * k / corners;
        ring.push_back({100.0 * i + std::round(radius * std::cos(turn) * 1000) / 1000,
                        std::round(radius * std::sin(turn) * 1000) / 1000});
      }
      double doubled = 0;  // the shoelace sum, written out
      for (std::size_t k = 0; k < ring.size(); ++k) {
        const auto& a = ring[k];
        const auto& b = ring[(k + 1) % ring.size()];
        doubled += a.x * b.y - b.x * a.y;
        lines.push_back(*rc::gen::arbitrary<bool>() ? line("deck", a.x, a.y, b.x, b.y)
                                                    : line("deck", b.x, b.y, a.x, a.y));
      }
      wanted.push_back(doubled / 2);
    }
    std::mt19937 order(*rc::gen::arbitrary<unsigned>());
    std::ranges::shuffle(lines, order);
    std::string all;
    for (const std::string& one : lines) all += one;
    const auto made = files::import_dxf(drawing(all), "site.dxf", "", {{"deck", "paved-area"}});
    RC_ASSERT(made.has_value());
    std::vector<double> found;
    for (std::size_t i = 0; i < made->job.elements.size(); ++i) found.push_back(std::abs(area(outline(*made, i))));
    std::ranges::sort(found);
    std::ranges::sort(wanted);
    RC_ASSERT(found.size() == wanted.size());
    for (std::size_t i = 0; i < found.size(); ++i) RC_ASSERT(std::abs(found[i] - wanted[i]) < 1e-6);
  }));
}

TEST(Dxf, WhatIsNotTakenIsNamedAndCounted) {
  const std::string entities =
      text({{0, "INSERT"}, {8, "trees"}, {2, "OAK"}, {10, "1"}, {20, "1"}}) +
      text({{0, "INSERT"}, {8, "trees"}, {2, "OAK"}}) +
      text({{0, "TEXT"}, {8, "deck"}, {1, std::string(5000, 'x')}, {10, "not a number, and nobody asks"}}) +
      text({{0, "LINE"}, {8, "deck"}, {67, "1"}, {10, "0"}, {20, "0"}, {11, "1"}, {21, "1"}}) +
      text({{0, "CIRCLE"}, {8, "deck"}, {10, "0"}, {20, "0"}, {40, "1"}, {210, "1"}, {220, "0"}, {230, "0"}}) +
      line("deck", 3, 3, 3, 3) + line("deck", 0, 0, 1, 0) + circle("lawn", 0, 0, 1) +
      text(
          {{0, "POLYLINE"}, {8, "deck"}, {70, "16"}, {0, "VERTEX"}, {8, "deck"}, {10, "1"}, {20, "1"}, {0, "SEQEND"}}) +
      lwpolyline("deck", {{0, 0}, {4, 0}, {4, 4}}, true);
  const auto made = import(drawing(entities), deck);
  EXPECT_EQ(ids(made), std::vector<std::string>{"deck-10"}) << "the tenth entity of the drawing";
  const std::map<std::string, int> wanted{{"trees (INSERT of \"OAK\", a block that is not in the file)", 2},
                                          {"deck (TEXT)", 1},
                                          {"deck (LINE, on the printed page)", 1},
                                          {"deck (CIRCLE, turned out of the plan)", 1},
                                          {"deck (LINE, without length)", 1},
                                          {"deck (a line, no paved-area)", 1},
                                          {"deck (POLYLINE, a mesh)", 1},
                                          {"lawn", 1}};
  EXPECT_EQ(made.not_mapped, wanted);
}

TEST(Dxf, NamesOfLayersAreReadInAllTheirSpellings) {
  for (const char* spelled : {"C\xC3\xA9sped", "C\xE9sped", "C\\U+00E9sped", "  C\xC3\xA9sped  "}) {
    const auto made = import(drawing(circle(spelled, 0, 0, 1)), {{"Césped", "keep-out"}});
    EXPECT_EQ(ids(made), std::vector<std::string>{"Césped-1"}) << spelled;
  }
}

TEST(Dxf, FarCoordinatesAreCountedFromTheFirst) {
  const double x = 229'000, y = 903'000;  // metres, as a state's plane has them
  const auto made = import(drawing(lwpolyline("deck", {{x, y}, {x + 10, y}, {x + 10, y + 4}}, true)), deck);
  EXPECT_EQ(outline(made)[0].from, metres(0, 0));
  EXPECT_EQ(outline(made)[2].from, metres(10, 4));
  EXPECT_EQ(made.job.datum, (plan::Datum{"plane", 0, 0, x, y}));
  const auto far = fault(drawing(circle("deck", 0, 0, 1) + circle("deck", 6000, 0, 1)));
  EXPECT_EQ(far.code, "dxf-far");
  EXPECT_EQ(far.place.element, "deck-2");
}

TEST(Dxf, ACountThatLiesIsNotBelieved) {
  for (const char* count : {"0", "2", "1000000000", "-7", "x"}) {
    std::string entity = lwpolyline("deck", {{0, 0}, {10, 0}, {10, 4}, {0, 4}}, true);
    entity.replace(entity.find("90\n4\n"), 5, std::string("90\n") + count + "\n");
    EXPECT_NEAR(area(outline(import(drawing(entity), deck))), 40, 1e-9) << count;
  }
}

struct Commas : std::numpunct<char> {
  char do_decimal_point() const override { return ','; }
  char do_thousands_sep() const override { return '.'; }
  std::string do_grouping() const override { return "\3"; }
};

TEST(Dxf, NumbersDoNotDependOnTheLocale) {
  const std::string file = drawing(lwpolyline("deck", {{0.5, 0.25}, {10.125, 0, 0.5}, {10, 4.75}}, true) +
                                   arc("deck", 0.5, 1.5, 2.5, 10.5, 370.5));
  const auto plain = import(file, {{"*", "removal"}});
  const std::locale before = std::locale::global(std::locale(std::locale::classic(), new Commas));
  const auto commas = files::import_dxf(file, "site.dxf", "", {{"*", "removal"}});
  const bool kept = std::use_facet<std::numpunct<char>>(std::locale()).decimal_point() == ',';
  std::locale::global(before);
  EXPECT_TRUE(kept) << "the program's locale is as it was";
  ASSERT_TRUE(commas);
  EXPECT_TRUE(plan::same(plain.job, commas->job));
}

TEST(Dxf, BadFilesAreRefusedWithLineAndReason) {
  const std::string head = "0\nSECTION\n2\nENTITIES\n";  // four lines
  // With a header the pairs before the first entity are SECTION, HEADER, two of the version, two of the unit (its
  // number on line 12), ENDSEC, SECTION, ENTITIES: the entity's type stands on line 20.
  struct Bad {
    const char* what;
    std::string text;
    std::string code;
    int line;
  };
  const std::vector<Bad> table{
      {"nothing", "", "dxf-ends-early", 1},
      {"a letter", "Dear Sir,\nthe deck is ten feet wide.\n", "dxf-code", 1},
      {"GeoJSON", "{\"type\": \"FeatureCollection\"}\n", "dxf-code", 1},
      {"bytes", std::string("\0\1\2", 3), "dxf-binary", 1},
      {"no entities", "0\nSECTION\n2\nHEADER\n0\nENDSEC\n0\nEOF\n", "dxf-empty", 8},
      {"no end", head + "0\nENDSEC\n", "dxf-ends-early", 6},
      {"a code that is none", head + "0\nLINE\nten\n1.0\n", "dxf-code", 7},
      {"a number that is none", drawing("0\nLINE\n10\nwide\n", -1), "dxf-number", 8},
      {"a number that is infinite", drawing("0\nLINE\n10\n1e999\n", -1), "dxf-number", 8},
      {"not a number by name", drawing("0\nLINE\n10\nnan\n", -1), "dxf-number", 8},
      {"a comma in a number", drawing("0\nLINE\n10\n1,5\n", -1), "dxf-number", 8},
      {"a line without its end", drawing(text({{0, "LINE"}, {10, "0"}, {20, "0"}, {11, "1"}}), 6), "dxf-missing", 20},
      {"an arc without radius", drawing(text({{0, "ARC"}, {10, "0"}, {20, "0"}, {50, "0"}, {51, "9"}}), 6),
       "dxf-missing", 20},
      {"a corner without y", drawing(text({{0, "LWPOLYLINE"}, {90, "2"}, {10, "0"}, {10, "1"}, {20, "0"}}), 6),
       "dxf-missing", 26},
      {"a last corner without y", drawing(text({{0, "LWPOLYLINE"}, {10, "0"}, {20, "0"}, {10, "1"}}), 6), "dxf-missing",
       20},
      {"a vertex without x", drawing(text({{0, "POLYLINE"}, {0, "VERTEX"}, {20, "1"}, {0, "SEQEND"}}), 6),
       "dxf-missing", 22},
      {"no unit", drawing(circle("a", 0, 0, 1), 0), "dxf-units", 12},
      {"no unit, R12", drawing(circle("a", 0, 0, 1), -1), "dxf-units", 1},
      {"miles", drawing(circle("a", 0, 0, 1), 3), "dxf-units", 12},
      {"a unit that is no number", "0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\nfeet\n0\nENDSEC\n", "dxf-number", 8},
      {"out of all range", drawing(circle("a", 1e12, 0, 1), 6), "dxf-range", 20}};
  for (const Bad& bad : table) {
    const auto found =
        fault(bad.text, {{"*", "paved-area"}}, bad.code == "dxf-units" || bad.text.contains("INSUNITS") ? "" : "m");
    EXPECT_EQ(found.code, bad.code) << bad.what << ": " << problem::sentence(found);
    EXPECT_EQ(found.place.line, bad.line) << bad.what << ": " << problem::sentence(found);
    EXPECT_EQ(found.place.file, "site.dxf") << bad.what;
    EXPECT_FALSE(found.mend.empty()) << bad.what;
  }
  EXPECT_EQ(fault(drawing(circle("a", 0, 0, 1)), {{"*", "paved-area"}}, "yd").code, "dxf-units");
  EXPECT_EQ(fault(drawing(circle("a", 0, 0, 1)), {{"a", "meadow"}}).code, "layer-kind");
  EXPECT_EQ(fault(std::string(files::most_bytes + 1, ' ')).code, "dxf-large");
}

std::string every_type() {
  return drawing(line("w", 0, 0, 5, 0) + line("w", 5, 0, 5, 3) + arc("w", 1, 1, 1, 20, 200) + circle("p", 0, 0, 2) +
                 lwpolyline("deck", {{0, 0}, {10, 0, 1}, {10, 4}}, true) +
                 polyline("deck", {{20, 0}, {25, 0}, {25, 4, -0.3}}, true) + point("spot", 1, 2, 3) +
                 text({{0, "INSERT"}, {8, "t"}, {2, "B"}, {10, "1"}, {20, "1"}}));
}

const Layers all_kinds{
    {"w", "wall"}, {"p", "pool"}, {"deck", "paved-area"}, {"spot", "level"}, {"*", "site-mark:gate"}};

// A file cut short anywhere is refused with a place and a sentence: what is missing can't be known.
TEST(Dxf, EveryBeginningOfAFileIsRefused) {
  const std::string whole = every_type();
  ASSERT_TRUE(files::import_dxf(whole, "site.dxf", "", all_kinds));
  const std::size_t end = whole.find("EOF") + 3;
  for (std::size_t size = 0; size < end; ++size) {
    const auto made = files::import_dxf(whole.substr(0, size), "site.dxf", "", all_kinds);
    ASSERT_FALSE(made) << size;
    ASSERT_GE(made.error().place.line, 1) << size;
    ASSERT_FALSE(made.error().text.empty() || made.error().mend.empty()) << size;
  }
}

// Any change of any bytes: a job that can be written and read, or one sentence.
TEST(Dxf, ChangedBytesGiveAJobOrASentence) {
  const std::string whole = every_type();
  EXPECT_TRUE(rc::check("no change of bytes brings it down", [&] {
    std::string changed = whole;
    for (int left = *rc::gen::inRange(1, 8); left > 0; --left) {
      const auto at = static_cast<std::size_t>(*rc::gen::inRange<int>(0, static_cast<int>(changed.size())));
      static const std::string letters = "0123456789\n-+.eE \xff\tLINEVTX";
      const int way = *rc::gen::inRange(0, 3);
      const char letter =
          letters[static_cast<std::size_t>(*rc::gen::inRange<int>(0, static_cast<int>(letters.size())))];
      if (way == 0) changed[at] = letter;
      if (way == 1) changed.insert(at, 1, letter);
      if (way == 2) changed.erase(at, static_cast<std::size_t>(*rc::gen::inRange(1, 40)));
    }
    const auto made = files::import_dxf(changed, "site.dxf", "", all_kinds);
    if (!made) {
      RC_ASSERT(!made.error().text.empty() && !made.error().mend.empty());
      return;
    }
    const auto back = files::read_job(files::write_job(made->job), "job.json");
    RC_ASSERT(back.has_value() && plan::same(*back, made->job));
  }));
}

TEST(OutlinesUnder, AreLinesInTrueSizeOfBothForms) {
  const auto dxf_lines = files::outlines_of(
      drawing(lwpolyline("a", {{0, 0}, {10, 0, 1}, {10, 4}}, true) + line("b", 1, 1, 2, 2) + point("c", 1, 1, 1), 2),
      "Plan.DXF", "");
  ASSERT_TRUE(dxf_lines) << problem::sentence(dxf_lines.error());
  ASSERT_EQ(dxf_lines->size(), 2u);
  EXPECT_EQ(dxf_lines->at(0).edges.size(), 3u);
  EXPECT_EQ(dxf_lines->at(0).edges[1].bulge, 1);
  EXPECT_EQ(dxf_lines->at(0).end, dxf_lines->at(0).edges[0].from);
  EXPECT_EQ(dxf_lines->at(1).end.x, units::Length::feet(2));
  const std::string features = R"({"type": "FeatureCollection", "features": [
    {"type": "Feature", "properties": {}, "geometry": {"type": "Polygon", "coordinates": [[[0, 0], [4, 0], [4, 3], [0, 0]], [[1, 1], [2, 1], [2, 2], [1, 1]]]}},
    {"type": "Feature", "properties": {}, "geometry": {"type": "LineString", "coordinates": [[0, 0], [4, 0]]}}]})";
  const auto json_lines = files::outlines_of(features, "plan.geojson", "m");
  ASSERT_TRUE(json_lines) << problem::sentence(json_lines.error());
  ASSERT_EQ(json_lines->size(), 3u);
  EXPECT_EQ(json_lines->at(0).edges[1].from, metres(4, 0));
  EXPECT_EQ(json_lines->at(1).edges.size(), 3u);
  EXPECT_EQ(json_lines->at(2).end, metres(4, 0));
  EXPECT_EQ(files::outlines_of(drawing(point("a", 0, 0, 0)), "plan.dxf", "").error().code, "outlines-none");
  EXPECT_EQ(files::outlines_of(drawing(line("b", 1, 1, 2, 2), 0), "plan.dxf", "").error().code, "dxf-units");
}

}  // namespace
