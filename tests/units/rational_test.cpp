#include "units/rational.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include "draw.h"

namespace {

using units::Int128;
using units::nearest_whole;
using units::product;
using units::quotient;
using units::Rational;
using units::sum;

constexpr Int128 large = static_cast<Int128>(1) << 100;

bool same(Rational a, Rational b) { return a.top == b.top && a.under == b.under; }

Rational any() {
  const std::int64_t under = even<std::int64_t>(1, 1000000);
  return *units::fraction(even<std::int64_t>(-1000000, 1000000), under);
}

TEST(Rational, IsInLowestTermsWithAPositiveDenominator) {
  EXPECT_TRUE(same(*units::fraction(6, 8), {3, 4}));
  EXPECT_TRUE(same(*units::fraction(6, -8), {-3, 4}));
  EXPECT_TRUE(same(*units::fraction(0, -8), {0, 1}));
}

TEST(Rational, Arithmetic) {
  EXPECT_TRUE(same(*sum({1, 2}, {1, 3}), {5, 6}));
  EXPECT_TRUE(same(*product({2, 3}, {3, 4}), {1, 2}));
  EXPECT_TRUE(same(*quotient({1, 2}, {-3, 4}), {-2, 3}));
}

TEST(Rational, NearestWholeTakesHalvesAwayFromZero) {
  EXPECT_TRUE(nearest_whole({1, 2}) == 1);
  EXPECT_TRUE(nearest_whole({-1, 2}) == -1);
  EXPECT_TRUE(nearest_whole({49, 100}) == 0);
  EXPECT_TRUE(nearest_whole({-5, 2}) == -3);
  EXPECT_TRUE(nearest_whole({7, 3}) == 2);
  EXPECT_TRUE(nearest_whole({8, 3}) == 3);
}

TEST(Rational, WhatDoesNotFitIsNothing) {
  EXPECT_FALSE(product({large, 1}, {large, 1}).has_value());
  EXPECT_FALSE(quotient({large, 1}, {1, large}).has_value());
  EXPECT_FALSE(sum({1, large - 1}, {1, large + 1}).has_value());
  EXPECT_TRUE(product({large, 3}, {3, large}).has_value());
}

TEST(Rational, LawsOfArithmetic) {
  EXPECT_TRUE(rc::check("sums and products can be undone and swapped", [] {
    const Rational a = any();
    const Rational b = any();
    RC_ASSERT(same(*sum(a, b), *sum(b, a)));
    RC_ASSERT(same(*sum(*sum(a, b), *product(b, {-1, 1})), a));
    RC_PRE(b.top != 0);
    RC_ASSERT(same(*quotient(*product(a, b), b), a));
  }));
}

}  // namespace
