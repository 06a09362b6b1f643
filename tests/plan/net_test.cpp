#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <array>

#include "geometry/overlay.h"
#include "plan/site.h"
#include "plan/small_jobs.h"

using namespace small;

static const problem::Problem* find(const plan::Site& site, const std::string& code) {
  for (const auto& said : site.problems)
    if (said.code == code) return &said;
  return nullptr;
}

// 20 x 20 ft less a pool of 10 x 10 ft inside it: 400 - 100.
TEST(Net, aPoolIsTakenOutOfPavingWhateverTheOrder) {
  for (const bool pool_first : {true, false}) {
    std::vector<plan::Element> elements{paved("A1", rectangle(0, 0, 240, 240)), pool("P", rectangle(60, 60, 180, 180))};
    if (pool_first) std::swap(elements[0], elements[1]);
    const plan::Site site = plan::site(job(elements));
    EXPECT_NEAR(square_feet(site.find("A1")->net.area()), 300, 1e-9);
    EXPECT_NEAR(square_feet(site.find("P")->net.area()), 100, 1e-9);
    EXPECT_TRUE(site.problems.empty());
  }
}

TEST(Net, ofTwoAreasTheLaterKeepsTheOverlapAndANoticeSaysHowMuch) {
  const plan::Site site =
      plan::site(job({paved("A1", rectangle(0, 0, 120, 120)), paved("A2", rectangle(108, 0, 240, 120))}));
  EXPECT_NEAR(square_feet(site.find("A1")->net.area()), 90, 1e-9);
  EXPECT_NEAR(square_feet(site.find("A2")->net.area()), 110, 1e-9);
  const auto* said = find(site, "paving-overlaps");
  ASSERT_NE(said, nullptr);
  EXPECT_EQ(said->severity, problem::Severity::notice);
  EXPECT_NE(said->text.find("0.929 m2"), std::string::npos) << said->text;  // 10 sq ft = 0.92903 m2
  ASSERT_TRUE(said->place.at);
}

TEST(Net, pavingWhollyUnderAPoolIsAProblemAndTheRestComputes) {
  const plan::Site site =
      plan::site(job({paved("A1", rectangle(60, 60, 120, 120)), pool("P", rectangle(0, 0, 240, 240)),
                      paved("A2", rectangle(300, 0, 420, 120))}));
  const auto* said = find(site, "paving-covered");
  ASSERT_NE(said, nullptr);
  EXPECT_EQ(said->severity, problem::Severity::problem);
  EXPECT_EQ(said->place.element, "A1");
  EXPECT_NEAR(square_feet(site.find("A2")->net.area()), 100, 1e-9);
}

TEST(Net, aPoolOutsidePavingIsNoProblem) {  // deck on two sides; coping alone
  const plan::Site site =
      plan::site(job({paved("A1", rectangle(0, 0, 120, 120)), pool("P", rectangle(60, 60, 360, 360))}));
  EXPECT_TRUE(site.problems.empty());
}

TEST(Net, aFaultOfOneShapeLeavesTheOthers) {
  const Ring bow{{at(0, 0), 0, {}}, {at(120, 120), 0, {}}, {at(120, 0), 0, {}}, {at(0, 120), 0, {}}};
  const plan::Site site = plan::site(job({paved("A1", bow), paved("A2", rectangle(0, 0, 120, 120))}));
  EXPECT_TRUE(site.find("A1")->net.empty());
  EXPECT_FALSE(site.find("A1")->computed);
  EXPECT_NEAR(square_feet(site.find("A2")->net.area()), 100, 1e-9);
  ASSERT_FALSE(site.problems.empty());
  EXPECT_EQ(site.problems[0].place.element, "A1");
  EXPECT_TRUE(site.problems[0].place.at);
}

// Whatever is drawn over whatever: the nets add up to the union of all footprints, nothing twice and nothing lost.
TEST(Net, netsAddUpToTheUnion) {
  EXPECT_TRUE(rc::check("nets add up", [] {
    std::vector<plan::Element> elements;
    const int count = *rc::gen::inRange(1, 8);
    for (int i = 0; i < count; ++i) {
      const long x = *rc::gen::inRange<long>(0, 300), y = *rc::gen::inRange<long>(0, 300);
      const long w = *rc::gen::inRange<long>(12, 200), h = *rc::gen::inRange<long>(12, 200);
      const std::string id = std::to_string(i);
      const int kind = *rc::gen::inRange(0, 4);
      if (kind == 0) elements.push_back(paved(id, rectangle(x, y, x + w, y + h)));
      if (kind == 1) elements.push_back(paved(id, circle(x, y, w)));
      if (kind == 2) elements.push_back(pool(id, circle(x, y, w)));
      if (kind == 3) elements.push_back(building(id, rectangle(x, y, x + w, y + h)));
    }
    const plan::Site site = plan::site(job(elements));
    double sum = 0;
    std::vector<geometry::Region> all;
    double perimeter = 0;
    for (const auto& ground : site.grounds) {
      sum += ground->net.area().si();
      perimeter += ground->footprint.perimeter().si();
      all.push_back(ground->footprint);
    }
    const auto whole = geometry::unite(all);
    RC_ASSERT(whole.has_value());
    // Arcs are flattened within 0.5 mm where they are cut.
    RC_ASSERT(std::abs(sum - whole->area().si()) < perimeter * 0.0005);
  }));
}
