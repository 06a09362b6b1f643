#include <gtest/gtest.h>

#include <algorithm>

#include "takeoff/ground/earth.h"
#include "takeoff/ground/yard.h"

using namespace yard;
using takeoff::ground::Bodies;

namespace {

// Without any levels: by one depth.
takeoff::Share dug(const plan::Job& job, const plan::Site& site) {
  auto made = takeoff::ground::dig(job, site, takeoff::ground::bodies(job, site), {});
  made.share.add(takeoff::ground::haul(job, made.dug));
  return std::move(made.share);
}

}  // namespace

// Interlocking pavement tolerance guide (segmental trade association): base past the edge by the greater of 6 in and
// its thickness. 10 x 20 ft by 6 in mitred: 11 x 21 = 231 sq ft (the corner tip is 1.41 widths out, under the limit of
// 2).
TEST(Layers, theBaseReachesPastAFreeEdge) {
  const plan::Job yard = job({paved("A1", rectangle(0, 0, 240, 120), "dense")});
  const Bodies all = takeoff::ground::bodies(yard, plan::site(yard));
  ASSERT_EQ(all.bodies.size(), 2u);
  EXPECT_NEAR(square_feet(all.bodies[0].footprint), 200, 1e-6);  // bedding: to the edge
  EXPECT_NEAR(square_feet(all.bodies[1].footprint), 231, 1e-6);
  EXPECT_NEAR(all.bodies[1].top, (2.375 + 1) * 0.0254, 1e-12);
}

// The same patio: 231 sq ft x 4 in = 77 cu ft = 2.852 cu yd of dense stone; at 2349.4 kg/m3 that is 5122.6 kg.
TEST(Layers, stoneIsWeighedByPlacedVolumeAndPlacedDensityAlone) {
  const plan::Job yard = job({paved("A1", rectangle(0, 0, 240, 120), "dense")});
  const plan::Site site = plan::site(yard);
  const auto share = takeoff::ground::layers(yard, site, takeoff::ground::bodies(yard, site));
  ASSERT_EQ(share.lines.size(), 2u);
  EXPECT_EQ(share.lines[1].item, "dense");
  EXPECT_EQ(share.lines[1].working.amount().unit, units::kilogram);
  EXPECT_NEAR(share.lines[1].working.amount().value, 77 * units::cubic_metres_per_cubic_foot * 2349.4, 1e-3);
}

// Two areas side by side are one body: nothing reaches past their common edge.
TEST(Layers, touchingAreasAreOneBody) {
  const plan::Job yard =
      job({paved("A1", rectangle(0, 0, 120, 120), "dense"), paved("A2", rectangle(120, 0, 240, 120), "dense")});
  const Bodies all = takeoff::ground::bodies(yard, plan::site(yard));
  ASSERT_EQ(all.bodies.size(), 2u);
  EXPECT_EQ(all.bodies[1].of, (std::vector<plan::ElementId>{"A1", "A2"}));
  EXPECT_NEAR(square_feet(all.bodies[1].footprint), 231, 1e-6);
}

TEST(Layers, nothingReachesUnderABuilding) {
  plan::Building house;
  house.outline = {{rectangle(0, 120, 240, 400), {}}};
  const plan::Job yard = job({paved("A1", rectangle(0, 0, 240, 120), "dense"), {"H", "", house}});
  const Bodies all = takeoff::ground::bodies(yard, plan::site(yard));
  EXPECT_NEAR(square_feet(all.bodies[1].footprint), 21 * 10.5, 1e-6);  // three sides only
}

// 21 x 11 ft x (2 3/8 + 1 + 4 in) = 231 x 7.375 / 12 cu ft of bank earth.
TEST(Layers, digsByDepthAndSaysWhatIsNotChosen) {
  const plan::Job yard = job({paved("A1", rectangle(0, 0, 240, 120), "dense")});
  const plan::Site site = plan::site(yard);
  const auto share = dug(yard, site);
  ASSERT_FALSE(share.tasks.empty());
  EXPECT_EQ(share.tasks[0].rate, "dig-open");
  EXPECT_NEAR(share.tasks[0].working.amount().value, 231 * 7.375 / 12 * units::cubic_metres_per_cubic_foot, 1e-6);
  EXPECT_TRUE(said(share, "haul-not-chosen"));
}

// Soil that is counted on to soak is not compacted; any other formation is, under open stone too (trade practice).
TEST(Layers, onlyAFormationThatSoaksIsNotCompacted) {
  const auto compacted = [](const plan::Job& yard) {
    const plan::Site site = plan::site(yard);
    return std::ranges::count(dug(yard, site).tasks, "compact-ground", &takeoff::Task::rate);
  };
  plan::Job yard = job({paved("A1", rectangle(0, 0, 240, 120), "open")});
  EXPECT_EQ(compacted(yard), 1);
  yard.choices.infiltration_counts = true;
  EXPECT_EQ(compacted(yard), 0);
}

