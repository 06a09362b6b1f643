#include "plan/element.h"

#include <gtest/gtest.h>

// FNV-1a, 64 bit: the published test values of "" and "a" (Fowler, Noll, Vo, test vectors of the reference code).
TEST(Element, marksAreTheHashOfTheId) {
  EXPECT_EQ(plan::mark(""), 0xcbf29ce484222325ULL);
  EXPECT_EQ(plan::mark("a"), 0xaf63dc4c8601ec8cULL);
  EXPECT_NE(plan::mark("A1"), plan::mark("A2"));
}

TEST(Element, everyKindHasItsWord) {
  EXPECT_EQ(plan::kind_name(plan::PavedArea{}), "paved-area");
  EXPECT_EQ(plan::kind_name(plan::Pool{}), "pool");
  EXPECT_EQ(plan::kind_name(plan::KeepOut{}), "keep-out");
  EXPECT_EQ(plan::kind_name(plan::EdgeRun{}), "edge-run");
  EXPECT_EQ(plan::kind_name(plan::DrainRun{}), "drain-run");
  EXPECT_EQ(plan::kind_name(plan::SiteMark{}), "site-mark");
  EXPECT_EQ(plan::kind_name(plan::SitePlan{}), "site-plan");
}
