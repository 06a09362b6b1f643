#include "takeoff/levels/finish.h"

#include <random>

#include "geometry/index.h"
#include "takeoff/levels/yard.h"

namespace {

using namespace yard;  // NOLINT
using geometry::Point;

constexpr double tenth_mm = 1e-4 / foot;  // feet

// Area conserved: arcs are flattened within 0.5 mm.
void expect_whole(const Worked& one, const std::string& id) {
  const geometry::Region& net = one.site.find(id)->net;
  EXPECT_NEAR(one.finished(id).area(), net.area().si(), 5e-4 * net.perimeter().si() + 1e-9) << one.said();
}

double distance(const geometry::Region& region, double x, double y) {
  double least = 1e9;
  for (const geometry::Outline* outline : region.outlines())
    for (const geometry::Curve& curve : geometry::curves(outline->edges()))
      least = std::min(least, geometry::nearest(curve, at(x, y)).distance);
  return least / foot;
}

TEST(Finish, APlaneIsItsFormula) {
  // 2 % towards the north-west: at (x, y) it is 100 - 0.02 ((x - 3) cos 135 + (y - 4) sin 135).
  const Worked one = worked({paved("A", shape(box(0, 0, 20, 12)), plane(3, 4, 100, 0.02, 135))});
  const double c = std::sqrt(0.5);
  everywhere(one, "A",
             [&](double x, double y, double z) { ASSERT_NEAR(z, 100 - 0.02 * (-(x - 3) * c + (y - 4) * c), 1e-5); });
  expect_whole(one, "A");
}

plan::Finish two_falls(double left, double right) {
  plan::Finish finish;
  finish.way = plan::Finish::Way::two_falls;
  finish.line = line({{5, 0}}, 5, 10);
  finish.height = feet(100);
  finish.height_end = feet(99.9);
  finish.fall = left;
  finish.fall_right = right;
  return finish;
}

TEST(Finish, TwoFallsMeetInARidgeOrAValley) {
  // The line runs up x = 5 from 100.00 to 99.90 in 10 ft, so by 1 % down; it climbs on past both ends.
  for (const double sign : {1.0, -1.0}) {
    const Worked one = worked({paved("A", shape(box(0, -4, 12, 14)), two_falls(0.02 * sign, 0.03 * sign))});
    everywhere(one, "A", [&](double x, double y, double z) {
      const double across = x < 5 ? 0.02 * (5 - x) : 0.03 * (x - 5);
      ASSERT_NEAR(z, 100 - 0.01 * y - sign * across, 2e-5) << x << " " << y;
    });
    expect_whole(one, "A");
  }
}

TEST(Finish, AlongALineRunsByStationsAndFallsAcross) {
  // Heights 100, 99 at 10 ft, 99 at 30 ft; 2 % down to the right (south of a line that runs east).
  plan::Finish finish;
  finish.way = plan::Finish::Way::along;
  finish.line = line({{0, 0}}, 30, 0);
  finish.heights = {{feet(0), feet(100)}, {feet(10), feet(99)}, {feet(30), feet(99)}};
  finish.fall = 0.02;
  const Worked one = worked({paved("A", shape(box(-3, -3, 32, 3)), finish)});
  everywhere(one, "A", [&](double x, double y, double z) {
    const double station = std::clamp(x, 0.0, 30.0);
    const double height = station < 10 ? 100 - station / 10 : 99;
    ASSERT_NEAR(z, height + 0.02 * y, 2e-5) << x << " " << y;
  });
  expect_whole(one, "A");
}

// A walk that turns right through a quarter about (0, 0): centre line from (-8, 0) north and round to (0, 8).
TEST(Finish, AlongAnArcItIsAHelicoid) {
  plan::Finish finish;
  finish.way = plan::Finish::Way::along;
  const double quarter = std::tan(site_kit::pi / 8);
  finish.line = line({{-8, 0, -quarter}}, 0, 8);
  finish.heights = {{feet(0), feet(99)}, {feet(site_kit::pi * 4), feet(99.6)}};
  finish.fall = 0.015;
  const Worked one = worked({paved("W", shape({{-10, 0, -quarter}, {0, 10}, {0, 6, quarter}, {-6, 0}}), finish)});
  // Height goes evenly with the angle; the right hand is the side of the centre.
  everywhere(one, "W", [&](double x, double y, double z) {
    const double turned = std::atan2(y, -x);
    const double across = std::hypot(x, y) - 8;
    ASSERT_NEAR(z, 99 + 0.6 * turned / (site_kit::pi / 2) + 0.015 * across, 3 * tenth_mm) << x << " " << y;
  });
  expect_whole(one, "W");
}

plan::Element pool_in_feet(double x, double y, double radius) {
  plan::Pool pool;
  pool.outline = shape({{x - radius, y, 1}, {x + radius, y, 1}});
  pool.coping_level = feet(100);
  return {"P", "", pool};
}

TEST(Finish, AwayFromARoundPoolItIsACone) {
  const Worked one =
      worked({paved("A", shape(box(0, 0, 40, 30)), edges({{"P", {}, {}, {}, {}, 0.02}})), pool_in_feet(20, 15, 8)});
  everywhere(one, "A", [&](double x, double y, double z) {
    ASSERT_NEAR(z, 100 - 0.02 * (std::hypot(x - 20, y - 15) - 8), 2 * tenth_mm) << x << " " << y;
  });
  expect_whole(one, "A");
  EXPECT_LT(one.finished("A").facets().size(), 1500U);
}

// One deck after another, drawn from this seed: each is held against the plain formula at every place looked at.
class AwayFromAnything : public testing::TestWithParam<unsigned> {};

TEST_P(AwayFromAnything, ItIsTheGreatestOverAllSources) {
  std::mt19937 random(GetParam());
  const auto between = [&random](int low, int high) {
    return low + static_cast<int>(random() % static_cast<unsigned>(high - low));
  };
  const double px = between(12, 28);
  const double py = between(10, 20);
  const double fall = between(10, 40) / 1000.0;
  const double own = between(10, 40) / 1000.0;
  const double height = 100 + between(-30, 10) / 100.0;
  const double lip = between(0, 3) / 100.0;
  plan::Pool pool;
  // A pool with a waist: two half rounds and two straight sides, one of them bent inwards.
  pool.outline = shape({{px - 4, py - 3, 0.3}, {px + 4, py - 3, 1}, {px + 4, py + 3, -0.35}, {px - 4, py + 3, 1}});
  pool.coping_level = feet(100);
  const Worked one = worked({paved("A", shape(box(0, 0, 40, 30)),
                                   edges({{"P", {}, {}, {}, feet(lip), fall}, {"", 2, feet(height), {}, {}, own}})),
                             {"P", "", pool}});
  const geometry::Region& water = one.site.find("P")->footprint;
  everywhere(one, "A", [&](double x, double y, double z) {
    const double from_pool = 100 - lip - fall * distance(water, x, y);
    const double from_edge = height - own * (30 - y);  // edge 2 runs along y = 30
    ASSERT_NEAR(z, std::max(from_pool, from_edge), 3 * tenth_mm);
  });
  EXPECT_NEAR(one.finished("A").area(), one.site.find("A")->net.area().si(), 0.05);
}

INSTANTIATE_TEST_SUITE_P(Seeds, AwayFromAnything, testing::Range(20'261U, 20'269U));

TEST(Finish, AnEdgeMayFallAlongItself) {
  // From 100 at (0, 0) to 99.5 at (20, 0), and 2 % away from it.
  const Worked one = worked({paved("A", shape(box(0, 0, 20, 10)), edges({{"", 0, feet(100), feet(99.5), {}, 0.02}}))});
  everywhere(one, "A", [&](double x, double y, double z) { ASSERT_NEAR(z, 100 - 0.025 * x - 0.02 * y, 2e-5); });
}

TEST(Finish, ASourceUnderAnotherSurfaceIsAProblem) {
  // From y = 0 at 100 by 1 %: at y = 10 it is still 99.90. An edge there at 99.80 lies 0.10 ft = 1.2 in under it.
  const auto yard = [](double height) {
    return worked({paved("A", shape(box(0, 0, 20, 10)),
                         edges({{"", 0, feet(100), {}, {}, 0.01}, {"", 2, feet(height), {}, {}, 0.01}}))});
  };
  EXPECT_TRUE(yard(99.8).codes().contains("finish-under"));
  EXPECT_FALSE(yard(99.95).codes().contains("finish-under"));
}

TEST(Finish, AValleyBetweenTwoSourcesAsksForAnInlet) {
  // 2 % down from both long sides: they meet at y = 5, all 20 ft along.
  std::vector<plan::Element> yard{paved("A", shape(box(0, 0, 20, 10)),
                                        edges({{"", 0, feet(100), {}, {}, 0.02}, {"", 2, feet(100), {}, {}, 0.02}}))};
  const Worked dry = worked(yard);
  ASSERT_TRUE(dry.codes().contains("finish-valley")) << dry.said();
  EXPECT_NE(dry.said().find("20'"), std::string::npos) << dry.said();
  plan::DrainRun channel;
  channel.line = line({{0, 5}}, 20, 5);
  channel.what = "channel";
  channel.width = feet(0.4);
  yard.push_back({"C", "", channel});
  EXPECT_FALSE(worked(yard).codes().contains("finish-valley"));
}

TEST(Finish, LevelsAreJoinedByTriangles) {
  // A plane through three levels: z = 100 - 0.02 x - 0.01 y; the fourth corner lies past their hull, level.
  const std::vector<plan::Element> yard{
      paved("A", shape(box(0, 0, 10, 10)), by_levels()), level("a", 0, 0, 100, "finished", "A"),
      level("b", 10, 0, 99.8, "finished", "A"), level("c", 0, 10, 99.9, "finished", "A")};
  const Worked one = worked(yard);
  everywhere(one, "A", [&](double x, double y, double z) {
    if (x + y < 10) {
      ASSERT_NEAR(z, 100 - 0.02 * x - 0.01 * y, 2e-5);
    }
  });
  expect_whole(one, "A");
  EXPECT_TRUE(one.codes().contains("finish-past-levels"));
}

TEST(Finish, FourCornersOutOfOnePlaneAreToldPastTheLimit) {
  // The limit is 3/8 in: 0.03125 ft. The fourth corner of z = 100 - 0.02 x would be at 99.80.
  const auto yard = [](double fourth) {
    return worked({paved("A", shape(box(0, 0, 10, 10)), by_levels()), level("a", 0, 0, 100, "finished", "A"),
                   level("b", 10, 0, 99.8, "finished", "A"), level("c", 10, 10, fourth, "finished", "A"),
                   level("d", 0, 10, 100, "finished", "A")});
  };
  EXPECT_FALSE(yard(99.8 + 0.031).codes().contains("finish-twist"));
  EXPECT_TRUE(yard(99.8 + 0.0315).codes().contains("finish-twist"));
}

TEST(Finish, WhatIsMissingIsSaidAndTheRestStands) {
  plan::Finish no_line;
  no_line.way = plan::Finish::Way::two_falls;
  plan::Finish no_height = plane(0, 0, 100, 0.02, 0);
  no_height.height.reset();
  const Worked one =
      worked({paved("A", shape(box(0, 0, 10, 10)), no_line), paved("B", shape(box(20, 0, 30, 10)), no_height),
              paved("C", shape(box(40, 0, 50, 10)), edges({{"X", {}, {}, {}, {}, 0.02}})),
              paved("D", shape(box(60, 0, 70, 10)), by_levels()),
              paved("E", shape(box(80, 0, 90, 10)), plane(80, 0, 100, 0.02, 0))});
  EXPECT_EQ(one.codes(), (std::set<std::string>{"finish-from", "finish-height", "finish-levels", "finish-line"}));
  EXPECT_EQ(one.terrain.finished.size(), 1U);
}

TEST(Finish, MovedByWholeStepsItIsTheSameToTheBit) {
  const auto made = [](double by) {
    std::vector<plan::Element> yard{
        paved("A", shape(box(by, by, by + 40, by + 30)), edges({{"P", {}, {}, {}, {}, 0.02}})),
        pool_in_feet(by + 20, by + 15, 8)};
    return worked(yard);
  };
  EXPECT_EQ(made(0).finished("A").facets(), made(1000).finished("A").facets());
}

}  // namespace
