// The rules that come with the program: words that something answers to, and a rule for every kind of mark.
#include <gtest/gtest.h>

#include <set>

#include "files/starter.h"

namespace {

TEST(StarterRules, NameOnlyWhatAnswersToThem) {
  const std::set<std::string> marks{"buried-service", "overhead-line", "lot-line", "setback", "easement",
                                    "flood",          "barrier",       "septic",   "well",    "gate",
                                    "path",           "drop-spot",     "downspout"};
  std::set<std::string> against{"dig",   "paving", "base",  "infiltrates", "sealed", "wall",   "steps", "structure",
                                "stand", "any",    "level", "machine",     "tight",  "barrow", "no-run"};
  against.insert(marks.begin(), marks.end());
  std::set<std::string> ids, ruled;
  for (const catalogue::SiteRule& rule : starter().site_rules) {
    EXPECT_TRUE(ids.insert(rule.id).second) << rule.id;
    EXPECT_TRUE(marks.contains(rule.mark) || rule.mark == "tree" || rule.mark == "building" || rule.mark == "pool")
        << rule.id;
    EXPECT_TRUE(against.contains(rule.against)) << rule.id;
    // A mark or a thing of no ground is never met without a distance; a bound is crossed.
    if (rule.mark == "well" || rule.mark == "septic" || rule.mark == "barrier") {
      EXPECT_GT(rule.distance.value().steps(), 0) << rule.id;
    }
    EXPECT_GE(rule.per_size, 0) << rule.id;
    ruled.insert(rule.mark);
  }
  for (const std::string& mark : marks) EXPECT_TRUE(ruled.contains(mark)) << mark;
}

TEST(StarterRules, PublishedDistances) {
  const auto rule = [](const std::string& id) {
    for (const catalogue::SiteRule& one : starter().site_rules)
      if (one.id == id) return one;
    throw std::runtime_error("no rule " + id);
  };
  EXPECT_EQ(rule("roots").distance, units::Length::feet(6));  // municipal tree codes
  EXPECT_EQ(rule("roots").per_size, 15);                      // 1.25 ft for each inch of trunk
  EXPECT_EQ(rule("service-by-hand").distance, units::Length::inches(24));
  EXPECT_EQ(rule("overhead-machine").distance, units::Length::feet(10));  // 29 CFR 1926.1408, from memory
  EXPECT_EQ(rule("well-water").distance, units::Length::feet(100));
  EXPECT_EQ(rule("foundation-water").distance, units::Length::feet(10));
  EXPECT_EQ(rule("barrier-stand").distance, units::Length::inches(36));  // ISPSC 305, from memory
  EXPECT_EQ(rule("barrier-level").distance, units::Length::inches(48));  // CPSC pool barrier guidelines
  EXPECT_EQ(rule("drop-spot-dig").distance, units::Length::feet(2));     // 29 CFR 1926.651(j)(2)
}

}  // namespace
