#include "takeoff/paving/area.h"

#include <gtest/gtest.h>

#include <cmath>

#include "takeoff/edges/site_kit.h"
#include "takeoff/paving/advice.h"
#include "takeoff/paving/laying.h"

namespace {

using namespace takeoff;
using namespace site_kit;

constexpr double square_inch_m2 = in * in;

Book paving_book() {
  Book book;
  book.sized("unit-4x8-60", "paving-unit", 7.875, 3.875, 2.375, 0.125).mass_kg = 2.73;
  book.sized("unit-6x6-60", "paving-unit", 5.875, 5.875, 2.375, 0.125).mass_kg = 3.09;
  book.sized("unit-6x9-60", "paving-unit", 8.875, 5.875, 2.375, 0.125).mass_kg = 4.67;
  book.sized("unit-9x9-60", "paving-unit", 8.875, 8.875, 2.375, 0.125).mass_kg = 7.05;
  book.sized("brick-4x8", "clay-unit", 8, 4, 2.25, 0);
  book.sized("slab-24x24-50", "slab", 23.875, 23.875, 2, 0.125).mass_kg = 42.9;
  book.sized("cop-bull-6", "coping", 5.875, 12, 2.375, 0.125);
  for (const char* id : {"stack", "running-half", "mixed-three", "herringbone-45"})
    book.all->patterns[id] = laying::pattern(id);
  book.limit("joint-interlocking", 1. / 16, 3. / 16, 1. / 8, "in");
  for (const char* id : {"lay-running", "lay-mixed", "lay-herringbone", "lay-clay", "lay-slab-large", "cut-60",
                         "cut-60-curve", "compact-units"})
    book.rate(id);
  book.rate("border-soldier", "curves x 1.5");
  book.all->build_ups["hybrid-foot"].id = "hybrid-foot";
  const auto junction = [&](const char* id, const char* side, double joint, const char* filler) {
    catalogue::Junction row;
    row.id = id;
    row.side_a = "paving";
    row.side_b = side;
    row.joint = inches(joint);
    row.filler = filler;
    book.all->junctions.push_back(row);
  };
  junction("paving-coping", "coping", 0.5, "");
  junction("paving-building", "building", 0.5, "");
  junction("paving-pillar", "keep-out", 0.125, "area");
  book.all->junctions.back().condition = "pillar or post";
  return book;
}

plan::PavedArea paved(const plan::DrawnShape& outline, const std::string& pattern,
                      std::map<std::string, std::string> units, double x = 0, double y = 0) {
  plan::PavedArea area;
  area.outline = outline;
  area.build_up = "hybrid-foot";
  area.laying = plan::Laying{pattern, {units.begin(), units.end()}, at(x, y), {}, {}};
  return area;
}

plan::BorderCourse soldiers(const std::string& unit) {
  plan::BorderCourse course;
  course.item = unit;
  return course;
}

plan::DrawnShape rectangle(double w, double h) { return shape({{0, 0, 0}, {w, 0, 0}, {w, h, 0}, {0, h, 0}}); }

struct Laid {
  plan::Job job;
  plan::Site site;
  paving::LaidArea area;
  Share share;
};
Laid lay(plan::Job job, const std::string& id = "A1") {
  Laid laid{std::move(job), {}, {}, {}};
  laid.site = plan::site(laid.job);
  laid.area = paving::lay_area(laid.job, laid.site, *laid.site.find(id));
  laid.share = paving::paving(laid.job, laid.area);
  return laid;
}
Laid lay(const Book& book, plan::PavedArea area) { return lay(job(book, {{"A1", "", std::move(area)}})); }

std::map<std::string, std::string> three() {
  return {{"small", "unit-6x6-60"}, {"middle", "unit-6x9-60"}, {"large", "unit-9x9-60"}};
}

// The terrace's deck: square corners but one of 5 ft, the freeform pool with 12 in coping 1 1/2 in over the water,
// two pillars.
std::vector<plan::Element> terrace(plan::PavedArea deck) {
  deck.outline = shape({{0, 60, bulge(pi / 2)}, {60, 0, 0}, {480, 0, 0}, {480, 307, 0}, {0, 307, 0}});
  deck.borders = {soldiers("unit-4x8-60")};
  plan::Pool water;
  water.coping = plan::Coping{"cop-bull-6", inches(1.5), {}, plan::Coping::Make::any};
  const auto pillar = [](double y) {
    return plan::KeepOut{shape({{420, y, 0}, {444, y, 0}, {444, y + 24, 0}, {420, y + 24, 0}}), "pillar", {}, {}};
  };
  return {{"A1", "deck", deck}, pool(water), {"P1", "", pillar(98)}, {"P2", "", pillar(182)}};
}

TEST(Area, TerraceDeckMixed) {
  const Laid deck = lay(job(paving_book(), terrace(paved({}, "mixed-three", three(), 34, 8))));
  EXPECT_EQ(all_said(deck.share).find("problem"), std::string::npos);
  // The demo job's answers: inside the 8 in strip, outside the coping's back line + 1/2 in, outside the pillars;
  // perimeter less 8 in a square corner less pi/2 x 4 for the round one; soldiers 4 in apart along it, 2 % for
  // corners.
  EXPECT_NEAR(measure(deck.share, "field_area_m2"), 56.5469801, 56.5469801e-6);
  EXPECT_NEAR(measure(deck.share, "border_mid_m"), 38.5563007, 38.5563007e-6);
  EXPECT_NEAR(measure(deck.share, "border_units"), 380, 0.02 * 380);
  // Strip: perimeter x 8 less 64 a square corner less pi/4 x 64 for the round one.
  const double perimeter = 420 + 307 + 480 + 247 + 30 * pi;
  EXPECT_NEAR(measure(deck.share, "border_area_m2") / square_inch_m2, perimeter * 8 - 3 * 64 - pi / 4 * 64, 0.05);
  // Counted by the demo's own script; 2 either way where arcs are flattened to 0.5 mm.
  EXPECT_NEAR(measure(deck.share, "units_whole:unit-6x6-60"), 378, 2);
  EXPECT_NEAR(measure(deck.share, "units_cut:unit-6x6-60"), 58, 2);
  EXPECT_NEAR(measure(deck.share, "units_whole:unit-6x9-60"), 489, 2);
  EXPECT_NEAR(measure(deck.share, "units_cut:unit-6x9-60"), 101, 2);
  EXPECT_NEAR(measure(deck.share, "units_whole:unit-9x9-60"), 481, 2);
  EXPECT_NEAR(measure(deck.share, "units_cut:unit-9x9-60"), 126, 2);
  EXPECT_NEAR(measure(deck.share, "joint_share_percent"), 3.21945129, 1e-3 * 3.22);
  // Hours are driven by what is laid: the field by its own rate, the border by its middle line, the curve of the
  // corner apart.
  EXPECT_NEAR(task(deck.share, "lay-mixed"), 56.5469801, 1e-4);
  EXPECT_NEAR(task(deck.share, "border-soldier"), 38.5563007, 1e-4);
  EXPECT_NEAR(deck.area.borders[0].curved_length / in, 56 * pi / 2, 1e-3);
  EXPECT_GT(task(deck.share, "cut-60-curve"), 10);
  EXPECT_GT(task(deck.share, "cut-60"), 10);
  EXPECT_TRUE(fact(deck.share, "cuts"));
  EXPECT_NE(said(deck.share, "slivers"), nullptr);
}

TEST(Area, TerraceDeckHerringbone) {
  const Laid deck = lay(job(paving_book(), terrace(paved({}, "herringbone-45", {{"unit", "unit-4x8-60"}}, 245.25, 8))));
  EXPECT_NEAR(measure(deck.share, "units_whole:unit-4x8-60"), 2435, 2);
  EXPECT_NEAR(measure(deck.share, "units_cut:unit-4x8-60"), 565, 2);
  // Field and border are one line of the same unit.
  ASSERT_EQ(deck.share.lines.size(), 1U);
  const double bought = measure(deck.share, "bought_area");
  EXPECT_EQ(quantity(deck.share, "unit-4x8-60"),
            measure(deck.share, "units_whole") + bought + measure(deck.share, "border_units"));
  EXPECT_LT(bought, measure(deck.share, "bought_none"));
  EXPECT_GE(bought, measure(deck.share, "bought_none") / 2);
  EXPECT_EQ(measure(deck.share, "units_from_offcuts"), measure(deck.share, "units_cut") - bought);
}

TEST(Area, MovedByWholeStepsItIsTheSameToTheLastBit) {
  const auto measures = [](std::int64_t east, std::int64_t north) {
    auto elements = terrace(paved({}, "herringbone-45", {{"unit", "unit-4x8-60"}}, 245.25, 8));
    const auto moved = [&](geometry::Point p) {
      return geometry::Point{p.x + Length::of_steps(east), p.y + Length::of_steps(north)};
    };
    const auto move = [&](plan::DrawnShape& drawn) {
      for (plan::DrawnRing& ring : drawn)
        for (geometry::Edge& edge : ring.edges) edge.from = moved(edge.from);
    };
    for (plan::Element& element : elements) {
      if (auto* area = std::get_if<plan::PavedArea>(&element.kind)) {
        move(area->outline);
        area->laying->start = moved(area->laying->start);
      }
      if (auto* water = std::get_if<plan::Pool>(&element.kind)) move(water->outline);
      if (auto* pillar = std::get_if<plan::KeepOut>(&element.kind)) move(pillar->outline);
    }
    return lay(job(paving_book(), elements)).share.measures.values;
  };
  const auto here = measures(0, 0);
  EXPECT_EQ(here, measures(1, -7));
  EXPECT_EQ(here, measures(123'456'789, -98'765'431));
}

TEST(Area, TerraceStripWithARoundEnd) {
  plan::PavedArea strip = paved(shape({{0, 312, 0}, {480, 312, 0}, {480, 384, 0}, {72, 384, bulge(pi / 2)}}),
                                "mixed-three", three(), 10, 320);
  strip.borders = {soldiers("unit-4x8-60")};
  const Laid laid = lay(paving_book(), strip);
  EXPECT_NEAR(measure(laid.share, "field_area_m2"), 16.1975982, 16.1975982e-6);
  EXPECT_NEAR(measure(laid.share, "border_mid_m"), 26.4874794, 26.4874794e-6);
  EXPECT_NEAR(measure(laid.share, "border_units"), 261, 0.02 * 261);
}

TEST(Area, TwoCoursesRoundTwentyByTwelve) {
  // Derived: 4 x 8 in on end, tight, turned corners: 184 and 168; field left 208 x 112 in = 161.78 sq ft; 352 x 32 sq
  // in = 78.22 sq ft.
  plan::PavedArea area = paved(rectangle(240, 144), "stack", {{"unit", "brick-4x8"}}, 16, 16);
  area.borders = {soldiers("brick-4x8"), soldiers("brick-4x8")};
  const Laid laid = lay(paving_book(), area);
  ASSERT_EQ(laid.area.borders.size(), 2U);
  EXPECT_EQ(laid.area.borders[0].units, 184);
  EXPECT_EQ(laid.area.borders[1].units, 168);
  EXPECT_EQ(laid.area.borders[0].cut + laid.area.borders[1].cut, 0);
  EXPECT_NEAR(laid.area.field.area().si() / square_inch_m2, 208 * 112, 1e-6);
  EXPECT_NEAR(measure(laid.share, "border_area_m2") / square_inch_m2, 352 * 32, 1e-6);
  EXPECT_NEAR(laid.area.borders[0].joint_area, 0, 1e-9);
  EXPECT_EQ(measure(laid.share, "units_whole"), 26 * 28);  // 208 / 8 x 112 / 4
  EXPECT_EQ(quantity(laid.share, "brick-4x8"), 26 * 28 + 352);
}

// A house along one long side: the 1/2 in joint comes out of the border's strip, 240 x 1/2 sq in; the field and the
// units stay. 8 in soldiers and their 1/8 in joint all round: the field is 240 - 2 w by 144 - 2 w.
TEST(Area, TheJointAtAHouseComesOutOfTheBorder) {
  plan::PavedArea area = paved(rectangle(240, 144), "stack", {{"unit", "unit-4x8-60"}});
  area.borders = {soldiers("unit-4x8-60")};
  const Laid alone = lay(paving_book(), area);
  plan::Building house;
  house.outline = shape({{0, 144}, {240, 144}, {240, 400}, {0, 400}});
  const Laid beside = lay(job(paving_book(), {{"A1", "", area}, {"H", "", house}}));
  EXPECT_FALSE(said(alone.share, "border-joint"));
  EXPECT_EQ(std::ranges::count(beside.share.problems, std::string("border-joint"), &problem::Problem::code), 1);
  EXPECT_NEAR(beside.area.field.area().si(), alone.area.field.area().si(), 1e-12);
  EXPECT_EQ(measure(beside.share, "border_units"), measure(alone.share, "border_units"));
  EXPECT_NEAR((measure(alone.share, "border_area_m2") - measure(beside.share, "border_area_m2")) / square_inch_m2,
              240 * 0.5, 1e-6);
}

TEST(Area, BorderEndsSquareWhereSomethingCutsTheOutline) {
  // 240 x 144 in less a 40 in square in one corner: legs of 200, 144, 240 and 104 in, 8 deep, three corners counted
  // once.
  plan::PavedArea area = paved(rectangle(240, 144), "stack", {{"unit", "brick-4x8"}});
  area.borders = {soldiers("brick-4x8")};
  const Laid laid =
      lay(job(paving_book(), {{"A1", "", area}, {"K", "", plan::KeepOut{rectangle(40, 40), "pillar", {}, {}}}}));
  EXPECT_NEAR(laid.area.borders[0].strip_area / square_inch_m2, (200 + 144 + 240 + 104) * 8 - 3 * 64, 1e-6);
  EXPECT_NEAR(laid.area.borders[0].mid_length / in, 200 + 144 + 240 + 104 - 3 * 8, 1e-6);
  EXPECT_EQ(laid.area.borders[0].units, (200 + 144 + 240 + 104 - 3 * 8) / 4);
}

TEST(Area, BorderRoundAnIsland) {
  plan::PavedArea area = paved(rectangle(240, 144), "stack", {{"unit", "brick-4x8"}});
  area.outline.push_back(shape({{96, 48, 0}, {144, 48, 0}, {144, 96, 0}, {96, 96, 0}})[0]);
  area.borders = {soldiers("brick-4x8")};
  area.borders[0].where = plan::BorderCourse::Where::islands;
  const Laid laid = lay(paving_book(), area);
  EXPECT_NEAR(laid.area.borders[0].strip_area / square_inch_m2, 64 * 64 - 48 * 48, 1e-6);
  EXPECT_EQ(laid.area.borders[0].units, 4 * (48 + 8) / 4);
}

TEST(Area, BrickPatioByAreaAndByTheTradesRule) {
  // Brick association, Seven Easy Steps: 10 x 20 ft of 4 x 8 in tight is 900 units; + 5 % is 945; + 1.5 units a foot
  // of 60 ft of edge, 90, is 1035.
  const Laid plain = lay(paving_book(), paved(rectangle(240, 120), "stack", {{"unit", "brick-4x8"}}));
  EXPECT_NEAR(measure(plain.share, "units_by_area"), 900, 1e-6);
  EXPECT_EQ(measure(plain.share, "units_whole"), 900);
  EXPECT_EQ(measure(plain.share, "units_cut"), 0);
  EXPECT_NEAR(measure(plain.share, "waste_share"), 0, 1e-12);
  EXPECT_FALSE(fact(plain.share, "cuts"));
  // Running bond along the 20 ft: of 30 courses every second one ends in two halves, 15 x 29 + 15 x 30 = 885 whole
  // and 30 halves. With a kerf of 1/8 in two halves don't come out of one unit; with none they do. Either lies under
  // the trade's 945.
  plan::Job running =
      job(paving_book(), {{"A1", "", paved(rectangle(240, 120), "running-half", {{"unit", "brick-4x8"}})}});
  const Laid sawn = lay(running);
  EXPECT_EQ(measure(sawn.share, "units_whole"), 885);
  EXPECT_EQ(measure(sawn.share, "units_cut"), 30);
  EXPECT_EQ(quantity(sawn.share, "brick-4x8"), 915);
  EXPECT_NEAR(measure(sawn.share, "waste_share"), 15. / 900, 1e-9);  // 30 units for 30 halves: 15 too many
  running.choices.kerf = {};
  const Laid split = lay(running);
  EXPECT_EQ(quantity(split.share, "brick-4x8"), 900);
  EXPECT_EQ(measure(split.share, "units_from_offcuts"), 15);
  EXPECT_NEAR(measure(split.share, "waste_share"), 0, 1e-9);
}

TEST(Area, JointToAHouseAndAPersonsWord) {
  plan::PavedArea area = paved(rectangle(240, 144), "stack", {{"unit", "brick-4x8"}});
  const plan::Element house{
      "H", "",
      plan::Building{
          shape({{0, 144, 0}, {240, 144, 0}, {240, 300, 0}, {0, 300, 0}}), "siding", {}, {}, {}, {}, {}, {}}};
  const Laid laid = lay(job(paving_book(), {{"A1", "", area}, house}));
  EXPECT_NEAR(laid.area.field.area().si() / square_inch_m2, 240 * 143.5, 1e-6);
  area.edges = {{2, "none"}};  // the north edge
  const Laid none = lay(job(paving_book(), {{"A1", "", area}, house}));
  EXPECT_NEAR(none.area.field.area().si() / square_inch_m2, 240 * 144, 1e-6);
}

TEST(Area, NothingChosen) {
  plan::PavedArea area;
  area.outline = rectangle(240, 144);
  const Laid laid = lay(paving_book(), area);
  ASSERT_EQ(laid.share.problems.size(), 1U);
  EXPECT_EQ(laid.share.problems[0].code, "nothing-chosen");
  EXPECT_EQ(laid.share.problems[0].severity, problem::Severity::problem);
  EXPECT_EQ(laid.share.problems[0].place.element, "A1");
  EXPECT_NE(laid.share.problems[0].text.find("build-up"), std::string::npos);
  EXPECT_NE(laid.share.problems[0].text.find("pattern"), std::string::npos);
  EXPECT_TRUE(laid.share.lines.empty());
  EXPECT_TRUE(laid.share.tasks.empty());
}

TEST(Area, TapedAreaShowsInTheWorking) {
  plan::PavedArea area = paved(rectangle(240, 120), "stack", {{"unit", "brick-4x8"}});
  area.taped_area_m2 = 200 * square_inch_m2 * 144 * 1.1;  // 10 % more than the 200 sq ft drawn
  const Laid laid = lay(paving_book(), area);
  EXPECT_EQ(quantity(laid.share, "brick-4x8"), 990);
  EXPECT_NE(laid.share.lines[0].working.sentence().find("area taped on site"), std::string::npos);
  EXPECT_NEAR(task(laid.share, "lay-clay"), *area.taped_area_m2, 1e-9);
  EXPECT_EQ(measure(laid.share, "units_whole"), 900);  // what is drawn stays as drawn
}

TEST(Area, HeavySlabsAreCountedAndNamed) {
  // 42.9 kg is over the 51 lb (23.1 kg) of the lifting equation. 20 x 10 ft is 10 x 5 modules of 24 in.
  const Laid laid = lay(paving_book(), paved(rectangle(240, 120), "stack", {{"unit", "slab-24x24-50"}}));
  const problem::Problem* heavy = said(laid.share, "heavy-unit");
  ASSERT_NE(heavy, nullptr);
  EXPECT_EQ(heavy->severity, problem::Severity::flag);
  EXPECT_EQ(heavy->text.substr(0, 10), "50 pieces ");
  EXPECT_TRUE(fact(laid.share, "heavy-unit"));
  EXPECT_NEAR(task(laid.share, "lay-slab-large"), 200 * ft * ft, 1e-9);
}

TEST(Area, VehiclesWantLargeCutsAndHerringbone) {
  // 241 in long: a column of 1 in pieces of 8 in units along one side.
  plan::PavedArea area = paved(rectangle(241, 120), "stack", {{"unit", "brick-4x8"}});
  const Laid foot = lay(paving_book(), area);
  EXPECT_EQ(measure(foot.share, "units_cut"), 30);
  EXPECT_EQ(measure(foot.share, "slivers"), 30);
  EXPECT_EQ(said(foot.share, "cut-under-vehicles"), nullptr);
  const problem::Problem* slivers = said(foot.share, "slivers");
  ASSERT_NE(slivers, nullptr);
  // (8 + 1) / 2 = 4 1/2 in for the last two.
  EXPECT_NE(slivers->mend.find("4 1/2\""), std::string::npos) << slivers->mend;
  area.vehicles = true;
  const Laid cars = lay(paving_book(), area);
  const problem::Problem* small = said(cars.share, "cut-under-vehicles");
  ASSERT_NE(small, nullptr);
  EXPECT_EQ(small->severity, problem::Severity::flag);
  EXPECT_EQ(small->text.substr(0, 3), "30 ");
  EXPECT_NE(said(cars.share, "pattern-under-vehicles"), nullptr);
}

TEST(Area, SawRunsPastANotch) {
  // 14 in blade, 2 3/8 in unit: sqrt(2 x 7 x 2.375 - 2.375^2) = 5.25 in.
  EXPECT_NEAR(paving::saw_overrun(7, 2.375), 5.25, 0.005);
  EXPECT_EQ(paving::saw_overrun(1, 3), 0);
  // A post of 4 in whose corner stands in the middle of units leaves pieces with an inner corner.
  const plan::PavedArea area = paved(rectangle(240, 120), "stack", {{"unit", "slab-24x24-50"}});
  const plan::Element post{
      "K", "", plan::KeepOut{shape({{100, 50, 0}, {104, 50, 0}, {104, 54, 0}, {100, 54, 0}}), "pillar", {}, {}}};
  const Laid laid = lay(job(paving_book(), {{"A1", "", area}, post}));
  EXPECT_EQ(measure(laid.share, "notched_pieces"), 1);
  EXPECT_NE(said(laid.share, "notches"), nullptr);
}

TEST(Area, OffcutsThatTravelBetweenAreasSaveUnits) {
  // Two strips that each end in cuts: 5 in pieces here, 3 in pieces there; kerf 0. 30 of each, so 30 of the 60 units
  // are saved.
  Book book = paving_book();
  plan::PavedArea a = paved(rectangle(245, 120), "stack", {{"unit", "brick-4x8"}});
  plan::PavedArea b = paved(shape({{1000, 0, 0}, {1243, 0, 0}, {1243, 120, 0}, {1000, 120, 0}}), "stack",
                            {{"unit", "brick-4x8"}}, 1000, 0);
  plan::Job both = job(book, {{"A1", "", a}, {"A2", "", b}});
  both.choices.kerf = {};
  both.choices.sliver_width = inches(1);
  both.choices.reuse = plan::Reuse::job;
  const Laid first = lay(both, "A1");
  const Laid second = lay(both, "A2");
  EXPECT_EQ(measure(first.share, "bought_area"), 30);   // two of 5 in don't fit 8 in
  EXPECT_EQ(measure(second.share, "bought_area"), 15);  // two of 3 in do
  const std::vector<const paving::LaidArea*> areas{&first.area, &second.area};
  EXPECT_EQ(paving::bought_for_job(both, areas).at("brick-4x8").units, 30);
  const Share saved = paving::saved_between_areas(both, areas);
  ASSERT_EQ(saved.lines.size(), 1U);
  EXPECT_EQ(saved.lines[0].working.amount().value, 30 - (30 + 15));
  both.choices.reuse = plan::Reuse::area;
  EXPECT_TRUE(paving::saved_between_areas(both, areas).lines.empty());
}

}  // namespace
