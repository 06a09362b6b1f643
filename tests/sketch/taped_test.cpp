#include "sketch/taped.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

#include "sketch/taped_net.h"
#include "sketch/taped_outline.h"

using geometry::Point;
using geometry::Side;
using plan::Taped;
using sketch::Measured;
using sketch::measured;
using sketch::net::Vec;
using units::Length;
using units::System;

namespace {

Point feet(double x, double y) {
  return {Length::of_steps(std::llround(x * 12 * 8128)), Length::of_steps(std::llround(y * 12 * 8128))};
}
Length feet(double x) { return feet(x, 0).x; }
// What an exact tape reads, to the step.
Length between(Point a, Point b) { return Length::of_steps(std::llround(length(b - a))); }

Taped tie(const std::string& point, const std::string& from, Length measure, Side side = Side::left) {
  return {point, Taped::Way::tie, from, {}, measure, {}, side, {}};
}
Taped offset(const std::string& point, const std::string& from, const std::string& to, Length at, Length out,
             Side side = Side::left) {
  return {point, Taped::Way::offset, from, to, at, out, side, {}};
}
const problem::Problem* said(const Measured& m, const std::string& code) {
  for (const problem::Problem& problem : m.problems)
    if (problem.code == code) return &problem;
  return nullptr;
}
double apart(Point a, Point b) { return length(b - a); }

}  // namespace

// --- two arcs

// Example of P. Bourke, "Intersection of two circles" (from memory): both crossings to six places.
TEST(TapedCrossing, PublishedExample) {
  const auto found = sketch::net::crossing({-0.1, -0.2}, 2.0, {2, 1}, 2.1);
  ASSERT_TRUE(found.at);
  EXPECT_NEAR((*found.at)[1].x, 1.696964, 5e-7);  // right of the line from the first to the second
  EXPECT_NEAR((*found.at)[1].y, -1.078021, 5e-7);
  EXPECT_NEAR((*found.at)[0].x, 0.055856, 5e-7);
  EXPECT_NEAR((*found.at)[0].y, 1.793918, 5e-7);
}

// A (0, 0), B (30, 0), 25 and 25: half of 30 is 15, and 25^2 - 15^2 = 400 = 20^2.
TEST(Taped, IsoscelesOnBothSides) {
  plan::TapeBook book{{{"A", feet(0, 0)}, {"B", feet(30, 0)}},
                      {tie("L", "A", feet(25)), tie("L", "B", feet(25)), tie("R", "A", feet(25), Side::right),
                       tie("R", "B", feet(25), Side::right)}};
  const Measured m = measured(book, System::us);
  ASSERT_TRUE(m.find("L"));
  ASSERT_TRUE(m.find("R"));
  EXPECT_EQ(*m.find("L"), feet(15, 20));
  EXPECT_EQ(*m.find("R"), feet(15, -20));
  EXPECT_EQ(m.spare, 0);
  EXPECT_TRUE(said(m, "tape-unchecked"));
}

// A (0, 0), B (40, 0), C (12, 16): 12^2 + 16^2 = 400 = 20^2, 28^2 + 16^2 = 1040. Tied from B first, the same point lies
// right of the line from B to A.
TEST(Taped, SideIsOfTheOrderOfTies) {
  const plan::TapeBook book{
      {{"A", feet(0, 0)}, {"B", feet(40, 0)}},
      {tie("C", "B", feet(std::sqrt(1040.0)), Side::right), tie("C", "A", feet(20), Side::right)}};
  const Measured m = measured(book, System::us);
  ASSERT_TRUE(m.find("C"));
  EXPECT_LE(apart(*m.find("C"), feet(12, 16)), 1.0);
}

// Along the wall 12 ft, 5 ft out to the right of it: A (10, 10), B (10, 40), so right is east.
TEST(Taped, OffsetAndRunningMeasure) {
  const plan::TapeBook book{
      {{"A", feet(10, 10)}, {"B", feet(10, 40)}},
      {offset("P", "A", "B", feet(12), feet(5), Side::right), offset("Q", "A", "B", feet(20), {})}};
  const Measured m = measured(book, System::us);
  ASSERT_TRUE(m.find("P") && m.find("Q"));
  EXPECT_EQ(*m.find("P"), feet(15, 22));
  EXPECT_EQ(*m.find("Q"), feet(10, 30));
}

