#include "takeoff/walls/caps.h"

#include <rapidcheck.h>

#include "takeoff/walls/laid_kit.h"

namespace {

using namespace kit;  // NOLINT: the words of these tests
using takeoff::Share;
using takeoff::walls::Blocks;
using takeoff::walls::cap_row;
using takeoff::walls::cap_runs;
using takeoff::walls::CapRow;
using takeoff::walls::CapRun;
using takeoff::walls::Column;
using takeoff::walls::Heights;
using takeoff::walls::Leg;
using takeoff::walls::Profile;

constexpr double degree = pi / 180;

WallBook cap_book() {
  WallBook made = book();
  made.rate("cap-set", "curves x 2: two taper cuts");
  made.rate("cut-60");
  return made;
}

Blocks blocks(double depth, double height, double setback) {
  Blocks made;
  made.block.length = 18 * in;
  made.block.depth = depth * in;
  made.block.height = height * in;
  made.block.setback = setback * in;
  return made;
}

Profile profile(const std::vector<Leg>& legs, const std::vector<Column>& columns, double height) {
  Profile made;
  for (const Leg& leg : legs) made.legs.push_back({leg.from * in, leg.to * in, leg.radius * in, leg.corner});
  for (const Column& one : columns) {
    made.columns.push_back({one.from * in, one.to * in, one.base, one.top});
    made.courses = std::max(made.courses, one.top);
  }
  made.length = made.legs.back().to;
  made.course_height = height * in;
  made.ground = made.behind = Heights::level(0);
  return made;
}

// The demo's wall: 378 in and, round an outside corner, 110 in; the top steps 4, 5, 6, 7 courses at 54, 120, 234 in
// along (y = 0, 66, 180); courses stand 3/4 in back each.
Profile demo_profile() {
  return profile(
      {{0, 378, 0, pi / 2}, {378, 488, 0, 0}},
      {{0, 54, 0, 4}, {54, 120, 1, 5}, {120, 234, 1, 6}, {234, 414, 1, 7}, {414, 450, 2, 7}, {450, 488, 3, 7}}, 8);
}

Share taken(const plan::Wall& wall, const Profile& of, const Blocks& made_of, const WallBook& with = cap_book()) {
  const plan::Element element{"RW", "wall", wall};
  plan::Ground ground;
  ground.element = std::make_shared<const plan::Element>(element);
  return takeoff::walls::caps(job(with, {element}), ground, of, made_of);
}

plan::Wall demo_caps() {
  plan::Wall wall;
  wall.cap = "cap-18";
  wall.cap_overhang = inches(1);
  wall.adhesive = "adh-28";
  return wall;
}

// 139.5 + 105.5 in of course 7, 114 of course 6, 66 of 5, 54 of 4 = 479 in = 12.1666 m.
TEST(Caps, DemoRetainingWall) {
  const std::vector<CapRun> runs = cap_runs(demo_profile(), blocks(12, 8, 0.75), 1 * in, 13 * in);
  ASSERT_EQ(runs.size(), 5u);
  const double under[] = {54, 66, 114, 139.5, 105.5};
  const double front[] = {54, 66, 114, 140.5, 106.5};  // 1 in x tan 45 longer at the corner
  for (std::size_t i = 0; i < 5; ++i) {
    EXPECT_NEAR(runs[i].under / in, under[i], 1e-9);
    EXPECT_NEAR(runs[i].length / in, front[i], 1e-9);
    EXPECT_NEAR(runs[i].longer / in, front[i], 1e-9);  // an outside corner: the front is the longer edge
  }
  EXPECT_NEAR(runs[3].mitre_after, pi / 2, 1e-12);
  EXPECT_NEAR(runs[4].mitre_before, pi / 2, 1e-12);
  EXPECT_EQ(runs[3].mitre_before, 0);
  const Share share = taken(demo_caps(), demo_profile(), blocks(12, 8, 0.75));
  EXPECT_NEAR(measure(share, "cap_length_m"), 12.1666, 1e-6);
  // Up by runs: 140.5 / 18 = 8, 106.5 / 18 = 6, 114 / 18 = 7, 66 / 18 = 4, 54 / 18 = 3.
  EXPECT_EQ(measure(share, "caps"), 28);
  EXPECT_EQ(quantity(share, "cap-18"), 28);
  EXPECT_EQ(task(share, "cap-set"), 28);
  int mitred = 0;
  for (const takeoff::Cut& cut : share.cuts) {
    if (cut.what != "cap, mitre") continue;
    ++mitred;
    EXPECT_NEAR(cut.angle, 45 * degree, 1e-12);
    EXPECT_NEAR(cut.length, 13 * std::sqrt(2.0) * in, 1e-12);
  }
  EXPECT_EQ(mitred, 2);
  // Two closers on each run but the 54 in one, and the two corner caps.
  EXPECT_EQ(measure(share, "caps_cut"), 10);
  // Both ends of the wall, and the higher end of each of three steps.
  EXPECT_EQ(measure(share, "cap_ends"), 5);
  // 479 in, two beads of 1/4 in: 79.8 ft; a 28 oz tube gives 85.8 ft.
  EXPECT_EQ(measure(share, "adhesive_tubes"), 1);
  EXPECT_NEAR(quantity(share, "adh-28"), 2 * 479 * in * pi / 64 * in * in, 1e-12);
  // 1 in off both ends of five runs of 481 in.
  EXPECT_NEAR(measure(share, "groove_m"), 471 * in, 1e-9);
  EXPECT_EQ(said(share, "cap-back"), nullptr);
  EXPECT_NE(said(share, "heavy-unit"), nullptr);  // 26.46 kg = 58 lb
}

// The demo's seat wall: 48 in straight, then a quarter of 72 in whose centre lies in front; 12 in thick, caps 14 in:
// outer edge 72 - 1 + 14 = 85 in, each cap turns at most 2 asin(12 / 170) = 8.0955 degrees: 12, cut 3.75 a side.
TEST(Caps, DemoSeatWall) {
  const double quarter = 72 * pi / 2;
  const Profile seat = profile({{0, 48, 0, 0}, {48, 48 + quarter, -72, 0}}, {{0, 48 + quarter, 0, 4}}, 6);
  plan::Wall wall;
  wall.cap = "seatcap-24";
  wall.curve_cap = "seatcap-12";
  wall.free_standing = true;
  Profile shown = seat;
  shown.ground = shown.behind = Heights::level(6 * in);  // one course below
  const Share share = taken(wall, shown, blocks(12, 6, 0));
  EXPECT_EQ(measure(share, "straight_caps"), 2);
  EXPECT_EQ(measure(share, "curve_caps"), 12);
  EXPECT_EQ(quantity(share, "seatcap-24"), 2);
  EXPECT_EQ(quantity(share, "seatcap-12"), 12);
  ASSERT_EQ(share.cuts.size(), 1u);
  EXPECT_EQ(share.cuts[0].count, 24);
  EXPECT_NEAR(share.cuts[0].angle / degree, 3.75, 1e-9);
  EXPECT_NEAR(2 * std::asin(12.0 / 170) / degree, 8.0955, 1e-4);
  EXPECT_NEAR(measure(share, "cap_top_above_ground_m"), 20.25 * in, 1e-12);  // 3 x 6 + 2 1/4
  EXPECT_EQ(said(share, "seat-height"), nullptr);
  EXPECT_EQ(said(share, "cap-back"), nullptr);
  EXPECT_NE(said(share, "drip-curves"), nullptr);
  // Front and back of 48 in, stopped 1 in from the free end alone.
  EXPECT_NEAR(measure(share, "groove_m"), 2 * 47 * in, 1e-9);
  EXPECT_EQ(measure(share, "cap_ends"), 2);
  double curved = 0;
  for (const takeoff::Task& one : share.tasks)
    if (one.factor == 2) curved += one.working.amount().value;
  EXPECT_EQ(curved, 12);
}

// The front line is the longer edge on an outside curve, the back on an inside one.
TEST(Caps, LongerEdgeOfACurve) {
  const auto one = [](double radius, double overhang) {
    const double arc = std::abs(radius) * pi / 2;
    return cap_runs(profile({{0, arc, radius, 0}}, {{0, arc, 0, 3}}, 8), blocks(12, 8, 0.75), overhang * in, 13 * in)
        .at(0);
  };
  const CapRun outside = one(100, 1);  // third course 1 1/2 in back, cap 1 in out: 99.5 in
  EXPECT_NEAR(outside.radius / in, 99.5, 1e-9);
  EXPECT_NEAR(outside.longer / in, 99.5 * pi / 2, 1e-9);
  EXPECT_NEAR(outside.under / in, 98.5 * pi / 2, 1e-9);
  const CapRun inside = one(-100, 1);  // 100 + 1.5 - 1 = 100.5 in front, 113.5 behind
  EXPECT_NEAR(inside.radius / in, -100.5, 1e-9);
  EXPECT_NEAR(inside.longer / in, 113.5 * pi / 2, 1e-9);
  EXPECT_NEAR(inside.under / in, 101.5 * pi / 2, 1e-9);
}

TEST(Caps, InsideCornersAreFilledAtTheBack) {
  const Profile of = profile({{0, 100, 0, -pi / 2}, {100, 200, 0, 0}}, {{0, 200, 0, 1}}, 8);
  const std::vector<CapRun> runs = cap_runs(of, blocks(12, 8, 0.75), 1 * in, 13 * in);
  ASSERT_EQ(runs.size(), 2u);
  EXPECT_NEAR(runs[0].under / in, 100, 1e-9);
  EXPECT_NEAR(runs[0].length / in, 99, 1e-9);   // the overhangs meet 1 in before the corner
  EXPECT_NEAR(runs[0].longer / in, 112, 1e-9);  // the back edge lies 13 in behind
}

// A step at a corner ends both runs square.
TEST(Caps, NoMitreBetweenLevels) {
  const Profile of = profile({{0, 100, 0, pi / 2}, {100, 200, 0, 0}}, {{0, 100, 0, 2}, {100, 200, 0, 3}}, 8);
  const std::vector<CapRun> runs = cap_runs(of, blocks(12, 8, 0.75), 1 * in, 13 * in);
  ASSERT_EQ(runs.size(), 2u);
  EXPECT_EQ(runs[0].mitre_after, 0);
  EXPECT_EQ(runs[1].mitre_before, 0);
  EXPECT_FALSE(runs[0].shows_after);
  EXPECT_TRUE(runs[1].shows_before);
}

TEST(Caps, ClosedLinesHaveNoEnds) {
  Profile of = profile(
      {{0, 50, 0, pi / 2}, {50, 150, 0, pi / 2}, {150, 250, 0, pi / 2}, {250, 350, 0, pi / 2}, {350, 400, 0, 0}},
      {{0, 400, 0, 1}}, 8);
  of.closed = true;
  const std::vector<CapRun> runs = cap_runs(of, blocks(12, 8, 0), 1 * in, 13 * in);
  ASSERT_EQ(runs.size(), 4u);  // the first and the last half are one side
  for (const CapRun& run : runs) EXPECT_NEAR(run.length / in, 102, 1e-9);
}

// Steps and corners at random: the runs lie end to end along the whole line, and a straight line's caps are its length.
TEST(Caps, RunsCoverTheWholeLine) {
  EXPECT_TRUE(rc::check("runs lie end to end; mitres only between equal levels", [] {
    std::vector<Leg> legs;
    std::vector<Column> columns;
    double at = 0;
    for (int i = *rc::gen::inRange(1, 6); i > 0; --i) {
      const double length = *rc::gen::inRange(60, 300);
      legs.push_back({at, at + length, 0, i > 1 ? *rc::gen::inRange(-90, 91) * degree : 0});
      at += length;
    }
    double from = 0;
    while (from < at) {
      const double to = std::min(at, from + *rc::gen::inRange(20, 200));
      columns.push_back({from, to, 0, *rc::gen::inRange(1, 4)});
      from = to;
    }
    const Profile of = profile(legs, columns, 8);
    double end = 0, under = 0;
    for (const CapRun& run : cap_runs(of, blocks(12, 8, 0), 0, 13 * in)) {
      RC_ASSERT(std::abs(run.from - end) < 1e-9);
      RC_ASSERT(run.longer >= run.length - 1e-9);
      end = run.to;
      under += run.under;
    }
    RC_ASSERT(std::abs(end - of.length) < 1e-9);
    RC_ASSERT(std::abs(under - of.length) < 1e-9);  // without setback every course has the line's own length
  }));
}

TEST(Caps, DripGroove) {
  WallBook deep = cap_book();
  deep.limit("drip-deep", 0.25, {}, 0.875, "in");  // of 3 in leaves 2 1/8, under 2 1/4
  EXPECT_NE(said(taken(demo_caps(), demo_profile(), blocks(12, 8, 0.75), deep), "drip-deep"), nullptr);
  deep.limit("drip-deep", 0.25, {}, 0.75, "in");
  EXPECT_EQ(said(taken(demo_caps(), demo_profile(), blocks(12, 8, 0.75), deep), "drip-deep"), nullptr);
  plan::Wall flush = demo_caps();
  flush.cap_overhang = inches(0.5);
  const Share share = taken(flush, demo_profile(), blocks(12, 8, 0.75));
  EXPECT_NE(said(share, "drip-overhang"), nullptr);
  EXPECT_EQ(measure(share, "groove_m"), 0);
}

TEST(Caps, SeatHeightIsShown) {
  Profile seat = profile({{0, 96, 0, 0}}, {{0, 96, 0, 4}}, 6);
  plan::Wall wall;
  wall.cap = "seatcap-24";
  wall.free_standing = true;
  const Share high = taken(wall, seat, blocks(12, 6, 0));  // 24 + 2 1/4 in
  EXPECT_NE(said(high, "seat-height"), nullptr);
  wall.free_standing = false;
  EXPECT_EQ(said(taken(wall, seat, blocks(12, 6, 0)), "seat-height"), nullptr);
}

TEST(Caps, WhatCanNotBeIsSaid) {
  plan::Wall wall = demo_caps();
  wall.cap = "";
  EXPECT_NE(said(taken(wall, demo_profile(), blocks(12, 8, 0.75)), "no-cap"), nullptr);
  wall.cap = "none";
  EXPECT_NE(said(taken(wall, demo_profile(), blocks(12, 8, 0.75)), "item-missing"), nullptr);
  const Profile tight = profile({{0, 20, 20, 0}}, {{0, 20, 0, 1}}, 8);
  const Share share = taken(demo_caps(), tight, blocks(12, 8, 0.75));
  ASSERT_NE(said(share, "cap-curve"), nullptr);
  EXPECT_NE(said(share, "cap-curve")->mend.find("2' 2\""), std::string::npos) << said(share, "cap-curve")->mend;
}

// From the drawn walls, through profile and courses, to the same caps.
TEST(Caps, DemoWallsAsDrawn) {
  plan::Wall wall = demo_wall();
  wall.cap_overhang = inches(1);
  wall.adhesive = "adh-28";
  const auto capped = [](const plan::Wall& of) {
    const Laying laid = Laying(cap_book(), of).lay();
    return takeoff::walls::caps(laid.job, laid.ground, *laid.profile, *laid.blocks, &laid.courses);
  };
  const Share share = capped(wall);
  EXPECT_NEAR(measure(share, "cap_length_m"), 12.1666, 1e-6);
  EXPECT_EQ(measure(share, "caps"), 28);
  EXPECT_EQ(measure(share, "adhesive_tubes"), 1);
  // Course 7 stands at 1238 - 3 in, cap to 1238; the ground in front is lowest at the start: 1214 - 1188 = 26 in for
  // the first stretch, and 1238 - 1196.5 or so for the highest.
  EXPECT_GT(measure(share, "cap_top_above_ground_m"), 40 * in);
  plan::Wall seat = demo_seat_wall();
  seat.curve_cap = "seatcap-12";
  seat.cap_overhang = inches(1);
  seat.adhesive = "adh-28";
  seat.glued = true;
  const Share curved = capped(seat);
  EXPECT_EQ(measure(curved, "straight_caps"), 2);
  EXPECT_EQ(measure(curved, "curve_caps"), 12);
  EXPECT_NEAR(measure(curved, "cap_top_above_ground_m"), 20.25 * in, 1e-9);
  // Face of 48 + 36 pi in under the caps and on three beds between four courses, two beads of 1/4 in.
  EXPECT_NEAR(quantity(curved, "adh-28"), 2 * 4 * (48 + 36 * pi) * in * pi / 64 * in * in, 1e-9);
}

// One 40 ft course of 18 in units (26 and a piece of 12) under caps of 18: which way the notice falls is the units'.
TEST(Caps, JointsAreComparedWithTheLaidCourse) {
  plan::Wall wall = straight(480, 27, "cap-18");
  const Laying laid = Laying(cap_book(), wall).lay();
  const Share blind = takeoff::walls::caps(laid.job, laid.ground, *laid.profile, *laid.blocks);
  EXPECT_EQ(said(blind, "cap-joints"), nullptr);
  const Share seen = takeoff::walls::caps(laid.job, laid.ground, *laid.profile, *laid.blocks, &laid.courses);
  std::vector<double> below;
  const int top = laid.profile->courses - 1;
  for (const auto& bay : laid.courses.bays)
    for (const walls::Run& run : bay->runs)
      if (run.course == top)
        for (const walls::Laid& unit : run.units)
          if (unit.from > 1e-6) below.push_back(unit.from);
  std::ranges::sort(below);
  const CapRow row = cap_row(480 * in, 18 * in, below, 4.5 * in);
  EXPECT_EQ(said(seen, "cap-joints") != nullptr, row.near > 0);
  EXPECT_LT(row.near, row.caps - 1);  // the closers bring part of them off the joints below
}

}  // namespace
