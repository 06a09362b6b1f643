#include <rapidcheck.h>

#include <numeric>

#include "takeoff/walls/flight.h"
#include "takeoff/walls/kit.h"

namespace {

using namespace kit;  // NOLINT: the words of these tests
using takeoff::Share;
using takeoff::walls::across;
using takeoff::walls::units_for;

WallBook step_book() {
  WallBook made = book();
  made.sized("tread-14x48", "tread", 48, 14, 2, 0).mass_kg = 50.66;
  for (const char* rate : {"step-block", "tread-set", "seat-block", "wall-block", "wall-cut", "cap-set"})
    made.rate(rate);
  made.limit("tread-pitch", {}, 0.25, 0.125, "in per ft");
  made.limit("riser-dwelling", 4, 7.75, 6, "in");
  return made;
}

// As the demo has them, 48 in wide and 44 in along the way up (north), but of any unit and rise.
plan::Steps flight(double rise_in, const std::string& unit, double wide = 48, double along = 44) {
  plan::Steps steps;
  steps.outline = shape({{0, 0}, {wide, 0}, {wide, along}, {0, along}});
  steps.unit = unit;
  steps.rise = inches(rise_in);
  steps.lap = inches(unit == "step-6x16x48" ? 2 : 0);
  steps.build_up = "steps-base";
  steps.tread_fall = 0;
  return steps;
}

Share taken(const plan::Steps& steps, WallBook with = step_book()) {
  const plan::Element element{"S", "steps", steps};
  plan::Ground ground = ground_of(element);
  geometry::Drawn rings;
  for (const plan::DrawnRing& one : steps.outline) rings.push_back(one.edges);
  auto made = geometry::shape(rings);
  EXPECT_TRUE(made.has_value());
  if (made) ground.drawn = made->region;
  return takeoff::walls::steps(job(with, {element}), {}, ground);
}

// The demo's flight: 18 in of rise, three blocks of 6 in, lapped 2 in, treads 14 in, footprint 16 + 14 + 14 = 44 in.
TEST(Steps, DemoFlightOfThreeBlocks) {
  const Share share = taken(flight(18, "step-6x16x48"));
  EXPECT_EQ(measure(share, "risers"), 3);
  EXPECT_NEAR(measure(share, "riser_m"), 6 * in, 1e-12);
  EXPECT_NEAR(measure(share, "tread_m"), 14 * in, 1e-12);
  EXPECT_NEAR(measure(share, "stride_m"), 26 * in, 1e-12);  // 2 x 6 + 14
  EXPECT_EQ(measure(share, "step_units"), 3);
  EXPECT_EQ(measure(share, "steps_cut"), 0);
  EXPECT_EQ(quantity(share, "step-6x16x48"), 3);
  EXPECT_EQ(task(share, "step-block"), 3);
  // 4 in under 44 x 48 in, 6 in past all round: 56 x 60 x 4 = 13440 cu in.
  EXPECT_NEAR(measure(share, "step_base_m3"), 0.22024214, 1e-8);
  EXPECT_NEAR(measure(share, "step_base_m3"), 13440 * in * in * in, 1e-12);
  EXPECT_NEAR(quantity(share, "agg-dense"), 13440 * in * in * in * 2349.4, 1e-9);
  for (const char* code :
       {"risers-differ", "steps-rest", "riser-limit", "tread-limit", "steps-stride", "steps-footprint", "steps-outline",
        "steps-landing", "steps-handrail", "steps-guard", "steps-frost", "steps-base", "steps-lap"})
    EXPECT_EQ(said(share, code), nullptr) << all_said(share);
  EXPECT_NE(said(share, "heavy-unit"), nullptr);  // 173.68 kg
}

// The treads' own fall counts: R = (42 - 5 x 12 / 48) / 6 = 6.7917, not 7.0 (the flight would end 1 1/4 in high).
TEST(Steps, FallOfTheTreadsCounts) {
  plan::Steps steps = flight(42, "tread-14x48", 48, 74);
  steps.risers = 6;
  steps.overhang = inches(2);  // treads of 12 in
  steps.tread_fall = 1.0 / 48;
  const Share share = taken(steps);
  EXPECT_NEAR(measure(share, "riser_m") / in, 6.7916667, 1e-6);
  EXPECT_NEAR(measure(share, "tread_m") / in, 12, 1e-9);
  // n R + (n - 1) T f is the rise again.
  EXPECT_NEAR(6 * measure(share, "riser_m") + 5 * measure(share, "tread_m") / 48, 42 * in, 1e-12);
  EXPECT_EQ(said(share, "risers-differ"), nullptr) << all_said(share);
  EXPECT_NE(said(share, "steps-handrail"), nullptr);  // 6 risers, from 4
  EXPECT_NE(said(share, "steps-landing"), nullptr);   // 42 in, over 36
  EXPECT_NE(said(share, "steps-guard"), nullptr);     // over 30 in
  EXPECT_NE(said(share, "steps-frost"), nullptr);     // slabs
  EXPECT_NE(said(share, "steps-light"), nullptr);
}

// Without a number: those that keep 4 to 7 3/4 in, nearest to the usual 6; 42 in without fall is seven of 6 in.
TEST(Steps, SharesTheRiseOut) {
  const Share share = taken(flight(42, "tread-14x48", 48, 98));
  EXPECT_EQ(measure(share, "risers"), 7);
  EXPECT_NEAR(measure(share, "riser_m"), 6 * in, 1e-12);
  EXPECT_EQ(measure(share, "step_units"), 7);
  EXPECT_EQ(task(share, "tread-set"), 7);
  EXPECT_TRUE(rc::check("shared risers close on the rise and keep the limits", [] {
    const double rise = *rc::gen::inRange(8, 200);
    const double eighths = *rc::gen::inRange(0, 3);  // of an inch per foot
    plan::Steps steps = flight(rise, "tread-14x48");
    steps.tread_fall = eighths / 8 / 12;
    const Share made = taken(steps);
    const double n = *made.measures.get("risers"), r = *made.measures.get("riser_m"), t = *made.measures.get("tread_m");
    RC_ASSERT(std::abs(n * r + (n - 1) * t * *steps.tread_fall - rise * in) < 1e-9);
    bool possible = false;  // 8 in is one riser of 8 or two under 4: none keeps the limits
    for (int k = 1; k < 60; ++k) {
      const double each = (rise * in - (k - 1) * t * *steps.tread_fall) / k;
      possible = possible || (each >= 4 * in && each <= 7.75 * in);
    }
    RC_ASSERT((said(made, "riser-limit") == nullptr) == possible);
    RC_ASSERT((r >= 4 * in - 1e-9 && r <= 7.75 * in + 1e-9) == possible);
  }));
}

// 20 in of 6 in blocks: three leave 2 in, four are 4 in too many; 18 3/8 leave just what the code allows.
TEST(Steps, RisersThatDifferAreAProblem) {
  const Share share = taken(flight(20, "step-6x16x48"));
  const problem::Problem* problem = said(share, "risers-differ");
  ASSERT_NE(problem, nullptr) << all_said(share);
  EXPECT_EQ(problem->severity, problem::Severity::problem);
  EXPECT_NE(problem->text.find("8\""), std::string::npos) << problem->text;  // 6 + 2
  EXPECT_NE(problem->text.find("6\""), std::string::npos) << problem->text;
  EXPECT_EQ(measure(share, "step_units"), 3);  // counted all the same
  const Share allowed = taken(flight(18.375, "step-6x16x48"));
  EXPECT_EQ(said(allowed, "risers-differ"), nullptr) << all_said(allowed);
  EXPECT_NE(said(allowed, "steps-rest"), nullptr);
  EXPECT_NEAR(measure(allowed, "riser_lowest_m"), 6.375 * in, 1e-12);
  EXPECT_NE(said(taken(flight(18.4375, "step-6x16x48")), "risers-differ"), nullptr);
}

// A fall of 1/4 in per ft on 14 in treads is 7/24 in each: two of them take 7/12 in off the lowest of three risers.
TEST(Steps, FallOfBlocksTakesFromTheLowestRiser) {
  plan::Steps steps = flight(18, "step-6x16x48");
  steps.tread_fall = 1.0 / 48;
  const Share share = taken(steps);
  EXPECT_NEAR(measure(share, "riser_lowest_m") / in, 6 - 7.0 / 12, 1e-9);
  EXPECT_NE(said(share, "risers-differ"), nullptr) << all_said(share);
  steps.rise = inches(18.578125);  // 18 37/64: the landing 37/64 in higher leaves under 1/64 in
  EXPECT_EQ(said(taken(steps), "risers-differ"), nullptr);
}

TEST(Steps, LimitsOfRiserTreadAndPitch) {
  plan::Steps steps = flight(18, "tread-14x48");
  steps.risers = 2;  // 9 in
  EXPECT_NE(said(taken(steps), "riser-limit"), nullptr);
  steps.risers = 0;
  steps.overhang = inches(4.5);  // treads of 9 1/2 in
  EXPECT_NE(said(taken(steps), "tread-limit"), nullptr);
  steps.overhang = inches(3.5);  // 10 1/2: enough for a dwelling, not for the public
  EXPECT_EQ(said(taken(steps), "tread-limit"), nullptr);
  steps.public_way = true;
  EXPECT_NE(said(taken(steps), "tread-limit"), nullptr);
  steps.tread_fall = 1.0 / 24;  // 1/2 in per ft
  EXPECT_NE(said(taken(steps), "tread-pitch"), nullptr);
  steps.tread_fall = -0.01;
  EXPECT_EQ(said(taken(steps), "tread-pitch")->severity, problem::Severity::problem);
}

TEST(Steps, WideFlightsLieSideBySideAndAreCut) {
  // 60 in of 48 in blocks: 12 in left is under a third of one, so both are cut to 30 in; two of 30 do not fit one.
  const Share wide = taken(flight(18, "step-6x16x48", 60));
  EXPECT_EQ(measure(wide, "step_units"), 6);
  EXPECT_EQ(measure(wide, "steps_cut"), 6);
  EXPECT_EQ(quantity(wide, "step-6x16x48"), 6);
  ASSERT_EQ(wide.cuts.size(), 2u);
  EXPECT_EQ(wide.cuts[0].count, 3);
  EXPECT_NEAR(wide.cuts[0].kept, 30 * in, 1e-12);
  EXPECT_NEAR(wide.cuts[0].length, 16 * in, 1e-12);
  EXPECT_NEAR(wide.cuts[0].thickness, 6 * in, 1e-12);
  EXPECT_EQ(task(wide, "wall-cut"), 6);
  // 70 in: 48 + 22; two pieces of 22 and the kerf come from one: 3 whole and 2 for three pieces.
  const Share reused = taken(flight(18, "step-6x16x48", 70));
  EXPECT_EQ(quantity(reused, "step-6x16x48"), 5);
  EXPECT_EQ(measure(reused, "step_units"), 6);
}

TEST(Steps, SlabsLieOnBlocks) {
  plan::Steps steps = flight(18, "tread-14x48");
  steps.riser_block = "sw-6x12";
  steps.overhang = inches(1);
  steps.adhesive = "adh-28";
  const Share share = taken(steps);
  EXPECT_EQ(measure(share, "risers"), 3);
  EXPECT_NEAR(measure(share, "riser_m"), 6 * in, 1e-12);
  // 6 in less a slab of 2: one course of 6 in blocks each, let down 2 in; 48 / 12 = 4 in a row.
  EXPECT_EQ(measure(share, "riser_blocks"), 12);
  EXPECT_EQ(quantity(share, "sw-6x12"), 12);
  // Three rows of 48 in, two beads of 1/4 in: 288 in x pi / 64 sq in.
  EXPECT_NEAR(quantity(share, "adh-28"), 288 * in * pi / 64 * in * in, 1e-12);
  EXPECT_EQ(measure(share, "adhesive_tubes"), 1);
  // Slabs that the next riser stands on can't be let down: 2 + 6 = 8 in each, over the limit of 7 3/4.
  steps.lap = inches(2);
  const Share fixed = taken(steps);
  EXPECT_NEAR(measure(fixed, "riser_m"), 8 * in, 1e-12);
  EXPECT_NE(said(fixed, "riser-limit"), nullptr);
}

// Blocks of 6 x 12 in beside three treads of 14, 14 and 16 in, 6 in over each tread, one course in the ground beside:
// three courses everywhere, each a step up. Courses of 14, 28, 44, 30 and 16 in: 132 in a wall.
TEST(Steps, CheekWallsStepWithTheTreads) {
  plan::Steps steps = flight(18, "step-6x16x48");
  steps.cheeks = plan::Cheeks{"sw-6x12", "seatcap-24", true, true, inches(6)};
  const Share share = taken(steps);
  double laid = 0;
  int cut = 0;
  for (const takeoff::Cut& one : share.cuts) {
    if (one.item != "sw-6x12") continue;
    laid += one.count * one.kept;
    cut += one.count;
  }
  const double whole = measure(share, "cheek_blocks") - cut;
  EXPECT_EQ(measure(share, "cheek_cut"), cut);
  EXPECT_NEAR((laid + whole * 12 * in) / in, 2 * 132, 1e-6) << all_said(share);
  EXPECT_GE(quantity(share, "sw-6x12"), 2 * 132 / 12.0);
  EXPECT_LE(quantity(share, "sw-6x12"), measure(share, "cheek_blocks"));
  // A cap of 24 in, cut, over each tread of both walls.
  EXPECT_EQ(measure(share, "cheek_caps"), 6);
  EXPECT_EQ(quantity(share, "seatcap-24"), 6);
  steps.cheeks->right = false;
  EXPECT_NEAR(measure(taken(steps), "cheek_blocks"), measure(share, "cheek_blocks") / 2, 1e-9);
  steps.cheeks->left = false;
  EXPECT_FALSE(taken(steps).measures.get("cheek_blocks").has_value());
}

TEST(Steps, WhatIsMissingIsSaid) {
  plan::Steps steps = flight(0, "step-6x16x48");
  EXPECT_NE(said(taken(steps), "steps-rise"), nullptr);
  steps = flight(18, "no-such-unit");
  EXPECT_NE(said(taken(steps), "item-missing"), nullptr);
  steps = flight(18, "step-6x16x48");
  steps.build_up = "";
  const Share bare = taken(steps);
  EXPECT_NE(said(bare, "steps-base"), nullptr);  // buried by 6 / 4 = 1 1/2 in
  EXPECT_NE(said(bare, "steps-base")->text.find("1 1/2\""), std::string::npos) << said(bare, "steps-base")->text;
  steps.build_up = "none-such";
  EXPECT_NE(said(taken(steps), "build-up-missing"), nullptr);
  steps = flight(18, "step-6x16x48");
  steps.lap = inches(16);
  EXPECT_NE(said(taken(steps), "steps-tread"), nullptr);
  steps.lap = inches(1);
  EXPECT_NE(said(taken(steps), "steps-lap"), nullptr);
}

TEST(Steps, OutlineIsCompared) {
  EXPECT_NE(said(taken(flight(18, "step-6x16x48", 48, 48)), "steps-footprint"), nullptr);
  plan::Steps steps = flight(18, "step-6x16x48");
  steps.outline = shape({{0, 0}, {48, 0}, {48, 44}, {24, 44}});
  EXPECT_NE(said(taken(steps), "steps-outline"), nullptr);
  // Climbing east: the sides change places.
  steps.outline = shape({{0, 0}, {44, 0}, {44, 48}, {0, 48}});
  steps.up = units::Angle::degrees(0);
  const Share east = taken(steps);
  EXPECT_EQ(said(east, "steps-footprint"), nullptr) << all_said(east);
  EXPECT_EQ(measure(east, "step_units"), 3);
}

TEST(Steps, MovedByWholeStepsGivesTheSameBits) {
  plan::Steps steps = flight(17.3, "tread-14x48", 61.25, 40.75);
  const Share here = taken(steps);
  for (geometry::Edge& edge : steps.outline.front().edges)
    edge.from = {edge.from.x + Length::of_steps(123'456'789), edge.from.y - Length::of_steps(98'765'431)};
  const Share there = taken(steps);
  EXPECT_EQ(here.measures.values, there.measures.values);
}

TEST(Steps, AcrossSharesASmallLastPiece) {
  EXPECT_EQ(across(48, 48).whole, 1);
  EXPECT_TRUE(across(48, 48).cut.empty());
  EXPECT_EQ(across(72, 48).whole, 1);
  EXPECT_EQ(across(72, 48).cut, std::vector<double>{24});
  EXPECT_EQ(across(100, 48).whole, 1);  // 4 in left over: 26 + 26
  EXPECT_EQ(across(100, 48).cut, (std::vector<double>{26, 26}));
  EXPECT_TRUE(rc::check("pieces across add up to the width", [] {
    const double width = *rc::gen::inRange(100, 20000) / 1000.0;
    const takeoff::walls::Across row = across(width, 1.2);
    const double sum = row.whole * 1.2 + std::accumulate(row.cut.begin(), row.cut.end(), 0.0);
    RC_ASSERT(std::abs(sum - width) <= 0.125 * in + 1e-12);
    if (width > 1.2)
      for (const double piece : row.cut) RC_ASSERT(piece >= 0.4 - 1e-12);
  }));
}

// The fewest units for pieces of which one unit gives two at most, tried in every way.
int fewest(std::vector<double> pieces, double unit, double kerf) {
  if (pieces.empty()) return 0;
  const double last = pieces.back();
  pieces.pop_back();
  int best = 1 + fewest(pieces, unit, kerf);
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    if (pieces[i] + last + kerf > unit + 1e-9) continue;
    std::vector<double> rest = pieces;
    rest.erase(rest.begin() + static_cast<std::ptrdiff_t>(i));
    best = std::min(best, 1 + fewest(rest, unit, kerf));
  }
  return best;
}