// Rows stand in any order: D hangs on C, which comes later.
TEST(Taped, RowsInAnyOrder) {
  const Point a = feet(0, 0), b = feet(40, 0), c = feet(12, 16), d = feet(30, 25);
  const plan::TapeBook book{{{"A", a}, {"B", b}},
                            {offset("E", "C", "D", feet(1), feet(2)), tie("D", "C", between(c, d)),
                             tie("D", "B", between(b, d)), tie("C", "A", feet(20)), tie("C", "B", between(b, c))}};
  const Measured m = measured(book, System::us);
  ASSERT_TRUE(m.find("C") && m.find("D") && m.find("E"));
  EXPECT_LE(apart(*m.find("D"), d), 2.0);  // its two tapes and the point C were rounded to the step
  EXPECT_TRUE(m.missing.empty());
}

// --- which tape is off

namespace {

// A house's two corners and three points of a deck, all tied to all: 10 distances less the wall itself, for 6 unknowns.
plan::TapeBook braced() {
  const std::vector<std::pair<std::string, Point>> all = {
      {"A", feet(0, 0)}, {"B", feet(40, 0)}, {"C", feet(38, 26)}, {"D", feet(3, 24)}, {"E", feet(19, 35)}};
  plan::TapeBook book{{{"A", all[0].second}, {"B", all[1].second}}, {}};
  for (std::size_t i = 2; i < all.size(); ++i)
    for (std::size_t j = 0; j < i; ++j)
      book.rows.push_back(tie(all[i].first, all[j].first, between(all[i].second, all[j].second)));
  return book;
}

}  // namespace

TEST(Taped, MisreadTapeIsFoundAgain) {
  for (std::size_t bad = 0; bad < braced().rows.size(); ++bad) {
    plan::TapeBook book = braced();
    book.rows[bad].measure += Length::inch_64ths(3 * 64 + 16);  // 3 1/4 in too long
    const Measured m = measured(book, System::us);
    EXPECT_EQ(m.spare, 9 - 6);
    ASSERT_TRUE(m.suspect) << bad;
    EXPECT_EQ(m.suspect->rows, std::vector<std::size_t>{bad});
    // The other tapes are exact but for their rounding, so what they give is what it should have read.
    EXPECT_NEAR(static_cast<double>(m.suspect->off.steps()), 3.25 * 8128, 12.0);
    ASSERT_TRUE(said(m, "tape-off"));
    EXPECT_EQ(said(m, "tape-off")->text, "tape " + std::to_string(bad + 1) + " (" + book.rows[bad].point + " from " +
                                             book.rows[bad].from + ") is off by 3 1/4\"");

    book.rows[bad].struck = "hook slipped";
    const Measured struck = measured(book, System::us);
    EXPECT_FALSE(struck.suspect);
    EXPECT_NEAR(static_cast<double>(struck.rows[bad].residual->steps()), 3.25 * 8128, 12.0);
    EXPECT_FALSE(struck.rows[bad].over);
    EXPECT_EQ(struck.worst_first.back(), bad);  // struck rows come after those that count
    EXPECT_LT(struck.sum_of_squares, 1e-9);
  }
}

// One reading more than needed: any of the five tapes could be the one, and none is named alone.
TEST(Taped, OneSpareTapeDoesNotTellWhich) {
  plan::TapeBook book = braced();
  std::erase_if(book.rows, [](const Taped& row) { return row.point == "E"; });
  book.rows[0].measure += Length::inches(4);
  const Measured m = measured(book, System::us);
  EXPECT_EQ(m.spare, 1);
  ASSERT_TRUE(m.suspect);
  EXPECT_EQ(m.suspect->rows.size(), 5U);
  ASSERT_TRUE(said(m, "tape-off"));
  EXPECT_NE(said(m, "tape-off")->text.find("tapes 1, 2, 3, 4 and 5 do not agree"), std::string::npos);
}

