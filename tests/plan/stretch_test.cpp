#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <map>

#include "plan/site.h"
#include "plan/small_jobs.h"

using namespace small;

static std::map<std::string, double> lengths(const plan::Ground& ground) {
  std::map<std::string, double> feet_of;
  for (const plan::Stretch& stretch : ground.stretches) {
    const std::string what = plan::word(stretch.meets) + (stretch.other.empty() ? "" : " " + stretch.other);
    feet_of[what] += feet(stretch.length());
  }
  return feet_of;
}

// A deck of 20 x 10 ft with a house along its north side for 12 ft, a kerb line along the south.
TEST(Stretch, sidesMeetWhatLiesAlongThem) {
  const plan::Site site =
      plan::site(job({paved("A1", rectangle(0, 0, 240, 120)), building("H", rectangle(60, 120, 204, 400)),
                      run("K", {{at(0, 0), 0, {}}}, at(240, 0), "restraint")}));
  const auto found = lengths(*site.find("A1"));
  EXPECT_NEAR(found.at("building H"), 12, 1e-6);
  EXPECT_NEAR(found.at("restraint K"), 20, 1e-6);
  EXPECT_NEAR(found.at("planting"), 60 - 12 - 20, 1e-6);
}

TEST(Stretch, aGapWithinReachMeetsAndOneBeyondDoesNot) {
  plan::Job near = job({paved("A1", rectangle(0, 0, 120, 120)), building("H", rectangle(0, 121, 120, 240))});
  near.choices.reach = Length::inches(1);
  EXPECT_NEAR(lengths(*plan::site(near).find("A1")).at("building H"), 10, 1e-6);
  near.choices.reach = Length::inch_64ths(63);
  EXPECT_EQ(lengths(*plan::site(near).find("A1")).count("building H"), 0u);
}

// A round pool of 5 ft radius in a square deck: the cut edge is the pool's, all round.
TEST(Stretch, theEdgeOfAPoolInPavingMeetsTheWaterAllRound) {
  const plan::Site site = plan::site(job({paved("A1", rectangle(0, 0, 240, 240)), pool("P", circle(120, 120, 60))}));
  const auto found = lengths(*site.find("A1"));
  EXPECT_NEAR(found.at("water P"), 2 * 3.14159265358979 * 5, 1e-4);
  for (const plan::Stretch& stretch : site.find("A1")->stretches)
    if (stretch.meets == plan::Meets::water) {
      EXPECT_EQ(stretch.origin.element, plan::mark("P"));
      EXPECT_NEAR(stretch.radius, 60 * 0.0254, 1e-6);
    }
}

TEST(Stretch, aShortOneJoinsItsLongerSide) {
  // Two areas side by side, the second ends 1 in short of the first's corner: 1 in of planting joins the 119 in.
  const plan::Site site =
      plan::site(job({paved("A1", rectangle(0, 0, 120, 120)), paved("A2", rectangle(120, 1, 240, 120))}));
  const auto found = lengths(*site.find("A1"));
  EXPECT_EQ(found.count("planting"), 1u);
  EXPECT_NEAR(found.at("paving A2") + found.at("planting"), 40, 1e-6);
  // 119 in meets; the inch beside it faces nothing and is under 50 mm: it belongs to the longer of its neighbours, the
  // 30 ft of planting round the corner.
  EXPECT_NEAR(found.at("paving A2"), 119.0 / 12, 1e-6);
}

TEST(Stretch, stretchesAddUpToThePerimeterAndMeetingIsMutual) {
  EXPECT_TRUE(rc::check("add up, and A meets B as long as B meets A", [] {
    std::vector<plan::Element> elements;
    const int count = *rc::gen::inRange(2, 7);
    for (int i = 0; i < count; ++i) {
      const long x = 60 * *rc::gen::inRange<long>(0, 6), y = 60 * *rc::gen::inRange<long>(0, 6);
      const long w = 60 * *rc::gen::inRange<long>(1, 4), h = 60 * *rc::gen::inRange<long>(1, 4);
      const bool solid = *rc::gen::arbitrary<bool>();
      elements.push_back(solid ? building(std::to_string(i), rectangle(x, y, x + w, y + h))
                               : paved(std::to_string(i), rectangle(x, y, x + w, y + h)));
    }
    const plan::Site site = plan::site(job(elements));
    std::map<std::pair<std::string, std::string>, double> meeting;
    for (const auto& ground : site.grounds) {
      double sum = 0;
      for (const plan::Stretch& stretch : ground->stretches) {
        sum += stretch.length().si();
        if (!stretch.other.empty()) meeting[{ground->element->id, stretch.other}] += stretch.length().si();
      }
      RC_ASSERT(std::abs(sum - ground->net.perimeter().si()) < 1e-9 * (1 + sum));
    }
    for (const auto& [pair, length] : meeting) {
      const auto back = meeting.find({pair.second, pair.first});
      RC_ASSERT(back != meeting.end());
      RC_ASSERT(std::abs(back->second - length) < 1e-6);
    }
  }));
}
