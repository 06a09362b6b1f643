// The drawing of a job as DXF and GeoJSON: read by other hands, and back again by our own import.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "files/drawing_dxf.h"
#include "files/geojson_write.h"
#include "files/json_read.h"
#include "files/other_hands.h"
#include "geometry/edge.h"
#include "plan/footprint.h"
#include "results/demo_jobs.h"

namespace {

using files::DrawnAs;

geometry::Point metres(double x, double y) {
  return {units::Length::nearest(units::Metres(x)), units::Length::nearest(units::Metres(y))};
}

plan::DrawnRing rectangle(double x1, double y1, double x2, double y2) {
  return {{{metres(x1, y1), 0, {}}, {metres(x2, y1), 0, {}}, {metres(x2, y2), 0, {}}, {metres(x1, y2), 0, {}}}, {}};
}

// A deck of 10 m x 6 m with a round island of radius 1 m, a wall of a straight piece and a quarter circle of radius 3
// m, a freeform pool, a level, a gate.
plan::Job yard(units::System system) {
  plan::Job job;
  job.heading.name = "Yard";
  job.heading.units = system;
  job.catalogue = std::make_shared<const catalogue::Catalogue>();
  plan::PavedArea deck;
  deck.outline = {rectangle(0, 0, 10, 6), {{{metres(4, 3), 1, {}}, {metres(6, 3), 1, {}}}, {}}};
  job = plan::with(job, {"A1", "Deck ñ", deck});
  plan::Wall wall;
  wall.line.edges = {{metres(0, 8), 0, {}}, {metres(5, 8), std::tan(std::numbers::pi / 8), {}}};
  wall.line.end = metres(8, 11);
  job = plan::with(job, {"W 1", "", wall});
  plan::Pool pool;
  pool.outline = {{{}, {metres(20, 0), metres(25, 1), metres(24, 5), metres(19, 4)}}};
  job = plan::with(job, {"P1", "", pool});
  job = plan::with(job, {"L1", "", plan::Level{metres(1, 1), units::Length::millimetres(-125), "existing", {}}});
  plan::SiteMark gate;
  gate.what = "gate";
  gate.points = {metres(2, 9), metres(3, 9)};
  return plan::with(job, {"G", "", gate});
}

const std::map<std::string, std::string> all_kinds{{"paved-area", "paved-area"},
                                                   {"pool", "pool"},
                                                   {"wall", "wall"},
                                                   {"steps", "steps"},
                                                   {"building", "building"},
                                                   {"keep-out", "keep-out"},
                                                   {"edge-run", "edge-run"},
                                                   {"drain-run", "drain-run"},
                                                   {"removal", "removal"},
                                                   {"level", "level"},
                                                   {"protection", "protection"}};

files::Value read_by_another(const std::string& dxf) { return other_hands::read("drawing_facts.py", dxf, ".dxf"); }

double number(const files::Value& of, std::string_view name) {
  const files::Value* found = of.find(name);
  return found == nullptr ? NAN : units::read_number(found->text).value_or(NAN);
}

std::vector<const files::Value*> shapes_of(const files::Value& facts, const std::string& id) {
  std::vector<const files::Value*> found;
  for (const files::Value& shape : facts.find("shapes")->children)
    if (shape.find("id")->text == "id " + id) found.push_back(&shape);
  return found;
}

TEST(DrawingDxf, AnotherReaderFindsNothingWrongAndTheSameAreas) {
  for (const units::System system : {units::System::metric, units::System::us}) {
    const plan::Job job = yard(system);
    const files::Value facts = read_by_another(files::drawing_dxf(job, files::drawn_things(job)));
    ASSERT_NE(facts.find("shapes"), nullptr);
    EXPECT_EQ(facts.find("version")->text, "AC1015");
    EXPECT_EQ(number(facts, "errors") + number(facts, "mended"), 0) << facts.find("said")->children.size();
    EXPECT_EQ(number(facts, "units"), system == units::System::metric ? 6 : 2);
    const double foot = system == units::System::metric ? 1 : 0.3048;
    const auto deck = shapes_of(facts, "A1");
    ASSERT_EQ(deck.size(), 2u);
    EXPECT_NEAR(number(*deck[0], "area") * foot * foot, 60, 1e-9);                // 10 m x 6 m
    EXPECT_NEAR(number(*deck[1], "area") * foot * foot, std::numbers::pi, 1e-9);  // radius 1 m
    EXPECT_TRUE(deck[0]->find("closed")->truth && deck[1]->find("closed")->truth);
    EXPECT_EQ(number(*deck[1], "ring"), 1);
    const auto wall = shapes_of(facts, "W 1");
    ASSERT_EQ(wall.size(), 1u);
    EXPECT_FALSE(wall[0]->find("closed")->truth);
    EXPECT_NEAR(number(*wall[0], "length") * foot, 5 + 3 * std::numbers::pi / 2, 1e-6);  // a quarter of radius 3 m
    const double pool =
        plan::footprint(job, job.elements[2], *std::make_unique<std::vector<problem::Problem>>()).drawn.area().si();
    EXPECT_NEAR(number(*shapes_of(facts, "P1").at(0), "area") * foot * foot, pool, 1e-6);
    EXPECT_NEAR(number(facts.find("points")->children.at(0), "z") * foot, -0.125, 1e-9);
    std::vector<std::string> layers, texts;
    for (const files::Value& layer : facts.find("layers")->children) layers.push_back(layer.text);
    for (const files::Value& text : facts.find("texts")->children) texts.push_back(text.find("text")->text);
    for (const char* layer : {"0", "tags", "paved-area", "pool", "wall", "level", "site-mark-gate"})
      EXPECT_TRUE(std::ranges::count(layers, layer)) << layer;
    for (const char* tag : {"A1", "W 1", "P1", "L1", "G", "G#2"}) EXPECT_TRUE(std::ranges::count(texts, tag)) << tag;
  }
}

files::DrawnThing first_of(const plan::Job& of, const plan::Element& element) {
  plan::Job alone;
  alone.catalogue = of.catalogue;
  return files::drawn_things(plan::with(alone, element)).things.at(0);
}

// Corners and heights are the same to the step of the grid (3 micrometres); bulges to the last bit.
void expect_same_drawing(const plan::Job& before, const plan::Job& after) {
  for (const plan::ElementPtr& element : before.elements) {
    const plan::Element* found = after.find(element->id);
    ASSERT_NE(found, nullptr) << element->id;
    const files::DrawnThing was = first_of(before, *element);
    const files::DrawnThing is = first_of(before, *found);
    EXPECT_EQ(was.end, is.end) << element->id;
    EXPECT_EQ(was.height, is.height) << element->id;
    ASSERT_EQ(was.rings.size(), is.rings.size()) << element->id;
    for (std::size_t ring = 0; ring < was.rings.size(); ++ring) {
      ASSERT_EQ(was.rings[ring].size(), is.rings[ring].size()) << element->id;
      for (std::size_t i = 0; i < was.rings[ring].size(); ++i) {
        EXPECT_EQ(was.rings[ring][i].from, is.rings[ring][i].from) << element->id;
        EXPECT_NEAR(was.rings[ring][i].bulge, is.rings[ring][i].bulge, 1e-15) << element->id;
      }
    }
  }
}

TEST(DrawingDxf, OurOwnImportGetsTheSameDrawingBack) {
  for (const units::System system : {units::System::metric, units::System::us}) {
    const plan::Job job = yard(system);
    auto layers = all_kinds;
    layers["site-mark-gate"] = "site-mark:gate";
    const auto back = files::import_dxf(files::drawing_dxf(job, files::drawn_things(job)), "yard.dxf", "", layers);
    ASSERT_TRUE(back) << problem::sentence(back.error());
    EXPECT_EQ(back->job.elements.size(), 6u) << "the gate's two points are two elements";
    EXPECT_EQ(back->job.heading.units, system);
    expect_same_drawing(plan::without(job, "G"), back->job);
  }
}

class DrawnDemo : public testing::TestWithParam<const char*> {};

TEST_P(DrawnDemo, ComesBackFromDxfTheSame) {
  const plan::Job job = demo::job(GetParam());
  const files::DrawnThings drawn = files::drawn_things(job);
  EXPECT_TRUE(drawn.left_out.empty());
  const auto back = files::import_dxf(files::drawing_dxf(job, drawn), "demo.dxf", "", all_kinds);
  ASSERT_TRUE(back) << problem::sentence(back.error());
  plan::Job mapped = job;
  std::erase_if(mapped.elements, [](const plan::ElementPtr& element) {
    const std::string kind = plan::kind_name(element->kind);
    const auto* level = std::get_if<plan::Level>(&element->kind);
    return !all_kinds.contains(kind) || (level && !level->height);
  });
  EXPECT_GT(mapped.elements.size(), 3u);
  expect_same_drawing(mapped, back->job);
}

TEST_P(DrawnDemo, AnotherReaderFindsNothingWrong) {
  const plan::Job job = demo::job(GetParam());
  const files::Value facts = read_by_another(files::drawing_dxf(job, files::drawn_things(job)));
  ASSERT_NE(facts.find("errors"), nullptr);
  EXPECT_EQ(number(facts, "errors") + number(facts, "mended"), 0);
}

TEST_P(DrawnDemo, ComesBackFromGeoJsonWithTheSameAreas) {
  const plan::Job job = demo::job(GetParam());
  const auto back =
      files::import_geojson(files::write_geojson(job, files::drawn_things(job)), "demo.geojson", "", all_kinds);
  ASSERT_TRUE(back) << problem::sentence(back.error());
  std::vector<problem::Problem> said;
  std::size_t compared = 0;
  for (const plan::ElementPtr& element : back->job.elements) {
    const plan::Element* was = job.find(element->id);
    ASSERT_NE(was, nullptr) << element->id;
    EXPECT_EQ(was->name, element->name);
    const plan::Ground is = plan::footprint(back->job, element, said);
    const plan::Ground before = plan::footprint(job, std::make_shared<plan::Element>(*was), said);
    if (before.drawn.empty()) continue;
    ++compared;
    // A chord within 0.5 mm of its arc takes at most that off along the edge.
    EXPECT_NEAR(is.drawn.area().si(), before.drawn.area().si(), 0.0005 * before.drawn.perimeter().si()) << element->id;
  }
  EXPECT_GT(compared, 1u);
}

INSTANTIATE_TEST_SUITE_P(Jobs, DrawnDemo, testing::Values("pool-terrace-a", "pool-terrace-b", "bakery-court"));

TEST(GeoJsonWrite, RingsTurnAsTheStandardHasThem) {
  const plan::Job job = yard(units::System::metric);
  const auto read = files::parse_json(files::write_geojson(job, files::drawn_things(job)), "yard");
  ASSERT_TRUE(read);
  EXPECT_EQ(read->find("units")->text, "m");
  const files::Value& rings = *read->find("features")->children[0].find("geometry")->find("coordinates");
  const auto twice_area = [](const files::Value& ring) {
    double sum = 0;
    for (std::size_t i = 0; i + 1 < ring.children.size(); ++i) {
      const auto at = [&](std::size_t n, std::size_t of) {
        return units::read_number(ring.children[n].children[of].text).value_or(NAN);
      };
      sum += at(i, 0) * at(i + 1, 1) - at(i + 1, 0) * at(i, 1);
    }
    return sum;
  };
  EXPECT_NEAR(twice_area(rings.children[0]), 120, 1e-9);  // 2 x 60 m2, counter-clockwise
  // Chords inside a circle of radius 1 m: at most 2 x 2 pi x 0.5 mm less.
  EXPECT_NEAR(twice_area(rings.children[1]), -2 * std::numbers::pi, 2 * 2 * std::numbers::pi * 0.0005);
  EXPECT_EQ(rings.children[0].children.size(), 5u) << "closed by its first corner";
}

TEST(DrawnThings, TagsStandInsideAndOutOfIslands) {
  const plan::Job job = yard(units::System::metric);
  const files::DrawnThings drawn = files::drawn_things(job);
  // Across the middle of the deck the ground is 0 to 4 and 6 to 10: the tag stands at 2 (the first of the widest).
  const problem::Xy deck = files::place_of_tag(drawn.things[0]);
  EXPECT_NEAR(deck.x, 2, 1e-3);
  EXPECT_NEAR(deck.y, 3, 1e-3);
  // The middle edge of the wall is its arc about (5, 11): half way at 45 degrees.
  const problem::Xy wall = files::place_of_tag(drawn.things[1]);
  EXPECT_NEAR(wall.x, 5 + 3 * std::numbers::sqrt2 / 2, 1e-5);
  EXPECT_NEAR(wall.y, 11 - 3 * std::numbers::sqrt2 / 2, 1e-5);
}

TEST(DrawnThings, ALineWithoutLengthIsLeftOutByName) {
  plan::Job job = yard(units::System::metric);
  job = plan::with(job, {"W2", "", plan::Wall{}});
  EXPECT_EQ(files::drawn_things(job).left_out, (std::vector<std::string>{"W2"}));
}

// Ids and names that mean something to a DXF come back as they were, or by their layer and place where they can't.
TEST(DrawingDxf, OddNamesStayInert) {
  plan::Job job;
  job.catalogue = std::make_shared<const catalogue::Catalogue>();
  const std::vector<std::string> names{"a^b", "50%% c", "x\\U+0041y",          "Ñandú",
                                       "0",   " EOF",   std::string(300, 'q'), "\xF0\x9F\x8C\xB3"};
  for (std::size_t i = 0; i < names.size(); ++i) {
    plan::PavedArea area;
    area.outline = {rectangle(static_cast<double>(i) * 10, 0, static_cast<double>(i) * 10 + 5, 5)};
    job = plan::with(job, {names[i], names[i], area});
  }
  const std::string text = files::drawing_dxf(job, files::drawn_things(job));
  EXPECT_TRUE(std::ranges::all_of(text, [](char c) { return c == '\n' || (c >= ' ' && c <= '~'); }));
  const auto back = files::import_dxf(text, "odd.dxf", "", all_kinds);
  ASSERT_TRUE(back) << problem::sentence(back.error());
  ASSERT_EQ(back->job.elements.size(), names.size());
  for (std::size_t i = 0; i < 5; ++i) EXPECT_EQ(back->job.elements[i]->id, names[i]);
  EXPECT_EQ(back->job.elements[5]->id, "EOF") << "blanks round a value are no part of it";
  EXPECT_EQ(number(read_by_another(text), "errors"), 0);
}

}  // namespace