// A third tie from E (15, 0) on the wall to L (15, 20) reads 20 ft: 20 ft 0 in is exact; 20 ft 0 1/2 in is within what
// is allowed, 20 ft 1 in is not (1:500 of 20 ft is 0.48 in, so 1/2 in holds). Least squares leaves part of an error in
// the row: so the row is struck, where its residual is the whole of it, then looked at when it counts.
TEST(Taped, ResidualIsReadLessComputed) {
  plan::TapeBook book{{{"A", feet(0, 0)}, {"B", feet(30, 0)}, {"E", feet(15, 0)}},
                      {tie("L", "A", feet(25)), tie("L", "B", feet(25)), tie("L", "E", feet(20) + Length::inches(1))}};
  book.rows[2].struck = "to look";
  EXPECT_EQ(measured(book, System::us).rows[2].residual, Length::inches(1));
  // By symmetry only y moves. Slopes in y: 20/25, 20/25, 1. dy = 1 x 1 / (0.64 + 0.64 + 1) = 0.4386 in; the third
  // tape's residual is 1 - 0.4386 = 0.5614 in, of the others -0.8 x 0.4386 = -0.3509 in (to a thousandth for the bend
  // of arcs).
  book.rows[2].struck.clear();
  const Measured m = measured(book, System::us);
  EXPECT_NEAR(m.rows[2].residual->inches(), 0.5614, 0.001);
  EXPECT_NEAR(m.rows[0].residual->inches(), -0.3509, 0.001);
  EXPECT_TRUE(m.rows[2].over);
  EXPECT_FALSE(m.rows[0].over);
  EXPECT_EQ(m.worst_first.front(), 2U);
  EXPECT_TRUE(m.rows[0].checked);
}

// --- what is missing

TEST(Taped, PointThatWantsMoreIsNamed) {
  const plan::TapeBook book{
      {{"A", feet(0, 0)}, {"B", feet(30, 0)}},
      {tie("C", "A", feet(25)), tie("D", "C", feet(5)), tie("G", "A", feet(25)), tie("G", "B", feet(25))}};
  const Measured m = measured(book, System::us);
  EXPECT_EQ(m.missing, (std::vector<std::string>{"C", "D"}));
  EXPECT_TRUE(m.find("G"));
  std::vector<std::string> texts;
  for (const problem::Problem& problem : m.problems)
    if (problem.code == "tape-point-wanting") texts.push_back(problem.text);
  EXPECT_EQ(texts, (std::vector<std::string>{"C has one tie, from A, and waits for D, not found yet",
                                             "D waits for C, not found yet"}));
  EXPECT_FALSE(m.rows[0].residual);
}

// 30 ft apart, 14 ft and 15 ft: 1 ft short. 4 ft round a point within 40 ft of the other: 40 - 30 - 4 = 6 ft inside.
TEST(Taped, ArcsThatDoNotMeet) {
  const plan::TapeBook book{
      {{"A", feet(0, 0)}, {"B", feet(30, 0)}},
      {tie("C", "A", feet(14)), tie("C", "B", feet(15)), tie("D", "A", feet(40)), tie("D", "B", feet(4))}};
  const Measured m = measured(book, System::us);
  std::vector<std::string> texts;
  for (const problem::Problem& problem : m.problems)
    if (problem.code == "tape-arcs-apart") texts.push_back(problem.text);
  ASSERT_EQ(texts.size(), 2U);
  EXPECT_EQ(texts[0], "two arcs for C do not meet: tape 1 from A and tape 2 from B end 1' 0\" short of each other");
  EXPECT_EQ(
      texts[1],
      "two arcs for D do not meet: the arc of tape 4 from B lies inside that of tape 3 from A, 6' 0\" away from it");
}

// A stake on the string between two others, each tape 1/8 in short: 30 ft less 1/4 in. That is within reading, not a
// gap: the point lies on the string, in the middle.
TEST(Taped, ArcsThatOnlyJustMissTouch) {
  const Length half = feet(15) - Length::inch_64ths(8);
  const plan::TapeBook book{{{"A", feet(0, 0)}, {"B", feet(30, 0)}}, {tie("C", "A", half), tie("C", "B", half)}};
  const Measured m = measured(book, System::us);
  ASSERT_TRUE(m.find("C"));
  EXPECT_LE(apart(*m.find("C"), feet(15, 0)), 8128.0 / 4);
  EXPECT_TRUE(said(m, "tape-poor-crossing"));
}

// The angle at the point: tapes of 25 ft from 6 ft apart cross at 2 asin(3/25) = 13.79 degrees; from 30 ft apart at
// 2 asin(15/25) = 73.7 degrees.
TEST(Taped, PoorCrossingIsANotice) {
  plan::TapeBook book{{{"A", feet(0, 0)}, {"B", feet(6, 0)}}, {tie("C", "A", feet(25)), tie("C", "B", feet(25))}};
  const Measured near = measured(book, System::us);
  ASSERT_TRUE(said(near, "tape-poor-crossing"));
  EXPECT_NE(said(near, "tape-poor-crossing")->text.find("at 14°, under 30°"), std::string::npos);
  EXPECT_EQ(said(near, "tape-poor-crossing")->severity, problem::Severity::notice);
  book.known[1].at = feet(30, 0);
  EXPECT_FALSE(said(measured(book, System::us), "tape-poor-crossing"));
}

