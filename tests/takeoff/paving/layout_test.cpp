// Layouts that can be counted by hand, and shapes that trip a clipper.
#include <numbers>
#include <random>

#include "laying.h"

using namespace laying;

namespace {

constexpr takeoff::paving::Slivers thirds{1.0 / 3, 0};

// One unit, 8 x 4 in, laid tight; everything below happens in its cell (0, 0) and its neighbours.
Lattice tight() { return stack(203.2, 101.6, 0); }

std::vector<takeoff::paving::Piece> pieces_of(const Layout& layout, int a, int b) {
  std::vector<takeoff::paving::Piece> made;
  for (const auto& p : layout.pieces) {
    if (p.a == a && p.b == b) made.push_back(p);
  }
  return made;
}

double area_of(const std::vector<takeoff::paving::PieceSide>& sides) {
  double twice = 0;
  for (std::size_t i = 0; i < sides.size(); ++i) twice += cross(sides[i].from, sides[(i + 1) % sides.size()].from);
  return twice / 2;
}

// Herringbone of 4 x 8 in units laid tight, its rows at `degrees` to the x axis.
Lattice herringbone(double degrees, Point start) {
  catalogue::Catalogue all;
  all.items["u"] = unit("u", 203.2, 101.6, 0);
  all.patterns["herringbone-90"] = pattern("herringbone-90");
  auto laying = choice("herringbone-90", start, degrees);
  laying.units["unit"] = "u";
  return *takeoff::paving::lattice(all, laying);
}

// Units cut by one edge of 333 ft along the x axis, per foot. Only cuts against the south edge, number 0, are counted.
double cuts_per_foot(const Lattice& l) {
  const double long_side = 4000;  // inches
  int cut = 0;
  for (const auto& p : lay(region({box(0, 0, long_side, 40)}), l, thirds).pieces) {
    bool south = false;
    for (const auto& side : p.sides) south = south || (side.cut && side.against.edge == 0);
    cut += south ? 1 : 0;
  }
  return cut / (long_side / 12);
}

// Starts spread evenly over the distance across the edge after which the pattern lies the same again.
double mean_cuts_per_foot(double degrees, double repeat) {
  double sum = 0;
  for (int i = 0; i < 64; ++i) sum += cuts_per_foot(herringbone(degrees, inches(0.3, (i + 0.5) * repeat / 64)));
  return sum / 64;
}

}  // namespace

TEST(Layout, PatioOfNineHundredUnits) {
  // Brick Industry Association, Seven Easy Steps part 2: 10 x 20 ft, 4 x 8 in units laid tight: 900 units.
  const Layout laid = lay(region({box(0, 0, 240, 120)}), tight(), thirds);
  EXPECT_EQ(laid.whole(), 900);
  EXPECT_TRUE(laid.pieces.empty());
  EXPECT_DOUBLE_EQ(laid.unit_area, laid.region_area);
}

TEST(Layout, DeckOfWholeUnitsTurnedHasNoFalseCut) {
  // 60 x 80 units exactly; turned, its corners are rounded to the grid, which must not cut a single unit.
  std::mt19937 dice(11);
  std::uniform_real_distribution<double> any(0, 360);
  for (const double joint_mm : {0.0, 3.175}) {
    for (int i = 0; i < 40; ++i) {
      const double degrees = any(dice);
      const Ring deck = geometry::turned(box(0, 0, 8 * 60, 4 * 80), {}, units::Angle::degrees(degrees));
      const Lattice l = stack(203.2 - joint_mm, 101.6 - joint_mm, joint_mm, {}, degrees);
      const Layout laid = lay(region({deck}), l, thirds);
      EXPECT_EQ(laid.whole(), 60 * 80) << degrees;
      EXPECT_EQ(laid.pieces.size(), 0u) << degrees;
    }
  }
}

TEST(Layout, MeanCutsAlongALongEdge) {
  // Units per area times their width across the edge (derived), per foot of edge: at 45 degrees 3.182, at 90 2.25. An
  // edge has to enter by 0.5 mm, which takes 1 mm off widths of 100 to 220 mm: under 1 %.
  EXPECT_NEAR(mean_cuts_per_foot(45, 8 * std::numbers::sqrt2), 3.182, 0.015 * 3.182);
  EXPECT_NEAR(mean_cuts_per_foot(0, 16), 2.25, 0.015 * 2.25);
  // Over all directions 2.865: units per area times perimeter / pi.
  double sum = 0;
  const int turns = 90;
  for (int i = 0; i < turns; ++i) sum += cuts_per_foot(herringbone((i + 0.5) * 90 / turns, inches(0.3, 0.7 * i)));
  EXPECT_NEAR(sum / turns, 2.865, 0.015 * 2.865);
}

