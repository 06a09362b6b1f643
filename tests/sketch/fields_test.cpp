// The prompt's fields: what is typed is a value or a sentence, never 0.
#include "sketch/fields.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <fstream>
#include <regex>
#include <set>

#include "sketch/words.h"

namespace {

using sketch::Fields;
using sketch::Typed;
using units::Length;
using units::System;
namespace field = sketch::field;

const sketch::Field& shown(const Fields& fields, std::size_t i) {
  static std::vector<sketch::Field> kept;
  kept = fields.shown();
  return kept.at(i);
}

TEST(Fields, ReadsABareNumberInTheUnitOfTheJob) {
  Fields fields({field::length()});
  fields.take({"length", "12.5", false}, System::us);
  EXPECT_EQ(fields.length("length"), Length::inches(150));  // 12.5 ft x 12
  EXPECT_EQ(shown(fields, 0).understood, "12' 6\"");
  fields.take({"length", "12.5", false}, System::metric);
  EXPECT_EQ(fields.length("length"), Length::millimetres(12500));
  fields.take({"length", "12 6 1/2", false}, System::us);
  EXPECT_EQ(fields.length("length"), Length::inch_64ths(64 * 150 + 32));
}

TEST(Fields, RefusesWithASentenceAndHasNoValueThen) {
  Fields fields({field::length(), field::direction(), field::opacity()});
  for (const char* text : {"12,5", "1'2'", "6-1/2\"", "3/4", "apples", "5 5 5", "nan", "12'/0"}) {
    fields.take({"length", text, true}, System::us);
    EXPECT_FALSE(fields.length("length")) << text;
    EXPECT_TRUE(shown(fields, 0).wrong) << text;
    EXPECT_FALSE(shown(fields, 0).understood.empty()) << text;
    EXPECT_FALSE(fields.locked("length")) << text;
    EXPECT_FALSE(fields.has("length")) << text;
    EXPECT_EQ(shown(fields, 0).text, text);
  }
  fields.clear("length");
  for (const char* text : {"45,5", "360.1", "-400", "x", "4 5", "1e400"}) {
    fields.take({"angle", text, true}, System::us);
    EXPECT_FALSE(fields.number("angle")) << text;
    EXPECT_NE(fields.wrong(), nullptr) << text;
  }
  fields.clear("angle");
  fields.take({"opacity", "half", true}, System::us);
  EXPECT_FALSE(fields.number("opacity"));
}

TEST(Fields, AnglesAreDegrees) {
  Fields fields({field::direction()});
  for (const char* text : {"22.5", "22.5°", " 22.5 deg", "22.5 degrees "}) {
    fields.take({"angle", text, false}, System::us);
    EXPECT_EQ(fields.number("angle"), 22.5) << text;
    EXPECT_EQ(shown(fields, 0).understood, "22.5°");
  }
  EXPECT_EQ(sketch::show_angle(90.04), "90°");
  EXPECT_EQ(sketch::show_angle(-0.01), "0°");
}

TEST(Fields, LockHoldsAndEmptyTextClears) {
  Fields fields({field::length()});
  fields.take({"length", "5", true}, System::us);
  EXPECT_TRUE(fields.locked("length"));
  fields.take({"length", "  ", true}, System::us);
  EXPECT_FALSE(fields.locked("length"));
  EXPECT_FALSE(fields.typed());
  EXPECT_FALSE(fields.take({"nothing", "5", false}, System::us));
}

TEST(Fields, WhatThePointerGivesStandsOnlyWhereNothingIsTyped) {
  Fields fields({field::length(), field::direction()});
  fields.take({"length", "5", false}, System::us);
  fields.point("length", Length::feet(9), System::us);
  fields.point("angle", 33.0);
  EXPECT_EQ(shown(fields, 0).text, "5");
  EXPECT_EQ(shown(fields, 1).text, "33°");
  EXPECT_FALSE(fields.has("angle"));
}

TEST(Fields, OtherFieldsKeepWhatWasTypedIntoThoseThatStay) {
  Fields fields({field::length(), field::direction()});
  fields.take({"length", "5", true}, System::us);
  fields.take({"angle", "30", false}, System::us);
  fields.become({field::radius(), field::length()});
  EXPECT_EQ(fields.length("length"), Length::feet(5));
  EXPECT_TRUE(fields.locked("length"));
  EXPECT_FALSE(fields.number("angle"));
}

TEST(Fields, AnyTextIsAValueOrASentence) {
  EXPECT_TRUE(rc::check("never both, never neither", [] {
    const std::string letters = "0123456789 '\"-/.+*()ftmc,x";
    std::string text;
    const int count = *rc::gen::inRange(0, 9);
    for (int i = 0; i < count; ++i) text += letters[*rc::gen::inRange<std::size_t>(0, letters.size())];
    Fields fields({field::length(), field::direction()});
    for (const char* id : {"length", "angle"}) {
      fields.take({id, text, false}, System::us);
      const bool blank = text.find_first_not_of(' ') == std::string::npos;
      const bool value = fields.length(id).has_value() || fields.number(id).has_value();
      const sketch::Field one = fields.shown()[std::string(id) == "length" ? 0 : 1];
      RC_ASSERT(value == fields.has(id));
      RC_ASSERT(value == (!blank && !one.wrong));
      RC_ASSERT(one.understood.empty() == blank);
    }
  }));
}

// Every word that stands in a page of words is in the list that a table of another language goes by.
TEST(Words, AreAllListed) {
  const std::vector<std::string> listed = sketch::all_words();
  const std::set<std::string> known(listed.begin(), listed.end());
  const std::regex word(R"(inline constexpr const char\* \w+ =\s+"([^"]*)\")");
  int count = 0;
  for (const char* page : {"words.h", "change_words.h"}) {
    std::ifstream file(std::string(HOUSE_ROOT) + "/core/sketch/" + page);
    const std::string text{std::istreambuf_iterator<char>(file), {}};
    for (std::sregex_iterator at(text.begin(), text.end(), word), end; at != end; ++at, ++count)
      EXPECT_TRUE(known.contains((*at)[1])) << (*at)[1];
  }
  EXPECT_EQ(static_cast<std::size_t>(count), listed.size());
}

}  // namespace