TEST(Taped, FaultOfOneRowStopsNoOther) {
  plan::TapeBook book{{{"A", feet(0, 0)}, {"B", feet(30, 0)}},
                      {tie("C", "A", feet(25)), tie("", "A", feet(5)), tie("C", "C", feet(5)), tie("X", "A", {}),
                       offset("C", "A", "A", feet(1), feet(1)), offset("C", "A", "", feet(1), feet(1)),
                       offset("C", "A", "B", feet(1), -feet(1)), tie("C", "B", feet(25))}};
  const Measured m = measured(book, System::us);
  ASSERT_TRUE(m.find("C"));
  EXPECT_EQ(*m.find("C"), feet(15, 20));
  EXPECT_EQ(std::ranges::count(m.problems, std::string("tape-row"), &problem::Problem::code), 6);
  EXPECT_TRUE(said(measured({{}, {tie("C", "A", feet(25))}}, System::us), "tape-no-known"));
}

// The side named is the wrong one: the third tape, from a stake off the line, says so.
TEST(Taped, WrongSideIsSeenByTheThirdTie) {
  const plan::TapeBook book{{{"A", feet(0, 0)}, {"B", feet(30, 0)}, {"E", feet(15, -10)}},
                            {tie("C", "A", feet(25), Side::right), tie("C", "B", feet(25), Side::right),
                             tie("C", "E", feet(30))}};  // (15, 20) is 30 ft from (15, -10), (15, -20) 10 ft
  EXPECT_TRUE(said(measured(book, System::us), "tape-other-side"));
}

// --- properties

namespace {

// Two stakes and up to four points all round, each tied to two or three placed before it, sometimes an offset; tapes as
// exact as the grid, and moved by up to `error` steps.
struct Random {
  plan::TapeBook book;
  std::vector<Point> truth;  // known ones first
};
rc::Gen<Random> random_book(int error, int most_ties = 4) {
  return rc::gen::exec([error, most_ties] {
    Random made;
    const int points = *rc::gen::inRange(1, 5);
    const int span = *rc::gen::inRange(1500, 4000);
    made.truth = {feet(0, 0), feet(span / 100.0, 0)};
    made.book.known = {{"K0", made.truth[0]}, {"K1", made.truth[1]}};
    const auto read = [error](Length exact) {
      return exact + Length::of_steps(error > 0 ? *rc::gen::inRange(-error, error + 1) : 0);
    };
    const auto name = [](std::size_t i) { return (i < 2 ? "K" : "P") + std::to_string(i < 2 ? i : i - 2); };
    for (int i = 0; i < points; ++i) {
      const std::size_t n = made.truth.size();
      // Over against the stakes, 8 to 25 ft out: the tapes from both cross at 30 degrees or more, at the least at
      // (0, 25) over stakes 15 ft apart: atan(15 / 25) = 31 degrees; at the most 2 atan(20 / 8) = 136, so 44 folded.
      const double out = *rc::gen::inRange(800, 2500) / 100.0 * (*rc::gen::inRange(0, 2) == 0 ? 1 : -1);
      made.truth.push_back(feet(*rc::gen::inRange(0, span + 1) / 100.0, out));
      const Point at = made.truth.back();
      const Side side = (at - made.truth[0]).y > 0 ? Side::left : Side::right;
      const std::size_t ties = std::min<std::size_t>(n, static_cast<std::size_t>(*rc::gen::inRange(2, most_ties + 1)));
      for (std::size_t from = 0; from < ties; ++from)
        made.book.rows.push_back(tie(name(n), name(from), read(between(at, made.truth[from])), side));
      if (*rc::gen::inRange(0, 3) == 0) {
        const Vec v = at - made.truth[0];
        made.book.rows.push_back(offset(name(n), "K0", "K1", read(Length::of_steps(std::llround(v.x))),
                                        read(Length::of_steps(std::llround(std::abs(v.y)))), side));
      }
    }
    std::erase_if(made.book.rows,
                  [](const Taped& row) { return row.measure <= Length() && row.way == Taped::Way::tie; });
    return made;
  });
}

double sum_at(const plan::TapeBook& book, const Measured& m, std::size_t moved, Vec by) {
  sketch::net::Net net;
  std::vector<problem::Problem> problems;
  net = sketch::net::made(book, problems);
  double sum = 0;
  for (sketch::net::Spot& spot : net.spots)
    if (const Point* at = m.find(spot.name)) {
      spot.placed = true;
      spot.at = (1 / Length::steps_per_metre) * (*at - net.origin);
    }
  net.spots[moved].at = net.spots[moved].at + by;
  for (const auto& row : net.rows) {
    if (!row.counts || !net.usable(row)) continue;
    const auto v = net.spots[row.point].at - net.spots[row.from].at;
    if (row.tie) {
      sum += std::pow(row.measure - std::hypot(v.x, v.y), 2);
      continue;
    }
    const auto l = net.spots[row.to].at - net.spots[row.from].at;
    const double d = std::hypot(l.x, l.y);
    sum +=
        std::pow(row.measure - (v.x * l.x + v.y * l.y) / d, 2) + std::pow(row.offset - (l.x * v.y - l.y * v.x) / d, 2);
  }
  return sum;
}

}  // namespace

