#include "site_kit.h"
#include "takeoff/edges/weeps.h"

namespace {

using namespace site_kit;

Book kerb_book() {
  Book book;
  book.sized("kerb-24", "kerb-unit", 23.875, 4, 8, 0.125);
  book.sized("kerb-12", "kerb-unit", 11.875, 4, 8, 0.125);
  book.sized("kerb-6x6", "kerb-unit", 11.875, 6, 6, 0.125);
  book.add("conc-ready", "concrete");
  catalogue::Item& cord = book.add("weep-cord", "weep");
  cord.details = {{"kind", "cord-left"}, {"spacing_mm", "1219.2"}, {"passes_rain", "no"}};
  book.add("weep-tube", "weep").details = {
      {"kind", "tube"}, {"spacing_mm", "406.4"}, {"opening_mm2", "71.2557"}, {"passes_rain", "yes"}};
  book.rate("kerb-set", "footing and haunch included; curves x 1.4");
  book.rate("weep-set");
  return book;
}

plan::Element kerb(const std::string& id, const plan::DrawnLine& drawn, geometry::Side paving) {
  plan::EdgeRun what;
  what.line = drawn;
  what.what = "kerb";
  what.item = "kerb-24";
  what.item_on_curves = "kerb-12";
  what.paving = paving;
  what.footing = plan::Footing{"conc-ready", inches(8), inches(4), inches(0)};
  what.weeps = plan::Weeps{"weep-cord", "cord-left", inches(48)};
  return {id, id, what};
}

takeoff::Share kerb_of(const Book& book, const plan::Element& element) {
  const plan::Job made = job(book, {element});
  return takeoff::edges::kerb(made, {}, ground(element));
}

// K1 to K4 of the demo, version B.
std::vector<plan::Element> demo_kerbs() {
  using geometry::Side;
  return {kerb("K1", line({{480, 0}, {60, 0, bulge(-pi / 2)}, {0, 60}}, 0, 174), Side::right),
          kerb("K2", line({{0, 234}}, 0, 264), Side::right), kerb("K3", line({{72, 384}}, 120, 384), Side::right),
          kerb("K4", line({{480, 324}}, 480, 384), Side::left)};
}

TEST(Kerb, DemoKerbs) {
  double centre = 0, k24 = 0, k12 = 0, weeps = 0, footing = 0, cord = 0;
  for (const plan::Element& element : demo_kerbs()) {
    const takeoff::Share share = kerb_of(kerb_book(), element);
    centre += measure(share, "kerb_centre_length_m");
    k24 += measure(share, "kerb_units:kerb-24");
    k12 += share.measures.get("kerb_units:kerb-12").value_or(0);
    weeps += measure(share, "weeps");
    footing += measure(share, "footing_m3");
    cord += quantity(share, "weep-cord");
    EXPECT_TRUE(fact(share, "kerb"));
  }
  // Demo answers: "4 in kerb outside the edge: the arc at 62 in radius"; 18 + 5 + 2 + 2 + 3 straight units, each run
  // up; 9 on the arc (97.39 / 12 = 8.12); 8 x 4 in of footing on the centre line.
  EXPECT_NEAR(centre, 19.5424901, 20e-6);
  EXPECT_EQ(k24, 30);
  EXPECT_EQ(k12, 9);
  EXPECT_NEAR(footing, 0.403457052, 1e-6);
  // One a started 4 ft of each run there, one a started 4 ft between corners here: the arc is tangent, so K1 has no
  // corner and both say 14 + 1 + 1 + 2.
  EXPECT_EQ(weeps, 18);
  // Kerb 4 in + 6 in tail + 1 in = 11 in each (the demo's list allows 12 in).
  EXPECT_NEAR(cord, 18 * 11 * in, 1e-9);
}

TEST(Kerb, CornersMakeStretchesOfTheirOwn) {
  plan::Element element = kerb("K", line({{0, 0}, {60, 0}}, 60, 60), geometry::Side::left);
  const takeoff::Share share = kerb_of(kerb_book(), element);
  // Outside the corner each leg is 62 in on its centre line: two stretches of 62 in, ceil(62/48) = 2 weeps each. Taken
  // as one line of 124 in it would be ceil(2.58) = 3.
  EXPECT_EQ(measure(share, "weeps"), 4);
  EXPECT_NEAR(measure(share, "kerb_centre_length_m"), 124 * in, 1e-9);
}

TEST(Kerb, FootingOnACircleByPappus) {
  // 6 x 6 in of kerb on a 10 ft radius centre line: 0.25 x 2 pi 10 = 15.708 cu ft = 0.5818 cu yd. The unit is 6 in
  // wide, so the drawn line lies 3 in inside.
  plan::Element element = kerb("O", line({{-117, 0, 1}, {117, 0, 1}}, -117, 0), geometry::Side::left);
  auto& what = std::get<plan::EdgeRun>(element.kind);
  what.item = "kerb-6x6";
  what.item_on_curves = {};
  what.footing = plan::Footing{"conc-ready", inches(6), inches(6), {}};
  const takeoff::Share share = kerb_of(kerb_book(), element);
  EXPECT_NEAR(measure(share, "footing_m3") / units::cubic_metres_per_cubic_yard, 0.5818, 5e-5);
  EXPECT_NEAR(measure(share, "footing_m3"), 0.25 * 2 * pi * 10 * units::cubic_metres_per_cubic_foot, 1e-6);
}

TEST(Kerb, HaunchGoesOnItsOwnLine) {
  plan::Element element = kerb("O", line({{-118, 0, 1}, {118, 0, 1}}, -118, 0), geometry::Side::left);
  auto& what = std::get<plan::EdgeRun>(element.kind);
  what.item_on_curves = "kerb-12";
  what.footing = plan::Footing{"conc-ready", inches(8), inches(4), inches(4)};
  const takeoff::Share share = kerb_of(kerb_book(), element);
  // Block 8 x 4 at radius 120, triangle 2 x 4 / 2 with its centre 4 + 2/3 in outside the drawn line of radius 118.
  const double expected = 2 * pi * (32 * 120 + 4 * (118 + 4 + 2.0 / 3));
  EXPECT_NEAR(measure(share, "footing_m3"), expected * in * in * in, 1e-6);
}

TEST(Kerb, HoursOnCurvesTakeTheRatesOwnFactor) {
  const takeoff::Share share = kerb_of(kerb_book(), demo_kerbs()[0]);
  ASSERT_EQ(share.tasks.size(), 3u);  // straight, curved, weeps
  EXPECT_EQ(share.tasks[0].factor, 1);
  EXPECT_EQ(share.tasks[1].factor, 1.4);
  EXPECT_NEAR(share.tasks[1].working.amount().value, 31 * pi * in, 1e-5);
  // The demo's person-hours (14.105 h = 64.116 ft x 0.22) leave the rate's "curves x 1.4" out.
}

TEST(Weeps, KindsAndRain) {
  plan::Element element = kerb("K2", line({{0, 234}}, 0, 264), geometry::Side::right);
  const takeoff::Share damp = kerb_of(kerb_book(), element);
  EXPECT_EQ(measure(damp, "weep_opening_m2"), 0);  // a cord left in passes damp, not rain
  EXPECT_TRUE(said(damp, "weep-damp-only"));
  EXPECT_FALSE(said(damp, "weep-on-footing"));  // one sentence a kerb: the footing stands in it
  EXPECT_NE(said(damp, "weep-damp-only")->text.find("footing"), std::string::npos);
  auto& what = std::get<plan::EdgeRun>(element.kind);
  what.weeps = plan::Weeps{"weep-tube", {}, {}};
  const takeoff::Share tubes = kerb_of(kerb_book(), element);
  // 30 in at 16 in (masonry journal, installing weep holes): 2 tubes of 3/8 in, 71.2557 mm2 each.
  EXPECT_EQ(measure(tubes, "weeps"), 2);
  EXPECT_NEAR(measure(tubes, "weep_opening_m2"), 2 * 71.2557e-6, 1e-12);
  EXPECT_EQ(quantity(tubes, "weep-tube"), 2);
  EXPECT_TRUE(said(tubes, "weep-on-footing"));
  what.weeps = plan::Weeps{"weep-tube", "straw", {}};
  EXPECT_TRUE(said(kerb_of(kerb_book(), element), "weep-kind"));
}

TEST(Weeps, APulledCordPassesRainWhereItsItemSaysSo) {
  Book book = kerb_book();
  catalogue::Item& pulled = book.add("weep-pulled", "weep");
  pulled.details = {{"kind", "cord-pulled"}, {"passes_rain", "no"}};
  const plan::Job made = job(book, {});
  using takeoff::edges::rain_passes;
  EXPECT_FALSE(rain_passes(made, {"weep-pulled", "cord-pulled", {}}));
  pulled.details["passes_rain"] = "yes";
  EXPECT_TRUE(rain_passes(made, {"weep-pulled", "cord-pulled", {}}));
  EXPECT_FALSE(rain_passes(made, {"weep-cord", "cord-left", {}}));
  EXPECT_TRUE(rain_passes(made, {"weep-tube", "", {}}));
  EXPECT_FALSE(rain_passes(made, {"", "straw", {}}));
}

// 29.42 kg is 65 lb, over 51 lb for one person (NIOSH lifting equation, load constant 23 kg); 14.63 kg is not.
TEST(Kerb, HeavyUnitsAreFlagged) {
  Book book = kerb_book();
  book.sized("kerb-24", "kerb-unit", 23.875, 4, 8, 0.125).mass_kg = 29.42;
  book.sized("kerb-12", "kerb-unit", 11.875, 4, 8, 0.125).mass_kg = 14.63;
  const takeoff::Share share = kerb_of(book, demo_kerbs()[0]);
  EXPECT_EQ(std::ranges::count(share.problems, std::string("heavy-unit"), &problem::Problem::code), 1);
  ASSERT_TRUE(said(share, "heavy-unit"));
  EXPECT_EQ(said(share, "heavy-unit")->severity, problem::Severity::flag);
  EXPECT_NE(said(share, "heavy-unit")->text.find("23 pieces of kerb-24 weigh 65 lb each, over the 51 lb"),
            std::string::npos);
  EXPECT_TRUE(fact(share, "heavy-unit"));
}

TEST(Weeps, PlacesMoveToTheNearestHeadJoint) {
  // 10 ft at 4 ft: 3 weeps at 20, 60, 100 in; joints each 24 in: 24, 48 or 72 (60 lies between, the first is
  // taken), 96.
  const auto places = takeoff::edges::weep_places(120, 48, {24, 48, 72, 96});
  ASSERT_EQ(places.at.size(), 3u);
  EXPECT_EQ(places.at[0], 24);
  EXPECT_EQ(places.at[1], 48);
  EXPECT_EQ(places.at[2], 96);
  EXPECT_EQ(places.shared, 0);
  // 16 in weeps in 24 in units: 8 weeps, 4 joints.
  EXPECT_EQ(takeoff::edges::weep_places(120, 16, {24, 48, 72, 96}).shared, 4);
  // One at least, and floating dust over a whole number is no weep more.
  EXPECT_EQ(takeoff::edges::weep_places(10, 48, {}).at.size(), 1u);
  EXPECT_EQ(takeoff::edges::weep_places(48 * (1 + 1e-13), 48, {}).at.size(), 1u);
}

}  // namespace