TEST(Steps, PairsOfPiecesAreAsFewAsCanBe) {
  EXPECT_EQ(units_for({10, 10, 10}, 24, 0.125, false), 3);
  EXPECT_EQ(units_for({10, 10, 10}, 24, 0.125, true), 2);
  EXPECT_TRUE(rc::check("pairing the largest with the smallest is the fewest", [] {
    const auto tenths =
        *rc::gen::container<std::vector<int>>(*rc::gen::inRange<std::size_t>(0, 8), rc::gen::inRange(1, 100));
    std::vector<double> pieces(tenths.begin(), tenths.end());
    RC_ASSERT(units_for(pieces, 100, 1, true) == fewest(pieces, 100, 1));
  }));
}

// Numbers that no flight has are refused before anything is counted by them.
TEST(Steps, WhatNoFlightIs) {
  const auto refused = [](const char* code, const std::function<void(plan::Steps&)>& change) {
    plan::Steps steps = flight(18, "step-6x16x48");
    change(steps);
    const Share share = taken(steps);
    EXPECT_TRUE(said(share, code)) << code;
    EXPECT_TRUE(share.lines.empty());
  };
  refused("steps-rise", [](auto& s) { s.rise = {}; });
  refused("steps-rise", [](auto& s) { s.rise = inches(-18); });
  refused("steps-rise", [](auto& s) { s.risers = -1; });
  refused("steps-rise", [](auto& s) { s.risers = 1000000000; });
  refused("steps-rise", [](auto& s) { s.rise = inches(1e7); });
  refused("steps-rise", [](auto& s) { s.cheeks = plan::Cheeks{"sw-6x12", "", true, true, inches(1e7)}; });
  refused("tread-pitch", [](auto& s) { s.tread_fall = 1e300; });
  refused("steps-tread", [](auto& s) { s.lap = inches(16); });
}

// Ten blocks of 6 in on a rise of 18 in: the lowest would lie 36 in in the ground.
TEST(Steps, MoreRisersThanTheRiseHolds) {
  plan::Steps steps = flight(18, "step-6x16x48");
  steps.risers = 10;
  const Share share = taken(steps);
  ASSERT_TRUE(said(share, "risers-differ"));
  EXPECT_EQ(said(share, "risers-differ")->text,
            "the 9 risers over the lowest, 6\" each with the treads' fall, come out higher than the whole rise");
  EXPECT_EQ(std::ranges::count(share.problems, "risers-differ", &problem::Problem::code), 1);
}

}  // namespace
