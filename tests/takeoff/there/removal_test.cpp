// What is taken out and what stays under new paving: sizes, loads, fees and saw cuts by plain arithmetic.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <numbers>

#include "takeoff/there/kit.h"

namespace {

using namespace kit;  // NOLINT(google-build-using-namespace): the words of these tests
using takeoff::Share;
using takeoff::levels::Terrain;
using yard::at;
using yard::rectangle;

catalogue::Rate rate(const std::string& id, const std::string& si_unit) {
  catalogue::Rate made;
  made.id = id;
  made.si_unit = si_unit;
  made.hours_per_si_unit = 1;
  return made;
}

plan::Job job(std::vector<plan::Element> elements) {
  plan::Job made = yard::job(std::move(elements));
  auto all = std::make_shared<catalogue::Catalogue>(*made.catalogue);
  catalogue::Item truck;
  truck.id = "truck";
  truck.kind = "truck";
  truck.details = {{"volume_limit_cu_yd", "7.78"}, {"weight_limit_ton", "5"}};
  yard::put(*all, truck);
  catalogue::Item fee;
  fee.kind = "disposal";
  fee.unit = fee.sold_by = "ton";
  for (const char* id : {"disposal-concrete", "disposal-soil"}) fee.id = id, yard::put(*all, fee);
  for (const char* id : {"remove-concrete", "remove-asphalt", "remove-wall"}) all->rates[id] = rate(id, "m3");
  for (const char* id : {"remove-unit-paving", "remove-sod", "saw-slab", "protect-area"})
    all->rates[id] = rate(id, "m2");
  all->rates["overlay-hole"] = rate("overlay-hole", "piece");
  all->rates["protect-line"] = rate("protect-line", "m");
  made.catalogue = all;
  made.choices.truck = "truck";
  made.choices.disposal = "disposal-soil";
  return made;
}

Share removed(const plan::Job& job, const std::string& id, const Terrain& terrain = {}) {
  const plan::Site site = plan::site(job);
  return takeoff::there::removal(job, site, *site.find(id), terrain);
}
Share hauled(const plan::Job& job) { return takeoff::there::haul_removed(job, plan::site(job)); }
double line_of(const Share& share, const std::string& item) {
  double sum = 0;
  for (const auto& line : share.lines)
    if (line.item == item) sum += line.working.amount().value;
  return sum;
}

// 16 x 32 ft, 4 in: 512 sq ft, 170.667 cu ft.
const geometry::Ring slab = rectangle(0, 0, 384, 192);

TEST(Removal, ASlabIsMeasuredAndWeighed) {
  const Share share = removed(job({removal("R1", slab, "concrete", "haul")}), "R1");
  EXPECT_NEAR(*share.measures.get("removal_area_m2"), 512 * sq_ft, 1e-9);
  EXPECT_NEAR(*share.measures.get("removal_m3"), 512.0 / 3 * cu_ft, 1e-9);
  EXPECT_NEAR(*share.measures.get("removal_kg"), 512.0 / 3 * cu_ft * 2400, 1e-6);
  EXPECT_EQ(share.facts, std::vector<std::string>{"removal"});
  ASSERT_EQ(share.tasks.size(), 1u);
  EXPECT_EQ(share.tasks[0].rate, "remove-concrete");
  EXPECT_EQ(share.tasks[0].stage, takeoff::Stage::protect);
  EXPECT_NEAR(share.tasks[0].working.amount().value, 512.0 / 3 * cu_ft, 1e-9);
  EXPECT_EQ(share.tasks[0].factor, 1);
}

TEST(Removal, SteelMakesItSlower) {
  plan::Element one = removal("R1", slab, "concrete", "haul");
  std::get<plan::Removal>(one.kind).steel = true;
  const Share share = removed(job({one}), "R1");
  ASSERT_EQ(share.tasks.size(), 1u);
  EXPECT_EQ(share.tasks[0].factor, 1.5);
  EXPECT_EQ(share.tasks[0].condition, "steel in it");
}

TEST(Removal, LoadsByTheTighterOfVolumeAndWeight) {
  // Loose 256 cu ft = 9.48 cu yd: 2 bodies of 7.78. 170.667 cu ft x 2400 kg/m3 = 11,598.6 kg = 12.785 short tons: 3
  // payloads of 5.
  const Share share = hauled(job({removal("R1", slab, "concrete", "haul")}));
  EXPECT_EQ(line_of(share, "truck"), 3);
  EXPECT_NEAR(line_of(share, "disposal-concrete") / units::kilograms_per_short_ton, 12.785, 5e-4);
  EXPECT_EQ(line_of(share, "disposal-soil"), 0);
  // Sod of 2 in there: 85.333 cu ft, loose x 1.25 = 3.95 cu yd: 1; x 1300 = 3,141 kg: 1. To the job's own dump.
  const Share sod = hauled(job({removal("S1", slab, "sod", "haul", 2)}));
  EXPECT_EQ(line_of(sod, "truck"), 1);
  EXPECT_NEAR(line_of(sod, "disposal-soil"), 512.0 / 6 * cu_ft * 1300, 1e-6);
}

TEST(Removal, OneHeapIsHauledTogether) {
  // Each half alone would be 1.28 -> 2 loads, 4 in all; together 2.56 -> 3.
  const Share share = hauled(job({removal("R1", rectangle(0, 0, 192, 192), "concrete", "haul"),
                                  removal("R2", rectangle(192, 0, 384, 192), "concrete", "haul")}));
  EXPECT_EQ(line_of(share, "truck"), 3);
  // A wall goes with it; sod has a load of its own.
  const Share mixed = hauled(job({removal("R1", slab, "concrete", "haul"), removal("S1", slab, "sod", "haul", 2)}));
  EXPECT_EQ(line_of(mixed, "truck"), 3 + 1);
  EXPECT_EQ(mixed.lines.size(), 4u);
}

TEST(Removal, OfWhatIsUsedAgainOnlyTheBrokenGoes) {
  plan::Element one = removal("U1", slab, "unit-paving", "reuse", 2);
  std::get<plan::Removal>(one.kind).loss = 0.1;
  const plan::Job made = job({one});
  const Share share = removed(made, "U1");
  EXPECT_NEAR(*share.measures.get("reuse_m2"), 460.8 * sq_ft, 1e-9);  // 512 x 0.9
  ASSERT_EQ(texts(share, "removal-reuse").size(), 1u);
  EXPECT_TRUE(has(texts(share, "removal-reuse")[0], "460.8 sq ft"));
  EXPECT_NEAR(line_of(hauled(made), "disposal-concrete"), 0.1 * 512.0 / 6 * cu_ft * 2240, 1e-6);
  std::get<plan::Removal>(one.kind).loss = 0;
  EXPECT_TRUE(hauled(job({one})).lines.empty());
}

TEST(Removal, ALineHasAWidth) {
  plan::Element one = removal("W1", {}, "wall", "haul", 24);
  auto& what = std::get<plan::Removal>(one.kind);
  what.outline.clear();
  what.line = line({at(0, 0), at(240, 0)});
  EXPECT_EQ(texts(removed(job({one}), "W1"), "removal-width").size(), 1u);
  what.width = Length::inches(12);
  const Share share = removed(job({one}), "W1");
  EXPECT_NEAR(*share.measures.get("removal_length_m"), 20 * ft, 1e-9);
  EXPECT_NEAR(*share.measures.get("removal_m3"), 40 * cu_ft, 1e-9);  // 20 x 1 x 2 ft
}

TEST(Removal, FaultsAreOneSentenceEach) {
  const auto codes = [](plan::Element one) {
    const Share share = removed(job({std::move(one)}), "R1");
    std::vector<std::string> found;
    for (const auto& said : share.problems)
      if (said.severity == problem::Severity::problem) found.push_back(said.code);
    EXPECT_TRUE(share.tasks.empty());
    return found;
  };
  using Codes = std::vector<std::string>;
  EXPECT_EQ(codes(removal("R1", slab, "marble", "haul")), Codes{"removal-kind"});
  EXPECT_EQ(codes(removal("R1", slab, "concrete", "bury")), Codes{"removal-fate"});
  EXPECT_EQ(codes(removal("R1", slab, "concrete", "haul", 0)), Codes{"removal-thickness"});
  plan::Element lossy = removal("R1", slab, "unit-paving", "reuse");
  std::get<plan::Removal>(lossy.kind).loss = 1.5;
  EXPECT_EQ(codes(lossy), Codes{"removal-loss"});
  EXPECT_TRUE(hauled(job({removal("R1", slab, "marble", "haul")})).lines.empty());
}

TEST(Removal, SawnWhereItMeetsASlabThatStays) {
  const auto sawn = [](const geometry::Ring& piece) {
    // A slab of 40 x 20 ft stays.
    const plan::Job made =
        job({removal("S1", rectangle(0, 0, 480, 240), "concrete", "leave"), removal("R1", piece, "concrete", "haul")});
    const Share share = removed(made, "R1");
    EXPECT_NEAR(*share.measures.get("saw_cut_m2"), *share.measures.get("saw_cut_m") * 4 * in, 1e-12);
    EXPECT_TRUE(texts(share, "removal-saw-cut").empty());
    return *share.measures.get("saw_cut_m") / ft;
  };
  EXPECT_NEAR(sawn(rectangle(120, 60, 240, 180)), 40, 1e-4);   // within it: all round 10 x 10 ft
  EXPECT_NEAR(sawn(rectangle(0, 0, 120, 120)), 20, 1e-4);      // in its corner: two sides
  EXPECT_NEAR(sawn(rectangle(0, 240, 120, 360)), 10, 1e-4);    // beside it: one side
  EXPECT_NEAR(sawn(rectangle(420, 240, 540, 360)), 5, 1e-4);   // beside it, half past its end
  EXPECT_NEAR(sawn(rectangle(420, 180, 540, 300)), 10, 1e-4);  // over its corner: 5 + 5 ft inside
  EXPECT_NEAR(sawn(rectangle(0, 250, 120, 360)), 0, 1e-4);     // 10 in away
}

TEST(Removal, NoSlabThatStaysIsSaid) {
  const Share share = removed(job({removal("R1", slab, "concrete", "haul")}), "R1");
  EXPECT_EQ(texts(share, "removal-saw-cut").size(), 1u);
  EXPECT_EQ(*share.measures.get("saw_cut_m"), 0);
  EXPECT_FALSE(removed(job({removal("R1", slab, "sod", "haul")}), "R1").measures.get("saw_cut_m"));
}

TEST(Removal, TwiceDrawnIsFlagged) {
  const plan::Job made = job({removal("R1", rectangle(0, 0, 120, 120), "concrete", "haul"),
                              removal("R2", rectangle(60, 0, 180, 120), "concrete", "haul"),
                              removal("S1", rectangle(0, 0, 120, 120), "sod", "haul")});
  EXPECT_TRUE(texts(removed(made, "R1"), "removal-twice").empty());
  ASSERT_EQ(texts(removed(made, "R2"), "removal-twice").size(), 1u);
  EXPECT_TRUE(has(texts(removed(made, "R2"), "removal-twice")[0], "50.0 sq ft"));  // 5 x 10 ft
  EXPECT_TRUE(texts(removed(made, "S1"), "removal-twice").empty());
}

TEST(Overlay, HolesAlongTheLowEdge) {
  // 25 x 12 ft, falling 2 % to the north: the north edge, ceil(25 / 10) = 3 holes.
  const plan::Job made = job({removal("S1", rectangle(0, 0, 300, 144), "concrete", "leave")});
  Terrain terrain;
  terrain.existing = slope(10, 0, -0.02, -100, -100, 500, 500);
  const Share share = removed(made, "S1", terrain);
  EXPECT_EQ(*share.measures.get("drain_holes"), 3);
  EXPECT_NEAR(*share.measures.get("overlay_m2"), 300 * sq_ft, 1e-9);
  EXPECT_NEAR(*share.measures.get("drain_hole_fabric_m2"), 3 * sq_ft, 1e-12);
  // A 2 in hole through 4 in: pi / 4 x 4 x 4 cu in.
  EXPECT_NEAR(*share.measures.get("drain_hole_stone_m3"), 3 * std::numbers::pi * 4 * in * in * in, 1e-12);
  EXPECT_TRUE(texts(share, "overlay-levels").empty());
  EXPECT_EQ(texts(share, "overlay-joints").size(), 1u);
  EXPECT_EQ(share.facts, std::vector<std::string>{"overlay"});
  // To the east it is the side of 12 ft: 2.
  terrain.existing = slope(10, -0.02, 0, -100, -100, 500, 500);
  EXPECT_EQ(*removed(made, "S1", terrain).measures.get("drain_holes"), 2);
  // Nothing known: the longest edge, and it is said.
  const Share blind = removed(made, "S1");
  EXPECT_EQ(*blind.measures.get("drain_holes"), 3);
  EXPECT_EQ(texts(blind, "overlay-levels").size(), 1u);
  EXPECT_TRUE(hauled(made).lines.empty());
}

TEST(Overlay, AHoleAtEachLowPoint) {
  // A dish: four triangles from the corners, at 0, down to the middle. One hole there besides the edge's.
  const plan::Job made = job({removal("S1", rectangle(0, 0, 240, 240), "concrete", "leave")});
  const geometry::Vec corners[] = {{0, 0}, {240 * in, 0}, {240 * in, 240 * in}, {0, 240 * in}};
  const geometry::Vec middle{120 * in, 120 * in};
  std::vector<geometry::Facet> facets;
  for (std::size_t i = 0; i < 4; ++i) {
    const geometry::Vec a = corners[i];
    const geometry::Vec b = corners[(i + 1) % 4];
    facets.push_back({{a, b, middle}, geometry::plane_through(a, 0, b, 0, middle, -0.1), false});
  }
  Terrain terrain;
  terrain.existing = std::make_shared<const geometry::Surface>(geometry::Point{}, facets);
  EXPECT_EQ(*removed(made, "S1", terrain).measures.get("drain_holes"), 2 + 1);  // ceil(20 / 10), and the dish
}

TEST(Overlay, WhatIsCutOutOfItDoesNotStay) {
  const plan::Job made = job({removal("S1", rectangle(0, 0, 480, 240), "concrete", "leave"),
                              removal("R1", rectangle(120, 60, 240, 180), "concrete", "haul")});
  EXPECT_NEAR(*removed(made, "S1").measures.get("overlay_m2"), (800 - 100) * sq_ft, 1e-9);
}

TEST(Protection, AreaOrLengthOfAnItem) {
  plan::Protection mats;
  mats.outline = shape(rectangle(0, 0, 240, 96));
  mats.item = "mat";
  plan::Protection fence;
  fence.line = line({at(0, 0), at(360, 0)});
  fence.item = "fence";
  plan::Job made = job({{"P1", "", mats}, {"P2", "", fence}});
  auto all = std::make_shared<catalogue::Catalogue>(*made.catalogue);
  catalogue::Item mat;
  mat.id = "mat";
  yard::put(*all, mat);
  made.catalogue = all;
  const plan::Site site = plan::site(made);
  const Share laid = takeoff::there::protection(made, *site.find("P1"));
  EXPECT_NEAR(line_of(laid, "mat"), 160 * sq_ft, 1e-9);
  EXPECT_EQ(laid.tasks.size(), 1u);
  const Share put = takeoff::there::protection(made, *site.find("P2"));
  EXPECT_NEAR(*put.measures.get("protection_length_m"), 30 * ft, 1e-9);
  EXPECT_TRUE(yard::said(put, "item-missing"));  // no fence in this catalogue; its hours are still counted
  EXPECT_EQ(put.tasks.size(), 1u);
}

RC_GTEST_PROP(Removal, AnyOblongByItsSides, ()) {
  const long x = *rc::gen::inRange(-5000, 5000), y = *rc::gen::inRange(-5000, 5000);
  const long wide = *rc::gen::inRange(1, 900), deep = *rc::gen::inRange(1, 900), thick = *rc::gen::inRange(1, 24);
  const plan::Job made = job({removal("R1", rectangle(x, y, x + wide, y + deep), "concrete", "haul", thick)});
  const double cubic_inches = static_cast<double>(wide * deep * thick);
  RC_ASSERT(std::abs(*removed(made, "R1").measures.get("removal_m3") - cubic_inches * in * in * in) < 1e-9);
  // Loads by the long way: 1.5 times loose against 7.78 cu yd (46,656 cu in each), weight against 5 short tons.
  const double bodies = std::ceil(1.5 * cubic_inches / 46656 / 7.78 - 1e-9);
  const double payloads = std::ceil(cubic_inches * in * in * in * 2400 / (5 * 907.18474) - 1e-9);
  RC_ASSERT(line_of(hauled(made), "truck") == std::max(bodies, payloads));
}

// An oblong at any place about a slab of 200 x 100 in that stays: sawn along what of its sides runs inside the slab,
// and along what of them lies on the slab's own side from outside. By intervals.
RC_GTEST_PROP(Removal, SawnByIntervals, ()) {
  const long x = *rc::gen::inRange(-60, 220), y = *rc::gen::inRange(-60, 120);
  const long wide = *rc::gen::inRange(5, 150), deep = *rc::gen::inRange(5, 150);
  const auto both = [](long a, long b, long high) { return std::max(0L, std::min(b, high) - std::max(a, 0L)); };
  // A side at `at` whose piece lies `above` it: inside, or on the far border with the slab behind it.
  const auto there = [](long at, bool above, long high) { return (at > 0 && at < high) || at == (above ? high : 0); };
  // Within 1 in (reach 25 mm) of a border that runs along is on it: left out here, but for the border itself.
  const auto clear = [](long at, long high) {
    return (at == 0 || std::abs(at) > 2) && (at == high || std::abs(at - high) > 2);
  };
  RC_PRE(clear(x, 200) && clear(x + wide, 200) && clear(y, 100) && clear(y + deep, 100));
  long sawn = 0;
  if (there(x, true, 200)) sawn += both(y, y + deep, 100);
  if (there(x + wide, false, 200)) sawn += both(y, y + deep, 100);
  if (there(y, true, 100)) sawn += both(x, x + wide, 200);
  if (there(y + deep, false, 100)) sawn += both(x, x + wide, 200);
  const plan::Job made = job({removal("S1", rectangle(0, 0, 200, 100), "concrete", "leave"),
                              removal("R1", rectangle(x, y, x + wide, y + deep), "concrete", "haul")});
  RC_ASSERT(std::abs(*removed(made, "R1").measures.get("saw_cut_m") / in - static_cast<double>(sawn)) < 0.02);
}

}  // namespace