// Exact tapes give the points back. Readings are rounded to the step, so each of the (at most) 4 of a point is off by
// at most 1/2: together sqrt(4) / 2 = 1. Two tapes that cross at 30 degrees hold a point with sqrt(1 - cos 30) = 0.366
// at the least, so it lies within 1 / 0.366 = 2.74 steps, and sqrt(2) / 2 more for its own rounding.
RC_GTEST_PROP(TapedProperty, ExactTapesGiveThePointsBack, ()) {
  const Random random = *random_book(0, 2);
  const Measured m = measured(random.book, System::us);
  RC_ASSERT(m.missing.empty());
  for (std::size_t i = 2; i < random.truth.size(); ++i)
    RC_ASSERT(apart(*m.find("P" + std::to_string(i - 2)), random.truth[i]) <= 2.74 + 0.71);
}

// In a whole net the sum of squares is at most that of the true points: 1/4 a reading, of at most 4 x (4 + 2) readings.
// So no residual is over sqrt(6) = 2.45 steps, and 1/2 for showing it in whole steps.
RC_GTEST_PROP(TapedProperty, ExactTapesAgree, ()) {
  const Random random = *random_book(0);
  const Measured m = measured(random.book, System::us);
  RC_ASSERT(m.missing.empty());
  for (const sketch::RowFit& fit : m.rows) RC_ASSERT(fit.size() <= Length::of_steps(2));
  RC_ASSERT(!m.suspect);
}

RC_GTEST_PROP(TapedProperty, MovedByWholeSteps, ()) {
  Random random = *random_book(20000);
  const Measured here = measured(random.book, System::us);
  const Vec by{static_cast<double>(*rc::gen::inRange(-900000000, 900000000)),
               static_cast<double>(*rc::gen::inRange(-900000000, 900000000))};
  for (plan::KnownPoint& known : random.book.known) known.at = geometry::moved(known.at, by);
  const Measured there = measured(random.book, System::us);
  RC_ASSERT(here.points.size() == there.points.size());
  for (std::size_t i = 0; i < here.points.size(); ++i)
    RC_ASSERT(geometry::moved(here.points[i].at, by) == there.points[i].at);
  for (std::size_t i = 0; i < here.rows.size(); ++i) RC_ASSERT(here.rows[i].residual == there.rows[i].residual);
  RC_ASSERT(here.sum_of_squares == there.sum_of_squares);
}

// A slow, obvious search: no point can be moved, in 16 directions by 2 mm down to 0.02 mm, so that the sum of squares
// goes down by more than the rounding of points to the grid makes up.
RC_GTEST_PROP(TapedProperty, NoMoveMakesTheSumSmaller, ()) {
  const Random random = *random_book(20000);  // up to 62 mm of error
  const Measured m = measured(random.book, System::us);
  RC_PRE(m.missing.empty());
  const double here = sum_at(random.book, m, 0, {});
  RC_ASSERT(std::abs(here - m.sum_of_squares) <= 1e-9 + 1e-4 * m.sum_of_squares);
  for (std::size_t spot = 2; spot < random.truth.size(); ++spot)
    for (double far = 2e-3; far > 1.9e-5; far /= 10)
      for (int i = 0; i < 16; ++i) {
        const double turn = i * 0.3926990817;
        RC_ASSERT(sum_at(random.book, m, spot, {far * std::cos(turn), far * std::sin(turn)}) > here - 1e-10);
      }
}

