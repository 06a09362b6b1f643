#include "takeoff/setting_out/setting_out.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "takeoff/ground/yard.h"
#include "takeoff/setting_out/tapes.h"

namespace {

using geometry::Point;
using takeoff::setting_out::Diagonal;
using takeoff::setting_out::Mark;
using takeoff::setting_out::Offset;
using takeoff::setting_out::SettingOut;
using takeoff::setting_out::Stake;
using units::Length;
using yard::at;

constexpr double foot = units::metres_per_foot;
Point ft(long x, long y) { return at(12 * x, 12 * y); }

plan::Element base_line(Point from, Point to, std::string id = "BL") {
  return {std::move(id), "", plan::BaseLine{from, to, {}}};
}

SettingOut set_out(const plan::Job& job, const takeoff::levels::Terrain& terrain = {}) {
  const plan::Site site = plan::site(job);
  return takeoff::setting_out::setting_out(job, site, takeoff::ground::bodies(job, site), terrain);
}

const Mark& mark(const SettingOut& out, const std::string& of, const std::string& what) {
  static const Mark none;
  const auto found = std::ranges::find_if(out.marks, [&](const Mark& one) { return one.of == of && one.what == what; });
  if (found != out.marks.end()) return *found;
  ADD_FAILURE() << "no " << what << " of " << of;
  return none;
}

bool said(const SettingOut& out, const std::string& code, const std::string& of) {
  return std::ranges::any_of(out.problems, [&](const problem::Problem& one) {
    return one.code == code && one.place.element == of && one.severity == problem::Severity::notice;
  });
}

plan::Element paved_feet(std::string id, std::vector<std::pair<Point, double>> corners) {
  geometry::Ring ring;
  for (const auto& [point, bulge] : corners) ring.push_back({point, bulge, {}});
  return yard::paved(std::move(id), std::move(ring), "dense");
}

}  // namespace

// A 16 x 12 ft patio, 12 ft out from a 40 ft base line and 12 ft along it: its first corner ties 12 and 12 out, sqrt
// 288, and sqrt(28 x 28 + 12 x 12) = sqrt 928; right of it the same patio has the same ties.
TEST(SettingOut, marksOfARectangle) {
  const auto patio = [](long side) {
    return yard::job({base_line(ft(0, 0), ft(40, 0)), paved_feet("A", {{ft(12, side > 0 ? 12 : -24), 0},
                                                                       {ft(28, side > 0 ? 12 : -24), 0},
                                                                       {ft(28, side > 0 ? 24 : -12), 0},
                                                                       {ft(12, side > 0 ? 24 : -12), 0}})});
  };
  const SettingOut left = set_out(patio(1));
  EXPECT_EQ(left.base_line, "BL");
  ASSERT_EQ(left.marks.size(), 4u);
  const Mark& first = mark(left, "A", "corner 1");
  EXPECT_NEAR(first.along, 12 * foot, 1e-9);
  EXPECT_NEAR(first.out, 12 * foot, 1e-9);
  EXPECT_NEAR(first.tie_from, std::sqrt(288.0) * foot, 1e-9);
  EXPECT_NEAR(first.tie_to, std::sqrt(928.0) * foot, 1e-9);
  EXPECT_EQ(first.side, "left of the base line");
  EXPECT_NEAR(first.check, 12 * foot, 1e-9);  // to corner 4
  EXPECT_NEAR(mark(left, "A", "corner 2").check, 16 * foot, 1e-9);
  const Mark& mirrored = mark(set_out(patio(-1)), "A", "corner 4");
  EXPECT_NEAR(mirrored.tie_from, first.tie_from, 1e-9);
  EXPECT_NEAR(mirrored.tie_to, first.tie_to, 1e-9);
  EXPECT_EQ(mirrored.side, "right of it");
  EXPECT_TRUE(left.problems.empty());
}

