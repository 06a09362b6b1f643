#include <cmath>

#include "site_kit.h"

namespace {

using namespace site_kit;

// From the demo job's answers: "sum of r x angle: 80 x 216.870 deg + 95 x 73.740 + 45 x 180 + 360 x 36.870".
constexpr double water_edge = 20.2718614;

Book pool_book() {
  Book book;
  book.sized("cop-bull-6", "coping", 5.875, 12, 2.375, 0.125).breakage = 0.04;
  book.add("agg-no57", "aggregate").details = {{"compacted_density_kg_m3", "1650"}, {"porosity", "0.4"}};
  book.add("conc-ready", "concrete");
  book.add("rebar-4", "bar").length = Length::feet(20);
  book.add("bond-allow", "allowance").unit = "job";
  for (const char* id : {"coping-straight", "coping-curve", "collar", "pool-stone"}) book.rate(id);
  book.limit("bond-wire", 18, 24, 20, "in");
  return book;
}

plan::Pool demo_pool() {
  plan::Pool what;
  what.coping = plan::Coping{"cop-bull-6", inches(1.5), {}, plan::Coping::Make::any};
  what.shell = inches(0.5);
  what.surround = plan::Surround{"agg-no57", inches(12), inches(54)};
  what.collar = plan::Collar{"conc-ready", "rebar-4", inches(12), inches(6), {inches(3), inches(9)}};
  what.bonding = plan::Bonding{"bond-allow", inches(20), inches(6), 4};
  return what;
}

takeoff::Share coping_of(const Book& book, const plan::Element& pool_element) {
  const plan::Job made = job(book, {pool_element});
  return takeoff::edges::coping(made, {}, ground(pool_element));
}

plan::Element rectangle(double length, double width, const plan::Pool& what) {
  plan::Pool pool_of = what;
  pool_of.outline = shape({{0, 0}, {length, 0}, {length, width}, {0, width}});
  return {"R", "rectangle", pool_of};
}

TEST(Coping, MeasuresOfTheFreeformPoolAreThoseOfTangentArcs) {
  const takeoff::Share share = coping_of(pool_book(), pool(demo_pool()));
  // Steiner: an offset by d of tangent arcs has P + 2 pi d. Demo answers: nose d = -1 1/2 in, back d = 10 1/2 in.
  EXPECT_NEAR(measure(share, "coping_nose_m"), 20.0324721, 20.03e-6);
  EXPECT_NEAR(measure(share, "coping_nose_m"), water_edge - 2 * pi * 1.5 * in, 20.03e-6);
  EXPECT_NEAR(measure(share, "coping_back_m"), 21.9475869, 21.95e-6);
  EXPECT_NEAR(measure(share, "coping_length_m"), 21.9475869, 21.95e-6);
  EXPECT_NEAR(measure(share, "coping_area_m2"), 6.39776099, 6.4e-6);
}

TEST(Coping, ShellStoneCollarAndConductor) {
  const takeoff::Share share = coping_of(pool_book(), pool(demo_pool()));
  // Ring d = 12.5 less d = 0.5 in, x 54 in; collar d = 12 less 0, x 6 in; rings d = 3 and 9 in; conductor d = 20 in.
  EXPECT_NEAR(measure(share, "surround_ring_m2"), 6.49504883, 6.5e-6);
  EXPECT_NEAR(measure(share, "surround_stone_m3"), 8.90860897, 8.9e-6);
  EXPECT_NEAR(quantity(share, "agg-no57"), 8.90860897 * 1650, 0.015);  // placed density 1650 kg/m3
  EXPECT_NEAR(measure(share, "collar_concrete_m3"), 0.986138775, 1e-6);
  EXPECT_NEAR(measure(share, "collar_bar_m"), 42.4588377, 42e-6);
  // Each ring by 20 ft less a 20 in lap = 220 in: 816.96 / 220 = 3.71 -> 4 and 854.65 / 220 = 3.88 -> 4.
  EXPECT_EQ(quantity(share, "rebar-4"), 8);
  ASSERT_TRUE(line_of(share, "rebar-4"));
  EXPECT_EQ(line_of(share, "rebar-4")->allowance, 0.0);
  EXPECT_NEAR(measure(share, "bonding_ring_m"), 23.4637196, 23e-6);
  // 4 ties, each 20 in out and 6 in deep: 4 x 26 in = 104 in.
  EXPECT_NEAR(measure(share, "bonding_length_m"), 23.4637196 + 104 * in, 23e-6);
  EXPECT_EQ(quantity(share, "bond-allow"), 1);
  EXPECT_TRUE(line_of(share, "bond-allow")->approximate);
  ASSERT_TRUE(said(share, "bonding"));
  EXPECT_EQ(said(share, "bonding")->severity, problem::Severity::flag);
  EXPECT_FALSE(said(share, "bond-wire"));
  EXPECT_TRUE(fact(share, "pool") && fact(share, "coping") && fact(share, "bonding") && fact(share, "concrete"));
}

TEST(Coping, EachArcIsCountedByItself) {
  const takeoff::Share share = coping_of(pool_book(), pool(demo_pool()));
  // One count per run, far line over the 6 in module, rounded up in each: 90.5 x 3.78509 = 342.55 -> 58; the waist,
  // whose far line is the nose, 96.5 x 1.28700 = 124.20 -> 21; 55.5 x pi = 174.36 -> 30; 370.5 x 0.643501 = 238.42
  // -> 40. (A tapered piece's face is 2 (p + w) tan a - j / cos a, so the tangents ask for a little more than the arc:
  // 0.12 in of the first run's 58 x 6 - 342.55 = 5.45 in to spare.) The arc of 360 in does not lie uncut either, though
  // its joints open by only 12 x 6 / 358.5 = 0.20 in: 38 pieces leave 2 x 358.5 sin a - 5.875 cos a = 0.196 in at the
  // nose and 0.399 at the back (over 3/8), 39 leave 0.040 (under 1/16).
  const double units = measure(share, "coping_units");
  EXPECT_EQ(units, 58 + 21 + 30 + 40);
  // Counted by total length and rounded once, as the demo's answers do, it is 147: the published figure stands as a
  // cross-check.
  EXPECT_EQ(measure(share, "coping_units_by_length"), 147);
  EXPECT_EQ(measure(share, "coping_cut"), units);
  EXPECT_EQ(quantity(share, "cop-bull-6"), units);
  EXPECT_TRUE(said(share, "coping-ways"));
  EXPECT_TRUE(said(share, "coping-preliminary"));
  // Hours go by the back line: all of it is curved.
  EXPECT_NEAR(task(share, "coping-curve"), 21.9475869, 21.95e-6);
  EXPECT_EQ(task(share, "coping-straight"), 0);
}

TEST(Coping, ThePersonPicksTheWay) {
  plan::Pool what = demo_pool();
  what.coping->make = plan::Coping::Make::tapered;
  takeoff::Share share = coping_of(pool_book(), pool(what));
  EXPECT_EQ(measure(share, "coping_cut"), measure(share, "coping_units"));
  what.coping->make = plan::Coping::Make::uncut;  // none of the four arcs lies uncut
  share = coping_of(pool_book(), pool(what));
  EXPECT_EQ(std::ranges::count(share.problems, std::string("coping-run"), &problem::Problem::code), 4)
      << all_said(share);
}

TEST(Coping, WideCurveLiesUncut) {
  plan::Pool what;
  what.coping = plan::Coping{"cop-bull-6", inches(1.5), {}, plan::Coping::Make::any};
  what.outline = shape({{-360, 0, 1}, {360, 0, 1}});
  const takeoff::Share share = coping_of(pool_book(), {"C", "round", what});
  // Near line 358.5 in, a = 180 / n degrees: 380 pieces leave 2 x 358.5 sin a - 5.875 cos a = 0.053 in at the nose,
  // under 1/16; 379 leave 0.069 there and 0.069 + 24 sin a = 0.267 at the back, under 3/8.
  EXPECT_EQ(measure(share, "coping_units"), 379) << all_said(share);
  EXPECT_EQ(measure(share, "coping_cut"), 0);
}

TEST(Coping, RadiusPiecesWhereTheCatalogueHasThem) {
  Book book = pool_book();
  catalogue::Item& out = book.sized("cop-out-5", "coping", 14.125, 12, 2.375, 0.125);
  out.details = {{"nose_radius_mm", "1524"}, {"back_radius_mm", "1828.8"}, {"turn_deg", "11.25"}};
  plan::Pool what;
  what.coping = plan::Coping{"cop-bull-6", inches(1.5), {}, plan::Coping::Make::radius};
  what.outline = shape({{-61.5, 0, 1}, {61.5, 0, 1}});  // nose at 60 in, as the pieces are
  const takeoff::Share share = coping_of(book, {"C", "round", what});
  // 32 pieces of 11.25 degrees to a full circle; nothing is cut.
  EXPECT_EQ(quantity(share, "cop-out-5"), 32) << all_said(share);
  EXPECT_EQ(measure(share, "coping_cut"), 0);
}

TEST(Coping, RectangleGoesByItsLongerLine) {
  Book book = pool_book();
  book.sized("cop-bull-12", "coping", 11.875, 12, 2.375, 0.125);
  plan::Pool what;
  what.coping = plan::Coping{"cop-bull-12", inches(1.5), {}, plan::Coping::Make::any};
  const takeoff::Share share = coping_of(book, rectangle(32 * 12, 16 * 12, what));
  // 16 x 32 ft, overhang 1 1/2, 12 in deep: front 95.0, water 96.0, back 103.0 ft (derived, trade rule on coping).
  EXPECT_NEAR(measure(share, "coping_nose_m"), 95 * ft, 1e-6);
  EXPECT_NEAR(measure(share, "coping_back_m"), 103 * ft, 1e-6);
  // Back runs between mitres 32 ft + 21 in = 405 in and 213 in, module 12: 34 and 18 to a run, two of each.
  EXPECT_EQ(measure(share, "coping_units"), 2 * (34 + 18));
  EXPECT_NEAR(task(share, "coping-straight"), 103 * ft, 1e-6);
  EXPECT_EQ(share.measures.get("bonding_length_m"), std::nullopt);
}

TEST(Coping, InsideCornerPiecesShortenTheStraights) {
  Book book = pool_book();
  book.sized("cop-bull-12", "coping", 11.875, 12, 2.375, 0.125);
  book.sized("cop-corner-in", "coping", 18, 18, 2.375, 0.125);
  plan::Pool what;
  what.coping = plan::Coping{"cop-bull-12", inches(1.5), {}, plan::Coping::Make::any};
  const takeoff::Share share = coping_of(book, rectangle(32 * 12, 16 * 12, what));
  EXPECT_EQ(quantity(share, "cop-corner-in"), 4);
  // 405 - 36 = 369 in and 213 - 36 = 177 in between the pieces: 31 and 15 (369 / 12 = 30.75, 177 / 12 = 14.75).
  EXPECT_EQ(quantity(share, "cop-bull-12"), 2 * (31 + 15));
  EXPECT_EQ(measure(share, "coping_units"), 96);
}

TEST(Coping, OutsideCornerNeedsItsOwnPiece) {
  // An L of water: five corners where the deck goes round it, one where the deck stands out into it.
  plan::Pool what;
  what.coping = plan::Coping{"cop-bull-12", inches(1.5), {}, plan::Coping::Make::any};
  what.outline = shape({{0, 0}, {360, 0}, {360, 180}, {180, 180}, {180, 360}, {0, 360}});
  Book book = pool_book();
  book.sized("cop-bull-12", "coping", 11.875, 12, 2.375, 0.125);
  takeoff::Share share = coping_of(book, {"L", "l", what});
  ASSERT_TRUE(said(share, "coping-outside-corner")) << all_said(share);
  EXPECT_EQ(said(share, "coping-outside-corner")->severity, problem::Severity::problem);
  book.sized("cop-corner-in", "coping", 18, 18, 2.375, 0.125);
  book.sized("cop-corner-out", "coping", 12, 12, 2.375, 0.125);
  share = coping_of(book, {"L", "l", what});
  EXPECT_FALSE(said(share, "coping-outside-corner"));
  EXPECT_EQ(quantity(share, "cop-corner-in"), 5);
  EXPECT_EQ(quantity(share, "cop-corner-out"), 1);
  // Back lines 381 (two), 201 (two, between inside corners) and 180 beside the outside corner (10.5 longer at the
  // inside end, 10.5 shorter at the other). Inside pieces take 18 off the back, the outside one none: 381 - 36 = 345 ->
  // 29 (28.75), 201 - 36 = 165
  // -> 14 (13.75), 180 - 18 = 162 -> 14 (13.5).
  EXPECT_EQ(quantity(share, "cop-bull-12"), 2 * 29 + 2 * 14 + 2 * 14);
}

TEST(Coping, BearingAndMissingThings) {
  plan::Pool what = demo_pool();
  what.shell = inches(12);  // bears 10 1/2 in: the deck would stand on the wall
  EXPECT_TRUE(said(coping_of(pool_book(), pool(what)), "coping-bearing"));
  what.shell = inches(0.5);
  const takeoff::Share demo = coping_of(pool_book(), pool(what));
  EXPECT_FALSE(said(demo, "coping-bearing"));
  EXPECT_TRUE(said(demo, "coping-on-collar"));  // 12 in of collar behind 10 1/2 in of bearing
  what.as_built = true;
  EXPECT_FALSE(said(coping_of(pool_book(), pool(what)), "coping-preliminary"));
  what.coping.reset();
  const takeoff::Share bare = coping_of(pool_book(), pool(what));
  ASSERT_TRUE(said(bare, "pool-no-coping"));
  EXPECT_EQ(said(bare, "pool-no-coping")->severity, problem::Severity::notice);
  what.coping = plan::Coping{"nothing-such", inches(1.5), {}, plan::Coping::Make::any};
  EXPECT_TRUE(said(coping_of(pool_book(), pool(what)), "item-missing"));
}

TEST(Coping, BedMortarOfABoundCoping) {
  Book book = pool_book();
  book.add("mortar-bag-80", "concrete");
  catalogue::BuildUp bed;
  bed.id = "pool-bed";
  bed.use = "pool";
  bed.layers = {{"mortar", "mortar-bag-80", inches(0.5), {}, {}, {}, {}}};
  book.all->build_ups["pool-bed"] = bed;
  const takeoff::Share share = coping_of(book, pool(demo_pool()));
  // Bearing 10 1/2 x 1/2 in x the middle line (d = 5 1/4 in) and one 1/8 in joint, 12 x 2 3/8 in, a piece.
  const double bed_m3 = 10.5 * in * 0.5 * in * (water_edge + 2 * pi * 5.25 * in);
  const double joints_m3 = measure(share, "coping_units") * 0.125 * 12 * 2.375 * in * in * in;
  EXPECT_NEAR(measure(share, "coping_mortar_m3"), bed_m3 + joints_m3, 1e-7);
}

TEST(Coping, BedMortarWithoutABuildUpIsTheCataloguesOwn) {
  Book book = pool_book();
  const takeoff::Share without = coping_of(book, pool(demo_pool()));
  ASSERT_TRUE(said(without, "coping-mortar"));  // its hours are paid on mortar
  EXPECT_EQ(said(without, "coping-mortar")->severity, problem::Severity::problem);
  book.add("mortar-mix", "concrete");
  const takeoff::Share share = coping_of(book, pool(demo_pool()));
  EXPECT_FALSE(said(share, "coping-mortar"));
  // Bearing 10 1/2 x 1/2 in x the middle line (d = 5 1/4 in) and one 1/8 in joint, 12 x 2 3/8 in, a piece.
  const double bed_m3 = 10.5 * in * 0.5 * in * (water_edge + 2 * pi * 5.25 * in);
  const double joints_m3 = measure(share, "coping_units") * 0.125 * 12 * 2.375 * in * in * in;
  EXPECT_NEAR(quantity(share, "mortar-mix"), bed_m3 + joints_m3, 1e-7);
  EXPECT_EQ(line_of(share, "mortar-mix")->allowance, 0.10);  // the item has no breakage of its own
  book.limit("coping-bed", {}, {}, 1, "in");
  EXPECT_NEAR(quantity(coping_of(book, pool(demo_pool())), "mortar-mix"), 2 * bed_m3 + joints_m3, 1e-7);
}

TEST(Bonding, PublishedTwinOfARectangularPool) {
  plan::Pool what;
  what.bonding = plan::Bonding{"bond-allow", inches(21), inches(6), 4};
  const takeoff::Share share = coping_of(pool_book(), rectangle(32 * 12, 16 * 12, what));
  // 16 x 32 ft, 21 in out, round corners: 96 + 2 pi 21/12 = 106.996 ft (derived, trade rule on bonding).
  EXPECT_NEAR(measure(share, "bonding_ring_m") / ft, 106.996, 5e-4);
  what.bonding->out = inches(30);
  EXPECT_TRUE(said(coping_of(pool_book(), rectangle(384, 192, what)), "bond-wire"));
}

}  // namespace
