// A rough price out of closed jobs.
#include "estimate/rough.h"

#include <gtest/gtest.h>

#include <limits>

namespace {

estimate::ClosedJob job(double measure, std::int64_t coins) { return {measure, units::Money::of_coins(coins)}; }

TEST(Rough, quartilesOfFourJobs) {
  // Per unit 10.00, 20.00, 30.00, 50.00. Places 1 + 3 p: 1.75, 2.5, 3.25, so 10 + 0.75 x 10 = 17.50,
  // 20 + 0.5 x 10 = 25.00, 30 + 0.25 x 20 = 35.00.
  const auto made = estimate::rough({job(2, 4000), job(10, 10000), job(4, 20000), job(1, 3000)});
  ASSERT_TRUE(made.has_value());
  EXPECT_EQ(made->low.coins(), 1750);
  EXPECT_EQ(made->middle.coins(), 2500);
  EXPECT_EQ(made->high.coins(), 3500);
  EXPECT_EQ(made->jobs, 4u);
  EXPECT_EQ(made->note, "not a quote: from 4 closed jobs");
}

TEST(Rough, neverFromFewerThanThree) {
  EXPECT_FALSE(estimate::rough({job(1, 100), job(1, 200)}));
  // Jobs that say nothing do not make up the number.
  const double none = std::numeric_limits<double>::quiet_NaN();
  EXPECT_FALSE(estimate::rough({job(1, 100), job(1, 200), job(0, 300), job(none, 300), job(1, 0), job(-1, 5)}));
  const auto made = estimate::rough({job(1, 100), job(0, 1), job(1, 200), job(1, 300)});
  ASSERT_TRUE(made.has_value());
  EXPECT_EQ(made->left_out, 1u);
  EXPECT_EQ(made->middle.coins(), 200);
}

}  // namespace
