#include <rapidcheck.h>

#include "takeoff/walls/kit.h"
#include "takeoff/walls/saw.h"

namespace {

using namespace kit;  // NOLINT: the words of these tests
using takeoff::Cut;
using takeoff::Share;
using takeoff::walls::Passes;
using takeoff::walls::passes;

// Sizes as in the starter catalogue; the second pass of the table saw is an item's own word.
WallBook saws() {
  WallBook made = book();
  const auto saw = [&](const char* id, double blade, double depth, double twice) {
    catalogue::Item& item = made.add(id, "saw");
    if (blade > 0) item.details["blade_diameter_mm"] = std::to_string(blade * 25.4);
    if (depth > 0) item.details["cut_depth_mm"] = std::to_string(depth * 25.4);
    if (twice > 0) item.details["two_pass_depth_mm"] = std::to_string(twice * 25.4);
  };
  saw("hand-14", 14, 5, 0);
  saw("table-14", 14, 4.75, 0);
  saw("table-20", 20, 7.75, 8);
  saw("splitter", 0, 0, 0);
  saw("boast", 14, 20, 40);
  return made;
}

Cut cut(double length_in, double thickness_in, int count) {
  Cut made;
  made.of = "RW";
  made.item = "wb-8x18";
  made.count = count;
  made.length = length_in * in;
  made.thickness = thickness_in * in;
  return made;
}

Share listed(const std::string& saw, const std::vector<Cut>& cuts) {
  plan::Job made = job(saws(), {});
  made.choices.saw = saw;
  return takeoff::walls::saw_list(made, cuts);
}

TEST(Saw, PassesByDepth) {
  const WallBook made = saws();
  const auto of = [&](const char* id, double inches_thick) { return passes(*made.all->item(id), inches_thick * in); };
  EXPECT_EQ(of("table-14", 3), Passes::one);
  EXPECT_EQ(of("table-14", 4.75), Passes::one);
  EXPECT_EQ(of("table-14", 6), Passes::both_sides);  // up to 9 1/2
  EXPECT_EQ(of("table-14", 9.5), Passes::both_sides);
  EXPECT_EQ(of("table-14", 9.75), Passes::too_thick);
  EXPECT_EQ(of("hand-14", 8), Passes::both_sides);
  EXPECT_EQ(of("table-20", 7.75), Passes::one);
  EXPECT_EQ(of("table-20", 8), Passes::two);
  EXPECT_EQ(of("table-20", 8.5), Passes::both_sides);
  EXPECT_EQ(of("splitter", 1), Passes::too_thick);
  EXPECT_EQ(of("boast", 7), Passes::one);  // a 14 in blade reaches 7 in at most, whatever its row says
  EXPECT_EQ(of("boast", 7.5), Passes::both_sides);
}

// 12 cuts of 12 in through 8 in: 12 ft; 6 of 13 in through 3 in: 6.5 ft. Twice through 8 in: the blade goes 30.5 ft.
TEST(Saw, MetresByThickness) {
  const Share share = listed("table-20", {cut(12, 8, 7), cut(13, 3, 6), cut(12, 8, 5)});
  EXPECT_NEAR(measure(share, "saw_cut_m:203.2"), 12 * ft, 1e-12);
  EXPECT_EQ(measure(share, "saw_cuts:203.2"), 12);
  EXPECT_NEAR(measure(share, "saw_cut_m:76.2"), 6.5 * ft, 1e-12);
  EXPECT_EQ(measure(share, "saw_cuts:76.2"), 6);
  EXPECT_NEAR(measure(share, "saw_blade_m"), 30.5 * ft, 1e-12);
  std::string text = all_said(share);
  EXPECT_NE(text.find("12.0 ft of saw cut (12 cuts) through 8\" with table-20, two passes"), std::string::npos) << text;
  EXPECT_NE(text.find("6.5 ft of saw cut (6 cuts) through 3\" with table-20, one pass"), std::string::npos) << text;
  EXPECT_NE(text.find("29 CFR 1926.1153"), std::string::npos) << text;
  EXPECT_NE(text.find("never by dry sweeping"), std::string::npos) << text;
  for (const problem::Problem& one : share.problems) EXPECT_EQ(one.severity, problem::Severity::notice);
  EXPECT_TRUE(fact(share, "cuts"));
}

TEST(Saw, WhatDoesNotGetThroughIsFlagged) {
  const Share share = listed("table-14", {cut(12, 10, 1)});
  ASSERT_NE(said(share, "saw-depth"), nullptr);
  EXPECT_EQ(said(share, "saw-depth")->severity, problem::Severity::flag);
  EXPECT_NE(said(share, "saw-depth")->text.find("1 cut)"), std::string::npos) << said(share, "saw-depth")->text;
  EXPECT_NE(said(listed("splitter", {cut(12, 6, 1)}), "saw-depth"), nullptr);
}

TEST(Saw, WithoutASawTheMetresStand) {
  const Share share = listed("", {cut(12, 8, 2)});
  EXPECT_NEAR(measure(share, "saw_cut_m:203.2"), 2 * ft, 1e-12);
  EXPECT_NEAR(measure(share, "saw_blade_m"), 2 * ft, 1e-12);
  EXPECT_NE(said(share, "saw-list")->mend.find("choose a saw"), std::string::npos);
  EXPECT_NE(said(listed("lost", {cut(12, 8, 2)}), "item-missing"), nullptr);
  EXPECT_TRUE(listed("table-14", {}).problems.empty());
  EXPECT_TRUE(listed("table-14", {}).measures.values.empty());
}

TEST(Saw, EveryCutIsCountedOnce) {
  EXPECT_TRUE(rc::check("metres over all thicknesses are the metres of all cuts", [] {
    std::vector<Cut> cuts;
    double metres = 0;
    for (int i = *rc::gen::inRange(1, 20); i > 0; --i) {
      cuts.push_back(cut(*rc::gen::inRange(1, 40), *rc::gen::inRange(1, 12), *rc::gen::inRange(1, 5)));
      metres += cuts.back().count * cuts.back().length;
    }
    const Share share = listed("table-20", cuts);
    double sum = 0;
    for (const auto& [name, value] : share.measures.values)
      if (name.starts_with("saw_cut_m:")) sum += value;
    RC_ASSERT(std::abs(sum - metres) < 1e-9);
  }));
}

}  // namespace
