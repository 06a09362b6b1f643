#include "takeoff/stage.h"

#include <gtest/gtest.h>

using takeoff::Facts;
using takeoff::Stage;

TEST(Stage, wordsGoBothWaysInTheOrderOfBuilding) {
  std::vector<std::string> words;
  for (const Stage stage : takeoff::all_stages) {
    words.push_back(takeoff::word(stage));
    EXPECT_EQ(takeoff::stage_of(takeoff::word(stage)), stage);
  }
  EXPECT_EQ(words, (std::vector<std::string>{"protect", "dig", "under-ground", "wall", "base", "coping", "paving",
                                             "joints", "finish"}));
  EXPECT_FALSE(takeoff::stage_of("painting"));
}

TEST(Stage, rulesAreWordsJoinedByAndAndOr) {
  const Facts facts{{"pool", "open-base"}};
  EXPECT_TRUE(facts.holds("always"));
  EXPECT_TRUE(facts.holds(""));
  EXPECT_TRUE(facts.holds("pool"));
  EXPECT_TRUE(facts.holds("wall or pool"));
  EXPECT_TRUE(facts.holds("pool and open-base"));
  EXPECT_FALSE(facts.holds("pool and wall"));
  EXPECT_FALSE(facts.holds("wall"));
}

TEST(Stage, holdPointsStandAtTheirStageWhereTheirRuleHolds) {
  catalogue::Catalogue rules;
  rules.hold_points = {{"base", "outlet open", "", "bedding", "crew lead", "", "open-base"},
                       {"base", "bars tied", "", "concrete", "inspector", "", "wall"}};
  const auto notes = takeoff::stage_notes(rules, {{"open-base"}});
  ASSERT_EQ(notes.size(), 9u);
  ASSERT_EQ(notes[4].hold_points.size(), 1u);
  EXPECT_EQ(notes[4].hold_points[0].look_at, "outlet open");
}
