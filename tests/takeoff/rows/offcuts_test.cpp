#include "takeoff/paving/offcuts.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <random>

namespace {

using namespace takeoff::paving;
using geometry::Vec;

constexpr double inch = 8128;  // steps

Need square_cut(double inches, bool turned = false) {
  return {inches * inch, 8 * inch, true, 0, inches * inch, false, turned};
}

Cutting eighth() {
  Cutting cutting;
  cutting.kerf = inch / 8;
  return cutting;
}

Bought bought(const std::vector<Need>& needs, Cutting cutting = eighth(), plan::Reuse reuse = plan::Reuse::area) {
  return bought_for_cuts(needs, cutting, reuse);
}

TEST(Offcuts, TwoPiecesWithTheKerfBetween) {
  // 5 + 1/8 + 2 7/8 = 8 in; with 3 in the kerf has no room.
  EXPECT_EQ(bought({square_cut(5), square_cut(2.875)}).units, 1);
  EXPECT_EQ(bought({square_cut(5), square_cut(3)}).units, 2);
  EXPECT_EQ(bought({square_cut(5), square_cut(2.875)}).from_offcuts, 1);
}

TEST(Offcuts, AFinishedUnitGivesTwoPiecesNeverThree) {
  // Three pieces of 2 in: the middle one of a unit would have no finished end. With sawn edges 2 + 2 + 2 + 2/8 fits 8
  // in.
  const std::vector<Need> needs(3, square_cut(2));
  EXPECT_EQ(bought(needs).units, 2);
  Cutting sawn = eighth();
  sawn.finished_edges = false;
  EXPECT_EQ(bought(needs, sawn).units, 1);
}

TEST(Offcuts, NoneBuysOneForEach) {
  const std::vector<Need> needs(5, square_cut(2));
  const Bought none = bought(needs, eighth(), plan::Reuse::none);
  EXPECT_EQ(none.pieces, 5);
  EXPECT_EQ(none.units, 5);
  EXPECT_EQ(none.from_offcuts, 0);
}

TEST(Offcuts, ObliqueHalvesServeTheSameEdge) {
  // Cut at 45 degrees across 4 in: reaches 4 + 2 = 6 in at the long side, 4 in at the middle. Two halves: 4 + 1/8 x
  // sqrt 2 + 3.8 = 7.977 in.
  Need a{6 * inch, 8 * inch, true, 1, 4 * inch, false, false};
  Need b{5.8 * inch, 8 * inch, true, 1, 3.8 * inch, false, false};
  EXPECT_EQ(bought({a, b}).units, 1);
  b.middle = 3.9 * inch;  // 8.077 in
  EXPECT_EQ(bought({a, b}).units, 2);
  b.middle = 3.8 * inch;
  b.slope = -1;  // the mirrored half
  EXPECT_EQ(bought({a, b}).units, 2);
  EXPECT_EQ(bought({a, b}).bound, 1);  // the bound looks at middles only and is not met here
}

TEST(Offcuts, DirectionalUnitsServeTheOppositeEdgeOnly) {
  Cutting directional = eighth();
  directional.directional = true;
  EXPECT_EQ(bought({square_cut(3), square_cut(3)}, directional).units, 2);
  EXPECT_EQ(bought({square_cut(3), square_cut(3, true)}, directional).units, 1);
}

TEST(Offcuts, RipsAndCutsShareASquareUnit) {
  Need rip = square_cut(3);
  rip.lengthwise = true;
  EXPECT_EQ(bought({square_cut(3), rip}).units, 2);
  Cutting square = eighth();
  square.square = true;
  EXPECT_EQ(bought({square_cut(3), rip}, square).units, 1);
}

// All ways of pairing, one by one.
int fewest(const std::vector<Need>& needs, std::vector<bool>& used, std::size_t i, double room, bool directional) {
  while (i < needs.size() && used[i]) ++i;
  if (i == needs.size()) return 0;
  used[i] = true;
  int best = 1 + fewest(needs, used, i + 1, room, directional);
  for (std::size_t j = i + 1; j < needs.size(); ++j) {
    if (used[j] || needs[i].along + needs[j].along > room) continue;
    if (directional && needs[i].turned == needs[j].turned) continue;
    used[j] = true;
    best = std::min(best, 1 + fewest(needs, used, i + 1, room, directional));
    used[j] = false;
  }
  used[i] = false;
  return best;
}

TEST(Offcuts, EqualsExhaustivePairing) {
  // The trade's own check: sorting and pairing against every pairing, 3,000 random sets.
  std::mt19937 random(3);
  for (int set = 0; set < 3000; ++set) {
    Cutting cutting = eighth();
    cutting.directional = set % 2 == 1;
    std::vector<Need> needs;
    const int count = 1 + static_cast<int>(random() % 9);
    for (int i = 0; i < count; ++i)
      needs.push_back(square_cut(0.5 + static_cast<double>(random() % 240) / 32, random() % 2 == 0));
    std::vector<bool> used(needs.size(), false);
    const Bought found = bought(needs, cutting);
    ASSERT_EQ(found.units, fewest(needs, used, 0, 8 * inch - cutting.kerf, cutting.directional)) << "set " << set;
    ASSERT_EQ(found.bound, found.units);
  }
}

TEST(Offcuts, BoundIsNeverPassed) {
  EXPECT_TRUE(rc::check("bound <= units <= pieces, and an offcut serves at most one piece", [] {
    std::vector<Need> needs;
    for (const int size : *rc::gen::container<std::vector<int>>(rc::gen::inRange(1, 255))) {
      Need need = square_cut(size / 32.);
      need.slope = *rc::gen::element(0.0, 1.0, -1.0, 0.5);
      need.along = std::min(need.whole, need.middle + std::abs(need.slope) * 2 * inch);
      if (need.slope == 0) need.middle = need.along;
      need.straight = *rc::gen::inRange(0, 5) > 0;
      need.lengthwise = *rc::gen::inRange(0, 4) == 0;
      needs.push_back(need);
    }
    const Bought found = bought(needs);
    RC_ASSERT(found.bound <= found.units);
    RC_ASSERT(found.units <= found.pieces);
    RC_ASSERT(found.units * 2 >= found.pieces);
    RC_ASSERT(found.from_offcuts == found.pieces - found.units);
  }));
}

// One unit, 8 x 4 in at the origin of the frame, and what is left of it.
Layout one_unit(bool turned) {
  Layout layout;
  layout.lattice.kinds.push_back({"unit", "unit-4x8", {}, (turned ? 4 : 8) * inch, (turned ? 8 : 4) * inch, turned});
  return layout;
}
Piece piece(std::vector<std::pair<Vec, bool>> sides) {
  Piece made;
  for (const auto& [from, cut] : sides) made.sides.push_back({inch * from, cut, {}});
  return made;
}

TEST(Offcuts, NeedOfASquareCut) {
  const Need low = need(one_unit(false), piece({{{0, 0}, false}, {{5, 0}, true}, {{5, 4}, false}, {{0, 4}, false}}));
  EXPECT_TRUE(low.straight);
  EXPECT_FALSE(low.turned);
  EXPECT_FALSE(low.lengthwise);
  EXPECT_NEAR(low.along, 5 * inch, 1e-6);
  EXPECT_EQ(low.slope, 0);
  const Need high = need(one_unit(false), piece({{{3, 0}, false}, {{8, 0}, false}, {{8, 4}, false}, {{3, 4}, true}}));
  EXPECT_TRUE(high.turned);
  EXPECT_NEAR(high.along, 5 * inch, 1e-6);
}

TEST(Offcuts, NeedOfARipAndOfATurnedUnit) {
  const Need rip = need(one_unit(false), piece({{{0, 0}, false}, {{8, 0}, false}, {{8, 3}, true}, {{0, 3}, false}}));
  EXPECT_TRUE(rip.lengthwise);
  EXPECT_NEAR(rip.along, 3 * inch, 1e-6);
  EXPECT_NEAR(rip.whole, 4 * inch, 1e-6);
  // The same cut across the frame goes across the long side of a turned unit.
  const Need cut = need(one_unit(true), piece({{{0, 0}, false}, {{4, 0}, false}, {{4, 3}, true}, {{0, 3}, false}}));
  EXPECT_FALSE(cut.lengthwise);
  EXPECT_NEAR(cut.along, 3 * inch, 1e-6);
  EXPECT_NEAR(cut.whole, 8 * inch, 1e-6);
}

TEST(Offcuts, NeedOfAnObliqueCut) {
  // From (5, 0) to (3, 4): 2 in back over 4 in, middle at 4 in, furthest reach 5 in.
  const Need oblique =
      need(one_unit(false), piece({{{0, 0}, false}, {{5, 0}, true}, {{3, 4}, false}, {{0, 4}, false}}));
  EXPECT_NEAR(oblique.slope, -0.5, 1e-12);
  EXPECT_NEAR(oblique.middle, 4 * inch, 1e-6);
  EXPECT_NEAR(oblique.along, 5 * inch, 1e-6);
  // Its other half: turned by 180 degrees it has the same slope, so both come out of one unit but for the kerf.
  const Need other = need(one_unit(false), piece({{{5, 0}, false}, {{8, 0}, false}, {{8, 4}, false}, {{3, 4}, true}}));
  EXPECT_NEAR(other.slope, -0.5, 1e-12);
  EXPECT_NEAR(other.middle, 4 * inch, 1e-6);
  EXPECT_TRUE(other.turned);
  Cutting no_kerf;
  EXPECT_EQ(bought({oblique, other}, no_kerf).units, 1);
  EXPECT_EQ(bought({oblique, other}).units, 2);
}

TEST(Offcuts, NotchesAndPiecesCutAtBothEndsStandAloneAndASliverMayShare) {
  const auto middle = piece({{{2, 0}, false}, {{6, 0}, true}, {{6, 4}, false}, {{2, 4}, true}});
  EXPECT_FALSE(need(one_unit(false), middle).straight);
  auto low = piece({{{0, 0}, false}, {{5, 0}, true}, {{5, 4}, false}, {{0, 4}, false}});
  low.sliver = true;  // it is needed: whether it comes out of a whole unit or of an offcut is all one
  EXPECT_TRUE(need(one_unit(false), low).straight);
  low.convex = false;
  EXPECT_FALSE(need(one_unit(false), low).straight);
}

TEST(Offcuts, ScribedEndCountsByItsFurthestReach) {
  const auto scribed = piece({{{0, 0}, false}, {{5, 0}, true}, {{5.5, 2}, true}, {{5, 4}, false}, {{0, 4}, false}});
  const Need found = need(one_unit(false), scribed);
  EXPECT_TRUE(found.straight);
  EXPECT_EQ(found.slope, 0);
  EXPECT_NEAR(found.along, 5.5 * inch, 1e-6);
}

TEST(Offcuts, DetailsOfTheItemSayHowItIsCut) {
  catalogue::Item item;
  item.length = units::Length::inches(8);
  item.width = units::Length::inches(4);
  EXPECT_TRUE(cutting(item, units::Length::inch_64ths(8)).finished_edges);
  EXPECT_FALSE(cutting(item, units::Length()).square);
  item.details = {{"edges", "sawn"}, {"face", "directional"}};
  item.width = item.length;
  const Cutting found = cutting(item, units::Length::inch_64ths(8));
  EXPECT_FALSE(found.finished_edges);
  EXPECT_TRUE(found.directional);
  EXPECT_TRUE(found.square);
  EXPECT_EQ(found.kerf, 1016);  // 8 x 127 steps
}

}  // namespace
