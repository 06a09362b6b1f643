#include "takeoff/levels/lows.h"
#include "takeoff/levels/words.h"
#include "takeoff/levels/yard.h"

namespace {

using namespace yard;  // NOLINT

double measure(const Worked& one, const std::string& id, const std::string& name) {
  return site_kit::measure(one.falls.at(id), name);
}
const problem::Problem* found(const Worked& one, const std::string& id, const std::string& code) {
  const auto share = one.falls.find(id);
  return share == one.falls.end() ? nullptr : site_kit::said(share->second, code);
}

// The pool terrace of the demo job: coordinates in inches, levels in feet.
struct Shot {
  const char* id;
  double x, y, height;
};
constexpr Shot deck_levels[] = {
    {"c1", 318, 61.5, 100},   {"c2", 390.5, 97.75, 100},  {"c3", 408.5, 152, 100},  {"c4", 390.5, 206.25, 100},
    {"c5", 318, 242.5, 100},  {"c6", 263.75, 224.5, 100}, {"c7", 213, 207.5, 100},  {"c8", 162.25, 224.5, 100},
    {"c9", 129, 235.5, 100},  {"c10", 84.5, 213.25, 100}, {"c11", 73.5, 180, 100},  {"c12", 95.75, 135.5, 100},
    {"c13", 214, 76, 100},    {"b1", 213, 226, 99.970},   {"e1", 0, 0, 99.660},     {"e2", 214, 0, 99.840},
    {"e3", 318, 0, 99.860},   {"e4", 480, 0, 99.620},     {"e5", 480, 152, 99.780}, {"e6", 480, 307, 99.830},
    {"e7", 318, 307, 99.830}, {"e8", 213, 307, 99.830},   {"e9", 129, 307, 99.830}, {"e10", 0, 307, 99.830},
    {"e11", 0, 204, 99.850}};

Worked terrace(double e6 = 99.830) {
  Book book;
  book.sized("coping", "coping", 24, 12, 2, 0);
  std::vector<plan::Element> yard;
  plan::Pool pool;
  pool.outline = site_kit::pool_shape();
  pool.coping = plan::Coping{"coping", site_kit::inches(1.5), {}, plan::Coping::Make::any};
  pool.coping_level = feet(100);
  plan::PavedArea deck;
  const double quarter = std::tan(site_kit::pi / 8);
  deck.outline = site_kit::shape({{0, 60, quarter}, {60, 0}, {480, 0}, {480, 307}, {0, 307}});
  deck.finish = by_levels();
  plan::PavedArea strip;
  strip.outline = site_kit::shape({{0, 312}, {480, 312}, {480, 384}, {72, 384, quarter}});
  strip.finish = plane(0, 26, 99.83, 1.0 / 48, -90);  // a plane through h1 to h4
  plan::Building house;
  house.outline = site_kit::shape({{120, 384}, {600, 384}, {600, 720}, {120, 720}});
  house.sill = feet(100.5);
  plan::DrainRun channel;
  channel.line = site_kit::line({{480, 309.5}}, 0, 309.5);
  channel.what = "channel";
  channel.width = site_kit::inches(5);
  yard.insert(yard.end(), {{"A1", "deck", deck}, {"A2", "strip", strip}, {"P", "pool", pool}});
  for (const double y : {98.0, 182.0})
    yard.push_back(
        {"P" + std::to_string(static_cast<int>(y)), "pillar",
         plan::KeepOut{site_kit::shape({{420, y}, {444, y}, {444, y + 24}, {420, y + 24}}), "pillar", {}, {}}});
  yard.insert(yard.end(), {{"H", "house", house}, {"CH", "channel", channel}});
  for (const Shot& shot : deck_levels)
    yard.push_back({shot.id, "",
                    plan::Level{site_kit::at(shot.x, shot.y), feet(std::string(shot.id) == "e6" ? e6 : shot.height),
                                "finished", "A1"}});
  return worked(yard, book);
}

TEST(Falls, TheDemoDeckFallsAsItsTriangulationSays) {
  // Worked out apart, from the Delaunay triangles of the 25 levels: least 2.0248 %, greatest 3.92423 %, and two level
  // slivers at the waist, all of whose corners are on the coping, 2.19 sq ft together.
  const Worked one = terrace();
  EXPECT_NEAR(measure(one, "A1", "fall_least_pct"), 2.0248, 5e-4);
  EXPECT_NEAR(measure(one, "A1", "fall_greatest_pct"), 3.92423, 5e-4);
  EXPECT_NEAR(measure(one, "A1", "fall_flat_area_m2") / (foot * foot), 2.19, 0.01);
  ASSERT_NE(found(one, "A1", "fall-flat"), nullptr) << one.said();
  // 0.125 ft in 72 in: 2.08333 %.
  EXPECT_NEAR(measure(one, "A2", "fall_least_pct"), 12.5 / 6, 1e-3);
  for (const char* code : {"falls-to-pool", "falls-to-house", "fall-house", "fall-steep", "house-sill", "lip"})
    EXPECT_FALSE(one.codes().contains(code)) << one.said();
}

TEST(Falls, TheDemoDeckWithACornerRaisedFallsTowardsThePool) {
  const Worked one = terrace(100.05);
  const problem::Problem* towards = found(one, "A1", "falls-to-pool");
  ASSERT_NE(towards, nullptr) << one.said();
  EXPECT_EQ(towards->severity, problem::Severity::problem);
  // North-east of the pool.
  ASSERT_TRUE(towards->place.at.has_value());
  EXPECT_GT(towards->place.at->x, 318 * 0.0254);
  EXPECT_GT(towards->place.at->y, 152 * 0.0254);
  bool seen = false;
  for (const auto& patch : takeoff::levels::fall_plan(one.job, one.site, one.terrain))
    seen |= patch.says == "to the pool";
  EXPECT_TRUE(seen);
}

TEST(Falls, SlopesReadAsTheirTableDoes) {
  // Shares of a slope, by arithmetic: 1/8 in per ft is 1/96, 1/4 is 1/48, 1 in 20 is 5 %.
  for (const auto& [share, says] :
       {std::pair{1.0 / 96, "1.04 %"}, {1.0 / 48, "2.08 %"}, {0.05, "5.00 %"}, {1.0 / 12, "8.33 %"}})
    EXPECT_EQ(takeoff::levels::percent(share), says);
  // A plane reads back the fall that it was given, whichever way it goes.
  for (const double fall : {0.01, 1.0 / 48, 0.05, 1.0 / 3}) {
    const Worked one = worked({paved("A", shape(box(0, 0, 20, 12)), plane(0, 0, 100, fall, 30))});
    EXPECT_NEAR(measure(one, "A", "fall_least_pct"), 100 * fall, 1e-9);
    EXPECT_NEAR(measure(one, "A", "fall_greatest_pct"), 100 * fall, 1e-9);
  }
}

plan::Element house(double x, double y, double to_x, double to_y) {
  plan::Building building;
  building.outline = shape(box(x, y, to_x, to_y));
  return {"H", "house", building};
}

TEST(Falls, PavingThatFallsToTheHouseIsFound) {
  // The house stands along y = 12. Falling north is towards it.
  const auto yard = [](double degrees, double gap) {
    return worked({paved("A", shape(box(0, 0, 20, 12 - gap)), plane(0, 0, 100, 0.02, degrees)), house(0, 12, 20, 30)});
  };
  const Worked bad = yard(90, 0);
  ASSERT_NE(found(bad, "A", "falls-to-house"), nullptr) << bad.said();
  EXPECT_NE(found(bad, "A", "falls-to-house")->text.find("2.00 %"), std::string::npos);
  EXPECT_NE(found(bad, "A", "falls-to-house")->text.find("20'"), std::string::npos);
  EXPECT_EQ(yard(-90, 0).codes(), std::set<std::string>{});
  // Over a bed of 4 ft it still runs to the house; over one of 11 ft it does not.
  EXPECT_NE(found(yard(90, 4), "A", "falls-to-house"), nullptr);
  EXPECT_EQ(found(yard(90, 11), "A", "falls-to-house"), nullptr);
  // Along the house is neither towards nor away: less than 2 % away within 10 ft.
  EXPECT_EQ(yard(0, 0).codes(), std::set<std::string>{"fall-house"});
}

TEST(Falls, AChannelBetweenTakesTheWater) {
  plan::DrainRun channel;
  channel.line = line({{0, 11.8}}, 20, 11.8);
  channel.what = "channel";
  channel.width = feet(0.4);
  const Worked one = worked(
      {paved("A", shape(box(0, 0, 20, 12)), plane(0, 0, 100, 0.02, 90)), house(0, 12, 20, 30), {"C", "", channel}});
  EXPECT_EQ(found(one, "A", "falls-to-house"), nullptr) << one.said();
  EXPECT_EQ(found(one, "A", "fall-house"), nullptr) << one.said();
}

// A square dish: four corners at 100, the middle at 99.9.
std::vector<plan::Element> dish() {
  return {paved("A", shape(box(0, 0, 10, 10)), by_levels()), level("a", 0, 0, 100, "finished", "A"),
          level("b", 10, 0, 100, "finished", "A"),           level("c", 10, 10, 100, "finished", "A"),
          level("d", 0, 10, 100, "finished", "A"),           level("m", 4, 6, 99.9, "finished", "A")};
}

TEST(Falls, ADishWithoutAnInletIsALowPoint) {
  std::vector<plan::Element> yard = dish();
  const Worked one = worked(yard);
  const problem::Problem* low = found(one, "A", "low-point");
  ASSERT_NE(low, nullptr) << one.said();
  EXPECT_NEAR(low->place.at->x, 4 * foot, 1e-5);
  EXPECT_NEAR(low->place.at->y, 6 * foot, 1e-5);
  EXPECT_NE(low->text.find("100 sq ft"), std::string::npos) << low->text;  // all of it
  EXPECT_NE(low->text.find("1 3/16\""), std::string::npos) << low->text;   // 0.1 ft = 1.2 in
  yard.push_back({"I", "", plan::KeepOut{shape(box(3.6, 5.6, 4.4, 6.4)), "inlet", {}, {}}});
  EXPECT_EQ(found(worked(yard), "A", "low-point"), nullptr);
  yard.pop_back();
  plan::DrainRun pipe;
  pipe.line = line({{4, 6}}, 4, -20);
  pipe.what = "pipe";
  pipe.parts = {{feet(0), "basin", "inlet", {}, {}}};
  yard.push_back({"D", "", pipe});
  EXPECT_EQ(found(worked(yard), "A", "low-point"), nullptr);
}

plan::Element kerb(double upstand_in, std::optional<plan::Weeps> weeps) {
  plan::EdgeRun run;
  run.line = line({{20, 0}}, 0, 0);
  run.what = "kerb";
  run.item = "kerb";
  run.paving = geometry::Side::right;
  run.upstand = site_kit::inches(upstand_in);
  run.weeps = std::move(weeps);
  return {"K", "kerb", run};
}

TEST(Falls, AProudKerbDamsTheRainUnlessItsWeepsAreOpen) {
  // It falls to the kerb at y = 0 and, along it, to (20, 0); a wing of the house holds it at x = 20.
  const auto yard = [](double upstand, std::optional<plan::Weeps> weeps) {
    Book book;
    book.sized("kerb", "kerb", 24, 4, 8, 0);
    return worked({paved("A", shape(box(0, 0, 20, 10)), plane(0, 0, 100, 0.03, -45)), kerb(upstand, std::move(weeps)),
                   house(20, -2, 30, 12)},
                  book);
  };
  const auto low = [](const Worked& one) { return found(one, "A", "low-point"); };
  ASSERT_NE(low(yard(2, {})), nullptr);
  EXPECT_NE(low(yard(2, plan::Weeps{"w", "cotton sash cord left in", {}})), nullptr);
  EXPECT_EQ(low(yard(2, plan::Weeps{"w", "open head joint", {}})), nullptr);
  EXPECT_EQ(low(yard(0, {})), nullptr);
}

TEST(Falls, WaterOfADishRunsWhereItsSlopesLead) {
  // Two dishes side by side with a ridge along x = 10: each drains its own half, 100 of 200 sq ft.
  std::vector<plan::Element> yard{paved("A", shape(box(0, 0, 20, 10)), by_levels())};
  int number = 0;
  for (const double x : {0.0, 10.0, 20.0})
    for (const double y : {0.0, 10.0})
      yard.push_back(level("e" + std::to_string(++number), x, y, 100, "finished", "A"));
  yard.push_back(level("m", 5, 5.1, 99.9, "finished", "A"));
  yard.push_back(level("n", 15, 4.9, 99.8, "finished", "A"));
  const Worked one = worked(yard);
  const takeoff::levels::Inlets inlets(one.site);
  const auto area = takeoff::levels::area(*one.site.find("A"), one.terrain.finished.at("A"));
  const auto lows = takeoff::levels::lows(area, one.site, one.terrain, inlets);
  ASSERT_EQ(lows.size(), 2U) << one.said();
  for (const auto& low : lows) EXPECT_NEAR(low.drains / (foot * foot), 100, 2);  // 512 places: 1 % of the ground
}

TEST(Falls, AnAccessRouteHasItsOwnLimits) {
  const auto yard = [](double fall) {
    plan::Element element = paved("A", shape(box(0, 0, 20, 5)), plane(0, 0, 100, fall, 0));
    std::get<plan::PavedArea>(element.kind).access = true;
    return worked(std::vector<plan::Element>{element});
  };
  EXPECT_EQ(yard(1.0 / 48).codes(), std::set<std::string>{});
  EXPECT_EQ(yard(0.0209).codes(), std::set<std::string>{"access-cross"});
  EXPECT_EQ(yard(0.05).codes(), std::set<std::string>{"access-cross"});
  EXPECT_EQ(yard(0.0501).codes(), (std::set<std::string>{"access-cross", "access-run"}));
}

TEST(Falls, AStepBetweenTwoAreasIsTold) {
  // They meet at x = 10; 3/16 in is within 1/4, but not within the 1/8 of an access route.
  const auto yard = [](double step_in, bool access) {
    plan::Element other = paved("B", shape(box(10, 0, 20, 10)), plane(10, 0, 100 - step_in / 12, 0.02, -90));
    std::get<plan::PavedArea>(other.kind).access = access;
    return worked({paved("A", shape(box(0, 0, 10, 10)), plane(0, 0, 100, 0.02, -90)), other});
  };
  EXPECT_EQ(yard(0.1875, false).codes(), std::set<std::string>{});
  EXPECT_EQ(yard(0.1875, true).codes(), std::set<std::string>{"lip"});
  EXPECT_EQ(yard(0.26, false).codes(), std::set<std::string>{"lip"});
  EXPECT_NEAR(measure(yard(0.1875, false), "A", "lip_greatest_m"), 0.1875 * 0.0254, 1e-5);
}

TEST(Falls, PavingMustStayUnderTheSillTheWeepsAndTheSiding) {
  // Paving at 100.00 along the wall. Sill 6 in, weep of masonry 4 in, other weep 6 in, siding 2 in (IRC R404.1.6 as
  // quoted; siding from memory).
  const auto yard = [](double sill, double weep, double siding, const std::string& face) {
    plan::Element one = house(0, 12, 20, 30);
    auto& building = std::get<plan::Building>(one.kind);
    building.sill = feet(100 + sill / 12);
    building.weep = feet(100 + weep / 12);
    building.siding = feet(100 + siding / 12);
    building.face = face;
    return worked({paved("A", shape(box(0, 0, 20, 12)), plane(0, 12, 100, 0.02, -90)), one}).codes();
  };
  EXPECT_EQ(yard(6, 4, 2, "masonry"), std::set<std::string>{});
  EXPECT_EQ(yard(5.9, 4, 2, "masonry"), std::set<std::string>{"house-sill"});
  EXPECT_EQ(yard(6, 3.9, 2, "masonry"), std::set<std::string>{"house-weep"});
  EXPECT_EQ(yard(6, 5.9, 2, "siding"), std::set<std::string>{"house-weep"});
  EXPECT_EQ(yard(6, 6, 1.9, "siding"), std::set<std::string>{"house-siding"});
}

TEST(Falls, ReadingsRoundACopingAndGroundOverIt) {
  const auto yard = [](double reading, double ground) {
    plan::Pool pool;
    pool.outline = shape({{12, 15, 1}, {28, 15, 1}});
    pool.coping_level = feet(100);
    return worked({{"P", "pool", pool},
                   level("k1", 12, 15, 100, "coping"),
                   level("k2", 28, 15, reading, "coping"),
                   level("g1", 0, 0, ground, "existing"),
                   level("g2", 40, 0, ground, "existing"),
                   level("g3", 0, 30, ground, "existing"),
                   level("g4", 40, 30, ground, "existing")})
        .codes();
  };
  EXPECT_EQ(yard(100.02, 99.9), std::set<std::string>{});  // 0.24 in
  EXPECT_EQ(yard(100.022, 99.9), std::set<std::string>{"coping-range"});
  EXPECT_EQ(yard(100, 100.2), std::set<std::string>{"coping-low"});
}

TEST(Falls, LongUnitsRockOnAConeAndSlabsLieOverNoHip) {
  const auto yard = [](double unit_in, double radius_in) {
    Book book;
    book.sized("slab", "unit", unit_in, unit_in, 2, 0);
    plan::Pool pool;
    pool.outline = site_kit::shape({{200 - radius_in, 200, 1}, {200 + radius_in, 200, 1}});
    pool.coping_level = feet(100);
    plan::PavedArea area;
    area.outline = site_kit::shape({{0, 0}, {400, 0}, {400, 400}, {0, 400}});
    area.finish = edges({{"P", {}, {}, {}, {}, 0.02}});
    plan::Laying laying;
    laying.units["S"] = "slab";
    area.laying = laying;
    return worked(std::vector<plan::Element>{{"A", "", area}, {"P", "pool", pool}}, book);
  };
  // 2 % x 24^2 / (8 x 60) = 0.024 in, under 1/16; on 20 in it is 0.072 in.
  EXPECT_EQ(found(yard(24, 60), "A", "warp"), nullptr);
  EXPECT_NE(found(yard(24, 20), "A", "warp"), nullptr);
  EXPECT_EQ(found(yard(24, 60), "A", "slab-over-hip"), nullptr);  // a cone is no hip
}

}  // namespace
