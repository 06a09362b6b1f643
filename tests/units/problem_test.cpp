#include "problem/problem.h"

#include <gtest/gtest.h>

#include "problem/ensure.h"

namespace {

using problem::Place;
using problem::Problem;
using problem::sentence;
using problem::Severity;

Problem at(Place place) { return {Severity::problem, "some-code", "the text", "the mend", std::move(place)}; }

TEST(ProblemSentence, NamesFileLineAndColumnAsToolsDo) {
  EXPECT_EQ(sentence(at({"", "terrace.json", 12, 5, {}})), "terrace.json:12:5: the text; the mend");
  EXPECT_EQ(sentence(at({"", "terrace.json", 12, 0, {}})), "terrace.json:12: the text; the mend");
  EXPECT_EQ(sentence(at({"deck", "terrace.json", 12, 5, {}})), "terrace.json:12:5, deck: the text; the mend");
}

TEST(ProblemSentence, NamesThePlaceInWordsWithoutAFile) {
  EXPECT_EQ(sentence(at({"", "", 0, 3, {}})), "column 3: the text; the mend");
  EXPECT_EQ(sentence(at({"", "", 2, 3, {}})), "line 2, column 3: the text; the mend");
  EXPECT_EQ(sentence(at({"", "", 2, 0, {}})), "line 2: the text; the mend");
}

TEST(ProblemSentence, NamesThePointOfThePlan) {
  EXPECT_EQ(sentence(at({"deck", "", 0, 0, problem::Xy{1.5, -0.0001}})),
            "deck at (1.500, 0.000) m: the text; the mend");
  EXPECT_EQ(sentence(at({"", "", 0, 0, problem::Xy{-2, 1234.5678}})), "at (-2.000, 1234.568) m: the text; the mend");
}

TEST(ProblemSentence, LeavesOutWhatIsNotKnown) {
  EXPECT_EQ(sentence({Severity::notice, "c", "only text", "", {}}), "only text");
}

TEST(Problem, WordsOfTheSeverities) {
  EXPECT_EQ(word(Severity::notice), "notice");
  EXPECT_EQ(word(Severity::flag), "flag");
  EXPECT_EQ(word(Severity::problem), "problem");
}

TEST(Problem, FaultIsAResultWithoutValue) {
  const problem::Result<int> result = problem::fault("bad-thing", "It is bad", "make it good", {"", "f", 1, 2, {}});
  ASSERT_FALSE(result.has_value());
  const Problem expected{Severity::problem, "bad-thing", "It is bad", "make it good", {"", "f", 1, 2, {}}};
  EXPECT_EQ(result.error(), expected);
}

TEST(Problem, ElementAndFileAreFilledInOnlyWhereMissing) {
  const Problem bare = at({});
  EXPECT_EQ(in_element(bare, "deck").place.element, "deck");
  EXPECT_EQ(in_element(in_element(bare, "deck"), "pool").place.element, "deck");
  EXPECT_EQ(in_file(bare, "a.json").place.file, "a.json");
  EXPECT_EQ(in_file(in_file(bare, "a.json"), "b.json").place.file, "a.json");
}

TEST(EnsureDeathTest, StopsWithThePromise) {
  problem::ensure(true, "holds");
  EXPECT_DEATH(problem::ensure(false, "the list is sorted"), "the list is sorted .*problem_test.cpp");
}

}  // namespace