TEST(Layout, MeanCutsOfRunningBond) {
  // 4 x 8 in running bond: its sides 1.5 per ft where the edge runs with the rows off a joint, its ends 3 off the
  // module and 1.5 on it (every second row ends whole).
  catalogue::Catalogue all;
  all.items["u"] = unit("u", 203.2, 101.6, 0);
  all.patterns["running-half"] = pattern("running-half");
  auto choose = [&](Point start) {
    auto laying = choice("running-half", start);
    laying.units["unit"] = "u";
    return *takeoff::paving::lattice(all, laying);
  };
  const Region strip = region({box(0, 0, 2400, 2400)});
  const auto against = [&](Point start, int edge) {
    int cut = 0;
    for (const auto& p : lay(strip, choose(start), thirds).pieces) {
      bool on = false;
      for (const auto& side : p.sides) on = on || (side.cut && side.against.edge == edge);
      cut += on ? 1 : 0;
    }
    return cut / 200.0;
  };
  EXPECT_NEAR(against(inches(3, 1), 0), 1.5, 0.01);
  EXPECT_EQ(against(inches(3, 0), 0), 0);
  EXPECT_NEAR(against(inches(3, 1), 3), 3, 0.01);
  EXPECT_NEAR(against(inches(0, 0), 3), 1.5, 0.01);
}

TEST(Layout, EdgesAlongTheBorderOfAUnitTakeNothing) {
  // The east edge cuts the unit of cell (1, 0) in half; south and north edges lie on its border.
  const Layout laid = lay(region({box(0, 0, 12, 4)}), tight(), thirds);
  EXPECT_EQ(laid.whole(), 1);
  ASSERT_EQ(laid.pieces.size(), 1u);
  const auto& p = laid.pieces[0];
  EXPECT_DOUBLE_EQ(p.area, 16 * square_inch);
  EXPECT_DOUBLE_EQ(p.cut_length, 4 * inch);
  EXPECT_DOUBLE_EQ(p.least_width, 4 * inch);
  EXPECT_EQ(p.sides.size(), 4u);
  EXPECT_TRUE(p.convex);
  EXPECT_FALSE(p.sliver);  // half of a unit
  for (const auto& side : p.sides) {
    EXPECT_EQ(side.against, (side.cut ? geometry::Origin{1, 1} : geometry::Origin())) << side.cut;
  }
}

TEST(Layout, HoleInsideAUnit) {
  Ring hole = box(3, 1, 5, 3);
  const Layout laid = lay(region({box(0, 0, 8, 4), hole}), tight(), thirds);
  EXPECT_EQ(laid.whole(), 0);
  ASSERT_EQ(laid.pieces.size(), 1u);
  EXPECT_NEAR(laid.pieces[0].area, 28 * square_inch, 1);  // 32 less 4
  EXPECT_NEAR(area_of(laid.pieces[0].sides), 28 * square_inch, 1);
  EXPECT_NEAR(laid.pieces[0].cut_length, 8 * inch, 1e-3);
  EXPECT_NEAR(laid.pieces[0].least_width, 4 * inch, 1e-6);
  EXPECT_FALSE(laid.pieces[0].convex);
}

TEST(Layout, IslandInsideAUnit) {
  const Layout laid = lay(region({box(3, 1, 4, 3)}), tight(), thirds);
  ASSERT_EQ(laid.pieces.size(), 1u);
  EXPECT_NEAR(laid.pieces[0].area, 2 * square_inch, 1);
  EXPECT_TRUE(laid.pieces[0].sliver);  // a sixteenth
  EXPECT_NEAR(laid.pieces[0].least_width, 1 * inch, 1e-6);
}

TEST(Layout, NotchAndTwoParts) {
  // A post 2 x 2 in at the middle of the north side: a notch; one right through: two parts.
  const Layout notch = lay(region({ring({inches(0, 0), inches(8, 0), inches(8, 4), inches(5, 4), inches(5, 2),
                                         inches(3, 2), inches(3, 4), inches(0, 4)})}),
                           tight(), thirds);
  ASSERT_EQ(notch.pieces.size(), 1u);
  EXPECT_NEAR(notch.pieces[0].area, 28 * square_inch, 1);
  EXPECT_NEAR(notch.pieces[0].cut_length, 6 * inch, 1e-3);
  EXPECT_FALSE(notch.pieces[0].convex);

  const Layout two = lay(region({box(0, -8, 8, 8), box(3, -2, 5, 6)}), tight(), thirds);
  const auto parts = pieces_of(two, 0, 0);
  ASSERT_EQ(parts.size(), 2u);
  EXPECT_NEAR(parts[0].area, 12 * square_inch, 1);
  EXPECT_NEAR(parts[1].area, 12 * square_inch, 1);
}

