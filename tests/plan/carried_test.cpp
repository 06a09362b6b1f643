// Moving, turning and mirroring whole elements; ids and copies.
#include "plan/edits.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cmath>
#include <numbers>

#include "small_jobs.h"

namespace {

using geometry::Point;
using geometry::Side;
using geometry::Vec;
using small::at;
using units::Angle;
using units::Length;

Vec inches(double x, double y) { return {x * Length::steps_per_inch, y * Length::steps_per_inch}; }

// A walk along y = 0 with everything that an area can carry.
plan::Element full_area() {
  plan::Element element = small::paved("A1", small::rectangle(0, 0, 120, 60));
  auto& area = std::get<plan::PavedArea>(element.kind);
  area.outline[0].edges[1].bulge = 0.5;
  area.laying = plan::Laying{"running", {}, at(6, 6), Angle::degrees(30), {}};
  area.edges = {{2, "none"}};
  plan::Finish finish;
  finish.way = plan::Finish::Way::two_falls;
  finish.at = at(10, 0);
  finish.direction = Angle::degrees(90);
  finish.fall = 0.02;
  finish.fall_right = 0.01;
  finish.height = Length::inches(7);
  finish.line = plan::DrawnLine{{{at(0, 30), 0, {}}}, at(120, 30), {}};
  area.finish = finish;
  return element;
}

plan::Element walled() {
  plan::Wall wall;
  wall.line = {{{at(0, 0), 0.25, {}}}, at(100, 0), {}};
  wall.behind = Side::left;
  return {"W1", "", wall};
}

const plan::PavedArea& area_of(const plan::Element& element) { return std::get<plan::PavedArea>(element.kind); }
double area_m2(const plan::Element& element) {
  double sum = 0;
  for (const plan::DrawnRing& ring : area_of(element).outline) sum += geometry::signed_area(ring.edges).si();
  return sum;
}

// Any polygon round a middle, corners in order of direction: simple by construction; arcs keep to a tenth of a chord.
plan::Element any_area() {
  const int count = *rc::gen::inRange(3, 9);
  geometry::Ring ring;
  for (int i = 0; i < count; ++i) {
    const double turn = 2 * std::numbers::pi * i / count;
    const double out = *rc::gen::inRange(800'000, 3'000'000);
    const Point corner = geometry::moved(at(0, 0), {out * std::cos(turn), out * std::sin(turn)});
    ring.push_back({corner, *rc::gen::inRange(-2, 3) / 10.0, {}});
  }
  plan::Element element = small::paved("A1", ring);
  auto& area = std::get<plan::PavedArea>(element.kind);
  area.laying = plan::Laying{"p", {}, at(*rc::gen::inRange(-90, 90), 3), Angle::degrees(*rc::gen::inRange(0, 360)), {}};
  return element;
}

Point any_point() { return at(*rc::gen::inRange(-999, 999), *rc::gen::inRange(-999, 999)); }

TEST(Carried, MovingTakesAllThatLiesOnThePlanAlong) {
  const plan::Element element = plan::moved(full_area(), inches(24, -12));
  const auto& area = area_of(element);
  EXPECT_EQ(area.outline[0].edges[2].from, at(144, 48));  // 120 + 24, 60 - 12
  EXPECT_EQ(area.outline[0].edges[1].bulge, 0.5);
  EXPECT_EQ(area.laying->start, at(30, -6));  // 6 + 24, 6 - 12
  EXPECT_EQ(area.laying->direction, Angle::degrees(30));
  EXPECT_EQ(area.finish->at, at(34, -12));
  EXPECT_EQ(area.finish->line->end, at(144, 18));  // 120 + 24, 30 - 12
  EXPECT_EQ(area.finish->height, Length::inches(7));
  EXPECT_EQ(area.finish->direction, Angle::degrees(90));
  EXPECT_EQ(area.edges, area_of(full_area()).edges);
}

TEST(Carried, EveryKindThatLiesSomewhereMoves) {
  const plan::DrawnLine line{{{at(0, 0), 0, {}}}, at(10, 0), {}};
  plan::SiteMark mark;
  mark.points = {at(0, 0), at(5, 5)};
  mark.line = line;
  plan::TapeBook tapes;
  tapes.known = {{"stake", at(1, 2)}};
  plan::SitePlan picture;
  picture.at = at(3, 4);
  picture.scale = plan::KnownLength{at(0, 0), at(10, 0), Length::feet(10)};
  plan::DrainRun drain;
  drain.line = line;
  plan::Dimension dimension;
  dimension.to = at(12, 0);
  plan::BaseLine base;
  base.to = at(9, 0);
  const std::vector<plan::Kind> kinds{mark, tapes,         picture,      drain,          dimension,
                                      base, plan::Level{}, plan::Note{}, plan::Feature{}};
  for (const plan::Kind& kind : kinds) {
    const plan::Element before{"X", "", kind};
    const plan::Element after = plan::moved(before, inches(7, 8));
    const auto was = plan::corners(before);
    const auto is = plan::corners(after);
    ASSERT_EQ(was.size(), is.size()) << plan::kind_name(kind);
    ASSERT_FALSE(was.empty()) << plan::kind_name(kind);
    for (std::size_t i = 0; i < was.size(); ++i) EXPECT_EQ(is[i].at, geometry::moved(was[i].at, inches(7, 8)));
  }
  const auto moved = plan::moved({"X", "", picture}, inches(7, 8));
  EXPECT_EQ(std::get<plan::SitePlan>(moved.kind).scale->to, at(17, 8));  // 10 + 7, 0 + 8
}

TEST(Carried, AQuarterTurnIsExact) {
  const plan::Element element = plan::turned(full_area(), at(0, 0), Angle::degrees(90));
  const auto& area = area_of(element);
  EXPECT_EQ(area.outline[0].edges[1].from, at(0, 120));    // (120, 0) -> (-0, 120)
  EXPECT_EQ(area.outline[0].edges[2].from, at(-60, 120));  // (120, 60) -> (-60, 120)
  EXPECT_EQ(area.laying->start, at(-6, 6));
  EXPECT_EQ(area.laying->direction, Angle::degrees(120));   // 30 + 90
  EXPECT_EQ(area.finish->direction, Angle::degrees(180));   // 90 + 90
  EXPECT_EQ(area.finish->line->edges[0].from, at(-30, 0));  // (0, 30)
  plan::Steps steps;
  steps.up = Angle::degrees(300);
  EXPECT_EQ(std::get<plan::Steps>(plan::turned({"S1", "", steps}, at(0, 0), Angle::degrees(90)).kind).up,
            Angle::degrees(30));  // 300 + 90 - 360
}

TEST(Carried, AThirtyDegreeTurnIsRoundedOnce) {
  // (100 in, 0) by 30 degrees: 812800 x cos 30 = 703905.4..., x sin 30 = 406400 steps.
  const auto turned = plan::turned(walled(), at(0, 0), Angle::degrees(30));
  EXPECT_EQ(std::get<plan::Wall>(turned.kind).line.end, (Point{Length::of_steps(703905), Length::of_steps(406400)}));
}

TEST(Carried, AMirrorChangesSidesOver) {
  const auto wall = plan::mirrored(walled(), at(50, 0), at(50, 10));
  ASSERT_TRUE(wall);
  const auto& line = std::get<plan::Wall>(wall->kind);
  EXPECT_EQ(line.line.edges[0].from, at(100, 0));
  EXPECT_EQ(line.line.end, at(0, 0));
  EXPECT_EQ(line.line.edges[0].bulge, -0.25);
  EXPECT_EQ(line.behind, Side::right);
  const auto area = plan::mirrored(full_area(), at(0, 0), at(10, 0));  // across the x axis
  ASSERT_TRUE(area);
  EXPECT_EQ(area_of(*area).outline[0].edges[2].from, at(120, -60));
  EXPECT_EQ(area_of(*area).laying->direction, Angle::degrees(330));  // 2 x 0 - 30
  EXPECT_EQ(area_of(*area).finish->direction, Angle::degrees(270));  // 2 x 0 - 90
  EXPECT_EQ(area_of(*area).finish->fall, 0.01);                      // left of the line is right now
  EXPECT_EQ(area_of(*area).finish->fall_right, 0.02);
  EXPECT_EQ(area_of(*area).edges, area_of(full_area()).edges);  // edges keep their numbers
}

TEST(Carried, AMirroredTapeBookFindsItsPointsOnTheOtherSide) {
  plan::TapeBook tapes;
  tapes.known = {{"a", at(0, 0)}, {"b", at(100, 0)}};
  tapes.rows.resize(1);
  tapes.rows[0].side = Side::left;
  const auto made = plan::mirrored({"TB1", "", tapes}, at(0, 0), at(10, 0));
  ASSERT_TRUE(made);
  EXPECT_EQ(std::get<plan::TapeBook>(made->kind).rows[0].side, Side::right);
}

TEST(Carried, WhatCannotBeMirroredSaysWhy) {
  const auto line = plan::mirrored(walled(), at(5, 5), at(5, 5));
  ASSERT_FALSE(line);
  EXPECT_EQ(line.error().code, "mirror-line");
  EXPECT_EQ(line.error().place.element, "W1");
  const auto picture = plan::mirrored({"plan1", "", plan::SitePlan{}}, at(0, 0), at(1, 0));
  ASSERT_FALSE(picture);
  EXPECT_EQ(picture.error().code, "mirror-site-plan");
}

TEST(Carried, ThereAndBackIsWhereItWas) {
  EXPECT_TRUE(rc::check("moved there and back, four quarter turns, mirrored twice", [] {
    const plan::Element element = any_area();
    const Vec by = any_point() - at(0, 0);
    RC_ASSERT(plan::moved(plan::moved(element, by), -by) == element);
    const Point about = any_point();
    plan::Element round = element;
    for (int i = 0; i < 4; ++i) round = plan::turned(round, about, Angle::degrees(90));
    RC_ASSERT(round == element);
    // Across lines along an axis or at 45 degrees nothing is rounded.
    const Vec along = *rc::gen::element(inches(9, 0), inches(0, 9), inches(9, 9), inches(9, -9));
    const Point b = geometry::moved(about, along);
    const auto once = plan::mirrored(element, about, b);
    RC_ASSERT(once.has_value());
    const auto twice = plan::mirrored(*once, about, b);
    for (std::size_t i = 0; i < area_of(element).outline[0].edges.size(); ++i) {
      const auto& was = area_of(element).outline[0].edges[i];
      const auto& is = area_of(*twice).outline[0].edges[i];
      RC_ASSERT(geometry::length(is.from - was.from) <= 2.0);  // the unit vector along the line is a rounded number
      RC_ASSERT(is.bulge == was.bulge);
    }
  }));
}

TEST(Carried, TheAreaIsKept) {
  EXPECT_TRUE(rc::check("moved: to the bit; turned and mirrored: within the rounding of corners", [] {
    const plan::Element element = any_area();
    const double whole = area_m2(element);
    RC_ASSERT(area_m2(plan::moved(element, any_point() - at(0, 0))) == whole);
    // A corner is off by at most 0.71 steps, so each edge sweeps at most its length x 0.71 steps; arcs of these bulges
    // change by less than their chord x 1 step more.
    const double steps = 2.0 / Length::steps_per_metre;
    const double bound = geometry::perimeter(area_of(element).outline[0].edges).si() * steps;
    const Point about = any_point();
    const auto turned = plan::turned(element, about, Angle::degrees(*rc::gen::inRange(-3600, 3600) / 10.0));
    RC_ASSERT(std::abs(area_m2(turned) - whole) <= bound);
    const Point other = any_point();
    RC_PRE(other != about);
    const auto mirrored = plan::mirrored(element, about, other);
    RC_ASSERT(std::abs(area_m2(*mirrored) + whole) <= bound);  // walked the other way round
  }));
}

TEST(FreeIds, TheLeastFreeNumber) {
  const plan::Job job = small::job({small::paved("A1", {}), small::paved("A3", {}), small::pool("P1", {})});
  EXPECT_EQ(plan::free_id(job, plan::PavedArea{}), "A2");
  EXPECT_EQ(plan::free_id(job, plan::Pool{}), "P2");
  EXPECT_EQ(plan::free_id(job, plan::Wall{}), "W1");
}

TEST(FreeIds, CopiesHaveTheirOwn) {
  const plan::Job job = small::job({full_area(), walled()});
  const auto [after, made] = plan::with_copies(job, {"A1", "nobody", "W1", "A1"}, inches(0, 100));
  EXPECT_EQ(made, (std::vector<plan::ElementId>{"A2", "W2", "A3"}));
  EXPECT_EQ(after.elements.size(), 5U);
  EXPECT_EQ(area_of(*after.find("A2")).outline[0].edges[0].from, at(0, 100));
  EXPECT_EQ(*after.find("A1"), full_area());
}

}  // namespace
