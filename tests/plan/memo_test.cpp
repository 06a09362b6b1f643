#include "plan/memo.h"

#include <gtest/gtest.h>

TEST(Memo, keepsWhatIsAskedForAndDropsTheRest) {
  plan::Memo<int, int> memo;
  int made = 0;
  const auto twice = [&made](int key) {
    return [&made, key] {
      ++made;
      return 2 * key;
    };
  };
  memo.begin();
  EXPECT_EQ(*memo.get(1, twice(1)), 2);
  EXPECT_EQ(*memo.get(2, twice(2)), 4);
  EXPECT_EQ(made, 2);
  memo.begin();
  const auto kept = memo.get(1, twice(1));
  EXPECT_EQ(made, 2);  // not made again
  memo.begin();        // 2 was not asked for in the last pass
  EXPECT_EQ(memo.size(), 1u);
  EXPECT_EQ(memo.get(1, twice(1)), kept);
}