TEST(Layout, CornersThatTouchTheBorderFromInside) {
  // Ground inside a V that stands on the unit's south side: one triangle.
  const Layout in = lay(region({ring({inches(4, 0), inches(7, 3), inches(1, 3)})}), tight(), thirds);
  ASSERT_EQ(in.pieces.size(), 1u);
  EXPECT_NEAR(in.pieces[0].area, 9 * square_inch, 1);
  // Ground outside the V: two parts that meet in a point only.
  const Layout out = lay(region({
                             ring({inches(0, 0), inches(4, 0), inches(1, 4), inches(0, 4)}),
                         }),
                         tight(), thirds);
  ASSERT_EQ(out.pieces.size(), 1u);
  EXPECT_NEAR(out.pieces[0].area, 10 * square_inch, 1);  // 4 x 4 less a triangle 3 x 4 / 2
  const Layout both = lay(region({ring({inches(0, -4), inches(8, -4), inches(8, 4), inches(7, 4), inches(4, 0),
                                        inches(1, 4), inches(0, 4)})}),
                          tight(), thirds);
  const auto parts = pieces_of(both, 0, 0);
  ASSERT_EQ(parts.size(), 2u);
  EXPECT_NEAR(parts[0].area, 10 * square_inch, 1);
  EXPECT_NEAR(parts[1].area, 10 * square_inch, 1);
  EXPECT_EQ(pieces_of(both, 0, -1).size(), 0u);  // the unit below is whole
  EXPECT_EQ(both.whole(), 1);
}

TEST(Layout, HalfAMillimetreIsNothing) {
  const double mm = 320;
  const auto wide = [&](double extra) {
    const Region ground =
        region({ring({inches(0, 0), at(8 * inch + extra * mm, 0), at(8 * inch + extra * mm, 4 * inch), inches(0, 4)})});
    return lay(ground, tight(), thirds);
  };
  EXPECT_EQ(wide(0.45).whole(), 1);
  EXPECT_EQ(wide(0.45).pieces.size(), 0u);
  EXPECT_EQ(wide(-0.45).whole(), 1);
  EXPECT_EQ(wide(-0.45).pieces.size(), 0u);
  EXPECT_EQ(wide(0.55).whole(), 1);
  EXPECT_EQ(wide(0.55).pieces.size(), 1u);
  EXPECT_EQ(wide(-0.55).whole(), 0);
  EXPECT_EQ(wide(-0.55).pieces.size(), 1u);
}

TEST(Layout, SliversByShareOrByWidth) {
  const Region ground = region({box(0, 0, 11, 4)});                        // the second unit keeps 3 of its 8 in
  EXPECT_FALSE(lay(ground, tight(), {1.0 / 3, 0}).pieces.at(0).sliver);    // 3/8 > 1/3
  EXPECT_TRUE(lay(ground, tight(), {0.4, 0}).pieces.at(0).sliver);         // 3/8 < 2/5
  EXPECT_TRUE(lay(ground, tight(), {0, 3.5 * inch}).pieces.at(0).sliver);  // 3 in < 3 1/2 in
  EXPECT_FALSE(lay(ground, tight(), {0, 2 * inch}).pieces.at(0).sliver);
}

TEST(Layout, DiskTouchesFourHundredUnits) {
  // A disk of 5 ft radius touches 399.4 units of 4 x 8 in for 353.4 by area, on average over starts (derived):
  // pi R^2 / 32 + 2 R (W + L) / 32 + 1.
  std::mt19937 dice(5);
  std::uniform_real_distribution<double> any(0, 8);
  double sum = 0;
  const int starts = 200;
  const Ring disk{{inches(-60, 0), 1, {}}, {inches(60, 0), 1, {}}};
  for (int i = 0; i < starts; ++i) {
    const auto counts = count(region({disk}), stack(203.2, 101.6, 0, inches(any(dice), any(dice))), thirds);
    sum += static_cast<double>(counts.whole + counts.cut);
  }
  EXPECT_NEAR(sum / starts, 399.4, 0.6);
}

TEST(Layout, EmptyGround) {
  const Layout laid = lay(Region(), tight(), thirds);
  EXPECT_EQ(laid.whole(), 0);
  EXPECT_TRUE(laid.pieces.empty());
  EXPECT_EQ(laid.unit_area, 0);
}
