// Change orders of a job one after the other: each counts those begun before it.
#include "estimate/kept_orders.h"

#include <gtest/gtest.h>

namespace estimate {
namespace {

units::Money coins(std::int64_t number) { return units::Money::of_coins(number); }

KeptOrder order(int before, int after, const char* number, std::int64_t amount, int days) {
  KeptOrder made{before, after, {}, coins(amount)};
  made.input.number = number;
  made.input.days = days;
  return made;
}

TEST(KeptOrders, eachCountsThoseBegunBeforeIt) {
  std::vector<KeptOrder> orders{order(1, 2, "1", 12000, 2), order(2, 3, "2", -3000, 0), order(3, 5, "3", 500, 1)};
  orders[1].input.earlier = {{"by word", coins(700), 1}};  // known on paper alone
  EXPECT_TRUE(earlier(orders, 1, 2).empty());
  EXPECT_EQ(earlier(orders, 2, 3), (std::vector<Earlier>{{"1", coins(12000), 2}, {"by word", coins(700), 1}}));
  EXPECT_EQ(earlier(orders, 3, 5), (std::vector<Earlier>{{"1", coins(12000), 2}, {"2", coins(-3000), 0}}));
  EXPECT_EQ(earlier(orders, 5, 6).size(), 3u);  // not begun yet: it comes after all
}

TEST(KeptOrders, aChangedOneStaysInItsPlace) {
  const std::vector<KeptOrder> orders{order(1, 2, "1", 1, 0), order(2, 3, "2", 2, 0)};
  const auto changed = with(orders, order(1, 2, "1a", 5, 0));
  ASSERT_EQ(changed.size(), 2u);
  EXPECT_EQ(changed[0].input.number, "1a");
  EXPECT_EQ(with(orders, order(3, 4, "3", 3, 0)).back().input.number, "3");
  EXPECT_EQ(without(orders, 1, 2), std::vector<KeptOrder>{orders[1]});
  EXPECT_EQ(without(orders, 2, 1), orders) << "the two versions the other way round are another order";
  EXPECT_EQ(find(orders, 2, 3)->input.number, "2");
  EXPECT_EQ(find(orders, 1, 3), nullptr);
}

TEST(KeptOrders, aNewOneTakesTheNextNumberAndTheContract) {
  EXPECT_EQ(begun({}, 1, 2, coins(4200000)).input.number, "1");
  EXPECT_EQ(begun({}, 1, 2, coins(4200000)).input.contract, coins(4200000));
  std::vector<KeptOrder> orders{order(1, 2, "1", 100, 0), order(2, 3, "3", 100, 0)};
  orders[0].input.contract = coins(4000000);
  const KeptOrder next = begun(orders, 3, 4, coins(4200000));
  EXPECT_EQ(next.input.number, "4") << "3 is taken";
  EXPECT_EQ(next.input.contract, coins(4000000)) << "what was signed, not what the newest version says";
  EXPECT_EQ(next.before, 3);
  EXPECT_EQ(next.after, 4);
}

TEST(KeptOrders, whatIsMeasuredTwiceIsChargedOnce) {
  const plan::UnitPrice rock{"rock", "Rock", "cu yd", 2, coins(9500)};
  std::vector<KeptOrder> orders{order(1, 2, "1", 0, 0), order(2, 3, "2", 0, 0)};
  orders[0].input.met = {{"rock", 5, 0, ""}};
  EXPECT_EQ(charged(orders, 1, 2, rock), 0);
  EXPECT_EQ(charged(orders, 2, 3, rock), 3);  // 5 met to date, 2 in the quote
  orders[1].input.met = {{"rock", 6.5, 3, ""}, {"clay", 9, 0, ""}};
  EXPECT_EQ(charged(orders, 3, 4, rock), 4.5);  // 6.5 - 2
}

}  // namespace
}  // namespace estimate
