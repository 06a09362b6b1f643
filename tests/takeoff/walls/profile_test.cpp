// From heights to courses. Values are rules of the trade (common practice), worked by hand beside each test; "common
// practice" where nothing is published.
#include <rapidcheck.h>

#include <numeric>

#include "takeoff/walls/base_steps.h"
#include "takeoff/walls/laid_kit.h"

namespace {

using namespace kit;
using takeoff::walls::Column;
using takeoff::walls::Heights;
using takeoff::walls::Leg;

TEST(Heights, StraightBetweenLevelOutsideSteppedWhereTwoMeet) {
  const Heights h({level(10, 0), level(20, 10), level(20, 30), level(40, 30)});
  EXPECT_DOUBLE_EQ(h.after(0), 0);
  EXPECT_NEAR(h.before(15 * in), 5 * in, 1e-12);
  EXPECT_DOUBLE_EQ(h.before(inches(20).metres().si()), inches(10).metres().si());
  EXPECT_DOUBLE_EQ(h.after(inches(20).metres().si()), inches(30).metres().si());
  EXPECT_NEAR(h.least(12 * in, 30 * in), 2 * in, 1e-12);
  EXPECT_NEAR(h.greatest(0, 18 * in), 8 * in, 1e-12);
  EXPECT_DOUBLE_EQ(h.after(100), inches(30).metres().si());
}

TEST(Legs, CornersTangenciesAndBends) {
  // South to north, fill to the east (right): the turn to the east goes round the fill.
  const auto rw = geometry::Path::make(demo_wall().line.edges, demo_wall().line.end);
  const auto two = takeoff::walls::legs(*rw, geometry::Side::right);
  ASSERT_EQ(two.size(), 2u);
  EXPECT_NEAR(two[0].corner, pi / 2, 1e-12);
  EXPECT_NEAR(takeoff::walls::legs(*rw, geometry::Side::left)[0].corner, -pi / 2, 1e-12);
  // The seat wall's curve has its centre on the deck, in front of the face.
  const auto sw = geometry::Path::make(demo_seat_wall().line.edges, demo_seat_wall().line.end);
  const auto tangent = takeoff::walls::legs(*sw, geometry::Side::left);
  ASSERT_EQ(tangent.size(), 2u);
  EXPECT_EQ(tangent[0].corner, 0);
  EXPECT_NEAR(tangent[1].radius, -72 * in, 1e-5);
  EXPECT_NEAR(tangent[1].length(), 72 * in * pi / 2, 1e-5);
  // A bend of 4 degrees is no corner: one leg, which remembers it.
  const double rise = std::tan(4 * pi / 180) * 100;
  const plan::DrawnLine bent = line({{0, 0}, {100, 0}}, 200, std::round(rise * 64) / 64);
  const auto one = takeoff::walls::legs(*geometry::Path::make(bent.edges, bent.end), geometry::Side::left);
  ASSERT_EQ(one.size(), 1u);
  EXPECT_NEAR(one[0].bend, 4 * pi / 180, 1e-3);
}

// 36 in exposed, 8 in units, one course or 6 in to bury (common practice): the top fixed takes 6 courses and
// leaves 12 in buried; the base fixed buries 8 in and comes out 4 in high. No cap here; with one, blocks end under it.
TEST(Profile, TopFixedPutsTheRestIntoTheGround) {
  const Laying laid(book(), straight(480, 36));
  ASSERT_TRUE(laid.profile) << all_said(laid.share);
  EXPECT_EQ(laid.profile->courses, 6);
  ASSERT_EQ(laid.profile->columns.size(), 1u);
  EXPECT_NEAR(laid.profile->buried(laid.profile->columns[0]), 12 * in, 1e-9);
  EXPECT_NEAR(laid.profile->top_level(laid.profile->columns[0]), 36 * in, 1e-9);
}

TEST(Profile, BaseFixedLetsTheRestShow) {
  plan::Wall wall = straight(480, 36);
  wall.fixed = plan::Wall::Fixed::base;
  const Laying laid(book(), wall);
  ASSERT_TRUE(laid.profile);
  EXPECT_EQ(laid.profile->courses, 6);
  EXPECT_NEAR(laid.profile->buried(laid.profile->columns[0]), 8 * in, 1e-9);
  EXPECT_NEAR(laid.profile->top_level(laid.profile->columns[0]), 40 * in, 1e-9);
  EXPECT_NE(said(laid.share, "wall-rest"), nullptr);
}

// The wanted top is the cap's: 36 - 3 in of cap + 8 in buried = 41 in, 6 courses; 48 - 33 = 15 in go into the ground.
TEST(Profile, TheCapIsPartOfTheHeightAndNeverCut) {
  const Laying laid(book(), straight(480, 36, "cap-18"));
  ASSERT_TRUE(laid.profile);
  EXPECT_EQ(laid.profile->courses, 6);
  EXPECT_NEAR(laid.profile->buried(laid.profile->columns[0]), 15 * in, 1e-9);
}

// Toe slope, from memory of the design manual: 2H:1V buries H/7. 72 in exposed: 10.29 in, over one course of 8 in.
TEST(Profile, ASteepToeBuriesMore) {
  plan::Wall wall = straight(480, 72);
  wall.fixed = plan::Wall::Fixed::base;
  wall.toe_slope = 2;
  const Laying steep(book(), wall);
  ASSERT_TRUE(steep.profile);
  EXPECT_NEAR(steep.profile->buried(steep.profile->columns[0]), 72.0 / 7 * in, 1e-9);
  wall.toe_slope = 0;
  wall.bury_courses = 2;
  EXPECT_NEAR(Laying(book(), wall).profile->buried({0, 1, 0, 1}), 16 * in, 1e-9);
}

TEST(Profile, TheDemosWall) {
  const Laying laid(book(), demo_wall());
  ASSERT_TRUE(laid.profile) << all_said(laid.share);
  const auto& p = *laid.profile;
  EXPECT_NEAR(p.datum, 1179 * in, 1e-9);
  EXPECT_EQ(p.courses, 7);
  const std::vector<std::vector<double>> wanted{{0, 54, 0, 4},    {54, 120, 1, 5},  {120, 234, 1, 6},
                                                {234, 414, 1, 7}, {414, 450, 2, 7}, {450, 488, 3, 7}};
  ASSERT_EQ(p.columns.size(), wanted.size());
  for (std::size_t i = 0; i < wanted.size(); ++i) {
    EXPECT_NEAR(p.columns[i].from / in, wanted[i][0], 1e-6);
    EXPECT_NEAR(p.columns[i].to / in, wanted[i][1], 1e-6);
    EXPECT_EQ(p.columns[i].base, static_cast<int>(wanted[i][2]));
    EXPECT_EQ(p.columns[i].top, static_cast<int>(wanted[i][3]));
  }
  // Depths of the demo's table: 9.0, 8.4 (to a tenth), 12 at x = 516, 13 at x = 552.
  EXPECT_NEAR(p.buried(p.columns[0]) / in, 9.0, 0.01);
  EXPECT_NEAR(p.buried(p.columns[1]) / in, 8.44, 0.01);
  EXPECT_NEAR(p.buried(p.columns[4]) / in, 11.94, 0.01);
  EXPECT_NEAR(p.buried(p.columns[5]) / in, 12.94, 0.01);
  EXPECT_TRUE(laid.share.problems.empty()) << all_said(laid.share);
  // Behind by the rule: 1 in under the cap (common practice).
  EXPECT_NEAR(p.behind.after(10) / in, 1237, 1e-6);
}

TEST(Profile, AGivenBaseThatBuriesTooLittleSaysHowMuch) {
  plan::Wall wall = straight(480, 36);
  wall.base = {level(0, -4)};
  const Laying laid(book(), wall);
  ASSERT_TRUE(laid.profile);
  const auto* bury = said(laid.share, "wall-bury");
  ASSERT_NE(bury, nullptr);
  EXPECT_NE(bury->text.find("4\" less"), std::string::npos) << bury->text;
}

// A base by the rule on a slope: checked inch by inch against the rule itself, in the plainest way.
TEST(Profile, AutomaticBaseIsBuriedEverywhereAndStepsInRuns) {
  EXPECT_TRUE(rc::check("a base on sloping ground", [] {
    const int length = *rc::gen::inRange(60, 900);
    std::vector<plan::HeightAt> ground;
    for (int at = 0; at < length; at += *rc::gen::inRange(20, 200)) {
      ground.push_back(level(at, *rc::gen::inRange(-40, 40)));
    }
    plan::Wall wall = straight(length, 0);
    wall.ground = ground;
    wall.top = {level(0, 80)};
    const Laying laid(book(), wall);
    RC_ASSERT(laid.profile.has_value());
    const auto& p = *laid.profile;
    const Heights g(ground);
    for (int i = 0; i <= length; ++i) {
      const double at = i * in;
      const double level_of = g.before(at);
      const double bury = std::max(8 * in, (80 * in - level_of) / 20);
      RC_ASSERT(p.base_level(p.at(at)) <= level_of - bury + 1e-6);
      RC_ASSERT(p.top_level(p.at(at)) >= 80 * in - 1e-6);
    }
    for (const Column& c : p.columns) RC_ASSERT(c.top == p.columns[0].top);
    for (const Column& c : p.columns) {
      RC_ASSERT(c.length() > 48 * in - 1e-6 || p.columns.size() == 1);
      // From the lower end, where a wall is begun.
      const bool from_finish = g.before(length * in) < g.after(0);
      const double modules = (from_finish ? length * in - c.to : c.from) / (9 * in);
      RC_ASSERT(std::abs(modules - std::round(modules)) < 1e-6);
    }
  }));
}

// Every step function of a few stretches, tried outright.
TEST(BaseSteps, LeaveTheLeastToBury) {
  EXPECT_TRUE(rc::check("no step function under the ground leaves less wall to bury", [] {
    const auto courses = *rc::gen::container<std::vector<int>>(8, rc::gen::inRange(0, 3));
    const double least_run = *rc::gen::inRange(1, 5);
    const double into_bank = *rc::gen::inRange(0, 3);
    std::vector<takeoff::walls::Allowed> allowed;
    for (int i = 0; i < 8; ++i) allowed.push_back({i * 1.0, i + 1.0, courses[static_cast<std::size_t>(i)]});
    const auto may = [&](const std::vector<int>& f) {
      int run = 0;
      for (int i = 0; i < 8; ++i) {
        for (int k = 0; k < 8; ++k) {
          if (std::abs(i - k) <= into_bank && f[static_cast<std::size_t>(i)] > courses[static_cast<std::size_t>(k)])
            return false;
        }
        ++run;
        const bool ends = i == 7 || f[static_cast<std::size_t>(i)] != f[static_cast<std::size_t>(i) + 1];
        if (ends && run < least_run) return false;
        if (ends) run = 0;
      }
      return true;
    };
    int best = -1;
    for (int code = 0; code < 6561; ++code) {
      std::vector<int> f;
      for (int rest = code, i = 0; i < 8; ++i, rest /= 3) f.push_back(rest % 3);
      if (may(f)) best = std::max(best, std::accumulate(f.begin(), f.end(), 0));
    }
    const std::vector<int> got = takeoff::walls::base_steps(allowed, least_run, into_bank);
    RC_ASSERT(may(got));
    RC_ASSERT(std::accumulate(got.begin(), got.end(), 0) == best);
  }));
}

// The ground in front rises by 16 in at 180 in: two courses of 8 in, by hand.
TEST(Profile, AStepRunsOneUnitOnIntoTheBank) {
  plan::Wall wall = straight(360, 40);
  wall.ground = {level(0, 0), level(180, 0), level(180, 16), level(360, 16)};
  const Laying laid(book(), wall);
  ASSERT_TRUE(laid.profile);
  const auto& columns = laid.profile->columns;
  ASSERT_EQ(columns.size(), 2u);
  // The ground rises 16 in at 180 in; two courses; the lower ones go on 18 in past it: 198 in.
  EXPECT_NEAR(columns[0].to / in, 198, 1e-6);
  EXPECT_EQ(columns[1].base - columns[0].base, 2);
  EXPECT_NEAR(laid.profile->base_level(columns[0]) / in, -8, 1e-6);
}

TEST(Profile, ASlopingTopStepsUpByWholeCourses) {
  plan::Wall wall = straight(360, 0);
  wall.top = {level(0, 24), level(360, 48)};
  const Laying laid(book(), wall);
  ASSERT_TRUE(laid.profile);
  const auto& p = *laid.profile;
  for (int i = 0; i <= 360; ++i) {
    const double wanted = (24 + 24.0 * i / 360) * in;
    EXPECT_GE(p.top_level(p.at(i * in)), wanted - 1.0 / 16 * in - 1e-6) << i;
    EXPECT_LT(p.top_level(p.at(i * in)), wanted + (8 + 9.0 / 15 + 0.1) * in)
        << i;  // a course, and the rise of a module
  }
}

TEST(Profile, ImportedWallsHaveOnlyAHeight) {
  plan::Wall wall = straight(360, 0);
  wall.top.clear();
  wall.ground.clear();
  wall.height = inches(32);
  const Laying laid(book(), wall);
  ASSERT_TRUE(laid.profile);
  EXPECT_EQ(laid.profile->courses, 5);  // 32 + 8 = 40 in
  EXPECT_NEAR(laid.profile->top_level(laid.profile->columns[0]) / in, 32, 1e-9);
}

std::string refused(const plan::Wall& wall, const WallBook& from = book()) {
  const Laying laid(from, wall);
  EXPECT_FALSE(laid.profile.has_value());
  EXPECT_EQ(laid.share.problems.size(), 1u) << all_said(laid.share);
  return laid.share.problems.empty() ? "" : laid.share.problems[0].code;
}

TEST(BadWalls, EachIsAProblemOfItsOwn) {
  EXPECT_EQ(refused(straight(480, 0)), "wall-height");
  plan::Wall under = straight(480, 36);
  under.top = {level(0, 36), level(240, 36), level(240, -40)};
  EXPECT_EQ(refused(under), "wall-height");
  plan::Wall nothing = straight(480, 36);
  nothing.top.clear();
  EXPECT_EQ(refused(nothing), "wall-no-height");
  plan::Wall crosses = straight(480, 36);
  crosses.line = line({{0, 0}, {100, 0}, {100, 100}, {50, 100}}, 50, -50);
  EXPECT_EQ(refused(crosses), "wall-crosses-itself");
  plan::Wall back = straight(480, 36);
  back.line = line({{0, 0}, {100, 0}}, 50, 0);
  EXPECT_EQ(refused(back), "wall-crosses-itself");
  EXPECT_EQ(refused(straight(480, 36 * 12 * 100)), "wall-height");  // feet taken for inches
}

TEST(BadWalls, ASetbackNotUnderTheDepthIsNoBlock) {
  WallBook deep = book();
  deep.block("bad", "wall-block", 18, 12, 8, 12, 0.4, 30);
  plan::Wall wall = straight(480, 36);
  wall.block = "bad";
  EXPECT_EQ(refused(wall, deep), "wall-block");
}

TEST(Crossing, ClosedLinesAndManyVerticesPass) {
  plan::Wall ring = straight(480, 36);
  ring.line = line({{0, 0}, {200, 0}, {200, 200}, {0, 200}}, 0, 0);
  const Laying closed(book(), ring);
  ASSERT_TRUE(closed.profile) << all_said(closed.share);
  EXPECT_TRUE(closed.profile->closed);
  EXPECT_EQ(closed.profile->legs.size(), 4u);
  EXPECT_NEAR(closed.profile->legs.back().corner, pi / 2, 1e-12);
}

}  // namespace