// 12 x 16 ft has diagonals of 20 ft. Moved 3/16 in out of square it is still set out as one; 3/8 in is not.
TEST(SettingOut, diagonals) {
  const auto of = [](long sixteenths) {
    plan::Element area = yard::paved("A", yard::rectangle(0, 0, 192, 144), "dense");
    geometry::Ring& ring = std::get<plan::PavedArea>(area.kind).outline.front().edges;
    for (const std::size_t i : {2u, 3u}) ring[i].from.x += Length::inch_64ths(4 * sixteenths);
    return set_out(yard::job({area})).diagonals;
  };
  const auto square = of(0);
  ASSERT_EQ(square.size(), 2u);
  EXPECT_EQ(square[0].what, "corner 1 to corner 3");
  EXPECT_EQ(square[1].what, "corner 2 to corner 4");
  for (const Diagonal& one : square) {
    EXPECT_NEAR(one.length, 20 * foot, 1e-9);
    EXPECT_TRUE(one.rectangle);
  }
  EXPECT_TRUE(of(3).front().rectangle);
  const auto skew = of(6);
  EXPECT_FALSE(skew.front().rectangle);
  // 192 3/8 and 191 5/8 across, 144 up
  EXPECT_NEAR(skew[0].length, std::hypot(192.375, 144) * 0.0254, 1e-9);
  EXPECT_NEAR(skew[1].length, std::hypot(191.625, 144) * 0.0254, 1e-9);
}

TEST(SettingOut, onlyFourStraightSidesHaveDiagonals) {
  EXPECT_TRUE(set_out(yard::job({paved_feet("A", {{ft(0, 0), 0}, {ft(9, 0), 0}, {ft(0, 9), 0}})})).diagonals.empty());
  EXPECT_TRUE(set_out(yard::job({paved_feet("A", {{ft(0, 0), 0}, {ft(9, 0), 0.2}, {ft(9, 9), 0}, {ft(0, 9), 0}})}))
                  .diagonals.empty());
}

// A half circle of 5 ft radius on the right side of a square: from its chord, sqrt(25 - x x) with x from the middle: 3,
// 4, sqrt 21, sqrt 24, 5 at 1 to 5 ft. The arc turns left, so it lies right of its chord.
TEST(SettingOut, offsetsOfAHalfCircle) {
  const plan::Job job = yard::job({base_line(ft(0, -5), ft(20, -5)),
                                   paved_feet("A", {{ft(0, 0), 0}, {ft(10, 0), 1}, {ft(10, 10), 0}, {ft(0, 10), 0}})});
  const SettingOut out = set_out(job);
  ASSERT_EQ(out.offsets.size(), 9u);
  const double expected[] = {3, 4, std::sqrt(21.0), std::sqrt(24.0), 5, std::sqrt(24.0), std::sqrt(21.0), 4, 3};
  for (std::size_t i = 0; i < 9; ++i) {
    EXPECT_EQ(out.offsets[i].edge, 2);
    EXPECT_EQ(out.offsets[i].part, 0);
    EXPECT_NEAR(out.offsets[i].along, static_cast<double>(i + 1) * foot, 1e-9);
    EXPECT_NEAR(out.offsets[i].out, -expected[i] * foot, 1e-9);
    EXPECT_NEAR(out.offsets[i].chord, 10 * foot, 1e-9);
  }
  const Mark& centre = mark(out, "A", "centre of edge 2");
  EXPECT_EQ(centre.at, ft(10, 5));
  EXPECT_NEAR(*centre.radius, 5 * foot, 1e-9);
}

// A step of 4 ft on a 10 ft chord: 4, the middle at 5, and 8. A metric job takes 250 mm where nothing is typed.
TEST(SettingOut, theChordStepIsTheBaseLinesOrTheUnits) {
  plan::Element line = base_line(ft(0, -5), ft(20, -5));
  std::get<plan::BaseLine>(line.kind).chord_step = Length::feet(4);
  const plan::Element area = paved_feet("A", {{ft(0, 0), 0}, {ft(10, 0), 1}, {ft(10, 10), 0}, {ft(0, 10), 0}});
  const SettingOut typed = set_out(yard::job({line, area}));
  ASSERT_EQ(typed.offsets.size(), 3u);
  EXPECT_NEAR(typed.offsets[1].along, 5 * foot, 1e-9);
  std::get<plan::BaseLine>(line.kind).chord_step = Length::inches(61);  // 5 ft 1 in: an inch past the middle, left out
  const SettingOut middle = set_out(yard::job({line, area}));
  ASSERT_EQ(middle.offsets.size(), 1u);
  EXPECT_NEAR(middle.offsets[0].along, 5 * foot, 1e-9);
  plan::Job metric = yard::job({area});
  metric.heading.units = units::System::metric;
  EXPECT_NEAR(set_out(metric).offsets.front().along, 0.25, 1e-9);
}