TEST(Layers, factsTellSandFromChipsAndSoilThatSoaks) {
  const auto facts = [](const char* build_up, bool soaks) {
    plan::Job yard = job({paved("A1", rectangle(0, 0, 240, 120), build_up)});
    yard.choices.infiltration_counts = soaks;
    const plan::Site site = plan::site(yard);
    return takeoff::Facts{takeoff::ground::layers(yard, site, takeoff::ground::bodies(yard, site)).facts};
  };
  const takeoff::Facts dense = facts("dense", false), open = facts("open", false), soaking = facts("open", true);
  EXPECT_TRUE(dense.holds("sand-bedding and dense-base and firm-formation"));
  EXPECT_FALSE(dense.holds("open-bedding or open-base or infiltrates"));
  EXPECT_TRUE(open.holds("open-bedding and open-base and firm-formation"));
  EXPECT_FALSE(open.holds("sand-bedding or dense-base or infiltrates"));
  EXPECT_TRUE(soaking.holds("infiltrates"));
  EXPECT_FALSE(soaking.holds("firm-formation"));
}

// 9 3/8 in is no deep dig; with 40 in more of stone it is 49 3/8 in, over 4 ft (29 CFR 1926.651: a way out from 4 ft).
TEST(Layers, aDeepDigIsAFact) {
  plan::Job yard = job({paved("A1", rectangle(0, 0, 240, 120), "open")});
  const auto deep = [&] {
    const plan::Site site = plan::site(yard);
    return takeoff::Facts{dug(yard, site).facts}.holds("deep-dig");
  };
  EXPECT_FALSE(deep());
  auto book = std::make_shared<catalogue::Catalogue>(*yard.catalogue);
  book->build_ups["open"].layers[2].thickness = Length::inches(46);
  yard.catalogue = book;
  EXPECT_TRUE(deep());
}

// Where a deep base reaches over a shallow one past their edges, the deeper has the ground: no stone is bought twice.
TEST(Layers, twoBuildUpsShareNoGround) {
  const plan::Job yard =
      job({paved("A1", rectangle(0, 0, 120, 120), "open"), paved("A2", rectangle(128, 0, 248, 120), "dense")});
  const Bodies all = takeoff::ground::bodies(yard, plan::site(yard));
  double open = 0, dense = 0;
  for (const auto& body : all.bodies) {
    if (body.layer.item == "open") open = square_feet(body.footprint);
    if (body.layer.item == "dense") dense = square_feet(body.footprint);
  }
  // 11 x 11 ft = 121 each; they are 8 in apart and each reaches 6 in: the shallow one loses 4 in x 11 ft.
  EXPECT_NEAR(open, 121, 1e-6);
  EXPECT_NEAR(dense, 121 - 11.0 * 4 / 12, 1e-6);
}

TEST(Layers, whatTheCatalogueLacksIsNamed) {
  plan::Job yard = job({paved("A1", rectangle(0, 0, 240, 120), "none")});
  EXPECT_EQ(takeoff::ground::bodies(yard, plan::site(yard)).problems.at(0).code, "build-up-unknown");
}

// The choke rule (segmental trade association, from memory): D15 of the lower stone over D50 of the upper under 5, D50
// over D50 over 2. From the middles of the gradings: No. 8 on No. 57 gives 0.97 and 2.20 and passes; C33 sand on No. 8
// gives 5.12 and does not.
TEST(Layers, layersThatFallIntoEachOtherAreSaid) {
  plan::Job terrace = job({paved("A1", rectangle(0, 0, 240, 120), "open")});
  const auto said_with = [&](const char* d50_upper, const char* d15_lower, const char* d50_lower) {
    auto all = yard::catalogue();
    catalogue::Item upper = *all->item("chips"), lower = *all->item("open");
    upper.details["d50_mm"] = d50_upper;
    lower.details["d15_mm"] = d15_lower;
    lower.details["d50_mm"] = d50_lower;
    put(*all, upper);
    put(*all, lower);
    terrace.catalogue = all;
    const plan::Site site = plan::site(terrace);
    return said(takeoff::ground::layers(terrace, site, takeoff::ground::bodies(terrace, site)),
                "layers-fall-into-each-other");
  };
  EXPECT_FALSE(said_with("6.335", "6.175", "13.96"));
  EXPECT_TRUE(said_with("0.735", "3.762", "6.335"));
}
