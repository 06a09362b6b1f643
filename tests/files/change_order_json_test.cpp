// Change orders as they are kept: write then read is the identity, and a text that is none is refused by place.
#include "files/change_order_json.h"

#include <gtest/gtest.h>

#include "files/change_order_fields.h"
#include "files/random_job.h"

namespace files {
namespace {

TEST(ChangeOrderJson, WriteThenReadIsTheIdentity) {
  EXPECT_TRUE(rc::check("the same", [] {
    std::vector<estimate::KeptOrder> orders(static_cast<std::size_t>(random_job::below(4)));
    for (estimate::KeptOrder& one : orders) random_job::fill(one);
    const std::string text = write_change_orders(orders);
    const auto back = read_change_orders(text, "orders");
    if (!back) RC_FAIL(problem::sentence(back.error()));
    RC_ASSERT(*back == orders);
    RC_ASSERT(write_change_orders(*back) == text);
  }));
}

TEST(ChangeOrderJson, EveryReasonAndACreditComeBack) {
  using estimate::Reason;
  for (const Reason reason : {Reason::owner, Reason::hidden_ground, Reason::site, Reason::our_error}) {
    estimate::KeptOrder order{1, 2, {}, units::Money::of_coins(-123456)};
    order.input.reason = reason;
    order.input.earlier = {{"1", units::Money::of_coins(-99), -2}};
    EXPECT_EQ(read_change_orders(write_change_orders({order}), "orders").value(), std::vector{order});
  }
}

TEST(ChangeOrderJson, WhatIsNoneIsRefusedWithItsPlace) {
  const auto code = [](const char* text) {
    const auto read = read_change_orders(text, "orders");
    return read ? std::string("read") : read.error().code;
  };
  const std::string whole = write_change_orders({{1, 2, {}, {}}});
  EXPECT_EQ(code(whole.c_str()), "read");
  EXPECT_EQ(code("[]"), "json-type");
  EXPECT_EQ(code("{}"), "field-missing");
  EXPECT_EQ(code(R"({"groundcourse_change_orders": 2, "orders": []})"), "format-newer");
  EXPECT_EQ(code(R"({"groundcourse_change_orders": 0, "orders": []})"), "format-unknown");
  EXPECT_EQ(code(R"({"groundcourse_change_orders": 1, "orders": [], "more": 1})"), "field-unknown");
  EXPECT_EQ(code(R"({"groundcourse_change_orders": 1, "orders": [{"before": 1}]})"), "field-missing");
  for (std::size_t length = 0; length + 1 < whole.size(); ++length)
    EXPECT_FALSE(read_change_orders(whole.substr(0, length), "orders").has_value()) << length;
  const auto wrong = read_change_orders("{\"groundcourse_change_orders\": 1,\n \"orders\": 5}", "orders");
  ASSERT_FALSE(wrong.has_value());
  EXPECT_EQ(wrong.error().place.line, 2);
}

}  // namespace
}  // namespace files