TEST(SettingOut, withoutABaseLineTheRestStands) {
  const plan::Element area = yard::paved("A", yard::rectangle(0, 0, 192, 144), "dense");
  const SettingOut none = set_out(yard::job({area}));
  EXPECT_TRUE(said(none, "base-line-none", ""));
  EXPECT_TRUE(none.marks.empty());
  EXPECT_EQ(none.diagonals.size(), 2u);
  const SettingOut two = set_out(yard::job({area, base_line(ft(0, 0), ft(9, 0)), base_line(ft(0, 0), ft(0, 9), "B2")}));
  EXPECT_EQ(two.base_line, "BL");
  EXPECT_TRUE(said(two, "base-line-several", "B2"));
  const SettingOut flat =
      set_out(yard::job({area, base_line(ft(1, 1), ft(1, 1)), base_line(ft(0, 0), ft(0, 9), "B2")}));
  EXPECT_EQ(flat.base_line, "B2");
  EXPECT_TRUE(said(flat, "base-line-no-length", "BL"));
}

// At 6 in out, halfway along 40 ft, the tapes cross at 2 x atan(0.5 / 20) = 2.9 degrees; at an end of the base line the
// place is the end itself, and nothing has to cross.
TEST(SettingOut, poorCrossingsAreSaid) {
  const SettingOut out =
      set_out(yard::job({base_line(ft(0, 0), ft(40, 0)),
                         yard::paved("A", {{ft(0, 0), 0, {}}, {at(240, 6), 0, {}}, {ft(0, 30), 0, {}}}, "dense")}));
  EXPECT_TRUE(said(out, "ties-cross-poorly", "A"));
  EXPECT_FALSE(mark(out, "A", "corner 1").poor);
  EXPECT_EQ(mark(out, "A", "corner 1").side, "on it");
  EXPECT_TRUE(mark(out, "A", "corner 2").poor);
  EXPECT_FALSE(mark(out, "A", "corner 3").poor);
  EXPECT_FALSE(said(out, "ties-long", "A"));
  EXPECT_TRUE(said(set_out(yard::job({base_line(ft(0, 0), ft(40, 0)),
                                      yard::paved("A", yard::rectangle(1300, 240, 1500, 400), "dense")})),
                   "ties-long", "A"));
}

TEST(SettingOut, linesHaveOneCornerMoreThanEdgesAndWhatStandsAlreadyIsLeftOut) {
  plan::Wall wall;
  wall.line = {{{ft(0, 0), 0, {}}, {ft(10, 0), 0, {}}}, ft(10, 5), {}};
  wall.thickness = Length::feet(1);
  plan::Wall standing = wall;
  standing.existing = true;
  const SettingOut out = set_out(yard::job({base_line(ft(0, -9), ft(20, -9)),
                                            {"W", "", wall},
                                            {"old", "", standing},
                                            {"N", "", plan::Note{ft(1, 1), "x"}}}));
  EXPECT_EQ(out.marks.size(), 3u);
  EXPECT_EQ(mark(out, "W", "corner 3").at, ft(10, 5));
  EXPECT_NEAR(mark(out, "W", "corner 1").check, std::hypot(10, 5) * foot, 1e-9);
}

// Ground level at 10 m; finished 9.9 m. The dense build-up is 2 3/8 + 1 + 4 in = 7 3/8 in = 187.325 mm deep, so its
// formation is at 9.712675 m and the cut there 287.325 mm.
TEST(SettingOut, stakesHaveGroundFormationAndFinish) {
  const auto level = [](double height) {
    const geometry::Facet facet{{{-9, -9}, {9, -9}, {9, 9}, {-9, 9}}, {height, 0, 0}, false};
    return std::make_shared<const geometry::Surface>(Point{}, std::vector{facet});
  };
  takeoff::levels::Terrain terrain;
  terrain.existing = level(10);
  terrain.finished["A"] = level(9.9);
  const SettingOut out = set_out(yard::job({yard::paved("A", yard::rectangle(0, 0, 192, 144), "dense")}), terrain);
  ASSERT_EQ(out.stakes.size(), 4u);
  for (const Stake& stake : out.stakes) {
    EXPECT_NEAR(*stake.ground, 10, 1e-9);
    EXPECT_NEAR(*stake.finish, 9.9, 1e-9);
    EXPECT_NEAR(*stake.formation, 9.9 - 0.187325, 1e-9);
    EXPECT_FALSE(stake.guessed);
  }
  EXPECT_TRUE(set_out(yard::job({yard::paved("A", yard::rectangle(0, 0, 192, 144), "dense")})).stakes.empty());
}

