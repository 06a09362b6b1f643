// Rules of marks: each with a yard where it holds and one where it does not, sizes by closed form.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <numbers>

#include "takeoff/there/kit.h"
#include "units/number.h"

namespace {

using namespace kit;  // NOLINT(google-build-using-namespace): the words of these tests
using takeoff::Share;
using takeoff::levels::Terrain;
using yard::at;
using yard::paved;
using yard::rectangle;

// The one finding of a rule, or an empty text.
std::string found(const plan::Job& job, const std::string& code, const Terrain& terrain = {}) {
  const auto all = texts(marks(job, terrain), code);
  EXPECT_LE(all.size(), 1u);
  return all.empty() ? "" : all.front();
}
std::string square_feet(double value) { return units::show_number(value, 1) + " sq ft"; }

// 40 x 40 ft of paving on nothing chosen below: no body, so what is near is the paving itself.
plan::Element plain(long x0, long y0, long x1, long y1) { return paved("A1", rectangle(x0, y0, x1, y1), ""); }

TEST(Marks, AStripAlongALine) {
  // A line across a deck of 20 x 20 ft, from far to far: 4 ft wide, 20 ft long.
  const auto job =
      with_rules(yard::job({plain(0, 0, 240, 240), marked("G1", "buried-service", {at(-300, 120), at(600, 120)})}),
                 {rule("near", "buried-service", "paving", 24)});
  EXPECT_TRUE(has(found(job, "site-near"), "A1 " + square_feet(80))) << found(job, "site-near");
  // 25 in beside it: nothing.
  const auto away =
      with_rules(yard::job({plain(0, 0, 240, 240), marked("G1", "buried-service", {at(-300, -25), at(600, -25)})}),
                 {rule("near", "buried-service", "paving", 24)});
  EXPECT_TRUE(marks(away).empty());
}

TEST(Marks, ADiscRoundAPoint) {
  const auto job = with_rules(yard::job({plain(0, 0, 480, 480), marked("W1", "well", {at(240, 240)})}),
                              {rule("near", "well", "paving", 120)});
  EXPECT_TRUE(has(found(job, "site-near"), square_feet(std::numbers::pi * 100))) << found(job, "site-near");
  // Round the end of a line, too: half a disc and 10 x 20 ft.
  const auto line = with_rules(yard::job({plain(0, 0, 480, 480), marked("W1", "well", {at(-400, 240), at(120, 240)})}),
                               {rule("near", "well", "paving", 120)});
  EXPECT_TRUE(has(found(line, "site-near"), square_feet(std::numbers::pi * 50 + 200))) << found(line, "site-near");
}

TEST(Marks, RootsByTheTrunk) {
  // 15 times a trunk of 12 in is 15 ft. The trunk is drawn as a square of 1 ft in the middle of a deck that is cut out
  // for it: within r lie four strips of 1 ft x r and a disc.
  const auto yard = [](std::optional<long> trunk) {
    return with_rules(
        yard::job({paved("A1", rectangle(0, 0, 960, 960), ""), tree("T1", rectangle(474, 474, 486, 486), trunk)}),
        {rule("roots", "tree", "paving", 72, 15)});
  };
  const auto ring = [](double reach) { return 4 * reach + std::numbers::pi * reach * reach; };  // 1 ft square in it
  EXPECT_TRUE(has(found(yard(12), "site-roots"), square_feet(ring(15)))) << found(yard(12), "site-roots");
  EXPECT_TRUE(has(found(yard(12), "site-roots"), "here 15' 0\""));
  EXPECT_TRUE(has(found(yard(3), "site-roots"), square_feet(ring(6))));  // 3.75 ft: the 6 ft hold
  EXPECT_TRUE(has(found(yard({}), "site-roots"), square_feet(ring(6))));
  EXPECT_TRUE(has(found(yard({}), "site-roots"), "size not being known"));
}

TEST(Marks, DiggingByHandIsMeasuredAndItsRestPriced) {
  // Dense base 6 in past a deck of 20 x 20 ft: 21 ft of strip 4 ft wide; 2 3/8 + 1 + 4 in deep.
  plan::Job job = with_rules(yard::job({paved("A1", rectangle(0, 0, 240, 240), "dense"),
                                        marked("G1", "buried-service", {at(-300, 120), at(600, 120)}),
                                        marked("G2", "buried-service", {at(-300, 132), at(600, 132)})}),
                             {rule("by-hand", "buried-service", "dig", 24)});
  auto all = std::make_shared<catalogue::Catalogue>(*job.catalogue);
  all->rates["dig-hand"].id = "dig-hand";
  all->rates["dig-hand"].hours_per_si_unit = 2.5;
  all->rates["dig-open"].hours_per_si_unit = 0.5;
  job.catalogue = all;
  const auto shares = marks(job);
  ASSERT_EQ(shares.size(), 2u);
  EXPECT_EQ(shares[0].measures.element, "G1");
  EXPECT_NEAR(*shares[0].measures.get("hand_dig_area_m2"), 84 * sq_ft, 1e-6);
  EXPECT_NEAR(*shares[0].measures.get("hand_dig_m3"), 84 * sq_ft * 7.375 * in, 1e-6);
  // The second lies 1 ft beside: only the foot that the first has not.
  EXPECT_NEAR(*shares[1].measures.get("hand_dig_area_m2"), 21 * sq_ft, 1e-6);
  ASSERT_EQ(shares[0].tasks.size(), 1u);
  EXPECT_NEAR(shares[0].tasks[0].factor, 0.8, 1e-12);  // (2.5 - 0.5) / 2.5
  job.choices.access = "hand";                         // then all of it is counted by hand already
  EXPECT_TRUE(marks(job)[0].tasks.empty());
}

TEST(Marks, ABaseThatSoaksAwayOnlyWhereItIsCountedOn) {
  const auto yard = [](const char* build_up, bool counts) {
    plan::Job job = with_rules(yard::job({paved("A1", rectangle(0, 0, 240, 240), build_up),
                                          kit::building("H1", rectangle(0, 264, 240, 600), {})}),
                               {rule("water", "building", "infiltrates", 120)});
    job.choices.infiltration_counts = counts;
    return job;
  };
  // The deck ends 2 ft from the house, its base of 21 ft 1.5 ft from it.
  // Straight below the house 20 ft x 8.5 ft; and on either side 6 in of base beyond its corner, where the disc of 10 ft
  // hardly bends: 2 x the area under the circle from 0 to 0.5 less 1.5 ft.
  const auto under_circle = [](double to) { return 0.5 * (to * std::sqrt(100 - to * to) + 100 * std::asin(to / 10)); };
  const double area = 20 * 8.5 + 2 * (under_circle(0.5) - 0.5 * 1.5);
  EXPECT_TRUE(has(found(yard("open", true), "site-water"), square_feet(area)))
      << found(yard("open", true), "site-water");
  EXPECT_TRUE(marks(yard("open", false)).empty());
  EXPECT_TRUE(marks(yard("dense", true)).empty());
}

plan::Element flight(long x0, long y0, long x1, long y1) {
  plan::Steps steps;
  steps.outline = shape(rectangle(x0, y0, x1, y1));
  return {"S1", "", steps};
}

TEST(Marks, SomethingToStandOnByABarrier) {
  const auto yard = [](long from) {
    return with_rules(yard::job({flight(0, from, 60, from + 40), marked("B1", "barrier", {at(-100, 0), at(200, 0)})}),
                      {rule("stand", "barrier", "stand", 36)});
  };
  EXPECT_TRUE(has(found(yard(24), "site-stand"), "S1 " + square_feet(5)));  // 60 x 12 in
  EXPECT_TRUE(marks(yard(40)).empty());
  // A barrier drawn closed is a line: what stands well inside is not near it.
  plan::SiteMark closed;
  closed.what = "barrier";
  closed.outline = shape(rectangle(-200, -200, 400, 400));
  const auto inside =
      with_rules(yard::job({flight(0, 0, 60, 40), {"B1", "", closed}}), {rule("stand", "barrier", "stand", 36)});
  EXPECT_TRUE(marks(inside).empty());
}

TEST(Marks, ALevelThatLeavesTheBarrierTooLow) {
  const auto yard = [](std::optional<long> height) {
    plan::Element barrier = marked("B1", "barrier", {at(-60, 0), at(180, 0)});
    if (height) std::get<plan::SiteMark>(barrier.kind).height = Length::inches(*height);
    return with_rules(yard::job({plain(0, 6, 120, 120), barrier}), {rule("level", "barrier", "level", 48)});
  };
  Terrain terrain;
  terrain.existing = slope(0, 0, 0, -1000, -1000, 1000, 1000);
  terrain.finished["A1"] = slope(12 * in, 0, 0, 0, 6, 120, 120);  // 12 in above the ground
  // 60 in less 12 is 48: enough. 54 less 12 is 42, for the deck's 10 ft.
  EXPECT_EQ(found(yard(60), "site-level", terrain), "");
  EXPECT_TRUE(has(found(yard(54), "site-level", terrain), "only 3' 6\" is left"))
      << found(yard(54), "site-level", terrain);
  EXPECT_TRUE(has(found(yard(54), "site-level", terrain), "for 10' 0\"")) << found(yard(54), "site-level", terrain);
  EXPECT_TRUE(has(found(yard({}), "site-level", terrain), "not known"));
  EXPECT_EQ(found(yard(54), "site-level"), "");  // no levels
}

TEST(Marks, OverALotLine) {
  plan::SiteMark lot;
  lot.what = "lot-line";
  lot.outline = shape(rectangle(-480, -480, 480, 480));
  const auto job = [&lot](long to) {
    return with_rules(yard::job({plain(360, 0, to, 120), {"L1", "", lot}}), {rule("lot", "lot-line", "any", 0)});
  };
  EXPECT_TRUE(has(found(job(540), "site-lot"), "A1 " + square_feet(50)));  // 5 x 10 ft beyond
  EXPECT_TRUE(marks(job(480)).empty());
  // Drawn open, the side is not known: what it crosses, 10 ft of it.
  const auto open =
      with_rules(yard::job({plain(360, 0, 540, 120), marked("L1", "lot-line", {at(480, -500), at(480, 500)})}),
                 {rule("lot", "lot-line", "any", 0)});
  EXPECT_TRUE(has(found(open, "site-lot"), "A1 for 10' 0\"")) << found(open, "site-lot");
  // A pipe that crosses it.
  plan::DrainRun pipe;
  pipe.what = "pipe";
  pipe.line = line({at(360, 0), at(600, 37)});
  const auto crossed =
      with_rules(yard::job({{"D1", "", pipe}, marked("L1", "lot-line", {at(480, -500), at(480, 500)})}),
                 {rule("lot", "lot-line", "any", 0)});
  EXPECT_TRUE(has(found(crossed, "site-lot"), "D1"));
}

TEST(Marks, APipeIsMeasuredByItsLength) {
  plan::DrainRun pipe;
  pipe.what = "pipe";
  pipe.line = line({at(0, 0), at(600, 0)});
  const auto job = with_rules(yard::job({{"D1", "", pipe}, marked("X1", "septic", {at(300, 36)})}),
                              {rule("septic", "septic", "dig", 60)});
  // Half a chord of a circle of 5 ft at 3 ft is 4 ft.
  EXPECT_TRUE(has(found(job, "site-septic"), "D1 for 8' 0\"")) << found(job, "site-septic");
}

TEST(Marks, ADropSpotIsLookedAtByOthersAndLooksItself) {
  plan::SiteMark spot;
  spot.what = "drop-spot";
  spot.outline = shape(rectangle(0, 0, 96, 96));
  plan::Pool pool;
  pool.outline = shape(rectangle(0, 120, 240, 360));
  pool.surround = plan::Surround{"", Length::inches(12), Length::inches(72)};
  const auto yard = [&](plan::Pool water) {
    return with_rules(yard::job({{"P1", "", std::move(water)}, {"DS", "", spot}}),
                      {rule("load", "pool", "drop-spot", 0, 1), rule("dig", "drop-spot", "dig", 24)});
  };
  // Within 72 in of the water's edge: all between 48 and 96 in, straight below it (its corner is the pool's corner).
  EXPECT_TRUE(has(found(yard(pool), "site-load"), "DS " + square_feet(32))) << found(yard(pool), "site-load");
  pool.surround.reset();  // how deep it is nobody said
  EXPECT_TRUE(has(found(yard(pool), "site-load"), "size not being known: how far that is from DS"))
      << found(yard(pool), "site-load");
  pool.surround = plan::Surround{"", Length::inches(12), Length::inches(20)};
  EXPECT_EQ(found(yard(pool), "site-load"), "");
}

TEST(Marks, AGateForTheMachine) {
  const auto yard = [](std::optional<long> width, const char* access) {
    plan::Element gate = marked("G1", "gate", {at(0, 0)});
    if (width) std::get<plan::SiteMark>(gate.kind).width = Length::inches(*width);
    plan::Job job =
        with_rules(yard::job({gate}), {rule("machine", "gate", "machine", 48), rule("tight", "gate", "tight", 36)});
    job.choices.access = access;
    return job;
  };
  EXPECT_TRUE(has(found(yard(36, "machine"), "site-machine"), "3' 0\" wide, under 4' 0\""));
  EXPECT_TRUE(marks(yard(48, "machine")).empty());
  EXPECT_TRUE(marks(yard(36, "tight")).empty());
  EXPECT_NE(found(yard(34, "tight"), "site-tight"), "");
  EXPECT_TRUE(marks(yard(20, "hand")).empty());
  EXPECT_TRUE(has(found(yard({}, "machine"), "site-machine"), "not known"));
}

TEST(Marks, ADownspoutWithoutARun) {
  const auto yard = [](long x, const char* into) {
    plan::Element spout = marked("DS1", "downspout", {at(x, 60)});
    std::get<plan::SiteMark>(spout.kind).into = into;
    std::get<plan::SiteMark>(spout.kind).roof_area_m2 = 300 * sq_ft;
    return with_rules(yard::job({plain(0, 0, 120, 120), spout}), {rule("run", "downspout", "no-run", 120)});
  };
  EXPECT_TRUE(has(found(yard(-60, ""), "site-run"), "roof 300.0 sq ft"));
  EXPECT_TRUE(marks(yard(-60, "D1")).empty());
  EXPECT_TRUE(marks(yard(-130, "")).empty());
}

TEST(Marks, WhatHasNoRuleIsSaid) {
  const auto job = with_rules(yard::job({marked("X1", "beehive", {at(0, 0)})}), {rule("r", "well", "dig", 12)});
  EXPECT_EQ(texts(marks(job), "mark-no-rule").size(), 1u);
  // A catalogue from before there were rules: said once, and nothing else.
  const auto old = with_rules(
      yard::job({plain(0, 0, 240, 240), marked("X1", "well", {at(0, 0)}), marked("X2", "septic", {at(0, 0)})}), {});
  ASSERT_EQ(marks(old).size(), 1u);
  EXPECT_EQ(marks(old)[0].problems.size(), 1u);
  EXPECT_EQ(texts(marks(old), "site-rules-missing").size(), 1u);
}

TEST(Marks, APoolWithoutABarrier) {
  plan::Pool pool;
  pool.outline = shape(rectangle(0, 0, 240, 360));
  EXPECT_EQ(texts(marks(yard::job({{"P1", "", pool}})), "barrier-not-checked").size(), 1u);
  const auto fenced = with_rules(yard::job({{"P1", "", pool}, marked("B1", "barrier", {at(-99, 0), at(-99, 400)})}),
                                 {rule("stand", "barrier", "stand", 36)});
  EXPECT_TRUE(marks(fenced).empty());
}

TEST(Marks, AlikeResultsAreSaidTogether) {
  const auto job =
      with_rules(yard::job({paved("A1", rectangle(0, 0, 120, 120), ""), paved("A2", rectangle(120, 0, 240, 120), ""),
                            marked("G1", "buried-service", {at(-300, 60), at(600, 60)})}),
                 {rule("near", "buried-service", "paving", 12)});
  EXPECT_TRUE(has(found(job, "site-near"), "A1 20.0 sq ft, A2 20.0 sq ft")) << found(job, "site-near");
}

// A point at any place beside a deck: raised where its distance from the oblong, worked out plainly, is under the
// rule's, and never where it is over it. 3 mm are left out, where the round of the disc decides.
RC_GTEST_PROP(Marks, NeverRaisedFromFurtherAway, ()) {
  const long x = *rc::gen::inRange(-300, 500), y = *rc::gen::inRange(-300, 400), reach = *rc::gen::inRange(1, 240);
  const auto beyond = [](long value, long high) {
    return static_cast<double>(std::max({0L, -value, value - high})) * in;
  };
  const double away = std::hypot(beyond(x, 200), beyond(y, 100));
  const double within = static_cast<double>(reach) * in;
  const auto job = with_rules(yard::job({plain(0, 0, 200, 100), marked("W1", "well", {at(x, y)})}),
                              {rule("near", "well", "paving", reach)});
  const bool raised = !marks(job).empty();
  if (away > within) RC_ASSERT(!raised);
  // A disc that enters an edge by h has 4/3 h sqrt(2 r h) inside, at a corner about a quarter: over 1 sq cm at 3 mm.
  if (away < within - 0.02) RC_ASSERT(raised);
}

// The strip along a bent line by counting places 1/2 in apart whose distance from its two chords is within reach.
RC_GTEST_PROP(Marks, AStripByCountingPlaces, ()) {
  const auto place = [] { return geometry::Vec(*rc::gen::inRange(-100, 300), *rc::gen::inRange(-100, 200)); };
  const geometry::Vec a = place(), b = place(), c = place();
  RC_PRE(!(a == b) && !(b == c));
  const double reach = *rc::gen::inRange(6, 60);
  const auto from_chord = [](geometry::Vec p, geometry::Vec q, geometry::Vec r) {
    const double t = std::clamp(geometry::dot(p - q, r - q) / geometry::dot(r - q, r - q), 0.0, 1.0);
    return geometry::length(p - q - t * (r - q));
  };
  int counted = 0;
  for (int x = 0; x < 400; ++x)
    for (int y = 0; y < 200; ++y) {
      const geometry::Vec p{x / 2.0 + 0.25, y / 2.0 + 0.25};
      if (std::min(from_chord(p, a, b), from_chord(p, b, c)) <= reach) ++counted;
    }
  const auto drawn = [](geometry::Vec v) { return at(std::lround(v.x), std::lround(v.y)); };
  plan::Job job = with_rules(yard::job({paved("A1", rectangle(0, 0, 200, 100), "bare"),
                                        marked("G1", "buried-service", {drawn(a), drawn(b), drawn(c)})}),
                             {rule("hand", "buried-service", "dig", std::lround(reach))});
  auto all = std::make_shared<catalogue::Catalogue>(*job.catalogue);
  all->build_ups["bare"] = {"bare", "paving", {}, "", "", "", {yard::layer("base", "dense", 32, 0)}};
  job.catalogue = all;
  const auto shares = marks(job);
  const double found = shares.empty() ? 0 : shares[0].measures.get("hand_dig_area_m2").value_or(0) / in / in;
  // Along the border a place is counted or not as its middle lies: half a place of 1/2 in for each 1/2 in of border,
  // and no more of it is inside than the strip has.
  const double border = 2 * (geometry::length(b - a) + geometry::length(c - b)) + 2 * 3.1416 * reach;
  RC_ASSERT(std::abs(found - counted / 4.0) <= border / 4);
}

// A bent line at any place, and the same job moved: nothing changes.
RC_GTEST_PROP(Marks, MovingTheJobChangesNothing, ()) {
  const auto place = [] { return std::pair(*rc::gen::inRange(-300, 500), *rc::gen::inRange(-300, 400)); };
  const auto a = place(), b = place(), c = place();
  RC_PRE(a != b && b != c);
  const long dx = *rc::gen::inRange(-50000, 50000), dy = *rc::gen::inRange(-50000, 50000);
  const auto yard = [&](long mx, long my) {
    const auto to = [&](std::pair<int, int> p) { return at(p.first + mx, p.second + my); };
    return with_rules(yard::job({paved("A1", rectangle(mx, my, 200 + mx, 100 + my), "dense"),
                                 marked("G1", "buried-service", {to(a), to(b), to(c)})}),
                      {rule("hand", "buried-service", "dig", 24)});
  };
  const auto here = marks(yard(0, 0)), there = marks(yard(dx, dy));
  RC_ASSERT(here.size() == there.size());
  RC_ASSERT(texts(here, "site-hand") == texts(there, "site-hand"));
  for (std::size_t i = 0; i < here.size(); ++i) RC_ASSERT(here[i].measures.values == there[i].measures.values);
}

}  // namespace
