#include "plan/along.h"

#include <gtest/gtest.h>

#include "plan/small_jobs.h"

using namespace small;

TEST(Along, aPartOfAnArcKeepsItsCircle) {
  const geometry::Curve quarter{at(60, 0), at(0, 60), std::tan(3.14159265358979 / 8)};
  const geometry::Curve half = plan::part(quarter, 0.25, 0.75);
  EXPECT_NEAR(half.radius(), quarter.radius(), 4);  // ends are rounded to the grid: a few steps
  EXPECT_NEAR(half.length(), quarter.length() / 2, 4);
}

TEST(Along, sidesOfOneGroupMakeOnePathRoundTheCorner) {
  const plan::Site site =
      plan::site(job({paved("A1", rectangle(0, 0, 240, 120)), building("H", rectangle(0, 120, 240, 400))}));
  const auto free =
      plan::along(*site.find("A1"), [](const plan::Stretch& s) { return s.meets == plan::Meets::planting ? 1 : -1; });
  ASSERT_EQ(free.size(), 1u);  // west, south and east in one, although the outline begins at the south-west corner
  EXPECT_EQ(free[0].path.size(), 3u);
  EXPECT_NEAR(feet(free[0].path.length()), 40, 1e-9);
  EXPECT_FALSE(free[0].path.closed());
}

TEST(Along, allRoundIsAClosedPath) {
  const plan::Site site = plan::site(job({paved("A1", rectangle(0, 0, 240, 120))}));
  const auto all = plan::along(*site.find("A1"), [](const plan::Stretch&) { return 0; });
  ASSERT_EQ(all.size(), 1u);
  EXPECT_TRUE(all[0].path.closed());
  EXPECT_NEAR(feet(all[0].path.length()), 60, 1e-9);
}
