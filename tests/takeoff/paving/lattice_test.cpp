// Patterns bound to units: sizes, joints, and whether a unit fits its pattern.
#include <rapidcheck.h>

#include "laying.h"

using namespace laying;

namespace {

// How many modules of the lattice cover a point of the frame.
int covers(const Lattice& lattice, Vec q) {
  int count = 0;
  for (const auto& kind : lattice.kinds) {
    const Vec low = kind.low - Vec{lattice.joint / 2, lattice.joint / 2};
    const double w = kind.width + lattice.joint, h = kind.height + lattice.joint;
    const int b_last = static_cast<int>(std::floor((q.y - low.y) / lattice.across.y));
    for (int b = b_last - 8; b <= b_last; ++b) {
      const Vec row = low + b * lattice.across;
      if (q.y < row.y || q.y >= row.y + h) continue;
      const double a = (q.x - row.x) / lattice.along;
      count += a - std::floor(a) < w / lattice.along ? 1 : 0;
      EXPECT_LE(w, lattice.along);
    }
  }
  return count;
}

std::string code(const problem::Result<Lattice>& result) { return result ? "none" : result.error().code; }

problem::Result<Lattice> herringbone(const catalogue::Item& item, std::optional<Length> joint = {}) {
  catalogue::Catalogue all;
  all.items[item.id] = std::make_shared<const catalogue::Item>(item);
  all.patterns["herringbone-90"] = pattern("herringbone-90");
  auto laying = choice("herringbone-90");
  laying.units["unit"] = item.id;
  laying.joint = joint;
  return takeoff::paving::lattice(all, laying);
}

}  // namespace

TEST(Lattice, ModulesOfEveryPatternCoverThePlaneOnce) {
  for (const auto& [id, units] : meant_units()) {
    const Lattice lattice = lattice_of(id);
    double modules = 0;
    for (const auto& k : lattice.kinds) modules += (k.width + lattice.joint) * (k.height + lattice.joint);
    EXPECT_NEAR(modules / (lattice.along * lattice.across.y), 1, 1e-12) << id;
    // Points off the cells' own lines, over several repeats.
    for (int i = 0; i < 60; ++i) {
      for (int k = 0; k < 60; ++k) {
        ASSERT_EQ(covers(lattice, {(i - 30.37) * 0.913 * inch, (k - 30.41) * 0.877 * inch}), 1)
            << id << ' ' << i << ' ' << k;
      }
    }
  }
}

TEST(Lattice, HerringboneOfTwoToOneIsItsGenerator) {
  // Derived and simulated: with width 1, flat 2x1 at (b + 4a, b), upright 1x2 at (b + 4a + 2, b - 1).
  const Lattice l = lattice_of("herringbone-90");
  const double c = 4 * inch, half = inch / 16;  // cell 3 7/8 + 1/8, half a joint
  EXPECT_DOUBLE_EQ(l.along, 4 * c);
  EXPECT_EQ(l.across, (Vec{c, c}));
  ASSERT_EQ(l.kinds.size(), 2u);
  EXPECT_EQ(l.kinds[0].low, (Vec{half, half}));
  EXPECT_EQ(l.kinds[1].low, (Vec{2 * c + half, -c + half}));
  EXPECT_FALSE(l.kinds[0].turned);
  EXPECT_TRUE(l.kinds[1].turned);
  EXPECT_DOUBLE_EQ(l.kinds[0].width, 7.875 * inch);
  EXPECT_DOUBLE_EQ(l.kinds[1].width, 3.875 * inch);
}

TEST(Lattice, DirectionsAddAndTheFrameTurnsBack) {
  const Lattice l = lattice_of("herringbone-45", inches(10, 20), 30);
  EXPECT_NEAR(std::atan2(l.sine, l.cosine) * 180 / 3.14159265358979, 75, 1e-9);
  const Vec q = l.to_frame(inches(13, 24));
  EXPECT_NEAR(length(q), 5 * inch, 1e-6);  // 3-4-5
  const Vec back = l.from_frame(q);
  EXPECT_NEAR(back.x, 3 * inch, 1e-6);
  EXPECT_NEAR(back.y, 4 * inch, 1e-6);
}

TEST(Lattice, UnitsPerArea) {
  // 144 / ((L + j) (W + j)) per sq ft: 4 x 8 in tight 4.5 (Building with brick pavers guide), 3 5/8 x 7 5/8 tight 5.21,
  // 1/16, 1/8, 3/16 in joints 4.3964, 4.2965, 4.2001; 100 x 200 mm with 2, 3, 5 mm: 48.53, 47.83, 46.46 per m2
  // (derived).
  const auto per = [](double l_mm, double w_mm, double j_mm, double area) {
    const Lattice l = stack(l_mm, w_mm, j_mm);
    return area / (l.along * l.across.y);
  };
  const double sq_ft = 144 * square_inch, m2 = metre * metre;
  EXPECT_NEAR(per(203.2, 101.6, 0, sq_ft), 4.5, 1e-9);
  EXPECT_NEAR(per(193.675, 92.075, 0, sq_ft), 5.21, 5e-3);
  EXPECT_NEAR(per(193.675, 92.075, 9.525, sq_ft), 4.5, 1e-9);
  EXPECT_NEAR(per(190.5, 95.25, 0, sq_ft), 5.12, 5e-3);
  EXPECT_NEAR(per(203.2, 101.6, 1.5875, sq_ft), 4.3964, 5e-5);
  EXPECT_NEAR(per(203.2, 101.6, 3.175, sq_ft), 4.2965, 5e-5);
  EXPECT_NEAR(per(203.2, 101.6, 4.7625, sq_ft), 4.2001, 5e-5);
  EXPECT_NEAR(per(200, 100, 0, m2), 50, 1e-9);
  EXPECT_NEAR(per(200, 100, 2, m2), 48.53, 5e-3);
  EXPECT_NEAR(per(200, 100, 3, m2), 47.83, 5e-3);
  EXPECT_NEAR(per(200, 100, 5, m2), 46.46, 5e-3);
}

