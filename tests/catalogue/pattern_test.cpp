// Patterns cover the plane once, or say which cell they don't; herringbone fits by its joint and its end gap.
#include "catalogue/pattern.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <map>

namespace catalogue {
namespace {

using units::Length;

Pattern herringbone() {
  Pattern pattern;
  pattern.id = "herringbone";
  pattern.along = 4;
  pattern.across_x = 1;
  pattern.across_y = 1;
  pattern.pieces = {{"unit", 0, 0, 2, 1}, {"unit", 2, -1, 1, 2}};
  return pattern;
}

// Every cell of a window counted, piece by piece, without the arithmetic of `check`: how many times the least and the
// most covered cell are covered.
std::pair<int, int> covered(const Pattern& pattern) {
  constexpr int from = 10, to = 34, far = 160;  // 34 + 40 rows x 3 sideways + 3
  std::map<std::pair<int, int>, int> times;
  for (int x = from; x < to; ++x)
    for (int y = from; y < to; ++y) times[{x, y}] = 0;
  for (int a = -far; a <= far; ++a)
    for (int b = 0; b <= 40; ++b)
      for (const PatternPiece& piece : pattern.pieces)
        for (int i = 0; i < piece.w; ++i)
          for (int j = 0; j < piece.h; ++j) {
            const auto cell = times.find(
                {a * pattern.along + b * pattern.across_x + piece.x + i, b * pattern.across_y + piece.y + j});
            if (cell != times.end()) ++cell->second;
          }
  int least = 1000, most = 0;
  for (const auto& [cell, count] : times) {
    least = std::min(least, count);
    most = std::max(most, count);
  }
  return {least, most};
}

TEST(Pattern, HerringboneCoversEachCellOnce) {
  // Flat piece at (b + 4a, b), upright one at (b + 4a + 2, b - 1), for all whole a and b.
  EXPECT_TRUE(check(herringbone()));
  EXPECT_EQ(covered(herringbone()), std::make_pair(1, 1));
}

TEST(Pattern, FaultsNameTheCell) {
  Pattern gap = herringbone();
  gap.pieces[1].h = 1;
  gap.pieces[1].size = "half";
  EXPECT_EQ(check(gap).error().code, "pattern-gap");
  EXPECT_EQ(covered(gap).first, 0);
  Pattern overlap = herringbone();
  overlap.pieces[1].x = 1;
  EXPECT_EQ(check(overlap).error().code, "pattern-overlap");
  EXPECT_NE(check(overlap).error().text.find("cell (1, 0)"), std::string::npos) << check(overlap).error().text;
  EXPECT_EQ(covered(overlap).second, 2);
  Pattern vectors = herringbone();
  vectors.across_y = 0;
  EXPECT_EQ(check(vectors).error().code, "pattern-vectors");
  vectors = herringbone();
  vectors.along = -4;
  EXPECT_EQ(check(vectors).error().code, "pattern-vectors");
  Pattern sizes_differ = herringbone();
  sizes_differ.along = 5;
  sizes_differ.pieces.push_back({"unit", 3, 0, 1, 1});
  EXPECT_EQ(check(sizes_differ).error().code, "pattern-size");
  Pattern none = herringbone();
  none.pieces.clear();
  EXPECT_EQ(check(none).error().code, "pattern-gap");
  Pattern huge = herringbone();
  huge.along = 2'000'000'000;
  EXPECT_EQ(check(huge).error().code, "pattern-vectors");
  huge = herringbone();
  huge.pieces[0].w = 2'000'000'000;
  EXPECT_FALSE(check(huge));
}

TEST(Pattern, CheckAgreesWithCountingTheCells) {
  EXPECT_TRUE(rc::check("check says yes exactly when each cell is covered once", [] {
    Pattern pattern;
    pattern.id = "random";
    pattern.along = *rc::gen::inRange(1, 5);
    pattern.across_x = *rc::gen::inRange(-3, 4);
    pattern.across_y = *rc::gen::inRange(1, 3);
    const int pieces = *rc::gen::inRange(1, 4);
    for (int i = 0; i < pieces; ++i)
      pattern.pieces.push_back({"size " + std::to_string(i), *rc::gen::inRange(-3, 4), *rc::gen::inRange(-3, 4),
                                *rc::gen::inRange(1, 4), *rc::gen::inRange(1, 3)});
    const bool once = covered(pattern) == std::make_pair(1, 1);
    RC_CLASSIFY(once, "covers");
    RC_ASSERT(check(pattern).has_value() == once);
  }));
}

TEST(Pattern, SizesInOrderOfFirstUse) {
  Pattern pattern;
  pattern.pieces = {{"large", 0, 0, 2, 2}, {"small", 2, 0, 1, 1}, {"large", 0, 2, 2, 2}};
  EXPECT_EQ(sizes(pattern), (std::vector<std::string>{"large", "small"}));
}

TEST(HerringboneFit, JointAndEndGap) {
  // 100 x 200 mm in 2 to 5 mm: g = (2 x 100 + 3 j - 200) / 2 = 1.5 j, so j = 2 leaves 3.
  const auto metric = herringbone_fit(Length::millimetres(200), Length::millimetres(100), Length::millimetres(2),
                                      Length::millimetres(5));
  EXPECT_TRUE(metric.fits);
  EXPECT_EQ(metric.joint, Length::millimetres(2));
  EXPECT_EQ(metric.end_gap, Length::millimetres(3));
  // 3-5/8 x 7-5/8 in at exactly 1/8 in: g = (7-1/4 + 3/8 - 7-5/8) / 2 = 0, no joint at all.
  const Length eighth = Length::inch_64ths(8);
  const auto tight = herringbone_fit(Length::inch_64ths(488), Length::inch_64ths(232), eighth, eighth);
  EXPECT_FALSE(tight.fits);
  // It would: 3 j = 3/8 + 2 g with g = 1/8 in, j = 5/24 in, to the step inside.
  EXPECT_NEAR(tight.would_fit_least.inches(), 5.0 / 24, 1.0 / 8128);
  // 4 x 8 in made 1/8 in smaller, joints 1/16 to 3/16: L - 2 W = 1/8, so j = 1/16 leaves g = (3/16 - 1/8) / 2 = 1/32,
  // too little; 3 j = 1/8 + 2/16 gives the least, 1/12 in.
  const auto module =
      herringbone_fit(Length::inch_64ths(504), Length::inch_64ths(248), Length::inch_64ths(4), Length::inch_64ths(12));
  EXPECT_TRUE(module.fits);
  EXPECT_NEAR(module.joint.inches(), 1.0 / 12, 1.0 / 8128);
  EXPECT_GE(module.end_gap, Length::inch_64ths(4));
  // 4 x 8 in full size at 1/16 in: cell c = 4-1/16, so 144 / (2 c c) = 4.3626 to a square foot, not 4.3964 as in rows.
  const double cell = 4 + 1.0 / 16;
  EXPECT_NEAR(144 / (2 * cell * cell), 4.3626, 5e-5);
}

TEST(HerringboneFit, TheLeastJointThatDoes) {
  EXPECT_TRUE(rc::check("one step less than the joint given does not fit", [] {
    const auto length = Length::of_steps(*rc::gen::inRange<std::int64_t>(20'000, 200'000));
    const auto width = Length::of_steps(length.steps() / 2 + *rc::gen::inRange<std::int64_t>(-3000, 3000));
    const auto least = Length::of_steps(*rc::gen::inRange<std::int64_t>(0, 1500));
    const auto greatest = least + Length::of_steps(*rc::gen::inRange<std::int64_t>(0, 1500));
    const auto fit = herringbone_fit(length, width, least, greatest);
    const auto fits_at = [&](std::int64_t joint) {
      const std::int64_t twice = 2 * width.steps() + 3 * joint - length.steps();
      return joint >= least.steps() && joint <= greatest.steps() && twice >= 2 * least.steps() &&
             twice <= 2 * greatest.steps();
    };
    bool any = false;
    std::int64_t first = 0;
    for (std::int64_t joint = least.steps(); joint <= greatest.steps() && !any; ++joint) {
      any = fits_at(joint);
      first = joint;
    }
    RC_CLASSIFY(any, "fits");
    RC_ASSERT(fit.fits == any);
    if (any) RC_ASSERT(fit.joint.steps() == first);
  }));
}

}  // namespace
}  // namespace catalogue
