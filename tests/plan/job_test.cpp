#include "plan/job.h"

#include <gtest/gtest.h>

#include "plan/small_jobs.h"

using namespace small;

TEST(Job, anEditSharesWhatItDoesNotTouch) {
  const plan::Job before = job({paved("A1", rectangle(0, 0, 120, 120)), paved("A2", rectangle(120, 0, 240, 120))});
  const plan::Job after = plan::with(before, paved("A2", rectangle(120, 0, 360, 120)));
  EXPECT_EQ(after.elements[0].get(), before.elements[0].get());
  EXPECT_NE(after.elements[1].get(), before.elements[1].get());
  ASSERT_EQ(after.elements.size(), 2u);
  EXPECT_EQ(after.elements[1]->id, "A2");  // it stays where it stood in the order of drawing
}

TEST(Job, withoutTakesOutOne) {
  const plan::Job before = job({paved("A1", rectangle(0, 0, 120, 120)), paved("A2", rectangle(120, 0, 240, 120))});
  const plan::Job after = plan::without(before, "A1");
  ASSERT_EQ(after.elements.size(), 1u);
  EXPECT_EQ(after.elements[0]->id, "A2");
  EXPECT_EQ(after.find("A1"), nullptr);
  EXPECT_NE(before.find("A1"), nullptr);  // the old value is as it was
}

TEST(Job, sameIsByValue) {
  const plan::Job one = job({paved("A1", rectangle(0, 0, 120, 120))});
  EXPECT_TRUE(plan::same(one, job({paved("A1", rectangle(0, 0, 120, 120))})));
  EXPECT_FALSE(plan::same(one, job({paved("A1", rectangle(0, 0, 120, 121))})));
}
