// Examples of every form of the grammar, made one from the other: each is spelled from whole feet, inches and 64ths,
// and its length is counted from the same whole numbers without any reading.
#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "units/read_length.h"

namespace {

using units::Bare;
using units::Length;

struct Example {
  std::string text;
  Length length;
  Bare bare = Bare::metres;
};

struct Spelling {
  const char* feet;
  const char* between;
  const char* inches;
};

// How the parts of "12' 6 1/2" are held together.
constexpr Spelling spellings[] = {
    {"'", " ", "\""},         {"'", "", "\""},           {"'", "-", "\""},         {" ft", " ", " in"},
    {"ft", "", "in"},         {" feet", " ", " inches"}, {" foot", "  ", " inch"}, {"\u2019", " ", "\u201d"},
    {"\u2032", "", "\u2033"}, {"\u2032", "-", "\u2033"}, {"'", " ", ""},           {" FT", " ", "IN"}};

struct Part {
  int top;
  int under;
};
constexpr Part parts[] = {{0, 1}, {1, 2}, {3, 4}, {5, 8}, {13, 16}, {31, 32}, {1, 64}};

std::string inches_text(int whole, Part part) {
  if (part.top == 0) return std::to_string(whole);
  const std::string fraction = std::to_string(part.top) + "/" + std::to_string(part.under);
  return whole == 0 ? fraction : std::to_string(whole) + " " + fraction;
}

Length inches_length(int whole, Part part) {
  return Length::inches(whole) + Length::inch_64ths(64 * part.top / part.under);
}

void add_feet_and_inches(std::vector<Example>& examples) {
  for (const auto& spelling : spellings) {
    for (const int feet : {0, 1, 12, 250}) {
      for (const int inches : {0, 6, 11}) {
        for (const Part part : parts) {
          const std::string text =
              std::to_string(feet) + spelling.feet + spelling.between + inches_text(inches, part) + spelling.inches;
          const Length length = Length::feet(feet) + inches_length(inches, part);
          examples.push_back({text, length});
          if (feet == 12) examples.push_back({"-" + text, -length});
        }
      }
    }
  }
}

void add_inches_alone(std::vector<Example>& examples) {
  for (const char* unit : {"\"", " \"", " in", "in", " inches", " inch", "\u201d", "\u2033"}) {
    for (const int inches : {0, 1, 6, 30}) {
      for (const Part part : parts) {
        examples.push_back({inches_text(inches, part) + unit, inches_length(inches, part)});
      }
    }
  }
  for (const int inches : {0, 1, 6, 30}) {
    for (const Part part : parts) {
      examples.push_back({inches_text(inches, part), inches_length(inches, part), Bare::inches});
      if (inches > 0) {
        examples.push_back({"7 " + std::to_string(inches % 12) + (part.top ? " " + inches_text(0, part) : ""),
                            Length::feet(7) + inches_length(inches % 12, part), Bare::feet_and_inches});
      }
    }
  }
}

void add_metric(std::vector<Example>& examples) {
  const struct {
    const char* unit;
    int steps;
    Bare bare;
  } units[] = {{" m", 320000, Bare::feet}, {"m", 320000, Bare::inches}, {" cm", 3200, Bare::feet},
               {"cm", 3200, Bare::metres}, {" mm", 320, Bare::metres},  {"mm", 320, Bare::feet_and_inches},
               {"", 320000, Bare::metres}, {"", 320, Bare::millimetres}};
  for (const auto& unit : units) {
    for (const int tenths : {0, 1, 5, 12, 100, 999, 38100}) {
      const std::string text = std::to_string(tenths / 10) + "." + std::to_string(tenths % 10) + unit.unit;
      const Length length = Length::of_steps(static_cast<std::int64_t>(tenths) * unit.steps / 10);
      examples.push_back({text, length, unit.bare});
      examples.push_back({"-" + text, -length, unit.bare});
    }
  }
}

void add_sums(std::vector<Example>& examples) {
  const struct {
    const char* text;
    Length length;
  } terms[] = {{"12' 6 1/2\"", Length::inches(150) + Length::inch_64ths(32)},
               {"3.5 m", Length::millimetres(3500)},
               {"38 cm", Length::millimetres(380)},
               {"2 1/2 in", Length::inch_64ths(160)},
               {"7'-3\"", Length::inches(87)},
               {"(4' - 1')", Length::feet(3)},
               {"-5 mm", Length::millimetres(-5)}};
  for (const auto& a : terms) {
    for (const auto& b : terms) {
      const std::string first = a.text;
      const std::string second = b.text;
      examples.push_back({first + " + " + second, a.length + b.length});
      examples.push_back({first + " - " + second, a.length - b.length});
      examples.push_back({"2 * (" + first + " + " + second + ") / 2", a.length + b.length});
      examples.push_back({first + " * 3 + " + second, a.length * 3 + b.length});
    }
  }
}

TEST(ReadLengthExamples, AThousandSpellingsAreRead) {
  std::vector<Example> examples;
  add_feet_and_inches(examples);
  add_inches_alone(examples);
  add_metric(examples);
  add_sums(examples);
  EXPECT_GE(examples.size(), 1000u);
  RecordProperty("examples", static_cast<int>(examples.size()));
  for (const auto& each : examples) {
    const auto length = units::read_length(each.text, each.bare);
    ASSERT_TRUE(length.has_value()) << each.text << ": " << sentence(length.error());
    ASSERT_EQ(length->steps(), each.length.steps()) << each.text;
  }
}

// Every example with a strange letter put in at each place is refused, and never later than at that letter.
TEST(ReadLengthExamples, AStrangeLetterAnywhereIsRefused) {
  std::vector<Example> examples;
  add_sums(examples);
  add_metric(examples);
  for (const auto& each : examples) {
    for (std::size_t at = 0; at <= each.text.size(); ++at) {
      for (const char strange : {'#', 'q', ','}) {
        std::string text = each.text;
        text.insert(at, 1, strange);
        const auto length = units::read_length(text, each.bare);
        ASSERT_FALSE(length.has_value()) << text;
        ASSERT_LE(length.error().place.column, static_cast<int>(at) + 1) << text;
      }
    }
  }
}

}  // namespace