TEST(Lattice, ShareOfJoints) {
  // 1 - L W / ((L + j)(W + j)), derived: 8 x 4 in with 1/8 in 0.045221, 12 x 12 with 1/4 0.040400, 200 x 100 mm with 3
  // mm 0.043474.
  EXPECT_NEAR(stack(203.2, 101.6, 3.175).joint_share, 0.045221, 5e-7);
  EXPECT_NEAR(stack(304.8, 304.8, 6.35).joint_share, 0.040400, 5e-7);
  EXPECT_NEAR(stack(200, 100, 3).joint_share, 0.043474, 5e-7);
}

TEST(Lattice, HerringboneFits) {
  const auto item = [](double l_in, double w_in, std::optional<Length> j, const char* kind = "paving-unit") {
    catalogue::Item made = *unit("u", l_in * 25.4, w_in * 25.4, 0, kind);
    made.joint = j;
    return made;
  };
  const Length eighth = Length::inch_64ths(8), sixteenth = Length::inch_64ths(4);
  EXPECT_EQ(code(herringbone(item(7.875, 3.875, eighth))), "none");  // 7 7/8 = 2 x 3 7/8 + 1/8
  EXPECT_EQ(code(herringbone(item(8, 4, eighth))), "herringbone-misfit");
  EXPECT_EQ(code(herringbone(item(8, 4, Length()))), "none");                                   // tight: 8 = 2 x 4
  EXPECT_EQ(code(herringbone(item(8, 4, eighth), sixteenth)), "none");                          // end gap 3/32 in
  EXPECT_EQ(code(herringbone(item(7.625, 3.625, eighth, "clay-unit"))), "herringbone-misfit");  // end gap 0
  EXPECT_NE(herringbone(item(8, 4, eighth)).error().text.find("1/16"), std::string::npos);  // the joints that would fit

  // 4 x 8 in at 1/16: cell c = 4 1/16, 1 / (2 c^2) = 4.3626 per sq ft, not 4.3964 of L + j times W + j (derived).
  const auto at_sixteenth = herringbone(item(8, 4, eighth), sixteenth);
  EXPECT_NEAR(2 * 144 * square_inch / (at_sixteenth->along * at_sixteenth->across.y), 4.3626, 5e-5);

  // No joint given, 100 x 200 mm in 2 to 5 mm: the least that fits is 2, its end gap 3 (derived).
  catalogue::Catalogue all;
  catalogue::Item metric = *unit("m", 200, 100, 0);
  metric.joint.reset();
  all.items["m"] = std::make_shared<const catalogue::Item>(metric);
  all.patterns["herringbone-90"] = pattern("herringbone-90");
  catalogue::Limit limit;
  limit.least = 2;
  limit.greatest = 5;
  limit.unit = "mm";
  all.limits["joint-interlocking"] = limit;
  auto laying = choice("herringbone-90");
  laying.units["unit"] = "m";
  const auto fitted = takeoff::paving::lattice(all, laying);
  ASSERT_TRUE(fitted.has_value());
  EXPECT_DOUBLE_EQ(fitted->joint, 2 * 320);
  EXPECT_DOUBLE_EQ(fitted->kinds[0].low.x, (2 * 102 - 200) / 2.0 * 320);  // the end gap is shared by both ends
}

TEST(Lattice, StarterUnitsInHerringbone) {
  auto laying = choice("herringbone-45");
  EXPECT_EQ(code(takeoff::paving::lattice(starter(), laying)), "none");
  laying.units["unit"] = "unit-8x4-full-60";
  EXPECT_EQ(code(takeoff::paving::lattice(starter(), laying)), "herringbone-misfit");
  laying.joint = Length();
  EXPECT_EQ(code(takeoff::paving::lattice(starter(), laying)), "none");
  laying.joint.reset();
  laying.units["unit"] = "unit-m-200x100-60";
  EXPECT_EQ(code(takeoff::paving::lattice(starter(), laying)), "none");
}

TEST(Lattice, WhatCannotBeLaidIsNamed) {
  auto laying = choice("mixed-three");
  laying.units.erase("large");
  EXPECT_EQ(code(takeoff::paving::lattice(starter(), laying)), "unit-missing");
  laying.units["large"] = "no-such-unit";
  EXPECT_EQ(code(takeoff::paving::lattice(starter(), laying)), "unit-unknown");
  laying.units["large"] = "unit-6x12-60";
  EXPECT_EQ(code(takeoff::paving::lattice(starter(), laying)), "pattern-misfit");
  laying = choice("mixed-three");
  laying.joint = Length::inch_64ths(16);  // 5 7/8 + 1/4 is no whole number of 3 in
  EXPECT_EQ(code(takeoff::paving::lattice(starter(), laying)), "pattern-misfit");
  laying.pattern = "no-such-pattern";
  EXPECT_EQ(code(takeoff::paving::lattice(starter(), laying)), "pattern-unknown");
  catalogue::Item sizeless = *unit("u", 200, 100, 3);
  sizeless.width.reset();
  EXPECT_EQ(code(herringbone(sizeless)), "unit-size");
}