// The suspect is found by one formula over all rows; the slow way strikes each row in turn and measures again.
RC_GTEST_PROP(TapedProperty, SuspectIsTheBestToStrike, ()) {
  plan::TapeBook book = braced();
  for (Taped& row : book.rows) row.measure += Length::of_steps(*rc::gen::inRange(-1000, 1000));
  const auto bad = *rc::gen::inRange<std::size_t>(0, book.rows.size());
  book.rows[bad].measure += Length::inches(*rc::gen::inRange(6, 12));
  const Measured m = measured(book, System::us);
  RC_PRE(m.suspect.has_value());
  std::vector<double> sums;
  for (std::size_t i = 0; i < book.rows.size(); ++i) {
    plan::TapeBook without = book;
    without.rows[i].struck = "in turn";
    sums.push_back(measured(without, System::us).sum_of_squares);
  }
  // One formula takes the arcs for straight: the named row's gain may lack up to 2 % of the best one's.
  const double best = *std::ranges::min_element(sums);
  RC_ASSERT(m.sum_of_squares - sums[m.suspect->rows.front()] >= 0.98 * (m.sum_of_squares - best));
}

// --- outlines through points

TEST(TapedOutline, NamesAreRead) {
  using sketch::Through;
  EXPECT_EQ(sketch::read_through("A B  (C) D"),
            (std::vector<Through>{{"A", false}, {"B", false}, {"C", true}, {"D", false}}));
  EXPECT_EQ(sketch::read_through("house corner, ( tree ) ,B,"),
            (std::vector<Through>{{"house corner", false}, {"tree", true}, {"B", false}}));
  EXPECT_TRUE(sketch::read_through("  ").empty());
}

TEST(TapedOutline, StraightArcAndFreeform) {
  Measured m;
  m.points = {{"A", feet(0, 0)}, {"B", feet(20, 0)}, {"C", feet(30, 10)}, {"D", feet(20, 20)}, {"E", feet(0, 20)}};
  // B to D through C: a half circle of radius 10 about (20, 10), counter-clockwise: bulge tan(180 / 4) = 1.
  const auto names = sketch::read_through("A B (C) D E");
  const auto ring = sketch::ring_through(m, names);
  ASSERT_TRUE(ring);
  ASSERT_EQ(ring->edges.size(), 4U);
  EXPECT_NEAR(ring->edges[1].bulge, 1, 1e-12);
  // 20 x 20 ft and half a circle: 400 + 50 pi ft2.
  EXPECT_NEAR(geometry::signed_area(ring->edges).si(), (400 + 50 * 3.14159265358979) * 0.3048 * 0.3048, 1e-6);
  // Walked the other way it is turned over, so that ground lies to the left.
  const auto back = sketch::ring_through(m, sketch::read_through("E D (C) B A"));
  ASSERT_TRUE(back);
  EXPECT_NEAR(geometry::signed_area(back->edges).si(), geometry::signed_area(ring->edges).si(), 1e-9);

  const auto line = sketch::line_through(m, names);
  ASSERT_TRUE(line);
  EXPECT_EQ(line->edges.size(), 3U);
  EXPECT_EQ(line->end, feet(0, 20));
  const auto smooth = sketch::ring_through(m, names, true);
  ASSERT_TRUE(smooth);
  EXPECT_EQ(smooth->through.size(), 5U);
  EXPECT_EQ(sketch::line_through(m, names, true)->through.size(), 5U);
}

TEST(TapedOutline, WhatCannotBeDrawnIsSaid) {
  Measured m;
  m.points = {{"A", feet(0, 0)}, {"B", feet(20, 0)}, {"C", feet(30, 10)}, {"D", feet(20, 20)}};
  const auto code = [&](const std::string& names) {
    const auto ring = sketch::ring_through(m, sketch::read_through(names));
    return ring ? std::string("none") : ring.error().code;
  };
  EXPECT_EQ(code("A B X"), "tape-point-unknown");
  EXPECT_EQ(code("A B"), "tape-too-few");
  EXPECT_EQ(code("A B B C"), "tape-point-twice");
  EXPECT_EQ(code("A (B) (C) D"), "tape-arc");
  EXPECT_EQ(code("A B C A"), "none");  // the first named again closes it
  EXPECT_FALSE(sketch::line_through(m, sketch::read_through("(A) B C")));
  EXPECT_FALSE(sketch::line_through(m, sketch::read_through("")));
}
