// What is kept of an estimate as a text: write then read is the identity, and a text that is none is refused by place.
#include "files/kept_text.h"

#include <gtest/gtest.h>

#include "files/kept_fields.h"
#include "files/random_job.h"

namespace files {
namespace {

TEST(KeptText, WriteThenReadIsTheIdentity) {
  EXPECT_TRUE(rc::check("the same", [] {
    estimate::Kept kept;
    random_job::fill(kept);
    const std::string text = write_kept(kept);
    const auto back = read_kept(text, "kept");
    if (!back) RC_FAIL(problem::sentence(back.error()));
    RC_ASSERT(*back == kept);
    RC_ASSERT(write_kept(*back) == text);
  }));
}

TEST(KeptText, ASumMayBeLargerThanAnyPrice) {
  estimate::Kept kept;
  kept.currency = "COP";
  kept.total = units::Money::of_coins(-987'654'321'012'345);
  const auto back = read_kept(write_kept(kept), "kept");
  ASSERT_TRUE(back.has_value());
  EXPECT_EQ(back->total, kept.total);
  kept.total = units::Money::of_coins(most_sum_coins + 1);
  EXPECT_EQ(read_kept(write_kept(kept), "kept").error().code, "money-coins");
}

TEST(KeptText, WhatIsNoneIsRefusedWithItsPlace) {
  const auto code = [](const char* text) {
    const auto read = read_kept(text, "kept");
    return read ? std::string("read") : read.error().code;
  };
  const std::string whole = write_kept({});
  EXPECT_TRUE(read_kept(whole, "kept").has_value());
  EXPECT_EQ(code("[]"), "json-type");
  EXPECT_EQ(code("{}"), "field-missing");
  EXPECT_EQ(code(R"({"groundcourse_kept": 2, "kept": {}})"), "format-newer");
  EXPECT_EQ(code(R"({"groundcourse_kept": 0, "kept": {}})"), "format-unknown");
  EXPECT_EQ(code(R"({"groundcourse_kept": 1, "kept": {}})"), "field-missing");
  EXPECT_EQ(code(R"({"groundcourse_kept": 1, "kept": {}, "more": 1})"), "field-unknown");
  EXPECT_EQ(code(R"({"groundcourse_kept": 1)"), "json-ends-early");
  for (std::size_t length = 0; length + 1 < whole.size(); ++length)
    EXPECT_FALSE(read_kept(whole.substr(0, length), "kept").has_value()) << length;
  const auto line = read_kept("{\"groundcourse_kept\": 1,\n \"kept\": {\"currency\": 5}}", "kept");
  ASSERT_FALSE(line.has_value());
  EXPECT_EQ(line.error().place.line, 2);
}

}  // namespace
}  // namespace files
