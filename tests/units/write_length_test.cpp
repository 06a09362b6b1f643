#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cstdlib>
#include <limits>

#include "draw.h"
#include "units/read_length.h"

namespace {

using units::Bare;
using units::Length;
using units::System;

constexpr Bare every_bare[] = {Bare::metres, Bare::millimetres, Bare::feet, Bare::inches, Bare::feet_and_inches};
constexpr std::int64_t grid_limit = 320000LL * 1000000000;  // 1e9 m

TEST(WriteLength, UnitedStates) {
  const auto us = [](Length length) { return write_length(length, System::us); };
  EXPECT_EQ(us(Length::inches(150) + Length::inch_64ths(32)), "12' 6 1/2\"");
  EXPECT_EQ(us(Length::inches(-150)), "-12' 6\"");
  EXPECT_EQ(us(Length::feet(12)), "12' 0\"");
  EXPECT_EQ(us(Length::feet(12) + Length::inch_64ths(48)), "12' 0 3/4\"");
  EXPECT_EQ(us(Length::inch_64ths(48)), "3/4\"");
  EXPECT_EQ(us(Length::inches(6) + Length::inch_64ths(1)), "6 1/64\"");
  EXPECT_EQ(us(-Length::inches(6)), "-6\"");
  EXPECT_EQ(us(Length()), "0\"");
  EXPECT_EQ(us(Length::of_steps(1)), "0.0001\"");                             // 1/8128 = 0.000123 in
  EXPECT_EQ(us(Length::inches(150) + Length::of_steps(32)), "12' 6.0039\"");  // 32/8128 = 0.003937 in; 0.004 is step 33
  EXPECT_EQ(us(Length::feet(1) - Length::of_steps(1)), "11.9999\"");
}

TEST(WriteLength, Metric) {
  const auto metric = [](Length length) { return write_length(length, System::metric); };
  EXPECT_EQ(metric(Length::millimetres(3810)), "3.81 m");
  EXPECT_EQ(metric(Length::millimetres(-3810)), "-3.81 m");
  EXPECT_EQ(metric(Length::millimetres(3000)), "3 m");
  EXPECT_EQ(metric(Length::millimetres(100000)), "100 m");
  EXPECT_EQ(metric(Length::millimetres(60)), "60 mm");
  EXPECT_EQ(metric(Length::millimetres(100)), "100 mm");
  EXPECT_EQ(metric(Length()), "0 mm");
  EXPECT_EQ(metric(Length::of_steps(1921)), "6.003125 mm");  // 1921 / 320
  EXPECT_EQ(metric(Length::of_steps(-1)), "-0.003125 mm");
  EXPECT_EQ(metric(Length::inches(1)), "25.4 mm");
  EXPECT_EQ(metric(Length::feet(10)), "3.048 m");
}

void reads_back(Length length, Bare bare) {
  for (const System system : {System::us, System::metric}) {
    const std::string text = write_length(length, system);
    const auto read = read_length(text, bare);
    RC_ASSERT(read.has_value());
    RC_ASSERT(read->steps() == length.steps());
    RC_ASSERT((text[0] == '-') == (length.steps() < 0));
    RC_ASSERT(text.find('-', 1) == std::string::npos);
  }
}

void reads_back_everywhere(const char* what, std::int64_t most, std::int64_t grain) {
  EXPECT_TRUE(rc::check(what, [=] {
    for (int i = 0; i < 50; ++i) {
      const auto length = Length::of_steps(even<std::int64_t>(-most, most + 1) * grain);
      for (const Bare bare : every_bare) reads_back(length, bare);
    }
  }));
}

TEST(WriteLength, ReadingUndoesIt) {
  reads_back_everywhere("any step to 1e9 m", grid_limit, 1);
  reads_back_everywhere("any step to 5 km", 320000LL * 5000, 1);
  reads_back_everywhere("any step to 2 ft", 97536 * 2, 1);
  reads_back_everywhere("64ths of an inch", 64 * 12 * 20000, 127);
  reads_back_everywhere("16ths of an inch", 16 * 12 * 20000, 508);
  reads_back_everywhere("whole inches", 12 * 20000, 8128);
  reads_back_everywhere("whole millimetres", 5000000, 320);
}

TEST(WriteLength, ReadingUndoesItForEveryStepOfAFoot) {
  for (std::int64_t steps = -97537; steps <= 97537; ++steps) {
    const Length length = Length::of_steps(steps);
    ASSERT_EQ(read_length(write_length(length, System::us), Bare::metres).value(), length);
    ASSERT_EQ(read_length(write_length(length, System::metric), Bare::inches).value(), length);
  }
  for (const std::int64_t edge : {grid_limit, -grid_limit}) {
    const Length length = Length::of_steps(edge);
    EXPECT_EQ(read_length(write_length(length, System::us), Bare::metres).value(), length);
    EXPECT_EQ(read_length(write_length(length, System::metric), Bare::metres).value(), length);
  }
}

TEST(WriteLength, PastTheRangeItIsWrittenAndRefused) {
  const Length lowest = Length::of_steps(std::numeric_limits<std::int64_t>::min());
  // 2^63 / 320 = 28823037615171174.4 mm
  EXPECT_EQ(write_length(lowest, System::metric), "-28823037615171174.4 mm");
  EXPECT_EQ(read_length(write_length(lowest, System::metric), Bare::metres).error().code, "length-too-large");
  EXPECT_EQ(read_length(write_length(lowest, System::us), Bare::metres).error().code, "length-too-large");
}

TEST(ShowLength, RoundsForPeople) {
  EXPECT_EQ(show_length(Length::inches(150) + Length::inch_64ths(33), System::us), "12' 6 1/2\"");
  EXPECT_EQ(show_length(Length::inches(150) + Length::inch_64ths(34), System::us), "12' 6 9/16\"");  // 8.5 16ths
  EXPECT_EQ(show_length(-Length::inches(150) - Length::inch_64ths(34), System::us), "-12' 6 9/16\"");
  EXPECT_EQ(show_length(Length::feet(12) - Length::of_steps(1), System::us), "12' 0\"");
  EXPECT_EQ(show_length(Length::inches(6) + Length::inch_64ths(32), System::us), "6 1/2\"");
  EXPECT_EQ(show_length(Length::of_steps(-1), System::us), "0\"");
  EXPECT_EQ(show_length(Length::millimetres(3810), System::metric), "3.810 m");
  EXPECT_EQ(show_length(Length::millimetres(1000) - Length::of_steps(160), System::metric), "1.000 m");
  EXPECT_EQ(show_length(Length::millimetres(1000) - Length::of_steps(161), System::metric), "999 mm");
  EXPECT_EQ(show_length(Length::millimetres(-38), System::metric), "-38 mm");
  EXPECT_EQ(show_length(Length::of_steps(160), System::metric), "1 mm");
  EXPECT_EQ(show_length(Length::of_steps(-159), System::metric), "0 mm");
}

TEST(ShowLength, IsRoundingOnly) {
  EXPECT_TRUE(rc::check("at most half a 16th, or half a millimetre, from the length", [] {
    const auto length = Length::of_steps(even<std::int64_t>(-320000LL * 5000, 320000LL * 5000));
    const auto us = read_length(show_length(length, System::us), Bare::metres).value();
    const auto metric = read_length(show_length(length, System::metric), Bare::feet).value();
    RC_ASSERT(std::llabs((us - length).steps()) <= 254);      // 8128 / 16 / 2
    RC_ASSERT(std::llabs((metric - length).steps()) <= 160);  // 320 / 2
    RC_ASSERT(us.steps() % 508 == 0);
    RC_ASSERT(metric.steps() % 320 == 0);
    RC_ASSERT(show_length(us, System::us) == show_length(length, System::us));
  }));
}

}  // namespace
