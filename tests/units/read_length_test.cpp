#include "units/read_length.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <string>

#include "draw.h"

namespace {

using units::Bare;
using units::Length;
using units::read_length;

constexpr Bare every_bare[] = {Bare::metres, Bare::millimetres, Bare::feet, Bare::inches, Bare::feet_and_inches};

Length ft(std::int64_t count) { return Length::feet(count); }
Length in(std::int64_t count) { return Length::inches(count); }
Length in64(std::int64_t count) { return Length::inch_64ths(count); }
Length mm(std::int64_t count) { return Length::millimetres(count); }

struct Accepted {
  const char* text;
  Length length;
};

void expect_read(const Accepted& each, Bare bare) {
  const auto length = read_length(each.text, bare);
  ASSERT_TRUE(length.has_value()) << each.text << ": " << sentence(length.error());
  EXPECT_EQ(length->steps(), each.length.steps()) << each.text << " in field " << static_cast<int>(bare);
}

TEST(ReadLength, TextWithUnitsIsTheSameInEveryField) {
  const Accepted cases[] = {{"12' 6 1/2\"", in(150) + in64(32)},
                            {"12'-6\"", in(150)},
                            {"12'6\"", in(150)},
                            {"12' 6\"", in(150)},
                            {"12'-6 1/2\"", in(150) + in64(32)},
                            {"6 1/2\"", in(6) + in64(32)},
                            {"3/4\"", in64(48)},
                            {"3/4 in", in64(48)},
                            {"-10'5\"", -in(125)},
                            {"- 10' 5\"", -in(125)},
                            {"+10'5\"", in(125)},
                            {"-10'-5\"", -in(125)},
                            {"12.5 ft", in(150)},
                            {"12.5'", in(150)},
                            {".5 ft", in(6)},
                            {"3.81 m", mm(3810)},
                            {"3.81m", mm(3810)},
                            {"38 cm", mm(380)},
                            {"12 mm", mm(12)},
                            {"2 1/2 in", in64(160)},
                            {"2 1/2 ft", in(30)},
                            {"2 1/2'", in(30)},
                            {"12 feet 6 inches", in(150)},
                            {"1 foot 1 inch", in(13)},
                            {"12ft6in", in(150)},
                            {"12 ft 6 1/2 in", in(150) + in64(32)},
                            {"12FT 6IN", in(150)},
                            {"3 Cm", mm(30)},
                            {"3 MM", mm(3)},
                            {"12ft-6in", in(150)},
                            {"12' 6", in(150)},
                            {"12'6", in(150)},
                            {"12' 6 1/2", in(150) + in64(32)},
                            {"12' 1/2\"", in(144) + in64(32)},
                            {"12' 0 1/2\"", in(144) + in64(32)},
                            {"12' 1/2", in(144) + in64(32)},
                            {"12' 6.5\"", in(150) + in64(32)},
                            {"0'", ft(0)},
                            {"-0'", ft(0)},
                            {"0' 6\"", in(6)},
                            {"  12'  6\"  ", in(150)},
                            {"\t3 m\t", mm(3000)},
                            {"1/64\"", in64(1)},
                            {"63/64\"", in64(63)},
                            {"48/2 in", in(24)},
                            {"0.003125 mm", Length::of_steps(1)},
                            {"1000000000 m", Length::of_steps(320000000000000)},
                            {"-1000000000 m", Length::of_steps(-320000000000000)}};
  for (const auto& each : cases) {
    for (const Bare bare : every_bare) expect_read(each, bare);
  }
}

TEST(ReadLength, MarksOfAllMakes) {
  const Accepted cases[] = {{"12\u2019 6\u201d", in(150)},
                            {"12\u2018 6\u201c", in(150)},
                            {"12\u2032 6\u2033", in(150)},
                            {"12\u2032-6 1/2\u2033", in(150) + in64(32)},
                            {"12' 6\u00bd\"", in(150) + in64(32)},
                            {"12' 6 \u00bd\"", in(150) + in64(32)},
                            {"\u00be\"", in64(48)},
                            {"6 1\u20442\"", in(6) + in64(32)},
                            {"12\u2019\u20116\u201d", in(150)},
                            {"\u221212 mm", mm(-12)},
                            {"12\u00a0mm", mm(12)},
                            {"12\u202fmm", mm(12)},
                            {"2 \u00d7 3 m", mm(6000)},
                            {"3 m \u00f7 2", mm(1500)},
                            {"3 m \u2212 1 m", mm(2000)},
                            {"3 m \u2013 1 m", mm(2000)}};
  for (const auto& each : cases) {
    for (const Bare bare : every_bare) expect_read(each, bare);
  }
}

TEST(ReadLength, SumsProductsAndBrackets) {
  const Accepted cases[] = {{"12' + 6\"", in(150)},
                            {"12' 6\" - 3\"", in(147)},
                            {"3 m - 5 cm", mm(2950)},
                            {"1 m + 2 cm + 3 mm", mm(1023)},
                            {"12' - 3'", ft(9)},
                            {"12'-3'", ft(9)},
                            {"(12') - 6\"", in(138)},
                            {"12' - (6\")", in(138)},
                            {"20' - 18\"", in(222)},
                            {"12.5' - 6\"", in(144)},
                            {"2 * 3'", ft(6)},
                            {"3' * 2", ft(6)},
                            {"3'*2", ft(6)},
                            {"12' / 2", ft(6)},
                            {"12'/2", ft(6)},
                            {"12' 6\" / 2", in(75)},
                            {"12'-6\" * 2", in(300)},
                            {"12' * 3/4", ft(9)},
                            {"3/4 * 12'", ft(9)},
                            {"12' / (3/4)", ft(16)},
                            {"2 * (3' + 6\")", in(84)},
                            {"-(3' + 6\")", in(-42)},
                            {"-2 * 3'", ft(-6)},
                            {"2 * -3'", ft(-6)},
                            {"3' - -6\"", in(42)},
                            {"3' + -6\"", in(30)},
                            {"((3'))", ft(3)},
                            {"(1 + 2) ft", ft(3)},
                            {"(1 + 2)'", ft(3)},
                            {"(6 1/2)\"", in(6) + in64(32)},
                            {"10' * (3' / 6')", ft(5)},
                            {"10' * (3' / 6' + 1)", ft(15)},
                            {"1 m + 1\"", mm(1000) + in(1)},
                            {"1 m / 3 * 3", mm(1000)},
                            {"1' / 7 + 6' / 7", ft(1)},
                            {"6 1/2\" / 2", in(3) + in64(16)},
                            {"12' / 3 1/2 * 7", ft(24)},
                            {"4 * 11 7/8\" + 3 * 1/8\"", in64(4 * 760 + 24)}};
  for (const auto& each : cases) {
    for (const Bare bare : every_bare) expect_read(each, bare);
  }
}

TEST(ReadLength, ABareNumberIsInTheUnitOfTheField) {
  expect_read({"3.81", mm(3810)}, Bare::metres);
  expect_read({"12", mm(12)}, Bare::millimetres);
  expect_read({"12.5", in(150)}, Bare::feet);
  expect_read({"12.5", in(12) + in64(32)}, Bare::inches);
  expect_read({"12", ft(12)}, Bare::feet_and_inches);
  expect_read({"12.5", in(150)}, Bare::feet_and_inches);
  expect_read({"3/4", in64(48)}, Bare::inches);
  expect_read({"3/4", in(9)}, Bare::feet);
  expect_read({"3/4", mm(750)}, Bare::metres);
  expect_read({"6 1/2", in(6) + in64(32)}, Bare::inches);
  expect_read({"6 1/2", in(78)}, Bare::feet);
  expect_read({"6 - 1/2", in(5) + in64(32)}, Bare::inches);
  expect_read({"-6 1/2", -in(6) - in64(32)}, Bare::inches);
  expect_read({"12 + 6\"", in(150)}, Bare::feet);
  expect_read({"12 + 6", ft(18)}, Bare::feet);
  expect_read({"12-6", ft(6)}, Bare::feet);
  expect_read({"12 -6", ft(6)}, Bare::feet);
  expect_read({"2 * 3 + 1", mm(7000)}, Bare::metres);
  expect_read({"2 + 3 * 4", mm(14)}, Bare::millimetres);
  expect_read({"(2 + 3) * 4", mm(20)}, Bare::millimetres);
  expect_read({"7 / 2", mm(3500)}, Bare::metres);
  expect_read({"7/2", mm(3500)}, Bare::metres);
  expect_read({"1.5/2", mm(750)}, Bare::metres);
  expect_read({"3/1.5", mm(2000)}, Bare::metres);
  expect_read({"3 m + 1", mm(3001)}, Bare::millimetres);
  expect_read({"2 - (1 - 4) * 1 m - 2", mm(3000)}, Bare::millimetres);
}

TEST(ReadLength, FeetAndInchesWithoutMarks) {
  const Bare bare = Bare::feet_and_inches;
  expect_read({"12 6.5", in(150) + in64(32)}, bare);
  expect_read({"12 6", in(150)}, bare);
  expect_read({"12 6 1/2", in(150) + in64(32)}, bare);
  expect_read({"12 0 1/2", in(144) + in64(32)}, bare);
  expect_read({"12 6\"", in(150)}, bare);
  expect_read({"12 6 1/2\"", in(150) + in64(32)}, bare);
  expect_read({"-12 6.5", -in(150) - in64(32)}, bare);
  expect_read({"12 6 + 3", in(186)}, bare);
  expect_read({"12 6 + 3 3", in(189)}, bare);
  expect_read({"20 - 6", ft(14)}, bare);
  expect_read({"20-15", ft(5)}, bare);
  expect_read({"6 1/2\"", in(6) + in64(32)}, bare);
  expect_read({"6\u00bd", in(78)}, bare);
}

TEST(ReadLength, IsExactAndRoundsOnce) {
  // Halves of a step: 0.0015625 mm. Sums are rounded at the end only: 1/3 in three times is 1.
  expect_read({"0.0015625 mm", Length::of_steps(1)}, Bare::metres);
  expect_read({"-0.0015625 mm", Length::of_steps(-1)}, Bare::metres);
  expect_read({"0.0015624999999999999999 mm", Length::of_steps(0)}, Bare::metres);
  expect_read({"0.0015625 mm + 0.0015625 mm", Length::of_steps(1)}, Bare::metres);
  expect_read({"1\" / 3 + 1\" / 3 + 1\" / 3", in(1)}, Bare::metres);
  // 12' 6 1/256" = 150 x 8128 + 31.75 steps.
  expect_read({"12' 6.00390625\"", Length::of_steps(150 * 8128 + 32)}, Bare::metres);
  // 12.3456789 ft x 97536 steps = 1204148.137...
  expect_read({"12.3456789 ft", Length::of_steps(1204148)}, Bare::metres);
}

struct Refused {
  const char* text;
  Bare bare;
  int column;
  const char* code = "length-ambiguous";
};

constexpr Bare m = Bare::metres;
constexpr Bare f = Bare::feet;
constexpr Bare fi = Bare::feet_and_inches;
constexpr const char* odd = "length-not-understood";
constexpr const char* zero = "length-zero-division";
constexpr const char* large = "length-too-large";

const Refused not_understood[] = {{"", m, 1, "length-empty"},
                                  {"   ", m, 1, "length-empty"},
                                  {"12,5", m, 3, odd},
                                  {"1,200", m, 2, odd},
                                  {"1'2'", m, 4, odd},
                                  {"6 1/0", m, 5, zero},
                                  {"6 1/0\"", m, 5, zero},
                                  {"1/0", m, 3, zero},
                                  {"5 apples", m, 3, odd},
                                  {"nan", m, 1, odd},
                                  {"inf", m, 1, odd},
                                  {"-inf", m, 2, odd},
                                  {"1e3", m, 2, odd},
                                  {"0x10", m, 2, odd},
                                  {"3 m * 2 m", m, 5, "length-product"},
                                  {"3' * 2'", f, 4, "length-product"},
                                  {"(1 m) * (1 m)", m, 7, "length-product"},
                                  {"1000000001 m", m, 1, large},
                                  {"1000000000.00001 m", m, 1, large},
                                  {"-1000000001 m", m, 1, large},
                                  {"99999999999999999999999999999999999999999999", m, 39, large},
                                  {"10000000000 * 10000000000 * 10000000000 * 10000000000", m, 41, large},
                                  {"12' 6\" 3\"", m, 8, odd},
                                  {"6\" 12'", m, 4, odd},
                                  {"12 6", f, 4, odd},
                                  {"12 6", m, 4, odd},
                                  {"12 6\"", f, 4, odd},
                                  {"3 m 20 cm", m, 5, odd},
                                  {"3 m 20", m, 5, odd},
                                  {"12 ft in", m, 7, odd},
                                  {"'", m, 1, odd},
                                  {"m", m, 1, odd},
                                  {"6\" 1/2", m, 4, odd},
                                  {"12' 6' ", m, 6, odd},
                                  {"12' 3 m", m, 7, odd},
                                  {"12' 12\"", m, 5, odd},
                                  {"12' 18\"", m, 5, odd},
                                  {"12.5' 6\"", m, 7, odd},
                                  {"2 1/2' 6\"", m, 8, odd},
                                  {"1/2' 6\"", m, 6, odd},
                                  {"12' 6 3/2\"", m, 7, odd},
                                  {"12' 3/2\"", m, 5, odd},
                                  {"6 3/2\"", m, 3, odd},
                                  {"6.5 1/2\"", m, 5, odd},
                                  {"1/2 1/2", m, 5, odd},
                                  {"1 2 3", m, 3, odd},
                                  {"1 2 3", fi, 5, odd},
                                  {"12.5 6", fi, 6, odd},
                                  {"12 6'", fi, 5, odd},
                                  {"12 13", fi, 4, odd},
                                  {"12 6 m", fi, 6, odd},
                                  {"5.", m, 2, odd},
                                  {".", m, 1, odd},
                                  {"1.2.3", m, 4, odd},
                                  {"12. 6", m, 3, odd},
                                  {"..5", m, 1, odd},
                                  {"+", m, 2, odd},
                                  {"-", m, 2, odd},
                                  {"3 m +", m, 6, odd},
                                  {"* 3 m", m, 1, odd},
                                  {"/ 3 m", m, 1, odd},
                                  {"3 m * / 2", m, 7, odd},
                                  {"--3 m", m, 2, odd},
                                  {"3 m - - - 1 m", m, 9, odd},
                                  {"3 m ++ -1 m", m, 8, odd},
                                  {"(3 m", m, 5, odd},
                                  {"3 m)", m, 4, odd},
                                  {"()", m, 2, odd},
                                  {"(3 m))", m, 6, odd},
                                  {"2 (3 m)", m, 3, odd},
                                  {"(3 m) 2", m, 7, odd},
                                  {"(1 m) m", m, 7, odd},
                                  {"(2) (3 m)", m, 5, odd},
                                  {"(3 m", m, 5, odd},
                                  {"(3 m 2)", m, 6, odd},
                                  {"3 m / 0", m, 7, zero},
                                  {"3 m / (1 - 1)", m, 7, zero},
                                  {"3 m / (1 m - 100 cm)", m, 7, zero},
                                  {"3 m / 2 m", m, 1, odd},
                                  {"3 / 2 m", m, 3, odd},
                                  {"3 m + 3 m / 2 m", m, 5, odd},
                                  {"3 + 3 m / 2 m", m, 1, odd},
                                  {"12 m.", m, 5, odd},
                                  {"12 ft. 6 in.", m, 6, odd},
                                  {"12 yd", m, 4, odd},
                                  {"12 metres", m, 4, odd},
                                  {"12mx", m, 3, odd},
                                  {"12''", m, 4, odd},
                                  {"12' 6''", m, 6, odd},
                                  {"$12", m, 1, odd},
                                  {"=12", m, 1, odd},
                                  {"12 m;", m, 5, odd},
                                  {"12\n", m, 3, odd},
                                  {"2 x 3 m", m, 3, odd},
                                  {"1 m\u00b2", m, 4, odd},
                                  {"\u4e09", m, 1, odd},
                                  {"12\u2019 6\u201d \u4e09", m, 8, odd},
                                  {"12\xff", m, 3, odd},
                                  {"\xc3", m, 1, odd},
                                  {"12\u2019\xe2\x80", m, 4, odd},
                                  {"\u00bd\u00bd", m, 2, odd},
                                  {"1/2\u00bd", m, 4, odd}};

const Refused two_readings[] = {{"12' - 6\"", m, 5},
                                {"12' -6\"", m, 5},
                                {"12'- 6\"", m, 4},
                                {"12'-6", f, 4},
                                {"12' - 6", f, 5},
                                {"12 ft - 6 in", m, 7},
                                {"12' - 6 1/2\"", m, 5},
                                {"12' - 1/2\"", m, 5},
                                {"12'-18\"", m, 4},
                                {"12.5'-6\"", m, 6},
                                {"3\" + 12' - 6\"", m, 10},
                                {"6-1/2\"", m, 2},
                                {"6-1/2", Bare::inches, 2},
                                {"6 -1/2\"", m, 3},
                                {"12' 6-1/2\"", m, 6},
                                {"12'-6-1/2\"", m, 6},
                                {"12'/3/4", m, 4},
                                {"12' / 3/4", m, 5},
                                {"12' / 3 / 4", m, 9},
                                {"1/2/3", m, 4},
                                {"6 1/2/2", m, 6},
                                {"12' 6 / 2", m, 7},
                                {"12' 6 * 2", m, 7},
                                {"6 1/2", fi, 1},
                                {"3/4", fi, 1},
                                {"-3/4", fi, 1},
                                {"12' + 3/4", fi, 7},
                                {"6 1/2 * 2", fi, 1},
                                {"6 1/2 + 1", fi, 1},
                                {"\u00bd", fi, 1},
                                {"12-6", fi, 3},
                                {"12 - 6\"", fi, 4},
                                {"12-6\"", fi, 3},
                                {"12 6 / 2", fi, 6}};

void expect_refused(const Refused& each) {
  const auto length = read_length(each.text, each.bare);
  ASSERT_FALSE(length.has_value()) << each.text << " gave " << length->steps();
  EXPECT_EQ(length.error().place.column, each.column) << each.text << " -> " << sentence(length.error());
  EXPECT_EQ(length.error().code, each.code) << each.text << " -> " << sentence(length.error());
  EXPECT_FALSE(length.error().mend.empty()) << each.text;
  EXPECT_FALSE(length.error().text.empty()) << each.text;
}

TEST(ReadLength, RefusesWhatItDoesNotUnderstandWithItsPlace) {
  for (const auto& each : not_understood) expect_refused(each);
}

TEST(ReadLength, RefusesWhatHasTwoReadings) {
  for (const auto& each : two_readings) expect_refused(each);
}

TEST(ReadLength, DeepBracketsAreRefusedAndDoNotOverflowTheStack) {
  EXPECT_TRUE(read_length(std::string(40, '(') + "1 m" + std::string(40, ')'), Bare::metres).has_value());
  const auto deep = read_length(std::string(1000000, '('), Bare::metres);
  ASSERT_FALSE(deep.has_value());
  EXPECT_EQ(deep.error().place.column, 41);
  EXPECT_LT(deep.error().text.size(), 200u);
  std::string sum = "0 m";
  for (int i = 0; i < 10000; ++i) sum += " + 1 mm";
  EXPECT_EQ(read_length(sum, Bare::metres).value(), mm(10000));
}

// Random words of the grammar in random order: either refused with a place inside the text, or read to a length that
// is written and read back.
void refused_or_read(const std::string& text, Bare bare) {
  const auto length = read_length(text, bare);
  if (length) {
    RC_ASSERT(read_length(write_length(*length, units::System::us), bare).value() == *length);
  } else {
    RC_ASSERT(length.error().place.column >= 1);
    RC_ASSERT(length.error().place.column <= static_cast<int>(text.size()) + 1);
  }
}

TEST(ReadLength, AnyTextIsRefusedWithAPlaceOrReadToALength) {
  EXPECT_TRUE(rc::check("random words", [] {
    const auto word = rc::gen::element<std::string>("12", "6", "0", "3.5", "1/2", " 1/2", " ", " ", "'", "\"", " ft ",
                                                    " in", " m", "mm", "+", " - ", "-", "*", " / ", "/", "(", ")", ",",
                                                    ".", "x", "\u2032", "\u00bd", "\xff");
    for (int i = 0; i < 200; ++i) {
      std::string text;
      for (int count = even(1, 12); count > 0; --count) text += *word;
      refused_or_read(text, every_bare[even<std::size_t>(0, std::size(every_bare))]);
    }
  }));
}

}  // namespace
