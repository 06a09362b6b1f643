#include <rapidcheck.h>

#include "takeoff/walls/kit.h"

namespace {

using namespace kit;  // NOLINT: the words of these tests
using takeoff::Share;

plan::Element pillar(double first = 24, double second = 24, double height = 30) {
  plan::Pillar what;
  what.block = "pillar-6x16";
  what.cap = "pillarcap-28";
  what.adhesive = "adh-28";
  what.height = inches(height);
  what.build_up = "wall-base-open";
  plan::KeepOut out;
  out.outline = shape({{420, 98}, {420 + first, 98}, {420 + first, 98 + second}, {420, 98 + second}});
  out.what = "pillar";
  out.pillar = what;
  return {"P1", "pillar 1", out};
}

Share taken(const plan::Element& element, WallBook with = book()) {
  plan::Ground ground = ground_of(element);
  geometry::Drawn rings;
  for (const plan::DrawnRing& one : std::get<plan::KeepOut>(element.kind).outline) rings.push_back(one.edges);
  auto made = geometry::shape(rings);
  EXPECT_TRUE(made.has_value());
  if (made) ground.drawn = made->region;
  for (const char* rate : {"pillar", "pillar-cap", "wall-base"}) with.rate(rate);
  return takeoff::walls::pillar(job(with, {element}), ground);
}

plan::Element with(plan::Element element, const std::function<void(plan::Pillar&)>& change) {
  change(*std::get<plan::KeepOut>(element.kind).pillar);
  return element;
}

// The demo's pillars: (24 - 8) / 16 = 1 block a side, four a course, 30 in above the ground in 6 in courses and one
// below: six courses, 24 blocks; two pillars 48.
TEST(Pillar, DemoPillars) {
  const Share share = taken(pillar());
  EXPECT_EQ(measure(share, "pillar_blocks"), 24);
  EXPECT_EQ(measure(share, "pillar_courses"), 6);
  EXPECT_EQ(2 * quantity(share, "pillar-6x16"), 48);
  EXPECT_EQ(quantity(share, "pillarcap-28"), 1);
  EXPECT_NEAR(measure(share, "cap_overhang_m"), 2 * in, 1e-12);  // (28 - 24) / 2
  EXPECT_NEAR(measure(share, "pillar_height_m"), 30 * in, 1e-12);
  EXPECT_EQ(task(share, "pillar"), 1);
  EXPECT_EQ(task(share, "pillar-cap"), 1);
  // 6 in of stone, 6 in past 24 x 24: 36 x 36 x 6 cu in at 1650 kg/m3.
  EXPECT_NEAR(quantity(share, "agg-no57"), 36 * 36 * 6 * in * in * in * 1650, 1e-9);
  // 24 blocks of 16 in glued on top, two beads: 768 in of 1/4 in; a tube of 28 oz gives 85.8 ft.
  EXPECT_NEAR(quantity(share, "adh-28"), 768 * in * pi / 64 * in * in, 1e-12);
  EXPECT_EQ(measure(share, "adhesive_tubes"), 1);
  EXPECT_EQ(said(share, "pillar-size"), nullptr);
  EXPECT_EQ(said(share, "pillar-rest"), nullptr);
  ASSERT_NE(said(share, "heavy-unit"), nullptr);  // blocks of 59 lb, cap of 195 lb
}

TEST(Pillar, SizesThatDoNotFit) {
  const Share share = taken(pillar(30, 24));
  const problem::Problem* problem = said(share, "pillar-size");
  ASSERT_NE(problem, nullptr) << all_said(share);
  EXPECT_EQ(problem->severity, problem::Severity::problem);
  // 8 + 16 = 24 and 8 + 32 = 40: 24 is the nearer to 30.
  EXPECT_NE(problem->mend.find("2' 0\" by 2' 0\""), std::string::npos) << problem->mend;
  EXPECT_TRUE(share.lines.empty());
  // 40 x 24: two on the long sides, one on the short: six a course.
  const Share oblong = taken(with(pillar(40, 24), [](plan::Pillar& what) { what.cap = ""; }));
  EXPECT_EQ(measure(oblong, "pillar_blocks"), 36);
  EXPECT_NE(said(taken(pillar(40, 24)), "pillar-cap"), nullptr);  // 28 in does not cover 40
}

// Area of the ring: blocks end to end round the core, so their plan areas are the square less the core.
TEST(Pillar, BlocksFillTheRing) {
  EXPECT_TRUE(rc::check("pinwheel of whole blocks covers just the ring", [] {
    const int a = *rc::gen::inRange(1, 6), b = *rc::gen::inRange(1, 6);
    const double first = 8 + 16 * a, second = 8 + 16 * b;
    const Share share = taken(with(pillar(first, second, 6), [](plan::Pillar& what) { what.cap = ""; }));
    const double each = *share.measures.get("pillar_blocks") / *share.measures.get("pillar_courses");
    RC_ASSERT(std::abs(each * 16 * 8 - (first * second - (first - 16) * (second - 16))) < 1e-9);
  }));
}

TEST(Pillar, HeightsAndBurying) {
  const Share none = taken(with(pillar(), [](plan::Pillar& what) { what.height = {}; }));
  ASSERT_NE(said(none, "pillar-height"), nullptr);
  EXPECT_EQ(said(none, "pillar-height")->severity, problem::Severity::problem);
  EXPECT_TRUE(none.lines.empty());
  // 28 in takes five courses of 6 in: it comes to 30.
  const Share rest = taken(pillar(24, 24, 28));
  EXPECT_EQ(measure(rest, "pillar_courses"), 6);
  EXPECT_NE(said(rest, "pillar-rest"), nullptr);
  // A limit of 8 in buries two courses of 6 in.
  WallBook deep = book();
  deep.limit("wall-embed", 8, {}, 8, "in");
  const Share buried = taken(pillar(), deep);
  EXPECT_EQ(measure(buried, "pillar_courses"), 7);
  EXPECT_NE(said(buried, "pillar-bury"), nullptr);
  EXPECT_EQ(measure(taken(with(pillar(), [](plan::Pillar& what) { what.bury_courses = 2; })), "pillar_courses"), 7);
}

TEST(Pillar, FreeStandingLimitIsFlagged) {
  WallBook low = book();
  low.block("pillar-6x16", "pillar-block", 16, 8, 6, 0, 0, 26.9).details["free_standing_limit_mm"] = "609.6";  // 24 in
  EXPECT_NE(said(taken(pillar(), low), "wall-free-height"), nullptr);
  EXPECT_EQ(said(taken(pillar(24, 24, 24), low), "wall-free-height"), nullptr);
}

TEST(Pillar, OutlineMustBeARectangle) {
  plan::Element element = pillar();
  std::get<plan::KeepOut>(element.kind).outline = shape({{0, 0}, {24, 0}, {24, 24}, {12, 30}, {0, 24}});
  EXPECT_NE(said(taken(element), "pillar-outline"), nullptr);
  std::get<plan::KeepOut>(element.kind).outline = shape({{0, 0, 1}, {24, 0, 1}});
  EXPECT_NE(said(taken(element), "pillar-outline"), nullptr);
  // Turned by a 3-4-5 triangle it is one all the same: sides of 24 x (4/5, 3/5).
  std::get<plan::KeepOut>(element.kind).outline =
      shape({{0, 0}, {19.2, 14.4}, {19.2 - 14.4, 14.4 + 19.2}, {-14.4, 19.2}});
  const Share turned = taken(element);
  EXPECT_EQ(measure(turned, "pillar_blocks"), 24) << all_said(turned);
}

TEST(Pillar, WhatIsNotBuiltHereIsNothing) {
  plan::Element element = pillar();
  std::get<plan::KeepOut>(element.kind).pillar.reset();
  EXPECT_TRUE(taken(element).lines.empty());
  EXPECT_TRUE(taken(element).problems.empty());
  EXPECT_NE(said(taken(with(pillar(), [](plan::Pillar& what) { what.block = "none"; })), "item-missing"), nullptr);
}

TEST(Pillar, NumbersThatNoPillarHas) {
  for (const double height : {0.0, -30.0, 1e7}) {
    const Share share = taken(pillar(24, 24, height));
    EXPECT_TRUE(said(share, "pillar-height")) << height;
    EXPECT_TRUE(share.lines.empty());
  }
  const Share deep = taken(with(pillar(), [](plan::Pillar& what) { what.bury_courses = 1000000000; }));
  EXPECT_TRUE(said(deep, "pillar-height"));
  EXPECT_TRUE(deep.lines.empty());
}

}  // namespace