namespace {

long drawn_inches(int reach) { return *rc::gen::inRange(-reach, reach + 1); }

// A ring round the origin, corners at growing angles, some edges curved; it need not be valid: then it is left out.
geometry::Ring drawn_ring() {
  const int corners = *rc::gen::inRange(3, 9);
  geometry::Ring ring;
  for (int i = 0; i < corners; ++i) {
    const double angle = 2 * std::numbers::pi * i / corners;
    const double out = *rc::gen::inRange(100, 400);
    const double bulge = *rc::gen::element(0.0, 0.0, 0.3, -0.2, 0.9, 1.5);
    ring.push_back({at(std::lround(out * std::cos(angle)), std::lround(out * std::sin(angle))), bulge, {}});
  }
  return ring;
}

}  // namespace

RC_GTEST_PROP(SettingOutProperties, everyMarkIsFoundAgainFromItsTiesAndSide, ()) {
  const Point from = at(drawn_inches(600), drawn_inches(600)), to = at(drawn_inches(600), drawn_inches(600));
  RC_PRE(geometry::length(to - from) > 40 * 8128);
  const SettingOut out = set_out(yard::job({base_line(from, to), yard::paved("A", drawn_ring(), "dense")}));
  RC_CLASSIFY(out.marks.empty(), "not a valid shape");
  std::optional<problem::Xy> before;
  for (const Mark& one : out.marks) {
    const auto found = takeoff::setting_out::two_tapes(xy(from), one.tie_from, xy(to), one.tie_to);
    RC_ASSERT(found.has_value());
    if (one.side == "on it") {
      before.reset();
      continue;
    }
    const problem::Xy here = (*found)[one.side == "left of the base line" ? 0 : 1];
    RC_ASSERT(std::hypot(here.x - xy(one.at).x, here.y - xy(one.at).y) < 1e-6);
    if (before) RC_ASSERT(std::abs(std::hypot(here.x - before->x, here.y - before->y) - one.check) < 2e-6);
    before = here;
  }
}

// Each offset is a place on the arc: as far from its centre as the arc's ends are; for whole and parted arcs.
RC_GTEST_PROP(SettingOutProperties, everyOffsetLiesOnItsCurve, ()) {
  const plan::Job job = yard::job({yard::paved("A", drawn_ring(), "dense")});
  const auto& ring = std::get<plan::PavedArea>(job.elements.front()->kind).outline.front().edges;
  for (const Offset& one : set_out(job).offsets) {
    const geometry::Curve arc = geometry::curve(ring, static_cast<std::size_t>(one.edge - 1));
    const problem::Xy a = xy(one.from), b = xy(one.to);
    const double ux = (b.x - a.x) / one.chord, uy = (b.y - a.y) / one.chord;
    const double x = a.x + one.along * ux - one.out * uy, y = a.y + one.along * uy + one.out * ux;
    const double cx = xy(arc.start).x + arc.centre().x / 320000, cy = xy(arc.start).y + arc.centre().y / 320000;
    // A part's ends are rounded to the grid: 3.1 um.
    RC_ASSERT(std::abs(std::hypot(x - cx, y - cy) - arc.radius() / 320000) < 2e-5);
    RC_ASSERT(one.along > 0);
    RC_ASSERT(one.along < one.chord);
    RC_ASSERT((one.out < 0) == (arc.bulge > 0));
  }
}

// Walking the same drawing from another corner gives the same places with the same ties.
RC_GTEST_PROP(SettingOutProperties, whereTheDrawingStartsChangesNoTie, ()) {
  geometry::Ring ring = drawn_ring();
  const auto ties = [](const geometry::Ring& of) {
    std::vector<std::tuple<Point, double, double>> all;
    for (const Mark& one :
         set_out(yard::job({base_line(at(-500, -500), at(500, -480)), yard::paved("A", of, "dense")})).marks)
      if (!one.radius) all.emplace_back(one.at, one.tie_from, one.tie_to);
    std::ranges::sort(all);
    return all;
  };
  const auto before = ties(ring);
  std::ranges::rotate(ring, ring.begin() + 1);
  RC_ASSERT(ties(ring) == before);
}
